import MarkdownIt from "markdown-it";

/** HTML that this program made itself and that may be placed in a page as it is. */
export interface Html {
  readonly html: string;
}

/** What a piece of prose may refer to. */
export interface ProseSetting {
  /** Put before the id of every heading, so that none can take the place of the page's own. */
  readonly idPrefix: string;
  /** The level of the prose's highest heading, 2 to 6; lower ones follow without a gap. */
  readonly topHeading: number;
  /**
   * What a link to a bare date such as `[the day before](2026-03-13)` stands for; `undefined`
   * for a day that has no page, whose link becomes plain text.
   */
  readonly dayHref?: (date: string) => string | undefined;
  /**
   * What a fenced block at the left margin leads to, which then stands in its place as a link;
   * `undefined` for one that is shown as typed.
   *
   * @param line Of the prose, counted from 0.
   */
  readonly fenceLink?: (line: number) => { text: string; href: string } | undefined;
}

interface Environment extends ProseSetting {
  readonly taken: Map<string, number>;
}

const date = /^\d{4}-\d{2}-\d{2}$/;
const schemes = /^(?:https?:\/\/[^/]|mailto:[^/])/i;

const markdown = new MarkdownIt({ html: false, linkify: true, typographer: false });
// `rib.no` and `foo@bar` stay text: part numbers look like them.
markdown.linkify.set({ fuzzyLink: false, fuzzyEmail: false, fuzzyIP: false });
markdown.validateLink = isSafeLink;
// Photographs come through the journal's `photos`, which are re-encoded; nothing else is shown.
markdown.renderer.rules.image = (tokens, index) =>
  markdown.utils.escapeHtml(tokens[index]?.content ?? "");
markdown.renderer.rules.table_open = () =>
  '<section class="scroll" aria-label="table" tabindex="0"><table>\n';
markdown.renderer.rules.table_close = () => "</table></section>\n";
markdown.renderer.rules.code_block = (tokens, index) => preformatted(tokens[index]?.content ?? "");
markdown.renderer.rules.fence = (tokens, index, _options, env) => {
  const token = tokens[index];
  const fenceLink = (env?.setting as Environment | undefined)?.fenceLink;
  const line = token?.level === 0 ? token.map?.[0] : undefined;
  const link = line === undefined ? undefined : fenceLink?.(line);
  if (!link) return preformatted(token?.content ?? "");
  const { escapeHtml } = markdown.utils;
  return `<p><a href="${escapeHtml(link.href)}">${escapeHtml(link.text)}</a></p>\n`;
};
markdown.core.ruler.push("journal", (state) => {
  const setting = state.env.setting as Environment;
  const ranks = [...new Set(state.tokens.filter(isHeadingOpen).map(({ tag }) => tag))].sort();
  for (const [index, token] of state.tokens.entries()) {
    if (token.type === "heading_open" || token.type === "heading_close") {
      token.tag = `h${Math.min(6, setting.topHeading + ranks.indexOf(token.tag))}`;
    }
    if (token.type === "heading_open") {
      token.attrSet("id", headingId(state.tokens[index + 1]?.content ?? "", setting));
    }
    // The page's policy forbids inline style, which is how a column's alignment arrives.
    if (token.type === "th_open" || token.type === "td_open") {
      const end = String(token.attrGet("style") ?? "").includes("right");
      token.attrs = [
        ...(token.type === "th_open" ? [["scope", "col"] as [string, string]] : []),
        ...(end ? [["class", "n"] as [string, string]] : []),
      ];
    }
    if (token.type === "inline") resolveDays(token.children ?? [], setting);
  }
});

/**
 * A day's Markdown as HTML. Raw HTML in it is shown as text, quotes and signs stay as typed,
 * and only links to the web, to mail addresses, to other days and within the site survive.
 *
 * @example renderProse("# Rivets\n<b>", { idPrefix: "p-", topHeading: 2 }).html
 *   // '<h2 id="p-rivets">Rivets</h2>\n<p>&lt;b&gt;</p>\n'
 */
export function renderProse(source: string, setting: ProseSetting): Html {
  const environment: Environment = { ...setting, taken: new Map() };
  return { html: markdown.render(source, { setting: environment }) };
}

/**
 * Whether a link may stand in a page: `http:`, `https:`, `mailto:`, an anchor, or a path
 * within the site. Another scheme, a host without a scheme and hidden characters may not.
 */
export function isSafeLink(url: string): boolean {
  const text = url.trim();
  if (hasHiddenCharacter(text)) return false;
  if (schemes.test(text)) return true;
  const plain = decodedOnce(text);
  return plain !== undefined && !/^[/\\]{2}|^[^/?#]*:|\\/.test(plain);
}

function hasHiddenCharacter(text: string): boolean {
  return [...text].some((character) => character <= " " || character === "\u007f");
}

function decodedOnce(text: string): string | undefined {
  try {
    return decodeURIComponent(text).replace(/&(?:#\d+|#x[\da-f]+|colon|tab|newline);?/gi, ":");
  } catch {
    return undefined;
  }
}

/** The same Markdown as a list of markdown-it's own pieces, for what is not HTML. */
export function proseTokens(source: string): readonly Token[] {
  return markdown.parse(source, { setting: { idPrefix: "", topHeading: 2, taken: new Map() } });
}

/** The first sentences of a day's prose as plain text, at most `length` characters, up to 320. */
export function excerpt(source: string, length: number): string {
  const text = plainBeginning(source);
  if (text.length <= length) return text;
  const cut = text.slice(0, length);
  const stop = cut.lastIndexOf(". ");
  if (stop > length / 2) return cut.slice(0, stop + 1);
  return `${cut.slice(0, cut.lastIndexOf(" "))} …`;
}

// A day is quoted on its own sheet, on its month's, and in titles.
const beginnings = new Map<string, string>();
const mostBeginnings = 10_000;

// Enough of it for the longest excerpt, whatever marks stand between the words.
function plainBeginning(source: string): string {
  const known = beginnings.get(source);
  if (known !== undefined) return known;
  const text = proseTokens(source.slice(0, 1500))
    .filter(({ type }, index, all) => type === "inline" && all[index - 1]?.type !== "heading_open")
    .map(({ children }) => (children ?? []).map(textOf).join(""))
    .join(" ")
    .replace(/\s+/g, " ")
    .trim();
  if (beginnings.size === mostBeginnings) beginnings.clear();
  beginnings.set(source, text);
  return text;
}

/** One piece of parsed Markdown. */
export type Token = ReturnType<typeof markdown.parse>[number];

function isHeadingOpen({ type }: Token): boolean {
  return type === "heading_open";
}

function textOf({ type, content }: Token): string {
  if (type === "softbreak" || type === "hardbreak") return " ";
  return type === "text" || type === "code_inline" ? content : "";
}

function resolveDays(children: readonly Token[], { dayHref }: ProseSetting): void {
  for (const [index, token] of children.entries()) {
    const target = token.type === "link_open" ? String(token.attrGet("href") ?? "") : "";
    if (!date.test(target)) continue;
    const href = dayHref?.(target);
    if (href !== undefined) token.attrSet("href", href);
    else unlink(children, index);
  }
}

// The words stay; the link around them goes.
function unlink(children: readonly Token[], from: number): void {
  const end = children.findIndex(({ type }, index) => index > from && type === "link_close");
  for (const token of [children[from], children[end]]) {
    if (!token) continue;
    token.type = "text";
    token.content = "";
    token.nesting = 0;
  }
}

function headingId(text: string, { idPrefix, taken }: Environment): string {
  const plain = text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  const name = `${idPrefix}${plain || "heading"}`;
  const count = (taken.get(name) ?? 0) + 1;
  taken.set(name, count);
  return count === 1 ? name : `${name}-${count}`;
}

function preformatted(content: string): string {
  return `<pre tabindex="0"><code>${markdown.utils.escapeHtml(content)}</code></pre>\n`;
}
