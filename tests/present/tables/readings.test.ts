import { expect, test } from "vitest";
import { readingsTable } from "../../../src/present/tables/readings.ts";
import { columnNamed } from "../../../src/present/tables/table.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const { analysis } = shownJournal({
  "rules.yaml": `rules:
  - { id: edge, title: Edge, authority: drawing, source: { document: W-01 }, at-least: 0.300 in, decision: guarded by U }
`,
  "instruments.yaml": `instruments:
  - { id: caliper, title: Caliper, uncertainty: 0.001 in }
`,
  "days/2026-03-02.md": `---
date: 2026-03-02
readings:
  - { id: A, what: edge, rule: edge, with: caliper, values: [0.310, 0.290] in }
  - { id: B, what: edge, rule: edge, value: 8 mm }
---
Measured.
`,
  "days/2026-03-03.md": `---
date: 2026-03-03
amendments:
  - { day: 2026-03-02, field: "readings[1].values", was: "[0.310, 0.290] in", now: "[0.310, 0.309] in", why: a slip of the pen }
---
Read again.
`,
  "days/2026-03-04.md": `---
date: 2026-03-04
amendments:
  - { day: 2026-03-02, field: "readings[1].values", was: "[0.310, 0.309] in", now: "[0.310, 0.308] in", why: another }
---
And again.
`,
});

test("what was first typed stands beside what is in force, and where acceptance begins", () => {
  const cells = (key: string) =>
    readingsTable.rows(analysis).map((row) => columnNamed(readingsTable, key).value(row));
  expect(cells("value_as_typed")).toEqual(["0.310 in", "0.308 in", "8 mm"]);
  expect(cells("first_typed")).toEqual(["0.310 in, 0.290 in", "0.310 in, 0.290 in", undefined]);
  // The uncertainty of B is not known.
  expect(cells("accept_from")).toEqual([0.301, 0.301, undefined]);
  expect(cells("accept_to")).toEqual([undefined, undefined, undefined]);
});
