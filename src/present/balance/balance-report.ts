import type { Analysis } from "../../compute/analysis.ts";
import type {
  Balanced,
  BalanceEvent,
  BalanceLedger,
  BalanceLoad,
  BalanceSheet,
  CaseState,
  ChangeState,
  ProjectionState,
  WeighingState,
} from "../../compute/ledgers/balance.ts";
import { type MomentLine, type MomentUnits, momentUnit } from "../../compute/moments.ts";
import { armLimitText } from "../../model/arm-limit.ts";
import type { Balance, Belonging } from "../../model/balance.ts";
import type { Build } from "../../model/build.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { citationText } from "../../model/citation.ts";
import { calibrationOn } from "../../model/instrument.ts";
import { negligibleChangeSource } from "../../model/published/negligible-change.ts";
import { subtract } from "../../model/quantity.ts";
import {
  balanceNumber,
  balanceText,
  chordNumber,
  momentNumber,
  signedNumber,
} from "../format/balance.ts";
import { dateText } from "../format/dates.ts";
import { assemblyTitle, personName } from "../tables/named.ts";
import { verdictWords } from "./verdict-words.ts";

/** A label and what it stands for. */
export interface BalanceFact {
  readonly label: string;
  readonly value: string;
}

/** One weight at its arm, or what several come to; numbers without their units. */
export interface ItemRow {
  readonly what: string;
  /** How the weight was typed, where that is not the number shown. */
  readonly says?: string;
  readonly estimated: boolean;
  readonly weight: string;
  readonly arm: string;
  readonly moment: string;
}

/** A weighing, a projection, a change or a loading with its lines. */
export interface SheetView {
  /** Fit for an anchor. */
  readonly id: string;
  readonly title: string;
  readonly date?: CalendarDate;
  /** The day whose entry tells of it. */
  readonly day?: CalendarDate;
  readonly facts: readonly BalanceFact[];
  readonly note?: string;
  readonly rows: readonly ItemRow[];
  readonly sum: ItemRow;
}

/** A loading case in the table of cases. */
export interface CaseRow {
  readonly number: number;
  readonly id: string;
  readonly title: string;
  /** `extreme forward`, `estimated`, and the like. */
  readonly marks: readonly string[];
  readonly weight: string;
  readonly cg: string;
  readonly percent: string;
  readonly inside: boolean;
  readonly outside: boolean;
  readonly verdict: string;
  readonly says: readonly string[];
}

/** What set or changed the empty weight. */
export interface EventRow {
  readonly date: CalendarDate;
  readonly day: CalendarDate;
  readonly kind: BalanceEvent["kind"];
  readonly id: string;
  readonly what: string;
  /** With its sign; empty for what starts anew. */
  readonly change: string;
  readonly weight: string;
  readonly cg: string;
  readonly percent: string;
  readonly movement: string;
  readonly notes: readonly string[];
}

/** The register of weight and balance in words, for the page and for paper. */
export interface BalanceReport {
  /** The empty weight in one sentence. */
  readonly sentence: string;
  /** `1331.50 lb`; absent while nothing was weighed or projected. */
  readonly figure?: { readonly text: string; readonly says: string };
  readonly units: { readonly weight: string; readonly arm: string; readonly moment: string };
  readonly hasChord: boolean;
  readonly definition: readonly BalanceFact[];
  readonly limits: readonly BalanceFact[];
  readonly cases: readonly CaseRow[];
  /** What the cases as a whole lack. */
  readonly casesLack: readonly string[];
  readonly caseSheets: readonly SheetView[];
  readonly events: readonly EventRow[];
  /** What the notes on small changes rest on; absent when there are none. */
  readonly negligible?: string;
  readonly weighings: readonly SheetView[];
  readonly projection?: SheetView;
  readonly changes: readonly SheetView[];
  readonly cautions: readonly string[];
}

/**
 * The report on weight and balance.
 * @returns `undefined` when the journal keeps no register of it.
 */
export function balanceReport({ build, balance }: Analysis): BalanceReport | undefined {
  if (!balance) return undefined;
  const { register, empty, weighings, projection, events, cases } = balance;
  const { units } = register;
  const changes = events.flatMap((event) => (event.kind === "change" ? [event.state] : []));
  return {
    sentence: sentenceOf(balance),
    ...(empty
      ? {
          figure: {
            text: balanceText(empty.sum.weight),
            says:
              empty.basis === "weighed"
                ? `empty weight, ${placeText(empty.sum)}`
                : `projected empty weight, ${placeText(empty.sum)}`,
          },
        }
      : {}),
    units: {
      weight: units.weight.symbol,
      arm: units.arm.symbol,
      moment: momentUnit(units),
    },
    hasChord: register.chord !== undefined,
    definition: definitionOf(register),
    limits: limitsOf(register),
    cases: cases.map((each, index) => caseRow(each, index + 1)),
    casesLack: lacksOf(balance),
    caseSheets: cases.map((each, index) => caseSheet(each, index + 1, units)),
    events: events.map((event) => eventRow(event)),
    ...(changes.some(({ negligible }) => negligible) ? { negligible: negligibleText } : {}),
    weighings: weighings.map((each) => weighingSheet(each, build, units)),
    ...(projection ? { projection: projectionSheet(projection, units) } : {}),
    changes: changes.map((each) => changeSheet(each, units)),
    cautions: cautionsOf(balance),
  };
}

function sentenceOf({ register, empty }: BalanceLedger): string {
  if (!empty) return "Nothing has been weighed or projected yet, so there is no empty weight.";
  const { basis, since, changes, sum } = empty;
  const counted =
    changes === 0
      ? ""
      : `, with ${changes} ${changes === 1 ? "change" : "changes"} of equipment since`;
  const start =
    basis === "weighed"
      ? `As weighed on ${dateText(since)}${counted}`
      : `Not weighed yet: as projected on ${dateText(since)}${counted}`;
  return `${start}, the empty aircraft comes to ${balanceText(sum.weight)}, with its centre of gravity ${placeText(sum)}. ${meaning(register)}`;
}

function meaning({ emptyWeight: { oil, unusableFuel } }: Balance): string {
  if (oil === unusableFuel)
    return oil === "in"
      ? "Oil and unusable fuel are in it."
      : "Neither oil nor unusable fuel is in it.";
  return oil === "in"
    ? "Oil is in it, unusable fuel is not."
    : "Unusable fuel is in it, oil is not.";
}

// `12.40 in aft of the datum`
function placeText({ cg, chordPercent }: Balanced): string {
  if (!cg) return "unknown";
  const side = cg.amount.lt(0) ? "ahead of" : "aft of";
  const size = balanceText({ amount: cg.amount.abs(), unit: cg.unit });
  return `${size} ${side} the datum${chordPercent ? `, ${chordNumber(chordPercent)} % of the mean aerodynamic chord` : ""}`;
}

const belongs: Record<Belonging, string> = {
  in: "in the empty weight",
  out: "not in the empty weight",
};

function definitionOf({ datum, emptyWeight, chord }: Balance): BalanceFact[] {
  return [
    { label: "Datum", value: `${datum}; arms aft of it count up` },
    { label: "Oil", value: belongs[emptyWeight.oil] },
    { label: "Unusable fuel", value: belongs[emptyWeight.unusableFuel] },
    ...fact("Empty weight as defined", emptyWeight.note),
    ...(chord
      ? [
          {
            label: "Mean aerodynamic chord",
            value: `from ${chord.leading.typed} to ${chord.trailing.typed}`,
          },
        ]
      : []),
  ];
}

function limitsOf({ limits }: Balance): BalanceFact[] {
  if (!limits) return [];
  const { citation, maxWeight, forward, aft } = limits;
  return [
    ...fact("Greatest weight", maxWeight?.typed),
    ...fact("Forward limit", forward && armLimitText(forward)),
    ...fact("Aft limit", aft && armLimitText(aft)),
    { label: "Source", value: citationText(citation) },
  ];
}

function fact(label: string, value: string | undefined): BalanceFact[] {
  return value === undefined ? [] : [{ label, value }];
}

function caseRow({ loading, sum, verdict, estimated }: CaseState, number: number): CaseRow {
  const words = verdictWords(verdict);
  return {
    number,
    id: loading.id,
    title: loading.title,
    marks: [
      ...(loading.extreme ? [`extreme ${loading.extreme}`] : []),
      ...(estimated ? ["estimated"] : []),
    ],
    ...sumNumbers(sum),
    inside: verdict.kind === "inside",
    outside: verdict.kind === "outside" || verdict.kind === "no weight",
    verdict: words.verdict,
    says: words.says,
  };
}

function sumNumbers({ weight, cg, chordPercent }: Balanced) {
  return {
    weight: balanceNumber(weight),
    cg: cg ? balanceNumber(cg) : "–",
    percent: chordPercent ? chordNumber(chordPercent) : "–",
  };
}

function lacksOf({ register, empty, cases }: BalanceLedger): string[] {
  const marked = new Set(register.cases.map(({ extreme }) => extreme));
  return [
    ...(register.cases.length > 0 && !empty
      ? ["The loading cases wait for an empty weight, weighed or projected."]
      : []),
    ...(cases.length > 0 && !register.limits
      ? ["No limits are declared, so no case can be judged."]
      : []),
    ...(cases.length > 0 && !marked.has("forward")
      ? ["No case is marked as the extreme forward one."]
      : []),
    ...(cases.length > 0 && !marked.has("aft")
      ? ["No case is marked as the extreme aft one."]
      : []),
  ];
}

function caseSheet(state: CaseState, number: number, units: MomentUnits): SheetView {
  const { loading } = state;
  return {
    id: loading.id,
    title: `${number}. ${loading.title}`,
    facts: [],
    ...noteOf(loading),
    ...linesOf(state, "loaded", units),
  };
}

function weighingSheet(state: WeighingState, build: Build, units: MomentUnits): SheetView {
  const { weighing } = state;
  const part = assemblyTitle(build, weighing.of);
  return {
    id: weighing.id,
    title: weighing.title,
    date: weighing.date,
    day: weighing.day,
    facts: [
      { label: "Weighed", value: part ?? "the whole aircraft" },
      ...fact("Place", weighing.place),
      ...fact("Levelled", weighing.level),
      { label: "Scales", value: scalesText(state, build) },
      {
        label: "By",
        value: weighing.who.map((id) => personName(build, id)).join(", ") || "not said",
      },
    ],
    ...noteOf(weighing),
    ...linesOf(state, part ? `${part}, net` : "empty weight", units),
  };
}

function scalesText({ weighing }: WeighingState, { instruments }: Build): string {
  const scales = weighing.with.flatMap(({ instrument: id }) => {
    const instrument = instruments.get(id);
    if (!instrument) return [];
    const calibration = calibrationOn(instrument, weighing.date);
    const due = calibration?.due === undefined ? "" : `, due ${dateText(calibration.due)}`;
    return [
      calibration
        ? `${instrument.title} (calibrated ${dateText(calibration.on)}${due})`
        : `${instrument.title} (not under calibration)`,
    ];
  });
  return scales.join("; ") || "not said";
}

function projectionSheet(state: ProjectionState, units: MomentUnits): SheetView {
  const { projection, weighed } = state;
  return {
    id: "projection",
    title: "Projected empty weight",
    date: projection.date,
    facts: [
      {
        label: "Of which weighed",
        value: `${balanceText(weighed)}; everything else is an estimate`,
      },
    ],
    ...noteOf(projection),
    ...linesOf(state, "projected empty weight", units),
  };
}

function changeSheet(state: ChangeState, units: MomentUnits): SheetView {
  const { change } = state;
  return {
    id: change.id,
    title: change.title,
    date: change.date,
    day: change.day,
    facts: [],
    ...noteOf(change),
    ...linesOf(state, "net change", units),
  };
}

function noteOf({ note }: { readonly note?: string }): { note?: string } {
  return note === undefined ? {} : { note };
}

function linesOf(
  { lines, sum }: BalanceSheet,
  total: string,
  units: MomentUnits,
): Pick<SheetView, "rows" | "sum"> {
  return {
    rows: lines.map((line) => itemRow(line, units)),
    sum: {
      what: total,
      estimated: false,
      weight: balanceNumber(sum.weight),
      arm: sum.cg ? balanceNumber(sum.cg) : "–",
      moment: momentNumber(sum.moment, momentUnit(units)),
    },
  };
}

function itemRow(
  { load, weight, arm, moment }: MomentLine<BalanceLoad>,
  units: MomentUnits,
): ItemRow {
  const says = typedAs(load, units);
  return {
    what: load.name,
    ...(says === undefined ? {} : { says }),
    estimated: load.item?.estimated ?? false,
    weight: balanceNumber({ amount: weight, unit: units.weight }),
    arm: balanceNumber({ amount: arm, unit: units.arm }),
    moment: momentNumber(moment, momentUnit(units)),
  };
}

// What stands on the sheet as typed, where the numbers in the columns are something else.
function typedAs({ role, point, item, arm }: BalanceLoad, units: MomentUnits): string | undefined {
  const parts = [
    ...(role === "out" ? ["taken out"] : []),
    ...(role === "part" ? ["weighed"] : []),
    ...(point
      ? [point.tare ? `${point.reads.typed} less ${point.tare.typed}` : "no tare said"]
      : []),
    ...(item?.made === undefined ? [] : [item.made]),
    ...(item && item.made === undefined && item.weight.unit !== units.weight
      ? [item.weight.typed]
      : []),
    ...(role !== "empty" && arm.unit !== units.arm ? [`at ${arm.typed}`] : []),
  ];
  return parts.length > 0 ? parts.join(", ") : undefined;
}

function eventRow(event: BalanceEvent): EventRow {
  if (event.kind === "change") return changeRow(event.state);
  const { date, state } = event;
  const common = { date, kind: event.kind, change: "", ...sumNumbers(state.sum), movement: "" };
  if (event.kind === "projection") {
    return { ...common, day: date, id: "projection", what: "Projected empty weight", notes: [] };
  }
  const { weighing, sum } = event.state;
  return {
    ...common,
    day: weighing.day,
    id: weighing.id,
    what: weighing.title,
    notes: event.before
      ? [
          `${signedNumber(subtract(sum.weight, event.before.weight))} ${sum.weight.unit.symbol} against what was reckoned before`,
        ]
      : [],
  };
}

function changeRow({ change, sum, standing, after, movement, negligible }: ChangeState): EventRow {
  return {
    date: change.date,
    day: change.day,
    kind: "change",
    id: change.id,
    what: change.title,
    change: signedNumber(sum.weight),
    ...(after ? sumNumbers(after) : { weight: "–", cg: "–", percent: "–" }),
    movement: movement ? signedNumber(movement) : "",
    notes: [
      ...(standing === "too early" ? ["before the first weighing, which has it already"] : []),
      ...(negligible
        ? [
            `weight change ${negligible.weight ? "" : "not "}negligible (${negligible.largest.typed} or less)`,
            ...(negligible.cg === undefined
              ? []
              : [`movement of the CG ${negligible.cg ? "" : "not "}negligible (below 0.05 % MAC)`]),
          ]
        : []),
    ],
  };
}

const negligibleText = `What is called negligible is from ${citationText(negligibleChangeSource)}: a net change of weight up to the figure named, and a movement of the centre of gravity below 0.05 % of the mean aerodynamic chord for fixed wings. Small changes add up, so every one is counted here all the same.`;

function cautionsOf({ register, empty, projection, cases }: BalanceLedger): string[] {
  return [
    "This is arithmetic on what the builder typed, and general information. The aircraft's own weight and balance data, its drawings, its designer, local rules and a licensed person govern. Nothing here certifies an aircraft or permits a loading.",
    "Arms aft of the datum count up, and what is taken out counts below zero. Nothing is rounded on the way; figures are rounded as they are printed, room to a limit down and what is over it up. A sheet that rounds each moment may differ in the last place.",
    "Whether oil and unusable fuel belong to the empty weight depends on the basis of certification; compare only numbers that mean the same.",
    ...(empty?.basis === "projected" && projection
      ? [
          "While the aircraft has not been weighed, the empty weight is a projection and every loading case with it is an estimate. It is for planning and for nothing else.",
        ]
      : []),
    ...(register.limits && cases.length > 0
      ? [
          "Between the corners of a limit that varies with weight, straight lines are drawn. Where no limit is given for a weight, the case counts as outside.",
        ]
      : []),
  ];
}
