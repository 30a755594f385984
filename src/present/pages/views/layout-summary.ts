import type Fraction from "fraction.js";
import type { LaidOut } from "../../../compute/laid-out.ts";
import type { CutOut, FastenerRow, StatedLength } from "../../../model/layout.ts";
import { lengthText } from "../../format/layout-lengths.ts";
import { roundedText } from "../../format/reckoned.ts";

/** What a layout is, in a sentence: how many, how far apart, how far from the ends. */
export function layoutSummary(laidOut: LaidOut): string {
  const { piece } = laidOut.layout;
  return piece.kind === "row" ? rowSummary(piece, laidOut) : cutOutSummary(piece);
}

function rowSummary(piece: FastenerRow, { row, least }: LaidOut): string {
  const { fastener, diameter, length, edge, count, pitch } = piece;
  const { unit } = length.length;
  const only = row?.ok === true && row.positions.length === 1;
  const part =
    fastener === undefined
      ? `fastener${only ? "" : "s"} of ${diameter.typed}`
      : `${fastener} (${diameter.typed})`;
  if (!row?.ok) return `A row of ${part} over ${length.typed}, ${edge.typed} from each end.`;
  const rivets = row.positions.length;
  const first = row.positions[0];
  const ends = first ? lengthText(first, unit.symbol) : edge.typed;
  const inSizes = only ? "" : asIn(ends, edge);
  const spacing = row.pitch
    ? `${lengthText(row.pitch, unit.symbol)} apart (${diametersText(row.pitch, piece)})`
    : `in the middle${count ? "" : ": two do not fit"}`;
  const how = count
    ? "as many as the layout asks for"
    : pitch
      ? `the even pitch closest to ${pitch.typed}`
      : least
        ? `as many as a least pitch of ${lengthText(least.amount, least.unit.symbol)} allows`
        : "as many as there is room for";
  return `${rivets} × ${part}, ${spacing}, ${ends}${inSizes} from ${only ? "either" : "each"} end of ${length.typed}; ${how}.`;
}

// `2.5 D` behind the length that it comes to.
function asIn(shown: string, { typed }: StatedLength): string {
  return /[A-Z]/.test(typed) && typed !== shown ? ` (${typed})` : "";
}

function diametersText(pitch: Fraction, { length, diameter }: FastenerRow): string {
  const { unit } = length.length;
  const size = diameter.amount.mul(diameter.unit.factor).div(unit.factor);
  return `${roundedText({ value: pitch.div(size), unit: "D" })} D`;
}

function cutOutSummary({ shape, length, width, corner, cornerHole, finish }: CutOut): string {
  const size =
    shape === "circle"
      ? `A round opening, ${length.typed} across`
      : shape === "slot"
        ? `A slot, ${length.typed} long over all and ${width.typed} wide, with round ends`
        : `An opening, ${length.typed} by ${width.typed}, corners with a radius of ${lengthText(corner.length.amount, corner.length.unit.symbol)}`;
  const first = cornerHole ? `; the corners are drilled first, ${cornerHole.typed}` : "";
  const edge = finish ? `; edge finished to ${finish.typed} Ra` : "";
  return `${size}${first}${edge}.`;
}
