import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { analyze } from "../../../src/compute/analyze.ts";
import { continuedHeadings } from "../../../src/model/published/alteration-paperwork.ts";
import { type Packet, packetOf } from "../../../src/present/alteration/packet.ts";
import { packetText } from "../../../src/present/alteration/packet-text.ts";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { asOf } from "../../support/small-build.ts";
import { entry, places, readSmall, smallRegisters } from "../../support/temporary-journal.ts";
import { analysisWith, balanceHead } from "../../support/weighed.ts";

const altered = {
  "project.yaml": smallRegisters["project.yaml"]?.replace("amateur-built", "alteration") ?? "",
};

function packetIn(analysis: Analysis, edition: "public" | "private" = "private"): Packet {
  const edit = edition === "public" ? publicEdition : privateEdition;
  const packet = packetOf(edit(analysis, analysis.diagnostics));
  if (!packet) throw new Error("there is no packet");
  return packet;
}

function textIn(analysis: Analysis, edition: "public" | "private" = "private"): string {
  return packetText(packetIn(analysis, edition), "SM-1").replace(/\s+/g, " ");
}

/** A journal of an alteration whose empty weight is weighed as one load at one arm. */
function effectOf(changes: string, base: string): string {
  return textIn(analysisWith(`${balanceHead}weighings: [${base}]\nchanges:\n${changes}`, altered));
}

describe("weight and balance effect", () => {
  // W2 and W3 of the worked examples of the trade's handbooks, second-hand.
  test("W2: 2886 lb and 101673.78 lb-in become 3003 lb, 110670.78 lb-in, 36.85 in", () => {
    const text = effectOf(
      `  - { id: C-1, on: 2026-03-02, title: Seats, out: [{ what: seats, count: 2, weight: 15 lb, arm: 71 in }], in: [{ what: seat, weight: 97 lb, arm: 71 in }, { what: rail, weight: 20 lb, arm: 71 in }, { what: tank, weight: 30 lb, arm: 94 in }] }\n`,
      "{ id: W-1, on: 2026-03-01, title: Before, points: [{ at: all, reads: 2886 lb, arm: 35.23 in }] }",
    );
    expect(text).toContain(
      "Empty, before Weight, lb: 2886.00 CG, in: 35.23 Moment, lb·in: 101673.8",
    );
    expect(text).toContain("Change Weight, lb: +117.00 CG, in: +1.62 Moment, lb·in: 8997.0");
    expect(text).toContain(
      "Empty, after Weight, lb: 3003.00 CG, in: 36.85 Moment, lb·in: 110670.8",
    );
    expect(text).toContain("moves aft by 1.62 in");
  });

  test("W3: a larger arm is aft, and 1559 lb balance at 30.30 in", () => {
    const text = effectOf(
      `  - { id: C-1, on: 2026-03-02, title: Cabin, out: [{ what: a, count: 2, weight: 12 lb, arm: 68.5 in }], in: [{ what: b, weight: 28 lb, arm: 73 in }, { what: c, weight: 30 lb, arm: 70.5 in }, { what: d, weight: 25 lb, arm: 85 in }] }\n`,
      "{ id: W-1, on: 2026-03-01, title: Before, points: [{ at: all, reads: 1500 lb, arm: 28.4 in }] }",
    );
    expect(text).toContain("Empty, after Weight, lb: 1559.00 CG, in: 30.30 Moment, lb·in: 47240.0");
    expect(text).toContain("moves aft by 1.90 in");
  });

  test("what goes out of the tail moves it forward; arms ahead of the datum keep their sign", () => {
    const base =
      "{ id: W-1, on: 2026-03-01, title: Before, points: [{ at: all, reads: 1000 lb, arm: 10 in }] }";
    expect(
      effectOf(
        "  - { id: C-1, on: 2026-03-02, title: Out, out: [{ what: x, weight: 10 lb, arm: 110 in }] }\n",
        base,
      ),
    ).toContain("moves forward by 1.01 in");
    const ahead = effectOf(
      "  - { id: C-1, on: 2026-03-02, title: Out, out: [{ what: x, weight: 10 lb, arm: -89 in }] }\n",
      base,
    );
    expect(ahead).toContain("Weight: -10.00 Arm: -89.00 Moment: 890.0");
    expect(ahead).toContain("moves aft by 1.00 in");
  });

  const three = `${balanceHead}weighings:
  - { id: W-1, on: 2026-02-01, title: Before, points: [{ at: all, reads: 1000 lb, arm: 10 in }] }
  - { id: W-2, on: 2026-04-15, title: Again, points: [{ at: all, reads: 1020 lb, arm: 10 in }] }
changes:
  - { id: C-1, on: 2026-03-01, title: First, in: [{ what: first thing, weight: 1 lb, arm: 20 in }] }
  - { id: C-2, on: 2026-04-01, title: Other, in: [{ what: other thing, weight: 2 lb, arm: 20 in }] }
  - { id: C-3, on: 2026-05-01, title: Third, in: [{ what: third thing, weight: 4 lb, arm: 20 in }] }
`;
  const chosen = (ids: string) =>
    textIn(
      analysisWith(three, {
        ...altered,
        "alteration.yaml": `title: T\nwhere: W\nchanges: [${ids}]\n`,
      }),
    );

  test("only the changes that belong to it are counted", () => {
    const text = chosen("C-2");
    expect(text).toContain("Change Weight, lb: +2.00");
    expect(text).toContain("other thing");
    expect(text).not.toMatch(/first thing|third thing/);
    expect(chosen("C-1, C-2")).toContain("moves aft by 0.03 in");
  });

  test("a weighing or another change in between is said, and no movement is claimed", () => {
    for (const ids of ["C-1, C-3", "C-2, C-3"]) {
      const text = chosen(ids);
      expect(text).toContain("lies between");
      expect(text).not.toContain("moves aft");
    }
  });

  test("without a register the effect is not known, and the draft says so", () => {
    const { build } = readSmall(altered);
    if (!build) throw new Error("no build");
    const text = textIn(analyze(build, asOf("2026-12-31")));
    expect(text).toContain("so its effect is not known");
    expect(text).toContain("or the aircraft has to be weighed");
    expect(text).toContain("has no `alteration.yaml`");
  });
});

const full = {
  ...altered,
  "people.yaml": `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: jon, name: Jon Reed, role: inspector, private: true, standing: secret standing }
`,
  "alteration.yaml": `title: Second radio
where: panel
work: [Opening cut., Radio set in.]
data: [{ document: RP-7, revision: rev B, title: Panel, place: sheet 1, from: holder, note: by post }]
tests: [{ id: T-1, what: three channels, step: W-2, on: 2026-03-14, by: jon, result: heard }, { id: T-2, what: compass swing }]
continued-airworthiness: { servicing: not applicable }
`,
  "days/2026-03-14.md": entry(`sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: fabricate, stage: cut, lots: [sealant-1] }
deviations:
  - { id: D-1, step: W-1, drawing: W-01 rev B, planned: four, done: three, why: no room, disposition: use as is, accepted-by: jon }
  - { id: D-2, step: W-1, drawing: W-01 rev B, planned: five, done: six, why: torn }
  - { id: D-3, drawing: W-01 rev B, planned: hidden, done: hidden, why: hidden, private: true }
`),
};

function fullAnalysis(): Analysis {
  const { build, diagnostics } = readSmall(full);
  expect(diagnostics.map(({ message }) => message)).toEqual([]);
  if (!build) throw new Error("no build");
  return analyze(build, asOf("2026-12-31"));
}

test("everything that was typed is in it, open and closed deviations with their disposition", () => {
  const text = textIn(fullAnalysis());
  for (const words of [
    "Opening cut. Radio set in.",
    "Document: RP-7 Revision: rev B Title and place: Panel; sheet 1 From, and remarks: holder; by post",
    "T-1 What: three channels; W-2 Rivet the spar Made on: 2026-03-14 By: Jon Reed Result: heard",
    "T-2 What: compass swing Made on: not yet Result: none yet",
    "cut on 2026-03-14",
    "sealant-1",
    "Standing: closed Disposition: use as is; 2026-03-14; accepted by Jon Reed",
    "planned five; done six; torn Standing: open Disposition: none yet",
    "D-3",
    "Servicing: not applicable",
  ]) {
    expect(text).toContain(words);
  }
  for (const { title } of continuedHeadings) expect(text).toContain(title);
  expect(text).toContain("15 headings of continued airworthiness are empty");
});

test("the public edition has no private person, test signature or deviation in it", () => {
  const text = textIn(fullAnalysis(), "public");
  expect(text).not.toMatch(/Jon Reed|secret|hidden|D-3/);
  expect(text).toContain("By: inspector");
});

test("the record says the same as data, and its schema describes it", () => {
  const analysis = fullAnalysis();
  const validate = new Ajv2020({ allErrors: true, strict: true }).compile(recordSchema());
  for (const edit of [privateEdition, publicEdition]) {
    const record = JSON.parse(JSON.stringify(journalRecord(edit(analysis, []), "0.1.0")));
    validate(record);
    expect(validate.errors ?? []).toEqual([]);
    expect(record.alteration.register.tests).toHaveLength(2);
    expect(record.alteration).toMatchObject({ firstDate: "2026-03-14", lastDate: "2026-03-14" });
  }
});

test("it signs nothing, names no form as if it were one, and never says what only a person may say", () => {
  const text = textIn(fullAnalysis());
  expect(text).not.toMatch(/\bapproved\b|\bairworthy\b|\bform 337\b/i);
  expect(text).toMatch(/Date of completion: left empty/);
  expect(text.match(/Signature: _{40}/g)).toHaveLength(3);
  expect(text.match(/Date: _{40}/g)).toHaveLength(3);
  for (const part of packetIn(fullAnalysis()).parts) expect(part.title).toMatch(/^Draft: /);
});

test("a statement that was not read in the text says so", () => {
  const said = packetIn(fullAnalysis())
    .parts.at(-1)
    ?.blocks.map((block) => JSON.stringify(block));
  const memory = said?.filter((each) => each.includes("An owner who works in his own shop"));
  expect(memory?.join()).toContain("from memory, not checked");
});

test("an aircraft that is built has no packet", () => {
  const { build } = readSmall({});
  if (!build) throw new Error("no build");
  expect(packetOf(privateEdition(analyze(build, asOf("2026-12-31")), []))).toBeUndefined();
});

describe("what is typed wrongly is named at its place", () => {
  const faultsOf = (yaml: string) =>
    places(readSmall({ ...altered, "alteration.yaml": yaml }).diagnostics);

  test("unknown keys and names, missing revision, a result without a day", () => {
    expect(faultsOf("title: T\nwhere: W\ndate: W\n")).toEqual(["alteration.yaml:3:1 unknown-key"]);
    expect(faultsOf("title: T\nwhere: W\ndata: [{ document: X }]\n")).toEqual([
      "alteration.yaml:3:8 missing-key",
    ]);
    expect(faultsOf("title: T\nwhere: W\nchanges: [C-1]\n")).toEqual([
      "alteration.yaml:3:11 unknown-name",
    ]);
    expect(
      faultsOf("title: T\nwhere: W\ntests: [{ id: T-1, what: x, step: W-9, by: nobody }]\n"),
    ).toEqual(["alteration.yaml:3:35 unknown-name", "alteration.yaml:3:44 unknown-name"]);
    expect(faultsOf("title: T\nwhere: W\ntests: [{ id: T-1, what: x, result: fine }]\n")).toEqual([
      "alteration.yaml:3:15 missing-key",
    ]);
    expect(faultsOf("title: T\nwhere: W\ncontinued-airworthiness: { serving: x }\n")).toEqual([
      "alteration.yaml:3:28 unknown-key",
    ]);
    expect(faultsOf("title: T\nwhere: W\nfor: { serial: '9' }\n")).toEqual([
      "alteration.yaml:3:16 identity-differs",
    ]);
  });
});

test("the README's register can be read", () => {
  const readme = readFileSync(
    fileURLToPath(new URL("../../../README.md", import.meta.url)),
    "utf8",
  );
  const shown = /## Alterations[\s\S]*?```yaml\n([\s\S]*?)```/.exec(readme)?.[1] ?? "";
  expect(shown).toContain("continued-airworthiness");
  const { diagnostics } = readSmall({
    ...altered,
    "alteration.yaml": shown.replace("step: HS-07", "step: W-1"),
    "balance.yaml": `${balanceHead}changes: [{ id: C-1, on: 2026-06-01, title: Radio, in: [{ what: radio, weight: 3 lb, arm: 14 in, part: 4471-2, serial: "0093" }] }]\n`,
  });
  expect(diagnostics.map(({ message }) => message)).toEqual([]);
});
