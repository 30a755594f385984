import type Fraction from "fraction.js";
import { mostRivets, type NoRow } from "./lay-row.ts";
import type { Figure, InputProblem } from "./sum.ts";

/**
 * Why there is no row, in words, and what to do.
 * @param figure A length of the row with its unit.
 */
export function noRow(
  why: NoRow["why"],
  figure: (value: Fraction) => Figure,
  { least, length }: { readonly least: Figure; readonly length: Figure },
): InputProblem {
  switch (why.kind) {
    case "shorter than its edges":
      return {
        input: "length",
        message: ["no rivet fits: the two edge distances take ", figure(why.edges), " of ", length],
        help: ["a smaller rivet, or a longer piece"],
      };
    case "over the edge":
      return {
        input: "edge",
        message: [
          "a hole of ",
          figure(why.hole),
          " with its centre ",
          figure(why.edge),
          " from the edge runs over it",
        ],
        help: ["look at the units of the edge distance and the diameter"],
      };
    case "into each other":
      return {
        input: "pitch-min",
        message: [
          "holes of ",
          figure(why.hole),
          " run into each other at a pitch of ",
          figure(why.pitch),
        ],
        help: ["fewer fasteners, or a wider pitch"],
      };
    case "too many wanted":
      return {
        input: "count",
        message: [
          "so many rivets would stand ",
          figure(why.pitch),
          " apart, below the least pitch of ",
          least,
        ],
        help: [`at most ${why.most} fit`],
      };
    case "too few wanted":
      return {
        input: "count",
        message: ["so few rivets would stand ", figure(why.pitch), " apart, above `pitch-max`"],
        help: [`at least ${why.fewest} are needed`],
      };
    case "between two pitches":
      return {
        input: "pitch-max",
        message: [
          `no even row fits: ${why.most} rivets stand `,
          figure(why.wide),
          ` apart, above \`pitch-max\`, and ${why.most + 1} would stand `,
          figure(why.tight),
          " apart, below the least pitch of ",
          least,
        ],
        help: ["widen one of the two limits, if the drawing allows it"],
      };
    case "kept out":
      return {
        input: "keep-out",
        message: [
          why.fewest === why.most
            ? `a row of ${why.most} puts a rivet at `
            : `every even row from ${why.fewest} to ${why.most} rivets puts one in a stretch kept out; with ${why.most} it stands at `,
          figure(why.position),
          why.fewest === why.most ? ", in a stretch kept out" : "",
        ],
        help: ["lay out the parts on either side of the stretch as rows of their own"],
      };
    case "beyond counting":
      return {
        input: "length",
        message: `more than ${mostRivets} rivets would fit`,
        help: ["look at the units of `length`, `diameter` and the pitch"],
      };
  }
}
