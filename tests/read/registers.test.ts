// What is declared once: people, the tree of assemblies with its steps, instruments, lots.

import { describe, expect, test } from "vitest";
import {
  entry,
  marchFile,
  pointed,
  readSmall,
  smallRegisters,
} from "../support/temporary-journal.ts";

function read(files: Readonly<Record<string, string | undefined>>) {
  const { build, diagnostics } = readSmall(files);
  return { build, diagnostics, found: pointed(diagnostics) };
}

const changed = (name: string, from: string | RegExp, to: string) => ({
  [name]: (smallRegisters[name] ?? "").replace(from, to),
});

test("the small registers are read as they stand", () => {
  const { build, found } = read({});
  expect(found).toEqual([]);
  expect([...(build?.assemblies.values() ?? [])]).toMatchObject([
    { id: "wing", children: ["spar"], steps: [], path: ["wing"] },
    { id: "spar", parent: "wing", children: [], steps: ["W-1", "W-2"], path: ["wing", "spar"] },
    { id: "tail", children: [], steps: [], path: ["tail"] },
  ]);
  expect([...(build?.steps.values() ?? [])]).toMatchObject([
    { id: "W-1", assembly: "spar", drawing: "W-01 rev B", planned: 180, looks: ["holes"] },
    { id: "W-2", assembly: "spar", looks: [] },
  ]);
  expect(build?.people.get("ada")).toMatchObject({
    initials: "A.B.",
    role: "builder",
    private: false,
  });
  expect(build?.instruments.get("caliper")).toMatchObject({ coverage: 2, calibrations: [] });
  expect(build?.lots.get("sealant-1")).toMatchObject({ expires: "2026-06-30", extensions: [] });
  expect(build?.project).toMatchObject({ place: "shop", names: "names", judgedOn: "2026-12-31" });
});

describe("a name stands once, whatever its capitals", () => {
  test.each([
    ["people.yaml", "id: jon", "id: Ada", "3", "another person is called `Ada`"],
    ["assemblies.yaml", "id: tail", "id: WING", "10", "another assembly is called `WING`"],
    ["assemblies.yaml", "id: tail", "id: spar", "10", "another assembly is called `spar`"],
    ["assemblies.yaml", "id: W-2", "id: w-1", "9", "another step is called `w-1`"],
  ])("%s: %s as %s", (name, from, to, line, message) => {
    const { found, diagnostics } = read(changed(name, from, to));
    expect(found).toEqual([`${name}:${line} duplicate-id ${to.slice(4)}`]);
    expect(diagnostics[0]?.message).toBe(message);
    expect(diagnostics[0]?.notes[0]).toMatch(/^the first stands at journal\/\w+\.yaml:\d+$/);
  });

  test.each(["rules.yaml", "instruments.yaml", "lots.yaml"])("%s", (name) => {
    const text = smallRegisters[name] ?? "";
    const item = text.slice(text.indexOf("\n") + 1);
    const { found } = read({ [name]: `${text}${item}` });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/ duplicate-id /);
  });

  test("a drawing too", () => {
    const twice = "  - { id: W-01, title: Wing spar, revision: B }\n";
    expect(read(changed("project.yaml", twice, `${twice}${twice}`)).found).toEqual([
      "project.yaml:11 duplicate-id W-01",
    ]);
  });
});

describe("a step", () => {
  test("names a drawing that project.yaml declares", () => {
    const { found, diagnostics } = read(changed("assemblies.yaml", "W-01 rev B", "W-10 rev B"));
    expect(found).toEqual(["assemblies.yaml:8 unknown-name W-10 rev B"]);
    expect(diagnostics[0]).toMatchObject({
      message: "no drawing is called `W-10`",
      label: "did you mean `W-01`?",
    });
  });

  test("is booked on the assembly it is declared on, and no other", () => {
    const session = (assembly: string) =>
      entry(
        `sessions: [{ assembly: ${assembly}, step: W-1, who: [ada], hours: "1:00", kind: shop }]`,
      );
    expect(read({ [marchFile]: session("spar") }).found).toEqual([]);
    const { found, diagnostics } = read({ [marchFile]: session("wing") });
    expect(found).toEqual([`${marchFile}:3 unknown-name W-1`]);
    expect(diagnostics[0]).toMatchObject({
      message: "step `W-1` is not on `wing`",
      notes: ["it is declared on `spar` (wing / spar)"],
      help: ["write `assembly: spar`, or name another step"],
    });
  });

  test("asks for the looks that may be inspected", () => {
    const inspection = (look: string) =>
      entry(
        `inspections: [{ step: W-1, look: ${look}, by: jon, open: both sides, findings: none, result: clear }]`,
      );
    expect(read({ [marchFile]: inspection("holes") }).found).toEqual([]);
    expect(read({ [marchFile]: inspection("rivets") }).diagnostics[0]).toMatchObject({
      code: "unknown-name",
      message: "step `W-1` asks for no look called `rivets`",
      notes: ["it asks for: holes"],
    });
  });
});

describe("what is at fault in a register does not hide the rest", () => {
  test("each wrong line is named, and the right ones are read", () => {
    const { found, build } = read({
      "people.yaml": `people:
  - { id: ada, name: Ada Brook, role: bilder }
  - { id: jon, name: Jon Reed, role: unpaid help }
  - { id: "a b", name: A B, role: builder }
`,
      "lots.yaml":
        "lots:\n  - { id: sealant-1, title: Sealant, material: sealant, expires: 2026-6-30 }\n",
    });
    expect(found).toEqual([
      "lots.yaml:2 not-a-date 2026-6-30",
      "people.yaml:2 not-a-choice bilder",
      'people.yaml:4 not-an-id "a b"',
    ]);
    expect([...(build?.people.keys() ?? [])]).toEqual(["jon"]);
  });

  test("a register that is missing is one error, and names used from it are others", () => {
    const { found } = read({
      "people.yaml": undefined,
      [marchFile]: entry('sessions: [{ assembly: wing, who: [ada], hours: "1:00", kind: shop }]'),
    });
    expect(found).toEqual([`${marchFile}:3 unknown-name ada`, "people.yaml:1 missing-file"]);
  });

  test("without project.yaml nothing is judged", () => {
    const { build, found } = read({ "project.yaml": undefined });
    expect(build).toBeUndefined();
    expect(found).toEqual(["project.yaml:1 missing-file"]);
  });
});

describe("project.yaml", () => {
  test.each([
    ["zone: America/Denver", "zone: America/Denvr", "5 not-a-zone America/Denvr"],
    ["basis: amateur-built", "basis: homebuilt", "4 not-a-choice homebuilt"],
    ["begun: 2026-01-01", "begun: 1.1.2026", "6 not-a-date 1.1.2026"],
    ["summary:", "address: journal.example\nsummary:", "8 wrong-shape journal.example"],
    ["title: A small aeroplane", "titel: A small aeroplane", "1 unknown-key titel"],
  ])("%s as %s", (from, to, place) => {
    expect(read(changed("project.yaml", from, to)).found).toContain(`project.yaml:${place}`);
  });

  test.each([
    ["https://journal.example", "https://journal.example/"],
    ["https://journal.example/build//", "https://journal.example/build/"],
  ])("an address %s ends in one slash", (typed, address) => {
    const { build } = read(changed("project.yaml", "summary:", `address: ${typed}\nsummary:`));
    expect(build?.project.address).toBe(address);
  });

  test("a project may have its own stages, and no others then", () => {
    const stages = changed("project.yaml", "summary:", "stages: [bent, welded]\nsummary:");
    const session = (stage: string) =>
      entry(
        `sessions: [{ assembly: wing, who: [ada], hours: "1:00", kind: shop, stage: ${stage} }]`,
      );
    expect(read({ ...stages, [marchFile]: session("welded") }).found).toEqual([]);
    expect(read({ ...stages, [marchFile]: session("riveted") }).found).toEqual([
      `${marchFile}:3 not-a-choice riveted`,
    ]);
  });
});

test("calibrations are in the order of their dates, however they were typed", () => {
  const { build } = read({
    "instruments.yaml": `instruments:
  - id: caliper
    title: Caliper
    calibrations: [{ on: 2026-02-01, due: 2027-02-01 }, { on: 2025-02-01, due: 2026-02-01, by: bench }]
`,
  });
  expect(build?.instruments.get("caliper")?.calibrations).toMatchObject([
    { on: "2025-02-01", due: "2026-02-01", by: "bench" },
    { on: "2026-02-01", due: "2027-02-01" },
  ]);
});

describe("what an instrument knows of itself", () => {
  const found = (line: string) =>
    readSmall({
      "instruments.yaml": `instruments:\n  - { id: caliper, title: Caliper, ${line} }\n`,
    }).diagnostics.map(({ code, message }) => [code, message]);

  test.each([
    ["uncertainty: -0.001 in", "`-0.001 in` is below zero, and this has no sign"],
    ["resolution: -0.001 in", "`-0.001 in` is below zero, and this has no sign"],
  ])("%s", (line, message) => {
    expect(found(line)).toEqual([["not-a-quantity", message]]);
  });

  test("is of one kind, or in per cent", () => {
    expect(found("resolution: 1 lb, uncertainty: 0.01 in")).toEqual([
      ["wrong-dimension", "the uncertainty is a length, and the resolution a mass"],
    ]);
    expect(found("resolution: 0.1 lbf·in, uncertainty: 4 %")).toEqual([]);
    expect(found("resolution: 1 °F, uncertainty: 1 Δ°C")).toEqual([]);
    expect(found("resolution: 0 in, uncertainty: 0 in")).toEqual([]);
  });
});
