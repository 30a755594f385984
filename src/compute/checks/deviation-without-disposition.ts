import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { grouped } from "../grouped.ts";

/** Reports each deviation about which nothing has been decided. */
export function* deviationWithoutDisposition({
  deviations,
  readings,
}: Ledgers): Generator<Diagnostic> {
  const byDeviation = grouped(readings, ({ reading }) => reading.deviation);
  for (const { deviation, open } of deviations) {
    if (!open) continue;
    const { id, drawing, span } = deviation;
    const relying = byDeviation.get(id) ?? [];
    yield {
      code: "deviation-without-disposition",
      severity: "finding",
      span,
      message: `nothing has been decided about deviation \`${id}\` from \`${drawing}\``,
      label: "no disposition",
      notes: relying.map(
        ({ reading }) => `reading \`${reading.id}\` relies on it: ${placeText(reading.span)}`,
      ),
      help: [
        "ask whoever may decide (the designer, the kit maker, a licensed person), then write what was decided as `disposition:` and who accepted it as `accepted-by:`",
        `a later entry may decide it: \`dispositions: [{ deviation: ${id}, disposition: … }]\``,
      ],
      ...(deviation.private || relying.some(({ reading }) => reading.private)
        ? { private: true }
        : {}),
    };
  }
}
