// Figures, tables and winning rules in the files that other programs read.

import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { readingRows, readingsTable } from "../../../src/present/tables/readings.ts";
import { measuredFiles } from "../../support/measured-journal.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const edited = shownJournal(measuredFiles, "private");
const record = JSON.parse(JSON.stringify(journalRecord(edited, "0.1.0"))) as ReturnType<
  typeof journalRecord
>;
const readings = new Map(record.days.flatMap((day) => day.readings).map((each) => [each.id, each]));
const rules = new Map(record.rules.map((each) => [each.id, each]));

describe("record.json", () => {
  test("is as its schema says", () => {
    const validate = new Ajv2020({ allErrors: true, strict: true }).compile(recordSchema());
    validate(record);
    expect(validate.errors ?? []).toEqual([]);
  });

  test("has what a figure is made of, as named and as taken", () => {
    expect(readings.get("B")).toMatchObject({
      of: ["L", "R"],
      figure: {
        kind: "difference",
        of: [
          { reading: "L", values: [{ typed: "0.26 in" }, { typed: "0.27 in" }] },
          { reading: "R", values: [{ typed: "0.265 in" }, { typed: "0.30 in" }] },
        ],
      },
      values: [{ quantity: { typed: "0.005 in" } }, { verdict: "above" }],
    });
    expect(readings.get("E")).toMatchObject({ figure: { kind: "range", of: [{ reading: "E" }] } });
    expect(readings.get("E")).not.toHaveProperty("of");
    expect(rules.get("even")?.judges).toBe("range");
  });

  test("has the table and what it was entered with", () => {
    expect(rules.get("cable")?.table).toMatchObject({
      by: "temperature",
      rows: [
        { at: { typed: "40 °F" }, lower: { typed: "52 lbf" } },
        { upper: { typed: "80 lbf" } },
      ],
    });
    expect(readings.get("T")).toMatchObject({
      temperature: { typed: "60 °F" },
      temperatureFrom: "day",
      lower: { typed: "60 lbf" },
    });
    expect(readings.get("V")).toMatchObject({ temperatureFrom: "reading" });
    expect(readings.get("U")).not.toHaveProperty("lower");
    expect(readings.get("L")).not.toHaveProperty("temperature");
  });

  test("has the rule that wins, and the one that it wins over", () => {
    expect(rules.get("cap")?.over).toEqual({ rule: "edge", steps: ["W-2"] });
    expect(readings.get("C")).toMatchObject({ rule: "edge", governedBy: "cap" });
    expect(readings.get("D")).not.toHaveProperty("governedBy");
  });
});

describe("readings.csv", () => {
  const rows = readingRows(edited.analysis).map((row) =>
    Object.fromEntries(readingsTable.columns.map(({ key, value }) => [key, value(row)])),
  );
  const of = (id: string) => rows.filter(({ reading }) => reading === id);

  test("has a row for each figure, with what it is made of", () => {
    expect(of("B").map(({ value_as_typed, judged_as }) => [value_as_typed, judged_as])).toEqual([
      ["0.005 in", "difference"],
      ["0.03 in", "difference"],
    ]);
    expect(of("B")[0]?.made_of).toBe("0.26 in (L), 0.27 in (L), 0.265 in (R), 0.30 in (R)");
    expect(of("L")[0]?.made_of).toBeUndefined();
  });

  test("has the rule that governs, the one it wins over, and the temperature of a table", () => {
    expect(of("C")[0]).toMatchObject({ rule: "cap", wins_over: "edge" });
    expect(of("L")[0]?.wins_over).toBeUndefined();
    expect(of("T")[0]?.temperature).toBe("60 °F");
    expect(of("L")[0]?.temperature).toBeUndefined();
  });
});

test("the public edition has no figure that is made of something private", () => {
  const [day = ""] = [measuredFiles["days/2026-03-02.md"]];
  const hidden = shownJournal({
    ...measuredFiles,
    "days/2026-03-02.md": day.replace(
      "values: [0.265, 0.30] in",
      "values: [0.265, 0.30] in, private: true",
    ),
  });
  const ids = hidden.analysis.readings.map(({ reading }) => reading.id);
  expect(ids).not.toContain("R");
  expect(ids).not.toContain("B");
  expect(ids).toContain("L");
  expect(JSON.stringify(journalRecord(hidden, "0.1.0"))).not.toContain("0.265 in");
});
