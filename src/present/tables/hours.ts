import type { Analysis, HoursLine } from "../../compute/analysis.ts";
import type { Amendment } from "../../model/amendment.ts";
import type { Assembly, Step } from "../../model/assembly.ts";
import type { Day } from "../../model/day.ts";
import type { Person } from "../../model/person.ts";
import type { Session } from "../../model/session.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** One person at one session, with everything a row of the logbook says. */
export interface HoursRow {
  /** Counted from 1 through all rows, build and apart alike. */
  readonly number: number;
  readonly line: HoursLine;
  readonly day?: Day;
  readonly assembly?: Assembly;
  readonly step?: Step;
  readonly person?: Person;
  /** Corrections made later to this session, oldest first. */
  readonly amendments: readonly Amendment[];
  /** Minutes so far, this row included, of rows counted the same way: build, or apart. */
  readonly runningMinutes: number;
}

/** The rows of the hours, by date, then in the order typed. */
export function hoursRows({ build, hours }: Analysis): HoursRow[] {
  const days = new Map(build.days.map((day) => [day.date, day]));
  const amended = sessionAmendments(build.days);
  let buildMinutes = 0;
  let apartMinutes = 0;
  return hours.lines.map((line, index) => {
    if (line.apart) apartMinutes += line.minutes;
    else buildMinutes += line.minutes;
    const day = days.get(line.date);
    const assembly = build.assemblies.get(line.assembly);
    const step = line.step === undefined ? undefined : build.steps.get(line.step);
    const person = build.people.get(line.person);
    return {
      number: index + 1,
      line,
      ...(day ? { day } : {}),
      ...(assembly ? { assembly } : {}),
      ...(step ? { step } : {}),
      ...(person ? { person } : {}),
      amendments: amended.get(line.session) ?? [],
      runningMinutes: line.apart ? apartMinutes : buildMinutes,
    };
  });
}

/** What was amended, in one sentence; an empty text when the session stands as first typed. */
export function amendmentText({ date, field, was, now, why }: Amendment): string {
  const value = field.replace(/^[a-z]+\[\d+\]\.?/, "") || field;
  return `${value} was ${was}, now ${now} (amended ${date}: ${why})`;
}

/** Name of a row's person: a private person has the role taken at that session for a name. */
export function nameAt({ line, person }: HoursRow): string {
  if (!person) return line.person;
  return person.private && person.name === person.role ? line.role : person.name;
}

export const hoursTable: Table<HoursRow> = tableOf({
  name: "hours",
  title: "Hours, one row per person per session",
  rows: hoursRows,
  columns: [
    {
      key: "row",
      heading: "Row",
      kind: "number",
      means: "Counted from 1, by date and then in the order typed; the paper logbook uses it too.",
      value: ({ number }) => number,
    },
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "The day of the entry; a session may end on the next one.",
      value: ({ line }) => line.date,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly the work is booked to.",
      value: ({ line }) => line.assembly,
    },
    {
      key: "assembly_title",
      heading: "Assembly title",
      kind: "text",
      means: "Title of that assembly.",
      value: ({ assembly }) => assembly?.title,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step, when the session names one.",
      value: ({ line }) => line.step,
    },
    {
      key: "step_title",
      heading: "Step title",
      kind: "text",
      means: "Title of that step.",
      value: ({ step }) => step?.title,
    },
    {
      key: "person",
      heading: "Person",
      kind: "text",
      means: "Id of the person.",
      value: ({ line }) => line.person,
    },
    {
      key: "name",
      heading: "Who",
      kind: "text",
      means: "Name of the person as this edition shows it.",
      value: nameAt,
    },
    {
      key: "role",
      heading: "Role",
      kind: "text",
      means: "Role taken at this session.",
      value: ({ line }) => line.role,
    },
    {
      key: "kind",
      heading: "Kind",
      kind: "text",
      means: "Kind of work.",
      value: ({ line }) => line.kind,
    },
    {
      key: "from",
      heading: "From",
      kind: "moment",
      means: "Start by the shop's clock; empty when only the hours were typed.",
      value: ({ line }) => line.session.from?.local,
    },
    {
      key: "to",
      heading: "To",
      kind: "moment",
      means: "End by the shop's clock, which may be on the next day.",
      value: ({ line }) => line.session.to?.local,
    },
    {
      key: "minutes",
      heading: "Minutes",
      kind: "number",
      means: "Whole minutes of this person: the exact figure, of which every total is a sum.",
      value: ({ line }) => line.minutes,
    },
    {
      key: "counted",
      heading: "Counted",
      kind: "text",
      means: "`build`, or `apart` for study and shop, which are totalled apart.",
      value: ({ line }) => (line.apart ? "apart" : "build"),
    },
    {
      key: "running_minutes",
      heading: "Total minutes",
      kind: "number",
      means: "Minutes so far of rows counted the same way, this row included.",
      value: ({ runningMinutes }) => runningMinutes,
    },
    {
      key: "stage",
      heading: "Stage",
      kind: "text",
      means: "How far the step's joint was at the end of the session.",
      value: ({ line }) => line.session.stage,
    },
    {
      key: "lots",
      heading: "Lots",
      kind: "text",
      means: "Ids of the lots used, parted by semicolons.",
      value: ({ line }) => line.session.lots.join("; ") || undefined,
    },
    {
      key: "note",
      heading: "Note",
      kind: "text",
      means: "The session's note.",
      value: ({ line }) => line.session.note,
    },
    {
      key: "days_late",
      heading: "Days late",
      kind: "number",
      means: "Days between the day and its writing down; 0 when written the same day or not said.",
      value: ({ day }) => day?.late ?? 0,
    },
    {
      key: "imported",
      heading: "Imported",
      kind: "text",
      means: "File that the hours were imported from, when they were not typed.",
      value: ({ day }) => day?.imported,
    },
    {
      key: "amended",
      heading: "Amended",
      kind: "text",
      means: "Corrections made later: the old value, the new one, when and why.",
      value: ({ amendments }) => amendments.map(amendmentText).join("; ") || undefined,
    },
    ...sourceColumns<HoursRow>(({ line }) => line.session.span),
  ],
});

/** Corrections of each session that has some, oldest first. */
export function sessionAmendments(days: readonly Day[]): Map<Session, Amendment[]> {
  const byDate = new Map(days.map((day) => [day.date, day]));
  const found = new Map<Session, Amendment[]>();
  for (const amendment of days.flatMap((day) => day.amendments)) {
    const number = /^sessions\[(\d+)\]/.exec(amendment.field)?.[1];
    const session = byDate.get(amendment.day)?.sessions[Number(number) - 1];
    if (!session) continue;
    const list = found.get(session) ?? [];
    list.push(amendment);
    found.set(session, list);
  }
  return found;
}
