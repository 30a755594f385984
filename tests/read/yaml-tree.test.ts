// Lists with one unit behind them, which readings are typed as, and the places of what stands
// behind them.

import { describe, expect, test } from "vitest";
import { Faults } from "../../src/read/faults.ts";
import { SourceFile } from "../../src/read/source-file.ts";
import type { TypedNode } from "../../src/read/typed-tree.ts";
import { yamlTree } from "../../src/read/yaml-tree.ts";

function read(text: string) {
  const faults = new Faults();
  const source = new SourceFile("journal/days/2026-03-14.md", text);
  const tree = yamlTree({ source, start: 0, end: text.length }, faults);
  return { plain: tree && plain(tree), tree, found: faults.found.map(({ message }) => message) };
}

function plain(node: TypedNode): unknown {
  if (node.kind === "text") return node.text;
  if (node.kind === "list") return node.items.map(plain);
  return Object.fromEntries([...node.entries].map(([key, { value }]) => [key, plain(value)]));
}

describe("a list with one unit behind it", () => {
  test.each([
    ["in a block", "values: [0.141, 0.140] in", { values: "[0.141, 0.140] in" }],
    ["in a list", "a:\n  - values: [1, 2] in", { a: [{ values: "[1, 2] in" }] }],
    [
      "between braces",
      "a: { values: [0.141, 0.140] in, at: row A }",
      { a: { values: "[0.141, 0.140] in", at: "row A" } },
    ],
    ["at the end of braces", "a: { values: [3/32, 1/8] in }", { a: { values: "[3/32, 1/8] in" } }],
    ["with an inch mark", 'values: [3/32", 1/8"] in', { values: '[3/32", 1/8"] in' }],
    ["with a comment", "values: [1, 2] in # twice", { values: "[1, 2] in" }],
    [
      "with lines of Windows",
      "values: [1, 2] in\r\ntitle: x\r\n",
      { values: "[1, 2] in", title: "x" },
    ],
    ["without a unit it is a list", "values: [1 in, 2 in]", { values: ["1 in", "2 in"] }],
  ])("%s", (_where, text, expected) => {
    expect(read(text).plain).toEqual(expected);
  });

  test.each([
    [
      "in double quotes",
      'title: "say values: [1, 2] in, and more"',
      "say values: [1, 2] in, and more",
    ],
    ["in single quotes", "title: 'say \"values: [1, 2] in\"'", 'say "values: [1, 2] in"'],
    ["behind an escaped quote", 'title: "a \\" values: [1] in"', 'a " values: [1] in'],
    [
      "in a block of text",
      "title: |-\n  values: [1] in\n  more\nplace: shop",
      "values: [1] in\nmore",
    ],
    ["in a folded block", "title: >-\n  values: [1] in\n", "values: [1] in"],
    ["in a list of quoted words", 'title: ["a", "values: [1] in"]', ["a", "values: [1] in"]],
  ])("what only looks like one stays as typed, %s", (_where, text, title) => {
    expect(read(text)).toMatchObject({ found: [], plain: { title } });
  });

  test("what stands behind two of them keeps its place", () => {
    const text = `a:
  - { values: [0.141, 0.140] in, at: "row, A", what: head }
  - { at: 'row B', values: [1, 2] in, what: diameter }
title: behind both
`;
    const { tree } = read(text);
    const at = (node: TypedNode | undefined) =>
      node && [node.span.line, node.span.column, node.source];
    const list = tree?.entries.get("a")?.value;
    const [first, second] = list?.kind === "list" ? list.items : [];
    const value = (node: TypedNode | undefined, key: string) =>
      node?.kind === "map" ? at(node.entries.get(key)?.value) : undefined;
    expect(value(first, "values")).toEqual([2, 15, "[0.141, 0.140] in"]);
    expect(value(first, "what")).toEqual([2, 54, "head"]);
    expect(value(second, "values")).toEqual([3, 28, "[1, 2] in"]);
    expect(value(second, "what")).toEqual([3, 45, "diameter"]);
    expect(at(tree?.entries.get("title")?.value)).toEqual([4, 8, "behind both"]);
  });
});
