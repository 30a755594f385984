import type { CalendarDate, CalendarMonth } from "../model/calendar.ts";
import { monthOf } from "../model/calendar.ts";
import type { SealContent } from "../model/seal.ts";
import { shortSeal } from "../model/seal.ts";
import type { Analysis } from "./analysis.ts";

/** A seal before the files it names have been read for their digests. */
export interface UndigestedSeal extends Omit<SealContent, "version" | "entries" | "photos"> {
  /** Paths below the journal's folder, sorted. */
  readonly entries: readonly string[];
  readonly photos: readonly string[];
}

/** Why a month cannot be sealed, and what to do. */
export interface SealRefusal {
  readonly why: string;
  readonly help: readonly string[];
}

/**
 * What the seal of a month has to say, or why there can be none yet. A month is over when the
 * day of judgement is in a later one. Whether the journal has errors is for the caller to know.
 */
export function sealing(
  { build, hours, asOf }: Analysis,
  month: CalendarMonth,
): UndigestedSeal | SealRefusal {
  const days = build.days.filter(({ date }) => monthOf(date) === month);
  const last = days.at(-1);
  const newest = build.seals.at(-1);
  const done = build.seals.find((seal) => seal.month === month);
  if (done) {
    return {
      why: `${month} is sealed already: ${shortSeal(done)}`,
      help: ["a seal is made once; to correct a sealed day, write `amendments` in today's entry"],
    };
  }
  if (monthOf(asOf.date) <= month) {
    return { why: `${month} is not over`, help: ["seal it when its last day has passed"] };
  }
  if (!last) {
    return { why: `there is no entry in ${month}`, help: ["name a month that has one"] };
  }
  if (newest && newest.month > month) {
    return {
      why: `${newest.month} is sealed, and ${month} is before it`,
      help: ["months are sealed in their order; this one can no longer be"],
    };
  }
  const earlier = unsealedMonths(build.days, newest?.month).find((each) => each < month);
  if (earlier !== undefined) {
    return {
      why: `${earlier} has entries and is not sealed`,
      help: [`months are sealed in their order: \`witness seal ${earlier}\` first`],
    };
  }
  const photos = new Set(days.flatMap((day) => day.photos.map(({ file }) => `photos/${file}`)));
  return {
    month,
    designation: build.project.designation,
    serial: build.project.serial,
    ...(newest ? { previous: { month: newest.month, digest: newest.digest } } : {}),
    inMonth: hours.byMonth.get(month) ?? { build: 0, apart: 0 },
    toDate: hours.toDate.get(last.date) ?? { build: 0, apart: 0 },
    entries: days.map(({ file }) => file.slice(build.journal.length + 1)).sort(),
    photos: [...photos].sort(),
  };
}

/** Months with entries after the newest sealed one, oldest first. */
export function unsealedMonths(
  days: readonly { readonly date: CalendarDate }[],
  newest: CalendarMonth | undefined,
): CalendarMonth[] {
  const months = new Set(days.map(({ date }) => monthOf(date)));
  return [...months].filter((month) => newest === undefined || month > newest).sort();
}
