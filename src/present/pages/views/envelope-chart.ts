import { scaleLinear } from "d3-scale";
import Fraction from "fraction.js";
import type { BalanceLedger } from "../../../compute/ledgers/balance.ts";
import { type ArmLimit, armAt, weightsOf } from "../../../model/arm-limit.ts";
import type { BalanceLimits, Extreme } from "../../../model/balance.ts";
import { inBaseUnits, type Quantity, quantityOf } from "../../../model/quantity.ts";
import type { Unit } from "../../../model/unit.ts";
import { balanceText } from "../../format/balance.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** A loading, or the empty aircraft, as a place on the chart. */
export interface EnvelopeMark {
  /** In thousandths of the chart, from the left and from the top. */
  readonly x: number;
  readonly y: number;
  readonly left: Percent;
  readonly top: Percent;
  /**
   * The number of the case in the table; `E` for the empty aircraft. Marks in one place share the
   * label of the first, as in `E, 4`; the others have none.
   */
  readonly label: string;
  readonly kind: "inside" | "outside" | "empty";
  /** Whether the label ends at the mark rather than beginning there, near the right edge. */
  readonly late: boolean;
}

/** Weight against centre of gravity, with the limits. Its numbers stand in the tables. */
export interface EnvelopeChart {
  /** Corners of what the limits enclose, in a frame of 1000 by 1000; absent when one side is open. */
  readonly area?: string;
  /** Each limit as a line in the same frame. */
  readonly lines: readonly string[];
  readonly arms: readonly {
    readonly x: number;
    readonly left: Percent;
    readonly label: string;
    /** Where the label stands on the mark: labels at the edges stay inside. */
    readonly end: "start" | "middle" | "end";
  }[];
  readonly weights: readonly {
    readonly y: number;
    readonly top: Percent;
    readonly label: string;
  }[];
  readonly marks: readonly EnvelopeMark[];
  readonly units: { readonly weight: string; readonly arm: string };
  /** For those who do not see it. */
  readonly summary: string;
}

type Point = readonly [arm: number, weight: number];

/** The chart; `undefined` while there is nothing with a centre of gravity to draw. */
export function envelopeChart(ledger: BalanceLedger): EnvelopeChart | undefined {
  const { register, empty, cases } = ledger;
  const { units, limits } = register;
  const at = ({ weight, cg }: { readonly weight: Quantity; readonly cg?: Quantity }) =>
    cg && ([inUnit(cg, units.arm), inUnit(weight, units.weight)] as const);
  const emptyAt = empty && at(empty.sum);
  const loaded = cases.flatMap(({ sum, verdict }, index) => {
    const place = at(sum);
    return place ? [{ place, outside: verdict.kind === "outside", label: `${index + 1}` }] : [];
  });
  const places = [...loaded.map(({ place }) => place), ...(emptyAt ? [emptyAt] : [])];
  const corners = limits ? cornersOf(limits, units) : [];
  if (places.length === 0) return undefined;

  const most = limits?.maxWeight && inUnit(limits.maxWeight, units.weight);
  const weights = [...places, ...corners].map(([, weight]) => weight);
  const arms = [
    ...[...places, ...corners].map(([arm]) => arm),
    ...[limits?.forward, limits?.aft].flatMap((limit) =>
      limit?.kind === "constant" ? [inUnit(limit.arm, units.arm)] : [],
    ),
  ];
  const x = scaleLinear().domain(widened(arms)).nice(5).range([0, 1000]);
  const y = scaleLinear()
    .domain(widened(most === undefined ? weights : [...weights, most]))
    .nice(5)
    .range([1000, 0]);
  const bottom = y.domain()[0] ?? 0;
  const corner = ([arm, weight]: Point) => `${round(x(arm))},${round(y(weight))}`;
  const drawn = limits
    ? limitLines(limits, units, bottom, most ?? y.domain()[1] ?? 0)
    : { forward: [], aft: [] };
  const closed = drawn.forward.length > 0 && drawn.aft.length > 0;
  const mark = (place: Point, label: string, kind: EnvelopeMark["kind"]): EnvelopeMark => {
    const [left, top] = [round(x(place[0])), round(y(place[1]))];
    return {
      x: left,
      y: top,
      left: percent(left / 10),
      top: percent(top / 10),
      label,
      kind,
      late: left > 930,
    };
  };
  const outside = loaded.filter((each) => each.outside).map(({ label }) => label);
  return {
    ...(closed
      ? { area: [...drawn.forward, ...drawn.aft.toReversed()].map(corner).join(" ") }
      : {}),
    lines: [
      ...[drawn.forward, drawn.aft].filter((line) => line.length > 0),
      ...topLine(drawn, most, x.domain()),
    ].map((line) => line.map(corner).join(" ")),
    arms: x.ticks(5).map((arm) => {
      const left = round(x(arm));
      const end = left < 30 ? "start" : left > 970 ? "end" : "middle";
      return { x: left, left: percent(left / 10), label: `${arm}`, end };
    }),
    weights: y.ticks(5).map((weight) => {
      const top = round(y(weight));
      return { y: top, top: percent(top / 10), label: `${weight}` };
    }),
    marks: labelled([
      ...(emptyAt ? [mark(emptyAt, "E", "empty")] : []),
      ...loaded.map((each) => mark(each.place, each.label, each.outside ? "outside" : "inside")),
    ]),
    units: { weight: units.weight.symbol, arm: units.arm.symbol },
    summary: summaryOf(ledger, outside),
  };
}

/** Nearer than this two labels would be printed over each other, in thousandths. */
const near = 18;

function labelled(marks: readonly EnvelopeMark[]): EnvelopeMark[] {
  const firsts = marks.map((mark) =>
    marks.findIndex(
      (other) => Math.abs(other.x - mark.x) < near && Math.abs(other.y - mark.y) < near,
    ),
  );
  return marks.map((mark, index) => ({
    ...mark,
    label: marks
      .filter((_, other) => firsts[other] === index)
      .map(({ label }) => label)
      .join(", "),
  }));
}

function summaryOf({ register, empty, cases }: BalanceLedger, outside: readonly string[]): string {
  const start = empty?.sum.cg
    ? `Empty aircraft at ${balanceText(empty.sum.weight)} and ${balanceText(empty.sum.cg)}. `
    : "";
  const counted = `${cases.length} loading ${cases.length === 1 ? "case" : "cases"}`;
  if (!register.limits) return `${start}${counted}, no limits declared.`;
  const verdict =
    outside.length === 0
      ? "none outside the limits"
      : `outside the limits: number ${outside.join(", ")}`;
  return `${start}${counted}, ${verdict}.`;
}

interface Lines {
  readonly forward: readonly Point[];
  readonly aft: readonly Point[];
}

// Each limit from the lowest weight it is given for up to the greatest weight. A limit that is
// the same at every weight goes down as far as the other one, or to the foot of the chart.
function limitLines(
  { forward, aft }: BalanceLimits,
  units: { readonly weight: Unit; readonly arm: Unit },
  bottom: number,
  top: number,
): Lines {
  const ends = [forward, aft].flatMap((limit) => {
    const found = limit && weightsOf(limit);
    return found ? [found] : [];
  });
  const low = Math.max(bottom, ...ends.map(({ lowest }) => inUnit(lowest, units.weight)));
  const high = Math.min(top, ...ends.map(({ highest }) => inUnit(highest, units.weight)));
  const line = (limit: ArmLimit | undefined, end: Extreme): Point[] => {
    if (!limit) return [];
    if (limit.kind === "constant") {
      const arm = inUnit(limit.arm, units.arm);
      return [
        [arm, low],
        [arm, high],
      ];
    }
    const { corners } = limit;
    const between = corners
      .map((corner): Point => [inUnit(corner.arm, units.arm), inUnit(corner.weight, units.weight)])
      .filter(([, weight]) => weight >= low && weight <= high);
    const cut = corners.find(({ weight }) => inUnit(weight, units.weight) > high);
    const atTop = cut && armAtNumber(limit, high, units, end);
    const atFoot = armAtNumber(limit, low, units, end);
    return [
      ...(between[0]?.[1] === low || atFoot === undefined ? [] : [[atFoot, low] as const]),
      ...between,
      ...(between.at(-1)?.[1] === high || atTop === undefined ? [] : [[atTop, high] as const]),
    ];
  };
  return { forward: line(forward, "forward"), aft: line(aft, "aft") };
}

// The greatest weight: between the two limits where they reach it, else right across.
function topLine(
  { forward, aft }: Lines,
  most: number | undefined,
  across: readonly number[],
): Point[][] {
  if (most === undefined) return [];
  const [from, to] = [forward.at(-1), aft.at(-1)];
  if (!from || !to) return [across.map((arm): Point => [arm, most])];
  return from[1] === most && to[1] === most ? [[from, to]] : [];
}

function armAtNumber(
  limit: ArmLimit,
  weight: number,
  units: { readonly weight: Unit; readonly arm: Unit },
  end: Extreme,
): number | undefined {
  const arm = armAt(limit, quantityOf(new Fraction(weight), units.weight), end);
  return arm && inUnit(arm, units.arm);
}

function cornersOf(
  { forward, aft }: BalanceLimits,
  units: { readonly weight: Unit; readonly arm: Unit },
): Point[] {
  return [forward, aft].flatMap((limit): Point[] =>
    limit?.kind === "corners"
      ? limit.corners.map(({ weight, arm }) => [
          inUnit(arm, units.arm),
          inUnit(weight, units.weight),
        ])
      : [],
  );
}

// Some room on either side, and some where everything stands in one place.
function widened(values: readonly number[]): [number, number] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = (most - least) * 0.12 || Math.abs(most) * 0.1 || 1;
  return [least - room, most + room];
}

// Only for drawing: comparisons are made exactly, elsewhere.
function inUnit(quantity: Quantity, unit: Unit): number {
  return inBaseUnits(quantity).sub(unit.offset).div(unit.factor).valueOf();
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
