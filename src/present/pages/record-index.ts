import type {
  Analysis,
  CureState,
  DeviationState,
  HoldState,
  HoursLine,
  JudgedReading,
  SquawkState,
} from "../../compute/analysis.ts";
import { grouped } from "../../compute/grouped.ts";
import type { LaidOut } from "../../compute/laid-out.ts";
import type { Amendment } from "../../model/amendment.ts";
import type { Assembly } from "../../model/assembly.ts";
import type { CalendarDate, CalendarMonth, Minutes } from "../../model/calendar.ts";
import { monthOf } from "../../model/calendar.ts";
import type { Day } from "../../model/day.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Release } from "../../model/hold.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Role } from "../../model/person.ts";
import type { Photo } from "../../model/photo.ts";
import type { Seal } from "../../model/seal.ts";
import type { Session } from "../../model/session.ts";
import type { EditedAnalysis, Edition } from "../record/edition.ts";
import { privateEdition, publicEdition } from "../record/public-edition.ts";
import { sessionAmendments } from "../tables/hours.ts";
import { type Addresses, addressesOf } from "./addresses.ts";
import type { Pictures } from "./picture.ts";

/** What the site is made from. */
export interface SiteInput {
  readonly analysis: Analysis;
  /** Findings, from the checks and from reading alike. */
  readonly diagnostics: readonly Diagnostic[];
  readonly pictures: Pictures;
  readonly edition: Edition;
  /** Recordings that are published with the site: where each stands, by the recording's `file`. */
  readonly videos?: ReadonlyMap<string, string>;
  /** Share pictures made from photographs: where each stands, by the photo's `file`. */
  readonly shares?: ReadonlyMap<string, string>;
  /** Path the site will stand under, with its slashes: `/`, `/journal/`; absent while unknown. */
  readonly base?: string;
}

/**
 * Everything of a record that pages look up, found once: a site of thousands of days may not
 * run through all of them for each page. Lists keep the order of the journal, oldest first,
 * and hold only what the edition shows.
 */
export interface RecordIndex extends EditedAnalysis {
  readonly pictures: Pictures;
  readonly shares: ReadonlyMap<string, string>;
  readonly videos: ReadonlyMap<string, string>;
  readonly base?: string;
  readonly addresses: Addresses;
  /** Whether a day has a sheet of its own; a private one has none in the public edition. */
  readonly showsDay: (date: CalendarDate) => boolean;
  /** A person's name as the edition gives it; `role` is the one they had just then. */
  readonly person: (id: string, role?: Role) => string;
  /** All days, shown or not, so that a sheet has one number in every edition; from 1. */
  readonly sheetOf: ReadonlyMap<CalendarDate, number>;
  readonly shownDays: readonly Day[];
  readonly dayByDate: ReadonlyMap<CalendarDate, Day>;
  /** All days, shown or not, by month; months oldest first. */
  readonly daysByMonth: ReadonlyMap<CalendarMonth, readonly Day[]>;
  /** Minutes of building on the longest day; at least one hour, so that it can be divided by. */
  readonly longestDay: Minutes;
  /** Assemblies without a parent, in the order declared. */
  readonly roots: readonly Assembly[];
  readonly neighbours: ReadonlyMap<CalendarDate, { readonly previous?: Day; readonly next?: Day }>;
  readonly linesByDate: ReadonlyMap<CalendarDate, readonly HoursLine[]>;
  readonly linesByAssembly: ReadonlyMap<string, readonly HoursLine[]>;
  readonly linesByStep: ReadonlyMap<string, readonly HoursLine[]>;
  readonly sessionsByStep: ReadonlyMap<string, readonly Session[]>;
  /** Where a session's row stands on the sheet of its day: `s-3` for the third. */
  readonly anchorOfSession: ReadonlyMap<Session, string>;
  readonly readingsByDate: ReadonlyMap<CalendarDate, readonly JudgedReading[]>;
  readonly readingsByStep: ReadonlyMap<string, readonly JudgedReading[]>;
  /** By the rule that governs them. */
  readonly readingsByRule: ReadonlyMap<string, readonly JudgedReading[]>;
  /** By the rule that they name, where another wins over it. */
  readonly readingsWonOver: ReadonlyMap<string, readonly JudgedReading[]>;
  readonly readingById: ReadonlyMap<string, JudgedReading>;
  readonly curesByDate: ReadonlyMap<CalendarDate, readonly CureState[]>;
  readonly curesByStep: ReadonlyMap<string, readonly CureState[]>;
  readonly holdsByDate: ReadonlyMap<CalendarDate, readonly HoldState[]>;
  readonly holdsByStep: ReadonlyMap<string, readonly HoldState[]>;
  readonly holdsByRelease: ReadonlyMap<Release, readonly HoldState[]>;
  readonly deviationsByDate: ReadonlyMap<CalendarDate, readonly DeviationState[]>;
  readonly deviationsByStep: ReadonlyMap<string, readonly DeviationState[]>;
  /** By the day a deviation was disposed of, where that is a later one. */
  readonly dispositionsByDate: ReadonlyMap<CalendarDate, readonly DeviationState[]>;
  readonly layoutsByDate: ReadonlyMap<CalendarDate, readonly LaidOut[]>;
  readonly squawksByDate: ReadonlyMap<CalendarDate, readonly SquawkState[]>;
  readonly squawksByStep: ReadonlyMap<string, readonly SquawkState[]>;
  /** By the later day on which something was done about a squawk, or it was closed. */
  readonly squawkWorkByDate: ReadonlyMap<CalendarDate, readonly SquawkState[]>;
  readonly inspectionsByStep: ReadonlyMap<string, readonly Inspection[]>;
  readonly photosByStep: ReadonlyMap<string, readonly Photo[]>;
  readonly photosByAssembly: ReadonlyMap<string, readonly Photo[]>;
  readonly photosByMonth: ReadonlyMap<CalendarMonth, readonly Photo[]>;
  readonly sealByMonth: ReadonlyMap<CalendarMonth, Seal>;
  /** By the day they correct. */
  readonly amendmentsByDay: ReadonlyMap<CalendarDate, readonly Amendment[]>;
  readonly amendmentsBySession: ReadonlyMap<Session, readonly Amendment[]>;
  /** By the id of the reading they correct, oldest first. */
  readonly amendmentsByReading: ReadonlyMap<string, readonly Amendment[]>;
  readonly dateByFile: ReadonlyMap<string, CalendarDate>;
  /** By the day whose entry they stand in. */
  readonly findingsByDate: ReadonlyMap<CalendarDate, readonly Diagnostic[]>;
  /** In order of place; the words of a private one are withheld. */
  readonly findings: readonly Diagnostic[];
}

/** Finds everything once. Takes time in proportion to the journal. */
export function recordIndex(input: SiteInput): RecordIndex {
  const edit = input.edition === "public" ? publicEdition : privateEdition;
  const edited = edit(input.analysis, input.diagnostics);
  const { analysis, diagnostics } = edited;
  const { build, readings, cures, holds, deviations, squawks } = analysis;
  const hidden = new Set(
    input.edition === "private"
      ? []
      : build.days.filter((day) => day.private).map(({ date }) => date),
  );
  const showsDay = (date: CalendarDate) => !hidden.has(date);
  const shownDays = build.days.filter(({ date }) => showsDay(date));
  const photos = shownDays.flatMap((day) => day.photos);
  const findings = diagnostics.filter(({ severity }) => severity === "finding");
  const dateByFile = new Map(shownDays.map(({ file, date }) => [file, date]));
  const { steps } = build;

  return {
    ...edited,
    pictures: input.pictures,
    shares: input.shares ?? new Map(),
    videos: input.videos ?? new Map(),
    ...(input.base === undefined ? {} : { base: input.base }),
    showsDay,
    person: (id, role) => {
      const person = build.people.get(id);
      if (!person) return role ?? id;
      return person.private && person.name === person.role ? (role ?? person.role) : person.name;
    },
    addresses: addressesOf(build),
    sheetOf: new Map(build.days.map(({ date }, index) => [date, index + 1])),
    shownDays,
    dayByDate: new Map(build.days.map((day) => [day.date, day])),
    daysByMonth: grouped(build.days, ({ date }) => monthOf(date)),
    longestDay: [...analysis.hours.byDate.values()].reduce(
      (most, hours) => Math.max(most, hours.build),
      60,
    ),
    roots: [...build.assemblies.values()].filter(({ parent }) => parent === undefined),
    neighbours: neighboursOf(shownDays),
    linesByDate: grouped(analysis.hours.lines, ({ date }) => date),
    linesByAssembly: grouped(analysis.hours.lines, ({ assembly }) => assembly),
    linesByStep: grouped(analysis.hours.lines, ({ step }) => step),
    sessionsByStep: grouped(
      build.days.flatMap((day) => day.sessions),
      ({ step }) => step,
    ),
    anchorOfSession: new Map(
      build.days.flatMap((day) =>
        day.sessions.map((session, index): [Session, string] => [session, `s-${index + 1}`]),
      ),
    ),
    readingsByDate: grouped(readings, ({ reading }) => reading.date),
    readingsByStep: grouped(readings, ({ reading }) => reading.step),
    readingsByRule: grouped(readings, ({ rule }) => rule?.id),
    readingsWonOver: grouped(readings, ({ over }) => over?.id),
    readingById: new Map(readings.map((judged) => [judged.reading.id, judged])),
    curesByDate: grouped(cures, ({ cure }) => cure.date),
    curesByStep: grouped(cures, ({ cure }) => cure.step),
    holdsByDate: grouped(holds, ({ hold }) => hold.date),
    holdsByStep: grouped(holds, ({ hold }) => hold.step),
    holdsByRelease: byRelease(holds),
    deviationsByDate: grouped(deviations, ({ deviation }) => deviation.date),
    deviationsByStep: grouped(deviations, ({ deviation }) => deviation.step),
    dispositionsByDate: grouped(deviations, ({ deviation }) =>
      deviation.disposition && deviation.disposition.date !== deviation.date
        ? deviation.disposition.date
        : undefined,
    ),
    layoutsByDate: grouped(analysis.layouts, ({ layout }) => layout.date),
    squawksByDate: grouped(squawks, ({ squawk }) => squawk.date),
    squawksByStep: grouped(squawks, ({ squawk }) => squawk.step),
    squawkWorkByDate: squawkWork(squawks),
    inspectionsByStep: grouped(
      shownDays.flatMap((day) => day.inspections),
      ({ step }) => step,
    ),
    photosByStep: grouped(photos, ({ step }) => step),
    photosByAssembly: grouped(photos, ({ assembly, step }) =>
      step === undefined ? assembly : steps.get(step)?.assembly,
    ),
    photosByMonth: grouped(photos, ({ date }) => monthOf(date)),
    sealByMonth: new Map(build.seals.map((seal) => [seal.month, seal])),
    amendmentsByDay: grouped(
      build.days.flatMap((day) => day.amendments),
      ({ day }) => day,
    ),
    amendmentsBySession: sessionAmendments(build.days),
    amendmentsByReading: grouped(
      build.days.flatMap((day) => day.amendments),
      ({ reading }) => reading?.id,
    ),
    dateByFile,
    findingsByDate: grouped(findings, ({ span }) => dateByFile.get(span.file)),
    findings,
  };
}

function neighboursOf(
  days: readonly Day[],
): Map<CalendarDate, { readonly previous?: Day; readonly next?: Day }> {
  return new Map(
    days.map(({ date }, index) => {
      const previous = days[index - 1];
      const next = days[index + 1];
      return [date, { ...(previous ? { previous } : {}), ...(next ? { next } : {}) }];
    }),
  );
}

function byRelease(holds: readonly HoldState[]): Map<Release, HoldState[]> {
  const ended = new Map<Release, HoldState[]>();
  for (const state of holds) {
    if (!state.released) continue;
    const list = ended.get(state.released);
    if (list) list.push(state);
    else ended.set(state.released, [state]);
  }
  return ended;
}

function squawkWork(squawks: readonly SquawkState[]): Map<CalendarDate, SquawkState[]> {
  const work = new Map<CalendarDate, SquawkState[]>();
  for (const state of squawks) {
    const { date, fixed, closed } = state.squawk;
    const dates = new Set([fixed?.date, closed?.date]);
    for (const each of dates) {
      if (each === undefined || each === date) continue;
      const list = work.get(each);
      if (list) list.push(state);
      else work.set(each, [state]);
    }
  }
  return work;
}
