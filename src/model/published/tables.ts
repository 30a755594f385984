import type Fraction from "fraction.js";
import { type Citation, citationText, type SourceStatus } from "../citation.ts";
import { exactText } from "../quantity.ts";
import { units } from "../unit.ts";
import { adhesiveSchedule, adhesiveScheduleCitation } from "./army-tm-1-1520-240-bd.ts";
import { type Drill, drillSizesCitation, letterDrills, numberDrills } from "./drill-sizes.ts";
import { metricDrills, metricDrillsCitation } from "./metric-drills.ts";
import {
  minimumFuelCitation,
  minimumGallonsPerHorsepower,
  minimumPoundsPerHorsepower,
} from "./minimum-fuel.ts";
import { negligibleChangeSource, negligibleChordPercent } from "./negligible-change.ts";
import { spliceColumns, spliceTables } from "./splice-tables.ts";
import {
  standardPerson,
  standardPoundsPerGallon,
  standardWeightsCitation,
} from "./standard-weights.ts";

/** Values that sums are made with and that no reading is judged by, as printed. */
export interface PublishedTable {
  /** Kebab case; the name of its page. */
  readonly name: string;
  readonly title: string;
  /** Document and place, in one line. */
  readonly source: string;
  /** How far the whole of it was checked; absent where each row says so itself. */
  readonly status?: SourceStatus;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

const cited = (citation: Citation) => ({
  source: citationText(citation),
  ...(citation.status ? { status: citation.status } : {}),
});

const drillSource = {
  read: "read in a tool maker's table or a manual",
  secondary: "in sellers' tables",
  memory: "not read in a source",
} as const;

const drillRow = ({ name, inches, status }: Drill): readonly string[] => [
  name,
  exactText(inches),
  exactText(inches.mul("25.4")),
  drillSource[status],
];

const drillHeads = ["Drill", "#in", "#mm", "Checked"];

const splices = Object.values(spliceTables).map(
  ({ name, sheets, citation, caution, rows }): PublishedTable => ({
    name: `rivets-per-inch-${name}`,
    title: `Rivets per inch of width, ${sheets}`,
    ...cited(citation),
    heads: ["Sheet, in", ...spliceColumns.map((column) => `#${column}`)],
    rows: rows.map(({ thickness, perInch }) => [
      thickness,
      ...spliceColumns.map((column) => perInch[column]?.toString() ?? "–"),
    ]),
    notes: [
      "2117-T4 (AD) protruding-head rivets, or AN-3 bolts, in a single-lap joint",
      "of these numbers: stringers 80 %, intermediate frames 60 %, single-lap sheet joints 75 %",
      ...(caution === undefined ? [] : [caution]),
    ],
  }),
);

/** Every table behind the sums, in the order shown. */
export const publishedTables: readonly PublishedTable[] = [
  ...splices,
  {
    name: "number-drills",
    title: "Number drills",
    source: citationText(drillSizesCitation),
    heads: drillHeads,
    rows: numberDrills.map(drillRow),
    notes: ["millimetres are the inches times 25.4, exactly"],
  },
  {
    name: "letter-drills",
    title: "Letter drills",
    source: citationText(drillSizesCitation),
    heads: drillHeads,
    rows: letterDrills.map(drillRow),
    notes: ["millimetres are the inches times 25.4, exactly"],
  },
  {
    name: "metric-drills",
    title: "Metric drills",
    ...cited(metricDrillsCitation),
    heads: ["From, mm", "To, mm", "Steps, mm"],
    rows: [
      ["0.2", "0.98", "every 0.1, and 0.02, 0.05 and 0.08 above it"],
      ["1.0", "2.95", "every 0.05"],
      ["3.0", "13.9", "every 0.1"],
      ["14.0", "25.0", "every 0.25"],
    ],
    notes: [`${metricDrills.length} sizes in all`],
  },
  {
    name: "adhesive-schedule",
    title: "Curing time of one two-part adhesive",
    ...cited(adhesiveScheduleCitation),
    heads: ["#°F", "#h"],
    rows: adhesiveSchedule.map(({ fahrenheit, hours }) => [String(fahrenheit), String(hours)]),
    notes: [
      "for that adhesive alone, and not between the temperatures printed",
      "it halves its time every 27 to 30 °F, not every 18 °F as a rule for epoxy has it",
    ],
  },
  {
    name: "standard-weights",
    title: "Standard weights",
    ...cited(standardWeightsCitation),
    heads: ["What", "#Weight"],
    rows: [
      ...Object.entries(standardPoundsPerGallon).map(([what, pounds]) => [
        what,
        `${exactText(pounds)} lb/gal`,
      ]),
      ["person", `${exactText(standardPerson)} lb`],
    ],
    notes: ["fuel weighed by hydrometer wins over its standard weight"],
  },
  {
    name: "minimum-fuel",
    title: "Fuel aboard for a check of the extremes",
    ...cited(minimumFuelCitation),
    heads: ["For each horsepower (METO)", "#Fuel"],
    rows: [
      ["by weight", `${minimumPoundsPerHorsepower.toFraction()} lb`],
      ["by volume", `${minimumGallonsPerHorsepower.toFraction()} gal`],
    ],
    notes: [],
  },
  {
    name: "negligible-change",
    title: "Changes of weight and balance that are negligible",
    ...cited(negligibleChangeSource),
    heads: ["Empty weight", "#Largest change"],
    rows: [
      ["below 5,000 lb", "1 lb"],
      ["5,000 to 50,000 lb", "2 lb"],
      ["above 50,000 lb", "5 lb"],
      [
        "movement of the centre of gravity, fixed wing",
        `below ${exactText(negligibleChordPercent)} % MAC`,
      ],
    ],
    notes: [],
  },
  {
    name: "unit-factors",
    title: "Factors of units",
    source:
      "NIST SP 811, appendix B.8, by a transcription of it; the products behind its seven digits rest on the yard and pound of 1959, standard gravity and the gallon of 231 cubic inches",
    status: "secondary",
    heads: ["Unit", "Measures", "Base units in one", "Source"],
    rows: units.map(({ symbol, dimension, factor, offset, source }) => [
      symbol,
      dimension,
      `${factorText(factor)}${offset.equals(0) ? "" : `, + ${factorText(offset)}`}`,
      source,
    ]),
    notes: [
      "base units: metre, square and cubic metre, kilogram, kilogram per cubic metre, newton, newton metre, pascal, degree of angle, kelvin, second, one",
    ],
  },
];

// Exact where the decimal ends within a line; otherwise cut where nobody reads on.
function factorText(factor: Fraction): string {
  const text = exactText(factor);
  return text.includes("/") || text.length > 24
    ? `about ${factor.valueOf().toPrecision(13)}`
    : text;
}
