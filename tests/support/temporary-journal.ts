import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { journalFolder } from "../../src/read/files.ts";
import { type ReadResult, readBuild } from "../../src/read/read-build.ts";

/** Registers that every small journal of the tests starts from. */
export const smallRegisters: Readonly<Record<string, string>> = {
  "project.yaml": `title: A small aeroplane
designation: SM-1
serial: "0001"
basis: amateur-built
zone: America/Denver
begun: 2026-01-01
judged-on: 2026-12-31
summary: A small journal for tests.
drawings:
  - { id: W-01, title: Wing spar, revision: B }
`,
  "people.yaml": `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: jon, name: Jon Reed, role: unpaid help }
`,
  "assemblies.yaml": `assemblies:
  - id: wing
    title: Wing
    parts:
      - id: spar
        title: Spar
        steps:
          - { id: W-1, title: Drill the spar, drawing: W-01 rev B, planned: "3:00", looks: [holes] }
          - { id: W-2, title: Rivet the spar }
  - id: tail
    title: Tail
`,
  "rules.yaml": `rules:
  - id: edge
    title: Edge distance
    authority: drawing
    source: { document: W-01, edition: rev B }
    sizes: { D: 1/8 in }
    at-least: 2 D
`,
  "instruments.yaml": `instruments:
  - { id: caliper, title: Caliper, resolution: 0.001 in }
`,
  "lots.yaml": `lots:
  - { id: sealant-1, title: Sealant, material: sealant, expires: 2026-06-30 }
`,
};

/** An entry of 14 March 2026 with these lines between `date` and the closing fence. */
export function entry(lines: string, prose = "Something was done.\n"): string {
  return `---\ndate: 2026-03-14\n${lines}${lines === "" || lines.endsWith("\n") ? "" : "\n"}---\n${prose}`;
}

/** Where the entry of 14 March 2026 stands. */
export const marchFile = "days/2026-03-14.md";

/**
 * Writes a journal called `journal` into a new temporary folder; `undefined` leaves a register
 * out. Call `remove` when done.
 */
export function temporaryJournal(
  files: Readonly<Record<string, string | Uint8Array | undefined>>,
): {
  path: string;
  remove: () => void;
} {
  const above = mkdtempSync(join(tmpdir(), "witness-test-"));
  const path = join(above, "journal");
  mkdirSync(join(path, "days"), { recursive: true });
  for (const [name, text] of Object.entries({ ...smallRegisters, ...files })) {
    if (text === undefined) continue;
    mkdirSync(dirname(join(path, name)), { recursive: true });
    writeFileSync(join(path, name), text);
  }
  return { path, remove: () => rmSync(above, { recursive: true, force: true }) };
}

/** Reads a journal made of the small registers and these files. */
export function readSmall(
  files: Readonly<Record<string, string | Uint8Array | undefined>>,
): ReadResult {
  const { path, remove } = temporaryJournal(files);
  try {
    const folder = journalFolder(path);
    if (!folder) throw new Error("the temporary journal is gone");
    return readBuild(folder);
  } finally {
    remove();
  }
}

/** `file:line:column code` of each, the journal's own name left out. */
export function places(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(
    ({ code, span }) =>
      `${span.file.replace(/^journal\//, "")}:${span.line}:${span.column} ${code}`,
  );
}

/** `file:line code` and the text that each points at, the journal's own name left out. */
export function pointed(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(({ code, span: { file, line, column, length, text } }) => {
    const meant = text.slice(column - 1, column - 1 + length);
    return `${file.replace(/^journal\//, "")}:${line} ${code} ${meant}`.trimEnd();
  });
}
