import type { Analysis, HoursLine } from "../../compute/analysis.ts";
import { grouped } from "../../compute/grouped.ts";
import { type CalendarDate, type CalendarMonth, monthOf } from "../../model/calendar.ts";
import type { Person, Role } from "../../model/person.ts";
import { type KindHours, kindHours } from "./totals.ts";

/** Hours of one person in one role in one month. */
export interface StatementRow extends KindHours {
  readonly month: CalendarMonth;
  readonly role: Role;
  /** Days that have sessions of it, oldest first. */
  readonly dates: readonly CalendarDate[];
}

/** Hours of one person. */
export interface PersonStatement {
  readonly person: Person;
  /** By month, then in the order in which the roles were first taken. */
  readonly rows: readonly StatementRow[];
  readonly total: KindHours;
}

/** The hours of everybody who has some, by month and role, in the order declared. */
export function hoursStatement({ build, hours }: Analysis): PersonStatement[] {
  const byPerson = grouped(hours.lines, ({ person }) => person);
  return [...build.people.values()].flatMap((person) => {
    const lines = byPerson.get(person.id);
    if (!lines) return [];
    return [{ person, rows: rowsOf(lines), total: kindHours(lines) }];
  });
}

function rowsOf(lines: readonly HoursLine[]): StatementRow[] {
  return [...grouped(lines, ({ date }) => monthOf(date))].flatMap(([month, ofMonth]) =>
    [...grouped(ofMonth, ({ role }) => role)].map(([role, ofRole]) => ({
      month,
      role,
      dates: [...new Set(ofRole.map(({ date }) => date))],
      ...kindHours(ofRole),
    })),
  );
}
