import type {
  Analysis,
  CureState,
  DeviationState,
  HoldState,
  Hours,
  HoursLedger,
  HoursLine,
  InstrumentState,
  JudgedReading,
  JudgedValue,
  LotState,
  SquawkState,
  StepState,
} from "../../compute/analysis.ts";
import type { LaidOut } from "../../compute/laid-out.ts";
import { alterationLedger } from "../../compute/ledgers/alteration.ts";
import { balanceLedger } from "../../compute/ledgers/balance.ts";
import { helpLedger } from "../../compute/ledgers/help.ts";
import type { PortionLedger } from "../../compute/ledgers/portion.ts";
import type { Alteration } from "../../model/alteration.ts";
import type { Amendment } from "../../model/amendment.ts";
import type { Balance } from "../../model/balance.ts";
import type { Cure } from "../../model/cure.ts";
import type { Day } from "../../model/day.ts";
import type { Deviation } from "../../model/deviation.ts";
import type { Diagnostic, Span } from "../../model/diagnostic.ts";
import type { Help } from "../../model/help.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Layout } from "../../model/layout.ts";
import type { Reading } from "../../model/measurement.ts";
import type { Person } from "../../model/person.ts";
import type { Photo } from "../../model/photo.ts";
import type { Seal } from "../../model/seal.ts";
import type { Session } from "../../model/session.ts";
import type { Squawk } from "../../model/squawk.ts";
import type { EditedAnalysis } from "./edition.ts";

/**
 * What the public may see of an analysis. Hours, and every total of them, stay as they are.
 *
 * - A private day keeps its date and its sessions without their notes, and nothing else.
 * - Private readings, lots, photos, deviations, loading cases and session notes are gone, and so
 *   are the mentions of them.
 * - A private person keeps only a role and a neutral id such as `person-3`; everybody has
 *   initials for a name, and a neutral id, when the project says `names: initials`.
 * - A finding about something private keeps its code and its severity, not its words.
 *
 * Free text that the builder typed is not searched for names.
 *
 * @param diagnostics Of the reading and of the checks; the order is kept.
 */
export function publicEdition(
  analysis: Analysis,
  diagnostics: readonly Diagnostic[],
): EditedAnalysis {
  const { build } = analysis;
  const names = namesOf(analysis);
  const shown = new Shown(analysis, names);
  const days = build.days.map((day) => shown.day(day));
  const balance = build.balance && shown.balance(build.balance);
  const hours = shown.hours(analysis.hours);
  const help = build.help && shown.help(build.help);
  const helped = help && helpLedger({ help }, hours.lines);
  const weights = balance && balanceLedger(balance);
  const alteration = build.alteration && shown.alteration(build.alteration);
  const altered = alterationLedger(
    { project: build.project, days, ...(alteration ? { alteration } : {}) },
    weights,
  );
  const edited: Analysis = {
    build: {
      ...build,
      ...(help ? { help } : {}),
      ...(balance ? { balance } : {}),
      ...(alteration ? { alteration } : {}),
      people: new Map([...build.people.values()].map((person) => names.entry(person))),
      lots: new Map([...build.lots].filter(([, lot]) => !lot.private)),
      days,
      seals: build.seals.map(shownSeal),
      omissions: [],
    },
    asOf: analysis.asOf,
    hours,
    readings: analysis.readings
      .filter(({ reading }) => shown.isPublic(reading))
      .map((judged) => shown.judged(judged)),
    cures: analysis.cures
      .filter(({ cure }) => shown.isPublicDay(cure.date))
      .map(
        (state): CureState => ({
          ...state,
          cure: shown.cure(state.cure),
          brokenBy: state.brokenBy.map((session) => shown.session(session)),
        }),
      ),
    holds: analysis.holds
      .filter(({ hold }) => shown.isPublicDay(hold.date))
      .map(
        ({ hold, released }): HoldState => ({
          hold,
          ...(released ? { released } : {}),
        }),
      ),
    squawks: analysis.squawks
      .filter(({ squawk }) => shown.isPublicDay(squawk.date))
      .map((state): SquawkState => ({ ...state, squawk: shown.squawk(state.squawk) })),
    deviations: analysis.deviations
      .filter(({ deviation }) => shown.isPublic(deviation))
      .map(
        (state): DeviationState => ({
          ...state,
          deviation: shown.deviation(state.deviation),
        }),
      ),
    steps: new Map([...analysis.steps].map(([id, state]) => [id, shown.step(state)])),
    layouts: analysis.layouts
      .filter(({ layout }) => shown.isPublicDay(layout.date))
      .map((laidOut) => shown.laidOut(laidOut)),
    lots: analysis.lots.filter(({ lot }) => !lot.private).map((state): LotState => ({ ...state })),
    instruments: analysis.instruments.map(
      (state): InstrumentState => ({
        ...state,
        readings: state.readings
          .filter((reading) => shown.isPublic(reading))
          .map((reading) => shown.reading(reading)),
      }),
    ),
    ...(weights ? { balance: weights } : {}),
    ...(altered ? { alteration: altered } : {}),
    ...(helped ? { help: helped } : {}),
    ...(analysis.portion ? { portion: shown.portion(analysis.portion) } : {}),
    diagnostics: analysis.diagnostics.map((diagnostic) => shown.diagnostic(diagnostic)),
  };
  return {
    edition: "public",
    analysis: edited,
    diagnostics: diagnostics.map((diagnostic) => shown.diagnostic(diagnostic)),
    leftOut: {
      days: build.days.filter((day) => day.private).length,
      sessionNotes: build.days
        .flatMap((day) => day.sessions.map((session) => ({ day, session })))
        .filter(({ day, session }) => (day.private || session.private) && session.note).length,
      names: [...build.people.values()].filter((person) => names.isReplaced(person.id)).length,
      readings: analysis.readings.filter(({ reading }) => !shown.isPublic(reading)).length,
      lots: [...build.lots.values()].filter((lot) => lot.private).length,
      photos: count(build.days, (day) => day.photos.filter((photo) => !shown.isPublic(photo))),
      videos: count(build.days, (day) => day.videos.filter((video) => !shown.isPublic(video))),
      deviations: analysis.deviations.filter(({ deviation }) => !shown.isPublic(deviation)).length,
      loadingCases: build.balance?.cases.filter((loading) => loading.private).length ?? 0,
      invoices: build.help?.entries.filter(({ invoice }) => invoice !== undefined).length ?? 0,
      otherRecords: build.days
        .filter((day) => day.private)
        .reduce(
          (sum, day) =>
            sum +
            day.cures.length +
            day.holds.length +
            day.releases.length +
            day.squawks.length +
            day.inspections.length,
          0,
        ),
      amendments: count(build.days, (day) =>
        day.amendments.filter((amendment) => !shown.isPublicAmendment(amendment)),
      ),
      findingWords: diagnostics.filter((diagnostic) => shown.isWithheld(diagnostic)).length,
      omittedFiles: build.omissions.length,
    },
  };
}

// How many files a seal names is public; their names may speak of what is private.
function shownSeal(seal: Seal): Seal {
  const withheld = { path: "withheld", digest: "" };
  return {
    ...seal,
    entries: seal.entries.map(() => withheld),
    photos: seal.photos.map(() => withheld),
  };
}

/** Everything, as it is: the edition for the inspector. */
export function privateEdition(
  analysis: Analysis,
  diagnostics: readonly Diagnostic[],
): EditedAnalysis {
  return {
    edition: "private",
    analysis,
    diagnostics,
    leftOut: {
      days: 0,
      sessionNotes: 0,
      names: 0,
      readings: 0,
      lots: 0,
      photos: 0,
      videos: 0,
      deviations: 0,
      loadingCases: 0,
      invoices: 0,
      otherRecords: 0,
      amendments: 0,
      findingWords: 0,
      omittedFiles: 0,
    },
  };
}

/** Who is shown how. */
interface Names {
  isReplaced(person: string): boolean;
  /** The id that an edition shows for a person. */
  id(person: string): string;
  entry(person: Person): [string, Person];
  /** A program's message with the ids and names of replaced people replaced as well. */
  inMessage(text: string): string;
}

function namesOf({ build }: Analysis): Names {
  const replaced = new Map<string, Person>();
  let number = 0;
  for (const person of build.people.values()) {
    number += 1;
    if (!person.private && build.project.names === "names") continue;
    const name = person.private ? person.role : person.initials;
    const { standing: _standing, ...rest } = person;
    const kept = person.private ? rest : person;
    const initials = person.private ? person.role : person.initials;
    replaced.set(person.id, { ...kept, id: `person-${number}`, name, initials });
  }
  const words = [...build.people.values()].flatMap((person) => {
    const shown = replaced.get(person.id);
    return shown
      ? [
          { from: person.name, to: shown.name },
          { from: `\`${person.id}\``, to: `\`${shown.id}\`` },
        ]
      : [];
  });
  return {
    isReplaced: (person) => replaced.has(person),
    id: (person) => replaced.get(person)?.id ?? person,
    entry: (person) => {
      const shown = replaced.get(person.id) ?? person;
      return [shown.id, shown];
    },
    inMessage: (text) => words.reduce((done, { from, to }) => done.replaceAll(from, to), text),
  };
}

/** Makes the public form of each thing, once, so that what was one object stays one object. */
class Shown {
  readonly #names: Names;
  readonly #privateDays: ReadonlySet<string>;
  readonly #privateFiles: ReadonlySet<string>;
  readonly #days: ReadonlyMap<string, Day>;
  readonly #privateIds: ReadonlySet<string>;
  readonly #privateLots: ReadonlySet<string>;
  readonly #sessions = new Map<Session, Session>();
  readonly #readings = new Map<Reading, Reading>();
  readonly #cures = new Map<Cure, Cure>();

  constructor({ build, readings, deviations }: Analysis, names: Names) {
    this.#names = names;
    this.#days = new Map(build.days.map((day) => [day.date, day]));
    const privateDays = build.days.filter((day) => day.private);
    this.#privateDays = new Set(privateDays.map((day) => day.date));
    this.#privateFiles = new Set(privateDays.map((day) => day.file));
    this.#privateLots = new Set(
      [...build.lots.values()].filter((lot) => lot.private).map((lot) => lot.id),
    );
    this.#privateIds = new Set([
      ...readings.filter(({ reading }) => !this.isPublic(reading)).map(({ reading }) => reading.id),
      ...deviations
        .filter(({ deviation }) => !this.isPublic(deviation))
        .map(({ deviation }) => deviation.id),
    ]);
  }

  isPublicDay(date: string): boolean {
    return !this.#privateDays.has(date);
  }

  isPublic(thing: { readonly date: string; readonly private: boolean }): boolean {
    return !thing.private && this.isPublicDay(thing.date);
  }

  /**
   * An amendment is as private as what it amends, and as the day that carries it. Only what
   * makes up the hours of a session is public always, and so is the correction of it.
   */
  isPublicAmendment({ date, day, field }: Amendment): boolean {
    const [, list, number, value] = fieldParts(field);
    const target = this.#days.get(day);
    if (list === "sessions") {
      const session = target?.sessions[Number(number) - 1];
      return value !== "note" || (this.isPublicDay(date) && !target?.private && !session?.private);
    }
    if (!this.isPublicDay(date) || target?.private) return false;
    const things =
      list === "readings"
        ? target?.readings
        : list === "photos"
          ? target?.photos
          : list === "videos"
            ? target?.videos
            : list === "deviations"
              ? target?.deviations
              : undefined;
    return !things?.[Number(number) - 1]?.private;
  }

  amendment(amendment: Amendment): Amendment {
    const [, , , value = ""] = fieldParts(amendment.field);
    const shown = (typed: string) =>
      fieldsWithIds.has(value)
        ? typed.replace(/[\w.-]+/g, (id) => (this.#isHidden(id) ? "private" : this.#names.id(id)))
        : typed;
    return {
      ...amendment,
      was: shown(amendment.was),
      now: shown(amendment.now),
      why: this.isPublicDay(amendment.date) ? amendment.why : "written on a private day",
      span: withoutText(amendment.span),
    };
  }

  #isHidden(id: string): boolean {
    return this.#privateLots.has(id) || this.#privateIds.has(id);
  }

  isWithheld(diagnostic: Diagnostic): boolean {
    return diagnostic.private === true || this.#privateFiles.has(diagnostic.span.file);
  }

  day(day: Day): Day {
    const sessions = day.sessions.map((session) => this.session(session));
    const amendments = day.amendments
      .filter((amendment) => this.isPublicAmendment(amendment))
      .map((amendment) => this.amendment(amendment));
    if (!day.private) {
      return {
        ...day,
        sessions,
        amendments,
        readings: day.readings
          .filter((reading) => this.isPublic(reading))
          .map((reading) => this.reading(reading)),
        cures: day.cures.map((cure) => this.cure(cure)),
        deviations: day.deviations
          .filter((deviation) => this.isPublic(deviation))
          .map((deviation) => this.deviation(deviation)),
        squawks: day.squawks.map((squawk) => this.squawk(squawk)),
        inspections: day.inspections.map((inspection) => this.inspection(inspection)),
        layouts: day.layouts.map((layout) => this.layout(layout)),
        videos: day.videos
          .filter((video) => this.isPublic(video))
          .map(({ picture, ...video }) => {
            // A private photograph does not stand for a public recording.
            const shown = day.photos.some(
              (photo) => photo.file === picture && this.isPublic(photo),
            );
            return shown && picture !== undefined ? { ...video, picture } : video;
          }),
        photos: day.photos
          .filter((photo) => this.isPublic(photo))
          .map(
            (photo): Photo => ({
              ...photo,
              shows: photo.shows.map((person) => this.#names.id(person)),
            }),
          ),
      };
    }
    return {
      ...day,
      title: "",
      place: "",
      conditions: {},
      sessions,
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
      amendments,
      next: [],
      assertions: [],
      prose: "",
    };
  }

  layout(layout: Layout): Layout {
    const { deviation, deviationSpan, ...rest } = layout;
    return deviation !== undefined && this.#privateIds.has(deviation) ? rest : layout;
  }

  laidOut({ deviation, ...rest }: LaidOut): LaidOut {
    return {
      ...rest,
      layout: this.layout(rest.layout),
      ...(deviation && this.isPublic(deviation) ? { deviation: this.deviation(deviation) } : {}),
    };
  }

  session(session: Session): Session {
    const known = this.#sessions.get(session);
    if (known) return known;
    const { note, ...rest } = session;
    const noteIsPublic = !session.private && this.isPublicDay(session.date);
    const kept = session.lots
      .map((lot, index) => ({ lot, span: session.lotSpans[index] }))
      .filter(({ lot }) => !this.#privateLots.has(lot));
    const made: Session = {
      ...rest,
      ...(note !== undefined && noteIsPublic ? { note } : {}),
      who: session.who.map(({ person, role }) => ({ person: this.#names.id(person), role })),
      lots: kept.map(({ lot }) => lot),
      lotSpans: kept.flatMap(({ span }) => (span ? [span] : [])),
      // The line may hold the note, and a private day's lines are not shown.
      ...(noteIsPublic ? {} : { span: withoutText(session.span) }),
      // After an amendment it lies in the file of the day that carries the amendment.
      ...(noteIsPublic && !this.#privateFiles.has(session.minutesSpan.file)
        ? {}
        : { minutesSpan: withoutText(session.minutesSpan) }),
    };
    this.#sessions.set(session, made);
    return made;
  }

  reading(reading: Reading): Reading {
    const known = this.#readings.get(reading);
    if (known) return known;
    const { supersedes, deviation, ...rest } = reading;
    const made: Reading = {
      ...rest,
      ...(supersedes !== undefined && !this.#privateIds.has(supersedes) ? { supersedes } : {}),
      ...(deviation !== undefined && !this.#privateIds.has(deviation) ? { deviation } : {}),
    };
    this.#readings.set(reading, made);
    return made;
  }

  judged(judged: JudgedReading): JudgedReading {
    const { supersededBy, deviation, figure, ...rest } = judged;
    return {
      ...rest,
      reading: this.reading(judged.reading),
      values: judged.values.map((value) => this.#value(value)),
      ...(figure ? { figure: { ...figure, of: figure.of.map((each) => this.reading(each)) } } : {}),
      ...(supersededBy !== undefined && !this.#privateIds.has(supersededBy)
        ? { supersededBy }
        : {}),
      ...(deviation && this.isPublic(deviation) ? { deviation: this.deviation(deviation) } : {}),
    };
  }

  #value(value: JudgedValue): JudgedValue {
    if (!value.parts) return value;
    const { larger, smaller } = value.parts;
    const shown = (part: typeof larger) => ({ ...part, reading: this.reading(part.reading) });
    return { ...value, parts: { larger: shown(larger), smaller: shown(smaller) } };
  }

  cure(cure: Cure): Cure {
    const known = this.#cures.get(cure);
    if (known) return known;
    const { lot, lotSpan, ...rest } = cure;
    const made: Cure =
      lot === undefined || this.#privateLots.has(lot)
        ? rest
        : { ...rest, lot, ...(lotSpan ? { lotSpan } : {}) };
    this.#cures.set(cure, made);
    return made;
  }

  deviation(deviation: Deviation): Deviation {
    const { disposition, ...rest } = deviation;
    if (!disposition) return rest;
    const { by, ...decided } = disposition;
    if (!this.isPublicDay(disposition.date)) {
      return { ...rest, disposition: { ...decided, text: "decided on a private day" } };
    }
    return {
      ...rest,
      disposition: by === undefined ? decided : { ...decided, by: this.#names.id(by) },
    };
  }

  squawk(squawk: Squawk): Squawk {
    const { owner, fixed, closed, ...rest } = squawk;
    return {
      ...rest,
      ...(owner === undefined ? {} : { owner: this.#names.id(owner) }),
      ...(fixed
        ? {
            fixed: this.isPublicDay(fixed.date)
              ? fixed
              : { date: fixed.date, text: "done on a private day" },
          }
        : {}),
      ...(closed
        ? {
            closed: {
              date: closed.date,
              ...(closed.by !== undefined && this.isPublicDay(closed.date)
                ? { by: this.#names.id(closed.by) }
                : {}),
            },
          }
        : {}),
    };
  }

  inspection(inspection: Inspection): Inspection {
    return { ...inspection, by: this.#names.id(inspection.by) };
  }

  /** Private cases are gone, and who weighed is shown like everybody else. */
  balance(balance: Balance): Balance {
    return {
      ...balance,
      weighings: balance.weighings.map((weighing) => ({
        ...weighing,
        who: weighing.who.map((person) => this.#names.id(person)),
      })),
      cases: balance.cases.filter((loading) => !loading.private),
    };
  }

  /** Who made a test is shown like everybody else. */
  alteration(alteration: Alteration): Alteration {
    return {
      ...alteration,
      tests: alteration.tests.map(({ by, ...test }) => ({
        ...test,
        ...(by === undefined ? {} : { by: this.#names.id(by) }),
        span: withoutText(test.span),
      })),
    };
  }

  /** Who helped is shown like everybody else, and nobody's bills are. */
  help(help: Help): Help {
    return {
      ...help,
      entries: help.entries.map(({ invoice: _invoice, ...entry }) => ({
        ...entry,
        person: this.#names.id(entry.person),
        span: withoutText(entry.span),
      })),
    };
  }

  /** What evidence there is stays as it is, even where the entry itself is not shown. */
  portion(ledger: PortionLedger): PortionLedger {
    const tasks = new Map(
      [...ledger.tasks].map(([id, state]) => [
        id,
        {
          ...state,
          claims: state.claims.map((claim) => ({ ...claim, session: this.session(claim.session) })),
        },
      ]),
    );
    return {
      ...ledger,
      tasks,
      sections: ledger.sections.map((section) => ({
        ...section,
        tasks: section.tasks.map((state) => tasks.get(state.task.id) ?? state),
      })),
    };
  }

  step(state: StepState): StepState {
    return {
      ...state,
      looks: state.looks.map(({ inspection, ...look }) =>
        inspection && this.isPublicDay(inspection.date)
          ? { ...look, inspection: this.inspection(inspection) }
          : look,
      ),
    };
  }

  hours(hours: HoursLedger): HoursLedger {
    return {
      ...hours,
      lines: hours.lines.map(
        (line): HoursLine => ({
          ...line,
          session: this.session(line.session),
          person: this.#names.id(line.person),
        }),
      ),
      byPerson: new Map<string, Hours>(
        [...hours.byPerson].map(([person, each]) => [this.#names.id(person), each]),
      ),
    };
  }

  diagnostic(diagnostic: Diagnostic): Diagnostic {
    if (this.isWithheld(diagnostic)) {
      return {
        code: diagnostic.code,
        severity: diagnostic.severity,
        span: { file: "", line: 0, column: 0, length: 1, text: "" },
        message: "about something private; the words are in the private edition",
        notes: [],
        help: [],
        private: true,
      };
    }
    const { label, ...rest } = diagnostic;
    return {
      ...rest,
      span: { ...diagnostic.span, text: this.#names.inMessage(diagnostic.span.text) },
      message: this.#names.inMessage(diagnostic.message),
      ...(label === undefined ? {} : { label: this.#names.inMessage(label) }),
      notes: diagnostic.notes.map((note) => this.#names.inMessage(note)),
      help: diagnostic.help.map((each) => this.#names.inMessage(each)),
    };
  }
}

/** Values of an entry that are ids of people, lots, readings or deviations. */
const fieldsWithIds = new Set([
  "who",
  "roles",
  "by",
  "shows",
  "owner",
  "accepted-by",
  "closed-by",
  "lot",
  "lots",
  "supersedes",
  "deviation",
]);

/** The list, the number and the value that an amendment's field names, behind the whole. */
function fieldParts(field: string): (string | undefined)[] {
  return /^([a-z]+)\[(\d+)\]\.?(.*)$/.exec(field) ?? [];
}

function withoutText(span: Span): Span {
  return { ...span, text: "" };
}

function count<T>(days: readonly Day[], things: (day: Day) => readonly T[]): number {
  return days.reduce((sum, day) => sum + things(day).length, 0);
}
