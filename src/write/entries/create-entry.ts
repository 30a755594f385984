import path from "node:path";
import { MachineProblem } from "../machine-problem.ts";
import { createFile, makeFolder } from "../output.ts";

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
