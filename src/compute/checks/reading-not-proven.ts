import type { Diagnostic } from "../../model/diagnostic.ts";
import { asTyped } from "../../model/quantity.ts";
import type { JudgedReading } from "../analysis.ts";
import type { Ledgers } from "../check.ts";
import { authorityText, limitsText } from "../limits-text.ts";
import { readingText } from "../reading-text.ts";

/**
 * Reports each reading within its limits whose rule asks for a guard against the instrument's
 * uncertainty, and whose conformity is not proven under it (JCGM 106:2012). Rules that decide
 * simply are not concerned, nor is a reading that a decided deviation accounts for.
 */
export function* readingNotProven({ readings }: Ledgers): Generator<Diagnostic> {
  for (const judged of readings) {
    const { reading, rule, limits, values, standing, deviation } = judged;
    if (standing !== "within" || !rule || rule.decision === "simple") continue;
    if (deviation?.disposition) continue;
    const unproven = values.filter(({ assurance }) => assurance?.kind !== "proven");
    const [first] = unproven;
    if (!first) continue;
    yield {
      code: "reading-not-proven",
      severity: "finding",
      span: first.value.span,
      message: `${readingText(reading)} is ${asTyped(first.value.quantity)}, within the limits, but that is not proven`,
      label: reason(judged, first.assurance?.kind),
      notes: [
        `${rule.title}: ${limitsText(limits, rule)}, ${rule.decision}`,
        authorityText(rule),
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

function reason(
  { reading }: JudgedReading,
  kind: "not proven" | "no acceptance zone" | string | undefined,
): string {
  const { instrument } = reading;
  if (instrument === undefined) return "no instrument is named";
  if (kind === undefined) return `the uncertainty of \`${instrument}\` is not known`;
  return kind === "no acceptance zone"
    ? `\`${instrument}\` is too uncertain for these limits`
    : `too near the limit for \`${instrument}\``;
}
