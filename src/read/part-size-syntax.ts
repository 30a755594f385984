import type Fraction from "fraction.js";
import { boltDiameterInches } from "../model/published/bolt-dash-numbers.ts";
import { drillNamed } from "../model/published/drill-sizes.ts";
import { rivetDiameterInches } from "../model/published/rivet-dash-numbers.ts";
import { type Unit, unitOf } from "../model/unit.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

/** A diameter given by the name of a drill, rivet or bolt. */
export interface PartSize {
  readonly ok: true;
  readonly amount: Fraction;
  readonly unit: Unit;
  /** Where the name ends (exclusive). */
  readonly end: number;
}

const numberDrill =
  /(?:drill\s+)?(?:no\.?|number|#)\s*(\d+)(?!\d|\.\d)(?:\s+drill\b)?|drill\s+(\d+)(?!\d|[./]\d)|(\d+)\s+drill\b/iuy;
const letterDrill =
  /(?:drill\s+)?letter\s+([a-z])\b(?:\s+drill\b)?|drill\s+([a-z])\b|([a-z])\s+drill\b/iuy;
// Solid rivets: AN and MS numbers, then the alloy letters, thickness and length dashes.
const rivet =
  /(?:(?:AN4\d\d|MS20\d{3})-?(?:AD|DD|A|B|D)?|AD|DD)-?(\d{1,2})(?:-\d{1,2}(?:[.]5)?)?(?![\w./])/uy;
// AN hex bolts: AN4-7A, AN4C6, AN4H-7. Three digits are another part.
const bolt = /AN(\d{1,2})(?:[A-Z]{0,2}-?\d{1,3}[A-Z]?)?(?![\w./])/uy;
const bareDash = /(?:A|B|D)?-?(\d{1,2})(?:-\d{1,2}(?:[.]5)?)?(?![\w./])/uy;

/**
 * Reads the name of a drill, rivet or bolt that starts at a place, as a diameter in inches:
 * `No. 30`, `#30`, `letter F drill`, `AN470AD4-5`, `AD4`, `AN4-7A`.
 * @param dashAlone Whether `-4` and `D4` are rivets too; elsewhere they are not read.
 * @returns `undefined` when no such name starts there; a fault when no such part exists.
 */
export function partSizeAt(
  text: string,
  offset: number,
  dashAlone = false,
): PartSize | SyntaxFault | undefined {
  return drillAt(text, offset) ?? rivetAt(text, offset, dashAlone) ?? boltAt(text, offset);
}

// Any other part is taken by the diameter typed for it.
function boltAt(text: string, offset: number): PartSize | undefined {
  const match = matchAt(bolt, text, offset);
  const inches = match && boltDiameterInches(Number(match[1]));
  return inches && inInches(inches, offset + match[0].length);
}

function drillAt(text: string, offset: number): PartSize | SyntaxFault | undefined {
  const match = matchAt(numberDrill, text, offset) ?? matchAt(letterDrill, text, offset);
  if (!match) return undefined;
  const name = match.slice(1).find((part) => part !== undefined) ?? "";
  const drill = drillNamed(/\d/.test(name) ? String(Number(name)) : name.toUpperCase());
  if (drill) return inInches(drill.inches, offset + match[0].length);
  return syntaxFault("a drill from No. 1 to No. 80 or from A to Z", offset, match[0].length);
}

function rivetAt(text: string, offset: number, dashAlone: boolean) {
  const match = matchAt(rivet, text, offset) ?? (dashAlone && matchAt(bareDash, text, offset));
  if (!match) return undefined;
  const inches = rivetDiameterInches(Number(match[1]));
  if (inches) return inInches(inches, offset + match[0].length);
  return syntaxFault(
    "a rivet from dash 2 to dash 12, in thirty-seconds of an inch",
    offset,
    match[0].length,
    "for any other part write its diameter, as in `1/8 in`",
  );
}

function matchAt(pattern: RegExp, text: string, offset: number): RegExpExecArray | undefined {
  pattern.lastIndex = offset;
  return pattern.exec(text) ?? undefined;
}

function inInches(amount: Fraction, end: number): PartSize {
  return { ok: true, amount, unit: unitOf("in"), end };
}
