import { hoursText } from "../../../present/format/hours.ts";
import { type PlacedLine, type Sheet, untagged } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import type { Line, Style, Typesetter } from "./typesetter.ts";

/** What the title block at the foot of every sheet says. */
export interface TitleBlock {
  /** The aircraft: designation, serial, registration. */
  readonly aircraft: string;
  readonly project: string;
  readonly book: string;
  readonly edition: string;
  /** The day of judgement. */
  readonly asOf: string;
  /** First digits of the record's digest. */
  readonly digest: string;
  /** What the digest is of, when it is not the record. */
  readonly digestLabel?: string;
  /** Printed below the frame. */
  readonly caution: string;
  /** What the leaves are called; `sheet` unless said. */
  readonly leaf?: "sheet" | "page";
  /** Whether each leaf has an empty field for initials. */
  readonly initials?: boolean;
  /** What stands in the place of the hours, where the leaves have none. */
  readonly figure?: { readonly label: string; readonly value: string };
}

/** The part's name in the band at the top. */
export function bandTitle(part: string, { band }: SheetFormat, setter: Typesetter): PlacedLine {
  const line = setter.line(part.toUpperCase(), { face: "caps", size: 9.5 });
  return { line, x: band.left + 8, y: band.bottom - 6.6 };
}

interface Field {
  readonly label: string;
  readonly value: string;
  readonly width: number;
  readonly bold?: boolean;
}

/**
 * Plans the frame, the band with the part's name, the title block and the caution: the same
 * on every sheet, and read out on none, because the first sheet says all of it in words.
 *
 * @param number Of the sheet, counted from 1.
 */
export function planTitleBlock(
  sheet: Sheet,
  number: number,
  total: number,
  block: TitleBlock,
  format: SheetFormat,
  setter: Typesetter,
): void {
  const { frame, band, titleBlock } = format;
  const lines: PlacedLine[] = [];
  const put = (line: Line | undefined, x: number, y: number) => {
    if (line) lines.push({ line, x, y });
  };

  if (sheet.repeats) lines.push(bandTitle(sheet.part, format, setter));
  const right = setter.line(block.book, { face: "small", size: 8 });
  put(right, band.right - 8 - right.width, band.bottom - 6.6);

  const middle = titleBlock.top + 25;
  const sheetWidth = 66;
  const width = titleBlock.right - titleBlock.left - sheetWidth;
  const upper: Field[] = [
    { label: "Aircraft", value: block.aircraft, width: width * 0.44, bold: true },
    { label: "Project", value: block.project, width: width * 0.56 },
  ];
  const { leaf = "sheet" } = block;
  const hours = sheet.minutes === undefined ? "–" : hoursText(sheet.minutes);
  const initials = block.initials ? 0.14 : 0;
  const lower: Field[] = [
    { label: "Edition", value: block.edition, width: width * 0.16, bold: true },
    { label: "Judged on", value: block.asOf, width: width * 0.17 },
    { ...(block.figure ?? { label: `Hours this ${leaf}`, value: hours }), width: width * 0.19 },
    {
      label: block.digestLabel ?? "Record, SHA-256 begins",
      value: block.digest,
      width: width * (0.48 - initials),
    },
    // Empty, to be filled in by hand.
    ...(block.initials ? [{ label: "Initials", value: "", width: width * initials }] : []),
  ];
  for (const [fields, top] of [
    [upper, titleBlock.top],
    [lower, middle],
  ] as const) {
    let x = titleBlock.left;
    for (const field of fields) {
      put(setter.line(field.label, { face: "small", size: 6.2 }), x + 5, top + 8);
      put(
        firstLine(
          setter,
          field.value,
          { face: field.bold ? "bold" : "text", size: 7.6 },
          field.width - 10,
        ),
        x + 5,
        top + 19,
      );
      x += field.width;
      sheet.down(x, top, top + 25, 0.5);
    }
  }
  const corner = titleBlock.right - sheetWidth;
  put(
    setter.line(leaf === "sheet" ? "Sheet" : "Page", { face: "small", size: 6.2 }),
    corner + 5,
    titleBlock.top + 8,
  );
  put(setter.line(`${number}`, { face: "bold", size: 17 }), corner + 5, titleBlock.top + 28);
  put(
    setter.line(`${leaf} ${number} of ${total}`, { face: "text", size: 7 }),
    corner + 5,
    titleBlock.top + 43,
  );
  sheet.across(titleBlock.left, corner, middle, 0.5);
  sheet.across(titleBlock.left, titleBlock.right, titleBlock.top, 1);
  sheet.across(band.left, band.right, band.bottom, 1);
  sheet.around(frame, 1.2);
  // Marks half-way along each side, for folding and copying.
  const centre = (frame.left + frame.right) / 2;
  const waist = (frame.top + frame.bottom) / 2;
  sheet.down(centre, frame.top - 8, frame.top, 0.6);
  sheet.down(centre, frame.bottom, frame.bottom + 6, 0.6);
  sheet.across(frame.left - 8, frame.left, waist, 0.6);
  sheet.across(frame.right, frame.right + 8, waist, 0.6);

  setter
    .wrap(block.caution, { face: "small", size: 6.4 }, frame.right - frame.left)
    .forEach((line, index) => {
      put(line, frame.left, frame.bottom + 13 + index * 7.6);
    });

  sheet.marks.push(untagged(lines, "Pagination"));
}

/** What fits on one line; more is marked by an ellipsis. The title sheet has it in full. */
function firstLine(
  setter: Typesetter,
  text: string,
  style: Style,
  width: number,
): Line | undefined {
  const [first, second] = setter.wrap(text, style, width);
  if (!second) return first;
  const [cut] = setter.wrap(text, style, width - 1.5 * style.size);
  return cut && setter.line(`${cut.runs.map((run) => run.text).join("")} …`, style);
}
