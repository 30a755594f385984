import type { Diagnostic, Span } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";

interface Reversal {
  readonly span: Span;
  readonly message: string;
  readonly help: string;
}

/**
 * Reports pairs of dates or times that cannot follow one another: an entry written before its
 * day, a joint closed after its cure was over, a squawk closed before it was fixed, a
 * calibration due before it was made, a lot that expires before it was made, a reading that
 * supersedes itself or a later one of its day. Equal dates are in order.
 *
 * A name that is used before the day that declares it is reported by reading, as `unknown-name`.
 */
export function* impossibleOrder(ledgers: Ledgers): Generator<Diagnostic> {
  for (const found of [entries, cures, squawks, registers, readings]) {
    for (const { span, message, help } of found(ledgers)) {
      yield {
        code: "impossible-order",
        severity: "error",
        span,
        message,
        label: "cannot be in this order",
        notes: [],
        help: [help],
      };
    }
  }
}

function* entries({ build }: Ledgers): Generator<Reversal> {
  for (const { date, written, writtenSpan, span } of build.days) {
    if (written && written.local.slice(0, 10) < date) {
      yield {
        span: writtenSpan ?? span,
        message: `the entry for ${date} says that it was written at ${written.local}, before that day`,
        help: "correct `written`, or the date and the file's name",
      };
    }
  }
}

function* cures({ cures: states }: Ledgers): Generator<Reversal> {
  for (const { cure } of states) {
    const { step, closed, ready, span } = cure;
    if (closed && closed.epochMinutes >= ready.epochMinutes) {
      yield {
        span,
        message: `the joint of \`${step}\` was closed at ${closed.local}, and its cure was over at ${ready.local}`,
        help: "correct `closed` or `ready`; `closed` earlier than `mixed` is on the next day",
      };
    }
  }
}

function* squawks({ squawks: states }: Ledgers): Generator<Reversal> {
  for (const { squawk } of states) {
    const { id, fixed, closed, span } = squawk;
    if (fixed && closed && closed.date < fixed.date) {
      yield {
        span,
        message: `squawk \`${id}\` was closed on ${closed.date}, before it was fixed on ${fixed.date}`,
        help: "move `did` or `closed-by` to the day on which it happened",
      };
    }
  }
}

function* registers({ build }: Ledgers): Generator<Reversal> {
  for (const { id, calibrations } of build.instruments.values()) {
    for (const { on, due, span } of calibrations) {
      if (due !== undefined && due < on) {
        yield {
          span,
          message: `the calibration of \`${id}\` on ${on} was due again on ${due}, before it was made`,
          help: "correct `on` or `due`",
        };
      }
    }
  }
  for (const { id, made, expires, span } of build.lots.values()) {
    if (made !== undefined && expires !== undefined && expires < made) {
      yield {
        span,
        message: `lot \`${id}\` expires on ${expires}, before it was made on ${made}`,
        help: "correct `made` or `expires`, as they stand on the package",
      };
    }
  }
}

function* readings({ build }: Ledgers): Generator<Reversal> {
  for (const { readings: ofDay } of build.days) {
    const places = new Map(ofDay.map(({ id }, place) => [id, place]));
    for (const [place, { id, supersedes, supersedesSpan, span }] of ofDay.entries()) {
      const replaced = supersedes === undefined ? undefined : places.get(supersedes);
      if (replaced === undefined || replaced < place) continue;
      yield {
        span: supersedesSpan ?? span,
        message:
          supersedes === id
            ? `reading \`${id}\` supersedes itself`
            : `reading \`${id}\` supersedes \`${supersedes}\`, which comes after it`,
        help: "name an earlier reading in `supersedes`: the later one replaces the earlier",
      };
    }
  }
}
