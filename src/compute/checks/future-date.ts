import type { Build } from "../../model/build.ts";
import type { AsOf } from "../../model/calendar.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each entry whose date is after the day of judgement, and each one said to be written
 * after that day was over. An entry whose date itself is in the future is reported once. So is
 * each weighing, projection or change of equipment after the day of judgement, and each division
 * or addition of a task, and each row of help.
 */
export function* futureDate({ build, asOf }: Ledgers): Generator<Diagnostic> {
  yield* futureBalance(build, asOf);
  yield* futurePortion(build, asOf);
  yield* futureHelp(build, asOf);
  for (const { date, written, writtenSpan, span } of build.days) {
    if (date > asOf.date) {
      yield {
        code: "future-date",
        severity: "error",
        span,
        message: `the entry is dated ${date}, after ${asOf.date}`,
        label: "has not come yet",
        notes: [`judged on ${asOf.date}`],
        help: [
          "correct the date and the file's name; keep plans in `next`, or mark the entry `draft: true`",
          "to judge the journal on a later day, give `--as-of`",
        ],
      };
    } else if (written && written.epochMinutes >= asOf.endEpochMinutes) {
      yield {
        code: "future-date",
        severity: "error",
        span: writtenSpan ?? span,
        message: `the entry for ${date} says that it was written at ${written.local}, after ${asOf.date}`,
        label: "has not come yet",
        notes: [`judged on ${asOf.date}`],
        help: [
          "correct `written`: the date and time at which the entry was typed",
          "to judge the journal on a later day, give `--as-of`",
        ],
      };
    }
  }
}

function* futureBalance({ balance }: Build, asOf: AsOf): Generator<Diagnostic> {
  if (!balance) return;
  const { weighings, projection, changes } = balance;
  for (const { what, date, span } of [
    ...weighings.map(({ id, date, span }) => ({ what: `weighing \`${id}\``, date, span })),
    ...(projection ? [{ what: "the projection of the empty weight", ...projection }] : []),
    ...changes.map(({ id, date, span }) => ({ what: `change \`${id}\``, date, span })),
  ]) {
    if (date <= asOf.date) continue;
    yield {
      code: "future-date",
      severity: "error",
      span,
      message: `${what} is dated ${date}, after ${asOf.date}`,
      label: "has not come yet",
      notes: [`judged on ${asOf.date}`],
      help: [
        "correct `on`, or leave it out until it has happened",
        "to judge the journal on a later day, give `--as-of`",
      ],
    };
  }
}

function* futurePortion({ portion }: Build, asOf: AsOf): Generator<Diagnostic> {
  if (!portion) return;
  for (const { what, date, span } of [
    ...[...portion.tasks.values()].flatMap(({ id, added, span }) =>
      added ? [{ what: `the added task \`${id}\``, date: added.date, span }] : [],
    ),
    ...portion.splits.map(({ task, date, span }) => ({
      what: `the division of task \`${task}\``,
      date,
      span,
    })),
  ]) {
    if (date <= asOf.date) continue;
    yield {
      code: "future-date",
      severity: "error",
      span,
      message: `${what} is dated ${date}, after ${asOf.date}`,
      label: "has not come yet",
      notes: [`judged on ${asOf.date}`],
      help: [
        "correct `on`; to see what a planned change would do, run `witness portion --what-if`",
        "to judge the journal on a later day, give `--as-of`",
      ],
    };
  }
}

function* futureHelp({ help }: Build, asOf: AsOf): Generator<Diagnostic> {
  for (const { id, to, span } of help?.entries ?? []) {
    if (to <= asOf.date) continue;
    yield {
      code: "future-date",
      severity: "error",
      span,
      message: `help \`${id}\` is dated ${to}, after ${asOf.date}`,
      label: "has not come yet",
      notes: [`judged on ${asOf.date}`],
      help: [
        "correct the date, or leave the row out until the help was given",
        "to judge the journal on a later day, give `--as-of`",
      ],
    };
  }
}
