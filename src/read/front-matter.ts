import type { Faults } from "./faults.ts";
import type { SourceFile } from "./source-file.ts";
import type { MapNode } from "./typed-tree.ts";
import { yamlTree } from "./yaml-tree.ts";

/** An entry's structured part and what follows it. */
export interface FrontMatter {
  readonly tree: MapNode;
  /** The Markdown below, as typed. */
  readonly prose: string;
  /** The same as a place in the file. */
  readonly proseStart: number;
}

/**
 * Splits an entry at its fence: `---` on the first line and the next `---` on a line of its own.
 * A fence that asks for another language (`---js`) is refused; nothing in an entry is ever run.
 * @returns `undefined` when a fault was added.
 */
export function frontMatter(source: SourceFile, faults: Faults): FrontMatter | undefined {
  const { text } = source;
  const firstEnd = lineEnd(text, 0);
  const first = text.slice(0, firstEnd).trimEnd();
  if (first !== "---") {
    if (first.startsWith("---")) {
      return faults.add("code-front-matter", source.span(0, first.length), {
        message: `\`${first}\` asks for front matter in another language; only \`---\` is read`,
        help: ["write `---` alone on the first line; entries are never run as code"],
      });
    }
    return faults.add("front-matter-missing", source.span(0, Math.max(1, first.length)), {
      message: "an entry begins with `---` on its first line",
      help: ["put `---`, then `date: YYYY-MM-DD`, then `---` above the prose"],
    });
  }
  const start = firstEnd + 1;
  for (let at = start; at < text.length; ) {
    const end = lineEnd(text, at);
    const line = text.slice(at, end).trimEnd();
    if (line === "---") {
      const tree = yamlTree({ source, start, end: at }, faults);
      const proseStart = Math.min(end + 1, text.length);
      return tree && { tree, prose: text.slice(proseStart), proseStart };
    }
    at = end + 1;
  }
  return faults.add("front-matter-missing", source.span(0, 3), {
    message: "the front matter is opened and not closed",
    help: ["put `---` on a line of its own below the last key"],
  });
}

function lineEnd(text: string, from: number): number {
  const at = text.indexOf("\n", from);
  return at < 0 ? text.length : at;
}
