import Fraction from "fraction.js";
import { mostTorque } from "../../model/published/ac-43-13-1b.ts";
import { ruleSets } from "../../model/published/rule-sets.ts";
import { convert, inBaseUnits, type Quantity } from "../../model/quantity.ts";
import { unitOf } from "../../model/unit.ts";
import { amountIn } from "./amount-in.ts";
import { fromSet, sourceText } from "./from-set.ts";
import { governs } from "./governs.ts";
import { cosine, over, plus, type Real, times } from "./real.ts";
import {
  answered,
  figurePart,
  type InputProblem,
  type Part,
  refused,
  sum,
  type Words,
} from "./sum.ts";

const table = "ac43-13-1b-table-7-1";
const inchPound = unitOf("lbf·in");
const nuts = ["tension", "shear"] as const;
const one = new Fraction(1);

/**
 * What the wrench has to show: the torque wanted and the friction drag, times L / (L + A cos
 * angle) where an adapter changes the lever. AC 43.13-1B, par. 7-40 and table 7-1; adapter:
 * NAVEDTRA 14315, figure 3-45, and Army TM 9-254.
 */
export const torqueSum = sum({
  name: "torque",
  about: "the wrench setting for a thread and nut, with drag and adapter",
  inputs: {
    thread: {
      kind: "choice",
      choices: threads(),
      about: "size and threads per inch, as in AC 43.13-1B, table 7-1",
      requiredUnless: ["torque"],
      example: "1/4-28",
    },
    nut: {
      kind: "choice",
      choices: nuts,
      about: "tension: MS20365, AN310; shear: MS20364, AN320",
      requiredUnless: ["torque"],
      example: "tension",
    },
    torque: {
      kind: "quantity",
      dimension: "torque",
      range: "above zero",
      about: "instead of `thread` and `nut`: the torque wanted",
      example: "100 lbf·in",
    },
    drag: {
      kind: "quantity",
      dimension: "torque",
      range: "zero or more",
      about: "friction drag, measured while running the nut down; none if not given",
      example: "12 lbf·in",
    },
    wrench: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "with an adapter: length L of the wrench, drive to the middle of the grip",
      example: "10 in",
    },
    adapter: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "length A of the adapter, drive to nut; below zero if it shortens the lever",
      example: "4 in",
    },
    angle: {
      kind: "quantity",
      dimension: "angle",
      range: "zero or more",
      about: "between wrench and adapter; 0 deg, straight out, if not given",
      example: "45 deg",
    },
  },
  example: ["thread=1/4-28", "nut=tension", "drag=12 lbf·in"],
  reckon({ thread, nut, torque, drag, wrench, adapter, angle }) {
    const problems: InputProblem[] = [];
    if (torque && (thread || nut))
      problems.push({
        input: "torque",
        message: "`torque` stands instead of `thread` and `nut`, not beside them",
        help: ["the manufacturer's torque wins over the table: leave `thread` and `nut` out"],
      });
    if (!torque && !(thread && nut))
      problems.push({
        message: thread
          ? "`nut` is missing"
          : nut
            ? "`thread` is missing"
            : "neither `torque` nor `thread` and `nut` are given",
        help: ["give `torque`, or both `thread` and `nut` for the published table"],
      });
    const lever = leverShare(wrench, adapter, angle);
    if ("message" in lever) problems.push(lever);
    if (problems.length > 0 || "message" in lever) return refused(...problems);

    const unit = torque?.unit ?? inchPound;
    const added = drag ? amountIn(drag, unit) : new Fraction(0);
    const onWrench = (wanted: Quantity): Real =>
      times(amountIn(wanted, unit).add(added), lever.share);
    const cautions: Words[] = [
      ...(drag
        ? []
        : ["no drag is added: with a self-locking nut measure it and give it as `drag`"]),
      ...(adapter
        ? [
            "L is measured to the middle of the grip, or to the pivot of a beam wrench, and the hand pulls there (TM 1-1500-204-23-9)",
          ]
        : []),
    ];
    const formula = `setting = (torque + drag)${adapter ? " × L / (L + A cos angle)" : ""}`;
    const adapterSource = adapter
      ? "; adapter: NAVEDTRA 14315, figure 3-45, and Army TM 9-254"
      : "";
    const dragSource = "drag is added: AC 43.13-1B, par. 7-40d";
    const parts: Part[] = adapter
      ? [figurePart("share", "share of the torque that the wrench shows", lever.share, "")]
      : [];

    if (torque)
      return answered({
        result: { value: onWrench(torque), unit: unit.symbol },
        parts,
        formula,
        source: `the torque given; ${dragSource}${adapterSource}`,
        cautions: [...cautions, governs],
      });

    const limits = fromSet(table, { thread: thread ?? "", nut: nut ?? "" });
    const most = thread && nut ? mostTorque(thread, nut) : undefined;
    if (!limits?.lower || !limits.upper || !most)
      throw new RangeError("the table has a row for every thread it lists");
    return answered({
      parts: [
        figurePart("low", "set at least", onWrench(limits.lower), unit.symbol),
        figurePart("high", "set at most", onWrench(limits.upper), unit.symbol),
        figurePart("max", "never above, to line up a cotter hole", onWrench(most), unit.symbol),
        ...parts,
      ],
      formula,
      source: `${sourceText(limits.citation)}; ${dragSource}${adapterSource}`,
      cautions: [
        ...limits.notes.filter((note) => note.includes("estimated")),
        ...cautions,
        "the table is for oil-free cadmium-plated threads and bolts loaded mainly in shear, and only where the manufacturer gives no torque (par. 7-40i)",
        "a castle nut: begin to line up at the least torque; if no hole lines up, change washer or nut (par. 7-40f)",
        governs,
      ],
    });
  },
});

function threads(): readonly string[] {
  const parameter = ruleSets.get(table)?.parameters.find(({ name }) => name === "thread");
  return parameter?.kind === "choice" ? parameter.values : [];
}

function leverShare(
  wrench: Quantity | undefined,
  adapter: Quantity | undefined,
  angle: Quantity | undefined,
): { readonly share: Real } | InputProblem {
  if (!adapter) {
    if (angle)
      return {
        input: "angle",
        message: "`angle` says how an adapter stands, but `adapter` is missing",
        help: ["give `adapter` and `wrench`, or leave the angle out"],
      };
    return { share: one };
  }
  if (!wrench)
    return {
      input: "adapter",
      message: "`adapter` changes the lever, but `wrench` is missing",
      help: ['give the wrench\'s own length, as in `wrench="10 in"`'],
    };
  const degrees = angle ? inBaseUnits(angle) : new Fraction(0);
  if (degrees.gt(180))
    return {
      input: "angle",
      message: `\`${angle?.typed}\` is more than half a turn`,
      help: ["give the angle on its smaller side: 0 deg is straight out, 180 deg straight back"],
    };
  const length = wrench.amount;
  const effective = plus(length, times(convert(adapter, wrench.unit).amount, cosine(degrees)));
  if (effective.valueOf() <= 0)
    return {
      input: "adapter",
      message: "the adapter takes the whole lever away: L + A cos(angle) is not above zero",
      help: ["measure both lengths again"],
    };
  return { share: over(length, effective) };
}
