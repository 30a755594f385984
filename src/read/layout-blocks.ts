import type { Faults } from "./faults.ts";
import type { SourceFile } from "./source-file.ts";
import type { MapNode } from "./typed-tree.ts";
import { yamlTree } from "./yaml-tree.ts";

/** What such a block is called, behind its opening fence. */
export const layoutFence = "layout";

/** A block called `layout` in an entry's prose. */
export interface LayoutBlock {
  readonly tree: MapNode;
  /** Line of the prose on which its fence opens, counted from 0. */
  readonly line: number;
}

interface Line {
  readonly text: string;
  /** In the file. */
  readonly start: number;
  readonly end: number;
}

const fence = /^(`{3,}|~{3,})[ \t]*([^`]*?)[ \t]*$/;
// One that stands in a list or a quotation, or is set in.
const inward = /^(?=[\s>*+\d-])[\s>*+\d.)-]*(?:`{3,}|~{3,})[ \t]*layout\b/;

/**
 * Finds the blocks called `layout` in the prose of an entry and reads each as YAML, in place. A
 * block stands at the left margin; what stands inside another fenced block is an example and is
 * not read.
 *
 * Fences are those of CommonMark 0.31.2, section 4.5.
 *
 * @param start Where the prose begins in the file.
 */
export function layoutBlocks(source: SourceFile, start: number, faults: Faults): LayoutBlock[] {
  const lines = linesFrom(source.text, start);
  const blocks: LayoutBlock[] = [];
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at];
    if (!line) continue;
    if (inward.test(line.text)) addInward(source, line, faults);
    const opened = fence.exec(line.text);
    if (!opened) continue;
    const [, mark = "", info = ""] = opened;
    const close = lines.findIndex((each, index) => index > at && closes(each.text, mark));
    const [name = ""] = info.split(/\s+/);
    if (name === layoutFence) {
      const tree = treeOf(source, { open: line, info, close: lines[close], lines }, faults);
      if (tree) blocks.push({ tree, line: at });
    }
    // A block that is never closed runs to the end.
    at = close < 0 ? lines.length : close;
  }
  return blocks;
}

interface OpenedBlock {
  readonly open: Line;
  /** What stands behind the fence. */
  readonly info: string;
  readonly close: Line | undefined;
  readonly lines: readonly Line[];
}

function treeOf(
  source: SourceFile,
  { open, info, close, lines }: OpenedBlock,
  faults: Faults,
): MapNode | undefined {
  const place = source.span(open.start, open.text.length);
  if (!close) {
    return faults.add("not-a-layout", place, {
      message: "the `layout` block is opened and not closed",
      help: ["put three backquotes on a line of their own below its last key"],
    });
  }
  if (info !== layoutFence) {
    const from = open.start + open.text.indexOf(info) + layoutFence.length;
    faults.add("not-a-layout", source.span(from + 1, info.length - layoutFence.length - 1), {
      message: "nothing stands behind `layout` on the line that opens the block",
      help: ["write what it is called as `title:` inside the block"],
    });
  }
  const first = lines[lines.indexOf(open) + 1];
  const tree = yamlTree({ source, start: first?.start ?? close.start, end: close.start }, faults);
  // An empty block has no place of its own.
  return tree && (tree.entries.size > 0 ? tree : { ...tree, span: place });
}

function addInward(source: SourceFile, { start, text }: Line, faults: Faults): void {
  faults.add("not-a-layout", source.span(start, text.length), {
    message: "a `layout` block begins at the left margin, outside lists and quotations",
    help: ["take away what stands before its three backquotes"],
  });
}

function closes(text: string, mark: string): boolean {
  const bare = text.trim();
  return (
    /^ {0,3}\S/.test(text) &&
    bare.length >= mark.length &&
    [...bare].every((sign) => sign === mark[0])
  );
}

function linesFrom(text: string, start: number): Line[] {
  const lines: Line[] = [];
  for (let at = start; at < text.length; ) {
    const found = text.indexOf("\n", at);
    const end = found < 0 ? text.length : found;
    lines.push({ text: text.slice(at, end).replace(/\r$/, ""), start: at, end });
    at = end + 1;
  }
  return lines;
}
