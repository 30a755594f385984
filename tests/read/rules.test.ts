// Rules as a builder types them: tolerances, tables, figures, and which rule wins.

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { limitsOf } from "../../src/compute/limits.ts";
import { foundInJournal } from "../support/judged-journal.ts";
import { sizes } from "../support/small-measurements.ts";
import { pointed, readSmall, smallRegisters } from "../support/temporary-journal.ts";

const head = (id: string) => `  - id: ${id}
    title: A limit
    authority: drawing
    source: { document: W-01, edition: rev B }
`;

function read(lines: string) {
  const { build, diagnostics } = readSmall({ "rules.yaml": `rules:\n${lines}` });
  return { rules: build?.rules ?? new Map(), found: pointed(diagnostics), diagnostics };
}

const readOne = (more: string) => read(`${head("one")}    ${more}\n`);

function limits(more: string, known: Readonly<Record<string, string>> = {}) {
  const rule = readOne(more).rules.get("one");
  const result = rule && limitsOf(rule, sizes(known));
  if (!result?.ok) return result?.fault;
  return [result.limits.lower?.typed, result.limits.upper?.typed];
}

describe("a tolerance", () => {
  test.each([
    ["tolerance: 0.015 in"],
    ["tolerance: ±0.015 in"],
    ["tolerance: ± 0.015 in"],
    ["tolerance: +/-0.015 in"],
    ['tolerance: "±0.015 in"'],
    ["tolerance: { plus: 0.015 in, minus: 0.015 in }"],
    ["tolerance: { plus: +0.015 in, minus: -0.015 in }"],
    ["tolerance: { plus: + 0.015 in, minus: −0.015 in }"],
  ])("%s", (tolerance) => {
    expect(limits(`nominal: 12.5 in\n    ${tolerance}`)).toEqual(["12.485 in", "12.515 in"]);
  });

  test("may be of one side", () => {
    const typed = "nominal: 12.5 in\n    tolerance: { plus: +0.000 in, minus: -0.030 in }";
    expect(limits(typed)).toEqual(["12.47 in", "12.5 in"]);
  });

  test("may be in terms of a size", () => {
    const typed = "nominal: 4 D\n    sizes: { D: 1/8 in }\n    tolerance: ±0.5 D";
    expect(limits(typed)).toEqual(["0.4375 in", "0.5625 in"]);
  });

  test("of a temperature is a difference", () => {
    expect(limits("nominal: 70 °F\n    tolerance: ±5 °F")).toEqual(["65 °F", "75 °F"]);
    expect(limits("nominal: 70 °F\n    tolerance: 5 delta °C")).toEqual(["61 °F", "79 °F"]);
  });

  test.each([
    ["tolerance: -0.015 in", "-"],
    ["tolerance: +0.015 in", "+"],
    ["tolerance: ±-0.015 in", "-"],
    ["tolerance: { plus: -0.001 in, minus: -0.003 in }", "-"],
    ["tolerance: { plus: ±0.001 in, minus: 0.003 in }", "±"],
    ["tolerance: { plus: 0.001 in, minus: +0.003 in }", "+"],
  ])("has no other sign: %s", (tolerance, sign) => {
    const { found, diagnostics } = readOne(`nominal: 12.5 in\n    ${tolerance}`);
    expect(found).toEqual([`rules.yaml:7 not-an-expression ${sign}`]);
    expect(diagnostics[0]?.message).toMatch(/ is not a tolerance: expected a size without a sign$/);
  });

  test("is read with its place behind the sign", () => {
    const { found } = readOne("nominal: 12.5 in\n    tolerance: ±0.015");
    expect(found).toEqual(["rules.yaml:7 not-an-expression 0.015"]);
  });

  test("measures what the nominal value does", () => {
    const { found, diagnostics } = readOne("nominal: 12.5 in\n    tolerance: ±3 lb");
    expect(found).toEqual(["rules.yaml:7 wrong-dimension ±3 lb"]);
    expect(diagnostics[0]?.message).toBe("`12.5 in - 3 lb` joins a length with a mass");
  });
});

describe("what a limit joins is tested when it is read", () => {
  test.each([
    ["at-least: 0.1 in + 3 lb", "`0.1 in + 3 lb` joins a length with a mass"],
    ["at-most: 70 °F + 5 °F", "`70 °F + 5 °F` adds a temperature to a temperature"],
    ["at-most: 2 (70 °F)", "`2 (70 °F)` multiplies a temperature, which means nothing"],
  ])("%s", (typed, message) => {
    const { diagnostics } = readOne(typed);
    expect(diagnostics.map(({ code }) => code)).toEqual(["wrong-dimension"]);
    expect(diagnostics[0]?.message).toBe(message);
  });

  test("both sides measure the same", () => {
    const { diagnostics } = readOne("at-least: 0.1 in\n    at-most: 3 lb");
    expect(diagnostics[0]?.message).toBe("`at-least` is a length, `at-most` is a mass");
  });
});

describe("a table", () => {
  const table = (rows: string, more = "") => `table: [${rows}]${more && `\n    ${more}`}`;
  const cold = "[40 °F, 52 lbf, 60 lbf]";
  const warm = "[80 °F, 68 lbf, 80 lbf]";
  const both = "[temperature, at-least, at-most]";

  test("gives limits between its rows", () => {
    const typed = table(`${both}, ${cold}, ${warm}`);
    expect(limits(typed, { temperature: "60 °F" })).toEqual(["60 lbf", "70 lbf"]);
    expect(limits(typed, { temperature: "40 °F" })).toEqual(["52 lbf", "60 lbf"]);
    expect(limits(typed, { temperature: "81 °F" })).toMatchObject({ kind: "outside the table" });
    expect(limits(typed)).toEqual({ kind: "unknown size", name: "temperature" });
  });

  test("may have one limit, or a nominal value with a tolerance", () => {
    const one = table("[temperature, at-most], [40 °F, 60 lbf], [80 °F, 80 lbf]");
    expect(limits(one, { temperature: "60 °F" })).toEqual([undefined, "70 lbf"]);
    const nominal = "[temperature, nominal], [40 °F, 60 lbf], [80 °F, 80 lbf]";
    expect(limits(table(nominal, "tolerance: ±5 lbf"), { temperature: "60 °F" })).toEqual([
      "65 lbf",
      "75 lbf",
    ]);
  });

  test("may be entered with a size of any kind", () => {
    const typed = table("[span, at-most], [24 in, 0.030 in], [48 in, 0.060 in]");
    expect(limits(typed, { span: "3 ft" })).toEqual([undefined, "0.045 in"]);
  });

  test("is kept as typed", () => {
    const rule = readOne(table(`${both}, ${cold}, ${warm}`)).rules.get("one");
    expect(rule?.table).toMatchObject({
      by: "temperature",
      rows: [
        { at: { typed: "40 °F" }, lower: { typed: "52 lbf" }, upper: { typed: "60 lbf" } },
        { at: { typed: "80 °F" } },
      ],
    });
  });

  test.each([
    ["no head", `${cold}, ${warm}`, "not-a-table 40 °F", /begins with a head/],
    ["a head alone", "[temperature]", "not-a-table temperature", /begins with a head/],
    ["nothing at all", "", "not-a-table table", /begins with a head/],
    ["no rows", both, `not-a-table ${both}`, /has no rows/],
    ["one row", `${both}, ${cold}`, `not-a-table ${both}`, /has one row/],
    [
      "a column twice",
      "[temperature, at-most, at-most], [40 °F, 1 lbf, 2 lbf], [50 °F, 1 lbf, 2 lbf]",
      "not-a-table at-most",
      /stands twice/,
    ],
    [
      "nominal beside a limit",
      "[temperature, nominal, at-most], [40 °F, 1 lbf, 2 lbf], [50 °F, 1 lbf, 2 lbf]",
      "not-a-table nominal",
      /stands alone/,
    ],
    [
      "a column of something else",
      "[temperature, weather], [40 °F, 1 lbf], [50 °F, 1 lbf]",
      "not-a-table weather",
      /not a column/,
    ],
    ["a short row", `${both}, ${cold}, [80 °F, 68 lbf]`, "not-a-table [80 °F, 68 lbf]", /2 cells/],
    ["rows out of order", `${both}, ${warm}, ${cold}`, `not-a-table ${cold}`, /stands below/],
    ["a row twice", `${both}, ${cold}, ${cold}`, `not-a-table ${cold}`, /stands below/],
    [
      "limits that cross",
      `${both}, ${cold}, [80 °F, 81 lbf, 80 lbf]`,
      "not-a-table [80 °F, 81 lbf, 80 lbf]",
      /above the `at-most` of 80 lbf/,
    ],
    ["a cell without a unit", `${both}, ${cold}, [80 °F, 68, 80 lbf]`, "not-a-quantity 68", /unit/],
    [
      "a length for a temperature",
      `${both}, [40 in, 52 lbf, 60 lbf], ${warm}`,
      "wrong-dimension 40 in",
      /expected a temperature/,
    ],
    [
      "a column of two kinds",
      `${both}, ${cold}, [80 °F, 68 lbf, 80 in]`,
      "wrong-dimension 80 in",
      /the first row has a force here/,
    ],
    [
      "two kinds of limit",
      `${both}, [40 °F, 52 lbf, 60 in], [80 °F, 68 lbf, 80 in]`,
      "wrong-dimension [40 °F, 52 lbf, 60 in]",
      /`at-least` is a force, `at-most` is a length/,
    ],
  ])("with %s is refused", (_what, rows, place, message) => {
    const { found, diagnostics, rules } = readOne(table(rows));
    expect(found.map((each) => each.replace(/^rules\.yaml:\d+ /, ""))).toEqual([place]);
    expect(diagnostics[0]?.message).toMatch(message);
    expect(rules.size).toBe(0);
  });

  test.each([
    ["at-least: 5 lbf", "unknown-key at-least", /it is a column of the table/],
    ["tolerance: 5 lbf", "missing-key tolerance", /stand together/],
    ["set: edge-distance-2d", "unknown-key table", /it comes from the rule set/],
  ])("stands without `%s`", (more, place, message) => {
    const { diagnostics, found } = readOne(table(`${both}, ${cold}, ${warm}`, more));
    const index = found.findIndex((each) => each.endsWith(place));
    expect(diagnostics[index]?.message).toMatch(message);
  });

  test("of nominal values wants a tolerance, of the same kind", () => {
    const nominal = table("[temperature, nominal], [40 °F, 60 lbf], [80 °F, 80 lbf]");
    expect(readOne(nominal).found).toEqual(["rules.yaml:6 missing-key table"]);
    const { diagnostics } = readOne(`${nominal}\n    tolerance: 5 in`);
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "`table by temperature - 5 in` joins a force with a length",
    ]);
  });

  test("is a list of lists", () => {
    expect(readOne("table: 40 °F").found).toEqual(["rules.yaml:6 wrong-shape 40 °F"]);
    expect(readOne("table: [temperature, at-least]").found).toEqual([
      "rules.yaml:6 wrong-shape temperature",
      "rules.yaml:6 wrong-shape at-least",
    ]);
  });
});

describe("what a rule judges", () => {
  test.each([
    ["each value", undefined],
    ["difference", "difference"],
    ["range", "range"],
    ["run-out", "run-out"],
  ])("%s", (typed, judges) => {
    const { rules, found } = readOne(`judges: ${typed}\n    at-most: 0.01 in`);
    expect(found).toEqual([]);
    expect(rules.get("one")?.judges).toBe(judges);
  });

  test("is one of these", () => {
    const { found, diagnostics } = readOne("judges: ranges\n    at-most: 0.01 in");
    expect(found).toEqual(["rules.yaml:6 not-a-choice ranges"]);
    expect(diagnostics[0]?.help).toEqual(["write `range`"]);
  });
});

describe("a rule over another", () => {
  const rule = (id: string, authority: string, more = "") =>
    `${head(id).replace("drawing", authority)}    at-least: 0.2 in\n${more && `    ${more}\n`}`;
  const general = rule("general", "published");

  test("wins on the steps that it names, or on all", () => {
    const { rules, found } = read(
      general +
        rule("manual", "manual", "over: general") +
        rule("sheet", "drawing", "over: general\n    steps: [W-1, W-2]") +
        rule("note", "drawing", "over: sheet\n    steps: [W-1]"),
    );
    expect(found).toEqual([]);
    expect([...rules.values()].map(({ over }) => over)).toEqual([
      undefined,
      { rule: "general" },
      { rule: "general", steps: ["W-1", "W-2"] },
      { rule: "sheet", steps: ["W-1"] },
    ]);
  });

  test.each([
    ["a published one over another", general + rule("b", "published", "over: general")],
    ["one of common practice", general + rule("b", "common practice", "over: general")],
    ["the manual over the drawing", rule("a", "drawing") + rule("b", "manual", "over: a")],
    ["the same, everywhere", rule("a", "manual") + rule("b", "manual", "over: a")],
    ["itself", rule("a", "manual", "over: a\n    steps: [W-1]")],
  ])("is not %s", (_what, lines) => {
    const { found, rules } = read(lines);
    expect(found.map((each) => each.replace(/^rules\.yaml:\d+ /, ""))).toEqual([
      expect.stringMatching(/^rule-does-not-win /),
    ]);
    expect([...rules.values()].filter(({ over }) => over)).toEqual([]);
  });

  test("of the same authority is told to name its steps", () => {
    const { diagnostics } = read(rule("a", "manual") + rule("b", "manual", "over: a"));
    expect(diagnostics[0]?.help[0]).toBe(
      "if it is for some steps only, name them: `steps: [HS-07]`",
    );
  });

  test("is alone on a step, and alone everywhere", () => {
    const steps = read(
      general +
        rule("a", "drawing", "over: general\n    steps: [W-1]") +
        rule("b", "drawing", "over: general\n    steps: [W-2, W-1]"),
    );
    expect(steps.diagnostics[0]?.message).toBe("`a` wins over `general` on step `W-1` already");
    const all = read(
      general + rule("a", "drawing", "over: general") + rule("b", "manual", "over: general"),
    );
    expect(all.diagnostics[0]?.message).toBe("`a` wins over `general` everywhere already");
  });

  test("does not win in a circle", () => {
    const { diagnostics, rules } = read(
      rule("a", "manual", "over: b\n    steps: [W-1]") +
        rule("b", "manual", "over: a\n    steps: [W-1]"),
    );
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "`a` and `b` win over each other in a circle",
    ]);
    expect([...rules.values()].map(({ over }) => over?.rule)).toEqual([undefined, "a"]);
  });

  test.each([
    ["another rule", "over: genral", "rules.yaml:11 unknown-name genral"],
    ["steps", "over: general\n    steps: [W-3]", "rules.yaml:12 unknown-name W-3"],
    ["what it wins over", "steps: [W-1]", "rules.yaml:11 missing-key W-1"],
  ])("names %s", (_what, more, place) => {
    const { found, rules } = read(general + rule("b", "drawing", more));
    expect(found).toEqual([
      place.replace("11", "12").replace("12 unknown-name W-3", "13 unknown-name W-3"),
    ]);
    expect(rules.get("b")?.over).toBeUndefined();
  });

  test("that is at fault itself has one fault", () => {
    const broken = `${head("broken")}    at-least: 2 x\n`;
    expect(read(broken + rule("b", "drawing", "over: broken")).found).toHaveLength(1);
  });
});

test("the small journal's own rule is read as before", () => {
  const { build } = readSmall({ "rules.yaml": smallRegisters["rules.yaml"] });
  expect([...(build?.rules.keys() ?? [])]).toEqual(["edge"]);
});

test("the rules that the README shows are read without a fault", async () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const text = /^## Limits$[\s\S]*?^```yaml\n([\s\S]*?)^```$/m.exec(readme)?.[1] ?? "";
  expect(text).toContain("table:");
  expect(await foundInJournal({ files: [{ file: "rules.yaml", text }] })).toEqual([]);
});

// AC 43.13-1B, par. 7-40d: drag is added to the desired torque, whoever desires it.
describe("a torque of the manual with friction drag", () => {
  const torque = (more = "") => `at-least: 20 lbf·in\n    at-most: 25 lbf·in${more}`;

  test("takes the drag only when it says so", () => {
    const drag = (more?: string) => readOne(torque(more)).rules.get("one")?.addsDrag;
    expect([drag(), drag("\n    adds-drag: true"), drag("\n    adds-drag: false")]).toEqual([
      false,
      true,
      false,
    ]);
  });

  test("is no length", () => {
    const { diagnostics, rules } = readOne("at-most: 0.25 in\n    adds-drag: true");
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "friction drag is a torque, and `0.25 in` is a length",
    ]);
    expect(rules.get("one")?.addsDrag).toBe(false);
  });

  test("comes with the set where there is one", () => {
    const set = `  - { id: one, title: Nut, set: ac43-13-1b-table-7-1, with: { thread: 10-32, nut: shear }, adds-drag: true }`;
    expect(read(set).diagnostics[0]?.message).toBe(
      "a rule with `set` has no `adds-drag`: it comes from the rule set",
    );
  });
});

test("a size is not called like a unit of length", () => {
  const { diagnostics } = readOne("at-least: 2 in\n    sizes: { in: 1/8 in }");
  expect(diagnostics[0]?.message).toContain("`in` is a unit of length");
  expect(readOne("at-most: 0.5 h\n    sizes: { h: 1/8 in }").diagnostics).toEqual([]);
});
