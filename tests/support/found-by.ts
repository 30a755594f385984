import { analyze } from "../../src/compute/analyze.ts";
import type { CheckName } from "../../src/compute/checks/index.ts";
import type { Build } from "../../src/model/build.ts";
import type { CalendarDate } from "../../src/model/calendar.ts";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { asOf } from "./small-build.ts";

/** What one check finds in a build judged on a day, by default one late enough. */
export function foundBy(
  check: CheckName,
  build: Build,
  judged: CalendarDate = "2026-12-31",
): readonly Diagnostic[] {
  return analyze(build, asOf(judged)).diagnostics.filter(({ code }) => code === check);
}

/** The messages of what one check finds, in order of place. */
export function messagesOf(
  check: CheckName,
  build: Build,
  judged?: CalendarDate,
): readonly string[] {
  return foundBy(check, build, judged).map(({ message }) => message);
}
