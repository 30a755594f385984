import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { analysisWith, eventfulBalance } from "../../support/weighed.ts";

const analysis = analysisWith(eventfulBalance);

/** What a reader of the file gets. */
function recordOf(of: Analysis, edition: "public" | "private") {
  const edit = edition === "public" ? publicEdition : privateEdition;
  return JSON.parse(JSON.stringify(journalRecord(edit(of, of.diagnostics), "0.1.0")));
}

describe("the schema of record.json describes the register", () => {
  const validate = new Ajv2020({ allErrors: true, strict: true }).compile(recordSchema());

  test.each(["private", "public"] as const)("in the %s edition", (edition) => {
    validate(recordOf(analysis, edition));
    expect(validate.errors ?? []).toEqual([]);
  });

  test("with nothing in it, without limits, and with one case that weighs nothing", () => {
    for (const yaml of [
      "",
      "limits: { source: { document: Sheet }, forward: 3 in }\n",
      "projection: { on: 2026-01-01, items: [] }\ncases:\n  - { id: L-1, title: One, items: [] }\n",
      "limits: { source: { document: Sheet }, aft: [{ weight: 900 lb, arm: 3 in }, { weight: 1000 lb, arm: 3 in }] }\nprojection: { on: 2026-01-01, items: [{ what: all, weight: 800 lb, arm: 1 in }] }\ncases:\n  - { id: L-1, title: One, items: [] }\n",
    ]) {
      validate(recordOf(analysisWith(yaml), "private"));
      expect(validate.errors ?? []).toEqual([]);
    }
  });
});

test("a journal without the register has nothing about it in the record", () => {
  expect(recordOf(eventfulAnalysis(), "private")).not.toHaveProperty("balance");
});

test("numbers are exact, and what is in force is said", () => {
  const { balance } = recordOf(analysis, "private");
  expect(balance.inForce).toMatchObject({
    basis: "weighed",
    since: "2026-08-01",
    changes: 1,
    weight: { exact: "2059/2", decimal: 1029.5, unit: "lb", dimension: "mass" },
    moment: { exact: "22546", decimal: 22_546, unit: "lb·in" },
    cg: { exact: "45092/2059" },
  });
  expect(balance.cases.map((each: { verdict: string }) => each.verdict)).toEqual([
    "inside",
    "outside",
    "outside",
    "inside",
  ]);
  expect(balance.changes.map((each: { counted: boolean }) => each.counted)).toEqual([
    false,
    true,
    true,
  ]);
});

test("the public edition has no private case, counts it, and names nobody it may not", () => {
  const people = `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: jon, name: Jon Reed, role: unpaid help, private: true }
`;
  const record = recordOf(analysisWith(eventfulBalance, { "people.yaml": people }), "public");
  expect(JSON.stringify(record)).not.toMatch(/secret|Jon Reed|"jon"/i);
  expect(record.leftOut.loadingCases).toBe(1);
  expect(record.editionNote).toContain("1 loading case");
  expect(record.balance.weighings[1].who).toEqual(["ada", "person-2"]);
});
