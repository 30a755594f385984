import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { helpPage } from "../../../src/present/pages/help-page.ts";
import { recordIndex } from "../../../src/present/pages/record-index.ts";
import { editionNote } from "../../../src/present/record/edition.ts";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { tablesOf } from "../../../src/present/tables/all-tables.ts";
import { listHead, splitsOf, taskList } from "../../support/portioned.ts";
import { asOf } from "../../support/small-build.ts";
import { pointed, readSmall, smallRegisters } from "../../support/temporary-journal.ts";

const people = `${smallRegisters["people.yaml"]}  - { id: kit, name: Kit Marsh, role: paid help, private: true }\n`;
const sheet = {
  "tasks.csv": taskList("F1"),
  "portion.yaml": `${listHead}${splitsOf("F1 paid 0.2, assembly 0.8")}`,
};
// Two days of paid help, one of which a row covers; and a day of unpaid help in the same role.
const days = Object.fromEntries(
  ["2026-03-14", "2026-03-20"].map((date) => [
    `days/${date}.md`,
    `---\ndate: ${date}\nsessions:\n  - { assembly: spar, who: [ada, kit], hours: "1:15", kind: assemble }\n  - { assembly: spar, who: [jon], hours: "0:30", kind: assemble }\n---\nDid it.\n`,
  ]),
);
const help = `help:
  - { id: P-1, who: kit, kind: paid help, from: 2026-03-14, to: 2026-03-15, what: drove rivets, shares: { F1: 0.2 }, invoice: B-77, place: shop, note: by the hour }
  - { id: U-1, who: jon, kind: unpaid help, from: 2026-03-01, to: 2026-03-31, what: held the bar }
`;
const files = (yaml: string) => ({ ...sheet, ...days, "people.yaml": people, "help.yaml": yaml });

function analysisOf(yaml: string) {
  const { build, diagnostics } = readSmall(files(yaml));
  if (!build || diagnostics.length > 0)
    throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  return analyze(build, asOf("2026-12-31"));
}
const analysis = analysisOf(help);

test("rows have the hours of that person in that role on those days, and the rest is named", () => {
  expect(analysis.help?.rows.map(({ entry, minutes }) => [entry.id, minutes])).toEqual([
    ["U-1", 60],
    ["P-1", 75],
  ]);
  expect(
    analysis.help?.unlisted.map(({ person, date, minutes }) => [person, date, minutes]),
  ).toEqual([["kit", "2026-03-20", 75]]);
});

test("what cannot be is named at its place", () => {
  const found = readSmall(
    files(`help:
  - { id: P-1, who: kit, kind: paid help, from: 2026-03-14, to: 2026-03-10, what: rivets }
  - { id: I-1, who: kit, kind: instruction, from: 2026-03-14, what: taught, shares: { F1: 0.1 } }
  - { id: P-2, who: kit, kind: paid help, from: 2026-03-14, what: rivets, shares: { F9: 0.25 } }
  - { id: P-2, who: nobody, kind: paid help, from: 2026-03-14, what: rivets, shares: [F1] }
`),
  ).diagnostics;
  expect(pointed(found)).toEqual([
    "help.yaml:2 not-a-date 2026-03-10",
    "help.yaml:3 wrong-shape instruction",
    "help.yaml:4 unknown-name F9",
    "help.yaml:4 not-a-share 0.25",
    "help.yaml:5 unknown-name nobody",
    "help.yaml:5 wrong-shape [F1]",
  ]);
});

test("help dated after the day of judgement has not come yet", () => {
  const { diagnostics } = analysisOf(help.replace("2026-03-31", "2027-01-01"));
  const early = diagnostics.filter(({ code }) => code === "future-date");
  expect(early.map(({ code, message }) => `${code}: ${message}`)).toEqual([
    "future-date: help `U-1` is dated 2027-01-01, after 2026-12-31",
  ]);
});

describe("the invoice and the name are private", () => {
  const edited = publicEdition(analysis, []);
  const page = (edition: "public" | "private") =>
    helpPage(recordIndex({ analysis, diagnostics: [], pictures: new Map(), edition }));

  test("they are in the private edition", () => {
    expect(JSON.stringify(page("private"))).toContain("invoice B-77");
    expect(JSON.stringify(page("private"))).toContain("Kit Marsh");
  });

  test("they are nowhere in the public one, which says what it lacks", () => {
    const shown = JSON.stringify([
      page("public"),
      journalRecord(edited, "0.1.0"),
      tablesOf(edited.analysis).map((table) => table.cells(edited.analysis)),
      [...(edited.analysis.help?.rows ?? [])],
    ]);
    expect(shown).not.toContain("B-77");
    expect(shown).not.toContain("Kit Marsh");
    expect(editionNote(edited)).toContain("1 invoice number");
    expect(edited.analysis.help?.rows.map(({ minutes }) => minutes)).toEqual([60, 75]);
  });
});

test("paid, unpaid and instruction stand apart on the page", () => {
  const page = helpPage(
    recordIndex({ analysis, diagnostics: [], pictures: new Map(), edition: "private" }),
  );
  expect(page?.kinds.map(({ title, rows, total }) => [title, rows.length, total])).toEqual([
    ["Paid help", 1, { build: "1:15", apart: "" }],
    ["Unpaid help", 1, { build: "1:00", apart: "" }],
    ["Instruction", 0, undefined],
  ]);
});

test.each([
  ["private", privateEdition],
  ["public", publicEdition],
] as const)("the schema of the record describes it, %s", (_, edit) => {
  const validate = new Ajv2020({ allErrors: true, strict: true }).compile(recordSchema());
  validate(JSON.parse(JSON.stringify(journalRecord(edit(analysis, []), "0.1.0"))));
  expect(validate.errors ?? []).toEqual([]);
});
