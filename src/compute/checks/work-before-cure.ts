import { citationText } from "../../model/citation.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";

/** Reports each session on a joint that was still curing. */
export function* workBeforeCure({ build, cures }: Ledgers): Generator<Diagnostic> {
  for (const { cure, brokenBy } of cures) {
    const { step, lot, mixed, ready, citation } = cure;
    const lotIsPrivate = lot !== undefined && build.lots.get(lot)?.private;
    for (const session of brokenBy) {
      const begun = session.from
        ? `at ${session.from.local}`
        : `on ${session.date}, at no stated time`;
      yield {
        code: "work-before-cure",
        severity: "finding",
        span: session.minutesSpan,
        message: `work on \`${step}\` began ${begun}, before its cure was over at ${ready.local}`,
        label: "still curing",
        notes: [
          `mixed at ${mixed.local}${lot === undefined ? "" : ` from lot \`${lot}\``}: ${placeText(cure.span)}`,
          ...(citation ? [`the time is from ${citationText(citation)}`] : []),
        ],
        help: [
          ...(session.from ? [] : ["if the work began later that day, give `from` and `to`"]),
          "if it did not touch the joint, book it to another step, or as `inspect` or `study`",
          "otherwise look at the joint, and record what was found as a squawk or a deviation",
        ],
        ...(session.private || lotIsPrivate ? { private: true } : {}),
      };
    }
  }
}
