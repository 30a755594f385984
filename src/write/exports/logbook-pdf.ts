import type { Hours, HoursLine } from "../../compute/analysis.ts";
import type { CalendarDate, Minutes } from "../../model/calendar.ts";
import { roles } from "../../model/person.ts";
import { kindsApart, workKinds } from "../../model/session.ts";
import { hoursText } from "../../present/format/hours.ts";
import { caution, type EditedAnalysis, editionNote } from "../../present/record/edition.ts";
import { amendmentText, type HoursRow, hoursRows, nameAt } from "../../present/tables/hours.ts";
import { type Fact, Pages } from "./paper/pages.ts";
import type { PaperColumn, PaperRow, PaperTable } from "./paper/paper-table.ts";
import { beginPdf } from "./paper/pdf-document.ts";
import { type Paper, type SheetFormat, sheetFormat } from "./paper/sheet-format.ts";
import { signatureBoxes } from "./paper/signature-boxes.ts";
import { drawTitleBlock, type TitleBlock } from "./paper/title-block.ts";
import type { Typesetter } from "./paper/typesetter.ts";
import { witnessMark } from "./paper/witness-mark.ts";

/** What the paper logbook needs beside the record. */
export interface LogbookOptions {
  readonly paper: Paper;
  readonly programVersion: string;
  /** SHA-256 of `record.json` of the same edition, as 64 hexadecimal digits. */
  readonly recordDigest: string;
}

const parts = {
  title: "Title sheet",
  build: "Part 1: hours of the build",
  apart: "Part 2: study and shop, counted apart",
  totals: "Part 3: totals",
  signatures: "Signatures",
} as const;

const bookName = "Hours logbook";

/**
 * The hours as a book to be printed: title sheet, every session in order with running totals
 * brought and carried forward, study and shop apart, totals, and empty boxes for signatures.
 * The same record gives the same bytes.
 */
export async function logbookPdf(
  edited: EditedAnalysis,
  options: LogbookOptions,
): Promise<Uint8Array> {
  const { analysis, edition } = edited;
  const { project } = analysis.build;
  const format = sheetFormat(options.paper);
  const pdf = beginPdf(
    {
      title: `${bookName}, ${aircraft(edited)}`,
      subject: `${project.title}. ${editionNote(edited)}`,
      asOf: analysis.asOf.date,
      program: `Witness Mark ${options.programVersion}`,
    },
    format,
  );
  const { setter } = pdf;
  const rows = hoursRows(analysis);
  const contents = new Contents(edited, options, rows, format, setter);

  // The title sheet lists where the parts begin; how many sheets it takes does not depend on
  // the numbers it lists.
  const front = contents.titleSheets(new Map()).length;
  const { sheets: rest, starts } = contents.parts(front);
  const sheets = [...contents.titleSheets(starts), ...rest];

  const block: TitleBlock = {
    aircraft: aircraft(edited),
    project: project.title,
    book: `${bookName}, ${edition} edition`,
    edition,
    asOf: analysis.asOf.date,
    digest: grouped(options.recordDigest.slice(0, 16), 4),
    caution,
  };
  sheets.forEach((sheet, index) => {
    drawTitleBlock(sheet, index + 1, sheets.length, block, format, setter);
  });
  return pdf.print(sheets);
}

class Contents {
  readonly #edited: EditedAnalysis;
  readonly #options: LogbookOptions;
  readonly #rows: readonly HoursRow[];
  readonly #format: SheetFormat;
  readonly #setter: Typesetter;

  constructor(
    edited: EditedAnalysis,
    options: LogbookOptions,
    rows: readonly HoursRow[],
    format: SheetFormat,
    setter: Typesetter,
  ) {
    this.#edited = edited;
    this.#options = options;
    this.#rows = rows;
    this.#format = format;
    this.#setter = setter;
  }

  /** @param starts Number of the sheet on which each part begins. */
  titleSheets(starts: ReadonlyMap<string, number>) {
    const { analysis } = this.#edited;
    const { build, hours } = analysis;
    const { project } = build;
    const pages = new Pages(this.#setter, this.#format, parts.title);
    witnessMark(pages.sheet, this.#format.frame.right - 58, pages.y + 52);
    pages.space(10);
    pages.heading(bookName, 34);
    pages.paragraph(project.title, { face: "bold", size: 12 }, this.#format.frame.right - 110);
    pages.paragraph(project.summary, { face: "text", size: 8.4 }, this.#format.frame.right - 110);
    pages.space(6);
    const builders = [...build.people.values()].filter(({ role }) => role === "builder");
    const first = build.days[0];
    const last = build.days.at(-1);
    const facts: Fact[] = [
      ["Designation", project.designation],
      ["Builder's serial number", project.serial],
      ...(project.registration === undefined
        ? []
        : ([["Registration", project.registration]] as const)),
      ["Kind of project", project.basis],
      ["Built by", builders.map(({ name }) => name).join(", ") || "nobody is declared as builder"],
      ["Work begun", project.begun],
      ...(first && last
        ? ([["Entries", `${build.days.length}, from ${first.date} to ${last.date}`]] as const)
        : ([["Entries", "none"]] as const)),
      ["Rows in this book", `${this.#rows.length}`],
      ["Hours of the build", totalText(hours.total.build)],
      ["Study and shop, counted apart", totalText(hours.total.apart)],
      ["Judged on", analysis.asOf.date],
      ["Findings of the checks", findingsText(this.#edited)],
      ["Printed by", `Witness Mark ${this.#options.programVersion}, on ${this.#options.paper}`],
      ["SHA-256 of record.json", grouped(this.#options.recordDigest, 8)],
    ];
    pages.facts("Identity and totals", facts);
    pages.heading("Which edition this is");
    pages.paragraph(editionNote(this.#edited));
    pages.heading("What this book is not");
    pages.paragraph(caution);
    pages.heading("How to read it");
    for (const sentence of [
      "One row per person per session, in order of date. Two people for two hours are four hours. Row numbers run through parts 1 and 2 together and are those of hours.csv. Hours are written as hours:minutes and nothing is rounded.",
      "What stands after the dash behind a step is the stage its joint had reached. Clock times are those of the shop. A dash stands where only the hours were typed. A late entry says when it was written. An amended value shows what it was, what it is now, when it was amended and why; totals use the new value.",
      "The digest lets anybody check that the file record.json is the one this book was printed from: its SHA-256 must be the one above. That shows that neither was changed since. It does not show that what they say is true, nor when it was written.",
      "Characters that the printed typefaces lack are spelled out, or stand as their Unicode number in brackets.",
    ]) {
      pages.paragraph(sentence);
    }
    pages.heading("Contents");
    const listed =
      [...starts].length > 0 ? [...starts] : this.#partNames().map((name) => [name, 0] as const);
    pages.facts(
      "Contents",
      listed.map(([name, number]): Fact => [name, `sheet ${number}`]),
    );
    return pages.sheets;
  }

  /** @param before Number of sheets in front. */
  parts(before: number) {
    const pages = new Pages(this.#setter, this.#format, parts.build);
    const starts = new Map<string, number>([[parts.build, before + 1]]);
    const begin = (part: string) => {
      pages.part(part);
      starts.set(part, before + pages.sheets.length);
    };
    const build = this.#rows.filter(({ line }) => !line.apart);
    const apart = this.#rows.filter(({ line }) => line.apart);
    pages.table(this.#ledger(parts.build, build), "full");
    if (apart.length > 0) {
      begin(parts.apart);
      pages.table(this.#ledger(parts.apart, apart), "full");
    }
    begin(parts.totals);
    this.#totals(pages);
    begin(parts.signatures);
    signatureBoxes(pages, this.#format, this.#setter);
    return { sheets: pages.sheets, starts };
  }

  #partNames(): string[] {
    const hasApart = this.#rows.some(({ line }) => line.apart);
    return [parts.build, ...(hasApart ? [parts.apart] : []), parts.totals, parts.signatures];
  }

  #ledger(title: string, rows: readonly HoursRow[]): PaperTable {
    const fixed = 24 + 50 + 42 + 37 + 53 + 33 + 42;
    const free = this.#format.frame.right - this.#format.frame.left - fixed;
    const who = Math.round(free * 0.34);
    const carried = (label: string, sheet: string, hours: string, total: string): PaperRow => ({
      cells: [
        { text: "" },
        { text: "" },
        { text: label, bold: true },
        { text: "" },
        { text: "" },
        { text: "" },
        { text: sheet },
        { text: hours, bold: true },
        { text: total, bold: true },
      ],
    });
    return {
      title,
      columns: [
        { heading: "Row", width: 24, align: "right", face: "text" },
        { heading: "Date", width: 50, align: "left", face: "text" },
        { heading: "Assembly and step", width: free - who, align: "left", face: "small" },
        { heading: "Who", width: who, align: "left", face: "small" },
        { heading: "Role", width: 42, align: "left", face: "small" },
        { heading: "Kind", width: 37, align: "left", face: "small" },
        { heading: "From–to", width: 53, align: "left", face: "text" },
        { heading: "Hours", width: 33, align: "right", face: "text" },
        { heading: "Total", width: 42, align: "right", face: "text" },
      ],
      rows: rows.map(ledgerRow),
      opening: (minutes) => carried("Brought forward", "", "", hoursText(minutes)),
      closing: (sheet, toDate, last) =>
        carried(
          last ? "Total of this part" : "Carried forward",
          "this sheet",
          hoursText(sheet),
          hoursText(toDate),
        ),
      filled: true,
      none: "no entries",
    };
  }

  #totals(pages: Pages): void {
    const { build, hours } = this.#edited.analysis;
    const width = this.#format.frame.right - this.#format.frame.left - 28;
    const pair: readonly PaperColumn[] = [
      { heading: "Build", width: 62, align: "right", face: "text" },
      { heading: "Study and shop", width: 66, align: "right", face: "text" },
    ];
    const cellsOf = ({ build: minutes, apart }: Hours, bold = false) => [
      { text: shortHours(minutes), bold },
      { text: shortHours(apart), bold },
    ];
    const total = (label: string, blanks: number): PaperRow => ({
      cells: [
        { text: label, bold: true },
        ...Array.from({ length: blanks }, () => ({ text: "" })),
        ...cellsOf(hours.total, true),
      ],
    });
    const zero: Hours = { build: 0, apart: 0 };

    pages.heading("By assembly");
    pages.paragraph(
      "Parts are set in below what they belong to. “Rolled up” counts an assembly and everything below it; “itself” counts what is booked to it directly, its steps included. A dash stands for none.",
    );
    pages.table({
      title: "Hours by assembly",
      columns: [
        { heading: "Assembly", width: width - 4 * 62, align: "left", face: "small" },
        { heading: "Build, itself", width: 62, align: "right", face: "text" },
        { heading: "Build, rolled up", width: 62, align: "right", face: "text" },
        { heading: "Apart, itself", width: 62, align: "right", face: "text" },
        { heading: "Apart, rolled up", width: 62, align: "right", face: "text" },
      ],
      rows: [
        ...inTreeOrder(build.assemblies).map(({ id, title, path }) => {
          const own = hours.byAssembly.get(id) ?? zero;
          const rolled = hours.byAssemblyRolledUp.get(id) ?? zero;
          return {
            cells: [
              { text: title, indent: Math.min(path.length - 1, 8) * 9, bold: path.length === 1 },
              { text: shortHours(own.build) },
              { text: shortHours(rolled.build) },
              { text: shortHours(own.apart) },
              { text: shortHours(rolled.apart) },
            ],
          };
        }),
        {
          cells: [
            { text: "Total", bold: true },
            { text: hoursText(hours.total.build), bold: true },
            { text: "" },
            { text: hoursText(hours.total.apart), bold: true },
            { text: "" },
          ],
        },
      ],
      filled: false,
      none: "no assemblies",
    });

    pages.heading("By person and kind");
    pages.paragraph(
      `Role is the one taken unless a session says otherwise. Days are those with at least one session of the person. The kinds ${kindsApart.join(" and ")} are counted apart and are not part of “build”. A dash stands for none.`,
    );
    const kindWidth = 42;
    pages.table({
      title: "Hours by person and kind",
      columns: [
        {
          heading: "Person",
          width: width - 50 - 28 - (workKinds.length + 1) * kindWidth,
          align: "left",
          face: "small",
        },
        { heading: "Role", width: 50, align: "left", face: "small" },
        { heading: "Days", width: 28, align: "right", face: "text" },
        ...workKinds.map(
          (kind): PaperColumn => ({
            heading: kind,
            width: kindWidth,
            align: "right",
            face: "text",
          }),
        ),
        { heading: "Build", width: kindWidth, align: "right", face: "text" },
      ],
      rows: [
        ...[...build.people.values()].map((person) => {
          const lines = hours.lines.filter((line) => line.person === person.id);
          return {
            cells: [
              { text: person.name },
              { text: person.role },
              { text: `${daysOf(lines)}` },
              ...workKinds.map((kind) => ({ text: shortHours(minutesOf(lines, { kind })) })),
              { text: hoursText(hours.byPerson.get(person.id)?.build ?? 0), bold: true },
            ],
          };
        }),
        {
          cells: [
            { text: "Total", bold: true },
            { text: "" },
            { text: `${daysOf(hours.lines)}`, bold: true },
            ...workKinds.map((kind) => {
              const each = hours.byKind.get(kind) ?? zero;
              return { text: hoursText(each.build + each.apart), bold: true };
            }),
            { text: hoursText(hours.total.build), bold: true },
          ],
        },
      ],
      filled: false,
      none: "no people",
    });

    pages.heading("By role and kind");
    pages.table({
      title: "Hours by role and kind",
      columns: [
        {
          heading: "Role taken at the session",
          width: width - (workKinds.length + 1) * kindWidth,
          align: "left",
          face: "small",
        },
        ...workKinds.map(
          (kind): PaperColumn => ({
            heading: kind,
            width: kindWidth,
            align: "right",
            face: "text",
          }),
        ),
        { heading: "Build", width: kindWidth, align: "right", face: "text" },
      ],
      rows: [
        ...roles.map((role) => {
          const lines = hours.lines.filter((line) => line.role === role);
          return {
            cells: [
              { text: role },
              ...workKinds.map((kind) => ({ text: shortHours(minutesOf(lines, { kind })) })),
              { text: hoursText(hours.byRole.get(role)?.build ?? 0), bold: true },
            ],
          };
        }),
        {
          cells: [
            { text: "Total", bold: true },
            ...workKinds.map((kind) => {
              const each = hours.byKind.get(kind) ?? zero;
              return { text: hoursText(each.build + each.apart), bold: true };
            }),
            { text: hoursText(hours.total.build), bold: true },
          ],
        },
      ],
      filled: false,
      none: "no roles",
    });

    pages.heading("By month");
    let toDate = 0;
    pages.table({
      title: "Hours by month",
      columns: [
        { heading: "Month", width: width - 62 * 3 - 66, align: "left", face: "text" },
        { heading: "Days worked", width: 62, align: "right", face: "text" },
        { heading: "Build", width: 62, align: "right", face: "text" },
        { heading: "Build to date", width: 62, align: "right", face: "text" },
        { heading: "Study and shop", width: 66, align: "right", face: "text" },
      ],
      rows: [
        ...[...hours.byMonth].map(([month, each]) => {
          toDate += each.build;
          const lines = hours.lines.filter(({ date }) => date.startsWith(month));
          return {
            cells: [
              { text: month },
              { text: `${daysOf(lines)}` },
              { text: shortHours(each.build) },
              { text: hoursText(toDate) },
              { text: shortHours(each.apart) },
            ],
          };
        }),
        {
          cells: [
            { text: "Total", bold: true },
            { text: `${daysOf(hours.lines)}`, bold: true },
            { text: hoursText(hours.total.build), bold: true },
            { text: "" },
            { text: hoursText(hours.total.apart), bold: true },
          ],
        },
      ],
      filled: false,
      none: "no months",
    });

    pages.heading("By step");
    const steps = [...build.steps.values()];
    const onSteps = sum([...hours.byStep.values()]);
    const without = {
      build: hours.total.build - onSteps.build,
      apart: hours.total.apart - onSteps.apart,
    };
    pages.table({
      title: "Hours by step",
      columns: [
        { heading: "Step", width: 62, align: "left", face: "small" },
        { heading: "Title", width: (width - 62 * 3 - 66) * 0.6, align: "left", face: "small" },
        { heading: "Assembly", width: (width - 62 * 3 - 66) * 0.4, align: "left", face: "small" },
        { heading: "Planned", width: 62, align: "right", face: "text" },
        ...pair,
      ],
      rows: [
        ...steps.map((step) => ({
          cells: [
            { text: step.id },
            { text: step.title },
            { text: build.assemblies.get(step.assembly)?.title ?? step.assembly },
            { text: step.planned === undefined ? "–" : hoursText(step.planned) },
            ...cellsOf(hours.byStep.get(step.id) ?? zero),
          ],
        })),
        {
          cells: [
            { text: "–" },
            { text: "booked to an assembly, no step named" },
            { text: "" },
            { text: "" },
            ...cellsOf(without),
          ],
        },
        total("Total", 3),
      ],
      filled: false,
      none: "no steps",
    });
  }
}

function ledgerRow(row: HoursRow): PaperRow {
  const { line, day, assembly, step, amendments } = row;
  const { from, to } = line.session;
  const place = assembly?.title ?? line.assembly;
  const task = step ? `${step.id} ${step.title}` : line.step;
  const written = day?.written?.local.slice(0, 10);
  const late = day?.late ?? 0;
  return {
    minutes: line.minutes,
    cells: [
      { text: `${row.number}` },
      { text: line.date },
      {
        text: [task === undefined ? place : `${place}: ${task}`, line.session.stage]
          .filter((part) => part !== undefined)
          .join(" – "),
        notes: [
          ...(late > 0
            ? [
                `LATE ENTRY: written ${written === undefined ? "" : `${written}, `}${late} ${late === 1 ? "day" : "days"} after`,
              ]
            : []),
          ...amendments.map((amendment) => `AMENDED: ${amendmentText(amendment)}`),
        ],
      },
      { text: nameAt(row) },
      { text: line.role },
      { text: line.kind },
      from && to
        ? {
            text: `${from.local.slice(11)}–${to.local.slice(11)}`,
            notes: [
              ...(to.local.slice(0, 10) === from.local.slice(0, 10) ? [] : ["ends next day"]),
              ...(wallMinutes(from.local, to.local) === to.epochMinutes - from.epochMinutes
                ? []
                : ["over a clock change"]),
            ],
          }
        : { text: "–" },
      { text: hoursText(line.minutes) },
      { text: hoursText(row.runningMinutes) },
    ],
  };
}

/** Designation, serial and registration on one line. */
function aircraft({ analysis }: EditedAnalysis): string {
  const { designation, serial, registration } = analysis.build.project;
  return `${designation}, serial ${serial}${registration === undefined ? "" : `, ${registration}`}`;
}

/** Assemblies as a tree is read: each before its parts, parts in the order declared. */
function inTreeOrder<
  A extends { readonly id: string; readonly parent?: string; readonly children: readonly string[] },
>(assemblies: ReadonlyMap<string, A>): A[] {
  const below = (id: string): A[] => {
    const assembly = assemblies.get(id);
    return assembly ? [assembly, ...assembly.children.flatMap(below)] : [];
  };
  return [...assemblies.values()]
    .filter(({ parent }) => parent === undefined)
    .flatMap(({ id }) => below(id));
}

function minutesOf(lines: readonly HoursLine[], { kind }: Pick<HoursLine, "kind">): Minutes {
  return lines.filter((line) => line.kind === kind).reduce((all, { minutes }) => all + minutes, 0);
}

function daysOf(lines: readonly { readonly date: CalendarDate }[]): number {
  return new Set(lines.map(({ date }) => date)).size;
}

function sum(all: readonly Hours[]): Hours {
  return all.reduce(
    (so, { build, apart }) => ({ build: so.build + build, apart: so.apart + apart }),
    { build: 0, apart: 0 },
  );
}

function findingsText({ diagnostics }: EditedAnalysis): string {
  const found = diagnostics.filter(({ severity }) => severity === "finding").length;
  return found === 0 ? "none" : `${found}, listed in record.json`;
}

/** `412:35 (24755 minutes)`. */
function totalText(minutes: Minutes): string {
  return `${hoursText(minutes)} (${minutes} minutes)`;
}

/** Hours and minutes, with a dash for none. */
function shortHours(minutes: Minutes): string {
  return minutes === 0 ? "–" : hoursText(minutes);
}

/** Minutes between two readings of the wall clock, as if no clock had been changed. */
function wallMinutes(from: string, to: string): Minutes {
  const at = (local: string) => Date.parse(`${local.replace(" ", "T")}Z`) / 60_000;
  return at(to) - at(from);
}

/** Digits in groups: `1a2b 3c4d`. */
function grouped(digits: string, size: number): string {
  return digits.match(new RegExp(`.{1,${size}}`, "g"))?.join(" ") ?? "";
}
