import type { JudgedReading, JudgedValue, ReadingStanding } from "../../../compute/analysis.ts";
import type { Assurance, Verdict } from "../../../compute/judge.ts";
import { sizesOf } from "../../../compute/ledgers/readings.ts";
import { authorityText, limitsText } from "../../../compute/limits-text.ts";
import type { AcceptanceZone } from "../../../compute/uncertainty.ts";
import type { Quantity } from "../../../model/quantity.ts";
import type { ToleranceRule } from "../../../model/tolerance.ts";
import { computedText, formatSignificant } from "../../format/quantity.ts";
import { roundedText } from "../../format/reckoned.ts";
import { anchorOf } from "../addresses.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type FigureView, figureView, type PrecedenceView, precedenceView } from "./figure-view.ts";
import { type MeasurementStrip, measurementStrip } from "./measurement-strip.ts";
import { type Struck, struck } from "./struck.ts";

/** One reading with all that stands behind its verdict. */
export interface ReadingView {
  readonly anchor: string;
  readonly id: string;
  readonly day: Mention;
  readonly what: string;
  readonly at?: string;
  readonly step?: Link;
  /** As typed, each with its own verdict when there is a rule. */
  readonly values: readonly {
    readonly text: string;
    readonly out: boolean;
    /** `0.003 in over`. */
    readonly excess?: string;
  }[];
  /** What the values are made of, where they were not measured as they stand. */
  readonly figure?: FigureView;
  /** The rule that governs. */
  readonly rule?: Link;
  /** Exact, and as typed: `at least 0.1875 in (2 D)`. */
  readonly limits?: string;
  /** Who says so: `limit of the manual: Builder's manual (2025), sheet 5-2`. */
  readonly source?: string;
  /** Where the rule is used in place of a general one that the reading names. */
  readonly precedence?: PrecedenceView;
  readonly instrument?: string;
  /** `friction drag 4 lbf·in added to both limits`, or that the rule adds none. */
  readonly drag?: string;
  readonly standing: ReadingStanding;
  /**
   * The standing in one or two words and, where the rule has a guard band, what it decides:
   * `within, undecided`.
   */
  readonly verdict: string;
  /** What the instrument's uncertainty says, as a sentence; absent when it is not known. */
  readonly assurance?: string;
  readonly supersedes?: Mention;
  readonly supersededBy?: Mention;
  readonly deviation?: Mention;
  /** The deviation it names has no disposition yet. */
  readonly undecided: boolean;
  readonly strip?: MeasurementStrip;
  /** What stood here before it was amended, oldest first. */
  readonly struck: readonly Struck[];
}

const standings: Record<ReadingStanding, string> = {
  within: "within",
  out: "out of limits",
  superseded: "superseded",
  "accounted for": "out, accounted for",
  "no rule": "no rule",
};

/** A reading as the pages show it. */
export function readingView(record: RecordIndex, links: Links, judged: JudgedReading): ReadingView {
  const { reading, rule, values, standing } = judged;
  const instrument =
    reading.instrument === undefined
      ? undefined
      : record.analysis.build.instruments.get(reading.instrument);
  // The spread drawn is that of one value, and a figure is made of two.
  const strip = rule && measurementStrip(judged, judged.figure ? undefined : instrument);
  const assurance = assuranceText(judged, rule);
  const figure = figureView(links, judged);
  const precedence = precedenceView(links, judged);
  return {
    anchor: anchorOf("reading", reading.id),
    id: reading.id,
    day: links.day(reading.date, anchorOf("reading", reading.id)),
    what: reading.what,
    ...(reading.at === undefined ? {} : { at: reading.at }),
    ...(reading.step === undefined ? {} : { step: links.step(reading.step) }),
    values: values.map(({ value, verdict }) => ({
      text: judged.figure ? computedText(value.quantity) : value.quantity.typed,
      out: verdict.kind !== "within",
      ...(verdict.kind === "within" ? {} : { excess: excessText(verdict) }),
    })),
    ...(figure ? { figure } : {}),
    ...(rule
      ? {
          rule: links.rule(rule.id),
          limits: limitsText(judged.limits, rule, sizesOf(reading)),
          source: authorityText(rule),
        }
      : {}),
    ...(precedence ? { precedence } : {}),
    ...(instrument
      ? {
          instrument: `${instrument.title}${
            instrument.uncertainty
              ? `, U ${instrument.uncertainty.typed} (k = ${instrument.coverage})`
              : ""
          }`,
        }
      : {}),
    ...(reading.drag ? { drag: dragText(reading.drag, rule) } : {}),
    standing,
    verdict: [
      rule && standing === "no rule" ? "no verdict" : standings[standing],
      ...(standing === "superseded" ? [] : decided(judged)),
    ].join(", "),
    ...(assurance === undefined ? {} : { assurance }),
    ...(reading.supersedes === undefined ? {} : { supersedes: links.reading(reading.supersedes) }),
    ...(judged.supersededBy === undefined
      ? {}
      : { supersededBy: links.reading(judged.supersededBy) }),
    ...(judged.deviation
      ? { deviation: links.deviation(judged.deviation.id, judged.deviation.date) }
      : {}),
    undecided: judged.deviation !== undefined && judged.deviation.disposition === undefined,
    ...(strip ? { strip } : {}),
    struck: (record.amendmentsByReading.get(reading.id) ?? []).map((each) => struck(links, each)),
  };
}

function dragText({ typed }: Quantity, rule: ToleranceRule | undefined): string {
  if (!rule) return `friction drag ${typed}`;
  return `friction drag ${typed} ${rule.addsDrag ? "added to the limits" : "not added: the rule takes none"}`;
}

function excessText(verdict: Exclude<Verdict, { kind: "within" }>): string {
  return `${formatSignificant(verdict.by, 2)} ${verdict.limit.unit.symbol} ${verdict.kind === "below" ? "under" : "over"}`;
}

// What a guard band makes of the values, the least favourable first. Nothing where the rule has
// none: the plain verdict is then the decision.
function decided({ rule, limits, values }: JudgedReading): readonly string[] {
  const limited = limits.lower !== undefined || limits.upper !== undefined;
  if (!rule || rule.decision === "simple" || !limited || values.length === 0) return [];
  const kinds = values.map(({ assurance }) => assurance?.kind);
  if (kinds.includes("disproven")) return ["rejected"];
  return kinds.every((kind) => kind === "proven") ? ["accepted"] : ["undecided"];
}

// The least favourable value speaks for the reading.
function assuranceText(judged: JudgedReading, rule: ToleranceRule | undefined): string | undefined {
  const { values } = judged;
  const known = values.filter(({ assurance }) => assurance !== undefined);
  const worst = known.toSorted((a, b) => probabilityOf(a) - probabilityOf(b))[0];
  if (!rule) return undefined;
  if (!worst?.assurance || known.length < values.length) {
    return decided(judged).length === 0
      ? undefined
      : `the rule has a guard band (${rule.decision}), and the uncertainty of what measured this is not known`;
  }
  const { assurance, acceptance } = worst;
  const probability = `probability ${probabilityText(assurance)}`;
  if (assurance.kind === "no acceptance zone")
    return `conformity not proven: the guard bands (${rule.decision}) leave no acceptance zone, and no reading of this instrument could prove it; ${probability}`;
  const zone = acceptance ? `, which accepts ${zoneText(acceptance)}` : "";
  return `conformity ${assurance.kind} under ${decisionText(rule)}${zone}; ${probability}`;
}

function decisionText({ decision }: ToleranceRule): string {
  return decision === "simple" ? "simple acceptance" : `the rule's guard band (${decision})`;
}

function probabilityOf({ assurance }: JudgedValue): number {
  return assurance?.probability ?? 0;
}

// Rounded inwards, so that no reading is accepted by what is printed and not by the rule.
function zoneText({ from, to, unit: { symbol } }: AcceptanceZone): string {
  const text = (value: number, round: "up" | "down") =>
    `${roundedText({ value, unit: symbol, round })} ${symbol}`.replace(/ °$/, "°");
  const least = from === undefined ? undefined : text(from, "up");
  const most = to === undefined ? undefined : text(to, "down");
  if (least !== undefined && most !== undefined) return `${least} to ${most}`;
  return least === undefined ? `up to ${most}` : `from ${least}`;
}

// Never 100 % or 0 %: a normal distribution has no ends.
function probabilityText({ probability }: Assurance): string {
  if (probability > 0.999) return "over 99.9 %";
  if (probability < 0.001) return "under 0.1 %";
  return `${(probability * 100).toFixed(1)} %`;
}
