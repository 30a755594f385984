import type { Registers } from "../model/build.ts";
import { cutOutShapes } from "../model/layout.ts";
import type { Project } from "../model/project.ts";
import { drawingReference } from "./drawing-reference.ts";
import { quantityOf } from "./quantity-shape.ts";
import { count } from "./registers-schema.ts";
import {
  choice,
  id,
  list,
  nameOf,
  optional,
  record,
  required,
  type Shape,
  text,
  textAs,
} from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

const length = quantityOf("length");

const names: Shape<readonly TextNode[]> = (node, faults) => {
  if (node.kind === "list")
    return list("rules", text, "[edge-1-8, edge-distance-2d]")(node, faults);
  const one = text(node, faults);
  return one && [one];
};

const placedCount = textAs((node, faults) => {
  const value = count(node, faults);
  return value === undefined ? undefined : { value, span: node.span };
});

const keepOut = record("a keep-out", {
  from: required(length, "from: 6.10 in"),
  to: required(length, "to: 6.90 in"),
  clear: optional(text, "clear: 2 D"),
  what: optional(text, "what: stringer"),
});

const row = record("a row", {
  length: required(length, "length: 14.500 in"),
  fastener: optional(text, "fastener: AN470AD4-5"),
  diameter: optional(length, "diameter: 1/8 in"),
  hole: optional(length, "hole: No. 30"),
  edge: required(text, "edge: 2.5 D"),
  count: optional(placedCount, "count: 12"),
  pitch: optional(text, "pitch: 1.1 in"),
  "pitch-min": optional(text, "pitch-min: 4 D"),
  "pitch-max": optional(text, "pitch-max: 8 D"),
  side: optional(text, "side: 0.28 in"),
  width: optional(length, "width: 0.75 in"),
  "keep-outs": optional(
    list("keep-outs", keepOut, "keep-outs: [{ from: 6.10 in, to: 6.90 in, what: stringer }]"),
    "keep-outs: [{ from: 6.10 in, to: 6.90 in, what: stringer }]",
  ),
  check: optional(
    record("`check` of a row", {
      edge: optional(names, "edge: edge-1-8"),
      pitch: optional(names, "pitch: pitch-3d-navy"),
    }),
    "check: { edge: edge-1-8, pitch: pitch-3d-navy }",
  ),
});

const cutOut = record("a cut-out", {
  shape: required(choice("shape", cutOutShapes), "shape: rectangle"),
  length: optional(length, "length: 8 in"),
  width: optional(length, "width: 5 1/2 in"),
  diameter: optional(length, "diameter: 2 in"),
  corner: optional(length, "corner: 3/8 in"),
  "corner-hole": optional(length, "corner-hole: 3/4 in"),
  finish: optional(length, "finish: 63 µin"),
  check: optional(
    record("`check` of a cut-out", {
      corner: optional(names, "corner: hatch-corner"),
      finish: optional(names, "finish: cut-edge"),
    }),
    "check: { corner: hatch-corner, finish: cut-edge }",
  ),
});

/** The shape of a block called `layout`, with every name that it may use. */
export function layoutShape({ steps }: Registers, { drawings }: Project) {
  return record("a layout", {
    title: required(text, "title: Upper flange, rib 4"),
    step: optional(nameOf("step", "assemblies.yaml", steps), "step: HS-07"),
    drawing: optional(drawingReference(drawings), "drawing: HS-03 rev C"),
    sheet: optional(length, "sheet: 0.032 in"),
    note: optional(text, "note: grain spanwise"),
    row: optional(row, "row: { length: 14.500 in, diameter: 1/8 in, edge: 2.5 D, count: 12 }"),
    "cut-out": optional(cutOut, "cut-out: { shape: circle, diameter: 2 in }"),
    deviation: optional(id, "deviation: D-014"),
  });
}

/** A layout as typed and checked for shape. */
export type TypedLayout = NonNullable<ReturnType<ReturnType<typeof layoutShape>>>;
export type TypedRow = NonNullable<TypedLayout["row"]>;
export type TypedCutOut = NonNullable<TypedLayout["cut-out"]>;
