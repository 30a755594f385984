import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";

/** A new temporary folder with these files, removed after the test. */
export function scratchFolder(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), "witness-scratch-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  addFiles(folder, files);
  return folder;
}

/** Adds files to a folder, making the folders between. */
export function addFiles(
  folder: string,
  files: Readonly<Record<string, string | Uint8Array>>,
): void {
  for (const [name, data] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), data);
  }
}

/** Every file below a folder, sorted, with `/` between parts. */
export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
}

/** The text of a file, or undefined. */
export function textOf(folder: string, name: string): string | undefined {
  try {
    return readFileSync(join(folder, name), "utf8");
  } catch {
    return undefined;
  }
}
