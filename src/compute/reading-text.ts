import type { Reading } from "../model/measurement.ts";

/** A reading as messages name it: `shop head diameter at rib 4 row A`. */
export function readingText({ what, at }: Reading): string {
  return at === undefined ? what : `${what} at ${at}`;
}
