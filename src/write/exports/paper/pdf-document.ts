import PDFDocument from "pdfkit";
import type { CalendarDate } from "../../../model/calendar.ts";
import type { Pen, Sheet } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import { typefaceFonts } from "./typefaces.ts";
import { Typesetter } from "./typesetter.ts";

declare global {
  namespace PDFKit.Mixins {
    interface StructureElementOptions {
      /** Of a table's head: what it heads. The library takes it; its types do not say so. */
      scope?: "Row" | "Column";
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

/** A file being made: plan the sheets with the typesetter, then print them. */
export interface PdfInHand {
  readonly setter: Typesetter;
  /**
   * Prints the sheets and ends the file. Once only.
   * @returns The file's bytes: PDF 1.7, tagged, faces embedded, marked as PDF/UA-1.
   */
  print(sheets: readonly Sheet[]): Promise<Uint8Array>;
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
  return { setter, print: (sheets) => print(doc, setter, sheets) };
}

async function print(
  doc: PDFKit.PDFDocument,
  setter: Typesetter,
  sheets: readonly Sheet[],
): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", resolve);
    doc.on("error", reject);
  });
  const root = doc.struct("Document");
  doc.addStructure(root);
  for (const sheet of sheets) {
    doc.addPage();
    drawSheet(sheet, { doc, setter, root });
  }
  root.end();
  doc.end();
  await ended;
  return Buffer.concat(chunks);
}

function drawSheet({ grounds, rules, marks }: Sheet, pen: Pen): void {
  const { doc } = pen;
  doc.markContent("Artifact", { type: "Layout" });
  for (const { left, top, right, bottom } of grounds) {
    doc.rect(left, top, right - left, bottom - top).fill("#eceeef");
  }
  for (const { from, to, weight } of rules) {
    doc.strokeColor(weight < 0.3 ? "#76828c" : "#16222e").lineWidth(weight);
    doc.moveTo(from[0], from[1]).lineTo(to[0], to[1]).stroke();
  }
  doc.fillColor("#16222e").strokeColor("#16222e");
  doc.endMarkedContent();
  for (const mark of marks) mark(pen);
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
