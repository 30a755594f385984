import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { asTyped, exactText } from "../../model/quantity.ts";
import type { JudgedReading, JudgedValue } from "../analysis.ts";
import type { Ledgers } from "../check.ts";
import { figureNotes } from "../figure-notes.ts";
import type { Verdict } from "../judge.ts";
import { isWorse, sizesOf } from "../ledgers/readings.ts";
import { authorityText, limitsText, precedenceText } from "../limits-text.ts";
import { readingText } from "../reading-text.ts";

/**
 * Reports each reading with a value outside its limits that no later reading replaces and no
 * deviation with a disposition accounts for. The place is that of the value furthest outside.
 */
export function* readingOutOfLimits({ readings }: Ledgers): Generator<Diagnostic> {
  const byId = new Map(readings.map((judged) => [judged.reading.id, judged]));
  for (const judged of readings) {
    const { reading, rule, over, figure, limits, values, supersededBy, deviation } = judged;
    const worst = furthestOut(values);
    if (judged.standing !== "out" || !rule || !worst) continue;
    const { value, verdict } = worst;
    const outside = values.filter((each) => each.verdict.kind !== "within");
    const successor = supersededBy === undefined ? undefined : byId.get(supersededBy)?.reading;
    yield {
      code: "reading-out-of-limits",
      severity: "finding",
      span: value.span,
      message: `${readingText(reading, figure)} is ${asTyped(value.quantity)}, ${verdict.kind} the limit of ${asTyped(verdict.limit)}`,
      label: `${excessText(verdict)}${verdict.kind} the limit`,
      notes: [
        `${rule.title}: ${limitsText(limits, rule, sizesOf(reading))}`,
        authorityText(rule),
        ...(over ? [precedenceText(rule, over)] : []),
        ...figureNotes(worst),
        ...rule.advice,
        ...(values.length > 1 ? [`${outside.length} of ${values.length} values are outside`] : []),
        ...(successor
          ? [
              `reading \`${successor.id}\` replaces it but names no rule, so nothing shows that it is put right: ${placeText(successor.span)}`,
            ]
          : []),
      ],
      help: [...dragHelp(judged, verdict), ...wayOut(judged)],
      ...(reading.private || deviation?.private || successor?.private ? { private: true } : {}),
    };
  }
}

// How far outside, where that is a decimal that a shop would say; the limit and the value stand
// in the message anyway.
function excessText({ by, limit }: Outside): string {
  const amount = exactText(by);
  return amount.includes("/") || amount.length > 8 ? "" : `${amount} ${limit.unit.symbol} `;
}

type Outside = Exclude<Verdict, { readonly kind: "within" }>;

function furthestOut(
  values: readonly JudgedValue[],
): (JudgedValue & { readonly verdict: Outside }) | undefined {
  return values
    .filter((each): each is JudgedValue & { verdict: Outside } => each.verdict.kind !== "within")
    .reduce<(JudgedValue & { verdict: Outside }) | undefined>(
      (worst, each) => (worst && !isWorse(each.verdict, worst.verdict) ? worst : each),
      undefined,
    );
}

function dragHelp({ rule, reading }: JudgedReading, verdict: Outside): string[] {
  if (!rule?.addsDrag || reading.drag || verdict.kind !== "above") return [];
  return ["if the wrench reading includes friction drag, record the drag beside it as `drag:`"];
}

function wayOut({ reading, deviation }: JudgedReading): string[] {
  return [
    `if it was put right, or measured wrong, measure again and name this one there as \`supersedes: ${reading.id}\``,
    deviation
      ? `deviation \`${deviation.id}\` accounts for it once it has a disposition`
      : "if it stays as it is, record a deviation and name it here as `deviation:`",
  ];
}
