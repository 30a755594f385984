import type { Amendment } from "../model/amendment.ts";
import type { Registers } from "../model/build.ts";
import { addDays, type CalendarDate, daysBetween, type Moment } from "../model/calendar.ts";
import type { Cure } from "../model/cure.ts";
import type { Day } from "../model/day.ts";
import type { Deviation } from "../model/deviation.ts";
import type { Span } from "../model/diagnostic.ts";
import type { Hold } from "../model/hold.ts";
import type { Photo } from "../model/photo.ts";
import type { Project } from "../model/project.ts";
import type { Attendance, Session } from "../model/session.ts";
import type { Squawk } from "../model/squawk.ts";
import type { ClockNode } from "./clock-syntax.ts";
import type { TypedDay } from "./day-schema.ts";
import type { Faults } from "./faults.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import { type ProseStretch, readLayouts } from "./read-layouts.ts";
import { readReadings } from "./read-readings.ts";
import { readVideos } from "./read-videos.ts";
import { given } from "./shape.ts";
import type { ZoneClock } from "./zone-clock.ts";

/** What a day is read against. */
export interface DayContext {
  readonly project: Project;
  readonly registers: Registers;
  readonly zone: ZoneClock;
  readonly photos: PhotoFolder;
  readonly videos: PhotoFolder;
}

/** A later word on an earlier deviation or squawk, to be joined once all days are read. */
export interface LaterWords {
  readonly dispositions: NonNullable<TypedDay["dispositions"]>;
  readonly fixes: NonNullable<TypedDay["fixes"]>;
}

/** An entry in its file, its front matter checked for shape. */
export interface DayFile {
  readonly typed: TypedDay;
  readonly prose: string;
  /** Where the prose stands. */
  readonly proseStretch: ProseStretch;
  readonly file: string;
  readonly amendments: readonly Amendment[];
}

/**
 * Turns one typed entry into a `Day`. Values at fault are left out of it.
 * @returns The day, and what it says of earlier days.
 */
export function readDay(
  { typed, prose, proseStretch, file, amendments }: DayFile,
  context: DayContext,
  faults: Faults,
): { day: Day; later: LaterWords } {
  const { zone, project } = context;
  const date = typed.date.date;
  const written = typed.written && zone.moment(typed.written.date, typed.written.clock, faults);
  // A session that was typed and could not be read has its own fault already.
  const sessions = typed.node.entries.get("sessions")?.value;
  const worked = sessions?.kind === "list" ? sessions.items.length > 0 : typed.sessions;
  if (!worked && prose.trim() === "") {
    faults.add("empty-day", typed.date.node.span, {
      message: "the entry has neither prose nor sessions",
      help: ["write a sentence below the second `---`, or add `sessions`"],
    });
  }
  const photos = (typed.photos ?? []).map((photo) => readPhoto(photo, date, context, faults));
  const day: Day = {
    date,
    ...given({ written, writtenSpan: typed.written?.clock.node.span }),
    late: written ? Math.max(0, daysBetween(date, written.local.slice(0, 10))) : 0,
    ...given({ imported: typed.imported?.text }),
    title: typed.title?.text ?? "",
    place: typed.place?.text ?? project.place,
    conditions: given({
      temperature: typed.conditions?.temperature?.quantity,
      humidity: typed.conditions?.humidity?.quantity,
    }),
    sessions: (typed.sessions ?? [])
      .map((session) => readSession(session, date, context, faults))
      .filter((session) => session !== undefined),
    readings: readReadings(
      typed.readings ?? [],
      { date, temperature: typed.conditions?.temperature?.quantity },
      context,
      faults,
    ),
    cures: (typed.cures ?? [])
      .map((cure) => readCure(cure, date, zone, faults))
      .filter((cure) => cure !== undefined),
    holds: (typed.holds ?? []).map((hold, index) => readHold(hold, date, index)),
    releases: (typed.releases ?? []).map((release) => ({
      date,
      ...given({ hold: release.hold?.text, step: release.step?.text }),
      span: (release.hold ?? release.step)?.span ?? release.span,
    })),
    deviations: (typed.deviations ?? []).map((deviation) => readDeviation(deviation, date)),
    squawks: (typed.squawks ?? []).map((squawk) => readSquawk(squawk, date)),
    inspections: (typed.inspections ?? []).map((inspection) => {
      checkLook(inspection, context.registers, faults);
      return {
        date,
        step: inspection.step.text,
        look: inspection.look.text,
        by: inspection.by.text,
        open: inspection.open.text,
        findings: inspection.findings.text,
        result: inspection.result.value,
        span: inspection.look.span,
      };
    }),
    photos,
    videos: readVideos(typed.videos ?? [], date, { videos: context.videos, photos }, faults),
    layouts: readLayouts(proseStretch, date, context, faults),
    amendments,
    next: typed.next?.map(({ text }) => text) ?? [],
    assertions: (typed.assert ?? []).map(({ of, minutes, node }) => ({
      of,
      minutes,
      span: node.span,
    })),
    prose,
    private: typed.private ?? false,
    lengthMinutes: zone.dayLength(date),
    file,
    span: typed.date.node.span,
  };
  return { day, later: { dispositions: typed.dispositions ?? [], fixes: typed.fixes ?? [] } };
}

type Typed<K extends keyof TypedDay> =
  NonNullable<TypedDay[K]> extends readonly (infer T)[] ? T : never;

function readSession(
  typed: Typed<"sessions">,
  date: CalendarDate,
  { registers, zone }: DayContext,
  faults: Faults,
): Session | undefined {
  const time = sessionTime(typed, date, zone, faults);
  if (!time) return undefined;
  const step = typed.step && registers.steps.get(typed.step.text);
  if (step && step.assembly !== typed.assembly.text) {
    const path = registers.assemblies.get(step.assembly)?.path ?? [];
    faults.add("unknown-name", typed.step?.span ?? typed.span, {
      message: `step \`${step.id}\` is not on \`${typed.assembly.text}\``,
      notes: [`it is declared on \`${step.assembly}\` (${path.join(" / ")})`],
      help: [`write \`assembly: ${step.assembly}\`, or name another step`],
    });
  }
  return {
    date,
    assembly: typed.assembly.text,
    ...given({ step: typed.step?.text }),
    who: attendance(typed, registers),
    kind: typed.kind.value,
    ...time,
    ...given({
      stage: typed.stage?.value,
      note: typed.note?.text,
      stageSpan: typed.stage?.span,
    }),
    lots: typed.lots?.map(({ text }) => text) ?? [],
    lotSpans: typed.lots?.map(({ span }) => span) ?? [],
    ...given({ tasks: typed.tasks?.map(({ text }) => text) }),
    private: typed.private ?? false,
    span: typed.assembly.span,
  };
}

function attendance(typed: Typed<"sessions">, registers: Registers): Attendance[] {
  return typed.who.map(({ text: person }) => ({
    person,
    role: typed.roles?.get(person) ?? registers.people.get(person)?.role ?? "builder",
  }));
}

// Either `from` and `to`, or `hours`; both together have to agree.
function sessionTime(
  typed: Typed<"sessions">,
  date: CalendarDate,
  zone: ZoneClock,
  faults: Faults,
): { minutes: number; minutesSpan: Span; from?: Moment; to?: Moment } | undefined {
  const { from, to, hours } = typed;
  // A time that was typed and could not be read has its own fault already.
  const unread = (["from", "to", "hours"] as const).filter(
    (key) => typed.node.entries.has(key) && !typed[key],
  );
  if (unread.length > 0) return undefined;
  if (!from && !to) {
    if (hours) return { minutes: hours.minutes, minutesSpan: hours.node.span };
    return faults.add("missing-key", typed.kind.span, {
      message: "a session needs `hours`, or `from` and `to`",
      help: ['write `hours: "1:15"`, or `from: "18:40", to: "21:05"`'],
    });
  }
  const one = from ?? to;
  if (!from || !to) {
    return faults.add("missing-key", one?.node.span ?? typed.span, {
      message: `a session with \`${from ? "from" : "to"}\` needs \`${from ? "to" : "from"}\` as well`,
      help: ['write `from: "18:40", to: "21:05"`, or `hours: "1:15"` alone'],
    });
  }
  const begin = zone.moment(date, from, faults);
  const end = begin && zone.moment(endDate(date, from, to), to, faults);
  if (!begin || !end) return undefined;
  const minutes = end.epochMinutes - begin.epochMinutes;
  if (minutes <= 0) {
    return faults.add("not-a-duration", to.node.span, {
      message: `the session ends at \`${to.node.text}\`, when it begins`,
      help: ["write the time at which work ended; a time before `from` is on the next day"],
    });
  }
  if (hours && hours.minutes !== minutes) {
    const computed = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
    return faults.add("not-a-duration", hours.node.span, {
      message: `\`hours\` says ${hours.node.text}, \`from\` and \`to\` make ${computed}`,
      help: ["leave `hours` out, or correct one of the three"],
    });
  }
  return { minutes, minutesSpan: from.node.span, from: begin, to: end };
}

// A clock time before the beginning is on the next day; with offsets typed, an hour that the
// clock shows twice may end at an earlier wall-clock time on the same day.
function endDate(date: CalendarDate, from: ClockNode, to: ClockNode): CalendarDate {
  const start = from.minuteOfDay - (from.offset ?? 0);
  const end = to.minuteOfDay - (to.offset ?? 0);
  const both = from.offset !== undefined && to.offset !== undefined;
  const before = both ? end < start : to.minuteOfDay < from.minuteOfDay;
  return before ? addDays(date, 1) : date;
}

function readCure(
  typed: Typed<"cures">,
  date: CalendarDate,
  zone: ZoneClock,
  faults: Faults,
): Cure | undefined {
  const mixed = zone.moment(date, typed.mixed, faults);
  const ready = zone.moment(typed.ready.date, typed.ready.clock, faults);
  const closed =
    typed.closed && zone.moment(endDate(date, typed.mixed, typed.closed), typed.closed, faults);
  if (!mixed || !ready) return undefined;
  if (ready.epochMinutes <= mixed.epochMinutes) {
    return faults.add("not-a-time", typed.ready.clock.node.span, {
      message: `the cure is ready at ${ready.local}, before it was mixed at ${mixed.local}`,
      help: ["write the date and time at which the joint may be worked on"],
    });
  }
  return {
    date,
    step: typed.step.text,
    ...given({ lot: typed.lot?.text, closed, lotSpan: typed.lot?.span, note: typed.note?.text }),
    mixed,
    ready,
    ...given({ citation: typed.source && { document: typed.source.text } }),
    span: typed.ready.clock.node.span,
  };
}

function readHold(typed: Typed<"holds">, date: CalendarDate, index: number): Hold {
  return {
    id: typed.id?.text ?? `${date}.h${index + 1}`,
    date,
    step: typed.step.text,
    with: typed.with.text,
    ...given({ count: typed.count, where: typed.where?.text }),
    span: typed.id?.span ?? typed.with.span,
  };
}

function readDeviation(typed: Typed<"deviations">, date: CalendarDate): Deviation {
  return {
    id: typed.id.text,
    date,
    ...given({ step: typed.step?.text }),
    drawing: typed.drawing.text,
    planned: typed.planned.text,
    done: typed.done.text,
    why: typed.why.text,
    ...(typed.disposition && {
      disposition: {
        date,
        text: typed.disposition.text,
        ...given({ by: typed["accepted-by"]?.text }),
        span: typed.disposition.span,
      },
    }),
    private: typed.private ?? false,
    span: typed.id.span,
  };
}

function readSquawk(typed: Typed<"squawks">, date: CalendarDate): Squawk {
  return {
    id: typed.id.text,
    date,
    found: typed.found.text,
    ...given({
      step: typed.step?.text,
      assembly: typed.assembly?.text,
      owner: typed.owner?.text,
    }),
    span: typed.id.span,
  };
}

function checkLook(typed: Typed<"inspections">, registers: Registers, faults: Faults): void {
  const looks = registers.steps.get(typed.step.text)?.looks ?? [];
  if (looks.includes(typed.look.text)) return;
  faults.add("unknown-name", typed.look.span, {
    message: `step \`${typed.step.text}\` asks for no look called \`${typed.look.text}\``,
    notes: [looks.length > 0 ? `it asks for: ${looks.join(", ")}` : "it asks for none"],
    help: ["name one of them, or add this one to `looks` of the step in assemblies.yaml"],
  });
}

function readPhoto(
  typed: Typed<"photos">,
  date: CalendarDate,
  { photos }: DayContext,
  faults: Faults,
): Photo {
  return {
    date,
    file: photos.resolve(typed.file, faults) ?? typed.file.text,
    caption: typed.caption.text,
    ...given({
      alt: typed.alt?.text,
      step: typed.step?.text,
      assembly: typed.assembly?.text,
    }),
    shows: typed.shows?.map(({ text }) => text) ?? [],
    private: typed.private ?? false,
    span: typed.file.span,
  };
}
