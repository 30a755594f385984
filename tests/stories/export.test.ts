// The files for the inspector: what is there, for whom, and on which paper.

import { readFileSync, statSync } from "node:fs";
import { expect, test } from "vitest";
import { filesIn } from "../support/scratch-folder.ts";
import { shop, witness } from "../support/witness.ts";

const march14 = `---
date: 2026-03-14
private: true
title: A quiet evening with thistledown
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:15", kind: fabricate }
---
Nobody is told of the thistledown.
`;

test("the editions go to two folders, and the public one has nothing private", async () => {
  const { cwd, file } = shop({ "days/2026/2026-03-14.md": march14 });
  const publicRun = await witness(["export"], { cwd });
  const privateRun = await witness(["export", "--edition", "private", "--paper", "letter"], {
    cwd,
  });
  expect([publicRun.status, publicRun.stderr]).toEqual([0, ""]);
  expect([privateRun.status, privateRun.stderr]).toEqual([0, ""]);

  const names = filesIn(file("out/content/exports"));
  expect(filesIn(file("out/content/private-exports"))).toEqual(names);
  expect(names).toEqual(
    expect.arrayContaining(["hours-logbook.pdf", "hours.csv", "hours.json", "record.json"]),
  );
  // Each is listed, with its size.
  const lines = publicRun.stdout.trimEnd().split("\n");
  expect(lines[0]).toMatch(/^exports: .*out\/content\/exports$/);
  expect(
    lines
      .slice(1)
      .map((line) => line.trim().split(/ {2,}/)[0])
      .sort(),
  ).toEqual(names);
  const bytes = statSync(file("out/content/exports/hours.csv")).size;
  expect(publicRun.stdout).toMatch(
    new RegExp(
      `\\n  hours\\.csv +${bytes < 1000 ? `${bytes} B` : `${(bytes / 1000).toFixed(1)} kB`}  `,
    ),
  );

  const textOf = (name: string) => readFileSync(file(name), "utf8");
  for (const name of names.filter((each) => !each.endsWith(".pdf"))) {
    expect(textOf(`out/content/exports/${name}`)).not.toContain("thistledown");
  }
  expect(textOf("out/content/private-exports/record.json")).toContain("thistledown");
  // The hours of a private day are hours all the same.
  expect(JSON.parse(textOf("out/content/exports/hours.json")).totals.total.build).toBe(75);

  // ISO 216 A4 is 210 mm by 297 mm, ANSI/ASME Y14.1 size A (Letter) 8.5 in by 11 in.
  expect(pageSize(file("out/content/exports/hours-logbook.pdf"))).toEqual([595.28, 841.89]);
  expect(pageSize(file("out/content/private-exports/hours-logbook.pdf"))).toEqual([612, 792]);
});

function pageSize(pdf: string): number[] {
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(pdf, "latin1"));
  return [Number(box?.[1]), Number(box?.[2])].map((size) => Math.round(size * 100) / 100);
}
