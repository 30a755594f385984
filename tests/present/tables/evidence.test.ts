import { expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { publicEdition } from "../../../src/present/record/public-edition.ts";
import { evidenceTable } from "../../../src/present/tables/evidence.ts";
import { portionAnalysis, splitsOf, taskList } from "../../support/portioned.ts";

const day = (date: string, lines: string, prose: string) =>
  `---\ndate: ${date}\n${lines}---\n${prose}`;

const people = `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: kit, name: Kit Marsh, role: paid help, private: true }
`;

const analysis = portionAnalysis(
  splitsOf(
    "F1 fabrication 1",
    "F2 kit 1, source: invoice",
    "F3 paid 0.5, assembly 0.5",
    "F4 assembly 1",
  ),
  taskList("F1", "F2", "F3", "F4", "F5"),
  {
    "people.yaml": people,
    "help.yaml":
      "help: [{ id: P-1, who: kit, kind: paid help, from: 2026-03-14, what: helped, shares: { F3: 0.5 } }]\n",
    "days/2026-03-14.md": day(
      "2026-03-14",
      `place: hangar
sessions:
  - { assembly: spar, step: W-1, who: [ada, kit], roles: { kit: paid help }, hours: "1:00", kind: assemble, tasks: [F3, F1] }
  - { assembly: spar, who: [ada], hours: "1:00", kind: fabricate, tasks: [F1, F2] }
photos:
  - { file: a.jpg, caption: Ada at work, shows: [ada] }
  - { file: b.jpg, caption: Hidden, private: true }
`,
      "Told.\n",
    ),
    "days/2026-03-15.md": day(
      "2026-03-15",
      `private: true
place: secret-place
sessions:
  - { assembly: spar, who: [ada], hours: "1:00", kind: fabricate, tasks: [F1], note: secret-note }
photos:
  - { file: a.jpg, caption: secret-caption }
`,
      "secret-prose\n",
    ),
    "photos/a.jpg": "x",
    "photos/b.jpg": "x",
  },
);

const rows = (of: Analysis, ...keys: readonly string[]) => {
  const places = keys.map((key) => evidenceTable.heads.findIndex((head) => head.key === key));
  expect(places).not.toContain(-1);
  return evidenceTable.cells(of).map((cells) => places.map((place) => cells[place]));
};

test("a row for each task and entry, gaps first, then contradictions, unclaimed work last", () => {
  expect(rows(analysis, "task", "date", "gaps", "contradictions", "kinds", "entry_lacks")).toEqual([
    ["F4", undefined, "no entry", undefined, undefined, undefined],
    [
      "F1",
      "2026-03-14",
      undefined,
      "paid help at work without a share",
      "assemble; fabricate",
      undefined,
    ],
    ["F1", "2026-03-15", undefined, "paid help at work without a share", "fabricate", undefined],
    ["F3", "2026-03-14", undefined, undefined, "assemble", undefined],
    ["F2", "2026-03-14", undefined, undefined, "fabricate", undefined],
  ]);
});

test("says who was at it, where, and which photographs show a builder", () => {
  expect(
    rows(
      analysis,
      "task",
      "builders",
      "paid_help",
      "steps",
      "place",
      "photographs",
      "photographs_of_a_builder",
    )[1],
  ).toEqual(["F1", "ada", "kit", "W-1", "hangar", 2, 1]);
});

test("in the public edition a private day keeps its date and who was at it, and nothing else", () => {
  const { analysis: shown } = publicEdition(analysis, []);
  expect(rows(shown, "task", "date", "paid_help", "place", "photographs", "entry_lacks")).toEqual([
    ["F4", undefined, undefined, undefined, undefined, undefined],
    ["F1", "2026-03-14", "person-2", "hangar", 1, undefined],
    ["F1", "2026-03-15", undefined, undefined, undefined, undefined],
    ["F3", "2026-03-14", "person-2", "hangar", 1, undefined],
    ["F2", "2026-03-14", undefined, "hangar", 1, undefined],
  ]);
  expect(JSON.stringify(evidenceTable.cells(shown))).not.toMatch(/secret|Kit Marsh|"kit"/);
});
