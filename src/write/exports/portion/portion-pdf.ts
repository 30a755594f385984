import { dateText } from "../../../present/format/dates.ts";
import {
  type PortionReport,
  type PortionSumView,
  type PortionTaskView,
  portionReport,
  type SharesView,
} from "../../../present/portion/portion-report.ts";
import { caution, type EditedAnalysis, editionNote } from "../../../present/record/edition.ts";
import { identityFacts } from "../../../present/record/identity.ts";
import { sharesText } from "../../../present/tables/help.ts";
import { personName } from "../../../present/tables/named.ts";
import type { Imprint } from "../logbook/title-sheet.ts";
import { aircraftText, grouped } from "../logbook/wording.ts";
import { Pages } from "../paper/pages.ts";
import type { PaperColumn, PaperRow } from "../paper/paper-table.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import { sheetFormat } from "../paper/sheet-format.ts";
import { signatureBoxes } from "../paper/signature-boxes.ts";
import { planTitleBlock, type TitleBlock } from "../paper/title-block.ts";
import { witnessMark } from "../paper/witness-mark.ts";

const name = "Major-portion sheet";
const parts = {
  front: name,
  tasks: "The tasks",
  evidence: "Evidence in the log",
  signatures: "Signatures",
} as const;

const small = { face: "text", size: 7.2 } as const;
/** Points that a heading and the first rows of its table take. */
const room = 110;
const shareWidth = 46;
const numberWidth = 44;

/**
 * The major-portion sheet, to be printed: which list it is, both lines, every task with its
 * four shares, the divisions that were changed, paid help, the evidence with gaps first, and
 * empty boxes for signatures. The same record gives the same bytes.
 * @returns `undefined` when the journal keeps no sheet.
 */
export async function portionPdf(
  edited: EditedAnalysis,
  imprint: Imprint,
): Promise<Uint8Array | undefined> {
  const { analysis, edition } = edited;
  const report = portionReport(analysis);
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
  pages.part(parts.tasks);
  tasks(pages, edited, report);
  pages.part(parts.evidence);
  evidence(pages, report);
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
    figure: { label: "Builder, points", value: `${report.sum.builder} of ${report.sum.total}` },
  };
  pages.sheets.forEach((sheet, index) => {
    planTitleBlock(sheet, index + 1, pages.sheets.length, block, format, setter);
  });
  return print(pages.sheets);
}

function front(
  pages: Pages,
  edited: EditedAnalysis,
  report: PortionReport,
  { programVersion, paper, recordDigest }: Imprint,
): void {
  const { build, asOf } = edited.analysis;
  const { project } = build;
  witnessMark(pages.sheet, pages.right - 44, pages.y + 52);
  pages.space(10);
  pages.heading(name, 60, 30);
  pages.paragraph(project.title, { face: "bold", size: 12 }, pages.right - 96);
  pages.paragraph(report.sentence, { face: "text", size: 9 }, pages.right - 96);
  pages.space(4);
  pages.facts("Which aircraft, and which list", [
    ...identityFacts(build),
    [
      "List of tasks",
      report.list
        .map(({ label, value }) => (label === "List" ? value : `${label.toLowerCase()}: ${value}`))
        .join("; "),
    ],
    ["Judged on", asOf.date],
    ["Printed by", `Witness Mark ${programVersion}, on ${paper}`],
    ["SHA-256 of record.json", grouped(recordDigest, 8)],
  ]);
  pages.heading("The two lines", room);
  pages.table({
    title: "The builder's share against each line",
    columns: [words("Line", 190), words("Verdict", 70), words("And", pages.width - 190 - 70)],
    rows: report.lines.map(({ title, source, verdict, says }) => ({
      cells: [
        { text: title, notes: [source] },
        { text: verdict, bold: true },
        { text: says[0] ?? "", notes: says.slice(1) },
      ],
    })),
    filled: false,
    none: "no lines",
  });
  pages.heading("Sections and the whole", room);
  pages.table({
    title: "Sections and the whole, in points",
    columns: [
      words("Section", pages.width - 4 * shareWidth - 3 * numberWidth),
      ...shareColumns(),
      numberColumn("Builder", numberWidth),
      numberColumn("Of", numberWidth),
      numberColumn("Share", numberWidth),
    ],
    rows: [...report.sections.map(({ sum }) => sumRow(sum)), sumRow(report.sum, true)],
    filled: false,
    none: "no sections",
  });
  pages.heading("What this sheet is not", 50);
  for (const each of report.cautions) pages.paragraph(each, small);
  pages.heading("Which edition this is", 50);
  pages.paragraph(editionNote(edited), small);
}

function tasks(pages: Pages, edited: EditedAnalysis, report: PortionReport): void {
  pages.paragraph(report.form, small);
  for (const { title, tasks: lines, sum } of report.sections) {
    pages.heading(title, room);
    pages.table({
      title,
      columns: [
        { heading: "No.", width: 50, align: "left", face: "text" },
        words("Task", pages.width - 50 - 4 * shareWidth),
        ...shareColumns(),
      ],
      rows: [
        ...lines.map(taskRow),
        {
          cells: [
            { text: "" },
            {
              text: `${title}, together`,
              bold: true,
              notes: [`builder ${sum.builder} of ${sum.total} points, ${sum.percent}`],
            },
            ...shareCells(sum, true),
          ],
        },
      ],
      filled: false,
      none: "no tasks",
    });
  }
  if (report.sections.length === 0) pages.paragraph("The list has no tasks.");
  changes(pages, report);
  paidHelp(pages, edited);
}

function changes(pages: Pages, report: PortionReport): void {
  pages.heading("Divisions that were changed", room);
  const texts = (pages.width - 50 - 80) / 3;
  pages.table({
    title: "Divisions that were changed",
    columns: [
      { heading: "No.", width: 50, align: "left", face: "text" },
      words("On", 80),
      words("Before", texts),
      words("After", texts),
      words("Why", texts),
    ],
    rows: report.changes.map(({ number, on, before, after, why }) => ({
      cells: [
        { text: number, bold: true },
        { text: on },
        { text: before },
        { text: after },
        { text: why },
      ],
    })),
    filled: false,
    none: "none was changed",
  });
}

function paidHelp(pages: Pages, { analysis }: EditedAnalysis): void {
  const { build, help } = analysis;
  const rows = (help?.rows ?? []).filter(({ entry }) => entry.kind === "paid help");
  pages.heading("Paid help", room);
  pages.table({
    title: "Paid help",
    columns: [
      { heading: "No.", width: 50, align: "left", face: "text" },
      words("Who", 110),
      words("When", 110),
      words("What", pages.width - 50 - 110 - 110 - 90),
      words("Share of tasks", 90),
    ],
    rows: rows.map(({ entry }) => ({
      cells: [
        { text: entry.id, bold: true },
        { text: personName(build, entry.person) ?? entry.person },
        {
          text:
            entry.from === entry.to
              ? dateText(entry.from)
              : `${dateText(entry.from)} to ${dateText(entry.to)}`,
          ...(entry.place === undefined ? {} : { notes: [entry.place] }),
        },
        {
          text: entry.what,
          ...(entry.invoice === undefined ? {} : { notes: [`invoice ${entry.invoice}`] }),
        },
        {
          text: sharesText(entry) || "none said",
        },
      ],
    })),
    filled: false,
    none: help ? "none is listed" : "the journal keeps no register of help",
  });
}

function evidence(pages: Pages, report: PortionReport): void {
  pages.paragraph(
    `For each task that the builder has a share of: a dated entry by a builder or an unpaid helper, its place, what it says, a photograph, and the kind of work that is claimed. ${report.covered} of ${report.claimed} lack nothing; those that lack something come first, then those that contradict an entry, the help received, or themselves.`,
  );
  const wants = 92;
  const titles = 140;
  const photographs = 50;
  pages.table({
    title: parts.evidence,
    columns: [
      { heading: "No.", width: 44, align: "left", face: "text" },
      words("Task", titles),
      words("Lacks or contradicts", wants),
      words("Entries of", pages.width - 44 - titles - wants - photographs),
      numberColumn("Pictures", photographs),
    ],
    rows: report.evidence.map(
      ({ number, title, lacks, contradicts, dates, photographs: count }) => ({
        cells: [
          { text: number, bold: true },
          { text: title },
          {
            text: [...lacks, ...contradicts].join(", ") || "nothing",
            red: lacks.length + contradicts.length > 0,
          },
          { text: dates.join(", ") || "–" },
          { text: `${count}` },
        ],
      }),
    ),
    filled: false,
    none: "the builder claims no share yet",
  });
}

function taskRow(task: PortionTaskView): PaperRow {
  return {
    cells: [
      { text: task.number, bold: true },
      { text: task.title, notes: task.marks },
      ...(task.standing === "not applicable"
        ? Array.from({ length: 4 }, () => ({ text: "N/A" }))
        : shareCells(task)),
    ],
  };
}

function sumRow(sum: PortionSumView, bold = false): PaperRow {
  return {
    cells: [
      { text: sum.what, bold },
      ...shareCells(sum, bold),
      { text: sum.builder, bold },
      { text: sum.total, bold },
      { text: sum.percent, bold },
    ],
  };
}

function shareCells({ kit, paid, assembly, fabrication }: SharesView, bold = false) {
  return [kit, paid, assembly, fabrication].map((text) => ({ text, bold }));
}

function shareColumns(): PaperColumn[] {
  return ["A Kit", "B Paid", "C Assem.", "D Fabric."].map((heading) =>
    numberColumn(heading, shareWidth),
  );
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function numberColumn(heading: string, width: number): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}
