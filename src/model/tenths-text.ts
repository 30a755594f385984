import type { Tenths } from "./portion.ts";

/** Tenths as points: `0.3`, `12.0`; exact. */
export function tenthsText(tenths: Tenths): string {
  const size = Math.abs(tenths);
  return `${tenths < 0 ? "\u2212" : ""}${Math.trunc(size / 10)}.${size % 10}`;
}
