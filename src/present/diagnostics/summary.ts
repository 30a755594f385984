import type { Analysis } from "../../compute/analysis.ts";
import type { Minutes } from "../../model/calendar.ts";
import { hoursText } from "../format/hours.ts";

/** What a journal comes to, in numbers. */
export interface JournalTotals {
  /** Person-minutes of the build: all kinds of work but `study` and `shop`. */
  readonly minutes: Minutes;
  /** Person-minutes of `study` and `shop`. */
  readonly minutesApart: Minutes;
  readonly days: number;
  readonly sessions: number;
  readonly readings: number;
}

/**
 * The last lines of a check.
 * @param analysis Absent when nothing could be judged; the totals are then zero.
 * @returns The totals, and one to three lines without a line end.
 */
export function journalSummary(
  analysis: Analysis | undefined,
  errors: number,
  findings: number,
): { readonly totals: JournalTotals; readonly text: string } {
  const days = analysis?.build.days ?? [];
  const totals: JournalTotals = {
    minutes: analysis?.hours.total.build ?? 0,
    minutesApart: analysis?.hours.total.apart ?? 0,
    days: days.length,
    sessions: days.reduce((sum, day) => sum + day.sessions.length, 0),
    readings: days.reduce((sum, day) => sum + day.readings.length, 0),
  };
  const counts = [
    counted(totals.days, "day"),
    counted(totals.sessions, "session"),
    counted(totals.readings, "reading"),
    `${hoursText(totals.minutes)} h of building`,
    `${hoursText(totals.minutesApart)} h of study and shop`,
  ].join(", ");
  const omitted = (analysis?.build.omissions ?? []).map(
    ({ file, why }) => `left out: ${file}: ${why}`,
  );
  const found = [counted(errors, "error"), counted(findings, "finding")].join(", ");
  const more = errors + findings > 0 ? "; `witness explain NAME` says more about each" : "";
  return { totals, text: [counts, ...omitted, `${found}${more}`].join("\n") };
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
