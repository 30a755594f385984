import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Reading } from "../../model/measurement.ts";
import { asTyped } from "../../model/quantity.ts";
import type { JudgedValue } from "../analysis.ts";
import type { Ledgers } from "../check.ts";
import { figureNotes } from "../figure-notes.ts";
import { sizesOf } from "../ledgers/readings.ts";
import { authorityText, limitsText, precedenceText } from "../limits-text.ts";
import { unprovenValues } from "../outcome.ts";
import { readingText } from "../reading-text.ts";

/**
 * Reports each reading within its limits whose rule asks for a guard against the instrument's
 * uncertainty, and whose conformity is not proven under it (JCGM 106:2012). Rules that decide
 * simply are not concerned, nor is a reading that a decided deviation accounts for.
 */
export function* readingNotProven({ readings }: Ledgers): Generator<Diagnostic> {
  for (const judged of readings) {
    const { reading, rule, over, figure, limits, values, standing, deviation } = judged;
    if (standing !== "within" || deviation?.disposition) continue;
    const unproven = unprovenValues(judged);
    const [first] = unproven;
    if (!rule || !first) continue;
    yield {
      code: "reading-not-proven",
      severity: "finding",
      span: first.value.span,
      message: `${readingText(reading, figure)} is ${asTyped(first.value.quantity)}, within the limits, but that is not proven`,
      label: reason(reading, first),
      notes: [
        `${rule.title}: ${limitsText(limits, rule, sizesOf(reading))}, ${rule.decision}`,
        authorityText(rule),
        ...(over ? [precedenceText(rule, over)] : []),
        ...figureNotes(first),
        ...(values.length > 1
          ? [`${unproven.length} of ${values.length} values are not proven`]
          : []),
      ],
      help: [
        ...(first.assurance
          ? []
          : ["name the instrument as `with:`, and its `uncertainty` in `instruments.yaml`"]),
        `measure again with an instrument of less uncertainty, and name this reading there as \`supersedes: ${reading.id}\``,
        "if it stays as it is, record a deviation and name it here as `deviation:`",
      ],
      ...(reading.private || deviation?.private ? { private: true } : {}),
    };
  }
}

function reason({ instrument }: Reading, { parts, assurance }: JudgedValue): string {
  const named = parts
    ? [parts.larger.reading.instrument, parts.smaller.reading.instrument]
    : [instrument];
  if (named.includes(undefined)) return "no instrument is named";
  const names = [...new Set(named)].map((name) => `\`${name}\``);
  const all = names.join(" and ");
  if (!assurance) return `the uncertainty of ${all} is not known`;
  return assurance.kind === "no acceptance zone"
    ? `${all} ${names.length > 1 ? "are" : "is"} too uncertain for these limits`
    : `too near the limit for ${all}`;
}
