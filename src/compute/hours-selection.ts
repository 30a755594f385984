import type { CalendarMonth } from "../model/calendar.ts";
import { monthOf } from "../model/calendar.ts";
import type { Role } from "../model/person.ts";
import type { WorkKind } from "../model/session.ts";
import type { Analysis, Hours, HoursLine } from "./analysis.ts";

/** Which hours are meant; what is absent does not matter. */
export interface HoursSelection {
  /** With everything below it. */
  readonly assembly?: string;
  readonly step?: string;
  readonly person?: string;
  readonly role?: Role;
  readonly kind?: WorkKind;
  readonly month?: CalendarMonth;
}

/** Some lines of the ledger and what they add up to. */
export interface SelectedHours {
  /** By date, then in the order typed. */
  readonly lines: readonly HoursLine[];
  readonly total: Hours;
}

/** The lines of the ledger that a selection means, and their sum: nothing is looked up elsewhere. */
export function selectedHours(
  { build, hours }: Pick<Analysis, "build" | "hours">,
  selection: HoursSelection,
): SelectedHours {
  const { assembly, step, person, role, kind, month } = selection;
  const lines = hours.lines.filter(
    (line) =>
      (assembly === undefined ||
        (build.assemblies.get(line.assembly)?.path ?? [line.assembly]).includes(assembly)) &&
      (step === undefined || line.step === step) &&
      (person === undefined || line.person === person) &&
      (role === undefined || line.role === role) &&
      (kind === undefined || line.kind === kind) &&
      (month === undefined || monthOf(line.date) === month),
  );
  const sum = (apart: boolean) =>
    lines.reduce((minutes, line) => minutes + (line.apart === apart ? line.minutes : 0), 0);
  return { lines, total: { build: sum(false), apart: sum(true) } };
}
