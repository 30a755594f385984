import type { Analysis } from "../../compute/analysis.ts";
import { grouped } from "../../compute/grouped.ts";
import type { TaskClaim, TaskState } from "../../compute/ledgers/portion.ts";
import type { Day } from "../../model/day.ts";
import type { Photo } from "../../model/photo.ts";
import { entryLacks, evidenceOrder, lacksOf } from "../portion/evidence-words.ts";
import { shareColumns, taskColumns } from "./portion.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Column, type Table, tableOf } from "./table.ts";

/** A task beside one entry that is evidence of it; without an entry where there is none. */
export interface EvidenceRow {
  readonly analysis: Analysis;
  readonly state: TaskState;
  readonly entry?: { readonly day: Day; readonly claims: readonly TaskClaim[] };
}

/**
 * Tasks with gaps first, then those that contradict something, then the others that are claimed,
 * and last those that entries tell of and nobody claims; of each its entries, oldest first.
 */
export function evidenceRows(analysis: Analysis): readonly EvidenceRow[] {
  const { portion, build } = analysis;
  if (!portion) return [];
  const days = new Map(build.days.map((day) => [day.date, day]));
  const asked = evidenceOrder(portion.tasks.values());
  const others = [...portion.tasks.values()].filter(
    (state) => state.claims.length > 0 && !asked.includes(state),
  );
  return [...asked, ...others].flatMap((state) => {
    const rows = [...grouped(state.claims, ({ date }) => date)].flatMap(
      ([date, claims]): EvidenceRow[] => {
        const day = days.get(date);
        return day ? [{ analysis, state, entry: { day, claims } }] : [];
      },
    );
    return rows.length > 0 ? rows : [{ analysis, state }];
  });
}

const attended =
  (role: (role: string) => boolean) =>
  ({ entry }: EvidenceRow): string | undefined =>
    listed(
      entry?.claims.flatMap(({ session }) =>
        session.who.filter((each) => role(each.role)).map(({ person }) => person),
      ),
    );

const entryColumns: readonly Column<EvidenceRow>[] = [
  {
    key: "date",
    heading: "Date",
    kind: "date",
    means: "Date of the entry; empty: no entry shows the task.",
    value: ({ entry }) => entry?.day.date,
  },
  {
    key: "kinds",
    heading: "Kinds of work",
    kind: "text",
    means: "Of the sessions of that entry that show the task.",
    value: ({ entry }) => listed(entry?.claims.map(({ kind }) => kind)),
  },
  {
    key: "steps",
    heading: "Steps",
    kind: "text",
    means: "Ids of the steps of these sessions.",
    value: ({ entry }) => listed(entry?.claims.map(({ session }) => session.step)),
  },
  {
    key: "builders",
    heading: "Builders and unpaid help",
    kind: "text",
    means: "Ids of who was at it as a builder or an unpaid helper.",
    value: attended((role) => role === "builder" || role === "unpaid help"),
  },
  {
    key: "paid_help",
    heading: "Paid help",
    kind: "text",
    means: "Ids of who was at it as paid help.",
    value: attended((role) => role === "paid help"),
  },
  {
    key: "instruction",
    heading: "Instruction",
    kind: "text",
    means: "Ids of who was at it to teach, which counts as neither.",
    value: attended((role) => role === "instruction"),
  },
  {
    key: "place",
    heading: "Place",
    kind: "text",
    means: "The entry's place, a code; empty in the public edition where the day is private.",
    value: ({ entry }) => entry?.day.place || undefined,
  },
  {
    key: "photographs",
    heading: "Photographs",
    kind: "number",
    means: "Of the entry, as many as this edition shows; empty where it shows nothing of the day.",
    value: ({ entry }) => entry && photosShown(entry.day)?.length,
  },
  {
    key: "photographs_of_a_builder",
    heading: "Photographs of a builder",
    kind: "number",
    means: "Of these, the ones that show a builder.",
    value: ({ analysis, entry }) =>
      entry && photosShown(entry.day)?.filter((photo) => showsBuilder(photo, analysis)).length,
  },
  {
    key: "entry_lacks",
    heading: "Entry lacks",
    kind: "text",
    means:
      "What this entry alone lacks as evidence, judged on the whole journal, private parts included.",
    value: ({ entry }) => entry && listed(entryLacks(entry.claims)),
  },
];

/** What shows each claimed task, one row for each task and entry, gaps first. */
export const evidenceTable: Table<EvidenceRow> = tableOf({
  name: "evidence",
  title: "Evidence of the tasks on the major-portion sheet",
  rows: evidenceRows,
  columns: [
    ...taskColumns<EvidenceRow>(({ state }) => state.task),
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "`divided`, `not applicable`, or `undecided`.",
      value: ({ state }) => state.standing,
    },
    ...shareColumns<EvidenceRow>(({ state }) => state.current),
    {
      key: "gaps",
      heading: "Gaps",
      kind: "text",
      means:
        "What all entries together lack as evidence of the task, judged on the whole journal, private parts included; empty: nothing, or nothing is claimed.",
      value: ({ state }) => listed(lacksOf(state)),
    },
    {
      key: "contradictions",
      heading: "Contradictions",
      kind: "text",
      means: "Where the division of the task contradicts entries, help, or its own marks.",
      value: ({ state }) => listed(state.conflicts),
    },
    ...entryColumns,
    ...sourceColumns<EvidenceRow>(
      ({ state, entry }) =>
        entry?.claims[0]?.session.span ?? state.current?.span ?? state.task.span,
    ),
  ],
});

// Each once, in the order of their first appearance.
function listed(texts: readonly (string | undefined)[] | undefined): string | undefined {
  const each = new Set(texts?.filter((text) => text !== undefined));
  return each.size === 0 ? undefined : [...each].join("; ");
}

// Every entry has a place, unless the edition shows nothing of its day.
function photosShown({ private: isPrivate, place, photos }: Day): readonly Photo[] | undefined {
  return isPrivate && place === "" ? undefined : photos;
}

function showsBuilder({ shows }: Photo, { build }: Analysis): boolean {
  return shows.some((person) => build.people.get(person)?.role === "builder");
}
