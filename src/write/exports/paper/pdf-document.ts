import PDFDocument from "pdfkit";
import type { CalendarDate } from "../../../model/calendar.ts";
import { tidyMemory } from "../../tidy-memory.ts";
import { faintRule, inks, wash } from "./inks.ts";
import type { Pen, Sheet } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import { typefaceFonts } from "./typefaces.ts";
import { Typesetter } from "./typesetter.ts";

declare global {
  namespace PDFKit.Mixins {
    interface StructureElementOptions {
      /** Of a table's head: what it heads. The library takes both; its types do not say so. */
      scope?: "Row" | "Column";
      /** Of a figure: left, top, right and bottom, from the page's top left. */
      bbox?: [number, number, number, number];
    }
  }
}

/** What a file says about itself. */
export interface PdfMeta {
  readonly title: string;
  readonly subject: string;
  /** Stands for the time of making, so that the same record gives the same bytes. */
  readonly asOf: CalendarDate;
  readonly program: string;
}

/** How a file is printed that is too large to be held in memory. */
export interface Printing {
  /** Takes the bytes as they come, in order; the next sheet waits for it. */
  readonly put: (bytes: Uint8Array) => Promise<void>;
  /** Called before each sheet, counted from 1. */
  readonly progress?: (sheet: number) => void;
  /** Ends the work between two sheets. */
  readonly signal?: AbortSignal;
}

/**
 * A file being made: plan the sheets with the typesetter, then print them, once. It comes out
 * as PDF 1.7, tagged, faces embedded, marked as PDF/UA-1.
 */
export interface PdfInHand {
  readonly setter: Typesetter;
  /** Prints the sheets. @returns The file's bytes. */
  print(sheets: readonly Sheet[]): Promise<Uint8Array>;
  /**
   * Prints the sheets as they come and keeps none.
   * @throws Whatever `signal` was aborted with, and what `put` throws.
   */
  printTo(sheets: Iterable<Sheet> | AsyncIterable<Sheet>, printing: Printing): Promise<void>;
}

/** Begins a file. Nothing in it depends on the clock or on chance. */
export async function beginPdf(meta: PdfMeta, format: SheetFormat): Promise<PdfInHand> {
  const fonts = await typefaceFonts();
  const [year = 0, month = 1, day = 1] = meta.asOf.split("-").map(Number);
  const made = new Date(Date.UTC(year, month - 1, day));
  const options: PDFKit.PDFDocumentOptions = {
    size: [format.width, format.height],
    margin: 0,
    pdfVersion: "1.7",
    tagged: true,
    lang: "en",
    displayTitle: true,
    autoFirstPage: false,
    // No face unless it is asked for: the library's own would not be embedded.
    font: "",
    info: {
      Title: new MetadataText(meta.title).asInfo(),
      Subject: new MetadataText(meta.subject).asInfo(),
      Creator: meta.program,
      Producer: "pdfkit",
      CreationDate: made,
      ModDate: made,
    },
  };
  // The library knows this subset; its types do not.
  const subset: string = "PDF/UA";
  const doc = new PDFDocument(Object.assign(options, { subset }));
  const setter = new Typesetter(doc, fonts);
  const printTo: PdfInHand["printTo"] = (sheets, printing) => print(doc, setter, sheets, printing);
  return {
    setter,
    printTo,
    print: async (sheets) => {
      const chunks: Uint8Array[] = [];
      await printTo(sheets, {
        put: async (bytes) => {
          chunks.push(bytes);
        },
      });
      return Buffer.concat(chunks);
    },
  };
}

/** After so many sheets memory is tidied: often enough to matter, seldom enough not to cost. */
export const sheetsBetween = 100;

async function print(
  doc: PDFKit.PDFDocument,
  setter: Typesetter,
  sheets: Iterable<Sheet> | AsyncIterable<Sheet>,
  { put, progress, signal }: Printing,
): Promise<void> {
  let made: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => made.push(chunk));
    doc.on("end", resolve);
    doc.on("error", reject);
  });
  const handOver = async () => {
    const ready = made;
    made = [];
    for (const bytes of joined(ready)) await put(bytes);
  };
  const root = doc.struct("Document");
  doc.addStructure(root);
  let number = 0;
  for await (const sheet of sheets) {
    number += 1;
    signal?.throwIfAborted();
    progress?.(number);
    doc.addPage();
    await drawSheet(sheet, { doc, setter, root });
    await handOver();
    if (number % sheetsBetween === 0) tidyMemory();
  }
  root.end();
  doc.end();
  await ended;
  await handOver();
}

/** Small pieces put together; a photograph stays the piece it is and is not copied. */
function* joined(pieces: readonly Uint8Array[]): Generator<Uint8Array> {
  let small: Uint8Array[] = [];
  for (const piece of pieces) {
    if (piece.length < 16_384) {
      small.push(piece);
      continue;
    }
    if (small.length > 0) yield Buffer.concat(small);
    small = [];
    yield piece;
  }
  if (small.length > 0) yield Buffer.concat(small);
}

async function drawSheet({ grounds, rules, marks }: Sheet, pen: Pen): Promise<void> {
  const { doc } = pen;
  doc.markContent("Artifact", { type: "Layout" });
  for (const { left, top, right, bottom } of grounds) {
    doc.rect(left, top, right - left, bottom - top).fill(wash);
  }
  for (const { from, to, weight, ink } of rules) {
    doc.strokeColor(ink ? inks[ink] : weight < 0.3 ? faintRule : inks.ink).lineWidth(weight);
    doc.moveTo(from[0], from[1]).lineTo(to[0], to[1]).stroke();
  }
  doc.fillColor(inks.ink).strokeColor(inks.ink);
  doc.endMarkedContent();
  for (const mark of marks) {
    const reading = mark(pen);
    if (reading) await reading;
  }
}

/**
 * Text for the file's information, which the library writes twice: as it is, and unescaped
 * into XML. Its `toString`, used for the XML, escapes what XML would trip over.
 */
class MetadataText extends String {
  override toString(): string {
    return this.valueOf().replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  }

  /** As the type that the library declares; it takes string objects as well. */
  asInfo(): string {
    return this as unknown as string;
  }
}
