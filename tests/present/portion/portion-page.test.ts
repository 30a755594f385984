import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { portionPage } from "../../../src/present/pages/portion-page.ts";
import { recordIndex } from "../../../src/present/pages/record-index.ts";
import { sitePages } from "../../../src/present/pages/site.ts";
import { linesOf } from "../../../src/present/portion/portion-words.ts";
import type { Edition } from "../../../src/present/record/edition.ts";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { tablesOf } from "../../../src/present/tables/all-tables.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { portionAnalysis, portioned, splitsOf, taskList } from "../../support/portioned.ts";

const tasks =
  "section,task_number,task,mfr_tenths\nFuselage,F1,Long members,9\nFuselage,F2,Skins,\nWings,W1,Spars,\nWings,W2,Folding tips,\n";
const sheet = `added: [{ task: W-1, section: Wings, title: More spars, on: 2026-01-03, why: not listed }]
splits:
  - { task: F1, on: 2026-01-03, kit: 0.9, fabrication: 0.1, source: the list }
  - { task: F2, on: 2026-01-03, assembly: 1, note: both sides }
  - { task: F2, on: 2026-02-03, paid: 0.4, assembly: 0.6, why: had the corners welded }
  - { task: W2, on: 2026-01-03, not-applicable: true, why: no folding }
  - { task: W-1, on: 2026-01-03, kit: 1, salvage: true }
claims: [{ task: F2, steps: [W-1] }]
`;
const days = {
  "days/2026-03-14.md":
    '---\ndate: 2026-03-14\nsessions:\n  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: assemble, tasks: [F1] }\n---\nDrilled.\n',
  "days/2026-03-15.md":
    '---\ndate: 2026-03-15\nprivate: true\nsessions:\n  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: assemble }\n---\nSecret.\n',
};
const analysis = portionAnalysis(sheet, tasks, days);
const input = (edition: Edition) => ({
  analysis,
  diagnostics: analysis.diagnostics,
  pictures: new Map(),
  edition,
});
const pageIn = (edition: Edition) => {
  const page = portionPage(recordIndex(input(edition)));
  if (!page) throw new Error("there is no page");
  return page;
};

test("a journal without the sheet has no page, no table and no place in the index", () => {
  const without = eventfulAnalysis();
  const site = sitePages({
    analysis: without,
    diagnostics: [],
    pictures: new Map(),
    edition: "public",
  });
  expect(site.pages.portion).toEqual([]);
  expect(site.shell.nav.map(({ part }) => part)).not.toContain("portion");
  expect(tablesOf(without).map(({ name }) => name)).not.toContain("portion");
});

describe("the page", () => {
  const page = pageIn("private");

  test("says what is claimed, and what is not counted", () => {
    expect(page.sentence).toBe(
      "Of 3.0 points on the sheet the builder claims 0.7, which is 23.3 %; 1 not applicable and 1 not divided yet and not counted.",
    );
  });

  test("shows each division that was changed with what stood before and why", () => {
    expect(page.changes).toEqual([
      {
        number: "F2",
        title: "Skins",
        on: "3 February 2026",
        before: "assembly 1.0",
        after: "paid 0.4, assembly 0.6",
        why: "had the corners welded",
      },
    ]);
  });

  test("says of a task why it was added or put aside, and what the list gives the kit", () => {
    const marks = page.sections.flatMap((section) =>
      section.tasks.map(({ number, marks }) => [number, ...marks]),
    );
    expect(marks).toEqual([
      ["F1", "the list gives the kit 0.9", "kit's share: the list"],
      ["F2"],
      ["W1", "not divided yet"],
      ["W2", "not applicable: no folding"],
      ["W-1", "added on 3 January 2026: not listed", "made from a salvaged assembly"],
    ]);
  });

  test("lists claimed tasks with gaps first, and leads to their entries", () => {
    expect(page.evidence.map(({ number, lacks }) => [number, lacks])).toEqual([
      ["F1", ["no photograph", "no fabricating by a builder"]],
      ["F2", ["no photograph"]],
    ]);
    expect(page.evidence[0]?.entries).toEqual([
      { text: "14 March 2026", href: "../2026/03/14/index.html" },
    ]);
  });

  test("in the public edition a private day counts and leads nowhere", () => {
    expect(pageIn("public").evidence[1]?.entries).toEqual([
      { text: "14 March 2026", href: "../2026/03/14/index.html" },
      { text: "15 March 2026" },
    ]);
  });

  test("claims no finding of an authority, and nothing signs", () => {
    const words = JSON.stringify(page);
    expect(words).toContain("not an official form");
    expect(words).not.toMatch(/approved|accepted|certif|8000-38|8130/i);
  });
});

describe("the lines in words", () => {
  const said = (...splits: string[]) =>
    linesOf(
      portioned(splitsOf(...splits), taskList(...splits.map((_, index) => `F${index + 1}`))),
    ).map(({ verdict, says }) => [verdict, ...says]);

  test("exactly half is said to be none", () => {
    expect(said("F1 kit 0.5, assembly 0.5")).toEqual([
      ["not reached", "exactly half is not more than half", "no room for paid help"],
      ["not reached", "no room for paid help"],
    ]);
  });

  test("between half and 51 % is said in words", () => {
    const rows = Array.from({ length: 10 }, (_, index) =>
      index === 0 ? "F1 kit 0.4, assembly 0.6" : `F${index + 1} kit 0.5, assembly 0.5`,
    );
    expect(said(...rows)).toEqual([
      ["reached", "not a tenth more may pass from the builder to paid help"],
      ["reached", "not a tenth more may pass from the builder to paid help"],
    ]);
    const more = Array.from({ length: 20 }, (_, index) =>
      index === 0 ? "F1 kit 0.4, assembly 0.6" : `F${index + 1} kit 0.5, assembly 0.5`,
    );
    expect(said(...more)[1]).toEqual([
      "not reached",
      "10.1 of 20.0 points is more than half and less than 51 %",
      "no room for paid help",
    ]);
  });

  test("room is said in points", () => {
    expect(said("F1 assembly 1")[0]).toEqual([
      "reached",
      "0.4 of a point may still pass from the builder to paid help",
    ]);
    expect(said("F1 assembly 1", "F2 assembly 1", "F3 kit 0.2, assembly 0.8")[0]?.[1]).toBe(
      "1.2 points may still pass from the builder to paid help",
    );
  });
});

describe("the record", () => {
  const validate = new Ajv2020({ allErrors: true, strict: true }).compile(recordSchema());

  test.each(["private", "public"] as const)("its schema describes it, %s", (edition) => {
    const edit = edition === "public" ? publicEdition : privateEdition;
    const record = journalRecord(edit(analysis, analysis.diagnostics), "0.1.0");
    const data = JSON.parse(JSON.stringify(record));
    validate(data);
    expect(validate.errors ?? []).toEqual([]);
    // The sum can be had from the rows alone.
    type Rows = readonly { tasks: { splits: { tenths?: Record<string, number> }[] }[] }[];
    const tenths = (data.portion.sections as Rows).flatMap(({ tasks: rows }) =>
      rows.map(({ splits }) => splits.at(-1)?.tenths ?? {}),
    );
    const total = (column: string) => tenths.reduce((sum, each) => sum + (each[column] ?? 0), 0);
    expect([total("kit"), total("paid"), total("assembly"), total("fabrication")]).toEqual([
      data.portion.sum.kit,
      data.portion.sum.paid,
      data.portion.sum.assembly,
      data.portion.sum.fabrication,
    ]);
  });

  test("the table has a row for each task, the history one for each division", () => {
    const rows = Object.fromEntries(
      tablesOf(analysis).map((table) => [table.name, table.cells(analysis).length]),
    );
    expect(rows).toMatchObject({ portion: 5, "portion-history": 5 });
  });
});
