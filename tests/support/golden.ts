import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { expect } from "vitest";

/** Whether golden files are to be written anew; never in CI. */
const updating = process.env.UPDATE === "1" && !process.env.CI;

/**
 * Compares text with a golden file. What differs is kept beside it as `NAME-changed`; run with
 * `UPDATE=1` to take it over once it has been read.
 */
export function expectGolden(file: string, text: string): void {
  const changed = file.replace(/(\.\w+)?$/, "-changed$1");
  if (updating) {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  const expected = existsSync(file) ? readFileSync(file, "utf8") : undefined;
  if (expected === text) rmSync(changed, { force: true });
  else {
    mkdirSync(dirname(changed), { recursive: true });
    writeFileSync(changed, text);
  }
  expect(text).toBe(expected);
}
