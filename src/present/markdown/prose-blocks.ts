import { proseTokens, type Token } from "./render-prose.ts";

/** Words of a paragraph in one manner. */
export interface ProseSpan {
  readonly text: string;
  readonly strong?: boolean;
  readonly stressed?: boolean;
  readonly code?: boolean;
  readonly struck?: boolean;
}

/** Lines of a paragraph; a new one begins only where the builder broke it. */
export type ProseLines = readonly (readonly ProseSpan[])[];

/** A piece of a day's prose, as something other than a page shows it. */
export type ProseBlock =
  | { readonly kind: "paragraph"; readonly lines: ProseLines }
  /** `rank` counts from 1 for the highest heading of the prose, without a gap. */
  | { readonly kind: "heading"; readonly rank: number; readonly lines: ProseLines }
  | {
      readonly kind: "list";
      /** The number of the first item; absent: a list without numbers. */
      readonly from?: number;
      readonly items: readonly (readonly ProseBlock[])[];
    }
  | { readonly kind: "quote"; readonly blocks: readonly ProseBlock[] }
  /** White space kept as typed; `line` is where it begins in the prose, counted from 0. */
  | { readonly kind: "code"; readonly lines: readonly string[]; readonly line: number }
  | {
      readonly kind: "table";
      readonly columns: readonly { readonly head: string; readonly right: boolean }[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: "rule" };

/**
 * A day's Markdown as blocks. Nothing of it is lost: raw HTML stays the text that it is, a
 * picture its description, and the address of a link stands behind its words where it leads
 * out to the web and is not the words themselves.
 *
 * @example proseBlocks("Two *driven* heads").length // 1
 */
export function proseBlocks(source: string): readonly ProseBlock[] {
  return new Reader(proseTokens(source)).blocks();
}

/** Reads the flat list of tokens, in which `nesting` says where something ends. */
class Reader {
  readonly #tokens: readonly Token[];
  readonly #topRank: number;
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
    const ranks = tokens.filter(({ type }) => type === "heading_open").map(rankOf);
    this.#topRank = Math.min(...ranks, 6);
  }

  /** The blocks up to the end of what holds them. */
  blocks(): ProseBlock[] {
    const blocks: ProseBlock[] = [];
    for (let token = this.#next(); token; token = this.#next()) {
      if (token.nesting < 0) break;
      const block = this.#block(token);
      if (block) blocks.push(block);
    }
    return blocks;
  }

  #next(): Token | undefined {
    this.#at += 1;
    return this.#tokens[this.#at - 1];
  }

  #block(token: Token): ProseBlock | undefined {
    switch (token.type) {
      case "paragraph_open":
        return { kind: "paragraph", lines: this.#inline() };
      case "heading_open":
        return {
          kind: "heading",
          rank: rankOf(token) - this.#topRank + 1,
          lines: this.#inline(),
        };
      case "bullet_list_open":
        return { kind: "list", items: this.#items() };
      case "ordered_list_open":
        return { kind: "list", from: Number(token.attrGet("start") ?? 1), items: this.#items() };
      case "blockquote_open":
        return { kind: "quote", blocks: this.blocks() };
      case "fence":
      case "code_block":
        return {
          kind: "code",
          lines: token.content.replace(/\n$/, "").split("\n"),
          line: token.map?.[0] ?? 0,
        };
      case "table_open":
        return this.#table();
      case "hr":
        return { kind: "rule" };
      case "inline":
        return { kind: "paragraph", lines: linesOf(token) };
      default:
        return token.content === ""
          ? undefined
          : { kind: "paragraph", lines: [[{ text: token.content }]] };
    }
  }

  /** What stands between an opening token and its closing one, which is passed. */
  #inline(): ProseLines {
    const token = this.#next();
    this.#next();
    return token ? linesOf(token) : [];
  }

  #items(): ProseBlock[][] {
    const items: ProseBlock[][] = [];
    for (let token = this.#next(); token && token.nesting >= 0; token = this.#next()) {
      items.push(this.blocks());
    }
    return items;
  }

  #table(): ProseBlock {
    const columns: { head: string; right: boolean }[] = [];
    const rows: string[][] = [];
    let row: string[] = [];
    for (let token = this.#next(); token && token.type !== "table_close"; token = this.#next()) {
      if (token.type === "th_open") {
        const right = token.attrGet("class") === "n";
        columns.push({ head: plainText(this.#inline()), right });
      } else if (token.type === "td_open") row.push(plainText(this.#inline()));
      else if (token.type === "tr_close" && row.length > 0) {
        rows.push(row);
        row = [];
      }
    }
    return { kind: "table", columns, rows };
  }
}

/** The words alone. */
export function plainText(lines: ProseLines): string {
  return lines.map((spans) => spans.map(({ text }) => text).join("")).join(" ");
}

function rankOf({ tag }: Token): number {
  return Number(tag.slice(1));
}

function linesOf({ children }: Token): ProseLines {
  const lines: ProseSpan[][] = [[]];
  const manner = { strong: 0, stressed: 0, struck: 0 };
  const links: { readonly href: string; readonly from: number; readonly bare: boolean }[] = [];
  const written = () => plainText(lines);
  const add = (text: string, more: Partial<ProseSpan> = {}) => {
    if (text === "") return;
    lines.at(-1)?.push({
      text,
      ...(manner.strong > 0 ? { strong: true } : {}),
      ...(manner.stressed > 0 ? { stressed: true } : {}),
      ...(manner.struck > 0 ? { struck: true } : {}),
      ...more,
    });
  };
  for (const token of children ?? []) {
    switch (token.type) {
      case "strong_open":
      case "strong_close":
        manner.strong += token.nesting;
        break;
      case "em_open":
      case "em_close":
        manner.stressed += token.nesting;
        break;
      case "s_open":
      case "s_close":
        manner.struck += token.nesting;
        break;
      case "code_inline":
        add(token.content, { code: true });
        break;
      case "softbreak":
        add(" ");
        break;
      case "hardbreak":
        lines.push([]);
        break;
      case "link_open":
        links.push({
          href: String(token.attrGet("href") ?? ""),
          from: written().length,
          bare: token.info === "auto",
        });
        break;
      case "link_close": {
        const link = links.pop();
        if (link && !link.bare) add(addressBehind(link.href, written().slice(link.from)));
        break;
      }
      default: {
        // The words of a bare address may have been decoded for the eye; paper needs the address.
        const bare = links.at(-1)?.bare === true;
        add(bare ? addressOf(links.at(-1)?.href ?? "") : token.content);
      }
    }
  }
  return lines;
}

// On paper nothing can be followed: an address that the words do not say is printed.
function addressBehind(href: string, words: string): string {
  const leadsOut = /^(?:https?|mailto):/i.test(href);
  return leadsOut && words.trim() !== addressOf(href) ? ` (${addressOf(href)})` : "";
}

function addressOf(href: string): string {
  return href.replace(/^mailto:/i, "");
}
