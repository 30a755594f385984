import type { Build } from "../../model/build.ts";
import type { CalendarDate, CalendarMonth, Minutes } from "../../model/calendar.ts";
import { monthOf } from "../../model/calendar.ts";
import type { Role } from "../../model/person.ts";
import { roles } from "../../model/person.ts";
import type { WorkKind } from "../../model/session.ts";
import { kindsApart, workKinds } from "../../model/session.ts";
import type { Hours, HoursLedger, HoursLine } from "../analysis.ts";

/**
 * Every total of hours, in whole minutes. Each person present at a session is credited with
 * all of its minutes; a session over midnight belongs to the day it is entered under.
 *
 * Each map but those by date and month holds every declared name, in the order declared, with
 * zeros where nothing was booked. Every map but `byAssemblyRolledUp`, `byStep` and `toDate`
 * sums to `total`; steps may sum to less, because a session need not name one.
 *
 * @param build Days oldest first.
 * @example hoursLedger(build).total.build // minutes of the build itself, study and shop left out
 */
export function hoursLedger(build: Build): HoursLedger {
  const lines: HoursLine[] = [];
  const total = noHours();
  const byAssembly = tally(build.assemblies.keys());
  const byAssemblyRolledUp = tally(build.assemblies.keys());
  const byStep = tally(build.steps.keys());
  const byPerson = tally(build.people.keys());
  const byRole = tally<Role>(roles);
  const byKind = tally<WorkKind>(workKinds);
  const byMonth = tally<CalendarMonth>(build.days.map(({ date }) => monthOf(date)));
  const byDate = tally<CalendarDate>(build.days.map(({ date }) => date));
  const toDate = new Map<CalendarDate, Hours>();

  for (const day of build.days) {
    const date = day.date;
    for (const session of day.sessions) {
      const { assembly, step, kind, minutes } = session;
      const apart = kindsApart.includes(kind);
      for (const { person, role } of session.who) {
        lines.push({
          date,
          session,
          assembly,
          ...(step === undefined ? {} : { step }),
          person,
          role,
          kind,
          minutes,
          apart,
        });
        add(total, minutes, apart);
        add(entry(byAssembly, assembly), minutes, apart);
        for (const above of build.assemblies.get(assembly)?.path ?? [assembly]) {
          add(entry(byAssemblyRolledUp, above), minutes, apart);
        }
        if (step !== undefined) add(entry(byStep, step), minutes, apart);
        add(entry(byPerson, person), minutes, apart);
        add(entry(byRole, role), minutes, apart);
        add(entry(byKind, kind), minutes, apart);
        add(entry(byMonth, monthOf(date)), minutes, apart);
        add(entry(byDate, date), minutes, apart);
      }
    }
    toDate.set(date, { ...total });
  }

  return {
    lines,
    total,
    byAssembly,
    byAssemblyRolledUp,
    byStep,
    byPerson,
    byRole,
    byKind,
    byMonth,
    byDate,
    toDate,
  };
}

type Sum = { -readonly [Part in keyof Hours]: Hours[Part] };

const noHours = (): Sum => ({ build: 0, apart: 0 });

function tally<Name extends string>(names: Iterable<Name>): Map<Name, Sum> {
  return new Map(Array.from(names, (name) => [name, noHours()]));
}

// Reading reports an undeclared name as an error but may still hand the session on; its minutes
// must not vanish from one total and stay in another.
function entry<Name extends string>(sums: Map<Name, Sum>, name: Name): Sum {
  const known = sums.get(name);
  if (known) return known;
  const fresh = noHours();
  sums.set(name, fresh);
  return fresh;
}

function add(sum: Sum, minutes: Minutes, apart: boolean): void {
  if (apart) sum.apart += minutes;
  else sum.build += minutes;
}
