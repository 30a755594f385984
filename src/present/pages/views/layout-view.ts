import type Fraction from "fraction.js";
import { whyNoRow } from "../../../compute/checks/row-does-not-fit.ts";
import { type LaidOut, type LayoutCheck, rowWords } from "../../../compute/laid-out.ts";
import { authorityText, limitsText, precedenceText } from "../../../compute/limits-text.ts";
import type { Row } from "../../../compute/reckon/lay-row.ts";
import {
  type CutOut,
  type FastenerRow,
  type Layout,
  layoutSizes,
  type StatedLength,
} from "../../../model/layout.ts";
import { quantityOf } from "../../../model/quantity.ts";
import { unitOf } from "../../../model/unit.ts";
import { inMillimetres, lengthText, onTheTape } from "../../format/layout-lengths.ts";
import { roundedText } from "../../format/reckoned.ts";
import { limitSetUrl } from "../limits-page.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type TemplatePaper, templateFile, templatePapers } from "../template-files.ts";
import { type ClecoView, clecoView } from "./cleco-view.ts";
import { type CutOutDrawing, cutOutDrawing } from "./cut-out-drawing.ts";
import { layoutSummary } from "./layout-summary.ts";
import { type RowDrawing, rowDrawing } from "./row-drawing.ts";

/** One length of a layout against a rule. */
export interface LayoutCheckView {
  readonly what: string;
  readonly value: string;
  readonly limits: string;
  readonly rule: Mention;
  /** Who says so. */
  readonly source: string;
  readonly precedence?: string;
  readonly standing: "within" | "out" | "accounted-for" | "no-rule";
  readonly verdict: string;
}

/** Where one fastener goes. */
export interface PlaceRow {
  readonly number: number;
  readonly left: string;
  /** The same on a tape, where it falls on a mark. */
  readonly tape: string;
  readonly right: string;
  readonly millimetres: string;
}

/** A size of a layout in words, for those who do not see the drawing. */
export interface SizeRow {
  readonly what: string;
  readonly typed: string;
  readonly millimetres: string;
}

/** A layout as its day's sheet shows it. */
export interface LayoutView {
  readonly anchor: string;
  readonly number: number;
  readonly title: string;
  /** Step, drawing and sheet. */
  readonly over: readonly Mention[];
  /** What it is, in a sentence or two. */
  readonly summary: string;
  readonly note?: string;
  readonly drawing?: RowDrawing | CutOutDrawing;
  /** What stands behind each mark of a keep-out: `K1: stringer, kept clear by 1.5 D`. */
  readonly keptOut: readonly string[];
  /** How the drawing is to be read. */
  readonly caption: string;
  /** Why a row cannot be laid out; in the place of a drawing. */
  readonly trouble?: string;
  readonly cleco?: ClecoView;
  readonly sizes: readonly SizeRow[];
  readonly places: readonly PlaceRow[];
  /** Unit of the places. */
  readonly unit: string;
  /** Whether a place is ever on the mark of a tape. */
  readonly taped: boolean;
  readonly checks: readonly LayoutCheckView[];
  readonly deviation?: Mention;
  /** Sheets to be printed at full size. */
  readonly templates: readonly Link[];
}

/** The id of a layout on its day's sheet. */
export function layoutAnchor({ number }: Pick<Layout, "number">): string {
  return `layout-${number}`;
}

/** A layout as the pages show it. */
export function layoutView(record: RecordIndex, links: Links, laidOut: LaidOut): LayoutView {
  const { layout, row, checks, deviation } = laidOut;
  const { piece } = layout;
  const laid = row?.ok ? row : undefined;
  const drawing =
    piece.kind === "cut-out"
      ? cutOutDrawing(piece)
      : laid && rowDrawing(piece, laid, brokenIn(checks));
  const places = piece.kind === "row" && laid ? placesOf(piece, laid) : [];
  return {
    anchor: layoutAnchor(layout),
    number: layout.number,
    title: layout.title,
    over: overOf(links, layout),
    summary: layoutSummary(laidOut),
    ...(layout.note === undefined ? {} : { note: layout.note }),
    ...(drawing ? { drawing } : {}),
    ...(piece.kind === "row" && row?.ok === false
      ? { trouble: onPage(whyNoRow(piece, row, laidOut).message) }
      : {}),
    ...(piece.kind === "row" ? { cleco: clecoView(piece.diameter) } : {}),
    keptOut: piece.kind === "row" ? keptOutWords(piece) : [],
    caption: captionOf(drawing),
    sizes: piece.kind === "row" ? rowSizes(piece, laid) : cutOutSizes(piece),
    places,
    unit: piece.length.length.unit.symbol,
    taped: places.some(({ tape }) => tape !== ""),
    checks: checks.map((check) => checkView(record, links, layout, check, laidOut.standing)),
    ...(deviation ? { deviation: links.deviation(deviation.id, deviation.date) } : {}),
    templates: drawing
      ? templatePapers.map((paper: TemplatePaper) => ({
          text: `${paper} (PDF)`,
          href: `${links.root}${templateFile(layout, paper)}`,
        }))
      : [],
  };
}

function brokenIn(checks: readonly LayoutCheck[]): ReadonlySet<string> {
  const broken = checks.filter(({ verdict }) => verdict !== undefined && verdict.kind !== "within");
  return new Set(broken.map(({ what }) => what));
}

function keptOutWords({ keepOuts }: FastenerRow): string[] {
  return keepOuts.map(
    ({ clear, what = "kept out" }, index) =>
      `K${index + 1}: ${what}${clear ? `, kept clear by ${clear.typed}` : ""}`,
  );
}

function captionOf(drawing: LayoutView["drawing"]): string {
  if (drawing?.kind !== "row") return "To one scale; the edges of the sheet are not shown.";
  const broken = drawing.breaks.length > 0 ? ", broken where it is alike" : "";
  return `To scale along the row${broken}, but not across it. Lay out from one end: stepping off the pitch adds up what it was rounded by.`;
}

function overOf(links: Links, { step, drawing, sheet }: Layout): Mention[] {
  return [
    ...(step === undefined ? [] : [links.step(step)]),
    ...(drawing === undefined ? [] : [{ text: drawing }]),
    ...(sheet ? [{ text: `${sheet.typed} thick` }] : []),
  ];
}

function placesOf({ length }: FastenerRow, { positions }: Row): PlaceRow[] {
  const { unit, amount } = length.length;
  return positions.map((place, index) => ({
    number: index + 1,
    left: roundedText({ value: place, unit: unit.symbol }),
    tape: unit === unitOf("in") ? onTheTape(place, unit) : "",
    right: roundedText({ value: amount.sub(place), unit: unit.symbol }),
    millimetres: inMillimetres(quantityOf(place, unit)),
  }));
}

function rowSizes(piece: FastenerRow, row: Row | undefined): SizeRow[] {
  const { length, diameter, hole, edge, side, width, keepOuts } = piece;
  const { unit } = length.length;
  const worked = (what: string, value: Fraction | undefined, typed?: string): SizeRow[] => {
    if (!value) return [];
    const text = lengthText(value, unit.symbol);
    return [
      {
        what,
        typed: typed === undefined || typed === text ? text : `${text} (${typed})`,
        millimetres: inMillimetres(quantityOf(value, unit)),
      },
    ];
  };
  return [
    sizeRow("length over all", length),
    { what: "fastener", typed: diameter.typed, millimetres: inMillimetres(diameter) },
    ...(hole ? [sizeRow("hole", hole)] : []),
    ...worked(
      rowWords.ends,
      row?.positions[0],
      // A single fastener stands in the middle, whatever the edge was to be.
      row?.pitch && /D/.test(edge.typed) ? edge.typed : undefined,
    ),
    ...worked("pitch", row?.pitch),
    ...(side ? [sizeRow("edge distance alongside", side)] : []),
    ...(width ? [sizeRow("width", width)] : []),
    ...keepOuts.flatMap(({ from, to, clear, what }, index) => {
      const name = `K${index + 1}${what === undefined ? "" : ` (${what})`}`;
      return [
        { what: `${name} from`, typed: from.typed, millimetres: inMillimetres(from) },
        { what: `${name} to`, typed: to.typed, millimetres: inMillimetres(to) },
        ...(clear ? [sizeRow(`clear of ${name}`, clear)] : []),
      ];
    }),
  ];
}

function cutOutSizes({ shape, length, width, corner, cornerHole, finish }: CutOut): SizeRow[] {
  if (shape === "circle") {
    return [
      sizeRow("diameter", length),
      ...(finish ? [sizeRow("roughness of the edge", finish)] : []),
    ];
  }
  return [
    sizeRow("length over all", length),
    sizeRow("width", width),
    sizeRow(shape === "slot" ? "radius of the ends" : "corner radius", corner),
    ...(cornerHole ? [sizeRow("drilled first in each corner", cornerHole)] : []),
    ...(finish ? [sizeRow("roughness of the edge", finish)] : []),
  ];
}

function sizeRow(what: string, { typed, length }: StatedLength): SizeRow {
  const { amount, unit } = length;
  const worked = /D|half/.test(typed) ? `${lengthText(amount, unit.symbol)} (${typed})` : typed;
  // Roughness is far below a hundredth of a millimetre.
  const millimetres = unit === unitOf("µin") ? "" : inMillimetres(length);
  return { what, typed: worked, millimetres };
}

function checkView(
  { analysis }: RecordIndex,
  links: Links,
  layout: Layout,
  { what, value, rule, over, limits, verdict, fault }: LayoutCheck,
  standing: LaidOut["standing"],
): LayoutCheckView {
  const declared = analysis.build.rules.has(rule.id);
  const out = verdict !== undefined && verdict.kind !== "within";
  const decided = out && standing === "accounted for";
  return {
    what,
    value: lengthText(value.amount, value.unit.symbol),
    limits: fault ? "not known" : limitsText(limits, rule, layoutSizes(layout)),
    rule: declared
      ? links.rule(rule.id)
      : { text: rule.title, href: links.to(limitSetUrl(rule.set ?? rule.id)) },
    source: authorityText(rule),
    ...(over ? { precedence: onPage(precedenceText(rule, over)) } : {}),
    standing: !verdict ? "no-rule" : decided ? "accounted-for" : out ? "out" : "within",
    verdict: !verdict
      ? "not judged"
      : out
        ? `${decided ? "out, accounted for" : "out"}: ${lengthText(verdict.by, verdict.limit.unit.symbol)} ${verdict.kind}`
        : "within",
  };
}

function onPage(text: string): string {
  return text.replaceAll("`", "");
}
