/**
 * The colours of the paper. Each has a contrast of at least 4.5 to 1 on white, and nothing is
 * said by colour alone: the book may be printed in black.
 */
export const inks = {
  ink: "#16222e",
  /** Labels and what repeats. */
  second: "#46535f",
  /** Departures: late, amended, out of limits. */
  red: "#a3201a",
} as const;
export type Ink = keyof typeof inks;

/** Rules that only part things. */
export const faintRule = "#76828c";

/** The ground of heads and of what is carried. */
export const wash = "#eceeef";
