// Nonsense for every input of every sum: exit 2, nothing on the standard output, and a message
// that names the input. Which lines work and where a value below zero or of zero has a meaning
// is written down here and not taken from what the sums declare.

import { Command } from "commander";
import { describe, expect, test } from "vitest";
import { reckonCommand } from "../../src/cli/reckon.ts";
import type { ExitCode, Terminal } from "../../src/cli/terminal.ts";
import { sums } from "../../src/compute/reckon/index.ts";

/** A line that works, with the inputs it is about. */
interface Line {
  readonly sum: string;
  readonly inputs: Readonly<Record<string, string>>;
}

const lines: readonly Line[] = [
  { sum: "convert", inputs: { value: "0.032 in", to: "mm" } },
  { sum: "drill", inputs: { size: "0.1300 in", series: "number" } },
  { sum: "drill", inputs: { rivet: "1/8 in" } },
  { sum: "rivet-length", inputs: { grip: "0.064 in", diameter: "1/8 in" } },
  {
    sum: "rivet-row",
    inputs: {
      length: "6 in",
      diameter: "1/8 in",
      edge: "2D",
      "pitch-min": "3D",
      "pitch-max": "8D",
      rule: "pitch-3d-navy",
      count: "11",
      "keep-out": "2.0-2.1 in",
    },
  },
  {
    sum: "rivet-row",
    inputs: { length: "6 in", diameter: "1/8 in", edge: "2D", "pitch-min": "3D", pitch: "0.5 in" },
  },
  { sum: "shop-head", inputs: { diameter: "1/8 in", width: "0.170 in", height: "0.055 in" } },
  {
    sum: "splice",
    inputs: {
      table: "4-10",
      thickness: "0.032 in",
      diameter: "1/8 in",
      width: "10 in",
      joint: "sheet",
      rows: "2",
    },
  },
  {
    sum: "splice",
    inputs: {
      table: "4-10",
      thickness: "0.064 in",
      fastener: "AN-3",
      width: "10 in",
      joint: "full",
    },
  },
  { sum: "countersink", inputs: { diameter: "1/8 in", sheet: "0.040 in" } },
  { sum: "setback", inputs: { radius: "0.25 in", thickness: "0.064 in", angle: "45 deg" } },
  { sum: "bend-allowance", inputs: { radius: "0.16 in", thickness: "0.040 in", angle: "90 deg" } },
  {
    sum: "flat-pattern",
    inputs: { legs: "1, 2, 1 in", radius: "0.16 in", thickness: "0.040 in", angle: "90 deg" },
  },
  {
    sum: "torque",
    inputs: {
      thread: "1/4-28",
      nut: "tension",
      drag: "12 lbf·in",
      wrench: "10 in",
      adapter: "4 in",
      angle: "45 deg",
    },
  },
  { sum: "torque", inputs: { torque: "100 lbf·in" } },
  { sum: "travel", inputs: { radius: "12.0 in", chord: "4.0 in" } },
  { sum: "travel", inputs: { radius: "12.0 in", angle: "25 deg" } },
  {
    sum: "cure",
    inputs: { material: "epoxy", time: "60 min", at: "72 °F", temperature: "90 °F" },
  },
  { sum: "cure", inputs: { material: "sealant", class: "B-2" } },
  { sum: "shelf-life", inputs: { made: "2025-03-01", life: "9 months", passes: "2" } },
  {
    sum: "conformity",
    inputs: {
      value: "0.1255 in",
      "at-least": "0.125 in",
      "at-most": "0.130 in",
      uncertainty: "0.001 in",
      coverage: "2",
      resolution: "0.0005 in",
      rule: "guarded for 95 %",
    },
  },
  {
    sum: "inspection-risk",
    inputs: {
      mean: "0.500 in",
      spread: "0.004 in",
      measuring: "0.001 in",
      "at-least": "0.492 in",
      "at-most": "0.508 in",
      guard: "0.001 in",
    },
  },
  {
    sum: "inspection-risk",
    inputs: {
      shape: "4",
      scale: "0.25 mm",
      measuring: "0.25 mm",
      "at-most": "2 mm",
      wanted: "0.001",
    },
  },
  {
    sum: "balance",
    inputs: {
      start: "1500 lb @ 28.4 in",
      item: "pilot 170 lb @ 16 in",
      forward: "8.5 in",
      aft: "40 in",
      "max-weight": "2100 lb",
    },
  },
  {
    sum: "wheel-balance",
    inputs: {
      wheel: "nose",
      third: "340 lb",
      wheelbase: "78 in",
      weight: "2006 lb",
      mains: "128 in",
    },
  },
  {
    sum: "weight-shift",
    inputs: { moved: "180 lb", from: "110 in", to: "142 in", weight: "2700 lb", cg: "112 in" },
  },
  { sum: "ballast", inputs: { weight: "4954 lb", cg: "30.5 in", limit: "32.0 in", arm: "162 in" } },
  { sum: "mac", inputs: { cg: "663 in", lemac: "625.6 in", temac: "760.1 in" } },
  { sum: "mac", inputs: { cg: "663 in", lemac: "625.6 in", mac: "134.5 in" } },
  { sum: "drain", inputs: { over: "110 lb", density: "6 lb/gal" } },
  { sum: "minimum-fuel", inputs: { horsepower: "165" } },
];

// Places, temperatures and values of any kind may lie below zero; so may an adapter that
// shortens the lever.
const belowZero = new Set([
  "convert value",
  "torque adapter",
  "cure at",
  "cure temperature",
  "conformity value",
  "conformity at-least",
  "conformity at-most",
  "inspection-risk mean",
  "inspection-risk at-least",
  "inspection-risk at-most",
  "inspection-risk guard", // accepts more than the limits do, and is known as relaxed acceptance
  "balance item", // what is taken out
  "balance forward",
  "balance aft",
  "wheel-balance mains",
  "weight-shift from",
  "weight-shift to",
  "weight-shift cg",
  "ballast cg",
  "ballast limit",
  "ballast arm",
  "mac cg",
  "mac lemac",
  "mac temac",
]);

// What may be nothing beside what may be less than that.
const zero = new Set([
  ...belowZero,
  "setback radius",
  "bend-allowance radius",
  "flat-pattern radius",
  "torque drag",
  "torque angle",
  "shelf-life passes",
  "conformity uncertainty",
  "conformity resolution",
  "wheel-balance third",
]);

const inWords = new Set(["choice", "unit", "date"]);

function run({ sum, inputs }: Line, ...more: readonly string[]) {
  const out: string[] = [];
  const err: string[] = [];
  let code: ExitCode = 0;
  const terminal: Terminal = {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    progress: () => {},
    interactive: false,
    paint: (_part, text) => text,
    exit: (exitCode) => {
      code = exitCode;
    },
  };
  const typed = Object.entries(inputs).map(([name, value]) => `${name}=${value}`);
  const command = reckonCommand(terminal);
  const program = new Command("witness").exitOverride();
  command.copyInheritedSettings(program);
  program.addCommand(command).parse(["reckon", sum, ...typed, ...more], { from: "user" });
  return { out: out.join("\n"), err: err.join("\n"), code };
}

/** Runs a line that has to be refused; what is said of it. */
function refusal(line: Line): string {
  const { out, err, code } = run(line, "--json");
  expect([out, code], err || out).toEqual(["", 2]);
  expect(err).toMatch(/^error: /);
  expect(err).toContain(`\n  = help: a line that works: witness reckon ${line.sum} `);
  return err;
}

function withInput(line: Line, name: string, value: string): Line {
  return { ...line, inputs: { ...line.inputs, [name]: value } };
}

// The first number of a value, and everything around it.
function numberIn(value: string): readonly [string, string, string] | undefined {
  const found = /^(\D*?)([\d.]+(?:\/\d+)?)(.*)$/.exec(value);
  return found ? [found[1] ?? "", found[2] ?? "", found[3] ?? ""] : undefined;
}

function kindOf({ sum, inputs: _ }: Line, name: string): string {
  const input = sums.find((each) => each.name === sum)?.inputs[name];
  if (!input) throw new RangeError(`${sum} has no ${name}`);
  return input.kind;
}

const cases = lines.flatMap((line) =>
  Object.keys(line.inputs).map((name) => [line.sum, name, line] as const),
);
const measured = cases.filter(([, name, line]) => !inWords.has(kindOf(line, name)));

describe("the lines", () => {
  test("are of every sum and every input", () => {
    const there = new Set(cases.map(([sum, name]) => `${sum} ${name}`));
    const wanted = sums.flatMap(({ name, inputs }) =>
      Object.keys(inputs).map((input) => `${name} ${input}`),
    );
    expect([...there].toSorted()).toEqual([...new Set(wanted)].toSorted());
  });

  test.each(lines.map((line) => [line.sum, line] as const))("%s works", (sum, line) => {
    const { out, err, code } = run(line, "--json");
    expect([err, code]).toEqual(["", 0]);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({
      sum,
      inputs: Object.fromEntries(
        Object.entries(line.inputs).map(([name, typed]) => [name, { typed }]),
      ),
    });
    for (const part of ["result", "unit", "formula", "source", "cautions"])
      expect(answer).toHaveProperty(part);
    expect(answer.formula).toMatch(/\S/);
    expect(answer.source).toMatch(/\S/);
    expect(answer.cautions.length).toBeGreaterThan(0);
  });
});

describe("every input", () => {
  test.each(cases)("%s %s: nothing behind the sign", (_sum, name, line) => {
    expect(refusal(withInput(line, name, ""))).toContain(`\`${name}\` is empty`);
  });

  test.each(cases)("%s %s: a word that means nothing", (_sum, name, line) => {
    expect(refusal(withInput(line, name, "xyzzy"))).toMatch(
      new RegExp(`^ {2}\\| ${name}=xyzzy$`, "m"),
    );
  });

  test.each(cases)("%s %s: twice", (sum, name, line) => {
    if (kindOf(line, name) === "loads") return;
    const { out, err, code } = run(line, `${name}=${line.inputs[name]}`);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain(`\`${name}\` is given twice`);
    expect(sum).toBe(line.sum);
  });
});

describe("every number", () => {
  test.each(measured)("%s %s: a comma for the point", (_sum, name, line) => {
    const parts = numberIn(line.inputs[name] ?? "");
    const [before, , behind] = parts ?? ["", "", ""];
    const said = refusal(withInput(line, name, `${before}1,5${behind}`));
    expect(said).toContain("1,5");
    expect(said).toMatch(/comma|list|expected|lengths|missing|legs/);
  });

  test.each(measured)("%s %s: below zero", (sum, name, line) => {
    const [before, number, behind] = numberIn(line.inputs[name] ?? "") ?? ["", "", ""];
    const below = withInput(line, name, `${before}-${number}${behind}`);
    if (belowZero.has(`${sum} ${name}`)) {
      expect(run(below).err).not.toMatch(/above zero|zero or more|below zero/);
      return;
    }
    expect(refusal(below)).toMatch(new RegExp(`^ {2}\\| ${name}=`, "m"));
  });

  test.each(measured)("%s %s: zero", (sum, name, line) => {
    const [before, , behind] = numberIn(line.inputs[name] ?? "") ?? ["", "", ""];
    const none = withInput(line, name, `${before}0${behind}`);
    if (zero.has(`${sum} ${name}`)) {
      expect(run(none).err).not.toMatch(/above zero/);
      return;
    }
    expect(refusal(none)).toMatch(new RegExp(`^ {2}\\| ${name}=`, "m"));
  });

  test.each(measured)("%s %s: what something else is measured in", (_sum, name, line) => {
    const other = ["number", "date", "calendar span"].includes(kindOf(line, name))
      ? "2 in"
      : "2 kHz";
    expect(refusal(withInput(line, name, other))).toMatch(new RegExp(`^ {2}\\| ${name}=`, "m"));
    if (`${line.sum} ${name}` === "convert value") return;
    const wrong = ["time", "angle"].includes(name) ? "2 in" : "2 min";
    expect(refusal(withInput(line, name, wrong))).toMatch(
      /expected|is an? |not a|different|exchange|put|measure/,
    );
  });
});

describe("what is missing", () => {
  test.each(sums.map((sum) => [sum.name, sum] as const))("%s with no input at all", (name, sum) => {
    const said = refusal({ sum: name, inputs: {} });
    for (const [input, { required }] of Object.entries(sum.inputs))
      if (required) expect(said).toContain(`\`${input}\` is missing`);
  });

  const required = cases.filter(
    ([sum, name]) => sums.find((each) => each.name === sum)?.inputs[name]?.required,
  );
  test.each(required)("%s without %s", (_sum, name, line) => {
    const { [name]: _left, ...inputs } = line.inputs;
    expect(refusal({ ...line, inputs })).toContain(`\`${name}\` is missing`);
  });
});
