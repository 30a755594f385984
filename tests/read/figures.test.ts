// Readings that are made of others, and what a table is entered with.

import { describe, expect, test } from "vitest";
import { pointed, readSmall } from "../support/temporary-journal.ts";

const source = "authority: manual, source: { document: Manual }";
const rules = `rules:
  - { id: edge, title: Edge distance, ${source}, sizes: { D: 1/8 in }, at-least: 2 D }
  - { id: sides, title: Left against right, ${source}, judges: difference, at-most: 0.03 in }
  - { id: even, title: Evenness, ${source}, judges: range, at-most: 0.02 in }
  - { id: warm, title: Warmth, ${source}, judges: range, at-most: 5 delta °F }
  - { id: cable, title: Cable, ${source}, table: [[temperature, at-least], [40 °F, 52 lbf], [80 °F, 68 lbf]] }
  - { id: bow, title: Bow, ${source}, table: [[span, at-most], [24 in, 0.030 in], [48 in, 0.060 in]] }
  - { id: mixed, title: In terms of two, ${source}, at-least: 2 t + 0.05 in }
`;

function read(
  days: Readonly<Record<string, string>>,
  heads: Readonly<Record<string, string>> = {},
) {
  const files = Object.entries(days).map(([date, readings]) => {
    const list = readings.split("\n").map((each) => `  - { ${each} }`);
    const lines = [`date: 2026-03-${date}`, heads[date] ?? "place: shop", "readings:", ...list];
    return [`days/2026-03-${date}.md`, `---\n${lines.join("\n")}\n---\nWords.\n`] as const;
  });
  const { build, diagnostics } = readSmall({ ...Object.fromEntries(files), "rules.yaml": rules });
  const readings = (build?.days ?? []).flatMap((day) => day.readings);
  return { readings, found: pointed(diagnostics), diagnostics };
}

const pair = `id: L, what: offset, at: left, value: 1.25 in
id: R, what: offset, at: right, value: 1.26 in`;

describe("a reading made of others", () => {
  test("has none of their values, and names them with their places", () => {
    const { readings, found } = read({ "02": `${pair}\nwhat: offset, rule: sides, of: [L, R]` });
    expect(found).toEqual([]);
    expect(readings[2]).toMatchObject({
      id: "2026-03-02.r3",
      values: [],
      of: [
        { reading: "L", span: { line: 7 } },
        { reading: "R", span: { line: 7 } },
      ],
    });
    expect(readings[0]).not.toHaveProperty("of");
  });

  test("may name those of earlier days, and of the same day before or after it", () => {
    const { found } = read({ "02": pair, "05": "what: offset, rule: sides, of: [L, R]" });
    expect(found).toEqual([]);
    expect(read({ "02": `what: offset, rule: sides, of: [L, R]\n${pair}` }).found).toEqual([]);
  });

  test.each([
    ["of a later day", "L", "R", "reading `R` is of 2026-03-05, later than 2026-03-02"],
    ["that is not there", "L", "Q", "no reading is called `Q`"],
  ])("does not name one %s", (_what, first, second, message) => {
    const [left = "", right = ""] = pair.split("\n");
    const { diagnostics, found } = read({
      "02": `${left}\nwhat: offset, rule: sides, of: [${first}, ${second}]`,
      "05": right,
    });
    expect(found).toContain(`days/2026-03-02.md:6 unknown-name ${second}`);
    expect(diagnostics[0]?.message).toBe(message);
  });

  test.each(["value: 1 in", "values: [1, 2] in", "with: caliper", "drag: 4 lbf·in"])(
    "has no %s",
    (more) => {
      const { found } = read({ "02": `${pair}\nwhat: offset, rule: sides, of: [L, R], ${more}` });
      expect(found).toEqual([`days/2026-03-02.md:7 unknown-key ${more.split(":")[0]}`]);
    },
  );

  test("needs a rule that makes something of them", () => {
    const { diagnostics, found } = read({
      "02": `${pair}\nwhat: offset, of: [L, R]\nwhat: offset, rule: edge, of: [R, L]`,
    });
    expect(found).toEqual([
      "days/2026-03-02.md:7 unmatched-readings L",
      "days/2026-03-02.md:8 unmatched-readings R",
    ]);
    expect(diagnostics[1]?.message).toBe(
      "rule `edge` judges each value by itself, so nothing is made of the readings in `of`",
    );
  });

  test("names at least one, and what was measured alike", () => {
    const { diagnostics } = read({
      "02": `${pair}
id: W, what: weight, value: 3 lb
what: offset, rule: even, of: []
what: offset, rule: sides, of: []
what: offset, rule: even, of: [L, W]
what: offset, rule: even, values: [1 in, 3 lb]`,
    });
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "a range needs two values or more, and here are none",
      "a difference is taken between two readings, and `of` names 0",
      "`1.25 in` is a length and `3 lb` a mass: they have no range",
      "`1 in` is a length and `3 lb` a mass: they have no range",
    ]);
  });

  test("is made of the newest that replace those it names", () => {
    const { found, diagnostics } = read({
      "02": `${pair}\nwhat: offset, rule: sides, of: [L, R]`,
      "05": "what: offset, values: [1.25, 1.26] in, supersedes: R",
    });
    expect(found).toEqual(["days/2026-03-02.md:7 unmatched-readings L"]);
    expect(diagnostics[0]?.message).toContain("one value and `2026-03-05.r1` has 2 values");
  });

  test("is private when one of them is, or the day of one, or what replaces one", () => {
    const made = "what: offset, rule: sides, of: [L, R]";
    const third = (result: ReturnType<typeof read>) =>
      result.readings.find((each) => each.of)?.private;
    expect(third(read({ "02": pair, "05": made }))).toBe(false);
    expect(
      third(read({ "02": pair.replace("1.26 in", "1.26 in, private: true"), "05": made })),
    ).toBe(true);
    expect(third(read({ "02": pair, "05": made }, { "02": "private: true" }))).toBe(true);
    const again = "what: offset, value: 1.24 in, supersedes: R, private: true";
    expect(third(read({ "02": pair, "05": made, "06": again }))).toBe(true);
  });
});

describe("a figure is of the kind that its rule limits", () => {
  test.each([
    [
      "even",
      "values: [1, 2] lb",
      "1",
      "a range of values such as `1 lb` is a mass, and rule `even` limits a length",
    ],
    [
      "even",
      "values: [60, 61] °F",
      "60",
      "a range of values such as `60 °F` is a temperature difference, and rule `even` limits a length",
    ],
  ])("%s", (rule, values, at, message) => {
    const { found, diagnostics } = read({ "02": `what: offset, rule: ${rule}, ${values}` });
    expect(found).toEqual([`days/2026-03-02.md:5 wrong-dimension ${at}`]);
    expect(diagnostics[0]?.message).toBe(message);
  });

  test("temperatures lie a temperature difference apart", () => {
    expect(read({ "02": "what: skin, rule: warm, values: [60, 63] °F" }).found).toEqual([]);
  });
});

describe("a table is entered with", () => {
  const tension = "what: tension, rule: cable, value: 60 lbf";

  test("the temperature of the reading, before that of the day", () => {
    const { readings, found } = read(
      { "02": `${tension}\n${tension}, temperature: 12 °C` },
      { "02": "conditions: { temperature: 61 °F }" },
    );
    expect(found).toEqual([]);
    expect(
      readings.map(({ temperature }) => [temperature?.quantity.typed, temperature?.from]),
    ).toEqual([
      ["61 °F", "day"],
      ["12 °C", "reading"],
    ]);
  });

  test("something, or nothing can be judged", () => {
    const { diagnostics } = read({ "02": `${tension}\nwhat: bow, rule: bow, value: 0.03 in` });
    expect(diagnostics.map(({ message, help }) => [message, help[0]])).toEqual([
      [
        "rule `cable` is a table by `temperature`, and nothing says what that is",
        "add `temperature: …` to this reading, or `conditions: { temperature: … }` to the day",
      ],
      [
        "rule `bow` is a table by `span`, and nothing says what that is",
        "add `sizes: { span: … }` to this reading or to the rule",
      ],
    ]);
  });

  test("a size of its kind", () => {
    const bow = (span: string) => `what: bow, rule: bow, value: 0.03 in, sizes: { span: ${span} }`;
    expect(read({ "02": bow("3 ft") }).found).toEqual([]);
    const { diagnostics, readings } = read({ "02": bow("3 lb") });
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "with the sizes given here, `table by span` joins a length with a mass",
    ]);
    expect(readings).toEqual([]);
  });
});

test("sizes given with a reading that do not go with the limit are a fault there", () => {
  const { found, diagnostics } = read({
    "02": "what: grip, rule: mixed, value: 0.3 in, sizes: { t: 3 lb }",
  });
  expect(found).toEqual(["days/2026-03-02.md:5 wrong-dimension grip"]);
  expect(diagnostics[0]?.message).toBe(
    "with the sizes given here, `2 t + 0.05 in` joins a mass with a length",
  );
});
