import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Layout } from "../../src/model/layout.ts";
import { foundInJournal } from "../support/judged-journal.ts";
import { entry, marchFile, pointed, readSmall } from "../support/temporary-journal.ts";

const reading = (prose: string, lines = "") => readSmall({ [marchFile]: entry(lines, prose) });
const block = (yaml: string, fence = "```") => `${fence}layout\n${yaml}\n${fence}\n`;
const row = (yaml: string) => block(`title: A row\nrow: { ${yaml} }`);
const cutOut = (yaml: string) => block(`title: An opening\ncut-out: { ${yaml} }`);

function layoutsOf(prose: string, lines?: string): readonly Layout[] {
  const { build, diagnostics } = reading(prose, lines);
  expect(diagnostics).toEqual([]);
  return build?.days[0]?.layouts ?? [];
}

function pieceOf(prose: string) {
  const [layout] = layoutsOf(prose);
  if (!layout) throw new Error("the block was not read");
  return layout.piece;
}

/** What is found wrong, and the words that each message points at. */
const faultsOf = (prose: string) => pointed(reading(prose).diagnostics);
const messagesOf = (prose: string) => reading(prose).diagnostics.map(({ message }) => message);

describe("a row", () => {
  test("is read with everything it says", () => {
    const [layout, ...more] = layoutsOf(
      `Words.\n\n${block(`title: Upper flange
step: W-1
drawing: W-01 rev B
sheet: 0.032 in
note: grain spanwise
deviation: D-1
row:
  length: 14.500 in
  fastener: AN470AD4-5
  hole: No. 30
  edge: 2.5 D
  count: 12
  pitch-min: 3 D
  pitch-max: 12 D
  side: 2 D + 0.05 in
  width: 20 mm
  keep-outs: [{ from: 6 in, to: 6.5 in, clear: 2 D, what: bracket }, { from: 9 in, to: 9.1 in }]
  check: { edge: edge, pitch: [pitch-3d-navy, pitch-army-tm] }`)}`,
      "deviations: [{ id: D-1, drawing: W-01, planned: a, done: b, why: c }]",
    );
    expect(more).toEqual([]);
    expect(layout).toMatchObject({
      date: "2026-03-14",
      number: 1,
      title: "Upper flange",
      step: "W-1",
      drawing: "W-01 rev B",
      sheet: { typed: "0.032 in" },
      note: "grain spanwise",
      deviation: "D-1",
      line: 2,
      piece: {
        kind: "row",
        length: { typed: "14.500 in" },
        fastener: "AN470AD4-5",
        diameter: { typed: "1/8 in" },
        hole: { typed: "No. 30", length: { typed: "No. 30" } },
        edge: { typed: "2.5 D", length: { typed: "0.3125 in" } },
        count: { value: 12 },
        pitchMin: { length: { typed: "0.375 in" } },
        pitchMax: { length: { typed: "1.5 in" } },
        side: { typed: "2 D + 0.05 in", length: { typed: "0.3 in" } },
        width: { length: { typed: "20 mm" } },
        keepOuts: [
          { from: { typed: "6 in" }, to: { typed: "6.5 in" }, what: "bracket" },
          { from: { typed: "9 in" }, to: { typed: "9.1 in" } },
        ],
        check: {
          edge: [{ name: "edge" }],
          pitch: [{ name: "pitch-3d-navy" }, { name: "pitch-army-tm" }],
        },
      },
    });
  });

  test.each([
    ["AN470AD4-5", "1/8 in"],
    ["MS20426AD3-3.5", "3/32 in"],
    ["AD6-8", "3/16 in"],
  ])("knows the diameter of %s", (fastener, diameter) => {
    const piece = pieceOf(row(`length: 6 in, fastener: ${fastener}, edge: 1/4 in, count: 4`));
    expect(piece).toMatchObject({ fastener, diameter: { typed: diameter } });
  });

  test("takes any other part by its diameter", () => {
    const piece = pieceOf(
      row("length: 6 in, fastener: AN3-5A, diameter: 3/16 in, edge: D, pitch: 1 in"),
    );
    expect(piece).toMatchObject({
      fastener: "AN3-5A",
      diameter: { typed: "3/16 in" },
      edge: { length: { typed: "3/16 in" } },
      pitch: { typed: "1 in" },
    });
  });

  test.each([
    ["length: 6 in, edge: 2 D, count: 4", "missing-key 6 in"],
    ["length: 6 in, fastener: AN3-5A, edge: 2 D, count: 4", "missing-key AN3-5A"],
    ["length: 6 in, fastener: No. 30, edge: 2 D, count: 4", "missing-key No. 30"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D", "missing-key 6 in"],
    ["length: 6 lb, diameter: 1/8 in, edge: 2 D, count: 4", "wrong-dimension 6 lb"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 lb, count: 4", "wrong-dimension 2 lb"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D + 1 lb, count: 4", "wrong-dimension 2 D + 1 lb"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 W, count: 4", "not-an-expression 2 W"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D - 1 in, count: 4", "not-a-layout 2 D - 1 in"],
    ["length: -6 in, diameter: 1/8 in, edge: 2 D, count: 4", "not-a-layout -6 in"],
    ["length: 6 in, diameter: 0 in, edge: 2 D, count: 4", "not-a-layout 0 in"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D, count: 0", "not-a-layout 0"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D, count: few", "not-a-number few"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, pich: 1 in", "unknown-key pich"],
    ["length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, hole: No. 99", "not-a-quantity No. 99"],
  ])("%s is refused: %s", (yaml, fault) => {
    expect(faultsOf(row(yaml))).toEqual([`${marchFile}:6 ${fault}`]);
  });

  test("a keep-out is a stretch of the row", () => {
    const kept = (stretch: string) =>
      faultsOf(row(`length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, keep-outs: [${stretch}]`));
    expect(kept("{ from: 2 in, to: 2 in }")).toEqual([`${marchFile}:6 not-a-layout 2 in`]);
    expect(kept("{ from: -1 in, to: 2 in }")).toEqual([`${marchFile}:6 not-a-layout 2 in`]);
    expect(kept("{ from: 5 in, to: 153 mm }")).toEqual([`${marchFile}:6 not-a-layout 153 mm`]);
    expect(kept("{ from: 5 in, to: 6 in, clear: 0 D }")).toEqual([
      `${marchFile}:6 not-a-layout 0 D`,
    ]);
    expect(kept("{ from: 0 in, to: 152.4 mm }")).toEqual([]);
  });
});

describe("a cut-out", () => {
  test("is a rectangle with corners, a slot or a circle", () => {
    expect(
      pieceOf(
        cutOut("shape: rectangle, length: 8 in, width: 5 1/2 in, corner: 3/8 in, finish: 63 µin"),
      ),
    ).toMatchObject({
      shape: "rectangle",
      length: { typed: "8 in" },
      width: { typed: "5 1/2 in" },
      corner: { typed: "3/8 in" },
      finish: { length: { unit: { symbol: "µin" } } },
    });
    expect(
      pieceOf(cutOut("shape: rectangle, length: 8 in, width: 5 in, corner-hole: 7/8 in")),
    ).toMatchObject({
      corner: { typed: "half of 7/8 in", length: { typed: "0.4375 in" } },
      cornerHole: { typed: "7/8 in" },
    });
    expect(pieceOf(cutOut("shape: slot, length: 40 mm, width: 12 mm"))).toMatchObject({
      corner: { length: { typed: "6 mm" } },
    });
    expect(pieceOf(cutOut("shape: circle, diameter: 2 in"))).toMatchObject({
      length: { typed: "2 in" },
      width: { typed: "2 in" },
      corner: { length: { typed: "1 in" } },
    });
  });

  test.each([
    ["shape: oval, length: 2 in, width: 1 in", "not-a-choice oval"],
    ["shape: rectangle, length: 2 in, width: 1 in", "missing-key rectangle"],
    ["shape: rectangle, length: 2 in, corner: 1/4 in", "missing-key rectangle"],
    [
      "shape: rectangle, diameter: 2 in, length: 2 in, width: 1 in, corner: 1/4 in",
      "unknown-key diameter",
    ],
    ["shape: circle, length: 2 in, diameter: 2 in", "unknown-key length"],
    ["shape: slot, length: 2 in, width: 1 in, corner: 1/4 in", "unknown-key corner"],
    ["shape: slot, length: 1 in, width: 2 in", "not-a-layout 2 in"],
    ["shape: rectangle, length: 2 in, width: 1 in, corner: 0.51 in", "not-a-layout 0.51 in"],
    ["shape: rectangle, length: 1 in, width: 2 in, corner: 0.51 in", "not-a-layout 0.51 in"],
    [
      "shape: rectangle, length: 2 in, width: 1 in, corner: 1/4 in, corner-hole: 1/2 in",
      "not-a-layout corner-hole",
    ],
    ["shape: circle, diameter: 0 in", "not-a-layout 0 in"],
    ["shape: circle, diameter: 2 in, check: { finish: edge }", "missing-key edge"],
    ["shape: rectangle, length: 2 in, width: 1 in, corner: much", "not-a-quantity much"],
  ])("%s is refused: %s", (yaml, fault) => {
    expect(faultsOf(cutOut(yaml))).toEqual([`${marchFile}:6 ${fault}`]);
  });

  test("corners may meet", () => {
    expect(
      pieceOf(cutOut("shape: rectangle, length: 2 in, width: 1 in, corner: 1/2 in")),
    ).toMatchObject({ corner: { typed: "1/2 in" } });
  });
});

describe("a block", () => {
  test("has a row or a cut-out", () => {
    expect(faultsOf(block("title: Nothing"))).toEqual([`${marchFile}:5 missing-key Nothing`]);
    expect(faultsOf(block(""))).toEqual([`${marchFile}:4 missing-key \`\`\`layout`]);
  });

  test("is told by line and column in the file itself, however far down", () => {
    const prose = `One.\n\n\nTwo.\n\n${row("length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, side: bad")}`;
    const { diagnostics } = reading(prose);
    expect(diagnostics[0]?.span).toMatchObject({
      file: `journal/${marchFile}`,
      line: 11,
      column: 67,
      text: "row: { length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, side: bad }",
    });
  });

  test("is found behind line ends of either kind", () => {
    const prose = `One.\r\n\r\n${block("title: A hole\ncut-out: { shape: circle, diameter: 2 in }").replaceAll("\n", "\r\n")}`;
    expect(layoutsOf(prose)).toMatchObject([{ title: "A hole", line: 2 }]);
  });

  test("may be fenced by tildes, and by more signs than three", () => {
    const yaml = "title: A hole\ncut-out: { shape: circle, diameter: 2 in }";
    expect(layoutsOf(block(yaml, "~~~") + block(yaml, "`````"))).toMatchObject([
      { number: 1, line: 0 },
      { number: 2, line: 4 },
    ]);
  });

  test("inside another fenced block is an example", () => {
    expect(layoutsOf(`\`\`\`\`md\n${block("nonsense: [")}\`\`\`\`\n`)).toEqual([]);
    expect(layoutsOf("```\n  ```layout\n```\n").length).toBe(0);
  });

  test("stands at the left margin", () => {
    for (const before of ["  ", "- ", "> ", "1. ", "   * "]) {
      expect(faultsOf(`${before}\`\`\`layout\n${before}\`\`\`\n`)).toEqual([
        `${marchFile}:4 not-a-layout ${before}\`\`\`layout`.trimEnd(),
      ]);
    }
  });

  test("of another name is left alone", () => {
    expect(layoutsOf("```layouts\ntitle: [\n```\n\n    ```not code\n")).toEqual([]);
  });

  test("has to be closed, and its YAML has to be right", () => {
    expect(faultsOf("```layout\ntitle: A\n")).toEqual([`${marchFile}:4 not-a-layout \`\`\`layout`]);
    expect(faultsOf(block("title: A: B"))[0]).toContain(":5 not-yaml");
    expect(faultsOf(block("title: &a B"))[0]).toContain(":5 alias-or-anchor");
    expect(messagesOf("```layout upper\ntitle: A\n```\n")[0]).toBe(
      "nothing stands behind `layout` on the line that opens the block",
    );
  });

  test("names steps, drawings and deviations that there are", () => {
    const hole = "cut-out: { shape: circle, diameter: 2 in }";
    expect(faultsOf(block(`title: A\nstep: W-9\n${hole}`))).toEqual([
      `${marchFile}:6 unknown-name W-9`,
    ]);
    expect(faultsOf(block(`title: A\ndrawing: W-02\n${hole}`))).toEqual([
      `${marchFile}:6 unknown-name W-02`,
    ]);
    expect(faultsOf(block(`title: A\ndeviation: D-9\n${hole}`))).toEqual([
      `${marchFile}:6 unknown-name D-9`,
    ]);
  });

  test("in a draft is read, and not drawn", () => {
    const { build, diagnostics } = reading(row("length: 6 in"), "draft: true\n");
    expect(pointed(diagnostics).length).toBeGreaterThan(0);
    expect(build?.days).toEqual([]);
  });
});

describe("the rules that it names", () => {
  const named = (check: string) =>
    row(`length: 6 in, diameter: 1/8 in, edge: 2 D, count: 4, check: { ${check} }`);
  const withRules = (rules: string, prose: string) =>
    readSmall({
      "rules.yaml": `rules:\n${rules}`,
      [marchFile]: entry("", prose),
    }).diagnostics.map(({ code, message }) => `${code}: ${message}`);
  const source = "authority: drawing, source: { document: W-01 }";

  test("are declared, or shipped and about the same thing", () => {
    expect(faultsOf(named("edge: edge"))).toEqual([]);
    expect(faultsOf(named("edge: [edge-distance-2d, edge-distance-2d-ac-43-13-1b]"))).toEqual([]);
    expect(faultsOf(named("pitch: pitch-3d-navy"))).toEqual([]);
    expect(faultsOf(named("pitch: edge-distance-2d"))).toEqual([
      `${marchFile}:6 unknown-name edge-distance-2d`,
    ]);
    const { diagnostics } = reading(named("pitch: pitch-3d-nav"));
    expect(diagnostics[0]).toMatchObject({
      label: "did you mean `pitch-3d-navy`?",
      notes: ["rule sets about pitch: pitch-3d-navy, pitch-army-tm"],
    });
    expect(
      reading(cutOut("shape: circle, diameter: 2 in, check: { corner: x }")).diagnostics[0],
    ).toMatchObject({ notes: [] });
  });

  test("limit lengths, in terms of what a layout has", () => {
    expect(
      withRules(
        `  - { id: bolt, title: Bolt, ${source}, at-least: 20 lbf·in }\n`,
        named("edge: bolt"),
      ),
    ).toEqual(["wrong-dimension: rule `bolt` does not fit here: it limits a torque, not a length"]);
    expect(
      withRules(
        `  - { id: wide, title: Wide, ${source}, sizes: { W: 1 in }, at-least: W / 4 }\n`,
        named("edge: wide"),
      ),
    ).toEqual([]);
    expect(
      withRules(
        `  - { id: bow, title: Bow, ${source}, judges: range, at-most: 0.02 in }\n`,
        named("edge: bow"),
      ),
    ).toEqual(["not-a-layout: rule `bow` judges a range of readings, which a layout has not"]);
  });

  test("may be by a table only of what a layout has", () => {
    const table =
      "  - id: cable\n    title: Cable\n    authority: manual\n    source: { document: M }\n    table:\n      - [temperature, at-least]\n      - [40 °F, 1 in]\n      - [80 °F, 2 in]\n";
    expect(withRules(table, named("pitch: cable"))).toEqual([
      "not-a-layout: rule `cable` does not fit here: its limit speaks of `temperature`, which the layout does not say",
    ]);
  });
});

test("the blocks shown in the README can be typed as they stand", async () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const [, shown = ""] = /^````markdown\n([\s\S]*?)^````$/m.exec(readme) ?? [];
  expect(shown.match(/^```layout$/gm)).toHaveLength(2);
  const text = `---\ndate: 2026-03-14\n---\n${shown}`;
  expect(await foundInJournal({ files: [{ file: "days/2026/2026-03-14.md", text }] })).toEqual([]);
});
