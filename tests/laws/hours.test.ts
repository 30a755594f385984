import fc from "fast-check";
import { expect, test } from "vitest";
import type { Hours } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import { hoursLedger } from "../../src/compute/ledgers/hours.ts";
import { kindsApart } from "../../src/model/session.ts";
import { anyHours, lastDate } from "../support/any-build.ts";
import { asOf } from "../support/small-build.ts";

const judged = asOf(lastDate);

function sum(all: Iterable<Hours>): Hours {
  return [...all].reduce<Hours>(
    (total, each) => ({ build: total.build + each.build, apart: total.apart + each.apart }),
    { build: 0, apart: 0 },
  );
}

test("by assembly, person, role, kind, month and day have the same total", () => {
  fc.assert(
    fc.property(anyHours, (build) => {
      const hours = hoursLedger(build);
      const total = sum(
        hours.lines.map(({ minutes, apart }) => ({
          build: apart ? 0 : minutes,
          apart: apart ? minutes : 0,
        })),
      );
      expect(hours.total).toEqual(total);
      const { byAssembly, byPerson, byRole, byKind, byMonth, byDate } = hours;
      for (const by of [byAssembly, byPerson, byRole, byKind, byMonth, byDate]) {
        expect(sum(by.values())).toEqual(total);
      }
      expect([...hours.toDate.values()].at(-1) ?? sum([])).toEqual(total);
    }),
  );
});

test("what is rolled up to the roots is the total, and a parent is itself and its children", () => {
  fc.assert(
    fc.property(anyHours, (build) => {
      const { total, byAssembly, byAssemblyRolledUp } = hoursLedger(build);
      const all = [...build.assemblies.values()];
      const rolledUp = (id: string) => byAssemblyRolledUp.get(id) ?? { build: -1, apart: -1 };
      const roots = all.filter(({ parent }) => parent === undefined);
      expect(sum(roots.map(({ id }) => rolledUp(id)))).toEqual(total);
      for (const { id, children } of all) {
        const own = byAssembly.get(id) ?? { build: -1, apart: -1 };
        expect(rolledUp(id)).toEqual(sum([own, ...children.map(rolledUp)]));
      }
    }),
  );
});

test("one more minute in one session changes exactly the totals it should", () => {
  fc.assert(
    fc.property(anyHours, fc.nat(), (build, pick) => {
      const sessions = build.days.flatMap((day) => day.sessions);
      const chosen = sessions[pick % Math.max(1, sessions.length)];
      fc.pre(chosen !== undefined);
      const longer = { ...chosen, minutes: chosen.minutes + 1 };
      const changed = {
        ...build,
        days: build.days.map((day) => ({
          ...day,
          sessions: day.sessions.map((each) => (each === chosen ? longer : each)),
        })),
      };
      const [before, after] = [hoursLedger(build), hoursLedger(changed)];
      const side = kindsApart.includes(chosen.kind) ? "apart" : "build";
      const present = chosen.who.length;
      const grown = (by: "byAssembly" | "byAssemblyRolledUp" | "byStep" | "byPerson" | "byKind") =>
        [...after[by]].filter(([name, hours]) => {
          const was = (before[by] as ReadonlyMap<string, Hours>).get(name);
          return hours.build !== was?.build || hours.apart !== was.apart;
        });

      expect(after.total[side] - before.total[side]).toBe(present);
      expect(grown("byAssembly").map(([name]) => name)).toEqual([chosen.assembly]);
      expect(grown("byAssemblyRolledUp").map(([name]) => name)).toEqual(
        build.assemblies.get(chosen.assembly)?.path,
      );
      expect(grown("byStep").map(([name]) => name)).toEqual(
        chosen.step === undefined ? [] : [chosen.step],
      );
      expect(grown("byPerson").map(([name]) => name)).toEqual(chosen.who.map((who) => who.person));
      expect(grown("byKind").map(([name]) => name)).toEqual([chosen.kind]);
      for (const [date, hours] of after.byDate) {
        const extra = date === chosen.date ? present : 0;
        expect(hours[side] - (before.byDate.get(date)?.[side] ?? 0)).toBe(extra);
      }
      for (const [date, hours] of after.toDate) {
        const extra = date >= chosen.date ? present : 0;
        expect(hours[side] - (before.toDate.get(date)?.[side] ?? 0)).toBe(extra);
      }
    }),
  );
});

test("an assertion of the computed total holds, and of any other does not", () => {
  fc.assert(
    fc.property(anyHours, fc.nat(), fc.integer({ min: -90, max: 90 }), (build, pick, slip) => {
      const index = pick % Math.max(1, build.days.length);
      const day = build.days[index];
      fc.pre(day !== undefined);
      const minutes = (hoursLedger(build).toDate.get(day.date)?.build ?? 0) + slip;
      fc.pre(minutes >= 0);
      const assertions = [{ of: "total", minutes, span: day.span }];
      const asserted = { ...build, days: build.days.with(index, { ...day, assertions }) };
      const found = analyze(asserted, judged).diagnostics;
      expect(found.map(({ code }) => code)).toEqual(slip === 0 ? [] : ["total-differs"]);
    }),
  );
});
