import { expect, test } from "vitest";
import { explanationText } from "../../../src/present/explanations/explanation-text.ts";
import { allExplanations, explanationOf } from "../../../src/present/explanations/index.ts";

test("a page in lines of 80 columns, examples as they are typed", () => {
  const long = `a value ${"and another ".repeat(9)}end`;
  const text = explanationText({
    code: "some-fault",
    severity: "finding",
    title: "Something is at fault",
    meaning: "It is.",
    why: long,
    mend: ["Mend it.", long],
    example: [{ file: "lots.yaml", text: `lots: []\n\n# ${"x".repeat(90)}\n` }],
    caution: "Mind your fingers.",
  });
  expect(text).toBe(`finding[some-fault]: Something is at fault

It is.

Why it matters
  a value and another and another and another and another and another and
  another and another and another and another end

How to mend it
  - Mend it.
  - a value and another and another and another and another and another and
    another and another and another and another end

Caution
  Mind your fingers.

This works: lots.yaml
    lots: []

    # ${"x".repeat(90)}`);
});

test("a word wider than the page gets a line of its own", () => {
  const word = "w".repeat(100);
  const [page] = allExplanations;
  if (!page) throw new Error("there are pages");
  const lines = explanationText({ ...page, why: `a ${word} b` }).split("\n");
  const at = lines.indexOf("Why it matters");
  expect(lines.slice(at + 1, at + 4)).toEqual(["  a", `  ${word}`, "  b"]);
  expect(explanationText({ ...page, why: word })).toContain(`Why it matters\n  ${word}\n`);
});

test("a page is found by its code, and nothing else is", () => {
  expect(explanationOf("expired-lot")?.title).toBe("A lot used after its last day");
  expect(explanationOf("constructor")).toBeUndefined();
});

const hurtful = allExplanations.filter(
  ({ severity, code }) =>
    severity === "finding" && !["unreadable-photo", "unpublishable-video"].includes(code),
);

test("what concerns the aircraft carries a caution that defers", () => {
  expect(hurtful.filter(({ caution }) => caution === undefined)).toEqual([]);
});

test.each(allExplanations.map((page) => [page.code, page] as const))(
  "%s is plain prose in whole sentences",
  (_code, { title, meaning, why, mend, caution = "So." }) => {
    expect(title).toMatch(/^[A-Z`][^.]*[^.]$/);
    for (const text of [meaning, why, caution, ...mend]) {
      expect(text).toMatch(/^[A-Z`].*[.]$/);
      expect(text).not.toMatch(/\n| {2}|\bplease\b|\billegal\b|\bapproved\b|\bairworthy\b/i);
      expect((text.match(/`/g) ?? []).length % 2).toBe(0);
    }
    expect(new Set(mend).size).toBe(mend.length);
  },
);
