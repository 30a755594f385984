import { describe, expect, test } from "vitest";
import type { Diagnostic, Span } from "../../../src/model/diagnostic.ts";
import { diagnosticsText, diagnosticText } from "../../../src/present/diagnostics/terminal-text.ts";

const torque: Diagnostic = {
  code: "reading-out-of-limits",
  severity: "error",
  span: {
    file: "content/days/2026-03-14.md",
    line: 17,
    column: 14,
    length: 9,
    text: "    reading: 31 lbf·in",
  },
  message: "torque on bolt AN3-5A is 31 lbf·in, above the limit of 25 lbf·in",
  label: "above the limit",
  notes: ["10-32 with tension nut: 20 to 25 lbf·in (AC 43.13-1B, table 7-1)"],
  help: [
    "if the wrench reading includes friction drag, record the drag beside it as `drag:`",
    "if it stays as it is, record a deviation and name it here as `deviation:`",
  ],
};

const at = (overrides: Partial<Span>, label?: string): Diagnostic => {
  const { label: _label, ...rest } = torque;
  return {
    ...rest,
    span: { ...torque.span, ...overrides },
    notes: [],
    help: [],
    ...(label === undefined ? {} : { label }),
  };
};

/** The excerpt and the line of carets below it. */
const excerpt = (overrides: Partial<Span>, label?: string) =>
  diagnosticText(at(overrides, label)).split("\n").slice(2);

test("the layout, word for word", () => {
  expect(diagnosticText(torque)).toBe(
    `content/days/2026-03-14.md:17:14: error[reading-out-of-limits]: torque on bolt AN3-5A is 31 lbf·in, above the limit of 25 lbf·in
   |
17 |     reading: 31 lbf·in
   |              ^^^^^^^^^ above the limit
   = note: 10-32 with tension nut: 20 to 25 lbf·in (AC 43.13-1B, table 7-1)
   = help: if the wrench reading includes friction drag, record the drag beside it as \`drag:\`
   = help: if it stays as it is, record a deviation and name it here as \`deviation:\``,
  );
});

test("several have an empty line between them, none is no text", () => {
  const one = at({ line: 5 });
  expect(diagnosticsText([one, one])).toBe(`${diagnosticText(one)}\n\n${diagnosticText(one)}`);
  expect(diagnosticsText([])).toBe("");
});

test("the margin is as wide as the line's number", () => {
  expect(diagnosticText(at({ line: 7 })).split("\n")[1]).toBe("  |");
  expect(diagnosticText(at({ line: 1234 })).split("\n")[1]).toBe("     |");
});

describe("carets", () => {
  test("without a label", () => {
    expect(excerpt({})).toEqual(["17 |     reading: 31 lbf·in", "   |              ^^^^^^^^^"]);
  });

  test("keep a tab before them as a tab", () => {
    expect(excerpt({ text: "\tkind: cut", column: 8, length: 3 })).toEqual([
      "17 | \tkind: cut",
      "   | \t      ^^^",
    ]);
  });

  test("count wide signs as two columns, before them and above them", () => {
    expect(excerpt({ text: "who: 翼と jon", column: 9, length: 3 })).toEqual([
      "17 | who: 翼と jon",
      "   |           ^^^",
    ]);
    expect(excerpt({ text: "who: 翼と jon", column: 6, length: 2 })).toEqual([
      "17 | who: 翼と jon",
      "   |      ^^^^",
    ]);
  });

  test.each([
    ["an accent of its own", "e\u0301", 1],
    ["an emoji made of several", "👩🏽‍🔧", 2],
    ["a flag", "🇫🇷", 2],
    ["a heart shown as emoji", "❤️", 2],
    ["a full-width letter", "Ａ", 2],
    ["a half-width katakana", "ｱ", 1],
    ["Hangul", "한", 2],
    ["a zero-width joiner alone", "\u200d", 0],
  ])("stand under %s", (_what, sign, width) => {
    const [, pointer] = excerpt({ text: `${sign}x`, column: sign.length + 1, length: 1 });
    expect(pointer).toBe(`   | ${" ".repeat(width)}^`);
  });

  test("end with the line, and one stands behind it when nothing is there", () => {
    expect(excerpt({ text: "date: 2026", column: 7, length: 99 })[1]).toBe("   |       ^^^^");
    expect(excerpt({ text: "date:", column: 6, length: 1 })[1]).toBe("   |      ^");
    expect(excerpt({ text: "", column: 1, length: 1 })).toEqual(["17 |", "   | ^"]);
    expect(excerpt({ text: "ab", column: 40, length: 1 })[1]).toBe("   |   ^");
  });
});

describe("a long line", () => {
  const long = `note: ${"a".repeat(300)} END ${"b".repeat(300)}`;

  test("is cut around the place", () => {
    const [line, pointer] = excerpt({ text: long, column: 308, length: 3 }, "here");
    expect(line).toMatch(/^17 \| …a{52} END b{52}…$/);
    expect(line?.indexOf("END")).toBe(pointer?.indexOf("^^^ here"));
  });

  test("is cut inside the place when that is long too", () => {
    const [line, pointer] = excerpt({ text: long, column: 7, length: 300 });
    expect(line).toMatch(/^17 \| note: a{53}… END b{48}…$/);
    expect(pointer).toBe(`   |       ${"^".repeat(54)}`);
  });

  test("of wide signs is measured in columns", () => {
    expect(excerpt({ text: "翼".repeat(81), column: 1, length: 1 })[0]).toMatch(/^17 \| 翼{54}…$/);
    expect(excerpt({ text: "翼".repeat(80), column: 1, length: 1 })[0]).toMatch(/^17 \| 翼{80}$/);
  });
});

test("what a terminal would obey is shown, not obeyed", () => {
  const rude = "a\u001b[31mb\u0007\u0000\u007f\u009b\u202ec";
  expect(excerpt({ text: rude, column: 3, length: 1 })[0]).toBe("17 | a␛[31mb␇␀␡��c");
  const message = diagnosticText({ ...at({}), message: "x\u001b]0;y\nz", notes: ["\r"] });
  expect(message).toContain("x␛]0;y␊z");
  expect(message).toContain("= note: ␍");
});

test("a painter is told what is what", () => {
  const painted = diagnosticText(torque, (part, text) => `<${part}>${text}</${part}>`);
  expect(painted.split("\n").slice(0, 5)).toEqual([
    "<place>content/days/2026-03-14.md:17:14:</place> <error>error[reading-out-of-limits]:</error> torque on bolt AN3-5A is 31 lbf·in, above the limit of 25 lbf·in",
    "   <frame>|</frame>",
    "<frame>17</frame> <frame>|</frame>     reading: 31 lbf·in",
    "   <frame>|</frame>              <caret>^^^^^^^^^ above the limit</caret>",
    "   <note>= note:</note> 10-32 with tension nut: 20 to 25 lbf·in (AC 43.13-1B, table 7-1)",
  ]);
});
