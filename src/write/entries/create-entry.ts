import path from "node:path";
import { MachineProblem } from "../machine-problem.ts";
import { createFile, makeFolder, removeFile } from "../output.ts";

/**
 * Writes a new entry, whole or not at all, and never over another.
 * @throws MachineProblem when the file is there already, or the disk refuses.
 */
export async function createEntry(file: string, text: string): Promise<void> {
  await makeFolder(path.dirname(file));
  if (await createFile(file, text)) return;
  throw new MachineProblem("in use", `\`${file}\` is there already`, [
    "open it with any editor, or name another day with `--date`",
  ]);
}

/**
 * Writes several new entries, all of them or none: when one is refused, those written before it
 * are taken away again.
 * @throws MachineProblem as `createEntry`.
 */
export async function createEntries(
  entries: readonly { readonly file: string; readonly text: string }[],
): Promise<void> {
  const written: string[] = [];
  try {
    for (const { file, text } of entries) {
      await createEntry(file, text);
      written.push(file);
    }
  } catch (error) {
    for (const file of written.toReversed()) await removeFile(file);
    throw error;
  }
}
