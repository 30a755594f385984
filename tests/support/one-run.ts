import { rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * Gives this run of the tests a folder of its own, which all its processes know: what is done
 * once for a run, such as building the sample journal, is done by whoever needs it first.
 */
export default function setup(): () => void {
  process.env.WITNESS_TEST_RUN = `${process.pid}-${Date.now()}`;
  return () => rmSync(oneRunFolder(), { recursive: true, force: true });
}

/** The folder of this run; made by who comes first. */
export function oneRunFolder(): string {
  const run = process.env.WITNESS_TEST_RUN;
  if (run === undefined) throw new Error("this run of the tests has no name: is `setup` missing?");
  return join(tmpdir(), `witness-run-${run}`);
}
