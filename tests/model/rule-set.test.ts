import { describe, expect, test } from "vitest";
import { rivetDiameterInches } from "../../src/model/published/rivet-dash-numbers.ts";
import { holeOf } from "../../src/model/published/rivet-hole.ts";
import { ruleSets } from "../../src/model/published/rule-sets.ts";
import { type RuleSetArgument, ruleSet } from "../../src/model/rule-set.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

test("names are kebab case, sorted, and those the content format shows exist", () => {
  const names = [...ruleSets.keys()];
  expect(names).toEqual(names.toSorted());
  for (const name of names) expect(name).toMatch(/^[a-z0-9.]+(-[a-z0-9.]+)*$/);
  expect(names).toContain("edge-distance-2d");
  expect(names).toContain("ac43-13-1b-table-7-1");
});

test("the two examples of the content format give limits", () => {
  const edge = setLimits("edge-distance-2d", { D: "3/32 in" });
  expect([edge.lower?.typed, edge.upper]).toEqual(["0.1875 in", undefined]);
  const torque = setLimits("ac43-13-1b-table-7-1", { thread: "10-32", nut: "tension" });
  expect([torque.lower?.typed, torque.upper?.typed]).toEqual(["20 lbf·in", "25 lbf·in"]);
});

describe("every set", () => {
  test.each([...ruleSets.values()].map((set) => [set.name, set] as const))(
    "%s says where it comes from and that the drawing wins",
    (_, { citation, advice, title }) => {
      expect(citation.status).toBeDefined();
      expect(citation.place).toBeDefined();
      expect(title).not.toBe("");
      expect(advice.at(-1)).toMatch(/drawing.*wins/);
    },
  );
});

describe("what the builder gave", () => {
  test("a size keeps its text and may be typed in any way", () => {
    for (const D of ["1/8 in", "AD4", "3.175 mm", "0.125 in"]) {
      const answer = askSet("countersink-army-tm", { D });
      expect(answer.ok && answer.sizes.get("D")?.typed).toBe(D);
    }
  });

  test.each<[string, Record<string, RuleSetArgument>, string, string, string]>([
    [
      "ac43-13-1b-table-7-1",
      { thread: "10-32" },
      "nut",
      "`ac43-13-1b-table-7-1` needs `nut`",
      "`tension`, `shear`",
    ],
    [
      "ac43-13-1b-table-7-1",
      { thread: "10-33", nut: "shear" },
      "thread",
      "`10-33` is not a `thread` of `ac43-13-1b-table-7-1`",
      "`10-32`",
    ],
    [
      "ac43-13-1b-table-7-1",
      { thread: "10-32", nut: quantity("1 in") },
      "nut",
      "`1 in` is not a `nut` of `ac43-13-1b-table-7-1`",
      "`tension`",
    ],
    [
      "edge-distance-2d",
      { d: quantity("1/8 in") },
      "d",
      "`d` is not a parameter of `edge-distance-2d`",
      "it takes `D`",
    ],
    [
      "turnbuckle-threads",
      { D: quantity("1/8 in") },
      "D",
      "`D` is not a parameter of `turnbuckle-threads`",
      "it takes no parameters",
    ],
    ["edge-distance-2d", {}, "D", "`edge-distance-2d` needs `D`", "such as `1/8 in`"],
    [
      "edge-distance-2d",
      { D: "big" },
      "D",
      "`big` is not a length above zero",
      "`D` is the rivet's shank diameter",
    ],
    [
      "edge-distance-2d",
      { D: quantity("3 lb") },
      "D",
      "`3 lb` is not a length above zero",
      "such as `1/8 in`",
    ],
    [
      "edge-distance-2d",
      { D: quantity("0 in") },
      "D",
      "`0 in` is not a length above zero",
      "such as `1/8 in`",
    ],
    [
      "driven-head-mil",
      { of: "height", D: quantity("5/32 in") },
      "D",
      "the table has no row for `D` of `5/32 in`",
      "`3/32 in`, `1/8 in`",
    ],
  ])("%s with %o faults %s", (name, given, parameter, message, help) => {
    const answer = ruleSetNamed(name).limits(new Map(Object.entries(given)));
    expect(answer).toMatchObject({ ok: false, parameter, message });
    expect(answer.ok || answer.help.join("\n")).toContain(help);
  });

  test.each([
    ["minimum-sheet-army-tm", { D: "7/32 in" }],
    ["driven-head-1940s", { of: "height", D: "3/32 in" }],
    ["rivet-hole-1940s", { D: "1/4 in" }],
    ["rivet-hole-modern", { D: "1/16 in" }],
  ])("%s has no row for %o", (name, given) => {
    expect(askSet(name, given)).toMatchObject({ ok: false, parameter: "D" });
  });
});

// Faults in a table of this program, not in what a builder typed.
describe("a set that asks for what it did not declare", () => {
  const broken = (row: "choice" | "size") =>
    ruleSet({
      name: "broken",
      title: "Broken",
      authority: "published",
      citation: { document: "none", place: "nowhere" },
      parameters: [],
      row: (given) => {
        given[row]("missing");
        return {};
      },
    });

  test.each(["choice", "size"] as const)("throws for the %s", (kind) => {
    expect(() => broken(kind).limits(new Map())).toThrow(RangeError);
  });

  test("and so does a hole by a drill that does not exist", () => {
    expect(() => holeOf("81")).toThrow(RangeError);
  });
});

test("dash numbers of solid rivets are thirty-seconds, from 2 to 12", () => {
  expect(rivetDiameterInches(4)?.equals("1/8")).toBe(true);
  expect([1, 2, 12, 13].map((dash) => rivetDiameterInches(dash) !== undefined)).toEqual([
    false,
    true,
    true,
    false,
  ]);
});
