import type { Analysis, Hours, HoursLine } from "../../compute/analysis.ts";
import type { Assembly, Step } from "../../model/assembly.ts";
import type { CalendarMonth, Minutes } from "../../model/calendar.ts";
import { monthOf } from "../../model/calendar.ts";
import { type Person, type Role, roles } from "../../model/person.ts";
import { type WorkKind, workKinds } from "../../model/session.ts";

const none: Hours = { build: 0, apart: 0 };

/** Hours of one assembly. */
export interface AssemblyHours {
  readonly assembly: Assembly;
  /** 0 for a root. */
  readonly depth: number;
  /** Booked to it directly, its steps included. */
  readonly own: Hours;
  /** It and everything below. */
  readonly rolledUp: Hours;
}

/** Hours of every assembly as a tree is read: each before its parts, in the order declared. */
export function assemblyHours({ build, hours }: Analysis): AssemblyHours[] {
  const below = (id: string): AssemblyHours[] => {
    const assembly = build.assemblies.get(id);
    if (!assembly) return [];
    return [
      {
        assembly,
        depth: assembly.path.length - 1,
        own: hours.byAssembly.get(id) ?? none,
        rolledUp: hours.byAssemblyRolledUp.get(id) ?? none,
      },
      ...assembly.children.flatMap(below),
    ];
  };
  return [...build.assemblies.values()]
    .filter(({ parent }) => parent === undefined)
    .flatMap(({ id }) => below(id));
}

/** Minutes of somebody or something by kind of work. */
export interface KindHours {
  /** Days with at least one session. */
  readonly days: number;
  readonly byKind: ReadonlyMap<WorkKind, Minutes>;
  readonly total: Hours;
}

/** Hours of one person by kind. */
export interface PersonHours extends KindHours {
  readonly person: Person;
}

/** Hours of every declared person by kind, in the order declared. */
export function personHours({ build, hours }: Analysis): PersonHours[] {
  return [...build.people.values()].map((person) => ({
    person,
    ...kindHours(hours.lines.filter((line) => line.person === person.id)),
  }));
}

/** Hours of one role by kind. */
export interface RoleHours extends KindHours {
  readonly role: Role;
}

/** Hours of every role by kind: the role taken at the session, whoever took it. */
export function roleHours({ hours }: Analysis): RoleHours[] {
  return roles.map((role) => ({
    role,
    ...kindHours(hours.lines.filter((line) => line.role === role)),
  }));
}

/** Hours of everybody by kind. */
export function allHours({ hours }: Analysis): KindHours {
  return kindHours(hours.lines);
}

/** Hours of one month. */
export interface MonthHours extends KindHours {
  readonly month: CalendarMonth;
  /** Minutes of the build up to and including this month. */
  readonly toDate: Minutes;
}

/** Hours of every month with an entry, oldest first. */
export function monthHours({ hours }: Analysis): MonthHours[] {
  let toDate = 0;
  return [...hours.byMonth.keys()].map((month) => {
    const each = kindHours(hours.lines.filter(({ date }) => monthOf(date) === month));
    toDate += each.total.build;
    return { month, ...each, toDate };
  });
}

/** Hours of one step, or of all sessions that name none. */
export interface StepHours {
  readonly step?: Step;
  readonly hours: Hours;
}

/** Hours of every step in the order declared; last, what is booked without a step. */
export function stepHours({ build, hours }: Analysis): StepHours[] {
  const unnamed = hours.lines.filter(({ step }) => step === undefined);
  return [
    ...[...build.steps.values()].map((step) => ({
      step,
      hours: hours.byStep.get(step.id) ?? none,
    })),
    { hours: kindHours(unnamed).total },
  ];
}

/** Minutes of some lines by kind. */
export function kindHours(lines: readonly HoursLine[]): KindHours {
  const byKind = new Map<WorkKind, Minutes>(workKinds.map((kind) => [kind, 0]));
  let build = 0;
  let apart = 0;
  for (const { kind, minutes, apart: isApart } of lines) {
    byKind.set(kind, (byKind.get(kind) ?? 0) + minutes);
    if (isApart) apart += minutes;
    else build += minutes;
  }
  return {
    days: new Set(lines.map(({ date }) => date)).size,
    byKind,
    total: { build, apart },
  };
}
