import type { LaidOut, LayoutCheck } from "../../compute/laid-out.ts";
import type { CutOut, FastenerRow, Layout, StatedLength } from "../../model/layout.ts";
import { quantityOf } from "../../model/quantity.ts";
import { given, placeRecord, quantityRecord } from "./record-values.ts";

/** A row or a cut-out as data, with where its fasteners stand and how its rules judge it. */
export function layoutRecord(layout: Layout, laidOut: LaidOut | undefined) {
  const { piece } = layout;
  return {
    number: layout.number,
    title: layout.title,
    ...given("step", layout.step),
    ...given("drawing", layout.drawing),
    ...given("sheet", layout.sheet && quantityRecord(layout.sheet)),
    ...given("note", layout.note),
    kind: piece.kind,
    ...(piece.kind === "row" ? rowRecord(piece, laidOut?.row) : cutOutRecord(piece)),
    checks: (laidOut?.checks ?? []).map(checkRecord),
    ...given("standing", laidOut?.standing),
    ...given("deviation", layout.deviation),
    source: placeRecord(layout.span),
  };
}

function rowRecord(piece: FastenerRow, row: LaidOut["row"]) {
  const { length, fastener, diameter, hole, edge, side, width, keepOuts } = piece;
  const { unit } = length.length;
  const laid = row?.ok ? row : undefined;
  return {
    ...given("fastener", fastener),
    sizes: [
      sizeRecord("length", length),
      { name: "diameter", typed: diameter.typed, quantity: quantityRecord(diameter) },
      ...named("hole", hole),
      sizeRecord("edge", edge),
      ...named("side", side),
      ...named("width", width),
    ],
    ...given("pitch", laid?.pitch && quantityRecord(quantityOf(laid.pitch, unit))),
    positions: (laid?.positions ?? []).map((place) => quantityRecord(quantityOf(place, unit))),
    keepOuts: keepOuts.map(({ from, to, clear, what }) => ({
      from: quantityRecord(from),
      to: quantityRecord(to),
      ...given("clear", clear && quantityRecord(clear.length)),
      ...given("what", what),
    })),
  };
}

function cutOutRecord({ shape, length, width, corner, cornerHole, finish }: CutOut) {
  return {
    shape,
    sizes: [
      sizeRecord("length", length),
      sizeRecord("width", width),
      sizeRecord("corner", corner),
      ...named("corner-hole", cornerHole),
      ...named("finish", finish),
    ],
  };
}

function named(name: string, stated: StatedLength | undefined) {
  return stated ? [sizeRecord(name, stated)] : [];
}

function sizeRecord(name: string, { typed, length }: StatedLength) {
  return { name, typed, quantity: quantityRecord(length) };
}

function checkRecord({ subject, what, value, rule, limits, verdict }: LayoutCheck) {
  return {
    subject,
    what,
    value: quantityRecord(value),
    rule: rule.id,
    ...given("lower", limits.lower && quantityRecord(limits.lower)),
    ...given("upper", limits.upper && quantityRecord(limits.upper)),
    ...given("verdict", verdict?.kind),
  };
}
