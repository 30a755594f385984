import {
  type BalanceReport,
  balanceReport,
  type ItemRow,
  type SheetView,
} from "../../../present/balance/balance-report.ts";
import { dateText } from "../../../present/format/dates.ts";
import { envelopeChart } from "../../../present/pages/views/envelope-chart.ts";
import { caution, type EditedAnalysis, editionNote } from "../../../present/record/edition.ts";
import { identityFacts } from "../../../present/record/identity.ts";
import type { Imprint } from "../logbook/title-sheet.ts";
import { aircraftText, grouped } from "../logbook/wording.ts";
import { Pages } from "../paper/pages.ts";
import type { PaperColumn, PaperRow } from "../paper/paper-table.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import { sheetFormat } from "../paper/sheet-format.ts";
import { signatureBoxes } from "../paper/signature-boxes.ts";
import { planTitleBlock, type TitleBlock } from "../paper/title-block.ts";
import type { Typesetter } from "../paper/typesetter.ts";
import { witnessMark } from "../paper/witness-mark.ts";
import { envelopeFigure } from "./envelope-figure.ts";

const name = "Weight and balance report";
const parts = {
  front: name,
  cases: "Loading cases",
  lines: "Weighings and equipment",
  signatures: "Signatures",
} as const;

const small = { face: "text", size: 7.2 } as const;
/** Points that a heading and the first rows of its table take. */
const room = 110;
const numberWidth = 62;

/**
 * The report on weight and balance, to be printed: what the empty weight means and where it
 * comes from, every loading case with the envelope, every line of every weighing and change,
 * and empty boxes for signatures. The same record gives the same bytes.
 * @returns `undefined` when the journal keeps no register of it.
 */
export async function balancePdf(
  edited: EditedAnalysis,
  imprint: Imprint,
): Promise<Uint8Array | undefined> {
  const { analysis, edition } = edited;
  const report = balanceReport(analysis);
  if (!report) return undefined;
  const { project } = analysis.build;
  const format = sheetFormat(imprint.paper);
  const { setter, print } = await beginPdf(
    {
      title: `${name}, ${aircraftText(edited)}`,
      subject: `${project.title}. ${editionNote(edited)}`,
      asOf: analysis.asOf.date,
      program: `Witness Mark ${imprint.programVersion}`,
    },
    format,
  );
  const pages = new Pages(setter, format, parts.front);
  front(pages, edited, report, imprint);
  if (report.cases.length > 0) {
    pages.part(parts.cases);
    loadingCases(pages, edited, report, setter);
  }
  pages.part(parts.lines);
  allLines(pages, report);
  pages.part(parts.signatures);
  signatureBoxes(pages, format, setter);

  const block: TitleBlock = {
    aircraft: aircraftText(edited),
    project: project.title,
    book: `${name}, ${edition} edition`,
    edition,
    asOf: analysis.asOf.date,
    digest: grouped(imprint.recordDigest.slice(0, 16), 4),
    caution,
    figure: {
      label: analysis.balance?.empty?.basis === "projected" ? "Projected empty" : "Empty weight",
      value: report.figure?.text ?? "not weighed",
    },
  };
  pages.sheets.forEach((sheet, index) => {
    planTitleBlock(sheet, index + 1, pages.sheets.length, block, format, setter);
  });
  return print(pages.sheets);
}

function front(
  pages: Pages,
  edited: EditedAnalysis,
  report: BalanceReport,
  { programVersion, paper, recordDigest }: Imprint,
): void {
  const { project } = edited.analysis.build;
  witnessMark(pages.sheet, pages.right - 44, pages.y + 52);
  pages.space(10);
  pages.heading(name, 60, 30);
  pages.paragraph(project.title, { face: "bold", size: 12 }, pages.right - 96);
  pages.paragraph(report.sentence, { face: "text", size: 9 }, pages.right - 96);
  pages.space(4);
  pages.facts("What is counted, and the limits", [
    ...identityFacts(edited.analysis.build),
    ...[...report.definition, ...report.limits].map(({ label, value }) => [label, value] as const),
    [
      "Units",
      `weights in ${report.units.weight}, arms in ${report.units.arm} from the datum, moments in ${report.units.moment}`,
    ],
    ["Judged on", edited.analysis.asOf.date],
    ["Printed by", `Witness Mark ${programVersion}, on ${paper}`],
    ["SHA-256 of record.json", grouped(recordDigest, 8)],
  ]);
  pages.heading("How the empty weight came about", room);
  emptyWeight(pages, report);
  if (report.negligible !== undefined) pages.paragraph(report.negligible, small);
  pages.heading("What these numbers are not", 50);
  for (const each of report.cautions) pages.paragraph(each, small);
  pages.heading("Which edition this is", 50);
  pages.paragraph(editionNote(edited), small);
}

function emptyWeight(pages: Pages, { events, hasChord }: BalanceReport): void {
  const numbers = [
    numberColumn("Change"),
    numberColumn("Empty weight"),
    numberColumn("CG"),
    ...(hasChord ? [numberColumn("% MAC", 40)] : []),
    numberColumn("CG moved"),
  ];
  pages.table({
    title: "How the empty weight came about",
    columns: [words("Date", 54), words("What", widthLeft(pages, 54, numbers)), ...numbers],
    rows: events.map((event) => ({
      cells: [
        { text: event.date },
        { text: event.what, notes: event.notes },
        { text: event.change },
        { text: event.weight, bold: true },
        { text: event.cg },
        ...(hasChord ? [{ text: event.percent }] : []),
        { text: event.movement },
      ],
    })),
    filled: false,
    none: "nothing has been weighed or projected yet",
  });
}

function loadingCases(
  pages: Pages,
  { analysis }: EditedAnalysis,
  report: BalanceReport,
  setter: Typesetter,
): void {
  const { cases, casesLack, caseSheets, hasChord } = report;
  const chart = analysis.balance && envelopeChart(analysis.balance);
  if (chart) envelopeFigure(pages, chart, setter);
  for (const each of casesLack) pages.paragraph(each, small);
  const numbers = [
    numberColumn("Weight"),
    numberColumn("CG"),
    ...(hasChord ? [numberColumn("% MAC", 40)] : []),
  ];
  const verdictWidth = 150;
  pages.table({
    title: "Loading cases",
    columns: [
      { heading: "No.", width: 24, align: "right", face: "text" },
      words("Case", widthLeft(pages, 24 + verdictWidth, numbers)),
      ...numbers,
      words("Against the limits", verdictWidth),
    ],
    rows: cases.map((each) => ({
      cells: [
        { text: `${each.number}` },
        { text: each.title, notes: each.marks },
        { text: each.weight },
        { text: each.cg },
        ...(hasChord ? [{ text: each.percent }] : []),
        { text: each.verdict, notes: each.says, bold: each.outside },
      ],
    })),
    filled: false,
    none: "no loading cases",
  });
  for (const each of caseSheets) sheetLines(pages, each);
}

function allLines(pages: Pages, report: BalanceReport): void {
  const { weighings, projection, changes } = report;
  const sheets = [...weighings, ...(projection ? [projection] : []), ...changes];
  if (sheets.length === 0) pages.paragraph("Nothing has been weighed or projected yet.");
  for (const each of sheets) sheetLines(pages, each);
}

function sheetLines(pages: Pages, sheet: SheetView): void {
  const { title, date, facts, note, rows, sum } = sheet;
  pages.heading(title, room);
  const all = [...(date === undefined ? [] : [{ label: "Date", value: dateText(date) }]), ...facts];
  if (all.length > 0) {
    pages.facts(
      `About ${title}`,
      all.map(({ label, value }) => [label, value]),
    );
  }
  if (note !== undefined) pages.paragraph(note, small);
  const numbers = [numberColumn("Weight"), numberColumn("Arm"), numberColumn("Moment", 80)];
  pages.table({
    title,
    columns: [words("Item", widthLeft(pages, 0, numbers)), ...numbers],
    rows: [...rows.map((row) => itemRow(row)), itemRow(sum, true)],
    filled: false,
    none: "no items",
  });
}

function itemRow({ what, says, estimated, weight, arm, moment }: ItemRow, bold = false): PaperRow {
  const notes = [...(says === undefined ? [] : [says]), ...(estimated ? ["estimated"] : [])];
  return {
    cells: [
      { text: what, notes, bold },
      { text: weight, bold },
      { text: arm, bold },
      { text: moment, bold },
    ],
  };
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function numberColumn(heading: string, width = numberWidth): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}

function widthLeft(pages: Pages, taken: number, columns: readonly PaperColumn[]): number {
  return columns.reduce((left, { width }) => left - width, pages.width - taken);
}
