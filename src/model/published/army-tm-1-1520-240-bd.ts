// US Army TM 1-1520-240-BD, repairs in the field: adhesive systems. Read in a page-by-page copy.

import type { Citation } from "../citation.ts";

/** Where the schedule stands. */
export const adhesiveScheduleCitation: Citation = {
  document: "Army TM 1-1520-240-BD",
  place: "adhesive system 5",
  status: "read",
};

/** Curing times of that two-part adhesive. Nothing holds between the temperatures printed. */
export const adhesiveSchedule = [
  { fahrenheit: 70, hours: 24 },
  { fahrenheit: 104, hours: 11 },
  { fahrenheit: 170, hours: 2 },
] as const;
