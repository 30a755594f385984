import { expect, test } from "vitest";
import { storyPage } from "../../../src/present/pages/story-page.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const day = (date: string, assembly: string, more = "") => ({
  [`days/${date}.md`]: `---\ndate: ${date}\ntitle: Day of ${date}\n${more}sessions:\n  - { assembly: ${assembly}, who: [ada], hours: "1:00", kind: assemble }\n---\nWords of ${date}.\n`,
});

const told = (files: Readonly<Record<string, string>>, edition?: "private") =>
  storyPage(shownJournal(files, edition)).rows.map(({ date, marks }) => [date, ...(marks ?? [])]);

test("the first day of each assembly is told, a part's first day is its parent's too", () => {
  expect(
    told({
      ...day("2026-01-05", "spar"),
      ...day("2026-01-09", "spar"),
      ...day("2026-02-01", "tail"),
      ...day("2026-02-07", "tail"),
    }),
  ).toEqual([
    ["2026-01-05", "The first entry", "Wing: begun", "Spar: begun"],
    ["2026-02-01", "Tail: begun"],
    ["2026-02-07", "The newest entry"],
  ]);
});

test("an assembly is closed on its last day once all its steps are", () => {
  const closing = (date: string, step: string) => ({
    [`days/${date}.md`]: `---\ndate: ${date}\nsessions:\n  - { assembly: spar, step: ${step}, who: [ada], hours: "1:00", kind: assemble, stage: closed }\n---\n`,
  });
  const one = { ...day("2026-01-05", "spar"), ...closing("2026-01-08", "W-2") };
  expect(told(one).flat()).not.toContain("Spar: closed");
  expect(told({ ...one, ...closing("2026-01-12", "W-1") })).toEqual([
    ["2026-01-05", "The first entry", "Wing: begun", "Spar: begun"],
    ["2026-01-12", "Wing: closed", "Spar: closed", "The newest entry"],
  ]);
});

test("a private day is told by what was begun, without its words", () => {
  const page = storyPage(shownJournal(day("2026-01-05", "spar", "private: true\n")));
  expect(page.rows[0]?.marks).toContain("Wing: begun");
  expect(JSON.stringify(page)).not.toMatch(/Day of|Words of/);
});

test("an empty journal says so", () => {
  expect(storyPage(shownJournal({}))).toMatchObject({
    rows: [],
    sentence: "Nothing has been entered yet.",
  });
});
