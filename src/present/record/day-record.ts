import type { Analysis, Figure, JudgedReading, JudgedValue } from "../../compute/analysis.ts";
import type { Amendment } from "../../model/amendment.ts";
import type { Cure } from "../../model/cure.ts";
import type { Day } from "../../model/day.ts";
import type { Deviation } from "../../model/deviation.ts";
import type { Hold, Release } from "../../model/hold.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Reading } from "../../model/measurement.ts";
import type { Photo } from "../../model/photo.ts";
import { kindsApart, type Session } from "../../model/session.ts";
import type { Squawk } from "../../model/squawk.ts";
import type { Video } from "../../model/video.ts";
import { layoutRecord } from "./layout-record.ts";
import {
  citationRecord,
  given,
  momentRecord,
  placeRecord,
  quantityRecord,
  sizesRecord,
  typedText,
} from "./record-values.ts";

/** All days as data, oldest first, each thing with how it stands on the day of judgement. */
export function daysRecord(analysis: Analysis) {
  const states = statesOf(analysis);
  return analysis.build.days.map((day) => dayRecord(day, states));
}

type States = ReturnType<typeof statesOf>;

function statesOf(analysis: Analysis) {
  const sessionNumbers = new Map<Session, number>();
  for (const day of analysis.build.days) {
    day.sessions.forEach((session, index) => {
      sessionNumbers.set(session, index + 1);
    });
  }
  return {
    readings: new Map(analysis.readings.map((state) => [state.reading.id, state])),
    cures: new Map(analysis.cures.map((state) => [state.cure, state])),
    holds: new Map(analysis.holds.map((state) => [state.hold.id, state])),
    squawks: new Map(analysis.squawks.map((state) => [state.squawk.id, state])),
    deviations: new Map(analysis.deviations.map((state) => [state.deviation.id, state])),
    // An edition may leave the name of a deviation out of a layout; its place stays.
    layouts: new Map(analysis.layouts.map((laidOut) => [laidOut.layout.span, laidOut])),
    sessionNumbers,
  };
}

function dayRecord(day: Day, states: States) {
  return {
    date: day.date,
    ...given("written", day.written && momentRecord(day.written)),
    late: day.late,
    ...given("imported", day.imported),
    private: day.private,
    title: day.title,
    place: day.place,
    conditions: {
      ...given(
        "temperature",
        day.conditions.temperature && quantityRecord(day.conditions.temperature),
      ),
      ...given("humidity", day.conditions.humidity && quantityRecord(day.conditions.humidity)),
    },
    lengthMinutes: day.lengthMinutes,
    prose: day.prose,
    sessions: day.sessions.map(sessionRecord),
    readings: day.readings.map((reading) => readingRecord(reading, states)),
    cures: day.cures.map((cure) => cureRecord(cure, states)),
    holds: day.holds.map((hold) => holdRecord(hold, states)),
    releases: day.releases.map(releaseRecord),
    deviations: day.deviations.map((deviation) => deviationRecord(deviation, states)),
    squawks: day.squawks.map((squawk) => squawkRecord(squawk, states)),
    inspections: day.inspections.map(inspectionRecord),
    layouts: day.layouts.map((layout) => layoutRecord(layout, states.layouts.get(layout.span))),
    photos: day.photos.map(photoRecord),
    videos: day.videos.map(videoRecord),
    amendments: day.amendments.map(amendmentRecord),
    next: [...day.next],
    assertions: day.assertions.map(({ of, minutes, span }) => ({
      of,
      minutes,
      source: placeRecord(span),
    })),
    source: placeRecord(day.span),
  };
}

function sessionRecord(session: Session, index: number) {
  return {
    number: index + 1,
    assembly: session.assembly,
    ...given("step", session.step),
    kind: session.kind,
    counted: kindsApart.includes(session.kind) ? "apart" : "build",
    who: session.who.map(({ person, role }) => ({ person, role })),
    ...given("from", session.from && momentRecord(session.from)),
    ...given("to", session.to && momentRecord(session.to)),
    minutes: session.minutes,
    ...given("typed", typedText(session.minutesSpan)),
    ...given("stage", session.stage),
    lots: [...session.lots],
    ...given("tasks", session.tasks && [...session.tasks]),
    ...given("note", session.note),
    private: session.private,
    source: placeRecord(session.span),
  };
}

function readingRecord(reading: Reading, { readings }: States) {
  const judged = readings.get(reading.id);
  const own = reading.temperature?.from === "reading";
  const at = own || judged?.rule?.table?.by === "temperature" ? reading.temperature : undefined;
  return {
    id: reading.id,
    ...given("step", reading.step),
    ...given("assembly", reading.assembly),
    what: reading.what,
    ...given("at", reading.at),
    ...given("rule", reading.rule),
    ...given("instrument", reading.instrument),
    values: judged ? judged.values.map((value) => valueRecord(value, judged)) : [],
    ...given("lower", judged?.limits.lower && quantityRecord(judged.limits.lower)),
    ...given("upper", judged?.limits.upper && quantityRecord(judged.limits.upper)),
    ...given("verdict", judged?.verdict?.kind),
    ...given("standing", judged?.standing),
    ...given("governedBy", judged?.over && judged.rule?.id),
    ...given(
      "of",
      reading.of?.map((named) => named.reading),
    ),
    ...given("figure", judged?.figure && figureRecord(judged.figure)),
    ...given("temperature", at && quantityRecord(at.quantity)),
    ...given("temperatureFrom", at?.from),
    ...given("drag", reading.drag && quantityRecord(reading.drag)),
    sizes: sizesRecord(reading.sizes),
    ...given("supersedes", reading.supersedes),
    ...given("supersededBy", judged?.supersededBy),
    ...given("deviation", reading.deviation),
    private: reading.private,
    source: placeRecord(reading.span),
  };
}

function figureRecord({ kind, of }: Figure) {
  return {
    kind,
    of: of.map(({ id, values }) => ({
      reading: id,
      values: values.map(({ quantity }) => quantityRecord(quantity)),
    })),
  };
}

function valueRecord(
  { value, verdict, assurance, acceptance }: JudgedValue,
  { rule }: JudgedReading,
) {
  return {
    quantity: quantityRecord(value.quantity),
    ...(rule ? { verdict: verdict.kind } : {}),
    ...given(
      "assurance",
      assurance && {
        kind: assurance.kind,
        probability: assurance.probability,
        ...given("from", acceptance?.from),
        ...given("to", acceptance?.to),
      },
    ),
    source: placeRecord(value.span),
  };
}

function cureRecord(cure: Cure, { cures, sessionNumbers }: States) {
  const state = cures.get(cure);
  return {
    step: cure.step,
    ...given("lot", cure.lot),
    mixed: momentRecord(cure.mixed),
    ...given("closed", cure.closed && momentRecord(cure.closed)),
    ready: momentRecord(cure.ready),
    ...given("citation", cure.citation && citationRecord(cure.citation)),
    ...given("note", cure.note),
    ...given("over", state?.over),
    brokenBy: (state?.brokenBy ?? []).map((session) => ({
      date: session.date,
      session: sessionNumbers.get(session) ?? 0,
    })),
    source: placeRecord(cure.span),
  };
}

function holdRecord(hold: Hold, { holds }: States) {
  return {
    id: hold.id,
    step: hold.step,
    with: hold.with,
    ...given("count", hold.count),
    ...given("where", hold.where),
    ...given("released", holds.get(hold.id)?.released?.date),
    source: placeRecord(hold.span),
  };
}

function releaseRecord({ hold, step, span }: Release) {
  return { ...given("hold", hold), ...given("step", step), source: placeRecord(span) };
}

function deviationRecord(deviation: Deviation, { deviations }: States) {
  const { disposition } = deviation;
  return {
    id: deviation.id,
    ...given("step", deviation.step),
    drawing: deviation.drawing,
    planned: deviation.planned,
    done: deviation.done,
    why: deviation.why,
    ...given("open", deviations.get(deviation.id)?.open),
    ...given(
      "disposition",
      disposition && {
        date: disposition.date,
        text: disposition.text,
        ...given("by", disposition.by),
      },
    ),
    private: deviation.private,
    source: placeRecord(deviation.span),
  };
}

function squawkRecord(squawk: Squawk, { squawks }: States) {
  const { fixed, closed } = squawk;
  return {
    id: squawk.id,
    found: squawk.found,
    ...given("step", squawk.step),
    ...given("assembly", squawk.assembly),
    ...given("owner", squawk.owner),
    ...given("standing", squawks.get(squawk.id)?.standing),
    ...given("fixed", fixed && { date: fixed.date, text: fixed.text }),
    ...given("closed", closed && { date: closed.date, ...given("by", closed.by) }),
    source: placeRecord(squawk.span),
  };
}

function inspectionRecord(inspection: Inspection) {
  return {
    step: inspection.step,
    look: inspection.look,
    by: inspection.by,
    open: inspection.open,
    findings: inspection.findings,
    result: inspection.result,
    source: placeRecord(inspection.span),
  };
}

function photoRecord(photo: Photo) {
  return {
    file: photo.file,
    caption: photo.caption,
    ...given("alt", photo.alt),
    ...given("step", photo.step),
    ...given("assembly", photo.assembly),
    shows: [...photo.shows],
    private: photo.private,
    source: placeRecord(photo.span),
  };
}

function videoRecord(video: Video) {
  const { source } = video;
  return {
    title: video.title,
    ...(source.kind === "link" ? { link: source.link } : { file: source.file, host: source.host }),
    ...given("picture", video.picture),
    ...given("step", video.step),
    ...given("assembly", video.assembly),
    ...given("length", video.length && { ...video.length }),
    times: video.times.map(({ at, what, step, link }) => ({
      at: { ...at },
      what,
      ...given("step", step),
      ...given("link", link),
    })),
    private: video.private,
    source: placeRecord(video.span),
  };
}

function amendmentRecord(amendment: Amendment) {
  return {
    day: amendment.day,
    field: amendment.field,
    was: amendment.was,
    now: amendment.now,
    why: amendment.why,
    source: placeRecord(amendment.span),
  };
}
