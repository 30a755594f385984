import { describe, expect, test } from "vitest";
import { hoursLedger } from "../../../src/compute/ledgers/hours.ts";
import { day, session, smallBuild } from "../../support/small-build.ts";

const build = smallBuild({
  days: [
    day({
      date: "2026-02-27",
      sessions: [
        session({ date: "2026-02-27", minutes: 45, step: "HS-07" }),
        session({ date: "2026-02-27", minutes: 30, assembly: "empennage", kind: "study" }),
      ],
    }),
    day({
      date: "2026-03-14",
      sessions: [
        session({
          minutes: 75,
          assembly: "rudder",
          who: ["ada", ["jon", "paid help"]],
          kind: "fabricate",
        }),
      ],
    }),
    day({ date: "2026-04-01" }),
  ],
});

describe("hours", () => {
  const hours = hoursLedger(build);

  test("each person present is credited with all minutes", () => {
    expect(hours.lines.map(({ person, minutes }) => [person, minutes])).toEqual([
      ["ada", 45],
      ["ada", 30],
      ["ada", 75],
      ["jon", 75],
    ]);
    expect(hours.total).toEqual({ build: 195, apart: 30 });
  });

  test("study and shop stand apart", () => {
    expect(hours.lines.filter(({ apart }) => apart).map(({ kind }) => kind)).toEqual(["study"]);
    expect(hours.byKind.get("study")).toEqual({ build: 0, apart: 30 });
    expect(hours.byKind.get("shop")).toEqual({ build: 0, apart: 0 });
  });

  test("an assembly has its own hours, and with everything below it rolled up", () => {
    expect(Object.fromEntries(hours.byAssembly)).toEqual({
      empennage: { build: 0, apart: 30 },
      stabilizer: { build: 45, apart: 0 },
      rudder: { build: 150, apart: 0 },
      wing: { build: 0, apart: 0 },
    });
    expect(Object.fromEntries(hours.byAssemblyRolledUp)).toEqual({
      empennage: { build: 195, apart: 30 },
      stabilizer: { build: 45, apart: 0 },
      rudder: { build: 150, apart: 0 },
      wing: { build: 0, apart: 0 },
    });
  });

  test("by step, person and role", () => {
    expect(hours.byStep.get("HS-07")).toEqual({ build: 45, apart: 0 });
    expect(hours.byStep.get("HS-08")).toEqual({ build: 0, apart: 0 });
    expect(hours.byPerson.get("ada")).toEqual({ build: 120, apart: 30 });
    expect(hours.byPerson.get("jon")).toEqual({ build: 75, apart: 0 });
    expect(hours.byRole.get("paid help")).toEqual({ build: 75, apart: 0 });
    expect([...hours.byRole.keys()]).toEqual([
      "builder",
      "unpaid help",
      "paid help",
      "instruction",
      "inspector",
    ]);
  });

  test("by month, by date and to date; a month without an entry is not there", () => {
    expect([...hours.byMonth]).toEqual([
      ["2026-02", { build: 45, apart: 30 }],
      ["2026-03", { build: 150, apart: 0 }],
      ["2026-04", { build: 0, apart: 0 }],
    ]);
    expect([...hours.byDate.values()].map((each) => each.build)).toEqual([45, 150, 0]);
    expect([...hours.toDate]).toEqual([
      ["2026-02-27", { build: 45, apart: 30 }],
      ["2026-03-14", { build: 195, apart: 30 }],
      ["2026-04-01", { build: 195, apart: 30 }],
    ]);
  });
});

test("a session over midnight belongs to the day it is entered under", () => {
  const late = session({ from: "23:15", to: "01:05" });
  const hours = hoursLedger(smallBuild({ days: [day({ sessions: [late] })] }));
  expect([...hours.byDate]).toEqual([["2026-03-14", { build: 110, apart: 0 }]]);
});

test("a name that was never declared is not lost from the totals", () => {
  const odd = session({ assembly: "float", step: "FL-1", who: ["eve"] });
  const hours = hoursLedger(smallBuild({ days: [day({ sessions: [odd] })] }));
  expect(hours.byAssemblyRolledUp.get("float")).toEqual({ build: 60, apart: 0 });
  expect(hours.byStep.get("FL-1")).toEqual({ build: 60, apart: 0 });
  expect(hours.byPerson.get("eve")).toEqual({ build: 60, apart: 0 });
});

test("nothing booked is zero everywhere", () => {
  const hours = hoursLedger(smallBuild());
  expect(hours.total).toEqual({ build: 0, apart: 0 });
  expect(hours.lines).toEqual([]);
  expect(hours.byPerson.get("ada")).toEqual({ build: 0, apart: 0 });
});
