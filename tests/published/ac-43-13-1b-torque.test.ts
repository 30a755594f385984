// Source: FAA AC 43.13-1B (8 Sep 1998, change 1 27 Sep 2001), table 7-1, "Recommended torque
// values (inch-pounds)", oil-free cadmium-plated threads, and paragraph 7-40. Copied from a
// page-by-page copy of the circular. Open the page again before you change a row.

import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

const set = "ac43-13-1b-table-7-1";

// biome-ignore format: laid out as the table is printed
const table7_1 = [
  // thread     tension nut     shear nut     maximum: tension  shear
  ["8-36",        12,    15,      7,    9,       20,    12],
  ["10-32",       20,    25,     12,   15,       40,    25],
  ["1/4-28",      50,    70,     30,   40,      100,    60],
  ["5/16-24",    100,   140,     60,   85,      225,   140],
  ["3/8-24",     160,   190,     95,  110,      390,   240],
  ["7/16-20",    450,   500,    270,  300,      840,   500],
  ["1/2-20",     480,   690,    290,  410,     1100,   660],
  ["9/16-18",    800,  1000,    480,  600,     1600,   960],
  ["5/8-18",    1100,  1300,    600,  780,     2400,  1400],
  ["3/4-16",    2300,  2500,   1300, 1500,     5000,  3000],
  ["7/8-14",    2500,  3000,   1500, 1800,     7000,  4200],
  ["1-14",      3700,  5500,   2200, 3300,    10000,  6000],
  ["1-1/8-12",  5000,  7000,   3000, 4200,    15000,  9000],
  ["1-1/4-12",  9000, 11000,   5400, 6600,    25000, 15000],
  ["8-32",        12,    15,      7,    9,       20,    12],
  ["10-24",       20,    25,     12,   15,       35,    21],
  ["1/4-20",      40,    50,     25,   30,       75,    45],
  ["5/16-18",     80,    90,     48,   55,      160,   100],
  ["3/8-16",     160,   185,     95,  100,      275,   170],
  ["7/16-14",    235,   255,    140,  155,      475,   280],
  ["1/2-13",     400,   480,    240,  290,      880,   520],
  ["9/16-12",    500,   700,    300,  420,     1100,   650],
  ["5/8-11",     700,   900,    420,  540,     1500,   900],
  ["3/4-10",    1150,  1600,    700,  950,     2500,  1500],
  ["7/8-9",     2200,  3000,   1300, 1800,     4600,  2700],
] as const;

const rows = table7_1.flatMap(
  ([thread, tensionLower, tensionUpper, shearLower, shearUpper, mostTension, mostShear]) =>
    [
      [thread, "tension", tensionLower, tensionUpper, mostTension],
      [thread, "shear", shearLower, shearUpper, mostShear],
    ] as const,
);

describe.each(rows)("table 7-1: %s with a %s nut", (thread, nut, lower, upper, most) => {
  test.each([
    [`${lower - 1}.99 lbf·in`, "below"],
    [`${lower} lbf·in`, "within"],
    [`${upper} lbf·in`, "within"],
    [`${upper}.01 lbf·in`, "above"],
  ])("%s is %s", (reading, verdict) => {
    expect(judge(quantity(reading), setLimits(set, { thread, nut })).kind).toBe(verdict);
  });

  test("the maximum column is told beside it", () => {
    const answer = askSet(set, { thread, nut });
    expect(answer.ok && answer.notes[0]).toContain(`${most} lbf·in`);
  });
});

test("the set knows the threads of the table and no others", () => {
  const [thread] = ruleSetNamed(set).parameters;
  expect(thread?.kind === "choice" && [...thread.values]).toEqual(table7_1.map(([name]) => name));
});

test.each(["1-14", "1-1/8-12", "1-1/4-12"])(
  "%s with a shear nut is printed as an estimate",
  (thread) => {
    const shear = askSet(set, { thread, nut: "shear" });
    const tension = askSet(set, { thread, nut: "tension" });
    expect(shear.ok && shear.notes).toHaveLength(2);
    expect(tension.ok && tension.notes).toHaveLength(1);
  },
);

// Paragraph 7-40d: the friction drag is added to the desired torque.
describe("friction drag", () => {
  test.each([
    ["1/4-28", "tension", "12 lbf·in", "62 lbf·in", "82 lbf·in"],
    ["10-32", "shear", "6 lbf·in", "18 lbf·in", "21 lbf·in"],
    ["1/4-28", "tension", "1 lbf·ft", "62 lbf·in", "82 lbf·in"],
  ])("%s with a %s nut and %s of drag: %s to %s", (thread, nut, drag, lower, upper) => {
    const limits = setLimits(set, { thread, nut }, drag);
    expect([limits.lower?.typed, limits.upper?.typed]).toEqual([lower, upper]);
  });

  test("61.99 and 82.01 lbf·in are outside, 62 and 82 are not", () => {
    const limits = setLimits(set, { thread: "1/4-28", nut: "tension" }, "12 lbf·in");
    const verdicts = ["61.99 lbf·in", "62 lbf·in", "82 lbf·in", "82.01 lbf·in"].map(
      (reading) => judge(quantity(reading), limits).kind,
    );
    expect(verdicts).toEqual(["below", "within", "within", "above"]);
  });

  test("paragraph 7-40i: the caution is given with the set", () => {
    expect(ruleSetNamed(set).advice.join("\n")).toMatch(/only when the manufacturer.*7-40i/);
  });
});
