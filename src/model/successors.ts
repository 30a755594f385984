import type { Reading } from "./measurement.ts";

/**
 * The newest reading that replaces each reading which is replaced, by the id of the replaced
 * one. Only a reading that comes later replaces another.
 * @param readings By date, then in the order typed.
 */
export function successorsOf(readings: readonly Reading[]): ReadonlyMap<string, Reading> {
  const earlier = new Set<string>();
  const successors = new Map<string, Reading>();
  for (const reading of readings) {
    const replaced = reading.supersedes;
    if (replaced !== undefined && earlier.has(replaced)) successors.set(replaced, reading);
    earlier.add(reading.id);
  }
  return successors;
}

/**
 * The reading that counts now where one is named: itself, or the end of the line of readings
 * that replace it.
 */
export function newestOf(reading: Reading, successors: ReadonlyMap<string, Reading>): Reading {
  let newest = reading;
  // A successor always comes later, so the line has an end.
  for (let next = successors.get(newest.id); next; next = successors.get(newest.id)) newest = next;
  return newest;
}
