import { isAlias, isMap, isScalar, isSeq, type Node, parseDocument, type YAMLError } from "yaml";
import type { Span } from "../model/diagnostic.ts";
import type { Faults } from "./faults.ts";
import type { SourceFile } from "./source-file.ts";
import type { MapEntry, MapNode, TextNode, TypedNode } from "./typed-tree.ts";

// Bounds checked before the parser runs: it aborts the whole process on deeply nested input.
const mostBytes = 65_536;
const mostLines = 2_000;
const deepestIndent = 40;
const deepestBrackets = 20;
const longestDashRun = 20;

const forbiddenKeys = new Set(["__proto__", "constructor", "prototype"]);

/** A stretch of a file that is to be read as YAML. */
export interface YamlStretch {
  readonly source: SourceFile;
  readonly start: number;
  readonly end: number;
}

/**
 * Reads a stretch of a file as YAML whose every scalar is text. Anchors, aliases, tags and the
 * keys of JavaScript's own prototypes are refused; so is anything nested too deep.
 * @returns The top-level map, or `undefined` when a fault was added. An empty stretch is an
 *   empty map.
 */
export function yamlTree(stretch: YamlStretch, faults: Faults): MapNode | undefined {
  const { source, start, end } = stretch;
  const raw = source.text.slice(start, end);
  if (!withinBounds(raw, start, source, faults)) return undefined;

  const { text, insertions } = quoteListsWithUnits(raw);
  const original = (offset: number) => {
    let shift = 0;
    while (shift < insertions.length && (insertions[shift] ?? 0) < offset) shift++;
    return start + offset - shift;
  };
  const spanOf = (from: number, to: number): Span => {
    const at = original(from);
    return source.span(at, Math.max(1, original(to) - at));
  };

  const document = parseDocument(text, {
    schema: "failsafe",
    uniqueKeys: true,
    logLevel: "silent",
    prettyErrors: false,
    strict: true,
  });
  if (document.errors.length > 0) {
    for (const error of document.errors) addYamlFault(error, text, spanOf, faults);
    return undefined;
  }
  const before = faults.found.length;
  const emptyAt = source.span(start, 1);
  if (document.contents === null) {
    return { kind: "map", entries: new Map(), span: emptyAt, source: "" };
  }
  // The text as it stands in the file, without the quotes put in above.
  const typed = (from: number, to: number) => source.text.slice(original(from), original(to));
  const tree = convert(document.contents, { spanOf, typed, faults });
  if (faults.found.length > before || tree === undefined) return undefined;
  if (tree.kind !== "map") {
    return faults.add("wrong-shape", tree.span, {
      message: "expected `key: value` lines, found something else",
      help: ["begin each line with a key and a colon, as in `title: Tail ribs riveted`"],
    });
  }
  return tree;
}

function withinBounds(raw: string, start: number, source: SourceFile, faults: Faults): boolean {
  const tooLarge = (offset: number, what: string, help: string) => {
    faults.add("front-matter-too-large", source.span(start + offset, 1), {
      message: what,
      help: [help],
    });
    return false;
  };
  if (raw.length > mostBytes) {
    return tooLarge(
      mostBytes,
      `more than ${mostBytes / 1024} KiB of structured text`,
      "move what is prose below the second `---`",
    );
  }
  let offset = 0;
  let depth = 0;
  let lines = 0;
  for (const line of raw.split("\n")) {
    lines++;
    if (lines > mostLines) {
      return tooLarge(offset, `more than ${mostLines} lines of structured text`, "split the entry");
    }
    const indent = line.length - line.trimStart().length;
    if (indent > deepestIndent && line.trim() !== "") {
      return tooLarge(
        offset + indent,
        `indented by ${indent} columns, more than ${deepestIndent}`,
        "two spaces per level are enough",
      );
    }
    const dashes = /^\s*((?:- ?)+)/.exec(line)?.[1]?.replaceAll(" ", "").length ?? 0;
    if (dashes > longestDashRun) {
      return tooLarge(offset, `${dashes} list marks on one line`, "one `- ` begins one item");
    }
    for (let at = 0; at < line.length; at++) {
      const sign = line[at];
      if (sign === "[" || sign === "{") depth++;
      else if (sign === "]" || sign === "}") depth = Math.max(0, depth - 1);
      if (depth > deepestBrackets) {
        return tooLarge(
          offset + at,
          `brackets nested deeper than ${deepestBrackets}`,
          "close the brackets that are open, or write the list as `- ` lines",
        );
      }
    }
    offset += line.length + 1;
  }
  return true;
}

// A list with one unit behind it, `[0.141, 0.140] in`, is how readings are typed, but it is not
// YAML. It is quoted here, sign by sign, so that every place in the file can still be found.
// What stands in quotes already, or in a block of text behind `|` or `>`, is words and stays.
const listWithUnit =
  /(?:^|[[{,]|[:-][ \t])[ \t]*(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')|(\bvalues[ \t]*:[ \t]*)(\[[^\]]*\][ \t]*[^\s,}\]#][^,}#]*)/g;
const opensBlock = /(?:^|[:-][ \t]+)[|>][+-]?\d?[+-]?[ \t]*(?:#.*)?$/;

function quoteListsWithUnits(raw: string): { text: string; insertions: number[] } {
  const insertions: number[] = [];
  let lineStart = 0;
  let blockIndent: number | undefined;
  const lines = raw.split(/(?<=\n)/).map((line) => {
    const bare = line.trimEnd();
    const indent = line.length - line.trimStart().length;
    if (blockIndent !== undefined && indent <= blockIndent && bare !== "") blockIndent = undefined;
    const quoted =
      blockIndent === undefined
        ? bare.replace(listWithUnit, (whole: string, key?: string, value?: string, at = 0) => {
            if (key === undefined || value === undefined) return whole;
            const list = value.trimEnd();
            const quote = list.includes('"') ? "'" : '"';
            const from = lineStart + at + key.length;
            insertions.push(from + insertions.length);
            insertions.push(from + list.length + insertions.length);
            return `${key}${quote}${list}${quote}${value.slice(list.length)}`;
          })
        : bare;
    if (blockIndent === undefined && opensBlock.test(bare)) blockIndent = indent;
    lineStart += line.length;
    return `${quoted}${line.slice(bare.length)}`;
  });
  return { text: lines.join(""), insertions };
}

interface Conversion {
  readonly spanOf: (from: number, to: number) => Span;
  readonly typed: (from: number, to: number) => string;
  readonly faults: Faults;
}

function convert(node: Node, conversion: Conversion): TypedNode | undefined {
  const { spanOf, typed, faults } = conversion;
  const [from, to] = node.range ?? [0, 0, 0];
  const span = spanOf(from, to);
  const source = typed(from, to);
  const anchor = "anchor" in node && node.anchor ? `&${node.anchor}` : undefined;
  const reference = isAlias(node) ? `*${node.source}` : (anchor ?? node.tag);
  if (reference) {
    return faults.add("alias-or-anchor", span, {
      message: `\`${reference}\` is not used here: anchors, aliases and tags are refused`,
      help: ["write the value out, or put it in quotes if it begins with `&`, `*` or `!`"],
    });
  }
  if (isScalar(node)) {
    const comment = node.comment;
    if (typeof comment === "string" && /^\S/.test(comment)) {
      faults.add("comment-swallows-text", spanOf(to, to + comment.length + 2), {
        message: `\`#${comment}\` would be lost: after a space, \`#\` begins a comment`,
        help: [
          "write a drill as `No. 30`, or put the whole value in quotes",
          "if it is a comment, leave a space after the `#`",
        ],
      });
    }
    return { kind: "text", text: String(node.value ?? ""), span, source };
  }
  if (isSeq(node)) {
    const items: TypedNode[] = [];
    for (const item of node.items) {
      const converted = convert(item as Node, conversion);
      if (converted) items.push(converted);
    }
    return { kind: "list", items, span, source };
  }
  if (isMap(node)) return convertMap(node.items, span, source, conversion);
  return undefined;
}

function convertMap(
  pairs: readonly { key: unknown; value: unknown }[],
  span: Span,
  source: string,
  conversion: Conversion,
): MapNode {
  const { faults } = conversion;
  const entries = new Map<string, MapEntry>();
  for (const pair of pairs) {
    const key = convert(pair.key as Node, conversion);
    if (key?.kind !== "text") continue;
    if (forbiddenKeys.has(key.text)) {
      faults.add("forbidden-key", key.span, {
        message: `\`${key.text}\` cannot be used as a key`,
        help: ["leave the line out"],
      });
      continue;
    }
    const value = pair.value
      ? convert(pair.value as Node, conversion)
      : ({ kind: "text", text: "", span: key.span, source: "" } satisfies TextNode);
    if (value) entries.set(key.text, { key, value });
  }
  return { kind: "map", entries, span, source };
}

function addYamlFault(
  error: YAMLError,
  text: string,
  spanOf: Conversion["spanOf"],
  faults: Faults,
): void {
  const [from, to] = error.pos;
  const span = spanOf(from, Math.max(from + 1, to));
  if (error.code === "DUPLICATE_KEY") {
    const key = /^[^\s:]+/.exec(text.slice(from))?.[0] ?? "";
    faults.add("duplicate-key", span, {
      message: `\`${key}\` stands twice in the same place`,
      help: ["keep one of the two; to add to a list, add an item to the first"],
    });
    return;
  }
  // What was opened and not closed is noticed lines later; the fault is where it was opened.
  const opened = openedBefore(text, from);
  const place = opened === undefined ? span : spanOf(opened, opened + 1);
  faults.add("not-yaml", place, yamlWords(error, place.text));
}

// Where the line begins its value that holds the last unclosed quote or bracket before a place.
function openedBefore(text: string, place: number): number | undefined {
  const lines = text.slice(0, place).split("\n");
  let end = place;
  for (const line of lines.reverse()) {
    const start = end - line.length;
    const rest = text.slice(start).split("\n", 1)[0] ?? "";
    const value = /^\s*(?:- )?[\w-]+:\s+(["'][^"']*|[[{].*|.*\s#\d.*)$/.exec(rest)?.[1];
    if (value !== undefined) {
      const left = /^["']/.test(value) || bracketsOpen(value) > 0 || /\s#\d/.test(value);
      return left ? start + rest.length - value.length : undefined;
    }
    end = start - 1;
  }
  return undefined;
}

// The mistakes that evenings are made of, each recognised by what stands on the line where the
// parser gave up, or, for what was left open, on the line where it was opened.
function yamlWords(error: YAMLError, openLine: string): { message: string; help: string[] } {
  const value = /^\s*(?:- )?[\w-]+:\s+(.*)$/.exec(openLine)?.[1] ?? "";
  if (error.code === "TAB_AS_INDENT" || /^ *\t/.test(openLine)) {
    return {
      message: "a tab is used to indent",
      help: ["indent with spaces, two for each level"],
    };
  }
  if (/(^|\s)#\d/.test(openLine)) {
    return {
      message: "after a space, `#` begins a comment, and the rest of the line is lost",
      help: ["write a drill as `No. 30`, or put the whole value in quotes"],
    };
  }
  if (/^[@`%]/.test(value)) {
    return {
      message: `a value cannot begin with \`${value[0]}\``,
      help: [`put it in quotes: \`"${value}"\``],
    };
  }
  if (/^["'][^"']*$/.test(value)) {
    return {
      message: "a quotation mark is opened and not closed",
      help: [
        "close it on the same line",
        'an inch mark goes behind a number and needs no quotes, as in `3/32 in` or `3/32"`',
      ],
    };
  }
  if (error.code === "BLOCK_AS_IMPLICIT_KEY" || /:\s/.test(value.replace(/^["'{[].*/, ""))) {
    return {
      message: "a colon inside the text is taken for a second key",
      help: [`put the text in quotes: \`"${value}"\``],
    };
  }
  if (bracketsOpen(openLine) > 0) {
    return {
      message: "a bracket is opened and not closed",
      help: ["close `{` with `}` and `[` with `]`"],
    };
  }
  return {
    message: `this line cannot be read: ${plainYaml(error)}`,
    help: ["write `key: value`, with a space after the colon; put text with signs in quotes"],
  };
}

function bracketsOpen(line: string): number {
  const opened = line.match(/[[{]/g)?.length ?? 0;
  const closed = line.match(/[\]}]/g)?.length ?? 0;
  return opened - closed;
}

function plainYaml(error: YAMLError): string {
  const first = error.message.split("\n")[0] ?? "";
  return (first.charAt(0).toLowerCase() + first.slice(1)).replace(/\.$/, "");
}
