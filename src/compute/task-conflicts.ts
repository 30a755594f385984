import type { SplitEntry, Task } from "../model/portion.ts";
import type { TaskClaim, TaskHelp } from "./ledgers/portion.ts";

/** Ways in which the division of a task contradicts its entries, the help, or itself. */
export const conflictKinds = [
  "paid help at work without a share",
  "paid share differs from the help received",
  "credit for a salvaged assembly",
  "kit's share without a source",
  "not applicable but worked on",
] as const;
export type TaskConflict = (typeof conflictKinds)[number];

/** What is looked at of a task. */
export interface DividedTask {
  readonly task: Pick<Task, "listed">;
  readonly current: SplitEntry | undefined;
  readonly claims: readonly Pick<TaskClaim, "paid">[];
  readonly help: TaskHelp;
}

/**
 * What contradicts the newest division of a task, in the order of the kinds. A task that is not
 * divided yet contradicts nothing. Whether the kit's share rests on something is asked wherever
 * it is not the one that the list gives.
 */
export function taskConflicts({ task, current, claims, help }: DividedTask): TaskConflict[] {
  if (!current) return [];
  const { split, salvage, source } = current;
  if (!split) {
    return claims.length > 0 || help.rows.length > 0 ? ["not applicable but worked on"] : [];
  }
  return [
    ...(split.paid === 0 && claims.some(({ paid }) => paid)
      ? (["paid help at work without a share"] as const)
      : []),
    ...(split.paid === help.tenths ? [] : (["paid share differs from the help received"] as const)),
    ...(salvage && split.assembly + split.fabrication > 0
      ? (["credit for a salvaged assembly"] as const)
      : []),
    ...(!salvage && source === undefined && split.kit !== (task.listed ?? 0)
      ? (["kit's share without a source"] as const)
      : []),
  ];
}
