import { expect, test } from "vitest";
import { changesPage } from "../../../src/present/pages/changes-page.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const day = (date: string, written: string, more = "") => ({
  [`days/${date}.md`]: `---\ndate: ${date}\nwritten: ${written} 21:00\ntitle: Day of ${date}\n${more}sessions:\n  - { assembly: tail, who: [ada], hours: "1:00", kind: assemble }\n---\n`,
});

test("sheets and corrections stand by when they were written down, newest first", () => {
  const { groups, total } = changesPage(
    shownJournal({
      ...day("2026-01-05", "2026-02-03"),
      ...day("2026-01-09", "2026-01-09"),
      ...day(
        "2026-02-20",
        "2026-02-20",
        "amendments:\n  - { day: 2026-01-09, field: title, was: Day of 2026-01-09, now: Another, why: typed wrong }\n",
      ),
    }),
  );
  expect(
    groups.map(({ text, changes }) => [text, ...changes.map(({ on, says }) => `${on}: ${says}`)]),
  ).toEqual([
    [
      "February 2026",
      "20 Feb: new sheet, 20 February 2026",
      "20 Feb: corrected: title",
      "3 Feb: new sheet, 5 January 2026",
    ],
    ["January 2026", "9 Jan: new sheet, 9 January 2026"],
  ]);
  expect(total).toBe(4);
});

test("a private day is no change that the public is told of", () => {
  const files = { ...day("2026-01-05", "2026-01-05", "private: true\n") };
  expect(changesPage(shownJournal(files))).toMatchObject({ groups: [], total: 0 });
  expect(changesPage(shownJournal(files, "private")).total).toBe(1);
});
