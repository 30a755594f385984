import type { Build } from "../../model/build.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Help } from "../../model/help.ts";
import type { Portion, Split, SplitEntry, Task, Tenths } from "../../model/portion.ts";
import { kindsApart, type Session, type WorkKind } from "../../model/session.ts";
import { grouped } from "../grouped.ts";
import {
  addPortions,
  type PortionSum,
  type PortionVerdict,
  portionSum,
  portionVerdict,
} from "../portion.ts";
import { type TaskConflict, taskConflicts } from "../task-conflicts.ts";

/** A session that is evidence of a task: the session names the task, or its step does. */
export interface TaskClaim {
  readonly date: CalendarDate;
  readonly session: Session;
  readonly kind: WorkKind;
  /** Whether a builder or an unpaid helper was at it. */
  readonly amateur: boolean;
  readonly paid: boolean;
  /** Whether the entry names a place. */
  readonly placed: boolean;
  /** Whether the entry says anything in words: prose, or a note of the session. */
  readonly told: boolean;
  /** Photographs of the entry. */
  readonly photos: number;
}

/** What evidence of a claimed task can lack. */
export const evidenceGaps = [
  "no entry",
  "no entry by a builder",
  "no place",
  "no text",
  "no photograph",
] as const;
export type EvidenceGap = (typeof evidenceGaps)[number];

/** Shares whose kind of work no entry by a builder has. */
export type MissingKind = "assemble" | "fabricate";

/** The share of a task that the register of help gives to paid help. */
export interface TaskHelp {
  readonly tenths: Tenths;
  /** Ids of the rows, by first day. */
  readonly rows: readonly string[];
}

/** A task of the sheet with all that is known of it. */
export interface TaskState {
  readonly task: Task;
  /** Every division of its point, oldest first. */
  readonly history: readonly SplitEntry[];
  /** The newest; absent while undecided. */
  readonly current?: SplitEntry;
  readonly standing: "divided" | "not applicable" | "undecided";
  /** Oldest first; study and shop time are evidence of nothing. */
  readonly claims: readonly TaskClaim[];
  /** Whether the builder claims a share of it. */
  readonly claimed: boolean;
  /** Empty where nothing is claimed. */
  readonly gaps: readonly EvidenceGap[];
  readonly missingKinds: readonly MissingKind[];
  /** What rows of help have of it. */
  readonly help: TaskHelp;
  readonly conflicts: readonly TaskConflict[];
}

/** The tasks of one section and what they come to. */
export interface SectionState {
  readonly section: string;
  readonly tasks: readonly TaskState[];
  readonly sum: PortionSum;
  readonly notApplicable: number;
  readonly undecided: number;
}

/** The major-portion sheet, worked out. */
export interface PortionLedger {
  readonly register: Portion;
  /** In the order in which the list comes to them; tasks in the order of the list. */
  readonly sections: readonly SectionState[];
  /** By id, in the order of the sections. */
  readonly tasks: ReadonlyMap<string, TaskState>;
  /** Of the tasks that are divided. */
  readonly sum: PortionSum;
  readonly verdict: PortionVerdict;
  readonly notApplicable: number;
  readonly undecided: number;
  /** The same if nothing of the undecided tasks should fall to the builder. */
  readonly worst: PortionVerdict;
}

/**
 * Works out the sheet of a build: sums in whole tenths, both lines, what evidence each claimed
 * task has, and where sheet, entries and help contradict each other. Hours do not enter: the
 * sheet counts tasks.
 * @returns `undefined` when the journal keeps no sheet.
 */
export function portionLedger(
  build: Pick<Build, "portion" | "days" | "help">,
): PortionLedger | undefined {
  const { portion } = build;
  return (
    portion &&
    ledgerOf(portion, { claims: claimsOf(portion, build.days), help: helpOf(build.help) })
  );
}

/**
 * The sheet as it would be with other divisions of some tasks; nothing is changed.
 * @param proposals By id of the task; `undefined` stands for not applicable.
 */
export function proposedPortion(
  { register, tasks }: PortionLedger,
  proposals: ReadonlyMap<string, Split | undefined>,
): PortionLedger {
  const splits = [...proposals].map(([id, split]): SplitEntry => {
    const before = tasks.get(id);
    return {
      task: id,
      // Behind every other one, because the newest counts.
      date: "9999-12-31",
      ...(split ? { split } : {}),
      salvage: before?.current?.salvage ?? false,
      span: before?.task.span ?? register.span,
    };
  });
  const known: Known = {
    claims: new Map([...tasks].map(([id, state]) => [id, state.claims])),
    help: new Map([...tasks].map(([id, state]) => [id, state.help])),
  };
  return ledgerOf({ ...register, splits: [...register.splits, ...splits] }, known);
}

/** What is known of tasks beside the sheet, by their ids. */
interface Known {
  readonly claims: ReadonlyMap<string, readonly TaskClaim[]>;
  readonly help: ReadonlyMap<string, TaskHelp>;
}

const noHelp: TaskHelp = { tenths: 0, rows: [] };

function ledgerOf(register: Portion, { claims, help }: Known): PortionLedger {
  const bySection = new Map<string, TaskState[]>();
  const histories = grouped(register.splits, ({ task }) => task);
  for (const task of register.tasks.values()) {
    const state = taskState(task, histories.get(task.id) ?? [], {
      claims: claims.get(task.id) ?? [],
      help: help.get(task.id) ?? noHelp,
    });
    const section = bySection.get(task.section);
    if (section) section.push(state);
    else bySection.set(task.section, [state]);
  }
  const sections = [...bySection].map(([section, tasks]) => sectionState(section, tasks));
  const sum = addPortions(sections.map((section) => section.sum));
  const undecided = sections.reduce((count, section) => count + section.undecided, 0);
  return {
    register,
    sections,
    tasks: new Map(
      sections.flatMap(({ tasks }) => tasks.map((state) => [state.task.id, state] as const)),
    ),
    sum,
    verdict: portionVerdict(sum),
    notApplicable: sections.reduce((count, section) => count + section.notApplicable, 0),
    undecided,
    worst: portionVerdict({ total: sum.total + 10 * undecided, builder: sum.builder }),
  };
}

function sectionState(section: string, tasks: readonly TaskState[]): SectionState {
  return {
    section,
    tasks,
    sum: portionSum(tasks.flatMap(({ current }) => current?.split ?? [])),
    notApplicable: tasks.filter(({ standing }) => standing === "not applicable").length,
    undecided: tasks.filter(({ standing }) => standing === "undecided").length,
  };
}

function taskState(
  task: Task,
  history: readonly SplitEntry[],
  { claims, help }: Pick<TaskState, "claims" | "help">,
): TaskState {
  const current = history.at(-1);
  const split = current?.split;
  const claimed = split !== undefined && split.assembly + split.fabrication > 0;
  return {
    task,
    history,
    ...(current ? { current } : {}),
    standing: split ? "divided" : current ? "not applicable" : "undecided",
    claims,
    claimed,
    gaps: claimed ? gapsOf(claims) : [],
    missingKinds: split ? missingKinds(split, claims) : [],
    help,
    conflicts: taskConflicts({ task, current, claims, help }),
  };
}

function gapsOf(claims: readonly TaskClaim[]): EvidenceGap[] {
  const own = claims.filter(({ amateur }) => amateur);
  if (own.length === 0) return [claims.length === 0 ? "no entry" : "no entry by a builder"];
  return [
    ...(own.some(({ placed }) => placed) ? [] : (["no place"] as const)),
    ...(own.some(({ told }) => told) ? [] : (["no text"] as const)),
    ...(own.some(({ photos }) => photos > 0) ? [] : (["no photograph"] as const)),
  ];
}

// Without any entry by a builder there is a greater gap, which is said already.
function missingKinds(split: Split, claims: readonly TaskClaim[]): MissingKind[] {
  const own = claims.filter(({ amateur }) => amateur);
  if (own.length === 0) return [];
  const lacks = (kind: MissingKind) => !own.some((claim) => claim.kind === kind);
  return [
    ...(split.assembly > 0 && lacks("assemble") ? (["assemble"] as const) : []),
    ...(split.fabrication > 0 && lacks("fabricate") ? (["fabricate"] as const) : []),
  ];
}

function helpOf(register: Help | undefined): ReadonlyMap<string, TaskHelp> {
  const help = new Map<string, TaskHelp>();
  for (const { id, shares } of register?.entries ?? []) {
    for (const [task, tenths] of shares) {
      const before = help.get(task) ?? noHelp;
      help.set(task, { tenths: before.tenths + tenths, rows: [...before.rows, id] });
    }
  }
  return help;
}

function claimsOf(
  portion: Portion,
  days: Build["days"],
): ReadonlyMap<string, readonly TaskClaim[]> {
  const byStep = new Map<string, string[]>();
  for (const [task, steps] of portion.steps) {
    for (const step of steps) byStep.set(step, [...(byStep.get(step) ?? []), task]);
  }
  const claims = new Map<string, TaskClaim[]>();
  for (const day of days) {
    for (const session of day.sessions) {
      if (kindsApart.includes(session.kind)) continue;
      const ofStep = session.step === undefined ? [] : (byStep.get(session.step) ?? []);
      for (const task of new Set([...(session.tasks ?? []), ...ofStep])) {
        const claim: TaskClaim = {
          date: day.date,
          session,
          kind: session.kind,
          amateur: session.who.some(({ role }) => role === "builder" || role === "unpaid help"),
          paid: session.who.some(({ role }) => role === "paid help"),
          placed: day.place.trim() !== "",
          told: day.prose.trim() !== "" || (session.note ?? "").trim() !== "",
          photos: day.photos.length,
        };
        const before = claims.get(task);
        if (before) before.push(claim);
        else claims.set(task, [claim]);
      }
    }
  }
  return claims;
}
