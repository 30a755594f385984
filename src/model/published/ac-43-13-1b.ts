// FAA AC 43.13-1B, Acceptable Methods, Techniques, and Practices: Aircraft Inspection and
// Repair, 8 Sep 1998, change 1 of 27 Sep 2001. Read in a page-by-page copy; what comes from
// quotations by others is marked `secondary` where it stands.

import type { Citation, SourceStatus } from "../citation.ts";
import type { Quantity } from "../quantity.ts";
import { fixedBound, inUnit, multipleBound, type RuleSet, ruleSet } from "../rule-set.ts";

const circular = (place: string, status: SourceStatus): Citation => ({
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place,
  status,
});

type TorqueRow = readonly [
  thread: string,
  tension: readonly [lower: string, upper: string],
  shear: readonly [lower: string, upper: string],
  mostTension: string,
  mostShear: string,
  /** The shear values are printed as "estimated corresponding values". */
  estimated?: "estimated",
];

// Table 7-1, recommended torque values in inch-pounds, oil-free cadmium-plated threads.
// biome-ignore format: laid out as the table is printed
const torqueRows: readonly TorqueRow[] = [
  // fine thread series
  ["8-36",     ["12", "15"],      ["7", "9"],       "20",    "12"],
  ["10-32",    ["20", "25"],      ["12", "15"],     "40",    "25"],
  ["1/4-28",   ["50", "70"],      ["30", "40"],     "100",   "60"],
  ["5/16-24",  ["100", "140"],    ["60", "85"],     "225",   "140"],
  ["3/8-24",   ["160", "190"],    ["95", "110"],    "390",   "240"],
  ["7/16-20",  ["450", "500"],    ["270", "300"],   "840",   "500"],
  ["1/2-20",   ["480", "690"],    ["290", "410"],   "1100",  "660"],
  ["9/16-18",  ["800", "1000"],   ["480", "600"],   "1600",  "960"],
  ["5/8-18",   ["1100", "1300"],  ["600", "780"],   "2400",  "1400"],
  ["3/4-16",   ["2300", "2500"],  ["1300", "1500"], "5000",  "3000"],
  ["7/8-14",   ["2500", "3000"],  ["1500", "1800"], "7000",  "4200"],
  ["1-14",     ["3700", "5500"],  ["2200", "3300"], "10000", "6000",  "estimated"],
  ["1-1/8-12", ["5000", "7000"],  ["3000", "4200"], "15000", "9000",  "estimated"],
  ["1-1/4-12", ["9000", "11000"], ["5400", "6600"], "25000", "15000", "estimated"],
  // coarse thread series
  ["8-32",     ["12", "15"],      ["7", "9"],       "20",    "12"],
  ["10-24",    ["20", "25"],      ["12", "15"],     "35",    "21"],
  ["1/4-20",   ["40", "50"],      ["25", "30"],     "75",    "45"],
  ["5/16-18",  ["80", "90"],      ["48", "55"],     "160",   "100"],
  ["3/8-16",   ["160", "185"],    ["95", "100"],    "275",   "170"],
  ["7/16-14",  ["235", "255"],    ["140", "155"],   "475",   "280"],
  ["1/2-13",   ["400", "480"],    ["240", "290"],   "880",   "520"],
  ["9/16-12",  ["500", "700"],    ["300", "420"],   "1100",  "650"],
  ["5/8-11",   ["700", "900"],    ["420", "540"],   "1500",  "900"],
  ["3/4-10",   ["1150", "1600"],  ["700", "950"],   "2500",  "1500"],
  ["7/8-9",    ["2200", "3000"],  ["1300", "1800"], "4600",  "2700"],
];

const torques = new Map(torqueRows.map((row) => [row[0], row]));

const torque = ruleSet({
  name: "ac43-13-1b-table-7-1",
  title: "Recommended torque for nuts and bolts",
  authority: "published",
  citation: circular("table 7-1", "read"),
  parameters: [
    {
      kind: "choice",
      name: "thread",
      values: [...torques.keys()],
      help: "size and threads per inch",
    },
    {
      kind: "choice",
      name: "nut",
      values: ["tension", "shear"],
      help: "the kind of nut (tension as MS20365 or AN310, shear as MS20364 or AN320)",
    },
  ],
  addsDrag: true,
  advice: [
    "the table is without friction drag: what is recorded as `drag:` is added to both ends (par. 7-40d)",
    "use the table only when the manufacturer gives no specific torque (par. 7-40i)",
    "the table is for oil-free cadmium-plated threads, and for bolts loaded mainly in shear",
  ],
  row: ({ choice }) => {
    const row = torques.get(choice("thread"));
    if (!row) throw new RangeError("the table has a row for every thread it lists");
    const [, tension, shear, mostTension, mostShear, estimated] = row;
    const isTension = choice("nut") === "tension";
    const [lower, upper] = isTension ? tension : shear;
    const most = isTension ? mostTension : mostShear;
    return {
      lower: fixedBound(lower, "lbf·in"),
      upper: fixedBound(upper, "lbf·in"),
      notes: [
        `maximum allowable tightening torque ${most} lbf·in, before drag is added`,
        ...(estimated && !isTension ? ["printed as an estimated corresponding value"] : []),
      ],
    };
  },
});

/**
 * Maximum allowable tightening torque of table 7-1, before drag is added.
 * @param nut `tension` or `shear`.
 * @returns `undefined` for a thread that the table does not list.
 */
export function mostTorque(thread: string, nut: "tension" | "shear"): Quantity | undefined {
  const row = torques.get(thread);
  return row && inUnit(nut === "tension" ? row[3] : row[4], "lbf·in");
}

// Table 4-6, recommended radii for 90-degree bends in aluminium alloys, as multiples of the
// sheet thickness. In the copy three labels stood apart from their rows (6061-0, 7075-0,
// 7075-T6); they were put back by the usual order of the table.
const bendThicknesses: readonly string[] = ["0.016", "0.032", "0.064", "0.128", "0.182", "0.258"];

// biome-ignore format: laid out as the table is printed
const bendRows: Readonly<Record<string, readonly string[]>> = {
  "2024-0":   ["0",     "0-1",     "0-1",     "0-1",     "0-1",     "0-1"],
  "2024-T3":  ["1.5-3", "2-4",     "3-5",     "4-6",     "4-6",     "5-7"],
  "2024-T61": ["2-4",   "3-5",     "3-5",     "4-6",     "5-7",     "6-10"],
  "5052-0":   ["0",     "0",       "0-1",     "0-1",     "0-1",     "0-1"],
  "5052-H32": ["0",     "0",       "0.5-1",   "0.5-1.5", "0.5-1.5", "0.5-1.5"],
  "5052-H34": ["0",     "0",       "0.5-1.5", "1.5-2.5", "1.5-2.5", "2-3"],
  "5052-H36": ["0-1",   "0.5-1.5", "1-2",     "1.5-3",   "2-4",     "2-4"],
  "5052-H38": ["0.5-1.5", "1-2",   "1.5-3",   "2-4",     "3-5",     "4-6"],
  "6061-0":   ["0",     "0-1",     "0-1",     "0-1",     "0-1",     "0-1"],
  "6061-T4":  ["0-1",   "0-1",     "0.5-1.5", "1-2",     "1.5-3",   "2.5-4"],
  "6061-T6":  ["0-1",   "0.5-1.5", "1-2",     "1.5-3",   "2-4",     "3-4"],
  "7075-0":   ["0",     "0-1",     "0-1",     "0.5-1.5", "1-2",     "1.5-3"],
  "7075-T6":  ["2-4",   "3-5",     "4-6",     "5-7",     "5-7",     "6-10"],
};

const bendRadius = ruleSet({
  name: "bend-radius-ac43-13-1b-table-4-6",
  title: "Bend radius of aluminium alloy sheet, 90-degree bends",
  authority: "published",
  citation: circular("table 4-6", "read"),
  parameters: [
    { kind: "choice", name: "alloy", values: Object.keys(bendRows), help: "alloy and temper" },
    {
      kind: "choice",
      name: "column",
      values: bendThicknesses,
      help: "the printed thickness in inches that is taken for the sheet; the table calls them approximate",
    },
    {
      kind: "choice",
      name: "end",
      values: ["low", "high"],
      help: "which end of the printed range is taken as the smallest radius",
    },
    { kind: "size", name: "t", help: "the thickness of the sheet" },
  ],
  advice: [
    "alclad may take slightly smaller radii than the bare alloy (table 4-6, footnote)",
    "2024-T3 takes appreciably smaller radii right after quenching (table 4-6, footnote)",
  ],
  row: ({ choice }) => {
    const column = bendThicknesses.indexOf(choice("column"));
    const range = bendRows[choice("alloy")]?.[column];
    if (range === undefined) throw new RangeError("the table has every column for every alloy");
    const [low = "0", high = low] = range.split("-");
    return {
      lower: multipleBound(choice("end") === "low" ? low : high, "t"),
      notes: [`the table prints ${range} t at ${choice("column")} in`],
    };
  },
});

const edgeDistance = ruleSet({
  name: "edge-distance-2d-ac-43-13-1b",
  title: "Edge distance of rivets, single row, at least 2 D",
  authority: "published",
  citation: circular("par. 4-57c and figure 4-5, as quoted by others", "secondary"),
  parameters: [{ kind: "size", name: "D", help: "the rivet's shank diameter" }],
  advice: ["measure to the centre of the rivet"],
  row: () => ({ lower: multipleBound("2", "D") }),
});

const drivenHead = ruleSet({
  name: "driven-head-1.5d",
  title: "Driven head of a rivet: 1.5 D across, 0.5 D high",
  authority: "published",
  citation: circular("figure 4-5, as quoted by others", "secondary"),
  parameters: [
    { kind: "choice", name: "of", values: ["diameter", "height"], help: "what was measured" },
    { kind: "size", name: "D", help: "the rivet's shank diameter" },
  ],
  advice: ["the MIL sizes of `driven-head-mil` are smaller, and set a greatest height as well"],
  row: ({ choice }) => ({ lower: multipleBound(choice("of") === "diameter" ? "1.5" : "0.5", "D") }),
});

const turnbuckle = ruleSet({
  name: "turnbuckle-threads",
  title: "Threads showing on either side of a turnbuckle barrel, at most 3",
  authority: "published",
  citation: circular("par. 7-179, 7-181b and 7-182", "read"),
  parameters: [],
  advice: ["count after adjusting, on each side of the barrel, and record it as in `2 threads`"],
  row: () => ({ upper: fixedBound("3", "count") }),
});

const turnbuckleWraps = ruleSet({
  name: "turnbuckle-wire-turns",
  title: "Turns of safety wire around the shank at each end of a turnbuckle, at least 4",
  authority: "published",
  citation: circular("par. 7-180c and d, 7-181b and 7-182", "read"),
  parameters: [],
  advice: [
    "double-wrap is the preferred method (par. 7-180)",
    "never use safety wire twice (par. 7-179)",
  ],
  row: () => ({ lower: fixedBound("4", "count") }),
});

// Wire diameters in inches by cable and wrap, in the order of the table's own columns. The copy
// prints the columns as lists; rows were put side by side by their order.
const safetyWireCables = ["1/16", "3/32", "1/8", "5/32 and greater"] as const;
const safetyWires: Readonly<
  Record<
    (typeof safetyWireCables)[number],
    Readonly<Record<"single" | "double", readonly string[]>>
  >
> = {
  "1/16": { single: ["0.040 copper or brass"], double: [] },
  "3/32": { single: ["0.040 copper or brass"], double: [] },
  "1/8": {
    single: ["0.040 stainless steel or Monel", "0.057 copper or brass"],
    double: ["0.040 copper or brass"],
  },
  "5/32 and greater": {
    single: ["0.057 stainless steel or Monel"],
    double: ["0.0512 copper or brass", "0.040 stainless steel or Monel"],
  },
};

const turnbuckleWire = ruleSet({
  name: "turnbuckle-wire",
  title: "Safety wire for a turnbuckle, by cable, wrap and material",
  authority: "published",
  citation: circular("table 7-8", "read"),
  parameters: [
    {
      kind: "choice",
      name: "cable",
      values: safetyWireCables,
      help: "the cable's diameter in inches",
    },
    { kind: "choice", name: "wrap", values: ["single", "double"], help: "the way of wrapping" },
    {
      kind: "choice",
      name: "material",
      values: ["copper or brass", "stainless steel or Monel"],
      help: "the wire, annealed",
    },
  ],
  advice: [
    "a guide to the wire, not a limit: the diameter printed is the one to use",
    "for most rows the table also takes galvanised or tinned steel or soft iron wire",
  ],
  row: ({ choice }) => {
    const cable = safetyWireCables.find((each) => each === choice("cable")) ?? "1/16";
    const wrap = choice("wrap") === "single" ? "single" : "double";
    const printed = safetyWires[cable][wrap].find((wire) => wire.endsWith(choice("material")));
    if (printed) return { nominal: fixedBound(printed.split(" ", 1)[0] ?? "", "in") };
    return {
      ok: false,
      parameter: "wrap",
      message: `the table has no ${wrap} wrap of ${choice("material")} for \`${cable}\` cable`,
      help: [
        `it has: ${Object.entries(safetyWires[cable])
          .flatMap(([way, wires]) => wires.map((wire) => `${way}, ${wire}`))
          .join("; ")}`,
      ],
    };
  },
});

const pigtail = ruleSet({
  name: "safety-wire-pigtail",
  title: "Pigtail of safety wire: 4 to 6 full turns, 1/2 to 5/8 in long",
  authority: "published",
  citation: circular("par. 7-124 and 7-125", "read"),
  parameters: [
    { kind: "choice", name: "of", values: ["turns", "length"], help: "what is measured" },
  ],
  row: ({ choice }) =>
    choice("of") === "turns"
      ? { lower: fixedBound("4", "count"), upper: fixedBound("6", "count") }
      : { lower: fixedBound("1/2", "in"), upper: fixedBound("5/8", "in") },
});

/** Sets of AC 43.13-1B. */
export const ac4313RuleSets: readonly RuleSet[] = [
  torque,
  bendRadius,
  edgeDistance,
  drivenHead,
  turnbuckle,
  turnbuckleWraps,
  turnbuckleWire,
  pigtail,
];
