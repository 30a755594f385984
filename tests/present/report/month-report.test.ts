import { expect, test } from "vitest";
import { monthReports } from "../../../src/present/report/month-report.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const session = (assembly: string, kind: string, hours: string, who = "ada") =>
  `  - { assembly: ${assembly}, who: [${who}], hours: "${hours}", kind: ${kind} }\n`;

const files = {
  "days/2026-03-02.md": `---
date: 2026-03-02
title: Spar
sessions:
${session("spar", "fabricate", "2:00")}${session("tail", "assemble", "3:00", "ada, jon")}${session("tail", "study", "0:30")}readings:
  - { what: edge distance, at: row A, rule: edge, value: 0.20 in }
  - { what: edge distance, at: row B, rule: edge, value: 0.26 in }
  - { what: gap, value: 0.01 in }
squawks:
  - { id: S-1, found: a nick }
  - { id: S-2, found: a dent }
holds: [{ id: H-1, step: W-1, with: clecos, count: 24 }]
next: [look for the nick]
---
`,
  "days/2026-03-30.md": `---
date: 2026-03-30
private: true
title: Nobody's business
sessions:
${session("spar", "inspect", "1:00")}fixes: [{ squawk: S-1, did: blended }]
next: [a secret]
---
`,
  "days/2026-04-03.md": `---
date: 2026-04-03
title: Later
sessions:
${session("spar", "fabricate", "1:00")}fixes: [{ squawk: S-2, did: filled, closed-by: jon }]
releases: [{ hold: H-1 }]
next: [paint]
---
`,
};

test("a report for each month, of the public edition alone", () => {
  const months = monthReports(shownJournal(files)).map(({ month }) => month);
  expect(months).toEqual(["2026-03", "2026-04"]);
  expect(monthReports(shownJournal(files, "private"))).toEqual([]);
});

test("hours by assembly and kind add up to the month, study beside them", () => {
  const [march] = monthReports(shownJournal(files));
  expect(march?.kinds).toEqual(["fabricate", "assemble", "inspect", "study"]);
  expect(march?.assemblies).toEqual([
    { title: "Tail", byKind: [0, 360, 0, 30], build: 360 },
    { title: "Spar", byKind: [120, 0, 60, 0], build: 180 },
  ]);
  expect(march?.total).toEqual({ title: "Together", byKind: [120, 360, 60, 30], build: 540 });
  expect(march?.days.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(540);
  expect(march?.sentence).toBe(
    "9:00 hours of building on 2 days, and 0:30 of study and shop, counted apart. To date 9:00 hours of building.",
  );
});

test("readings are counted as they stand, and those outside are named", () => {
  const [march] = monthReports(shownJournal(files));
  expect(march?.readings).toBe(
    "3 readings: 1 within their limits, 1 outside, 1 without a limit to be held against.",
  );
  expect(march?.outside).toEqual(["2 Mar: edge distance at row A"]);
});

test("what was open is told as it was when the month was over", () => {
  const [march, april] = monthReports(shownJournal(files));
  expect(march?.openAt).toBe("31 March 2026");
  expect(march?.open).toEqual([
    "squawk S-1, put right and not looked at yet: a nick",
    "squawk S-2: a dent",
    "held for now, W-1: 24 clecos",
  ]);
  expect(april?.open).toEqual(["squawk S-1, put right and not looked at yet: a nick"]);
});

test("a private day is its hours alone, and does not say what comes next", () => {
  const [march] = monthReports(shownJournal(files));
  expect(march?.days.map(({ title }) => title)).toEqual(["Spar", "Kept private: the hours alone"]);
  expect(march?.next).toEqual(["look for the nick"]);
  expect(JSON.stringify(march)).not.toMatch(/Nobody's business|a secret/);
});
