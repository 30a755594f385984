import {
  type ProseBlock,
  type ProseSpan,
  plainText,
} from "../../../present/markdown/prose-blocks.ts";
import type { Pages } from "../paper/pages.ts";
import { Branch, type PlacedLine, tagged } from "../paper/sheet.ts";
import type { Style, StyledText, Typesetter } from "../paper/typesetter.ts";

const size = 8.2;
const advance = 11.6;
const body: Style = { face: "text", size };
const manners = {
  strong: { face: "bold", size },
  stressed: { face: "italic", size },
  code: { face: "mono", size: size * 0.95 },
  struck: { face: "text", size, struck: true },
} as const satisfies Record<string, Style>;
const mono: Style = { face: "mono", size: 7.2 };
const monoAdvance = 9.6;

/** Sets a day's prose. @param level Of its highest headings in the document's structure. */
export function setProse(
  pages: Pages,
  setter: Typesetter,
  blocks: readonly ProseBlock[],
  level: number,
  within?: Branch,
): void {
  for (const block of blocks) setBlock(pages, setter, block, level, within);
}

function setBlock(
  pages: Pages,
  setter: Typesetter,
  block: ProseBlock,
  level: number,
  within: Branch | undefined,
): void {
  switch (block.kind) {
    case "paragraph":
      for (const line of block.lines) {
        pages.styled(line.map(styled), { advance, gap: 2.4, ...(within ? { within } : {}) });
      }
      return;
    case "heading": {
      pages.room(40);
      pages.space(4);
      pages.styled([{ text: plainText(block.lines), style: { face: "caps", size: 10 } }], {
        type: `H${Math.min(6, level + block.rank - 1)}`,
        gap: 1,
      });
      return;
    }
    case "list":
      setList(pages, setter, block, level, within);
      return;
    case "quote":
      setQuote(pages, setter, block.blocks, level, within);
      return;
    case "code":
      setCode(pages, setter, block.lines, within);
      return;
    case "table":
      setTable(pages, setter, block);
      return;
    case "rule": {
      pages.room(12);
      pages.space(5);
      const { left, right } = pages.column;
      const third = (right - left) / 3;
      pages.sheet.across(left + third, right - third, pages.y, 0.4);
      pages.space(5);
    }
  }
}

function styled({ text, strong, stressed, code, struck }: ProseSpan): StyledText {
  const style = code
    ? manners.code
    : strong
      ? manners.strong
      : stressed
        ? manners.stressed
        : struck
          ? manners.struck
          : body;
  return { text, style };
}

function setList(
  pages: Pages,
  setter: Typesetter,
  { from, items }: Extract<ProseBlock, { kind: "list" }>,
  level: number,
  within: Branch | undefined,
): void {
  const list = new Branch("L", within);
  items.forEach((blocks, index) => {
    const item = new Branch("LI", list);
    const words = new Branch("LBody", item);
    const mark = setter.line(from === undefined ? "•" : `${from + index}.`, body);
    pages.indented(from === undefined ? 12 : 18, () => {
      const [first, ...rest] = blocks;
      if (first?.kind === "paragraph") {
        const [line, ...more] = first.lines;
        const label = { runs: mark.runs, width: from === undefined ? 9 : 16 };
        pages.styled((line ?? []).map(styled), { advance, gap: 1.2, label, within: words });
        for (const each of more)
          pages.styled(each.map(styled), { advance, gap: 1.2, within: words });
        setProse(pages, setter, rest, level, words);
      } else {
        pages.sheet.marks.push(
          tagged("Lbl", [{ line: mark, x: pages.column.left - 9, y: pages.y + advance }], item),
        );
        setProse(pages, setter, blocks, level, words);
      }
    });
    pages.sheet.marks.push(words.close, item.close);
  });
  pages.sheet.marks.push(list.close);
}

function setQuote(
  pages: Pages,
  setter: Typesetter,
  blocks: readonly ProseBlock[],
  level: number,
  within: Branch | undefined,
): void {
  const quote = new Branch("BlockQuote", within);
  pages.indented(14, () => {
    besideRule(pages, pages.column.left - 8, () => {
      setProse(pages, setter, blocks, level, quote);
    });
  });
  pages.sheet.marks.push(quote.close);
}

/** Draws a rule beside everything that is added meanwhile, on every sheet it takes. */
export function besideRule(pages: Pages, x: number, add: () => void, ink?: "red"): void {
  const from = { index: pages.sheets.length - 1, y: pages.y };
  add();
  const to = { index: pages.sheets.length - 1, y: pages.y };
  pages.sheets.slice(from.index, to.index + 1).forEach((sheet, step) => {
    const index = from.index + step;
    const top = index === from.index ? from.y + 2 : pages.top;
    const bottom = index === to.index ? to.y - 1 : pages.bottom;
    if (bottom > top) sheet.down(x, top, bottom, 1.4, ink);
  });
}

function setCode(
  pages: Pages,
  setter: Typesetter,
  lines: readonly string[],
  within: Branch | undefined,
): void {
  const wide = setter.width("m", mono);
  const { left } = pages.column;
  const most = Math.max(8, Math.floor((pages.width - 12) / wide));
  const rows = lines.flatMap((line) => inRows(line.replaceAll("\t", "    "), most));
  const code = new Branch("Code", within);
  pages.space(4);
  for (const row of rows) {
    pages.room(monoAdvance);
    const top = pages.y;
    pages.sheet.grounds.push({ left, top, right: pages.right, bottom: top + monoAdvance });
    pages.space(monoAdvance);
    // White space would be drawn as one space: what stands behind it goes to its own column.
    const placed = [...row.matchAll(/\S+(?: \S+)*/g)].map(
      (found): PlacedLine => ({
        line: setter.line(found[0], mono),
        x: left + 6 + found.index * wide,
        y: top + 7,
      }),
    );
    if (placed.length > 0) pages.sheet.marks.push(tagged("Span", placed, code));
  }
  pages.sheet.marks.push(code.close);
  pages.space(4);
}

function inRows(line: string, most: number): string[] {
  const characters = Array.from(line);
  const rows: string[] = [];
  for (let at = 0; at === 0 || at < characters.length; at += most) {
    rows.push(characters.slice(at, at + most).join(""));
  }
  return rows;
}

function setTable(
  pages: Pages,
  setter: Typesetter,
  { columns, rows }: Extract<ProseBlock, { kind: "table" }>,
): void {
  // As wide as their longest words ask for, and not wider than the column together.
  const wanted = columns.map(({ head }, index) =>
    Math.max(
      24,
      setter.width(head.toUpperCase(), { face: "caps", size: 6.6 }) + 10,
      ...rows.map((row) => setter.width(row[index] ?? "", { face: "text", size: 7 }) + 10),
    ),
  );
  const whole = wanted.reduce((sum, width) => sum + width, 0);
  const scale = Math.min(1, pages.width / Math.max(1, whole));
  pages.table({
    title: columns.map(({ head }) => head).join(", "),
    columns: columns.map(({ head, right }, index) => ({
      heading: head,
      width: (wanted[index] ?? 24) * scale,
      align: right ? "right" : "left",
      face: "text",
    })),
    rows: rows.map((row) => ({ cells: columns.map((_, index) => ({ text: row[index] ?? "" })) })),
    filled: false,
    none: "",
  });
  pages.space(4);
}
