import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exportCommand } from "../../src/cli/export.ts";
import { pdfText } from "../support/pdf-text.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { scratchFolder } from "../support/scratch-folder.ts";
import { entry, marchFile, smallRegisters } from "../support/temporary-journal.ts";

/** A shop with one entry, and what `witness export` says there. */
function exported(lines: string, ...args: readonly string[]) {
  return exportedFrom({}, lines, ...args);
}

/** The same with some registers replaced. */
async function exportedFrom(
  registers: Readonly<Record<string, string>>,
  lines: string,
  ...args: readonly string[]
) {
  const files = {
    ...smallRegisters,
    ...registers,
    [marchFile]: entry(lines),
    "photos/broken.jpg": "not a picture at all",
  };
  const folder = scratchFolder(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [`journal/${name}`, text])),
  );
  const terminal = recordedTerminal();
  const at = ["--journal", join(folder, "journal"), "--out", join(folder, "out")];
  await runVerb(exportCommand(terminal, "0.1.0"), [...at, ...args]);
  const book = join(folder, "out", "journal", "exports", "book.pdf");
  return { ...terminal.said, book };
}

const session = 'sessions:\n  - { assembly: spar, who: [ada], hours: "1:15", kind: fabricate }';

describe("the sections of the book", () => {
  test("are all of them unless told, and the line says which", async () => {
    const { out, book, status } = await exported(session);
    expect(status).toBe(0);
    expect(out).toMatch(
      / {2}book\.pdf .* Book of the build on \d+ pages of A4: cover, log, index, hours, /,
    );
    expect(existsSync(book)).toBe(true);
  });

  test("are those asked for", async () => {
    const { out, book } = await exported(session, "--book", "log,cover", "--paper", "letter");
    expect(out).toContain("Book of the build on 3 pages of Letter: cover, log.");
    expect((await pdfText(readFileSync(book))).length).toBe(3);
  });

  test("may be none: then there is no book", async () => {
    const { out, book } = await exported(session, "--book", "none");
    expect(out).not.toMatch(/ {2}book\.pdf/);
    expect(existsSync(book)).toBe(false);
  });

  test.each([
    ["cover,logs", "There is no section `logs`; did you mean `log`?"],
    ["cover,zebra", "There is no section `zebra`. Sections: cover, log, index,"],
    ["index", "The index gives pages of the log: name `log` as well."],
  ])("%s is refused", async (sections, words) => {
    await expect(exported(session, "--book", sections)).rejects.toThrow(words);
  });
});

describe("the packet of an alteration", () => {
  test("asked for by name for an aircraft that is built, says why there is none", async () => {
    await expect(exported(session, "--packet")).rejects.toThrow(
      "there is no alteration packet: project.yaml says `basis: amateur-built`",
    );
  });

  test("is not asked for together with a take-away", async () => {
    await expect(exported(session, "--packet", "--take-away")).rejects.toThrow("cannot be used");
  });

  test("asked for by name, comes alone", async () => {
    const altered = smallRegisters["project.yaml"]?.replace("amateur-built", "alteration") ?? "";
    const { out, status } = await exportedFrom({ "project.yaml": altered }, session, "--packet");
    expect(status).toBe(0);
    expect(out).toMatch(/alteration-packet\.pdf[\s\S]*alteration-packet\.txt/);
    expect(out).not.toMatch(/hours|book|record|read-me/);
  });
});

test("a photograph that cannot be read is said, and the book is there without it", async () => {
  const { err, book, status } = await exported(
    `${session}\nphotos:\n  - { file: broken.jpg, caption: Row A driven }`,
    "--book",
    "log",
  );
  expect(status).toBe(1);
  expect(err).toContain("finding[unreadable-photo]: photo `broken.jpg` is not a photograph");
  expect((await pdfText(readFileSync(book))).join(" ")).toContain("Row A driven");
});
