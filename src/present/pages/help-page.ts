import type { HoursLine } from "../../compute/analysis.ts";
import type { HelpLedger } from "../../compute/ledgers/help.ts";
import { helpKinds } from "../../model/help.ts";
import { dateText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { sharesText } from "../tables/help.ts";
import { places, rootOf } from "./addresses.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type BookedMonth, bookedMonths } from "./views/booked-days.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";

/** Hours of help with the sessions that they are the sum of, building and apart. */
export interface HelpHoursView {
  /** Empty where there are none. */
  readonly build: string;
  readonly apart: string;
  readonly buildMonths: readonly BookedMonth[];
  readonly apartMonths: readonly BookedMonth[];
}

/** A row of help. */
export interface HelpRowView {
  readonly number: string;
  readonly who: string;
  /** One or two days, leading to their entries. */
  readonly when: readonly Mention[];
  readonly what: string;
  /** Place, note, and in the private edition the bill. */
  readonly marks: readonly string[];
  readonly shares: string;
  readonly hours: HelpHoursView;
}

/** The rows of one kind. */
export interface HelpKindView {
  readonly title: string;
  readonly rows: readonly HelpRowView[];
  /** Hours of all rows together; absent where two rows tell of the same session. */
  readonly total?: { readonly build: string; readonly apart: string };
}

/** Help received: paid, unpaid and instruction apart. */
export interface HelpPage extends Page<"help"> {
  readonly findings: readonly FindingView[];
  readonly kinds: readonly HelpKindView[];
  /** Help that sessions have and no row tells of. */
  readonly unlisted: readonly {
    readonly on: Mention;
    readonly who: string;
    readonly kind: string;
    readonly hours: HelpHoursView;
  }[];
  readonly cautions: readonly string[];
}

const titles = {
  "paid help": "Paid help",
  "unpaid help": "Unpaid help",
  instruction: "Instruction",
} as const;

/** The page of help received; `undefined` when the journal keeps no register of it. */
export function helpPage(record: RecordIndex): HelpPage | undefined {
  const { help, asOf } = record.analysis;
  if (!help) return undefined;
  const url = places.help;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const file = help.register.span.file;
  return {
    kind: "help",
    url,
    root,
    title: "Help received",
    description: "Who helped with the build, when and with what: paid, unpaid and instruction.",
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    findings: record.findings
      .filter(({ span }) => span.file === file)
      .map((each, index) => {
        // On its own page a finding needs no link to it.
        const { day: _self, ...view } = findingView(record, links, each, index + 1);
        return view;
      }),
    kinds: helpKinds.map((kind) => {
      const rows = help.rows.filter(({ entry }) => entry.kind === kind);
      return {
        title: titles[kind],
        rows: rows.map(({ entry, lines }) => ({
          number: entry.id,
          who: record.person(entry.person, entry.kind),
          when: [links.day(entry.from), ...(entry.to === entry.from ? [] : [links.day(entry.to)])],
          what: entry.what,
          marks: [
            ...(entry.place === undefined ? [] : [`at ${entry.place}`]),
            ...(entry.note === undefined ? [] : [entry.note]),
            ...(entry.invoice === undefined ? [] : [`invoice ${entry.invoice}`]),
          ],
          // A task and its share stay on one line.
          shares: sharesText(entry).replaceAll(/ (?=\d)/g, "\u00a0"),
          hours: hoursView(record, links, lines),
        })),
        ...totalOf(rows),
      };
    }),
    unlisted: help.unlisted.map(({ date, person, kind, lines }) => ({
      on: links.day(date),
      who: record.person(person, kind),
      kind,
      hours: hoursView(record, links, lines),
    })),
    cautions: [
      "Paid help is help for hire or compensation, whoever gives it. Instruction, where the teacher does not do the task, is kept apart and added to neither; how it counts is for whoever inspects the aircraft.",
      "Hours are those of the sessions. The share of a task is the builder's own statement and is never computed from them.",
    ],
    block: {
      title: "Help received",
      number: "help",
      cells: [
        { label: "rows", value: String(help.rows.length) },
        { label: "not listed", value: String(help.unlisted.length) },
        { label: "as of", value: dateText(asOf.date) },
      ],
    },
    search: { filters: [["sheet", "help"]], meta: { title: "Help received" }, sort: {} },
  };
}

function hoursView(record: RecordIndex, links: Links, lines: readonly HoursLine[]): HelpHoursView {
  return {
    ...sums(lines),
    buildMonths: bookedMonths(record, links, lines, false),
    apartMonths: bookedMonths(record, links, lines, true),
  };
}

function sums(lines: readonly HoursLine[]): { build: string; apart: string } {
  const sum = (apart: boolean) =>
    lines.reduce((all, line) => all + (line.apart === apart ? line.minutes : 0), 0);
  const text = (minutes: number) => (minutes === 0 ? "" : hoursText(minutes));
  return { build: text(sum(false)), apart: text(sum(true)) };
}

function totalOf(rows: HelpLedger["rows"]): Pick<HelpKindView, "total"> {
  const lines = rows.flatMap((row) => row.lines);
  return rows.length > 0 && new Set(lines).size === lines.length ? { total: sums(lines) } : {};
}
