import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spreadsheetText } from "../../../src/write/exports/spreadsheet-text.ts";

describe("text that a spreadsheet would run or change gets an apostrophe", () => {
  test.each([
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    "\t=1",
    "\r=1",
    "\n=1",
    "＝1",
    "＋1",
    "－1",
    "＠1",
    "  =1",
    "1/8",
    "1 3/16",
    "3-16",
    "10e5",
    "1E-3",
    "0015",
    "0.1250",
    ".125",
    "12345678901234567890",
    "1,234",
    "1:15",
    "7:30 pm",
    "48 %",
    "48%",
    "$12",
    "(12)",
    "2026-03-14",
    "14 Mar",
    "MARCH1",
    "Sep-2",
    "3 October 2026",
    "TRUE",
    "false",
    "１/８",
    "'tick",
  ])("%j", (text) => {
    expect(spreadsheetText(text)).toBe(`'${text}`);
  });
});

describe("other text stays as it is", () => {
  test.each([
    "",
    "HS-07",
    "AN470AD4-5",
    "0.141 in",
    "3/32 in",
    "No. 30",
    "rib 4 row A",
    "2026-03-14.r2",
    "D-014",
    "61 °F",
    "31 lbf·in",
    "march on the spot",
    "truely",
    "content/days/2026-03-14.md",
  ])("%j", (text) => {
    expect(spreadsheetText(text)).toBe(text);
  });
});

test("taking the apostrophe off gives back any text", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      const cell = spreadsheetText(text);
      expect(cell.startsWith("'") ? cell.slice(1) : cell).toBe(text);
    }),
  );
});
