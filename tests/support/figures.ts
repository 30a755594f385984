// Follows every figure of hours on a site to the rows it is the sum of, and adds them up.
//
// The pages carry marks for it:
//
// data-sum       a list whose rows add up to something
// data-main      such a list that the figures of the page itself are sums of
// data-part      a row's figure, "build" or "apart"; it leads on to rows of its own
// data-figure    any other figure, "build" or "apart"; it leads to rows as well
// data-only      beside data-figure: only the rows of this step count
// data-total     the sum at the foot of a list
// data-subtotal  the sum of one row's own parts
// data-row       a row; its link is that of the figures in it
// data-private   beside a row or part: a private day, which has no page to lead to
// data-entry     a session on the sheet of its day: the figures end here
// data-running   hours up to and with a row of its month; data-brought, those before the month
//
// A figure leads where its own link leads, else the one around it or in it, else that of its
// row; without any, its rows stand in the same section. A link to a heading means the lists of
// its section, a link to a page its main lists.

import { all, closest, type Element, htmlTree, textOf } from "./html-tree.ts";

/** Pages by their address from the site's root: `2026/03/index.html`. */
export type Pages = ReadonlyMap<string, string>;

/** What came of following the figures. */
export interface Followed {
  /** How many figures, parts and totals were added up. */
  readonly figures: number;
  /** Of each page, the minutes of the sessions on it, build and apart together, by their ids. */
  readonly entries: ReadonlyMap<string, number>;
  /** What does not add up, leads nowhere, or is not marked; empty when all is well. */
  readonly wrong: readonly string[];
}

type Kind = "build" | "apart";

const has = (name: string) => (element: Element) => element.attributes.has(name);
const isLink = (element: Element) => element.tag === "a" && element.attributes.has("href");

/** Minutes in the first `H:MM` of a text. */
function minutesIn(text: string): number {
  const [, hours, minutes] = /(\d+):([0-5]\d)/.exec(text) ?? [];
  if (hours === undefined) throw new Error(`no hours in \`${text}\``);
  return Number(hours) * 60 + Number(minutes);
}

/** Follows every figure of a site. */
export function followFigures(pages: Pages): Followed {
  const trees = new Map([...pages].map(([path, html]) => [path, htmlTree(html)]));
  const wrong: string[] = [];
  const entries = new Map<string, number>();
  let figures = 0;

  for (const [path, page] of trees) {
    const at = (element: Element) => `${path}: ${textOf(element).trim().slice(0, 60)}`;
    const complain = (element: Element, why: string) => wrong.push(`${at(element)}: ${why}`);

    for (const figure of all(page, (each) => has("data-figure")(each) || has("data-part")(each))) {
      figures += 1;
      const kind = (figure.attributes.get("data-figure") ??
        figure.attributes.get("data-part")) as Kind;
      const minutes = minutesIn(textOf(figure));
      const row = closest(figure, has("data-row"));
      if (row?.attributes.has("data-entry") && has("data-part")(figure)) {
        entries.set(`${path}#${row.attributes.get("id")}`, minutes);
        const product = all(figure, has("data-product"))[0];
        if (product) {
          const [, each = "", times = ""] = /(\d+:\d\d) × (\d+)/.exec(textOf(product)) ?? [];
          if (minutesIn(each) * Number(times) !== minutes) complain(figure, "is not its product");
        }
        continue;
      }
      if (isPrivate(figure, row)) continue;
      const target = targetOf(trees, path, figure, row);
      if (typeof target === "string") {
        if (minutes > 0) complain(figure, target);
        continue;
      }
      if (target.entry) {
        const whole = minutesIn(textOf(partOf(target.entry, kind) ?? target.entry));
        const people = peopleAt(target.entry);
        const share = whole / people;
        if (minutes % share !== 0 || minutes > whole || minutes === 0) {
          complain(figure, `is no part of the ${whole} minutes of ${target.path}`);
        }
        continue;
      }
      if (target.running !== undefined) {
        if (target.running !== minutes) complain(figure, `is ${target.running} min there`);
        continue;
      }
      const sum = sumOf(target.lists, kind, figure.attributes.get("data-only"));
      if (sum !== minutes) complain(figure, `its rows on ${target.path} add up to ${sum} min`);
    }

    for (const list of all(page, has("data-sum"))) {
      const table = closest(list, ({ tag }) => tag === "table") ?? list;
      for (const total of all(table, has("data-total"))) {
        figures += 1;
        const kind = total.attributes.get("data-total") as Kind;
        const sum = sumOf([list], kind);
        if (sum !== minutesIn(textOf(total))) complain(total, `the list adds up to ${sum} min`);
      }
      for (const subtotal of all(list, has("data-subtotal"))) {
        figures += 1;
        const kind = subtotal.attributes.get("data-subtotal") as Kind;
        const row = closest(subtotal, ({ tag }) => tag === "tr");
        const sum = row ? partsIn(row, kind).reduce((all, each) => all + each, 0) : -1;
        if (sum !== minutesIn(textOf(subtotal))) complain(subtotal, `the row adds up to ${sum}`);
      }
    }

    const brought = all(page, has("data-brought"))[0];
    if (brought) {
      let sum = monthsBefore(trees, path, brought);
      if (sum !== minutesIn(textOf(brought))) complain(brought, `months before make ${sum} min`);
      for (const row of all(page, has("data-row"))) {
        const running = all(row, has("data-running"))[0];
        if (!running) continue;
        figures += 1;
        sum += partsIn(row, "build").reduce((all, each) => all + each, 0);
        if (sum !== minutesIn(textOf(running))) complain(running, `up to here it is ${sum} min`);
      }
    }

    for (const { text, around } of loose(page)) complain(around, `\`${text}\` is not marked`);
  }
  return { figures, entries, wrong };
}

interface Target {
  readonly path: string;
  readonly lists: readonly Element[];
  readonly entry?: Element;
  readonly running?: number;
}

// Where a figure leads, or why it leads nowhere.
function targetOf(
  trees: ReadonlyMap<string, Element>,
  path: string,
  figure: Element,
  row: Element | undefined,
): Target | string {
  const link =
    closest(figure, isLink) ?? all(figure, isLink)[0] ?? (row ? all(row, isLink)[0] : undefined);
  if (!link) {
    if (minutesIn(textOf(figure)) === 0) return "leads nowhere";
    const section = closest(figure, ({ tag }) => tag === "section");
    const lists = section ? all(section, has("data-sum")) : [];
    return lists.length > 0 ? { path, lists } : "leads nowhere";
  }
  const to = new URL(link.attributes.get("href") ?? "", `http://site/${path}`);
  const there = to.pathname.slice(1);
  const page = trees.get(there);
  if (!page) return `leads to ${there}, which is no page`;
  if (to.hash === "") {
    return { path: there, lists: all(page, has("data-main")) };
  }
  const id = decodeURIComponent(to.hash.slice(1));
  const named = all(page, ({ attributes }) => attributes.get("id") === id)[0];
  if (!named) return `leads to ${there}${to.hash}, which is no place there`;
  if (named.attributes.has("data-entry")) return { path: there, lists: [], entry: named };
  const running = all(named, has("data-running"))[0];
  if (running) return { path: there, lists: [], running: minutesIn(textOf(running)) };
  const section = closest(named, ({ attributes }) => attributes.get("aria-labelledby") === id);
  const lists = section ? outermost(all(section, has("data-sum"))) : [];
  return lists.length > 0 ? { path: there, lists } : `leads to ${there}${to.hash}, without rows`;
}

function outermost(lists: readonly Element[]): Element[] {
  return lists.filter((list) => !lists.some((each) => each !== list && isIn(list, each)));
}

function isIn(element: Element, around: Element): boolean {
  return closest(element.parent, (each) => each === around) !== undefined;
}

function sumOf(lists: readonly Element[], kind: Kind, only?: string): number {
  return lists.flatMap((list) => partsIn(list, kind, only)).reduce((all, each) => all + each, 0);
}

function partsIn(list: Element, kind: Kind, only?: string): number[] {
  return all(list, ({ attributes }) => attributes.get("data-part") === kind)
    .filter(
      (part) =>
        only === undefined || closest(part, has("data-row"))?.attributes.get("data-step") === only,
    )
    .map((part) => minutesIn(textOf(part)));
}

function partOf(row: Element, kind: Kind): Element | undefined {
  return all(row, ({ attributes }) => attributes.get("data-part") === kind)[0];
}

function peopleAt(entry: Element): number {
  const product = all(entry, has("data-product"))[0];
  return product ? Number(/× (\d+)/.exec(textOf(product))?.[1] ?? 1) : 1;
}

function isPrivate(figure: Element, row: Element | undefined): boolean {
  const mark = figure.attributes.get("data-private") ?? row?.attributes.get("data-private");
  return mark !== undefined && mark !== "false";
}

// The sum of the months that stand before this one on the page that `brought` leads to.
function monthsBefore(trees: ReadonlyMap<string, Element>, path: string, brought: Element): number {
  const to = new URL(brought.attributes.get("href") ?? "", `http://site/${path}`);
  const page = trees.get(to.pathname.slice(1));
  const section =
    page &&
    all(page, ({ attributes }) => attributes.get("aria-labelledby") === to.hash.slice(1))[0];
  let sum = 0;
  for (const row of section ? all(section, has("data-row")) : []) {
    const link = all(row, isLink)[0]?.attributes.get("href") ?? "";
    if (new URL(link, to).pathname.slice(1) === path) return sum;
    sum += partsIn(row, "build").reduce((all, each) => all + each, 0);
  }
  return -1;
}

// Words of people, clock times, waits, what was planned, what a file says: figures, but no sums.
const told = [
  ...["data-figure", "data-part", "data-total", "data-subtotal", "data-running", "data-brought"],
  ...["data-planned", "data-clock", "data-sealed", "data-struck"],
];
const toldIn = new Set([
  ...["prose", "excerpt", "cure", "findings", "strip", "revisions", "chart", "reading"],
  ...["evidence", "facts", "todo", "summary", "over", "photo", "contact", "deviation", "video"],
]);

// The cell of the title block that is called so.
function isPlan(element: Element): boolean {
  const label = element.parent?.children.find(
    (each) => typeof each !== "string" && each.tag === "dt",
  );
  return label !== undefined && typeof label !== "string" && textOf(label) === "planned";
}

/** Hours in the text of a page that no mark explains. */
function loose(page: Element): { text: string; around: Element }[] {
  const found: { text: string; around: Element }[] = [];
  const visit = (element: Element) => {
    if (element.tag === "head" || element.attributes.has("hidden")) return;
    if (told.some((name) => element.attributes.has(name))) return;
    const classes = (element.attributes.get("class") ?? "").split(" ");
    if (classes.some((name) => toldIn.has(name))) return;
    for (const child of element.children) {
      if (typeof child !== "string") visit(child);
      else {
        // A point in time stands behind its date; what was planned was typed; nothing has no rows.
        const text = child
          .replace(/\d{4}(?:-\d\d-\d\d|,| at)? \d{1,2}:\d\d/g, "")
          .replace(/\d+:\d\d planned/g, "")
          .replace(/\b0:00\b/g, "");
        const hours = /\b\d{1,6}:[0-5]\d\b/.exec(text)?.[0];
        if (hours !== undefined && !isPlan(element)) found.push({ text: hours, around: element });
      }
    }
  };
  visit(page);
  return found;
}
