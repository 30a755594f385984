import type { Hours } from "../../compute/analysis.ts";
import type { TaskState } from "../../compute/ledgers/portion.ts";
import type { Assembly, Step } from "../../model/assembly.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Day } from "../../model/day.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { assemblyHours, stepHours } from "../tables/totals.ts";

/** An assembly and the days whose entries have to do with it. */
export interface IndexedAssembly {
  readonly assembly: Assembly;
  /** 0 for a root. */
  readonly depth: number;
  /** It and everything below. */
  readonly hours: Hours;
  /** Of it and of its own steps; what lies below has rows of its own. Oldest first. */
  readonly dates: readonly CalendarDate[];
}

/** A step and the days whose entries have to do with it. */
export interface IndexedStep {
  readonly step: Step;
  readonly hours: Hours;
  /** As far as its joint has come; absent: not begun. */
  readonly stage?: string;
  /** Oldest first. */
  readonly dates: readonly CalendarDate[];
}

/** A task of the major-portion sheet and the days whose entries are evidence of it. */
export interface IndexedTask {
  readonly state: TaskState;
  /** Oldest first. */
  readonly dates: readonly CalendarDate[];
}

/** Where everything is in the log. */
export interface BookIndex {
  /** As a tree is read: each before its parts. */
  readonly assemblies: readonly IndexedAssembly[];
  /** In the order declared. */
  readonly steps: readonly IndexedStep[];
  /** In the order of their list; empty when the journal keeps no sheet. */
  readonly tasks: readonly IndexedTask[];
}

/**
 * The index of the log. An entry has to do with a step when a session, reading, cure, hold,
 * release, deviation, squawk, inspection, layout or photograph of the day names it.
 */
export function bookIndex({ analysis }: RecordIndex): BookIndex {
  const { build, steps: states, portion } = analysis;
  const bySteps = new Map<string, CalendarDate[]>();
  const byAssemblies = new Map<string, CalendarDate[]>();
  for (const day of build.days) {
    const { steps, assemblies } = namedBy(day);
    const ofSteps = [...steps].flatMap((id) => build.steps.get(id)?.assembly ?? []);
    for (const id of steps) put(bySteps, id, day.date);
    for (const id of new Set([...assemblies, ...ofSteps])) put(byAssemblies, id, day.date);
  }
  return {
    assemblies: assemblyHours(analysis).map(({ assembly, depth, rolledUp }) => ({
      assembly,
      depth,
      hours: rolledUp,
      dates: byAssemblies.get(assembly.id) ?? [],
    })),
    steps: stepHours(analysis).flatMap(({ step, hours }) => {
      if (!step) return [];
      const stage = states.get(step.id)?.stage;
      return [
        {
          step,
          hours,
          ...(stage === undefined ? {} : { stage }),
          dates: bySteps.get(step.id) ?? [],
        },
      ];
    }),
    tasks: [...(portion?.tasks.values() ?? [])].map((state) => ({
      state,
      dates: [...new Set(state.claims.map(({ date }) => date))],
    })),
  };
}

/** The ids that a day names. */
function namedBy(day: Day) {
  const named: readonly { readonly step?: string; readonly assembly?: string }[] = [
    ...day.sessions,
    ...day.readings,
    ...day.cures,
    ...day.holds,
    ...day.releases,
    ...day.deviations,
    ...day.squawks,
    ...day.inspections,
    ...day.photos,
    ...day.layouts,
  ];
  return {
    steps: new Set(named.flatMap(({ step }) => step ?? [])),
    assemblies: new Set(named.flatMap(({ assembly }) => assembly ?? [])),
  };
}

function put(dates: Map<string, CalendarDate[]>, id: string, date: CalendarDate): void {
  const known = dates.get(id);
  if (known) known.push(date);
  else dates.set(id, [date]);
}
