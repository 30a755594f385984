import { Command } from "commander";
import { describe, expect, test } from "vitest";
import { UsageProblem } from "../../src/cli/journal.ts";
import { reckonCommand } from "../../src/cli/reckon.ts";
import type { ExitCode, Terminal } from "../../src/cli/terminal.ts";
import { sums } from "../../src/compute/reckon/index.ts";

/** Runs the verb as the program does, with a terminal that keeps what it is told. */
function run(...args: string[]) {
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
  const program = new Command("witness").exitOverride();
  const command = reckonCommand(terminal);
  command.copyInheritedSettings(program);
  program.addCommand(command).parse(["reckon", ...args], { from: "user" });
  return { out: out.join("\n"), err: err.join("\n"), code };
}

const row = ["rivet-row", "length=6 in", "diameter=1/8 in", "edge=2D", "pitch-min=3D"];

describe("the list", () => {
  test.each([[[]], [["--help"]], [["-h"]]])("witness reckon %s", (args) => {
    const { out, err, code } = run(...args);
    expect([err, code]).toEqual(["", 0]);
    for (const { name, inputs } of sums) {
      expect(out).toContain(`\n${name}: `);
      expect(out).toContain(`$ witness reckon ${name} `);
      for (const input of Object.keys(inputs))
        expect(out).toMatch(new RegExp(`\\n {4}\\[?${input}\\]? `));
    }
    expect(out.match(/→/g)).toHaveLength(sums.length);
  });

  test("the worked lines are right", () => {
    const { out } = run();
    expect(out).toContain(
      'witness reckon convert value="0.032 in" to=mm\n      → 0.813 mm (exactly 0.8128 mm)',
    );
    expect(out).toContain("→ count: 15 rivets; pitch: 0.3929 in (exactly 11/28 in)");
    expect(out).toContain("→ 37 rivets");
    expect(out).toContain("→ 19.19°");
  });

  test("of one sum", () => {
    const { out, code } = run("torque", "--help");
    expect(out).toMatch(/^torque: /);
    expect(out).not.toContain("rivet-row");
    expect(code).toBe(0);
  });
});

describe("an answer", () => {
  test("as text on the standard output", () => {
    const { out, err, code } = run(...row);
    expect([err, code]).toEqual(["", 0]);
    expect(out).toContain("count                15 rivets");
    expect(out).toContain("edge 2D, which is 0.25 in");
    expect(out).toContain("formula: ");
    expect(out).toContain("source:  ");
    expect(out).toContain("caution: ");
  });

  test("as one object with --json, before or behind the inputs", () => {
    for (const args of [
      [...row, "--json"],
      ["--json", ...row],
    ]) {
      const { out, err, code } = run(...args);
      expect([err, code]).toEqual(["", 0]);
      const answer = JSON.parse(out);
      expect(Object.keys(answer)).toEqual(
        expect.arrayContaining([
          "sum",
          "inputs",
          "result",
          "unit",
          "formula",
          "source",
          "cautions",
        ]),
      );
      expect(answer).toMatchObject({ sum: "rivet-row", result: null, unit: "in", count: 15 });
      expect(answer.inputs["pitch-min"]).toEqual({ typed: "3D", value: 0.375, unit: "in" });
      expect(answer.positions.at(-1)).toBe(5.75);
    }
  });

  test("inputs of every kind are given back as understood", () => {
    const inputs = (...args: string[]) => JSON.parse(run(...args, "--json").out).inputs;
    expect(inputs("convert", "value=1 in", "to=millimetres").to).toEqual({
      typed: "millimetres",
      value: "mm",
      unit: null,
    });
    expect(
      inputs("flat-pattern", "legs=1, 2.00 in", "radius=1/8 in", "thickness=1 mm", "angle=90 deg")
        .legs,
    ).toEqual({ typed: "1, 2.00 in", value: [1, 2], unit: "in" });
    expect(inputs(...row, "keep-out=2 in to 60 mm", "count=2")).toMatchObject({
      "keep-out": { value: [{ from: 2, to: 2.36220472441 }], unit: "in" },
      count: { typed: "2", value: 2, unit: null },
    });
    expect(inputs("shelf-life", "made=2025-03-01", "life=1 year")).toMatchObject({
      made: { value: "2025-03-01", unit: null },
      life: { typed: "1 year", value: 12, unit: "months" },
    });
    expect(inputs("drain", "over=110 lb", "density=6 lb/gal").density).toEqual({
      typed: "6 lb/gal",
      value: 6,
      unit: "lb/gal",
    });
    expect(inputs("cure", "material=SEALANT", "class=b-2").class).toEqual({
      typed: "b-2",
      value: "B-2",
      unit: null,
    });
    expect(inputs("balance", "item=a 1 lb @ 2 in", "item=b 3 lb @ 4 in").item).toEqual({
      typed: "a 1 lb @ 2 in, b 3 lb @ 4 in",
      value: [
        { name: "a", weight: 1, weightUnit: "lb", arm: 2, armUnit: "in" },
        { name: "b", weight: 3, weightUnit: "lb", arm: 4, armUnit: "in" },
      ],
      unit: null,
    });
  });

  test("a name cannot steer the terminal", () => {
    expect(run("balance", "item=\u001b[31mred 1 lb @ 2 in").out).not.toContain("\u001b");
  });
});

describe("an unknown sum", () => {
  test.each([
    ["rivt-row", "did you mean `witness reckon rivet-row`?"],
    ["Torque", "did you mean `witness reckon torque`?"],
    ["xyzzy", "the sums are convert, drill"],
    ["constructor", "the sums are convert, drill"],
  ])("%s", (name, help) => {
    expect(() => run(name)).toThrow(UsageProblem);
    try {
      run(name);
    } catch (error) {
      expect((error as UsageProblem).message).toBe(`no sum is called \`${name}\``);
      expect((error as UsageProblem).help.join("\n")).toContain(help);
    }
  });
});

describe("nonsense", () => {
  function complaint(...args: string[]): string {
    const { out, err, code } = run(...args);
    expect([out, code]).toEqual(["", 2]);
    return err;
  }

  test("all of it is said at once, in the order typed, with carets, then what is missing", () => {
    expect(
      complaint("rivet-row", "length=-6 in", "diametr=1/8 in", "edge=2Q", "count=1.5", "foo"),
    ).toBe(
      `error: \`length\` has to be above zero, but is -6 in
  | length=-6 in
  |        ^^^^^
  = help: for example \`length="6 in"\`

error: \`diametr\` is not an input of \`rivet-row\`
  | diametr=1/8 in
  | ^^^^^^^
  = help: did you mean \`diameter\`?

error: \`edge\` speaks of \`Q\`, which is not known here
  | edge=2Q
  |      ^^
  = help: write a length, or one in terms of \`D\`, the \`diameter\`
  = help: for example \`edge=2D\`

error: \`count\` has to be a whole number, but is 1.5
  | count=1.5
  |       ^^^
  = help: for example \`count=11\`

error: \`foo\` is not an input: inputs are typed NAME=VALUE
  | foo
  | ^^^
  = help: put a value with blanks in quotes: \`count="1.5 foo"\`

error: \`diameter\` is missing: nominal rivet diameter D
  = help: for example \`diameter="1/8 in"\`

error: \`pitch-min\` (or \`rule\`) is missing: least distance from centre to centre; or name a \`rule\`
  = help: for example \`pitch-min=3D\`

witness: \`rivet-row\` was not reckoned
  = help: a line that works: witness reckon rivet-row length="6 in" diameter="1/8 in" edge=2D pitch-min=3D`,
    );
  });

  test.each([
    // one input     message                                                    meant
    ["length=0 in", "`length` has to be above zero, but is 0 in", "0 in"],
    ["length=-1/8 in", "`length` has to be above zero, but is -1/8 in", "-1/8 in"],
    ["length=6", "`length` is not a length: expected a unit behind `6`", "6"],
    ["length=6 lbs", "`length` is a mass, expected a length", "6 lbs"],
    ["length=6 inn", "`length` is not a length: expected a known unit", "inn"],
    ["length=about 6 in", "`length` is not a length: expected a number with its unit", "about"],
    ["length=six", "`length` is not a length: expected a number with its unit", "six"],
    ["length=6,5 in", "`length` is not a length: expected a decimal point, not a comma", "6,5"],
    ["length=1e3 in", "`length` is not a length: expected a number written out", "1e3"],
    ["length=", "`length` is empty", ""],
    ["length= ", "`length` is empty", " "],
    ["edge=0 in", "`edge` has to be above zero, but is 0 in", "0 in"],
    ["edge=-2D", "`edge` has to be above zero, but is -2D", "-2D"],
    ["edge=2 lb", "`edge` is a mass, expected a length", "2 lb"],
    ["edge=2 D + 1 lb", "`edge` puts a length and a mass together", "2 D + 1 lb"],
    ["edge=2", "`edge` is not a length: expected a unit or the name of a size behind `2`", "2"],
    ["count=0", "`count` has to be above zero, but is 0", "0"],
    ["count=-3", "`count` has to be above zero, but is -3", "-3"],
    ["count=some", "`count` is not a plain number", "some"],
    ["count=3 rivets", "`count` is not a plain number", "3 rivets"],
    [
      "count=1,000",
      "`count` is not a plain number: expected a decimal point, not a comma",
      "1,000",
    ],
    ["rule=pitch-3d-nav", "`pitch-3d-nav` is not a `rule` that is known", "pitch-3d-nav"],
    ["keep-out=2 in", "`keep-out` is not a list of stretches: expected a stretch", "2 in"],
  ])("%s", (typed, message, meant) => {
    const name = typed.slice(0, typed.indexOf("="));
    const others = row.filter((each) => !each.startsWith(`${name}=`));
    const said = complaint(...others, typed).split("\n");
    expect(said[0]).toContain(`error: ${message}`);
    expect(said[1]).toBe(`  | ${typed}`);
    const carets = said[2] ?? "";
    const column = carets.indexOf("^") - 4;
    expect(typed.slice(column, column + carets.trimEnd().length - carets.indexOf("^"))).toBe(meant);
    expect(said[3]).toMatch(/= help: /);
  });

  test.each([
    [["convert", "value=1 in", "to=furlong"], "`furlong` is not a unit that is known"],
    [["convert", "value=1 in", "to=inchs"], "did you mean `inch`?"],
    [["convert", "value=much", "to=in"], "`value` is not a value"],
    [
      ["shelf-life", "made=2025-02-30", "life=9 months"],
      "`2025-02-30` is not a day of the calendar",
    ],
    [["shelf-life", "made=2025-02-03", "life=9"], "`life` is not a stretch of the calendar"],
    [["drain", "over=1 lb", "density=6"], "`density` is not a density"],
    [["balance", "item=pilot"], "`item` is not a weight at an arm"],
    [
      ["flat-pattern", "legs=1 in, 0 in", "radius=0 in", "thickness=1 mm", "angle=90 deg"],
      "`0 in` has to be above zero",
    ],
    [
      ["flat-pattern", "legs=1 in, 1 lb", "radius=0 in", "thickness=1 mm", "angle=90 deg"],
      "`1 lb` is a mass, expected a length",
    ],
    [
      ["flat-pattern", "legs=1 in, x", "radius=0 in", "thickness=1 mm", "angle=90 deg"],
      "`legs` is not a list of lengths",
    ],
    [["torque", "thread=10-33", "nut=tension"], "did you mean `10-32`?"],
    [["torque", "torque=1 N·m", "drag=-1 N·m"], "`drag` has to be zero or more"],
    [
      ["setback", "radius=1 in", "thickness=1 in", "angle=90 lb"],
      "`angle` is a mass, expected an angle",
    ],
    [["rivet-row", "frobnicate=1"], "it takes `length`, `diameter`"],
    [["rivet-row", "constructor=1"], "`constructor` is not an input"],
    [["rivet-row", "__proto__=1"], "`__proto__` is not an input"],
    [["rivet-row", "=1"], "inputs are typed NAME=VALUE"],
    [["rivet-row", "length"], "write the name of the input, `=` and the value"],
  ])("%s", (args, said) => {
    expect(complaint(...args)).toContain(said);
  });

  test("an input given twice", () => {
    expect(complaint(...row, "length=7 in")).toContain(
      "`length` is given twice\n  | length=7 in\n  | ^^^^^^",
    );
  });

  test("a value in terms of an input that is wrong is not blamed as well", () => {
    const said = complaint("rivet-row", "length=6 in", "diameter=0 in", "edge=2D", "pitch-min=3D");
    expect(said.match(/^error:/gm)).toHaveLength(1);
    expect(said).toContain("`diameter` has to be above zero");
  });

  test("a value with a part of its own is read all the same", () => {
    const row = ["rivet-row", "length=6 in", "diameter=0 in", "pitch-min=3D"];
    expect(complaint(...row, "edge=2 D + 0.05 in").match(/^error:/gm)).toHaveLength(1);
    expect(complaint(...row, "edge=0.3 in - 0.3 in").match(/^error:/gm)).toHaveLength(2);
  });

  test("what the sum itself refuses is pointed at too", () => {
    expect(complaint(...row, "count=40")).toContain(
      "  | count=40\n  |       ^^\n  = help: at most 15 fit",
    );
  });

  test("nothing is printed on the standard output with --json either", () => {
    expect(complaint(...row, "count=40", "--json")).toContain("below the least pitch");
  });
});
