import { describe, expect, test } from "vitest";
import { outcomes } from "../../../src/compute/outcome.ts";
import { linksFrom } from "../../../src/present/pages/links.ts";
import { type RulePage, readingsPage, rulePage } from "../../../src/present/pages/readings-page.ts";
import { readingView } from "../../../src/present/pages/views/reading-view.ts";
import { measuredFiles } from "../../support/measured-journal.ts";
import { shownJournal } from "../../support/shown-journal.ts";
import { readSmall } from "../../support/temporary-journal.ts";

const record = shownJournal(measuredFiles);
const page = readingsPage(record);

function ruleOf(id: string): RulePage {
  const rule = record.analysis.build.rules.get(id);
  if (!rule) throw new Error(`no rule ${id}`);
  return rulePage(record, rule);
}

describe("the table of rules", () => {
  const rows = new Map(page.rules.map((row) => [row.rule.text, row]));

  test("counts every reading of a rule once, whatever came of it", () => {
    for (const { readings, counts } of page.rules) {
      expect(counts.map(({ outcome }) => outcome)).toEqual(outcomes);
      const sum = counts.reduce((all, { count }) => all + Number(count.text), 0);
      expect(sum).toBe(Number(readings.text));
    }
  });

  test.each([
    ["Edge distance", [3, 0, 1, 1, 1]],
    ["Cap edge", [1, 1, 0, 0, 0]], // 0.301 in is within U of the limit
    ["Left against right", [0, 0, 1, 0, 0]], // 0.005 and 0.03 in apart
    ["Evenness", [1, 0, 0, 0, 0]],
    ["Cable", [2, 1, 0, 0, 0]], // 90 °F is outside the table
    ["Unused", [0, 0, 0, 0, 0]],
  ])("%s", (title, counts) => {
    expect(rows.get(title)?.counts.map(({ count }) => Number(count.text))).toEqual(counts);
  });

  test("leads from each count to its readings, which are as many", () => {
    for (const { rule, readings, counts } of page.rules) {
      const id = [...record.analysis.build.rules.values()].find(
        ({ title }) => title === rule.text,
      )?.id;
      const groups = new Map(ruleOf(id ?? "").groups.map((group) => [group.anchor, group]));
      for (const { count } of counts) {
        const { text, href } = count;
        const anchor = href?.split("#")[1] ?? "";
        expect(groups.get(anchor)?.readings.length ?? 0).toBe(Number(text));
        expect(href === undefined).toBe(text === "0");
        if (href) expect(href.split("#")[0]).toBe(rule.href);
      }
      expect(readings.href).toBe(readings.text === "0" ? undefined : `${rule.href}#readings`);
    }
  });

  test("marks what wants attention", () => {
    const wants = rows.get("Edge distance")?.counts.filter((each) => each.wants);
    expect(wants?.map(({ outcome }) => outcome)).toEqual(["out"]);
    const cable = rows.get("Cable")?.counts.filter((each) => each.wants);
    expect(cable?.map(({ outcome }) => outcome)).toEqual(["undecided"]);
  });

  test("is summed up in words, with what answers to no rule", () => {
    expect(page.dimension?.says).toBe(
      "readings: 7 within, 2 undecided, 2 out, 1 accounted for, 1 replaced, 1 without a rule",
    );
    expect(page.unruled.map(({ id }) => id)).toEqual(["N"]);
  });
});

describe("left against right", () => {
  test("has a row for each pair, with both sides and what is allowed", () => {
    const rows = page.comparisons.map(({ first, second, difference, out }) => [
      first.value,
      first.where.text,
      second.value,
      second.where.text,
      difference,
      out,
    ]);
    expect(rows).toEqual([
      ["0.26 in", "left", "0.265 in", "right", "0.005 in", false],
      ["0.27 in", "left", "0.30 in", "right", "0.03 in", true],
    ]);
    for (const { first, second, of } of page.comparisons) {
      expect(first.where.href).toContain("2026/03/02/index.html#reading-");
      expect(second.where.href).not.toBe(first.where.href);
      expect(of.limits).toBe("at most 0.02 in");
    }
  });

  test("is drawn around the first value, the band as wide as is allowed", () => {
    const [near, far] = page.comparisons.map(({ drawing }) => drawing);
    // A quarter of what is allowed is a quarter of 30 %; three halves of it are past the band.
    expect(near).toEqual({ first: "50%", second: "57.5%", band: { x: "20%", width: "60%" } });
    expect(far?.second).toBe("95%");
  });
});

describe("the page of a rule", () => {
  test("says what is judged, and of which values a figure is made", () => {
    const sides = ruleOf("sides");
    expect(sides.standing.judges).toBe(
      "What is judged is the difference of two values, without its sign.",
    );
    expect(sides.dimension?.figure).toBe("difference at most 0.02 in");
    expect(sides.groups[0]?.readings[0]?.figure).toMatchObject({
      kind: "difference",
      of: [
        { values: "0.26 in, 0.27 in", at: "left", reading: { text: "L" } },
        { values: "0.265 in, 0.30 in", at: "right", reading: { text: "R" } },
      ],
    });
    expect(ruleOf("even").groups[0]?.readings[0]?.figure).toEqual({
      kind: "range",
      of: [{ values: "0.750 in, 0.752 in, 0.748 in" }],
    });
    expect(ruleOf("edge").standing).not.toHaveProperty("judges");
  });

  test("says which rule wins over which, where and why, on both pages and at the reading", () => {
    const reason = "a limit of the drawing comes before a published one";
    expect(ruleOf("cap").standing.over).toMatchObject({
      other: { text: "Edge distance" },
      why: reason,
      steps: [{ text: "W-2" }],
    });
    const general = ruleOf("edge").standing;
    expect(general.under).toMatchObject([{ other: { text: "Cap edge" }, why: reason }]);
    expect(general.wonOver.map(({ text }) => text)).toEqual(["C"]);
    const [won] = ruleOf("cap").groups.flatMap(({ readings }) =>
      readings.filter(({ id }) => id === "C"),
    );
    expect(won?.precedence).toMatchObject({ over: { text: "Edge distance" }, why: reason });
    expect(won?.rule?.text).toBe("Cap edge");
  });

  test("shows the table as typed, and the limits of each reading at its temperature", () => {
    const cable = ruleOf("cable");
    expect(cable.standing.table).toEqual({
      heads: ["#Temperature", "#At least", "#At most"],
      rows: [
        ["40 °F", "52 lbf", "60 lbf"],
        ["80 °F", "68 lbf", "80 lbf"],
      ],
    });
    expect(cable.dimension?.figure).toBe("by temperature, 40 °F to 80 °F");
    const views = cable.groups.flatMap(({ readings }) => readings);
    expect(views.map(({ id, limits, verdict }) => [id, limits, verdict])).toEqual([
      ["V", "63.2 lbf to 74 lbf at 20 °C", "within"],
      ["T", "60 lbf to 70 lbf at 60 °F", "within"],
      ["U", "no limits at 90 °F", "no verdict"],
    ]);
  });

  test("has its readings under their outcomes, newest first, each leading to its place", () => {
    const { groups } = ruleOf("edge");
    expect(groups.map(({ title }) => title)).toEqual([
      "Within, 3",
      "Out, 1",
      "Accounted for, 1",
      "Replaced, 1",
    ]);
    expect(groups[0]?.readings.map(({ id }) => id)).toEqual(["Q", "R", "L"]);
    expect(groups[0]?.readings[0]?.day.href).toMatch(/2026\/04\/10\/index\.html#reading-q$/);
  });

  test("of a rule that nothing answers to is empty", () => {
    const unused = ruleOf("unused");
    expect(unused.groups).toEqual([]);
    expect(unused.dimension?.says).toBe("0 readings");
    expect(unused).not.toHaveProperty("chart");
  });
});

// The second reading is private: the third keeps its number in the entry, on the public site too.
describe("a reading that was amended", () => {
  const files = {
    "rules.yaml": measuredFiles["rules.yaml"] ?? "",
    "instruments.yaml": measuredFiles["instruments.yaml"] ?? "",
    "days/2026-03-02.md": `---
date: 2026-03-02
readings:
  - { step: W-1, what: edge, rule: edge, values: [0.26, 0.62] in }
  - { step: W-1, what: edge, rule: edge, value: 0.97 in, private: true }
  - { id: third, step: W-1, what: edge, rule: edge, value: 2.7 in }
---
Measured.
`,
    "days/2026-04-10.md": `---
date: 2026-04-10
amendments:
  - { day: 2026-03-02, field: "readings[1].values", was: "[0.26, 0.62] in", now: "[0.26, 0.26] in", why: figures changed places }
  - { day: 2026-03-02, field: "readings[2].value", was: 0.97 in, now: 0.27 in, why: misread }
  - { day: 2026-03-02, field: "readings[3].value", was: 2.7 in, now: 0.27 in, why: the point }
  - { day: 2026-03-02, field: "readings[3].at", was: "", now: root, why: left out }
readings:
  - { step: W-1, what: edge, rule: edge, value: 0.28 in }
---
Put right.
`,
  };
  const ofEdition = (edition: "public" | "private") => {
    const index = shownJournal(files, edition);
    const rule = index.analysis.build.rules.get("edge");
    if (!rule) throw new Error("no rule");
    const { groups, chart } = rulePage(index, rule);
    const struck = groups.flatMap(({ readings }) =>
      readings.map(({ id, struck: lines }) => [
        id,
        lines.map(({ value, was, now, on }) => [value, was, now, on.text]),
      ]),
    );
    return { struck: Object.fromEntries(struck), chart };
  };

  test("shows on its rule's page what it was, and when it was amended", () => {
    const { struck } = ofEdition("public");
    expect(struck).toEqual({
      "2026-03-02.r1": [["values", "[0.26, 0.62] in", "[0.26, 0.26] in", "10 Apr"]],
      third: [
        ["value", "2.7 in", "0.27 in", "10 Apr"],
        ["at", "", "root", "10 Apr"],
      ],
      "2026-04-10.r1": [],
    });
  });

  test("has its old values as crosses on the chart, but not those that still stand", () => {
    const { chart } = ofEdition("public");
    expect(chart?.marks).toHaveLength(4);
    expect(chart?.struck).toMatchObject([
      { x: chart?.marks[0]?.x, beyond: true },
      { x: chart?.marks[0]?.x, beyond: true },
    ]);
    expect(chart?.summary).toContain("none outside the limits; 2 amended since, drawn as crosses");
  });

  test("that is private keeps its old value in the private edition", () => {
    expect(ofEdition("private").struck["2026-03-02.r2"]).toEqual([
      ["value", "0.97 in", "0.27 in", "10 Apr"],
    ]);
    expect(ofEdition("private").chart?.struck).toHaveLength(3);
  });
});

test("a drag is said to be added only where the rule adds it", () => {
  const source = "authority: manual, source: { document: Manual }, at-most: 25 lbf·in";
  const index = shownJournal({
    "rules.yaml": `rules:
  - { id: with, title: With, ${source}, adds-drag: true }
  - { id: without, title: Without, ${source} }
  - { id: edge, title: Edge, authority: manual, source: { document: Manual }, at-least: 0.25 in }
`,
    "days/2026-03-02.md": `---
date: 2026-03-02
readings:
  - { step: W-1, what: torque, rule: with, value: 29 lbf·in, drag: 4 lbf·in }
  - { step: W-1, what: torque, rule: without, value: 24 lbf·in, drag: 4 lbf·in }
  - { step: W-1, what: torque, value: 24 lbf·in, drag: 4 lbf·in }
---
Torqued.
`,
  });
  const links = linksFrom(index, "");
  const views = index.analysis.readings.map((each) => readingView(index, links, each));
  expect(views.map(({ drag, standing }) => [drag, standing])).toEqual([
    ["friction drag 4 lbf·in added to the limits", "within"],
    ["friction drag 4 lbf·in not added: the rule takes none", "within"],
    ["friction drag 4 lbf·in", "no rule"],
  ]);
});

test("a drag is never below zero", () => {
  const day = "date: 2026-03-02\nreadings: [{ what: torque, value: 24 lbf·in, drag: -4 lbf·in }]";
  const { diagnostics } = readSmall({ "days/2026-03-02.md": `---\n${day}\n---\nTorqued.\n` });
  expect(diagnostics.map(({ message }) => message)).toEqual([
    "`-4 lbf·in` is below zero, and this has no sign",
  ]);
});
