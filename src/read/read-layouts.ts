import Fraction from "fraction.js";
import type { CalendarDate } from "../model/calendar.ts";
import type {
  CutOut,
  FastenerRow,
  KeptOut,
  Layout,
  NamedRule,
  StatedLength,
} from "../model/layout.ts";
import { asTyped, compareQuantities, type Quantity, scale } from "../model/quantity.ts";
import type { Faults } from "./faults.ts";
import { layoutBlocks } from "./layout-blocks.ts";
import { addUnfitRules } from "./layout-rules.ts";
import { layoutShape, type TypedCutOut, type TypedLayout, type TypedRow } from "./layout-schema.ts";
import { lengthInDiameters } from "./length-in-diameters.ts";
import { addNotPositive } from "./not-positive.ts";
import { partSizeAt } from "./part-size-syntax.ts";
import type { QuantityNode } from "./quantity-shape.ts";
import type { DayContext } from "./read-day.ts";
import { given } from "./shape.ts";
import type { SourceFile } from "./source-file.ts";
import type { TextNode } from "./typed-tree.ts";

/** The prose of an entry, in its file. */
export interface ProseStretch {
  readonly source: SourceFile;
  readonly start: number;
}

/** Reads the blocks called `layout` in an entry's prose. Those at fault are left out. */
export function readLayouts(
  { source, start }: ProseStretch,
  date: CalendarDate,
  { registers, project }: Pick<DayContext, "registers" | "project">,
  faults: Faults,
): Layout[] {
  const blocks = layoutBlocks(source, start, faults);
  if (blocks.length === 0) return [];
  const shape = layoutShape(registers, project);
  const layouts: Layout[] = [];
  for (const { tree, line } of blocks) {
    const before = faults.found.length;
    const typed = shape(tree, faults);
    const piece = typed && pieceOf(typed, faults);
    const sheet = typed?.sheet && positive(typed.sheet, "sheet", faults);
    if (!typed || !piece) continue;
    const layout: Layout = {
      date,
      number: layouts.length + 1,
      title: typed.title.text,
      ...given({
        step: typed.step?.text,
        drawing: typed.drawing?.text,
        sheet: sheet?.length,
        note: typed.note?.text,
        deviation: typed.deviation?.text,
        deviationSpan: typed.deviation?.span,
      }),
      piece,
      line,
      span: typed.title.span,
    };
    addUnfitRules(layout, registers.rules, faults);
    if (faults.found.length === before) layouts.push(layout);
  }
  return layouts;
}

function pieceOf(typed: TypedLayout, faults: Faults): FastenerRow | CutOut | undefined {
  const [row, cutOut] = [typed.row, typed["cut-out"]];
  const has = (key: string) => typed.node.entries.get(key);
  const second = has("row") && has("cut-out");
  if (second) {
    return faults.add("not-a-layout", second.key.span, {
      message: "a layout has a `row` or a `cut-out`, not both",
      help: ["put the second one into a block of its own"],
    });
  }
  if (row) return rowOf(row, faults);
  if (cutOut) return cutOutOf(cutOut, faults);
  // One that was typed and could not be read has its own faults already.
  if (has("row") || has("cut-out")) return undefined;
  return faults.add("missing-key", typed.title.span, {
    message: "a layout needs `row` or `cut-out`",
    help: ["write `row:` with the row's length, fastener and edge, or `cut-out:` with its shape"],
  });
}

function rowOf(typed: TypedRow, faults: Faults): FastenerRow | undefined {
  const before = faults.found.length;
  const diameter = diameterOf(typed, faults);
  const length = positive(typed.length, "length", faults);
  const hole = typed.hole && positive(typed.hole, "hole", faults);
  const width = typed.width && positive(typed.width, "width", faults);
  if (!diameter || !length) return undefined;
  const stated = (key: "edge" | "pitch" | "pitch-min" | "pitch-max" | "side") => {
    const node = typed[key];
    return node && lengthInDiameters(node, diameter, key, faults);
  };
  const edge = stated("edge");
  const pitch = stated("pitch");
  const [pitchMin, pitchMax] = [stated("pitch-min"), stated("pitch-max")];
  const side = stated("side");
  const count = countOf(typed, faults);
  if (pitchMin && pitchMax && compareQuantities(pitchMax.length, pitchMin.length) < 0) {
    faults.add("not-a-layout", pitchMax.span, {
      message: `\`pitch-max\` of ${pitchMax.typed} is below \`pitch-min\` of ${pitchMin.typed}`,
      help: ["exchange the two, or drop one"],
    });
  }
  if (side && width && compareQuantities(side.length, width.length) >= 0) {
    faults.add("not-a-layout", side.span, {
      message: `with \`side\` of ${side.typed} the row lies off a piece that is ${width.typed} wide`,
      help: [
        "`side` is from the nearer edge alongside to the line of the row, `width` from edge to edge",
      ],
    });
  }
  const keepOuts = (typed["keep-outs"] ?? [])
    .map((each) => keptOut(each, length.length, diameter, faults))
    .filter((each) => each !== undefined);
  const check = { edge: namesIn(typed.check?.edge), pitch: namesIn(typed.check?.pitch) };
  addUnpitched(typed, faults);
  if (!edge || faults.found.length > before) return undefined;
  return {
    kind: "row",
    length,
    ...given({ fastener: typed.fastener?.text }),
    diameter,
    ...given({ hole }),
    edge,
    ...given({ count, pitch, pitchMin, pitchMax, side, width }),
    keepOuts,
    check,
  };
}

// The diameter typed, or that of a rivet number; both together have to agree.
function diameterOf(typed: TypedRow, faults: Faults): Quantity | undefined {
  const { fastener, diameter } = typed;
  const part = fastener && rivetSize(fastener);
  if (diameter) {
    if (part && fastener && compareQuantities(part, diameter.quantity) !== 0) {
      faults.add("not-a-layout", diameter.span, {
        message: `\`diameter\` of ${asTyped(diameter.quantity)} is not that of \`${fastener.text}\`, which is ${asTyped(part)}`,
        help: ["leave `diameter` out, or correct the part number"],
      });
    }
    return positive(diameter, "diameter", faults)?.length;
  }
  // A diameter that was typed and could not be read has its own fault already.
  if (part || typed.node.entries.has("diameter")) return part || undefined;
  return faults.add("missing-key", fastener?.span ?? typed.length.span, {
    message: fastener
      ? `the diameter of \`${fastener.text}\` is not known here: the row needs \`diameter\``
      : "a row needs `fastener` or `diameter`",
    help: ["write `fastener: AN470AD4-5`, or `diameter: 1/8 in`"],
  });
}

function rivetSize({ text }: TextNode): Quantity | undefined {
  // A drill is no fastener.
  if (/^(?:no\b|number|drill|letter|#|\d|[a-z]\s)/i.test(text)) return undefined;
  const part = partSizeAt(text, 0);
  if (!part?.ok || part.end !== text.length) return undefined;
  return { typed: `${part.amount.toFraction()} in`, amount: part.amount, unit: part.unit };
}

function countOf({ count, pitch }: TypedRow, faults: Faults): FastenerRow["count"] {
  if (count && pitch) {
    return faults.add("not-a-layout", pitch.span, {
      message: "`count` and `pitch` are both given",
      help: ["give one of them; the other one follows"],
    });
  }
  if (!count || count.value > 0) return count;
  return faults.add("not-a-layout", count.span, {
    message: "a row of no fasteners is none",
    help: ["write how many there are, or leave `count` out"],
  });
}

function addUnpitched(typed: TypedRow, faults: Faults): void {
  const named = typed.check?.node.entries.has("pitch");
  const says = ["count", "pitch", "pitch-min"].some((key) => typed.node.entries.has(key));
  if (named || says) return;
  faults.add("missing-key", typed.length.span, {
    message: "nothing says how many fasteners the row has, nor how close they may stand",
    help: [
      "write `count: 12`, `pitch: 1.1 in` or `pitch-min: 4 D`",
      "or name a rule, as in `check: { pitch: pitch-3d-navy }`",
    ],
  });
}

type TypedKeepOut = NonNullable<TypedRow["keep-outs"]>[number];

function keptOut(
  typed: TypedKeepOut,
  length: Quantity,
  diameter: Quantity,
  faults: Faults,
): KeptOut | undefined {
  const { from, to } = typed;
  const clear = typed.clear && lengthInDiameters(typed.clear, diameter, "clear", faults);
  if (from.quantity.amount.lt(0) || compareQuantities(from.quantity, to.quantity) >= 0) {
    return faults.add("not-a-layout", to.span, {
      message: `the keep-out runs from ${asTyped(from.quantity)} to ${asTyped(to.quantity)}, which is no stretch`,
      help: ["measure both from the left end of the row, and write the nearer one as `from`"],
    });
  }
  if (compareQuantities(to.quantity, length) > 0) {
    return faults.add("not-a-layout", to.span, {
      message: `the keep-out to ${asTyped(to.quantity)} runs beyond the row of ${asTyped(length)}`,
      help: ["measure it from the left end of the row"],
    });
  }
  return {
    from: from.quantity,
    to: to.quantity,
    ...given({ clear, what: typed.what?.text }),
  };
}

function cutOutOf(typed: TypedCutOut, faults: Faults): CutOut | undefined {
  const before = faults.found.length;
  const shape = typed.shape.value;
  const size = (key: "length" | "width" | "diameter" | "corner" | "corner-hole" | "finish") => {
    const node = typed[key];
    return node && positive(node, key, faults);
  };
  const cornerHole = size("corner-hole");
  const [wanted, refused] = keysOf[shape];
  for (const key of refused) {
    const entry = typed.node.entries.get(key);
    if (!entry) continue;
    faults.add("unknown-key", entry.key.span, {
      message: `a ${shape} has no \`${key}\``,
      help: [
        shape === "rectangle"
          ? "its sizes are `length` and `width`"
          : `its radius follows from its ${wanted.at(-1)}`,
      ],
    });
  }
  const missing = wanted.find((key) => !typed.node.entries.has(key));
  if (missing) {
    return faults.add("missing-key", typed.shape.span, {
      message: `a ${shape} needs \`${missing}\``,
      help: [`write \`${wanted.map((key) => `${key}: 2 in`).join("`, `")}\``],
    });
  }
  const length = size(shape === "circle" ? "diameter" : "length");
  const width = shape === "circle" ? length : size("width");
  const finish = size("finish");
  const corner =
    shape === "rectangle"
      ? cornerOf(typed, size("corner"), cornerHole, faults)
      : width && half(width);
  if (!length || !width || !corner || faults.found.length > before) return undefined;
  if (shape === "slot" && compareQuantities(length.length, width.length) < 0) {
    return faults.add("not-a-layout", width.span, {
      message: `the slot is ${width.typed} wide and only ${length.typed} long`,
      help: ["`length` is over all, the longer one of the two"],
    });
  }
  const shorter = compareQuantities(length.length, width.length) < 0 ? length : width;
  if (compareQuantities(scale(corner.length, new Fraction(2)), shorter.length) > 0) {
    return faults.add("not-a-layout", corner.span, {
      message: `two corners with a radius of ${asTyped(corner.length)} do not fit into ${shorter.typed}`,
      help: ["a corner takes at most half of the shorter side"],
    });
  }
  const check = { corner: namesIn(typed.check?.corner), finish: namesIn(typed.check?.finish) };
  const [unsaid] = finish ? [] : check.finish;
  if (unsaid) {
    return faults.add("missing-key", unsaid.span, {
      message: `rule \`${unsaid.name}\` asks how smooth the edge is, and the cut-out has no \`finish\``,
      help: ["write the roughness of the cut edge as in `finish: 63 µin`"],
    });
  }
  return { kind: "cut-out", shape, length, width, corner, ...given({ cornerHole, finish }), check };
}

const keysOf = {
  rectangle: [["length", "width"], ["diameter"]],
  circle: [["diameter"], ["length", "width", "corner", "corner-hole"]],
  slot: [
    ["length", "width"],
    ["diameter", "corner", "corner-hole"],
  ],
} as const;

function cornerOf(
  typed: TypedCutOut,
  corner: StatedLength | undefined,
  hole: StatedLength | undefined,
  faults: Faults,
): StatedLength | undefined {
  const has = (key: string) => typed.node.entries.get(key);
  const both = has("corner") && has("corner-hole");
  if (both) {
    return faults.add("not-a-layout", both.key.span, {
      message: "`corner` and `corner-hole` are both given",
      help: ["the radius of a corner is half of the hole drilled there: give one of the two"],
    });
  }
  if (corner) return corner;
  if (hole) return half(hole);
  if (has("corner") || has("corner-hole")) return undefined;
  return faults.add("missing-key", typed.shape.span, {
    message: "a rectangle needs `corner`: a sharp inside corner is where a crack begins",
    help: [
      "write the radius as `corner: 3/8 in`, or the drill that makes it as `corner-hole: 3/4 in`",
    ],
  });
}

function half({ typed, length, span }: StatedLength): StatedLength {
  return { typed: `half of ${typed}`, length: scale(length, new Fraction(1, 2)), span };
}

function positive(
  { quantity, node, span }: QuantityNode,
  key: string,
  faults: Faults,
): StatedLength | undefined {
  if (quantity.amount.gt(0)) return { typed: node.text, length: quantity, span };
  return addNotPositive(key, node.text, span, faults);
}

function namesIn(nodes: readonly TextNode[] | undefined): NamedRule[] {
  return (nodes ?? []).map(({ text: name, span }) => ({ name, span }));
}
