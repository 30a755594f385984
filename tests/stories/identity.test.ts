// Builder, designation, serial and registration are the same on whatever comes out.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { analyze } from "../../src/compute/analyze.ts";
import { bookSections } from "../../src/present/book/book-sections.ts";
import { writeExports } from "../../src/write/exports/write-exports.ts";
import { eventfulAnalysis } from "../support/eventful-build.ts";
import { identityFaults } from "../support/identity-crawl.ts";
import { listHead, splitsOf, taskList } from "../support/portioned.ts";
import { renderedSite } from "../support/rendered-site.ts";
import { filesIn, scratchFolder } from "../support/scratch-folder.ts";
import { asOf } from "../support/small-build.ts";
import { readSmall, smallRegisters } from "../support/temporary-journal.ts";
import { eventfulBalance } from "../support/weighed.ts";
import { shop, witness } from "../support/witness.ts";

const analysis = eventfulAnalysis();
const { project } = analysis.build;

const pictureless = { photosFolder: "/nowhere", cacheFolder: "/nowhere" };

test("in every export: every page of paper, every text and all data", async () => {
  const folder = scratchFolder();
  const { build, diagnostics } = readSmall({
    "project.yaml": `${smallRegisters["project.yaml"]}registration: N000XX\n`,
    "balance.yaml": eventfulBalance,
    "portion.yaml": `${listHead}${splitsOf("F1 assembly 1")}`,
    "tasks.csv": taskList("F1"),
  });
  if (!build) throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  const small = analyze(build, asOf("2026-12-31"));
  await writeExports(small, [], {
    folder,
    edition: "private",
    paper: "A4",
    programVersion: "0.1.0",
    book: { ...pictureless, sections: bookSections },
  });
  const identity = {
    designation: "SM-1",
    serial: "0001",
    registration: "N000XX",
    builder: "Ada Brook",
  };
  const { faults, crawled } = await identityFaults(folder, identity);
  expect(faults).toEqual([]);
  expect(crawled).toEqual([
    "balance.pdf",
    "book.pdf",
    "hours-logbook.pdf",
    "hours.json",
    "portion.pdf",
    "read-me.txt",
    "record.json",
  ]);
  const another = await identityFaults(folder, { ...identity, registration: "N000XY" });
  expect(new Set(another.faults.map((fault) => fault.split(/:| page/)[0]))).toEqual(
    new Set(crawled),
  );
});

test("in the packet of an alteration, and in all that lies beside it", async () => {
  const { cwd, file } = shop({}, "tests/sites/second-radio/input");
  const { status, stdout } = await witness(["export"], { cwd });
  expect([status, status === 0 ? "" : stdout]).toEqual([0, ""]);
  const { people: persons, project: altered } = recordIn(file("out/content/exports"));
  const { faults, crawled } = await identityFaults(file("out/content/exports"), {
    designation: altered.designation,
    serial: altered.serial,
    registration: "N000RX",
    builder: persons.find(({ role }) => role === "builder")?.name ?? "",
  });
  expect(faults).toEqual([]);
  expect(crawled).toEqual(
    expect.arrayContaining(["alteration-packet.pdf", "alteration-packet.txt", "book.pdf"]),
  );
});

function recordIn(folder: string) {
  return JSON.parse(readFileSync(join(folder, "record.json"), "utf8")) as {
    readonly project: { readonly designation: string; readonly serial: string };
    readonly people: readonly { readonly role: string; readonly name: string }[];
  };
}

test("on every page of the site", async () => {
  const pages = await renderedSite({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures: new Map(),
    edition: "private",
  });
  for (const [path, html] of pages) {
    expect(html, path).toContain(`${project.designation} serial ${project.serial}`);
  }
});

test("or else nothing comes out", async () => {
  const { cwd, file } = shop({
    "lots.yaml":
      'for: { designation: SM-1, serial: "0002" }\nlots:\n  - { id: l, title: L, material: m }\n',
    "days/2026-01-05.md": "---\ndate: 2026-01-05\n---\nBegun.\n",
  });
  for (const verb of ["build", "export"]) {
    const { status, stdout } = await witness([verb], { cwd });
    expect(status).toBe(1);
    expect(stdout).toContain(
      "content/lots.yaml:1:35: error[identity-differs]: the serial is `0002`",
    );
  }
  expect(filesIn(file("."))).not.toContain("out");
});
