import type { Build } from "../../model/build.ts";
import type { CalendarMonth } from "../../model/calendar.ts";
import { monthOf } from "../../model/calendar.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { hoursText } from "../../model/hours-text.ts";
import { type SealedMinutes, sealPath } from "../../model/seal.ts";
import type { Hours } from "../analysis.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each seal whose totals are not what the entries add up to now, although no entry of a
 * later month amended a session up to the end of the sealed one.
 */
export function* sealedTotalDiffers({ build, hours }: Ledgers): Generator<Diagnostic> {
  for (const seal of build.seals) {
    if (isAmendedSince(build, seal.month)) continue;
    const last = build.days.findLast(({ date }) => monthOf(date) <= seal.month);
    const inMonth = hours.byMonth.get(seal.month) ?? nothing;
    const toDate = (last && hours.toDate.get(last.date)) ?? nothing;
    const wrong = [
      ...differing("in the month", seal.inMonth, inMonth),
      ...differing("to date", seal.toDate, toDate),
    ];
    if (wrong.length === 0) continue;
    yield {
      code: "sealed-total-differs",
      severity: "error",
      span: seal.minutesSpan,
      message: `the totals in \`${sealPath(seal.month)}\` are not what its entries add up to`,
      notes: wrong,
      help: [
        "put back what was changed since: the zone in project.yaml, or the seal itself",
        "to correct a sealed day, write `amendments` in an entry of today",
      ],
    };
  }
}

const nothing: Hours = { build: 0, apart: 0 };

function isAmendedSince({ days }: Build, month: CalendarMonth): boolean {
  return days.some(
    ({ date, amendments }) =>
      monthOf(date) > month &&
      amendments.some(({ day, field }) => monthOf(day) <= month && field.startsWith("sessions")),
  );
}

function differing(when: string, sealed: SealedMinutes, now: Hours): string[] {
  const kinds = [
    ["building", sealed.build, now.build],
    ["study and shop", sealed.apart, now.apart],
  ] as const;
  return kinds
    .filter(([, then, present]) => then !== present)
    .map(
      ([what, then, present]) =>
        `${when}, ${what}: sealed ${hoursText(then)}, now ${hoursText(present)}`,
    );
}
