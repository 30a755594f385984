import type { Analysis, Hours } from "../../../compute/analysis.ts";
import { kindsApart, workKinds } from "../../../model/session.ts";
import { hoursText } from "../../../present/format/hours.ts";
import {
  allHours,
  assemblyHours,
  type KindHours,
  monthHours,
  personHours,
  roleHours,
  stepHours,
} from "../../../present/tables/totals.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperCell, PaperColumn, PaperRow } from "../paper/paper-table.ts";
import { hoursOrDash } from "./wording.ts";

/** Points that a heading and the first rows of its table take. */
const room = 140;
const hoursWidth = 62;
const kindWidth = 42;

/** The totals: by assembly, by person, role and kind, by month, by step. */
export function totalsPages(pages: Pages, analysis: Analysis): void {
  byAssembly(pages, analysis);
  byPerson(pages, analysis);
  byRole(pages, analysis);
  byMonth(pages, analysis);
  byStep(pages, analysis);
}

function byAssembly(pages: Pages, analysis: Analysis): void {
  const { total } = analysis.hours;
  pages.heading("By assembly", room);
  pages.paragraph(
    "Parts are set in below what they belong to. “Rolled up” counts an assembly and everything below it; “itself” counts what is booked to it directly, its steps included. A dash stands for none.",
  );
  pages.table({
    title: "Hours by assembly",
    columns: [
      words("Assembly", pages.width - 4 * hoursWidth),
      hoursColumn("Build, itself"),
      hoursColumn("Build, rolled up"),
      hoursColumn("Apart, itself"),
      hoursColumn("Apart, rolled up"),
    ],
    rows: [
      ...assemblyHours(analysis).map(({ assembly, depth, own, rolledUp }) => ({
        cells: [
          { text: assembly.title, indent: Math.min(depth, 8) * 9, bold: depth === 0 },
          { text: hoursOrDash(own.build) },
          { text: hoursOrDash(rolledUp.build) },
          { text: hoursOrDash(own.apart) },
          { text: hoursOrDash(rolledUp.apart) },
        ],
      })),
      totalRow([{ text: hoursText(total.build) }, empty, { text: hoursText(total.apart) }, empty]),
    ],
    filled: false,
    none: "no assemblies",
  });
}

function byPerson(pages: Pages, analysis: Analysis): void {
  const all = allHours(analysis);
  pages.heading("By person and kind", room);
  pages.paragraph(
    `Role is the one taken unless a session says otherwise. Days are those with at least one session of the person. The kinds ${kindsApart.join(" and ")} are counted apart and are not part of “build”.`,
  );
  pages.table({
    title: "Hours by person and kind",
    columns: [
      words("Person", pages.width - 50 - 28 - (workKinds.length + 1) * kindWidth),
      words("Role", 50),
      { heading: "Days", width: 28, align: "right", face: "text" },
      ...kindColumns,
    ],
    rows: [
      ...personHours(analysis).map((hours) => ({
        cells: [
          { text: hours.person.name },
          { text: hours.person.role },
          { text: `${hours.days}` },
          ...kindCells(hours),
        ],
      })),
      totalRow([empty, { text: `${all.days}` }, ...kindCells(all)]),
    ],
    filled: false,
    none: "no people",
  });
}

function byRole(pages: Pages, analysis: Analysis): void {
  pages.heading("By role and kind", room);
  pages.table({
    title: "Hours by role and kind",
    columns: [
      words("Role taken at the session", pages.width - (workKinds.length + 1) * kindWidth),
      ...kindColumns,
    ],
    rows: [
      ...roleHours(analysis).map((hours) => ({
        cells: [{ text: hours.role }, ...kindCells(hours)],
      })),
      totalRow(kindCells(allHours(analysis))),
    ],
    filled: false,
    none: "no roles",
  });
}

function byMonth(pages: Pages, analysis: Analysis): void {
  const all = allHours(analysis);
  pages.heading("By month", room);
  pages.table({
    title: "Hours by month",
    columns: [
      { heading: "Month", width: pages.width - 4 * hoursWidth, align: "left", face: "text" },
      hoursColumn("Days worked"),
      hoursColumn("Build"),
      hoursColumn("Build to date"),
      hoursColumn("Study and shop"),
    ],
    rows: [
      ...monthHours(analysis).map(({ month, days, total, toDate }) => ({
        cells: [
          { text: month },
          { text: `${days}` },
          { text: hoursOrDash(total.build) },
          { text: hoursText(toDate) },
          { text: hoursOrDash(total.apart) },
        ],
      })),
      totalRow([
        { text: `${all.days}` },
        { text: hoursText(all.total.build) },
        empty,
        { text: hoursText(all.total.apart) },
      ]),
    ],
    filled: false,
    none: "no months",
  });
}

function byStep(pages: Pages, analysis: Analysis): void {
  const { build, hours } = analysis;
  const free = pages.width - 4 * hoursWidth;
  const both = (each: Hours) => [
    { text: hoursOrDash(each.build) },
    { text: hoursOrDash(each.apart) },
  ];
  pages.heading("By step", room);
  pages.table({
    title: "Hours by step",
    columns: [
      words("Step", hoursWidth),
      words("Title", free * 0.6),
      words("Assembly", free * 0.4),
      hoursColumn("Planned"),
      hoursColumn("Build"),
      hoursColumn("Study and shop"),
    ],
    rows: [
      ...stepHours(analysis).map(({ step, hours: each }) => ({
        cells: step
          ? [
              { text: step.id },
              { text: step.title },
              { text: build.assemblies.get(step.assembly)?.title ?? step.assembly },
              { text: step.planned === undefined ? "–" : hoursText(step.planned) },
              ...both(each),
            ]
          : [
              { text: "–" },
              { text: "booked to an assembly, no step named" },
              empty,
              empty,
              ...both(each),
            ],
      })),
      totalRow([
        empty,
        empty,
        empty,
        { text: hoursText(hours.total.build) },
        { text: hoursText(hours.total.apart) },
      ]),
    ],
    filled: false,
    none: "no steps",
  });
}

const empty: PaperCell = { text: "" };

const kindColumns: readonly PaperColumn[] = [...workKinds, "Build"].map((heading) => ({
  heading,
  width: kindWidth,
  align: "right",
  face: "text",
}));

function kindCells({ byKind, total }: KindHours): PaperCell[] {
  return [
    ...workKinds.map((kind) => ({ text: hoursOrDash(byKind.get(kind) ?? 0) })),
    { text: hoursOrDash(total.build), bold: true },
  ];
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function hoursColumn(heading: string): PaperColumn {
  return { heading, width: hoursWidth, align: "right", face: "text" };
}

function totalRow(cells: readonly PaperCell[]): PaperRow {
  return {
    cells: [{ text: "Total", bold: true }, ...cells.map(({ text }) => ({ text, bold: true }))],
  };
}
