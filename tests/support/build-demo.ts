import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { oneRunFolder } from "./one-run.ts";
import { projectFolder, quietNpm, ran, type Witnessed } from "./witness.ts";

/**
 * What came of `npm run demo` in this run of the tests. It is run once, by whoever asks first;
 * everybody else waits. Site and exports stand in `out/site-demo` afterwards.
 */
export async function demoRun(): Promise<Witnessed> {
  const folder = oneRunFolder();
  const result = join(folder, "result.json");
  if (isFirst(folder)) {
    const witnessed = await ran("npm", ["run", "-s", "demo"], {
      cwd: projectFolder,
      env: quietNpm,
      longest: 590_000,
    });
    writeFileSync(`${result}.next`, JSON.stringify(witnessed));
    renameSync(`${result}.next`, result);
  }
  while (!existsSync(result)) await pause(100);
  return JSON.parse(readFileSync(result, "utf8")) as Witnessed;
}

/** The same, for tests that need what it makes. @throws Error with its words when it failed. */
export async function demoBuilt(): Promise<void> {
  const { status, stdout, stderr } = await demoRun();
  if (status !== 0) throw new Error(`npm run demo: exit ${status}\n${stdout}${stderr}`);
}

// Only one process can make the folder.
function isFirst(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch {
    return false;
  }
}
