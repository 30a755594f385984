import { describe, expect, test } from "vitest";
import { linksFrom } from "../../../../src/present/pages/links.ts";
import { layoutView } from "../../../../src/present/pages/views/layout-view.ts";
import { shownJournal } from "../../../support/shown-journal.ts";
import { layoutBlock } from "../../../support/templates.ts";
import { entry, marchFile, smallRegisters } from "../../../support/temporary-journal.ts";

function viewOf(yaml: string, lines = "", rules = smallRegisters["rules.yaml"] ?? "") {
  const record = shownJournal({
    "rules.yaml": rules,
    [marchFile]: entry(lines, layoutBlock(yaml)),
  });
  const [laidOut] = record.layoutsByDate.get("2026-03-14") ?? [];
  if (!laidOut) throw new Error("the layout was lost");
  return layoutView(record, linksFrom(record, "../../../"), laidOut);
}

describe("in a sentence", () => {
  test.each([
    [
      "row: { length: 6 in, fastener: AN470AD4-5, edge: 2.5 D, count: 12 }",
      "12 × AN470AD4-5 (1/8 in), 0.4886 in apart (3.91 D), 0.3125 in (2.5 D) from each end of 6 in; as many as the layout asks for.",
    ],
    [
      "row: { length: 22 in, diameter: 1/8 in, edge: 1/2 in, pitch: 7/8 in }",
      "25 × fasteners of 1/8 in, 0.875 in apart (7 D), 0.5 in from each end of 22 in; the even pitch closest to 7/8 in.",
    ],
    [
      "row: { length: 6 in, diameter: 1/8 in, edge: 2 D, check: { pitch: pitch-3d-navy } }",
      "15 × fasteners of 1/8 in, 0.3929 in apart (3.14 D), 0.25 in (2 D) from each end of 6 in; as many as a least pitch of 0.375 in allows.",
    ],
    [
      "row: { length: 50 mm, diameter: 1/8 in, edge: 10 mm, count: 1 }",
      "1 × fastener of 1/8 in, in the middle, 25 mm from either end of 50 mm; as many as the layout asks for.",
    ],
    [
      "row: { length: 0.6 in, diameter: 1/8 in, edge: 2 D, pitch-min: 3 D }",
      "1 × fastener of 1/8 in, in the middle: two do not fit, 0.3 in from either end of 0.6 in; as many as a least pitch of 0.375 in allows.",
    ],
    [
      "row: { length: 0.1 in, diameter: 1/8 in, edge: 2 D, count: 2 }",
      "A row of fasteners of 1/8 in over 0.1 in, 2 D from each end.",
    ],
    [
      "cut-out: { shape: rectangle, length: 8 in, width: 5 1/2 in, corner-hole: 7/8 in, finish: 63 µin }",
      "An opening, 8 in by 5 1/2 in, corners with a radius of 0.4375 in; the corners are drilled first, 7/8 in; edge finished to 63 µin Ra.",
    ],
    ["cut-out: { shape: circle, diameter: 2 in }", "A round opening, 2 in across."],
    [
      "cut-out: { shape: slot, length: 40 mm, width: 12 mm }",
      "A slot, 40 mm long over all and 12 mm wide, with round ends.",
    ],
  ])("%s", (yaml, sentence) => {
    expect(viewOf(`title: A\n${yaml}`).summary).toBe(sentence);
  });
});

describe("its tables", () => {
  test("places from both ends, on a tape where they fall on a mark, and in millimetres", () => {
    const { places, taped, unit } = viewOf(
      "title: A\nrow: { length: 2 in, diameter: 1/8 in, edge: 0.3 in, count: 3 }",
    );
    expect([taped, unit]).toEqual([true, "in"]);
    expect(places).toEqual([
      { number: 1, left: "0.3", tape: "", right: "1.7", millimetres: "7.62" },
      { number: 2, left: "1", tape: "1", right: "1", millimetres: "25.40" },
      { number: 3, left: "1.7", tape: "", right: "0.3", millimetres: "43.18" },
    ]);
    const metric = viewOf(
      "title: A\nrow: { length: 50.8 mm, diameter: 3 mm, edge: 10 mm, count: 2 }",
    );
    expect([metric.taped, metric.unit]).toEqual([false, "mm"]);
  });

  test("every size that was typed, with what it comes to", () => {
    const { sizes } = viewOf(`title: A
row:
  length: 6 in
  diameter: 1/8 in
  hole: No. 30
  edge: 2.5 D
  side: 2 D + 0.05 in
  width: 0.75 in
  count: 12
  keep-outs: [{ from: 2.95 in, to: 3.05 in, clear: D, what: web }]`);
    expect(
      sizes.map(({ what, typed, millimetres }) => `${what}: ${typed}, ${millimetres}`),
    ).toEqual([
      "length over all: 6 in, 152.40",
      "fastener: 1/8 in, 3.18",
      "hole: No. 30, 3.26",
      "edge distance at both ends: 0.3125 in (2.5 D), 7.94",
      "pitch: 0.4886 in, 12.41",
      "edge distance alongside: 0.3 in (2 D + 0.05 in), 7.62",
      "width: 0.75 in, 19.05",
      "K1 (web) from: 2.95 in, 74.93",
      "K1 (web) to: 3.05 in, 77.47",
      "clear of K1 (web): 0.125 in (D), 3.18",
    ]);
    const round = viewOf("title: A\ncut-out: { shape: circle, diameter: 2 in, finish: 63 µin }");
    expect(round.sizes).toEqual([
      { what: "diameter", typed: "2 in", millimetres: "50.80" },
      { what: "roughness of the edge", typed: "63 µin", millimetres: "" },
    ]);
  });
});

describe("its checks", () => {
  const row = (edge: string, more = "") =>
    `title: A\n${more}row: { length: 6 in, diameter: 1/8 in, edge: ${edge}, count: 4, check: { edge: [edge, edge-distance-2d] } }`;

  test("link to the rule, or to the page of the shipped set", () => {
    const [declared, shipped] = viewOf(row("2 D")).checks;
    expect(declared).toMatchObject({
      what: "edge distance at both ends",
      value: "0.25 in",
      limits: "at least 0.25 in (2 D)",
      rule: { text: "Edge distance", href: "../../../readings/edge/index.html" },
      source: "limit of the drawing: W-01 (rev B)",
      standing: "within",
      verdict: "within",
    });
    expect(shipped?.rule).toEqual({
      text: "Edge distance of rivets, at least 2 D",
      href: "../../../limits/edge-distance-2d/index.html",
    });
  });

  test("say how far outside, and what accounts for it", () => {
    expect(viewOf(row("0.2 in")).checks[0]).toMatchObject({
      standing: "out",
      verdict: "out: 0.05 in below",
    });
    const deviation =
      "deviations: [{ id: D-1, drawing: W-01, planned: a, done: b, why: c, disposition: use as is }]";
    const view = viewOf(row("0.2 in", "deviation: D-1\n"), deviation);
    expect(view.checks[0]).toMatchObject({
      standing: "accounted-for",
      verdict: "out, accounted for: 0.05 in below",
    });
    expect(view.deviation).toEqual({
      text: "D-1",
      href: "../../../2026/03/14/index.html#deviation-d-1",
    });
  });

  test("say which rule wins on the step", () => {
    const rules = `rules:
  - { id: edge, title: In general, set: edge-distance-2d, with: { D: 1/8 in } }
  - { id: cap, title: In the cap, authority: drawing, source: { document: W-01 }, at-least: 0.3 in, over: edge, steps: [W-1] }
`;
    const [check] = viewOf(row("2 D", "step: W-1\n"), "", rules).checks;
    expect(check).toMatchObject({
      rule: { text: "In the cap" },
      precedence: "it wins over edge: a limit of the drawing comes before a published one",
    });
  });
});

test("what cannot be laid out has no drawing, no template and says why", () => {
  const view = viewOf(
    "title: A\nrow: { length: 1 in, diameter: 1/8 in, edge: 2 D, pitch-min: 3 D, count: 9 }",
  );
  expect([view.drawing, view.templates, view.places]).toEqual([undefined, [], []]);
  expect(view.trouble).toBe(
    "so many rivets would stand 0.0625 in apart, below the least pitch of 0.375 in",
  );
});

test("templates are named for the day and the number of the layout", () => {
  const view = viewOf("title: A\ncut-out: { shape: circle, diameter: 2 in }");
  expect(view.templates).toEqual([
    { text: "A4 (PDF)", href: "../../../drawings/2026-03-14-1-a4.pdf" },
    { text: "Letter (PDF)", href: "../../../drawings/2026-03-14-1-letter.pdf" },
  ]);
});
