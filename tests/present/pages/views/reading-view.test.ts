import { describe, expect, test } from "vitest";
import { linksFrom } from "../../../../src/present/pages/links.ts";
import { type ReadingView, readingView } from "../../../../src/present/pages/views/reading-view.ts";
import { shownJournal } from "../../../support/shown-journal.ts";

const manual = "authority: manual, source: { document: Manual, edition: first }";

const record = shownJournal({
  "rules.yaml": `rules:
  - { id: plain, title: Plain, ${manual}, at-least: 0.300 in }
  - { id: least, title: Least, ${manual}, at-least: 0.300 in, decision: guarded by U }
  - { id: most, title: Most, ${manual}, at-most: 0.300 in, decision: guarded for 95 % }
  - { id: both, title: Both, ${manual}, at-least: 7.6 mm, at-most: 7.7 mm, decision: guarded by U }
  - { id: sides, title: Sides, ${manual}, judges: difference, at-most: 0.002 in, decision: guarded by U }
`,
  "instruments.yaml": `instruments:
  - { id: caliper, title: Caliper, uncertainty: 0.001 in }
  - { id: rule, title: Steel rule, uncertainty: 0.02 in }
  - { id: gauge, title: Gauge }
`,
  "days/2026-03-02.md": `---
date: 2026-03-02
readings:
  - { id: simple, what: a, rule: plain, with: caliper, value: 0.3004 in }
  - { id: accepted, what: a, rule: least, with: caliper, values: [0.320, 0.301] in }
  - { id: undecided, what: a, rule: least, with: caliper, values: [0.320, 0.3009] in }
  - { id: out-undecided, what: a, rule: least, with: caliper, value: 0.2995 in }
  - { id: rejected, what: a, rule: least, with: caliper, values: [0.320, 0.290] in }
  - { id: in-mm, what: a, rule: most, with: caliper, value: 7.5 mm }
  - { id: two-sided, what: a, rule: both, with: caliper, value: 0.301 in }
  - { id: no-room, what: a, rule: both, with: rule, value: 0.301 in }
  - { id: unknown, what: a, rule: least, with: gauge, value: 0.320 in }
  - { id: no-uncertainty-plain, what: a, rule: plain, with: gauge, value: 0.320 in }
  - { id: L, what: a, at: left, with: rule, value: 0.320 in }
  - { id: R, what: a, at: right, with: rule, value: 0.321 in }
  - { id: hopeless, what: a, rule: sides, of: [L, R] }
---
Measured.
`,
});

function shown(id: string): ReadingView {
  const judged = record.analysis.readings.find(({ reading }) => reading.id === id);
  if (!judged) throw new Error(`no reading ${id}`);
  return readingView(record, linksFrom(record, ""), judged);
}

describe("what a guard band decides stands beside the plain verdict", () => {
  test.each([
    ["simple", "within"],
    ["accepted", "within, accepted"], // 0.301 in lies on the limit of acceptance
    ["undecided", "within, undecided"],
    ["out-undecided", "out of limits, undecided"],
    ["rejected", "out of limits, rejected"],
    ["two-sided", "within, accepted"],
    ["no-room", "within, undecided"],
    ["unknown", "within, undecided"],
    ["no-uncertainty-plain", "within"],
    ["hopeless", "within, undecided"],
  ])("%s", (id, verdict) => {
    expect(shown(id).verdict).toBe(verdict);
  });
});

describe("the limits of acceptance", () => {
  test.each([
    [
      "accepted",
      "conformity proven under the rule's guard band (guarded by U), which accepts from 0.3010 in; probability 97.7 %",
    ],
    // 0.300 in less 1.645 × 0.0005 in is 7.599107 mm: rounded inwards.
    [
      "in-mm",
      "conformity proven under the rule's guard band (guarded for 95 %), which accepts up to 7.599 mm; probability over 99.9 %",
    ],
    // 7.6 mm + 0.0254 mm is 0.300212… in, 7.7 mm - 0.0254 mm is 0.302149… in.
    ["two-sided", "which accepts 0.3003 in to 0.3021 in"],
    [
      "rejected",
      "conformity disproven under the rule's guard band (guarded by U), which accepts from 0.3010 in; probability under 0.1 %",
    ],
  ])("%s", (id, says) => {
    expect(shown(id).assurance).toContain(says);
  });

  test.each([["no-room"], ["hopeless"]])("%s: there is no acceptance zone, which is said", (id) => {
    expect(shown(id).assurance).toMatch(
      /^conformity not proven: the guard bands \(guarded by U\) leave no acceptance zone, and no reading of this instrument could prove it; probability/,
    );
  });

  test("without an uncertainty, that is said and not computed through", () => {
    expect(shown("unknown").assurance).toBe(
      "the rule has a guard band (guarded by U), and the uncertainty of what measured this is not known",
    );
    expect(shown("no-uncertainty-plain")).not.toHaveProperty("assurance");
  });

  test("a rule that decides simply has none beside its own", () => {
    expect(shown("simple").assurance).toBe(
      "conformity proven under simple acceptance; probability 78.8 %",
    );
  });
});
