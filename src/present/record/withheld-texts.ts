import type { Analysis } from "../../compute/analysis.ts";
import type { Day } from "../../model/day.ts";
import type { EditedAnalysis } from "./edition.ts";
import { journalRecord } from "./journal-record.ts";

/** Shorter stretches may stand in the program's own words: `not for everybody` does. */
const fewestLetters = 24;

/** A name is nobody's wording. */
const fewestLettersOfName = 8;

/**
 * Stretches of what the builder typed that an edition leaves out, to be looked for in what was
 * made: names, notes, captions, titles, prose and the like of everything private. A stretch that
 * the edition holds elsewhere too is not among them.
 *
 * @param whole The analysis that the edition was made from.
 */
export function withheldTexts(whole: Analysis, edited: EditedAnalysis): string[] {
  if (Object.values(edited.leftOut).every((count) => count === 0)) return [];
  const names = [...whole.build.people.values()].filter((person) => person.private);
  const stretches = new Set([
    ...names.flatMap(({ name }) => plainStretch(name, fewestLettersOfName)),
    ...privateTexts(whole).flatMap((text) => plainStretch(text, fewestLetters)),
  ]);
  if (stretches.size === 0) return [];
  const open = JSON.stringify(journalRecord(edited, "")).replaceAll("\\n", " ");
  return [...stretches].filter((stretch) => !open.includes(stretch));
}

function privateTexts({ build }: Analysis): string[] {
  const { days, lots } = build;
  return [
    ...[...lots.values()].filter((lot) => lot.private).map(({ title }) => title),
    ...days.filter((day) => day.private).flatMap(wholeDay),
    ...days.filter((day) => !day.private).flatMap(privateParts),
  ];
}

function wholeDay(day: Day): string[] {
  return [
    day.title,
    ...day.prose.split(/\n/),
    ...day.next,
    ...day.sessions.map(({ note }) => note ?? ""),
    ...day.cures.map(({ note }) => note ?? ""),
    ...day.squawks.map(({ found }) => found),
    ...day.inspections.flatMap(({ open, findings }) => [open, findings]),
    ...day.deviations.flatMap(deviationTexts),
    ...day.photos.flatMap(photoTexts),
    ...day.videos.flatMap(videoTexts),
  ];
}

function privateParts(day: Day): string[] {
  const hidden = <Thing extends { readonly private: boolean }>(things: readonly Thing[]) =>
    things.filter((thing) => thing.private);
  return [
    ...hidden(day.sessions).map(({ note }) => note ?? ""),
    ...hidden(day.deviations).flatMap(deviationTexts),
    ...hidden(day.photos).flatMap(photoTexts),
    ...hidden(day.videos).flatMap(videoTexts),
  ];
}

function deviationTexts({ planned, done, why }: Day["deviations"][number]): string[] {
  return [planned, done, why];
}

function photoTexts({ caption, alt }: Day["photos"][number]): string[] {
  return [caption, alt ?? ""];
}

function videoTexts({ title, times }: Day["videos"][number]): string[] {
  return [title, ...times.map(({ what }) => what)];
}

/** The longest stretch of a text that looks the same however it is marked up and escaped. */
function plainStretch(text: string, fewest: number): string[] {
  const stretches = text.match(/[\p{L}\p{N}][\p{L}\p{N} ,.;:]*[\p{L}\p{N}]/gu) ?? [];
  const longest = stretches.reduce((best, each) => (each.length > best.length ? each : best), "");
  return (longest.match(/\p{L}/gu)?.length ?? 0) < fewest ? [] : [longest];
}
