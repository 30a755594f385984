/** One opening tag of an HTML or SVG file. */
export interface PageTag {
  /** Lower case. */
  readonly name: string;
  /** By lower-case name, character references resolved; an attribute without a value is "". */
  readonly attributes: ReadonlyMap<string, string>;
  /** From 1. */
  readonly line: number;
  /** What stands between a `script` or `style` tag and its end. */
  readonly rawText?: string;
}

/** A page that is not written the way this program writes pages. */
export class PageFault extends Error {
  override readonly name = "PageFault";
  constructor(
    message: string,
    /** From 1. */
    readonly line: number,
  ) {
    super(message);
  }
}

/**
 * The opening tags of a page that load, link, run, name or set something, in order. Comments,
 * text, and tags that can do none of these (such as a cell with a class) are passed over.
 *
 * Reads the strict form that this program's own pages have, and refuses all else, so that a
 * check built on it never overlooks a tag that a browser would see.
 *
 * @throws PageFault at the first thing that is not understood.
 */
export function tagsOf(html: string): PageTag[] {
  const tags: PageTag[] = [];
  let line = 1;
  // The next line end is looked for once: pages stand on few and very long lines.
  let lineEnd = html.indexOf("\n");
  const lineAt = (offset: number): number => {
    while (lineEnd !== -1 && lineEnd < offset) {
      line += 1;
      lineEnd = html.indexOf("\n", lineEnd + 1);
    }
    return line;
  };

  for (let at = html.indexOf("<"); at !== -1; at = html.indexOf("<", at)) {
    quietTag.lastIndex = at;
    if (quietTag.test(html)) {
      at = quietTag.lastIndex;
      continue;
    }
    const here = lineAt(at);
    if (html.startsWith("<!--", at)) {
      at = after(html, "-->", at + 4, here, "a comment");
    } else if (html[at + 1] === "!" || html[at + 1] === "?") {
      at = after(html, ">", at, here, "a declaration");
    } else {
      openingTag.lastIndex = at;
      const typed = openingTag.exec(html)?.[0];
      if (typed === undefined) {
        throw new PageFault(`a tag is not understood: ${html.slice(at, at + 40)}`, here);
      }
      const { name, attributes } = tagOf(typed, here);
      at = openingTag.lastIndex;
      if (["script", "style", "title", "textarea"].includes(name) && !typed.endsWith("/>")) {
        const close = new RegExp(`</${name}\\s*>`, "gi");
        close.lastIndex = at;
        const end = close.exec(html);
        if (!end) throw new PageFault(`\`${name}\` has no end`, here);
        tags.push({ name, attributes, line: here, rawText: html.slice(at, end.index) });
        at = close.lastIndex;
      } else {
        tags.push({ name, attributes, line: here });
      }
    }
  }
  return tags;
}

// Most tags of a large site: closing ones, and those that mean nothing without an attribute and
// have none that loads, links, runs or names. No map is made for them.
const telling =
  "a|area|audio|base|body|embed|iframe|img|link|meta|object|script|source|style|textarea|title|video";
const harmless =
  "class|scope|colspan|rowspan|headers|role|datetime|tabindex|hidden|lang|width|height|viewBox|d|x|y|x[12]|y[12]|cx|cy|r|rx|ry|points|transform|text-anchor|dominant-baseline|data-[a-z-]+|aria-[a-z]+";
const quietTag = new RegExp(
  `<(?:/[a-zA-Z][^>]*|(?!(?:${telling})[\\s/>])[a-z][a-z0-9]*(?:\\s+(?:${harmless})(?:="[^"]*")?)*\\s*/?)>`,
  "y",
);
const openingTag =
  /<[a-z][a-z0-9:-]*(?:\s+[^\s"'<>/=]+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'<>=`]+))?)*\s*\/?>/iy;
const tagName = /^<([a-z][a-z0-9:-]*)/i;

// The tags around a sheet are the same on every page of its depth.
const known = new Map<string, Pick<PageTag, "name" | "attributes">>();
const mostKnown = 2000;

function tagOf(typed: string, line: number): Pick<PageTag, "name" | "attributes"> {
  const seen = known.get(typed);
  if (seen) return seen;
  const name = tagName.exec(typed)?.[1]?.toLowerCase() ?? "";
  const attributes = attributesOf(
    typed.slice(1 + name.length).replace(/(?<=["'\s])\/>$|>$/, ""),
    line,
  );
  if (known.size === mostKnown) known.clear();
  known.set(typed, { name, attributes });
  return { name, attributes };
}

const attribute = /([^\s"'<>/=]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'<>=`]+)))?/g;

function attributesOf(text: string, line: number): Map<string, string> {
  const attributes = new Map<string, string>();
  for (const [, name = "", double, single, bare] of text.matchAll(attribute)) {
    const key = name.toLowerCase();
    if (attributes.has(key)) throw new PageFault(`the attribute \`${key}\` stands twice`, line);
    attributes.set(key, resolveReferences(double ?? single ?? bare ?? ""));
  }
  return attributes;
}

const named: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  colon: ":",
  sol: "/",
  bsol: "\\",
  Tab: "\t",
  NewLine: "\n",
  nbsp: "\u00a0",
};

function resolveReferences(text: string): string {
  return text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/gi, (whole, hex, decimal, name) => {
    if (name !== undefined) return named[name] ?? whole;
    const point = hex === undefined ? Number.parseInt(decimal, 10) : Number.parseInt(hex, 16);
    return point <= 0x10ffff ? String.fromCodePoint(point) : "\uFFFD";
  });
}

function after(html: string, end: string, from: number, line: number, what: string): number {
  const found = html.indexOf(end, from);
  if (found === -1) throw new PageFault(`${what} has no end`, line);
  return found + end.length;
}
