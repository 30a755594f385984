import Fraction from "fraction.js";
import type {
  Balance,
  BalanceItem,
  EquipmentChange,
  LoadingCase,
  Projection,
  Weighing,
  WeighingPoint,
} from "../../model/balance.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Load } from "../../model/load.ts";
import {
  negligibleChordPercent,
  negligibleWeight,
} from "../../model/published/negligible-change.ts";
import { compareQuantities, type Quantity, quantityOf, scale } from "../../model/quantity.ts";
import { type EnvelopeVerdict, judgeLoading } from "../envelope.ts";
import { chordPercent, type MomentLine, momentLines, sumOfMoments } from "../moments.ts";
import { amountIn } from "../reckon/amount-in.ts";

/** What a line of a weighing, a change or a loading is. */
export type BalanceLoad = Load & {
  readonly role: "point" | "out" | "in" | "empty" | "part";
  /** The scale, when it is one. */
  readonly point?: WeighingPoint;
  /** The item, when it is one. */
  readonly item?: BalanceItem;
};

/** A weight with its moment and its centre of gravity, in the units of the register. */
export interface Balanced {
  readonly weight: Quantity;
  /** Weight × arm; its unit is the product of the register's two. */
  readonly moment: Fraction;
  /** Absent when the weight is not above zero. */
  readonly cg?: Quantity;
  /** Of the mean aerodynamic chord, when that and the centre of gravity are known. */
  readonly chordPercent?: Fraction;
}

/** Lines and what they come to. */
export interface BalanceSheet {
  readonly lines: readonly MomentLine<BalanceLoad>[];
  readonly sum: Balanced;
}

/** A weighing, worked out. */
export interface WeighingState extends BalanceSheet {
  readonly weighing: Weighing;
}

/** How a change compares with what a published paragraph calls negligible. */
export interface Negligible {
  /** Whether the change of weight is; the largest that would be. */
  readonly weight: boolean;
  readonly largest: Quantity;
  /** Whether the movement of the centre of gravity is; absent when no chord is declared. */
  readonly cg?: boolean;
}

/** A change of equipment, worked out. */
export interface ChangeState extends BalanceSheet {
  readonly change: EquipmentChange;
  /** `too early`: nothing was weighed or projected yet, so the first weighing has it already. */
  readonly standing: "counted" | "too early";
  readonly before?: Balanced;
  readonly after?: Balanced;
  /** Movement of the centre of gravity, aft counting up. */
  readonly movement?: Quantity;
  readonly negligible?: Negligible;
}

/** Something that sets or changes the empty weight. */
export type BalanceEvent =
  | {
      readonly kind: "weighing";
      readonly date: CalendarDate;
      readonly state: WeighingState;
      /** What the list said before. */
      readonly before?: Balanced;
    }
  | { readonly kind: "projection"; readonly date: CalendarDate; readonly state: ProjectionState }
  | { readonly kind: "change"; readonly date: CalendarDate; readonly state: ChangeState };

/** A projection, worked out. */
export interface ProjectionState extends BalanceSheet {
  readonly projection: Projection;
  /** How much of its weight comes from weighings of parts. */
  readonly weighed: Quantity;
}

/** The empty weight in force. */
export interface EmptyState {
  readonly sum: Balanced;
  readonly basis: "weighed" | "projected";
  /** The day of the weighing or projection. */
  readonly since: CalendarDate;
  /** Changes counted since. */
  readonly changes: number;
}

/** A loading case, worked out and judged. */
export interface CaseState extends BalanceSheet {
  readonly loading: LoadingCase;
  readonly verdict: EnvelopeVerdict;
  /** True when any weight in it was never on a scale: an estimated item, or a projection. */
  readonly estimated: boolean;
}

/** Everything computed from the register of weight and balance. */
export interface BalanceLedger {
  readonly register: Balance;
  /** Whole and of parts, by date. */
  readonly weighings: readonly WeighingState[];
  readonly projection?: ProjectionState;
  /** What made the empty weight what it is, by date. */
  readonly events: readonly BalanceEvent[];
  /** Absent while nothing was weighed or projected. */
  readonly empty?: EmptyState;
  /** In the order typed; none can be worked out before there is an empty weight. */
  readonly cases: readonly CaseState[];
}

/**
 * Works out the register: every weighing net of tare, the empty weight after each change, and
 * every loading case. Exact throughout. The newest weighing of the whole aircraft is where the
 * empty weight starts anew; before the first, a projection stands in. The order of items within
 * one weighing, change or case does not matter.
 */
export function balanceLedger(register: Balance): BalanceLedger {
  const weighings = register.weighings.map(
    (weighing): WeighingState => ({
      weighing,
      ...sheetOf(register, weighingLoads(weighing), weighing.of === undefined),
    }),
  );
  const projection =
    register.projection && projectionState(register, register.projection, weighings);
  const events: BalanceEvent[] = [];
  let empty: EmptyState | undefined;
  for (const occasion of occasions(register, weighings, projection)) {
    if (occasion.kind === "weighing") {
      events.push({ ...occasion, ...(empty ? { before: empty.sum } : {}) });
      empty = startingFrom("weighed", occasion);
    } else if (occasion.kind === "projection") {
      events.push(occasion);
      empty = startingFrom("projected", occasion);
    } else {
      const state = changeState(register, occasion.change, empty?.sum);
      events.push({ kind: "change", date: occasion.date, state });
      if (empty && state.after) empty = { ...empty, sum: state.after, changes: empty.changes + 1 };
    }
  }
  return {
    register,
    weighings,
    ...(projection ? { projection } : {}),
    events,
    ...(empty ? { empty } : {}),
    cases: empty ? casesOf(register, empty) : [],
  };
}

function casesOf(register: Balance, { sum: empty, basis }: EmptyState): CaseState[] {
  return register.cases.map((loading) => {
    const lines = momentLines(
      loading.items.map((item) => loadOf(item, "in")),
      register.units,
    );
    // The empty aircraft enters by its moment, which is exact where its arm has been divided out.
    const sum = balanced(register, [amounts(register, empty), ...lines]);
    const weight = amountIn(empty.weight, register.units.weight);
    const first: MomentLine<BalanceLoad>[] = empty.cg
      ? [
          {
            load: { name: "empty aircraft", weight: empty.weight, arm: empty.cg, role: "empty" },
            weight,
            arm: empty.cg.amount,
            moment: empty.moment,
          },
        ]
      : [];
    return {
      loading,
      lines: [...first, ...lines],
      sum,
      verdict: judgeLoading(sum.weight, empty.cg && sum.cg, register.limits),
      estimated: basis === "projected" || loading.items.some(({ estimated }) => estimated),
    };
  });
}

function startingFrom(
  basis: EmptyState["basis"],
  { date, state }: { readonly date: CalendarDate; readonly state: BalanceSheet },
): EmptyState {
  return { sum: state.sum, basis, since: date, changes: 0 };
}

type Occasion =
  | { readonly kind: "weighing"; readonly date: CalendarDate; readonly state: WeighingState }
  | { readonly kind: "projection"; readonly date: CalendarDate; readonly state: ProjectionState }
  | { readonly kind: "change"; readonly date: CalendarDate; readonly change: EquipmentChange };

// By date; on one day first the changes that a weighing has, then what was weighed, then the
// changes after it. A projection gives way to a weighing, and stands only before the first.
function occasions(
  register: Balance,
  weighings: readonly WeighingState[],
  projection: ProjectionState | undefined,
): Occasion[] {
  const whole = weighings.filter(({ weighing }) => weighing.of === undefined);
  const first = whole[0]?.weighing.date;
  const all: (Occasion & { readonly turn: number })[] = [
    ...whole.map((state) => ({
      kind: "weighing" as const,
      date: state.weighing.date,
      state,
      turn: 2,
    })),
    ...(projection && (first === undefined || projection.projection.date <= first)
      ? [
          {
            kind: "projection" as const,
            date: projection.projection.date,
            state: projection,
            turn: 1,
          },
        ]
      : []),
    ...register.changes.map((change) => ({
      kind: "change" as const,
      date: change.date,
      change,
      turn: change.weighedWith ? 0 : 3,
    })),
  ];
  return all.toSorted((a, b) => (a.date === b.date ? a.turn - b.turn : a.date < b.date ? -1 : 1));
}

function projectionState(
  register: Balance,
  projection: Projection,
  weighings: readonly WeighingState[],
): ProjectionState {
  const parts = weighings.filter(({ weighing }) => projection.weighings.includes(weighing.id));
  const loads = parts.flatMap(({ weighing, sum }): BalanceLoad[] =>
    sum.cg ? [{ name: weighing.title, weight: sum.weight, arm: sum.cg, role: "part" }] : [],
  );
  const items = projection.items.map((item) => loadOf(item, "in"));
  const sheet = sheetOf(register, [...loads, ...items], true);
  const weighed = sheet.lines
    .filter(({ load }) => load.role === "part")
    .reduce((total, { weight }) => total.add(weight), zero);
  return { projection, ...sheet, weighed: quantityOf(weighed, register.units.weight) };
}

function changeState(
  register: Balance,
  change: EquipmentChange,
  before: Balanced | undefined,
): ChangeState {
  const sheet = sheetOf(register, [
    ...change.out.map((item) => loadOf(item, "out")),
    ...change.in.map((item) => loadOf(item, "in")),
  ]);
  if (!before) return { change, ...sheet, standing: "too early" };
  const after = balanced(register, [amounts(register, before), amounts(register, sheet.sum)]);
  const movement =
    before.cg && after.cg && quantityOf(after.cg.amount.sub(before.cg.amount), register.units.arm);
  return {
    change,
    ...sheet,
    standing: "counted",
    before,
    after,
    ...(movement ? { movement, negligible: negligibleOf(before, after, sheet.sum.weight) } : {}),
  };
}

function negligibleOf(before: Balanced, after: Balanced, net: Quantity): Negligible {
  const largest = negligibleWeight(before.weight);
  const size = { ...net, amount: net.amount.abs() };
  return {
    weight: compareQuantities(size, largest) <= 0,
    largest,
    ...(before.chordPercent && after.chordPercent
      ? { cg: after.chordPercent.sub(before.chordPercent).abs().lt(negligibleChordPercent) }
      : {}),
  };
}

function weighingLoads({ points, out, in: added }: Weighing): BalanceLoad[] {
  return [
    ...points.map((point): BalanceLoad => {
      const { at, reads, tare, arm } = point;
      const weight = tare ? netOf(reads, tare) : reads;
      return { name: at, weight, arm, role: "point", point };
    }),
    ...out.map((item) => loadOf(item, "out")),
    ...added.map((item) => loadOf(item, "in")),
  ];
}

function netOf(reads: Quantity, tare: Quantity): Quantity {
  return quantityOf(reads.amount.sub(amountIn(tare, reads.unit)), reads.unit);
}

function loadOf(item: BalanceItem, role: "out" | "in"): BalanceLoad {
  const { name, weight, arm } = item;
  return { name, weight: role === "out" ? scale(weight, minusOne) : weight, arm, role, item };
}

// Only the place of a whole aircraft on its chord means anything.
function sheetOf(register: Balance, loads: readonly BalanceLoad[], whole = false): BalanceSheet {
  const lines = momentLines(loads, register.units);
  const { chordPercent: percent, ...sum } = balanced(register, lines);
  return { lines, sum: whole && percent ? { ...sum, chordPercent: percent } : sum };
}

function amounts({ units }: Balance, { weight, moment }: Balanced) {
  return { weight: amountIn(weight, units.weight), moment };
}

function balanced(
  { units, chord }: Balance,
  terms: readonly { readonly weight: Fraction; readonly moment: Fraction }[],
): Balanced {
  const { weight, moment, cg } = sumOfMoments(terms);
  const percent =
    cg && chord
      ? chordPercent(cg, amountIn(chord.leading, units.arm), amountIn(chord.trailing, units.arm))
      : undefined;
  return {
    weight: quantityOf(weight, units.weight),
    moment,
    ...(cg ? { cg: quantityOf(cg, units.arm) } : {}),
    ...(percent ? { chordPercent: percent } : {}),
  };
}

const zero = new Fraction(0);
const minusOne = new Fraction(-1);
