import type { BookAmendment, BookEntry, BookSession } from "../../../present/book/book-entry.ts";
import { entryMention } from "../../../present/book/book-entry.ts";
import type { CureView } from "../../../present/pages/views/cure-view.ts";
import type { DeviationView } from "../../../present/pages/views/deviation-view.ts";
import type { HoldView } from "../../../present/pages/views/hold-view.ts";
import type { LayoutView } from "../../../present/pages/views/layout-view.ts";
import type { ReadingView } from "../../../present/pages/views/reading-view.ts";
import type { SquawkView } from "../../../present/pages/views/squawk-view.ts";
import type { VideoView } from "../../../present/pages/views/video-view.ts";
import type { PrintPictures } from "../../photos/print-pictures.ts";
import type { Fact, Pages } from "../paper/pages.ts";
import type { PaperCell, PaperColumn, PaperRow } from "../paper/paper-table.ts";
import { Branch } from "../paper/sheet.ts";
import type { Style, StyledText, Typesetter } from "../paper/typesetter.ts";
import { photoRowHeight, photoRows } from "./photo-rows.ts";
import { besideRule, setProse } from "./prose-setting.ts";

const size = 7.8;
const plain: Style = { face: "text", size };
const bold: Style = { face: "bold", size };
const red: Style = { face: "bold", size, ink: "red" };
const struck: Style = { face: "text", size, struck: true, ink: "red" };
const noteStyle: Style = { face: "small", size: 7.6, ink: "second" };

/** Everything below an entry's title, in the order in which an inspector asks. */
export function entryBlocks(
  pages: Pages,
  setter: Typesetter,
  entry: BookEntry,
  pictures: PrintPictures,
): void {
  workTable(pages, entry.work);
  pages.styled(
    [
      { text: "Help: ", style: bold },
      { text: entry.help.length === 0 ? "none." : `${entry.help.join("; ")}.`, style: plain },
    ],
    { gap: 2 },
  );
  if (entry.prose.length > 0) {
    label(pages, "What was done", 36);
    setProse(pages, setter, entry.prose, 5);
  }
  for (const layout of entry.layouts) layoutBlock(pages, layout);
  if (entry.photos.length > 0) {
    label(pages, "Photographs", photoRowHeight);
    photoRows(pages, setter, entry.photos, pictures);
  }
  sentences(pages, "Recordings", entry.videos.map(videoWords));
  if (entry.readings.length > 0) {
    label(pages, "Readings", 60);
    readingsTable(pages, entry.readings);
  }
  sentences(pages, "Cures", entry.cures.map(cureWords));
  sentences(pages, "Held for now", entry.holds.map(holdWords));
  sentences(pages, "Released", entry.releases.map(holdWords));
  for (const each of entry.deviations) deviationBlock(pages, "Deviation", each);
  for (const each of entry.dispositions) deviationBlock(pages, "Deviation decided", each);
  sentences(pages, "Squawks", entry.squawks.map(squawkWords));
  sentences(pages, "Work on squawks", entry.squawkWork.map(squawkWords));
  inspectionsTable(pages, entry);
  amendments(pages, "Corrected later", "corrected by", entry.amendedBy);
  amendments(pages, "Corrections to earlier entries", "in", entry.amends);
  if (entry.findings.length > 0) {
    label(pages, "Findings of the checks", 24, true);
    for (const { title, message, notes } of entry.findings) {
      pages.styled(
        [
          { text: `${title}: `, style: red },
          { text: message, style: plain },
          ...(notes.length === 0
            ? []
            : [{ text: ` (${notes.join("; ")})`, style: noteStyle } as const]),
        ],
        { gap: 1.2 },
      );
    }
  }
  sentences(
    pages,
    "Next",
    entry.next.map((text) => [{ text, style: plain }]),
  );
}

/** The name of a block, kept together with what comes below. */
function label(pages: Pages, text: string, below: number, departs = false): void {
  pages.room(below + 14);
  pages.space(3);
  pages.styled(
    [
      {
        text: text.toUpperCase(),
        style: { face: "caps", size: 7.2, ink: departs ? "red" : "second" },
      },
    ],
    { type: "H4", gap: 0.6 },
  );
}

function workTable(pages: Pages, work: readonly BookSession[]): void {
  if (work.length === 0) return;
  const fixed = 16 + 58 + 96 + 42 + 36;
  pages.table({
    title: "Work",
    columns: [
      { heading: "#", width: 16, align: "right", face: "text" },
      { heading: "When", width: 58, align: "left", face: "text" },
      words("Assembly, step, stage reached", pages.width - fixed),
      words("Who", 96),
      words("Kind", 42),
      { heading: "Hours", width: 36, align: "right", face: "text" },
    ],
    rows: work.map((session) => ({ cells: workCells(session) })),
    filled: false,
    none: "",
  });
}

function workCells(session: BookSession): PaperCell[] {
  const { step, stepTitle, stage, lots, note, amended, who } = session;
  const task = step ? `: ${step.text} ${stepTitle ?? ""}`.trimEnd() : "";
  const [from, to] = (session.when ?? "–").split(" to ");
  return [
    { text: `${session.number}` },
    {
      text: to === undefined ? (from ?? "–") : `${from}–${to.replace(" next day", "")}`,
      notes: to?.endsWith(" next day") ? ["ends next day"] : [],
    },
    {
      text: `${session.assembly.text}${task}${stage === undefined ? "" : ` (${stage})`}`,
      notes: [
        ...lots.map((lot) => `lot: ${lot}`),
        ...(note === undefined ? [] : [note]),
        ...amended.map(({ field }) => `CORRECTED LATER: ${field.replace(/^session \d+, /, "")}`),
      ],
    },
    { text: who.join(", ") },
    { text: session.kind },
    {
      text: session.hours,
      bold: true,
      notes: session.product === undefined ? [] : [session.product],
    },
  ];
}

function readingsTable(pages: Pages, readings: readonly ReadingView[]): void {
  const fixed = 84 + 112 + 78;
  pages.table({
    title: "Readings",
    columns: [
      words("What, where, with what", pages.width - fixed),
      { heading: "Measured", width: 84, align: "left", face: "text" },
      words("Limits and who says so", 112),
      words("Verdict", 78),
    ],
    rows: readings.map(readingRow),
    filled: false,
    none: "",
  });
}

function readingRow(reading: ReadingView): PaperRow {
  const outside = reading.values.filter(({ out }) => out);
  const stands = reading.standing === "out";
  return {
    cells: [
      {
        text: reading.at === undefined ? reading.what : `${reading.what}, ${reading.at}`,
        notes: [
          [reading.id, ...(reading.step ? [reading.step.text] : [])].join(", "),
          ...(reading.instrument === undefined ? [] : [reading.instrument]),
          ...(reading.drag === undefined ? [] : [reading.drag]),
          ...(reading.supersedes ? [`in place of ${reading.supersedes.text}`] : []),
          ...figureNotes(reading),
        ],
      },
      {
        text: reading.values.map(({ text }) => text).join(", "),
        red: outside.length > 0,
        struck: reading.standing === "superseded",
        notes: outside.map(({ text, excess }) => `${text}: ${excess ?? "outside"}`),
      },
      {
        text: reading.limits ?? "no limit",
        notes: [
          ...(reading.rule ? [reading.rule.text] : []),
          ...(reading.source === undefined ? [] : [reading.source]),
          ...(reading.precedence
            ? [`named: ${reading.precedence.over.text}; ${reading.precedence.why}`]
            : []),
        ],
      },
      {
        text: stands ? "OUT OF LIMITS" : reading.verdict,
        bold: outside.length > 0,
        red: stands,
        notes: [
          ...(reading.supersededBy ? [`by ${reading.supersededBy.text}`] : []),
          ...(reading.deviation
            ? [`deviation ${reading.deviation.text}${reading.undecided ? ", undecided" : ""}`]
            : []),
          ...(reading.assurance === undefined ? [] : [reading.assurance]),
        ],
      },
    ],
  };
}

/** A part that was marked out: its sizes, where its fasteners go, and the rules it answers to. */
function layoutBlock(pages: Pages, layout: LayoutView): void {
  label(pages, `Layout ${layout.number}: ${layout.title}`, 80);
  const over = layout.over.map(({ text }) => text).join(", ");
  pages.styled(
    [
      { text: over === "" ? "" : `${over}. `, style: bold },
      { text: layout.summary, style: plain },
      ...(layout.trouble === undefined ? [] : [{ text: ` ${layout.trouble}.`, style: red }]),
      ...(layout.note === undefined ? [] : [{ text: ` ${layout.note}`, style: plain }]),
    ],
    { gap: 1.6 },
  );
  pages.table({
    title: "Sizes",
    columns: [
      words("Size", pages.width - 150 - 90),
      { heading: "As laid out", width: 150, align: "left", face: "text" },
      { heading: "mm", width: 90, align: "right", face: "text" },
    ],
    rows: layout.sizes.map(({ what, typed, millimetres }) => ({
      cells: [{ text: what }, { text: typed }, { text: millimetres }],
    })),
    filled: false,
    none: "",
  });
  placesTable(pages, layout);
  if (layout.checks.length === 0) return;
  pages.table({
    title: "Rules that the layout answers to",
    columns: [
      words("Length", pages.width - 70 - 150 - 70),
      { heading: "Laid out", width: 70, align: "left", face: "text" },
      words("Limits and who says so", 150),
      words("Verdict", 70),
    ],
    rows: layout.checks.map(
      ({ what, value, limits, rule, source, precedence, standing, verdict }) => ({
        cells: [
          { text: what },
          { text: value },
          {
            text: limits,
            notes: [rule.text, source, ...(precedence === undefined ? [] : [precedence])],
          },
          { text: verdict, bold: standing === "out", red: standing === "out" },
        ],
      }),
    ),
    filled: false,
    none: "",
  });
}

/** Where each fastener goes, as many beside each other as there is room for. */
function placesTable(pages: Pages, { places, unit }: LayoutView): void {
  if (places.length === 0) return;
  const across = 6;
  pages.room(40);
  pages.styled([{ text: `Centres from the left end (${unit})`, style: bold }], { gap: 2 });
  pages.table({
    title: `Centres from the left end (${unit})`,
    columns: Array.from({ length: across }, () => ({
      heading: "",
      width: pages.width / across,
      align: "left",
      face: "text",
    })),
    rows: Array.from({ length: Math.ceil(places.length / across) }, (_, row) => ({
      cells: places
        .slice(row * across, (row + 1) * across)
        .map(({ number, left }) => ({ text: `${number}: ${left}` })),
    })),
    filled: false,
    headless: true,
    none: "",
  });
}

/** What a figure is made of: the readings and their values as typed. */
function figureNotes({ figure }: ReadingView): string[] {
  if (!figure) return [];
  return [
    `${figure.kind} of`,
    ...figure.of.map(({ reading, at, values }) =>
      [...(reading ? [reading.text] : []), ...(at === undefined ? [] : [at]), values].join(", "),
    ),
  ];
}

/** A block of lines, one to a thing, as a list. */
function sentences(pages: Pages, name: string, lines: readonly (readonly StyledText[])[]): void {
  if (lines.length === 0) return;
  label(pages, name, 16);
  const list = new Branch("L");
  for (const line of lines) {
    const item = new Branch("LI", list);
    const body = new Branch("LBody", item);
    pages.styled(line, { gap: 1.2, within: body });
    pages.sheet.marks.push(body.close, item.close);
  }
  pages.sheet.marks.push(list.close);
}

function videoWords(video: VideoView): StyledText[] {
  const { title, href, where, length, times } = video;
  const about = [
    ...(length === undefined ? [] : [`${length} long`]),
    // On paper a link has to be read off; a file of the site has no address here.
    href === undefined || !/^https?:/.test(href) ? where : href,
    ...times.map(({ at, what }) => `${at} ${what}`),
  ].join("; ");
  return [
    { text: `${title}: `, style: bold },
    { text: `${about}.`, style: plain },
  ];
}

function cureWords(cure: CureView): StyledText[] {
  const about = [
    ...(cure.lot === undefined ? [] : [cure.lot]),
    `mixed ${cure.mixed}`,
    ...(cure.closed === undefined ? [] : [`closed ${cure.closed}`]),
    `ready ${cure.ready} (${cure.wait})`,
    ...(cure.source === undefined ? [] : [`says ${cure.source}`]),
    ...(cure.note === undefined ? [] : [cure.note]),
  ].join("; ");
  return [
    { text: `${cure.step.text} `, style: bold },
    { text: `${cure.stepTitle}: ${about}.`, style: plain },
    ...(cure.brokenBy.length === 0
      ? []
      : [
          {
            text: ` WORKED ON BEFORE IT WAS READY: ${cure.brokenBy.map(({ text }) => text).join(", ")}.`,
            style: red,
          },
        ]),
  ];
}

function holdWords({ id, step, text, released }: HoldView): StyledText[] {
  return [
    { text: `${id} `, style: bold },
    {
      text: `on ${step.text}: ${text}${released ? `; released ${released.text}` : ""}.`,
      style: plain,
    },
    ...(released ? [] : [{ text: " Still held.", style: bold }]),
  ];
}

function squawkWords({ id, found, on, owner, standing, fixed, closed }: SquawkView): StyledText[] {
  const after = [
    ...(owner === undefined ? [] : [`in the hands of ${owner}`]),
    ...(fixed ? [`${fixed.day.text}: ${fixed.text}`] : []),
    ...(closed
      ? [`closed ${closed.day.text}${closed.by === undefined ? "" : ` by ${closed.by}`}`]
      : []),
  ].join("; ");
  return [
    { text: `${id} `, style: bold },
    {
      text: `${on ? `on ${on.text}: ` : ""}${found}${after === "" ? "" : `; ${after}`}.`,
      style: plain,
    },
    ...(standing === "closed" ? [] : [{ text: ` ${standing.toUpperCase()}.`, style: red }]),
  ];
}

function deviationBlock(pages: Pages, name: string, deviation: DeviationView): void {
  label(pages, `${name} ${deviation.id}`, 80, true);
  const { disposition } = deviation;
  const facts: Fact[] = [
    ["Drawing", `${deviation.drawing}${deviation.step ? `, step ${deviation.step.text}` : ""}`],
    ["Planned", deviation.planned],
    ["Done", deviation.done],
    ["Why", deviation.why],
    [
      "Disposition",
      disposition
        ? `${disposition.text}; ${disposition.day.text}${
            disposition.by === undefined ? "" : `, accepted by ${disposition.by}`
          }`
        : "OPEN: nothing decided yet",
    ],
  ];
  pages.indented(6, () => {
    besideRule(
      pages,
      pages.column.left - 4,
      () => pages.facts(`${name} ${deviation.id}`, facts, 62),
      "red",
    );
  });
}

function inspectionsTable(pages: Pages, { inspections }: BookEntry): void {
  if (inspections.length === 0) return;
  label(pages, "Inspections", 50);
  const texts = (pages.width - 88 - 84 - 40) / 2;
  pages.table({
    title: "Inspections",
    columns: [
      words("Step and look", 88),
      words("By", 84),
      words("Open to view", texts),
      words("Findings", texts),
      words("Result", 40),
    ],
    rows: inspections.map(({ step, look, by, standing, open, findings, result }) => ({
      cells: [
        { text: `${step.text}: ${look}` },
        { text: by, notes: standing === undefined ? [] : [standing] },
        { text: open },
        { text: findings },
        { text: result, bold: true, red: result === "held" },
      ],
    })),
    filled: false,
    none: "",
  });
}

function amendments(pages: Pages, name: string, how: string, list: readonly BookAmendment[]): void {
  if (list.length === 0) return;
  label(pages, name, 24, true);
  pages.indented(6, () => {
    besideRule(
      pages,
      pages.column.left - 4,
      () => {
        for (const { field, was, now, why, date, entry } of list) {
          pages.styled(
            [
              { text: `${field}: was `, style: plain },
              ...(was === ""
                ? [{ text: "nothing", style: plain }]
                : [{ text: was, style: struck }]),
              { text: ", now ", style: plain },
              { text: now, style: bold },
              { text: `. Why: ${why}; ${how} ${entryMention(entry, date)}.`, style: plain },
            ],
            { gap: 1.6 },
          );
        }
      },
      "red",
    );
  });
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}
