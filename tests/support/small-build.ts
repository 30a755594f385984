// Small builds to start from: each function makes one valid thing and takes what differs.

import type { Assembly, Step } from "../../src/model/assembly.ts";
import type { Build } from "../../src/model/build.ts";
import { type AsOf, addDays, type CalendarDate, type Moment } from "../../src/model/calendar.ts";
import type { Cure } from "../../src/model/cure.ts";
import type { Assertion, Day } from "../../src/model/day.ts";
import type { Deviation, Disposition } from "../../src/model/deviation.ts";
import type { Span } from "../../src/model/diagnostic.ts";
import type { Hold, Release } from "../../src/model/hold.ts";
import type { Inspection } from "../../src/model/inspection.ts";
import type { Instrument } from "../../src/model/instrument.ts";
import type { Lot } from "../../src/model/lot.ts";
import type { Person, Role } from "../../src/model/person.ts";
import type { Photo } from "../../src/model/photo.ts";
import { type Project, usualStages } from "../../src/model/project.ts";
import type { Seal } from "../../src/model/seal.ts";
import type { Session } from "../../src/model/session.ts";
import type { Squawk } from "../../src/model/squawk.ts";

/** The day most small builds are about. */
export const someDay: CalendarDate = "2026-03-14";

/** A place in an invented file. */
export function span(overrides: Partial<Span> = {}): Span {
  return {
    file: "content/days/2026-03-14.md",
    line: 1,
    column: 1,
    length: 1,
    text: "as typed",
    ...overrides,
  };
}

/** A point in time in a shop whose clock is UTC: `moment("2026-03-14 18:40")`. */
export function moment(local: string): Moment {
  return { epochMinutes: Date.parse(`${local.replace(" ", "T")}Z`) / 60_000, local };
}

/** The day of judgement in a shop whose clock is UTC. */
export function asOf(date: CalendarDate): AsOf {
  return { date, endEpochMinutes: moment(`${addDays(date, 1)} 00:00`).epochMinutes };
}

/**
 * A session of an hour on the stabilizer by ada, on `someDay`. With `from` and `to` as clock
 * times, its minutes are those between them; `to` before `from` is on the next day.
 */
export function session(
  overrides: Partial<Omit<Session, "from" | "to" | "who">> & {
    readonly who?: readonly (string | readonly [string, Role])[];
    readonly from?: string;
    readonly to?: string;
  } = {},
): Session {
  const { from, to, who = ["ada"], date = someDay, ...rest } = overrides;
  const attendance = who.map((each) =>
    typeof each === "string"
      ? { person: each, role: "builder" as const }
      : { person: each[0], role: each[1] },
  );
  const common = {
    date,
    assembly: "stabilizer",
    who: attendance,
    kind: "assemble" as const,
    lots: [],
    private: false,
    span: span(),
    minutesSpan: span(),
    lotSpans: [],
  };
  if (from === undefined || to === undefined) return { ...common, minutes: 60, ...rest };
  const begun = moment(`${date} ${from}`);
  const over = moment(`${to < from ? addDays(date, 1) : date} ${to}`);
  const minutes = over.epochMinutes - begun.epochMinutes;
  return { ...common, minutes, from: begun, to: over, ...rest };
}

/** A day without contents. What it is given keeps its own date. */
export function day(overrides: Partial<Day> = {}): Day {
  const date = overrides.date ?? someDay;
  const file = `content/days/${date}.md`;
  return {
    date,
    late: 0,
    title: "An evening",
    place: "shop",
    conditions: {},
    sessions: [],
    readings: [],
    cures: [],
    holds: [],
    releases: [],
    deviations: [],
    squawks: [],
    inspections: [],
    photos: [],
    videos: [],
    layouts: [],
    amendments: [],
    next: [],
    assertions: [],
    prose: "Some words.\n",
    private: false,
    lengthMinutes: 1440,
    file,
    span: span({ file, line: 2, column: 7, length: 10, text: `date: ${date}` }),
    ...overrides,
  };
}

/** A cure on HS-08: mixed at 20:10 on `someDay`, ready 48 hours later. */
export function cure(overrides: Partial<Cure> = {}): Cure {
  return {
    date: someDay,
    step: "HS-08",
    mixed: moment("2026-03-14 20:10"),
    ready: moment("2026-03-16 20:10"),
    span: span(),
    ...overrides,
  };
}

export function hold(overrides: Partial<Hold> = {}): Hold {
  return { id: "H-1", date: someDay, step: "HS-08", with: "clecos", span: span(), ...overrides };
}

export function release(overrides: Partial<Release> = {}): Release {
  return { date: someDay, span: span(), ...overrides };
}

export function deviation(overrides: Partial<Deviation> = {}): Deviation {
  return {
    id: "D-014",
    date: someDay,
    drawing: "HS-03 rev C",
    planned: "1.0 in block",
    done: "0.75 in block",
    why: "first rib sits further aft",
    private: false,
    span: span(),
    ...overrides,
  };
}

export function disposition(overrides: Partial<Disposition> = {}): Disposition {
  return { date: someDay, text: "use as is", by: "jon", span: span(), ...overrides };
}

export function squawk(overrides: Partial<Squawk> = {}): Squawk {
  return { id: "S-004", date: someDay, found: "two tails short", span: span(), ...overrides };
}

export function inspection(overrides: Partial<Inspection> = {}): Inspection {
  return {
    date: someDay,
    step: "HS-07",
    look: "driven heads",
    by: "jon",
    open: "both skins off",
    findings: "none",
    result: "clear",
    span: span(),
    ...overrides,
  };
}

export function assertion(overrides: Partial<Assertion> = {}): Assertion {
  return { of: "total", minutes: 60, span: span(), ...overrides };
}

export function person(overrides: Partial<Person> = {}): Person {
  return {
    id: "ada",
    name: "Ada Sample",
    initials: "A.S.",
    role: "builder",
    private: false,
    span: span({ file: "content/people.yaml" }),
    ...overrides,
  };
}

export function assembly(overrides: Partial<Assembly> & { readonly id: string }): Assembly {
  return {
    title: overrides.id,
    children: [],
    steps: [],
    path: [overrides.id],
    span: span({ file: "content/assemblies.yaml" }),
    ...overrides,
  };
}

export function step(overrides: Partial<Step> & { readonly id: string }): Step {
  return {
    title: overrides.id,
    assembly: "stabilizer",
    looks: [],
    span: span({ file: "content/assemblies.yaml" }),
    ...overrides,
  };
}

export function instrument(overrides: Partial<Instrument> = {}): Instrument {
  return {
    id: "gauge-1",
    title: "Rivet gauge",
    coverage: 2,
    calibrations: [],
    span: span({ file: "content/instruments.yaml", line: 2 }),
    ...overrides,
  };
}

export function lot(overrides: Partial<Lot> = {}): Lot {
  return {
    id: "sealant-1",
    title: "Tank sealant, lot 1",
    material: "sealant",
    extensions: [],
    private: false,
    span: span({ file: "content/lots.yaml", line: 2 }),
    ...overrides,
  };
}

export function project(overrides: Partial<Project> = {}): Project {
  return {
    title: "A small build",
    designation: "SB-1",
    serial: "0001",
    basis: "amateur-built",
    zone: "Etc/UTC",
    begun: "2026-01-01",
    summary: "Invented for tests.",
    place: "shop",
    names: "names",
    private: false,
    drawings: [{ id: "HS-03", title: "Front spar", revision: "C" }],
    stages: usualStages,
    span: span({ file: "content/project.yaml" }),
    ...overrides,
  };
}

export function photo(overrides: Partial<Photo> = {}): Photo {
  return {
    date: someDay,
    file: "rib4.jpg",
    caption: "Row A driven",
    shows: [],
    private: false,
    span: span(),
    ...overrides,
  };
}

/** A seal over one entry, with no hours in it. */
export function seal(overrides: Partial<Seal> = {}): Seal {
  const month = overrides.month ?? "2026-03";
  return {
    month,
    designation: "SB-1",
    serial: "0001",
    version: "0.1.0",
    inMonth: { build: 0, apart: 0 },
    toDate: { build: 0, apart: 0 },
    entries: [{ path: `days/${month}-14.md`, digest: "1".repeat(64) }],
    photos: [],
    digest: `${month.replace("-", "")}${"a".repeat(58)}`,
    span: span({ file: `content/seals/${month}.seal` }),
    minutesSpan: span({ file: `content/seals/${month}.seal`, line: 6 }),
    ...overrides,
  };
}

/** A map by id, in the order given. */
export function register<Thing extends { readonly id: string }>(
  ...things: readonly Thing[]
): ReadonlyMap<string, Thing> {
  return new Map(things.map((thing) => [thing.id, thing]));
}

/**
 * A build with two people (ada, jon), a tree (empennage over stabilizer and rudder; wing), and
 * two steps on the stabilizer, HS-07 with two looks and HS-08 with none. No days.
 */
export function smallBuild(overrides: Partial<Build> = {}): Build {
  return {
    journal: "content",
    project: project(),
    people: register(person(), person({ id: "jon", name: "Jon Sample", initials: "J.S." })),
    assemblies: register(
      assembly({ id: "empennage", children: ["stabilizer", "rudder"] }),
      assembly({
        id: "stabilizer",
        parent: "empennage",
        steps: ["HS-07", "HS-08"],
        path: ["empennage", "stabilizer"],
      }),
      assembly({ id: "rudder", parent: "empennage", path: ["empennage", "rudder"] }),
      assembly({ id: "wing" }),
    ),
    steps: register(
      step({ id: "HS-07", looks: ["driven heads", "before closing"] }),
      step({ id: "HS-08" }),
    ),
    rules: new Map(),
    instruments: new Map(),
    lots: new Map(),
    days: [],
    seals: [],
    omissions: [],
    ...overrides,
  };
}
