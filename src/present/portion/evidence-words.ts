import type { TaskClaim, TaskState } from "../../compute/ledgers/portion.ts";

/** What the evidence of a claimed task lacks, in words; empty where every part is there. */
export function lacksOf({ gaps, missingKinds }: TaskState): string[] {
  return [
    ...gaps,
    ...missingKinds.map((kind) =>
      kind === "assemble" ? "no assembling by a builder" : "no fabricating by a builder",
    ),
  ];
}

/** What the entry of one day lacks as evidence, in the same words. @param claims Of that day. */
export function entryLacks(claims: readonly TaskClaim[]): string[] {
  const own = claims.filter(({ amateur }) => amateur);
  const judged = own.length > 0 ? own : claims;
  return [
    ...(own.length > 0 ? [] : ["no builder at it"]),
    ...(judged.some(({ placed }) => placed) ? [] : ["no place"]),
    ...(judged.some(({ told }) => told) ? [] : ["no text"]),
    ...(judged.some(({ photos }) => photos > 0) ? [] : ["no photograph"]),
  ];
}

/**
 * The tasks that evidence is asked of, the ones with gaps first, then those that contradict
 * something, each in the order of the list. A task that nobody claims is among them only when
 * something contradicts it.
 */
export function evidenceOrder(states: Iterable<TaskState>): TaskState[] {
  const asked = [...states].filter(({ claimed, conflicts }) => claimed || conflicts.length > 0);
  const rank = (state: TaskState) =>
    lacksOf(state).length > 0 ? 0 : state.conflicts.length > 0 ? 1 : 2;
  return asked.toSorted((a, b) => rank(a) - rank(b));
}
