// Builder, designation, serial and registration are the same on whatever comes out.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeExports } from "../../src/write/exports/write-exports.ts";
import { eventfulAnalysis } from "../support/eventful-build.ts";
import { pdfText } from "../support/pdf-text.ts";
import { renderedSite } from "../support/rendered-site.ts";
import { filesIn, scratchFolder } from "../support/scratch-folder.ts";
import { shop, witness } from "../support/witness.ts";

const analysis = eventfulAnalysis();
const { project, people } = analysis.build;
const builder = people.get("ada")?.name ?? "";

test("in every export that names the aircraft", async () => {
  const folder = scratchFolder();
  await writeExports(analysis, analysis.diagnostics, {
    folder,
    edition: "private",
    paper: "A4",
    programVersion: "0.1.0",
  });
  const identity = {
    designation: project.designation,
    serial: project.serial,
    registration: project.registration,
  };
  for (const name of ["record.json", "hours.json"]) {
    expect(JSON.parse(readFileSync(join(folder, name), "utf8")).project).toMatchObject(identity);
  }
  const printed = filesIn(folder).filter((name) => name.endsWith(".pdf"));
  expect(printed.length).toBeGreaterThan(0);
  for (const name of printed) {
    const text = (await pdfText(readFileSync(join(folder, name)))).join("\n");
    for (const part of [...Object.values(identity), builder]) expect(text, name).toContain(part);
  }
  const readMe = readFileSync(join(folder, "read-me.txt"), "utf8");
  expect(readMe).toContain(`${project.designation}, serial ${project.serial}`);
});

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
