import Fraction from "fraction.js";
import type { Citation, SourceStatus } from "../citation.ts";

/** A twist drill of the number or letter series. */
export interface Drill {
  /** `1` to `80`, or `A` to `Z`. */
  readonly name: string;
  /** Nominal diameter in inches. */
  readonly inches: Fraction;
  /** How far this row was checked. */
  readonly status: SourceStatus;
}

/**
 * Where the sizes come from. The standard itself was not opened: rows marked `read` were seen
 * in a tool maker's tap-drill table or a service manual, `secondary` in sellers' tables, and
 * `memory` rows are the series as commonly known.
 */
export const drillSizesCitation: Citation = {
  document: "ASME B94.11M",
  place: "number and letter series",
  status: "memory",
};

type Row = readonly [name: string, inches: string, status: SourceStatus];

// biome-ignore format: one drill per line, to be compared with a table by eye
const numbers: readonly Row[] = [
  ["1", "0.2280", "secondary"],
  ["2", "0.2210", "secondary"],
  ["3", "0.2130", "read"],
  ["4", "0.2090", "secondary"],
  ["5", "0.2055", "memory"],
  ["6", "0.2040", "memory"],
  ["7", "0.2010", "read"],
  ["8", "0.1990", "memory"],
  ["9", "0.1960", "memory"],
  ["10", "0.1935", "secondary"],
  ["11", "0.1910", "memory"],
  ["12", "0.1890", "read"],
  ["13", "0.1850", "memory"],
  ["14", "0.1820", "read"],
  ["15", "0.1800", "memory"],
  ["16", "0.1770", "read"],
  ["17", "0.1730", "memory"],
  ["18", "0.1695", "memory"],
  ["19", "0.1660", "memory"],
  ["20", "0.1610", "memory"],
  ["21", "0.1590", "read"],
  ["22", "0.1570", "read"],
  ["23", "0.1540", "memory"],
  ["24", "0.1520", "memory"],
  ["25", "0.1495", "read"],
  ["26", "0.1470", "memory"],
  ["27", "0.1440", "memory"],
  ["28", "0.1405", "memory"],
  ["29", "0.1360", "read"],
  ["30", "0.1285", "read"],
  ["31", "0.1200", "memory"],
  ["32", "0.1160", "memory"],
  ["33", "0.1130", "read"],
  ["34", "0.1110", "memory"],
  ["35", "0.1100", "memory"],
  ["36", "0.1065", "read"],
  ["37", "0.1040", "read"],
  ["38", "0.1015", "read"],
  ["39", "0.0995", "memory"],
  ["40", "0.0980", "memory"],
  ["41", "0.0960", "read"],
  ["42", "0.0935", "read"],
  ["43", "0.0890", "read"],
  ["44", "0.0860", "memory"],
  ["45", "0.0820", "read"],
  ["46", "0.0810", "memory"],
  ["47", "0.0785", "read"],
  ["48", "0.0760", "memory"],
  ["49", "0.0730", "memory"],
  ["50", "0.0700", "read"],
  ["51", "0.0670", "memory"],
  ["52", "0.0635", "read"],
  ["53", "0.0595", "read"],
  ["54", "0.0550", "memory"],
  ["55", "0.0520", "memory"],
  ["56", "0.0465", "memory"],
  ["57", "0.0430", "memory"],
  ["58", "0.0420", "memory"],
  ["59", "0.0410", "memory"],
  ["60", "0.0400", "memory"],
  ["61", "0.0390", "memory"],
  ["62", "0.0380", "memory"],
  ["63", "0.0370", "memory"],
  ["64", "0.0360", "memory"],
  ["65", "0.0350", "memory"],
  ["66", "0.0330", "memory"],
  ["67", "0.0320", "memory"],
  ["68", "0.0310", "memory"],
  ["69", "0.0292", "memory"],
  ["70", "0.0280", "memory"],
  ["71", "0.0260", "memory"],
  ["72", "0.0250", "memory"],
  ["73", "0.0240", "memory"],
  ["74", "0.0225", "memory"],
  ["75", "0.0210", "memory"],
  ["76", "0.0200", "memory"],
  ["77", "0.0180", "memory"],
  ["78", "0.0160", "memory"],
  ["79", "0.0145", "memory"],
  ["80", "0.0135", "secondary"],
];

// biome-ignore format: one drill per line, to be compared with a table by eye
const letters: readonly Row[] = [
  ["A", "0.234", "secondary"],
  ["B", "0.238", "memory"],
  ["C", "0.242", "memory"],
  ["D", "0.246", "memory"],
  ["E", "0.250", "memory"],
  ["F", "0.257", "read"],
  ["G", "0.261", "memory"],
  ["H", "0.266", "memory"],
  ["I", "0.272", "read"],
  ["J", "0.277", "memory"],
  ["K", "0.281", "memory"],
  ["L", "0.290", "memory"],
  ["M", "0.295", "memory"],
  ["N", "0.302", "memory"],
  ["O", "0.316", "memory"],
  ["P", "0.323", "memory"],
  ["Q", "0.332", "read"],
  ["R", "0.339", "memory"],
  ["S", "0.348", "memory"],
  ["T", "0.358", "memory"],
  ["U", "0.368", "read"],
  ["V", "0.377", "memory"],
  ["W", "0.386", "memory"],
  ["X", "0.397", "memory"],
  ["Y", "0.404", "memory"],
  ["Z", "0.413", "secondary"],
];

const drillOf = ([name, inches, status]: Row): Drill => ({
  name,
  inches: new Fraction(inches),
  status,
});

/** Number drills, from No. 1 (largest) to No. 80. */
export const numberDrills: readonly Drill[] = numbers.map(drillOf);

/** Letter drills, from A (smallest) to Z. */
export const letterDrills: readonly Drill[] = letters.map(drillOf);

const byName = new Map([...numberDrills, ...letterDrills].map((drill) => [drill.name, drill]));

/**
 * The drill of a number or letter.
 * @param name `30` or `F`; small letters and leading zeros are not known.
 * @returns `undefined` for a name outside both series.
 */
export function drillNamed(name: string): Drill | undefined {
  return byName.get(name);
}
