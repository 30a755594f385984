// British Standard BS 328, twist drills, metric sizes. The standard was not opened: encyclopaedias
// and tool sellers quote its rule and its 230 sizes "from 0.2 mm to 25.0 mm"; taken by the letter
// the rule runs on to 25.75 mm, and those last three are left out here.

import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";

/** Where the series of metric drills comes from. */
export const metricDrillsCitation: Citation = {
  document: "BS 328",
  place: "metric sizes from 0.2 to 25.0 mm, as quoted by others",
  status: "secondary",
};

const hundredths = (from: number, to: number, of: number, plus: readonly number[]) =>
  Array.from({ length: to - from + 1 }, (_, index) => (from + index) * of).flatMap((base) =>
    plus.map((more) => base + more),
  );

/** Metric drills in millimetres, smallest first. */
export const metricDrills: readonly Fraction[] = [
  ...hundredths(2, 9, 10, [0, 2, 5, 8]),
  ...hundredths(10, 29, 10, [0, 5]),
  ...hundredths(30, 139, 10, [0]),
  ...hundredths(14, 25, 100, [0, 25, 50, 75]).filter((size) => size <= 2500),
].map((size) => new Fraction(size, 100));
