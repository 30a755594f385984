// FAA AC 43.13-1B, 8 Sep 1998, change 1 of 27 Sep 2001: which rivet, bolt, hole or cable may be
// used at all. Read in a page-by-page copy. Torque, bends, heads and safety wire of the same
// circular stand in ac-43-13-1b.ts.

import type { Citation } from "../citation.ts";
import { compareQuantities, exactText, quantityOf } from "../quantity.ts";
import { fixedBound, inUnit, multipleBound, type RuleSet, ruleSet } from "../rule-set.ts";
import { unitOf } from "../unit.ts";
import { letterDrills } from "./drill-sizes.ts";

const circular = (place: string): Citation => ({
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place,
  status: "read",
});

const inch = unitOf("in");

const spliceRivet = ruleSet({
  name: "rivet-diameter-splice-ac43-13-1b",
  title: "Rivet diameter chosen for a splice, about 3 t",
  authority: "published",
  citation: circular("par. 4-58g(2)(a)"),
  parameters: [{ kind: "size", name: "t", help: "the thickness of the sheet" }],
  advice: ["a size to start from, without limits: the next rivet there is, is taken"],
  row: () => ({ nominal: multipleBound("3", "t") }),
});

const stringerRivetByLeg = ruleSet({
  name: "rivet-diameter-stringer-thickness",
  title: "Rivet diameter in a stringer: from 2 to 3 times the thickness of its leg",
  authority: "published",
  citation: circular("par. 4-58l"),
  parameters: [{ kind: "size", name: "t", help: "the thickness of the stringer's leg" }],
  advice: ["never more than a quarter of the leg's width: `rivet-diameter-stringer-width`"],
  row: () => ({ lower: multipleBound("2", "t"), upper: multipleBound("3", "t") }),
});

const stringerRivetByWidth = ruleSet({
  name: "rivet-diameter-stringer-width",
  title: "Rivet diameter in a stringer: at most a quarter of the width of its leg",
  authority: "published",
  citation: circular("par. 4-58l"),
  parameters: [{ kind: "size", name: "W", help: "the width of the stringer's leg" }],
  advice: ["the thickness of the leg has a say as well: `rivet-diameter-stringer-thickness`"],
  row: () => ({ upper: multipleBound("0.25", "W") }),
});

const tubeRivet = ruleSet({
  name: "rivet-diameter-tube",
  title: "Rivet through a hollow tube: at least an eighth of the tube's outside diameter",
  authority: "published",
  citation: circular("par. 4-58a"),
  parameters: [{ kind: "size", name: "OD", help: "the outside diameter of the outer tube" }],
  advice: [
    "loaded in shear, such a rivet is hammered only enough for a small head: no full roundhead (same paragraph)",
  ],
  row: () => ({ lower: multipleBound("0.125", "OD") }),
});

const mostReplaced: Readonly<Record<string, string>> = { "2017": "3/16", "2024": "5/32" };

const softerRivet = ruleSet({
  name: "rivet-2117-in-place-of-2017-or-2024",
  title: "2117 rivet in place of a harder one, 1/32 in larger",
  authority: "published",
  citation: circular("par. 4-57b"),
  parameters: [
    {
      kind: "choice",
      name: "replaces",
      values: Object.keys(mostReplaced),
      help: "the alloy of the rivet that it replaces",
    },
    { kind: "size", name: "D", help: "the diameter of the rivet that it replaces" },
  ],
  advice: [
    "for general repair",
    "the larger hole keeps the least edge distance and spacing (same paragraph)",
  ],
  row: ({ choice, size }) => {
    const most = mostReplaced[choice("replaces")] ?? "";
    const replaced = size("D");
    if (compareQuantities(replaced, inUnit(most, "in")) <= 0) {
      return {
        lower: {
          typed: "D + 1/32 in",
          expression: {
            kind: "sum",
            left: { kind: "size", name: "D" },
            right: { kind: "quantity", quantity: inUnit("1/32", "in") },
          },
        },
        notes: [`for ${choice("replaces")} up to ${most} in`],
      };
    }
    return {
      ok: false,
      parameter: "D",
      message: `the paragraph allows it for ${choice("replaces")} up to \`${most} in\`, and \`D\` is \`${replaced.typed}\``,
      help: ["ask who answers for the design"],
    };
  },
});

const letterStatus = {
  read: "",
  secondary: "; its size as quoted by others",
  memory: "; its size was not read in a source",
} as const;

const boltHole = ruleSet({
  name: "bolt-hole-ac43-13-1b",
  title: "Hole for a bolt: at most the first lettered drill larger than the bolt",
  authority: "published",
  citation: circular("par. 7-39"),
  parameters: [{ kind: "size", name: "D", help: "the bolt's nominal diameter" }],
  advice: [
    "generally permissible, except for light-drive-fit AN hex bolts, NAS close-tolerance bolts and AN clevis bolts (same paragraph)",
    "a light drive fit is an interference of about 0.0006 in on a 5/8 in bolt (same paragraph)",
  ],
  row: ({ size }) => {
    const bolt = size("D");
    const larger = letterDrills.findIndex(
      ({ inches }) => compareQuantities(quantityOf(inches, inch), bolt) > 0,
    );
    const drill = letterDrills[larger];
    // A bolt far below drill A would be given a hole for another bolt.
    if (!drill || larger === 0) {
      return {
        ok: false,
        parameter: "D",
        message: `no lettered drill is the next one to a bolt of \`${bolt.typed}\``,
        help: ["the letters run from A, `0.234 in`, to Z, `0.413 in`; the drawing says which hole"],
      };
    }
    return {
      upper: fixedBound(exactText(drill.inches), "in"),
      notes: [`letter ${drill.name} drill${letterStatus[drill.status]}`],
    };
  },
});

const smallestBolt = ruleSet({
  name: "bolt-size-ac43-13-1b",
  title: "Bolts in primary structure: no steel one below 10-32, no aluminium one below 1/4 in",
  authority: "published",
  citation: circular("par. 7-41"),
  parameters: [
    { kind: "choice", name: "bolt", values: ["steel", "aluminium alloy"], help: "its material" },
  ],
  row: ({ choice }) =>
    choice("bolt") === "steel"
      ? {
          lower: fixedBound("0.190", "in"),
          notes: ["10-32: the 0.190 in is that of the thread's standard, not of the paragraph"],
        }
      : { lower: fixedBound("1/4", "in") },
});

const threadsShowing = ruleSet({
  name: "threads-showing-ac43-13-1b",
  title: "Threads showing through a self-locking or plain nut, at least 1",
  authority: "published",
  citation: circular("par. 7-37"),
  parameters: [],
  advice: ["record it as in `2 threads`"],
  row: () => ({ lower: fixedBound("1", "count") }),
});

const copperSleeve = ruleSet({
  name: "cable-copper-sleeve",
  title: "Cable spliced with oval copper sleeves: at most 3/8 in",
  authority: "published",
  citation: circular("par. 7-148b"),
  parameters: [],
  advice: [
    "only copper sleeves: other materials need an engineering approval (same paragraph)",
    "presses on a thimble eye: the middle one first, then the one next to the thimble, then the farthest (par. 7-148c)",
    "a lap splice usually takes two sleeves for the full strength of the cable (par. 7-148d)",
  ],
  row: () => ({ upper: fixedBound("3/8", "in") }),
});

/** Sets of AC 43.13-1B on sizes: rivets by what they go through, bolts and their holes, cables. */
export const ac4313SizeRuleSets: readonly RuleSet[] = [
  spliceRivet,
  stringerRivetByLeg,
  stringerRivetByWidth,
  tubeRivet,
  softerRivet,
  boltHole,
  smallestBolt,
  threadsShowing,
  copperSleeve,
];
