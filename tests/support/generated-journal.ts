import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { addDays } from "../../src/model/calendar.ts";
import { smallRegisters } from "./temporary-journal.ts";

const words =
  "the rib went on the spar after a long look at the sheet and two trial fits with clecos in every third hole then the drill came out and the chips went everywhere as they do on a cold evening when the light is low and the radio is off".split(
    " ",
  );

const assemblies = 20;
const stepsOfEach = 8;
const rules = 16;

// As many assemblies, steps and rules as a long build has: a step lasts some weeks.
const registers: Readonly<Record<string, string>> = {
  ...smallRegisters,
  "project.yaml": (smallRegisters["project.yaml"] ?? "").replace("2026-01-01", "2018-01-01"),
  "assemblies.yaml": `assemblies:\n${numbers(assemblies).map(assemblyText).join("")}`,
  "rules.yaml": `rules:\n${numbers(rules).map(ruleText).join("")}`,
};

function numbers(count: number): number[] {
  return Array.from({ length: count }, (_, at) => at + 1);
}

function assemblyText(at: number): string {
  const steps = numbers(stepsOfEach).map(
    (n) => `      - { id: A${at}-${n}, title: Step ${n}, planned: "12:00" }\n`,
  );
  return `  - id: a${at}\n    title: Assembly ${at}\n    steps:\n${steps.join("")}`;
}

function ruleText(at: number): string {
  return `  - { id: edge-${at}, title: Edge ${at}, authority: drawing, source: { document: W-${at} }, sizes: { D: 1/8 in }, at-least: 2 D }\n`;
}

/**
 * Writes a journal of many days: two sessions and two readings a day, and
 * some 150 words of prose with a list, a heading and a table now and then. The same every time.
 *
 * @param photos How many photographs each day names; the files are the caller's to make, and
 *   `generatedPhotos` says how they are called.
 */
export function writeGeneratedJournal(folder: string, days: number, photos = 0): void {
  const put = (name: string, text: string) => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  for (const [name, text] of Object.entries(registers)) put(name, text);
  for (let index = 0; index < days; index++) {
    const date = addDays("2018-01-01", index);
    put(`days/${date.slice(0, 4)}/${date}.md`, dayText(date, index, photos));
  }
}

/** Names of the photographs of such a journal, below its folder `photos`. */
export function generatedPhotos(days: number, photos: number): string[] {
  return Array.from({ length: days }, (_, index) =>
    photosOf(addDays("2018-01-01", index), photos),
  ).flat();
}

function photosOf(date: string, photos: number): string[] {
  return Array.from({ length: photos }, (_, index) => `${date}/${index + 1}.jpg`);
}

function dayText(date: string, index: number, photos: number): string {
  const edge = (0.25 + (index % 9) / 1000).toFixed(3);
  const at = 1 + (Math.floor(index / 120) % assemblies);
  const step = `A${at}-${1 + (Math.floor(index / 15) % stepsOfEach)}`;
  const rule = `edge-${1 + (Math.floor(index / 7) % rules)}`;
  return `---
date: ${date}
title: Day ${index + 1} at the bench
sessions:
  - { assembly: a${at}, step: ${step}, who: [ada], from: "18:${10 + (index % 40)}", to: "20:15", kind: fabricate, stage: drilled }
  - { assembly: a${at}, who: [ada, jon], hours: "1:${10 + (index % 50)}", kind: assemble }
readings:
  - { step: ${step}, what: edge distance, at: row ${index % 12}, rule: ${rule}, with: caliper, value: ${edge} in }
  - { step: ${step}, what: edge distance, at: row ${(index + 5) % 12}, rule: ${rule}, with: caliper, value: 0.2${50 + (index % 40)} in }
${
  photos === 0
    ? ""
    : `photos:\n${photosOf(date, photos)
        .map(
          (file) =>
            `  - { file: ${file}, caption: What was done that day, step: ${step}, shows: [ada] }\n`,
        )
        .join("")}`
}next: [the other row]
---
${paragraph(index, 60)}

${index % 5 === 0 ? "## What came of it\n\n" : ""}- ${paragraph(index + 3, 12)}
- ${paragraph(index + 11, 12)}

${index % 7 === 0 ? "| row | holes |\n|---|---|\n| A | 12 |\n| B | 14 |\n\n" : ""}${paragraph(index + 7, 60)}
`;
}

function paragraph(seed: number, length: number): string {
  const text = Array.from({ length }, (_, at) => words[(seed * 7 + at * 3) % words.length]);
  return `${text.join(" ")}.`;
}
