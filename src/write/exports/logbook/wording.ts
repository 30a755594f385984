import type { Minutes } from "../../../model/calendar.ts";
import { hoursText } from "../../../present/format/hours.ts";
import type { EditedAnalysis } from "../../../present/record/edition.ts";

/** Name of the book, on its title sheet and in every title block. */
export const bookName = "Hours logbook";

/** Names of the parts, in order. */
export const parts = {
  title: "Title sheet",
  build: "Part 1: hours of the build",
  apart: "Part 2: study and shop, counted apart",
  totals: "Part 3: totals",
  signatures: "Signatures",
} as const;

/** Designation, serial and registration on one line. */
export function aircraftText({ analysis }: EditedAnalysis): string {
  const { designation, serial, registration } = analysis.build.project;
  return `${designation}, serial ${serial}${registration === undefined ? "" : `, ${registration}`}`;
}

/** Hours and minutes, with a dash for none. */
export function hoursOrDash(minutes: Minutes): string {
  return minutes === 0 ? "–" : hoursText(minutes);
}

/** Digits in groups: `grouped("1a2b3c4d", 4)` is `1a2b 3c4d`. */
export function grouped(digits: string, size: number): string {
  return digits.match(new RegExp(`.{1,${size}}`, "g"))?.join(" ") ?? "";
}
