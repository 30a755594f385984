import { compareQuantities, type Quantity } from "../../model/quantity.ts";
import { fromSet, sourceText } from "./from-set.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type Part, refused, sum, textPart } from "./sum.ts";

/**
 * Machine countersink for a 100-degree rivet: its diameter, and the thinnest sheet it may be
 * cut in. Army TM 9-2320-363-34-2, tables 3 and 4.
 */
export const countersinkSum = sum({
  name: "countersink",
  about: "size of a 100-degree machine countersink, and the thinnest sheet for it",
  inputs: {
    diameter: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "nominal rivet diameter",
      required: true,
      example: "1/8 in",
    },
    sheet: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "thickness of the sheet, to compare",
      example: "0.040 in",
    },
  },
  example: ["diameter=1/8 in", "sheet=0.040 in"],
  reckon({ diameter, sheet }) {
    const thinnest = fromSet("minimum-sheet-army-tm", { D: diameter });
    if (!thinnest?.lower)
      return refused({
        input: "diameter",
        message: `the tables have no row for a ${diameter.typed} rivet`,
        help: ["they have 3/32, 1/8, 5/32, 3/16 and 1/4 in"],
      });
    const cut = fromSet("countersink-army-tm", { D: diameter });
    const enough = sheet && compareQuantities(sheet, thinnest.lower) >= 0;
    return answered({
      parts: [
        ...printed("low", "countersink diameter, least", cut?.lower),
        ...printed("high", "countersink diameter, most", cut?.upper),
        ...printed("leastSheet", "thinnest sheet", thinnest.lower),
        ...(sheet
          ? [
              textPart(
                "sheetVerdict",
                "this sheet",
                enough ? "thick enough" : "too thin: dimple it instead, if the drawing says so",
              ),
            ]
          : []),
      ],
      formula: "looked up",
      source: sourceText(thinnest.citation),
      cautions: [
        ...(cut ? [] : ["the copy that was read has no countersink diameter for this rivet"]),
        "printed for 100-degree blind rivets, in a manual for vehicles; for solid rivets compare with the drawing",
        governs,
      ],
    });
  },
});

function printed(name: string, title: string, quantity: Quantity | undefined): Part[] {
  return quantity ? [figurePart(name, title, quantity.amount, quantity.unit.symbol)] : [];
}
