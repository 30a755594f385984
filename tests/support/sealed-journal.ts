import { cpSync, existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { sealCommand } from "../../src/cli/seal.ts";
import { recordedTerminal, runVerb } from "./recorded-terminal.ts";
import { temporaryJournal } from "./temporary-journal.ts";

const day = (date: string, lines = "") =>
  `---\ndate: ${date}\nsessions:\n  - { assembly: spar, step: W-1, who: [ada], from: "18:00", to: "20:00", kind: fabricate }\n${lines}---\nHoles.\n`;

/** The entries and photographs of a journal of three months. */
export const threeMonths: Readonly<Record<string, string | Uint8Array>> = {
  "days/2026-01-05.md": day("2026-01-05", "photos:\n  - { file: a.jpg, caption: One }\n"),
  "days/2026-01-20.md": day("2026-01-20"),
  "days/2026-02-10.md": day("2026-02-10", "photos:\n  - { file: b.jpg, caption: Two }\n"),
  "days/2026-03-14.md": day("2026-03-14"),
  "photos/a.jpg": new Uint8Array([1, 2, 3, 0, 255]),
  "photos/b.jpg": new Uint8Array(3_000_000).fill(7),
};

/** A journal of three months on disk, the first two sealed; removed after the test. */
export async function sealedJournal(
  months: readonly string[] = ["2026-01", "2026-02"],
  files: Readonly<Record<string, string | Uint8Array>> = threeMonths,
) {
  const { path, remove } = temporaryJournal(files);
  onTestFinished(remove);
  for (const month of months) {
    const { said } = await seal(path, month);
    if (said.status !== 0) throw new Error(said.out + said.err);
  }
  return {
    path,
    bytes: (name: string) => readFileSync(join(path, name)),
    write: (name: string, data: string | Uint8Array) => writeFileSync(join(path, name), data),
    remove: (name: string) => rmSync(join(path, name)),
    has: (name: string) => existsSync(join(path, name)),
    copy: (from: string, to: string) => cpSync(join(path, from), join(path, to)),
  };
}

/** Runs `witness seal MONTH` on a journal. */
export async function seal(path: string, month: string, ...args: readonly string[]) {
  const terminal = recordedTerminal();
  await runVerb(sealCommand(terminal, "9.9.9"), [month, "--journal", path, ...args]);
  return terminal;
}
