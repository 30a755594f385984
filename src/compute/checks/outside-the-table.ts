import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { asTyped } from "../../model/quantity.ts";
import type { Ledgers } from "../check.ts";
import { authorityText } from "../limits-text.ts";
import { readingText } from "../reading-text.ts";

/**
 * Reports each reading whose rule is a table that has no row for what it was entered with, such
 * as a cable tension at a temperature below the first row. Nothing is extrapolated, so there is
 * no verdict. A reading that a later one replaces is not concerned, nor one
 * that a decided deviation accounts for.
 */
export function* outsideTheTable({ readings }: Ledgers): Generator<Diagnostic> {
  for (const { reading, rule, fault, standing, deviation } of readings) {
    if (!rule || fault?.kind !== "outside the table") continue;
    if (standing === "superseded" || deviation?.disposition) continue;
    const { by, at, from, to } = fault;
    const ofTheDay = by === "temperature" && reading.temperature?.from === "day";
    yield {
      code: "outside-the-table",
      severity: "finding",
      span: reading.span,
      message: `${readingText(reading)} cannot be judged: the ${by} is ${asTyped(at)}, and the table runs from ${asTyped(from)} to ${asTyped(to)}`,
      label: "no verdict",
      notes: [
        `${rule.title}: ${placeText(rule.span)}`,
        authorityText(rule),
        ...(ofTheDay ? ["the temperature is that of the day's `conditions`"] : []),
      ],
      help: [
        `measure again where the table has rows, and name this one there as \`supersedes: ${reading.id}\``,
        ...(ofTheDay
          ? ["if it was another where it was measured, write `temperature:` beside the reading"]
          : []),
        "if the source has more rows, copy them into the rule",
        "if it stays as it is, record a deviation and name it here as `deviation:`",
      ],
      ...(reading.private || deviation?.private ? { private: true } : {}),
    };
  }
}
