import { caution, type EditedAnalysis, editionNote } from "../../../present/record/edition.ts";
import { type HoursRow, hoursRows } from "../../../present/tables/hours.ts";
import { Pages } from "../paper/pages.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import type { Sheet } from "../paper/sheet.ts";
import { type SheetFormat, sheetFormat } from "../paper/sheet-format.ts";
import { signatureBoxes } from "../paper/signature-boxes.ts";
import { planTitleBlock, type TitleBlock } from "../paper/title-block.ts";
import type { Typesetter } from "../paper/typesetter.ts";
import { ledgerTable } from "./ledger-table.ts";
import { type Imprint, titleSheet } from "./title-sheet.ts";
import { totalsPages } from "./totals.ts";
import { aircraftText, bookName, grouped, parts } from "./wording.ts";

/**
 * The hours as a book to be printed: title sheet, every session in order with running totals
 * brought and carried forward, study and shop apart, totals, and empty boxes for signatures.
 * The same record gives the same bytes.
 */
export async function logbookPdf(edited: EditedAnalysis, imprint: Imprint): Promise<Uint8Array> {
  const { analysis, edition } = edited;
  const { project } = analysis.build;
  const format = sheetFormat(imprint.paper);
  const { setter, print } = await beginPdf(
    {
      title: `${bookName}, ${aircraftText(edited)}`,
      subject: `${project.title}. ${editionNote(edited)}`,
      asOf: analysis.asOf.date,
      program: `Witness Mark ${imprint.programVersion}`,
    },
    format,
  );
  const rows = hoursRows(analysis);
  const { sheets: following, begins } = partSheets(edited, rows, format, setter);

  // How many sheets the title takes does not depend on the numbers it lists.
  const front = (before: number): Sheet[] => {
    const pages = new Pages(setter, format, parts.title);
    const contents = new Map([...begins].map(([part, index]) => [part, before + index + 1]));
    titleSheet(pages, edited, imprint, rows.length, contents);
    return pages.sheets;
  };
  const sheets = [...front(front(0).length), ...following];

  const block: TitleBlock = {
    aircraft: aircraftText(edited),
    project: project.title,
    book: `${bookName}, ${edition} edition`,
    edition,
    asOf: analysis.asOf.date,
    digest: grouped(imprint.recordDigest.slice(0, 16), 4),
    caution,
  };
  sheets.forEach((sheet, index) => {
    planTitleBlock(sheet, index + 1, sheets.length, block, format, setter);
  });
  return print(sheets);
}

/** The parts after the title, and the index of the sheet on which each begins. */
function partSheets(
  { analysis }: EditedAnalysis,
  rows: readonly HoursRow[],
  format: SheetFormat,
  setter: Typesetter,
) {
  const width = format.frame.right - format.frame.left;
  const pages = new Pages(setter, format, parts.build);
  const begins = new Map<string, number>([[parts.build, 0]]);
  const begin = (part: string) => {
    pages.part(part);
    begins.set(part, pages.sheets.length - 1);
  };
  const build = rows.filter(({ line }) => !line.apart);
  const apart = rows.filter(({ line }) => line.apart);
  pages.table(ledgerTable(parts.build, build, width), "full");
  if (apart.length > 0) {
    begin(parts.apart);
    pages.table(ledgerTable(parts.apart, apart, width), "full");
  }
  begin(parts.totals);
  totalsPages(pages, analysis);
  begin(parts.signatures);
  signatureBoxes(pages, format, setter);
  return { sheets: pages.sheets, begins };
}
