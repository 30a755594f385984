import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import type { Edition } from "../../../src/present/record/edition.ts";
import { writeExports } from "../../../src/write/exports/write-exports.ts";
import { eventfulAnalysis, eventfulBuild, privateWords } from "../../support/eventful-build.ts";
import { pdfText } from "../../support/pdf-text.ts";
import { filesIn, scratchFolder, textOf } from "../../support/scratch-folder.ts";
import { asOf, project } from "../../support/small-build.ts";

const analysis = eventfulAnalysis();

async function exported(edition: Edition, of = analysis, folder = scratchFolder()) {
  const made: string[] = [];
  const { files } = await writeExports(of, of.diagnostics, {
    folder,
    edition,
    paper: "A4",
    programVersion: "0.1.0",
    progress: (file) => made.push(file),
  });
  return { folder, files, made };
}

/** Everything a reader of the files can read, the words of the logbook included. */
async function readable(folder: string): Promise<string> {
  const texts = await Promise.all(
    filesIn(folder).map(async (name) =>
      name.endsWith(".pdf")
        ? (await pdfText(readFileSync(join(folder, name)))).join("\n")
        : textOf(folder, name),
    ),
  );
  return texts.join("\n");
}

test("writes every form of the record, and says which and how long", async () => {
  const { folder, files, made } = await exported("private");
  expect(filesIn(folder)).toEqual([
    "amendments.csv",
    "deviations.csv",
    "hours-logbook.pdf",
    "hours.csv",
    "hours.json",
    "hours.schema.json",
    "inspections.csv",
    "lots.csv",
    "open-items.csv",
    "photos.csv",
    "read-me.txt",
    "readings.csv",
    "record.json",
    "record.schema.json",
    "seals.csv",
  ]);
  expect(files.map(({ path }) => path.slice(folder.length + 1)).sort()).toEqual(filesIn(folder));
  for (const { path, bytes } of files) expect(readFileSync(path).length).toBe(bytes);
  expect(made).toContain("hours-logbook.pdf");
});

test("the same record gives the same bytes", async () => {
  const first = await exported("private");
  const second = await exported("private", analyze(eventfulBuild(), asOf("2026-03-25")));
  for (const name of filesIn(first.folder)) {
    expect(
      readFileSync(join(second.folder, name)).equals(readFileSync(join(first.folder, name))),
    ).toBe(true);
  }
});

test("the digests listed, and the one on the title sheet, are those of the files", async () => {
  const { folder } = await exported("private");
  const readMe = textOf(folder, "read-me.txt") ?? "";
  const digest = (name: string) =>
    createHash("sha256")
      .update(readFileSync(join(folder, name)))
      .digest("hex");
  for (const name of filesIn(folder).filter((each) => each !== "read-me.txt")) {
    expect(readMe).toContain(digest(name));
  }
  const [title = ""] = await pdfText(readFileSync(join(folder, "hours-logbook.pdf")));
  expect(title.replaceAll(" ", "")).toContain(digest("record.json"));
});

describe("editions", () => {
  test("the private one has everything and says that it is private", async () => {
    const text = await readable((await exported("private")).folder);
    for (const word of privateWords) expect(text).toContain(word);
    expect(text).toContain("Private edition: everything in the journal");
  });

  test("the public one has nothing private, keeps every hour, and says what it lacks", async () => {
    const { folder } = await exported("public");
    const text = await readable(folder);
    for (const word of privateWords) expect(text).not.toContain(word);
    expect(text).not.toMatch(/\bjon\b|J\.S\.|airframe mechanic/);
    expect(text).toContain("Public edition: an edition of the record, not the whole of it.");
    expect(text).toContain("1 name replaced by a role or initials");
    const { totals } = JSON.parse(textOf(folder, "record.json") ?? "");
    expect(totals.total).toEqual(analysis.hours.total);
    expect(totals.byPerson).toContainEqual({
      id: "person-2",
      ...analysis.hours.byPerson.get("jon"),
    });
  });

  test("shows initials for everybody when the project asks for them", async () => {
    const build = eventfulBuild();
    const shy = analyze({ ...build, project: project({ names: "initials" }) }, asOf("2026-03-25"));
    const text = await readable((await exported("public", shy)).folder);
    expect(text).toContain("A.S.");
    expect(text).not.toMatch(/Ada Sample|\bada\b/);
    const private_ = await readable((await exported("private", shy)).folder);
    expect(private_).toContain("Ada Sample");
  });

  test("a finding about something private keeps its code and not its words", async () => {
    const { folder } = await exported("public");
    const { findings } = JSON.parse(textOf(folder, "record.json") ?? "");
    expect(findings.length).toBe(analysis.diagnostics.length);
    const codes = (list: readonly { code: string }[]) => list.map(({ code }) => code).sort();
    expect(codes(findings)).toEqual(codes(analysis.diagnostics));
    expect(findings.filter((each: { source?: unknown }) => !each.source).length).toBeGreaterThan(0);
  });
});

test("every file that is read by people carries the caution", async () => {
  const { folder } = await exported("public");
  const caution = /The drawings, the manufacturer, local\s+rules and a licensed person govern/;
  expect(textOf(folder, "read-me.txt")).toMatch(caution);
  expect(textOf(folder, "record.json")).toMatch(caution);
  for (const sheet of await pdfText(readFileSync(join(folder, "hours-logbook.pdf")))) {
    expect(sheet).toMatch(caution);
  }
});

test("nothing exported says approved, airworthy or certified by the program", async () => {
  const text = await readable((await exported("private")).folder);
  expect(text).not.toMatch(/\bapproved\b|\bairworthy\b/i);
});
