import Fraction from "fraction.js";
import { citationText } from "../../model/citation.ts";
import {
  spliceColumns,
  spliceDiameters,
  spliceShares,
  spliceTableNames,
  spliceTables,
} from "../../model/published/splice-tables.ts";
import { unitOf } from "../../model/unit.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type InputProblem, refused, sum } from "./sum.ts";

const inch = unitOf("in");
const shares = ["sheet", "stringer", "frame", "full"] as const;

/**
 * Rivets for a single-lap splice: rivets per inch by the table that the builder picks, times
 * the share for the kind of joint, rounded to a tenth as the circular's worked case does, times
 * the width, rounded up. AC 43.13-1B, par. 4-58g and tables 4-9, 4-10, 4-11.
 */
export const spliceSum = sum({
  name: "splice",
  about: "how many rivets a single-lap splice takes, by AC 43.13-1B",
  inputs: {
    table: {
      kind: "choice",
      choices: spliceTableNames,
      about: "4-9: 2014-T6, 2024-T3, T36, 7075-T6; 4-10: 2017, 2024-T3 Alclad; 4-11: 5052",
      required: true,
      example: "4-10",
    },
    thickness: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "sheet thickness, one that the table prints",
      required: true,
      example: "0.032 in",
    },
    diameter: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "rivet diameter, 3/32 to 1/4 in",
      requiredUnless: ["fastener"],
      example: "1/8 in",
    },
    fastener: {
      kind: "choice",
      choices: ["AN-3"],
      about: "AN-3 bolts in place of rivets",
      example: "AN-3",
    },
    width: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "width W of the splice across the load",
      required: true,
      example: "10 in",
    },
    joint: {
      kind: "choice",
      choices: shares,
      about: "sheet: 75 % of the table; stringer: 80 %; frame: 60 %; full: all of it",
      required: true,
      example: "sheet",
    },
    rows: {
      kind: "number",
      range: "above zero",
      whole: true,
      about: "rows to spread the rivets over; one if not given",
      example: "2",
    },
  },
  example: [
    "table=4-10",
    "thickness=0.032 in",
    "diameter=1/8 in",
    "width=10 in",
    "joint=sheet",
    "rows=2",
  ],
  reckon({ table: name, thickness, diameter, fastener, width, joint, rows }) {
    const table = spliceTables[name];
    const problems: InputProblem[] = [];
    const sheet = amountIn(thickness, inch);
    const row = table.rows.find((each) => sheet.equals(`0${each.thickness}`));
    if (!row)
      problems.push({
        input: "thickness",
        message: `table ${name} has no row for ${thickness.typed}`,
        help: [
          `its rows are ${table.rows.map((each) => each.thickness).join(", ")} in; between rows the table is silent`,
        ],
      });
    const shank = diameter && !fastener ? amountIn(diameter, inch) : undefined;
    const column = fastener ?? spliceDiameters.find((each) => shank?.equals(each));
    if (diameter && fastener)
      problems.push({
        input: "diameter",
        message: "`diameter` is a rivet's, and `fastener` asks for bolts",
        help: ["leave one of the two out"],
      });
    if (diameter && !column)
      problems.push({
        input: "diameter",
        message: `table ${name} has no column for a ${diameter.typed} rivet`,
        help: [`its columns are ${spliceDiameters.join(", ")} in`],
      });
    const perInch = row && column && row.perInch[column];
    if (row && column && !perInch) {
      const has = spliceColumns.filter((each) => row.perInch[each]);
      problems.push({
        input: fastener ? "fastener" : "diameter",
        message: fastener
          ? `table ${name} prints no number of AN-3 bolts for ${row.thickness} in sheet`
          : `table ${name} prints no number for a ${column} in rivet in ${row.thickness} in sheet`,
        help: [`for that sheet it has ${has.join(", ")} in`],
      });
    }
    if (!perInch || problems.length > 0) return refused(...problems);

    const unit = fastener ? "bolts" : "rivets";
    const reduced = perInch.mul(spliceShares[joint]);
    const rounded = reduced.round(1);
    const inches = amountIn(width, inch);
    const count = rounded.mul(inches).ceil();
    const unrounded = reduced.mul(inches).ceil();
    const spread = rows ? count.div(rows).ceil() : undefined;
    const share = new Fraction(spliceShares[joint]).mul(100);
    return answered({
      result: { value: count, unit },
      parts: [
        figurePart("perInch", `${unit} per inch, table ${name}`, perInch, "per in"),
        figurePart("reduced", `${share.toString()} % of that`, reduced, "per in"),
        figurePart("rounded", "rounded to a tenth, as the circular does", rounded, "per in"),
        ...(spread ? [figurePart("perRow", "in each row", spread, unit)] : []),
      ],
      formula: "rivets = (per inch × share, rounded to a tenth) × width, rounded up",
      source: `${citationText(table.citation)}: ${table.sheets}; par. 4-58g(2) for the way of counting`,
      cautions: [
        ...(unrounded.equals(count)
          ? []
          : [
              `without the rounding to a tenth it would be ${unrounded.toString()} rivets: where that is more, take the greater number`,
            ]),
        ...(table.caution ? [table.caution] : []),
        ...(shank?.gt(sheet.mul(3))
          ? [
              "the rivet is thicker than three times the sheet; NAVEDTRA 14018, chapter 13, sets that as the most, while the circular's own worked case does the same as here",
            ]
          : []),
        ...(shank?.lt(sheet)
          ? ["the rivet is thinner than the sheet, less than NAVEDTRA 14018, chapter 13, allows"]
          : []),
        `${fastener ? "AN-3 bolts" : "2117-T4 (AD) rivets with protruding heads"}, single-lap joint; edge distance and spacing have to fit as well`,
        "tables 4-9 and 4-10 both name clad 2024-T3 and give different numbers: which one holds is for the drawing to say",
        governs,
      ],
    });
  },
});
