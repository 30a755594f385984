/** An element of a page. */
export interface Element {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly parent?: Element;
  /** In document order; text as a reader sees it, with entities resolved. */
  readonly children: readonly (Element | string)[];
}

const voidTags = new Set([
  ...["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source"],
  ...["track", "wbr"],
]);

const entities: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: "\u00a0",
};

/**
 * The tree of a well-formed page, such as this program writes; a page that is not well formed
 * is refused. Made for tests, so that they need no browser.
 */
export function htmlTree(html: string): Element {
  type Open = {
    tag: string;
    attributes: Map<string, string>;
    parent?: Open;
    children: (Open | string)[];
  };
  const root: Open = { tag: "#root", attributes: new Map(), children: [] };
  let open: Open = root;
  const pieces = html.matchAll(
    /<!--[\s\S]*?-->|<!doctype[^>]*>|<(script|style)\b([^>]*)>[\s\S]*?<\/\1>|<\/([a-z0-9-]+)\s*>|<([a-zA-Z][\w:-]*)((?:\s+[^\s"'>/=]+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'>]+))?)*)\s*(\/?)>|([^<]+)/gi,
  );
  for (const [whole, , , closing, opening, attributes = "", slash, text] of pieces) {
    if (text !== undefined) open.children.push(resolved(text));
    else if (closing !== undefined) {
      if (open.tag !== closing.toLowerCase()) throw new Error(`</${closing}> closes <${open.tag}>`);
      open = open.parent ?? root;
    } else if (opening !== undefined) {
      const element: Open = {
        tag: opening.toLowerCase(),
        attributes: attributesOf(attributes),
        parent: open,
        children: [],
      };
      open.children.push(element);
      if (!voidTags.has(element.tag) && slash === "") open = element;
    } else if (whole.length === 0) throw new Error("nothing was read");
  }
  if (open !== root) throw new Error(`<${open.tag}> is not closed`);
  return root as Element;
}

/** The element and everything below it that meets the condition, in document order. */
export function all(root: Element, meets: (element: Element) => boolean): Element[] {
  const below = root.children.flatMap((child) =>
    typeof child === "string" ? [] : all(child, meets),
  );
  return meets(root) ? [root, ...below] : below;
}

/** The text of an element and everything in it. */
export function textOf(element: Element): string {
  return element.children
    .map((child) => (typeof child === "string" ? child : textOf(child)))
    .join("");
}

/** The element itself or the nearest around it that meets the condition. */
export function closest(
  element: Element | undefined,
  meets: (element: Element) => boolean,
): Element | undefined {
  for (let each = element; each; each = each.parent) if (meets(each)) return each;
  return undefined;
}

function attributesOf(text: string): Map<string, string> {
  const found = text.matchAll(/([^\s"'>/=]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g);
  return new Map(
    [...found].map(([, name = "", double, single, bare]) => [
      name,
      resolved(double ?? single ?? bare ?? ""),
    ]),
  );
}

function resolved(text: string): string {
  return text.replace(/&(?:#(\d+)|#x([0-9a-f]+)|([a-z]+));/gi, (whole, decimal, hex, name) => {
    if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
    if (hex !== undefined) return String.fromCodePoint(Number.parseInt(hex, 16));
    return entities[name] ?? whole;
  });
}
