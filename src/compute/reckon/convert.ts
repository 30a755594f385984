import { convert } from "../../model/quantity.ts";
import { differenceUnitOf } from "../../model/unit.ts";
import { governs } from "./governs.ts";
import { answered, refused, sum } from "./sum.ts";

/**
 * A value in another unit, exactly.
 * Factors: the unit table, each with its source (NIST SP 811, appendix B.8, and the definitions
 * of 1959 it rests on).
 */
export const convertSum = sum({
  name: "convert",
  about: "a value in another unit",
  inputs: {
    value: {
      kind: "any quantity",
      about: "the value, with its unit",
      required: true,
      example: "0.032 in",
    },
    to: { kind: "unit", about: "the unit wanted", required: true, example: "mm" },
  },
  example: ["value=0.032 in", "to=mm"],
  reckon({ value, to }) {
    if (value.unit.dimension !== to.dimension) {
      const step =
        value.unit.dimension === "temperature difference" && to.dimension === "temperature";
      return refused({
        input: "to",
        message: `\`${to.symbol}\` measures a ${to.dimension}, but \`${value.typed}\` is a ${value.unit.dimension}`,
        help: [
          step
            ? `a difference of temperature goes into another difference: \`to=${differenceUnitOf(to).symbol}\``
            : `name a unit of ${value.unit.dimension}`,
        ],
      });
    }
    const result = convert(value, to);
    const { offset } = to;
    const shifted = !offset.equals(0) || !value.unit.offset.equals(0);
    return answered({
      result: { value: result.amount, unit: to.symbol },
      parts: [],
      formula: shifted
        ? "value × factor + offset of its unit, less the offset of the other, / its factor"
        : "value × factor of its unit / factor of the other",
      source: `${value.unit.symbol}: ${value.unit.source}; ${to.symbol}: ${to.source}`,
      cautions: [
        ...(value.unit.dimension === "temperature"
          ? [
              "this is a temperature; a rise of 18 °F is a difference, typed `18 Δ°F`, and is 10 Δ°C",
            ]
          : []),
        ...(["gal", "qt", "fl oz"].some((name) => name === value.unit.symbol || name === to.symbol)
          ? [
              "gallons, quarts and fluid ounces are those of the US; the imperial ones are `imp gal` and `imp fl oz`",
            ]
          : []),
        governs,
      ],
    });
  },
});
