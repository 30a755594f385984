import { describe, expect, test } from "vitest";
import {
  type ProseBlock,
  plainText,
  proseBlocks,
} from "../../../src/present/markdown/prose-blocks.ts";

/** One block in short: its kind and its words. */
function short(block: ProseBlock): unknown {
  switch (block.kind) {
    case "paragraph":
      return plainText(block.lines);
    case "heading":
      return { [`heading ${block.rank}`]: plainText(block.lines) };
    case "list":
      return {
        [block.from === undefined ? "list" : `from ${block.from}`]: block.items.map(shorts),
      };
    case "quote":
      return { quote: shorts(block.blocks) };
    case "code":
      return { code: block.lines };
    case "table":
      return {
        table: [block.columns.map(({ head, right }) => (right ? `${head}>` : head)), ...block.rows],
      };
    case "rule":
      return "---";
  }
}

const shorts = (blocks: readonly ProseBlock[]) => blocks.map(short);

test.each<[name: string, source: string, blocks: unknown[]]>([
  ["paragraphs", "One\nline.\n\nTwo.", ["One line.", "Two."]],
  ["headings without a gap", "## A\n\n#### B", [{ "heading 1": "A" }, { "heading 2": "B" }]],
  ["lists in lists", "- a\n- b\n  1. c\n", [{ list: [["a"], ["b", { "from 1": [["c"]] }]] }]],
  ["numbers that go on", "4. d\n5. e\n\n   more", [{ "from 4": [["d"], ["e", "more"]] }]],
  ["quotes", "> said\n>\n> - twice", [{ quote: ["said", { list: [["twice"]] }] }]],
  ["code with its columns", "```\na   b\n\n  c\n```", [{ code: ["a   b", "", "  c"] }]],
  ["indented code", "    x\n    y", [{ code: ["x", "y"] }]],
  [
    "tables",
    "| row | holes |\n|---|--:|\n| A | **12** |\n| B |  |",
    [
      {
        table: [
          ["row", "holes>"],
          ["A", "12"],
          ["B", ""],
        ],
      },
    ],
  ],
  ["rules", "a\n\n---\n\nb", ["a", "---", "b"]],
  ["raw HTML as text", "<b>x</b>\n\n<div>\ny\n</div>", ["<b>x</b>", "<div> y </div>"]],
  ["the description of a picture", "![a spar](x.png)", ["a spar"]],
  ["an address behind its words", "[maker](https://x.example/a)", ["maker (https://x.example/a)"]],
  ["an address that is its own words", "https://x.example/a%20b", ["https://x.example/a%20b"]],
  ["a mail address", "<jon@shop.example>", ["jon@shop.example"]],
  ["another day", "[the day before](2026-03-13)", ["the day before"]],
  ["nothing", "\n \n", []],
])("reads %s", (_, source, blocks) => {
  expect(shorts(proseBlocks(source))).toEqual(blocks);
});

describe("manners of words", () => {
  test("are kept, one within the other as well", () => {
    const [block] = proseBlocks("a **b *c* d** `e  f` ~~g~~");
    expect(block?.kind === "paragraph" && block.lines).toEqual([
      [
        { text: "a " },
        { text: "b ", strong: true },
        { text: "c", strong: true, stressed: true },
        { text: " d", strong: true },
        { text: " " },
        { text: "e  f", code: true },
        { text: " " },
        { text: "g", struck: true },
      ],
    ]);
  });

  test("a line that the builder broke stays broken", () => {
    const [block] = proseBlocks("one  \ntwo\nthree");
    expect(block?.kind === "paragraph" && block.lines.map((line) => plainText([line]))).toEqual([
      "one",
      "two three",
    ]);
  });
});
