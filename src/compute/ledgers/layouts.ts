import Fraction from "fraction.js";
import { type Build, deviationsOf, layoutsOf } from "../../model/build.ts";
import type { Span } from "../../model/diagnostic.ts";
import {
  type CutOut,
  type FastenerRow,
  type Layout,
  type LayoutSubject,
  layoutSizes,
  type NamedRule,
} from "../../model/layout.ts";
import { layoutRule } from "../../model/layout-rule.ts";
import { compareQuantities, type Quantity, quantityOf, subtract } from "../../model/quantity.ts";
import type { Limits } from "../../model/tolerance.ts";
import { judge } from "../judge.ts";
import { type LaidOut, type LayoutCheck, type LayoutStanding, rowWords } from "../laid-out.ts";
import { limitsOf } from "../limits.ts";
import { amountIn } from "../reckon/amount-in.ts";
import { layRow, type NoRow, type Row } from "../reckon/lay-row.ts";

/**
 * Every layout worked out, oldest first: where the fasteners of a row stand, and how its
 * lengths stand with the rules it names.
 *
 * A row that says its `count` has just that, and rules only judge it. Otherwise it keeps to the
 * least and greatest pitch, those typed and those of the rules named, and takes the even pitch
 * closest to `pitch`, or as many fasteners as there is room for. Distances are those from centre
 * to centre and from centre to edge.
 *
 * A rule that is broken is accounted for by a deviation about which something has been decided.
 */
export function layoutsLedger(build: Build): LaidOut[] {
  const rulesFor = ruleFinder(build);
  const deviations = new Map(deviationsOf(build).map((deviation) => [deviation.id, deviation]));
  return layoutsOf(build).map((layout) => {
    const { piece } = layout;
    const deviation = deviations.get(layout.deviation ?? "");
    const bounds = piece.kind === "row" ? pitchBounds(piece, rulesFor(layout, "pitch")) : {};
    const row = piece.kind === "row" ? laid(piece, bounds) : undefined;
    const measured = piece.kind === "row" ? rowLengths(piece, row) : cutOutLengths(piece);
    const checks = measured.flatMap(({ subject, ...of }) =>
      rulesFor(layout, subject).map((judged) => checkOf({ subject, ...of }, judged)),
    );
    return {
      layout,
      ...(row ? { row } : {}),
      ...(bounds.least ? { least: bounds.least } : {}),
      checks,
      standing: standingOf(row, checks, deviation?.disposition !== undefined),
      ...(deviation ? { deviation } : {}),
    };
  });
}

type Judged = Pick<LayoutCheck, "rule" | "over" | "limits" | "fault">;

function ruleFinder({ rules }: Build): (layout: Layout, subject: LayoutSubject) => Judged[] {
  const find = layoutRule(rules);
  return (layout, subject) => {
    const check: Partial<Record<LayoutSubject, readonly NamedRule[]>> = layout.piece.check;
    return (check[subject] ?? []).flatMap((named): Judged[] => {
      const found = find(named, subject, layout);
      // Reading reports a name that leads to no rule.
      if (!found?.ok) return [];
      const result = limitsOf(found.rule, layoutSizes(layout));
      return [
        {
          rule: found.rule,
          ...(found.over ? { over: found.over } : {}),
          ...(result.ok ? { limits: result.limits } : { limits: {}, fault: result.fault }),
        },
      ];
    });
  };
}

interface PitchBounds {
  readonly least?: Quantity;
  readonly most?: Quantity;
}

// What is typed binds; what a rule says binds where the builder leaves the number to it.
function pitchBounds(
  { count, pitchMin, pitchMax }: FastenerRow,
  rules: readonly { readonly limits: Limits }[],
): PitchBounds {
  const said = count ? [] : rules.map(({ limits }) => limits);
  const least = [pitchMin?.length, ...said.map(({ lower }) => lower)].reduce(larger, undefined);
  const most = [pitchMax?.length, ...said.map(({ upper }) => upper)].reduce(smaller, undefined);
  return { ...(least ? { least } : {}), ...(most ? { most } : {}) };
}

type Maybe = Quantity | undefined;
const larger = (a: Maybe, b: Maybe): Maybe =>
  a && b && compareQuantities(a, b) >= 0 ? a : (b ?? a);
const smaller = (a: Maybe, b: Maybe): Maybe =>
  a && b && compareQuantities(a, b) <= 0 ? a : (b ?? a);

function laid(piece: FastenerRow, { least, most }: PitchBounds): Row | NoRow {
  const { length, edge, side, width, count, pitch, diameter, keepOuts } = piece;
  const { unit, amount } = length.length;
  const inUnit = (quantity: Quantity) => amountIn(quantity, unit);
  const between = amount.sub(inUnit(edge.length).mul(2));
  // A count needs no least pitch; holes side by side are a diameter apart at the least.
  const even = count && count.value > 1 && between.gt(0) ? between.div(count.value - 1) : amount;
  const widest = larger(diameter, piece.hole?.length) ?? diameter;
  const hole = inUnit(widest);
  const pitchMin = count ? (least ? inUnit(least) : even) : inUnit(larger(least, widest) ?? widest);
  const along = [side?.length, side && width && subtract(width.length, side.length)]
    .filter((each) => each !== undefined)
    .map(inUnit)
    .find((each) => each.mul(2).lt(hole));
  if (along) return { ok: false, why: { kind: "over the edge", edge: along, hole } };
  return layRow({
    length: amount,
    edge: inUnit(edge.length),
    hole,
    pitchMin,
    ...(most ? { pitchMax: inUnit(most) } : {}),
    ...(count ? { count: count.value } : {}),
    ...(pitch ? { pitch: inUnit(pitch.length) } : {}),
    keepOuts: keepOuts.map(({ from, to, clear }) => {
      const margin = clear ? inUnit(clear.length) : new Fraction(0);
      return { from: inUnit(from).sub(margin), to: inUnit(to).add(margin) };
    }),
  });
}

type Measured = Pick<LayoutCheck, "subject" | "what" | "value" | "span">;

function rowLengths(piece: FastenerRow, row: Row | NoRow | undefined): Measured[] {
  if (!row?.ok) return [];
  const { length, edge, side, width, count, pitch, pitchMin } = piece;
  const { unit } = length.length;
  const [first] = row.positions;
  return [
    ...(first
      ? [
          {
            subject: "edge" as const,
            what: rowWords.ends,
            value: quantityOf(first, unit),
            span: edge.span,
          },
        ]
      : []),
    ...(side
      ? [
          {
            subject: "edge" as const,
            what: rowWords.near,
            value: side.length,
            span: side.span,
          },
        ]
      : []),
    ...(side && width
      ? [
          {
            subject: "edge" as const,
            what: rowWords.far,
            value: subtract(width.length, side.length),
            span: width.span,
          },
        ]
      : []),
    ...(row.pitch
      ? [
          {
            subject: "pitch" as const,
            what: rowWords.pitch,
            value: quantityOf(row.pitch, unit),
            span: (count ?? pitch ?? pitchMin ?? length).span,
          },
        ]
      : []),
  ];
}

const cornerWords = {
  rectangle: "corner radius",
  circle: "radius",
  slot: "radius of the ends",
} as const;

function cutOutLengths({ shape, corner, finish }: CutOut): Measured[] {
  return [
    { subject: "corner", what: cornerWords[shape], value: corner.length, span: corner.span },
    ...(finish
      ? [
          {
            subject: "finish" as const,
            what: "roughness of the edge",
            value: finish.length,
            span: finish.span,
          },
        ]
      : []),
  ];
}

function checkOf(measured: Measured & { readonly span: Span }, judged: Judged): LayoutCheck {
  const verdict = judged.fault ? undefined : judge(measured.value, judged.limits);
  return { ...measured, ...judged, ...(verdict ? { verdict } : {}) };
}

function standingOf(
  row: Row | NoRow | undefined,
  checks: readonly LayoutCheck[],
  decided: boolean,
): LayoutStanding {
  if (row?.ok === false) return "no row";
  const verdicts = checks.flatMap(({ verdict }) => verdict ?? []);
  if (verdicts.length === 0) return "no rule";
  if (verdicts.every(({ kind }) => kind === "within")) return "within";
  return decided ? "accounted for" : "out";
}
