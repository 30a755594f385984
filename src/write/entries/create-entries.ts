import { randomBytes } from "node:crypto";
import path from "node:path";
import { MachineProblem } from "../machine-problem.ts";
import {
  filesBelow,
  flushFolder,
  kindOf,
  makeFolder,
  namesIn,
  removeFolder,
  renamePath,
  temporaryEnding,
  writeUnflushed,
} from "../output.ts";

/** An entry to be written. */
export interface NewEntry {
  /** Below the folder of the days: `2026/2026-03-14.md`. */
  readonly path: string;
  readonly text: string;
}

// Readers of a journal pass over names that begin with a dot.
const hidden = /^\.inbox-[0-9a-f]{12}\.witness-tmp$/;
const arrived = /^inbox-[0-9a-f]{12}$/;

/**
 * Writes several new entries, all of them or none, and never over another. They are written out
 * of sight, appear together by the renaming of one folder, and then go one by one where they
 * belong: an entry counts wherever below the days it stands. Killed anywhere, a journal has none
 * of them or all; the next call tidies what was left.
 *
 * @param days The folder of the days.
 * @throws MachineProblem when an entry is there already, or the disk refuses.
 */
export async function createEntries(days: string, entries: readonly NewEntry[]): Promise<void> {
  await settle(days);
  for (const entry of entries) await refuseTaken(path.join(days, entry.path));
  const name = `inbox-${randomBytes(6).toString("hex")}`;
  const aside = path.join(days, `.${name}${temporaryEnding}`);
  try {
    for (const entry of entries) await writeUnflushed(path.join(aside, entry.path), entry.text);
    await flushFolder(aside);
    await renamePath(aside, path.join(days, name));
  } catch (error) {
    await removeFolder(aside).catch(() => undefined);
    throw error;
  }
  try {
    await moveIn(days, name);
  } catch (error) {
    if (!(error instanceof MachineProblem)) throw error;
    throw new MachineProblem(error.kind, error.message, [
      ...error.help,
      `all entries are written; some of them still stand in \`${path.join(days, name)}\`, which does no harm`,
    ]);
  }
}

// What an earlier call left when it was killed: out of sight it never was, in sight it goes on.
async function settle(days: string): Promise<void> {
  for (const name of await namesIn(days)) {
    if (hidden.test(name)) await removeFolder(path.join(days, name));
    if (arrived.test(name)) await moveIn(days, name);
  }
}

async function moveIn(days: string, name: string): Promise<void> {
  const folder = path.join(days, name);
  for (const { path: entry } of await filesBelow(folder)) {
    const target = path.join(days, entry);
    await refuseTaken(target);
    await makeFolder(path.dirname(target));
    await renamePath(path.join(folder, entry), target);
  }
  await removeFolder(folder);
}

async function refuseTaken(file: string): Promise<void> {
  if ((await kindOf(file)) === "absent") return;
  throw new MachineProblem("in use", `\`${file}\` is there already`, [
    "add its sessions by hand, or take its rows out of the table",
  ]);
}
