import { describe, expect, test } from "vitest";
import { faultText } from "../../../src/present/reckon/fault-text.ts";
import { quotedArgument, typedAs } from "../../../src/present/reckon/typed-as.ts";

test("carets stand under what is meant", () => {
  const fault = {
    place: { text: "edge=2Q", offset: 5, length: 2 },
    message: "`edge` speaks of `Q`",
    help: ["write a length"],
  };
  expect(faultText(fault)).toBe(
    ["error: `edge` speaks of `Q`", "  | edge=2Q", "  |      ^^", "  = help: write a length"].join(
      "\n",
    ),
  );
});

test("wide signs keep the carets in place, and a terminal is not obeyed", () => {
  const text = faultText({
    place: { text: "長さ=\u001b[31m6", offset: 3, length: 6 },
    message: "not an input",
    help: [],
  });
  expect(text).not.toContain("\u001b");
  expect(text.split("\n")[2]).toBe(`  |${" ".repeat(6)}^^^^^^`);
});

test("without a place there are no carets", () => {
  expect(faultText({ message: "`length` is missing", help: [] })).toBe(
    "error: `length` is missing",
  );
});

describe("arguments for a shell", () => {
  test.each([
    ["length=6 in", 'length="6 in"'],
    ["edge=2D", "edge=2D"],
    ["thread=1/4-28", 'thread="1/4-28"'],
    ["made=2025-03-01", "made=2025-03-01"],
    ["item=fuel -30 gal x 5.9 lb/gal @ 95 in", 'item="fuel -30 gal x 5.9 lb/gal @ 95 in"'],
  ])("%s", (typed, quoted) => {
    expect(quotedArgument(typed)).toBe(quoted);
  });

  test("a sign that a shell would take is quoted", () => {
    expect(typedAs("torque", "10 N·m")).toBe('torque="10 N·m"');
    expect(typedAs("angle", "45°")).toBe('angle="45°"');
  });
});
