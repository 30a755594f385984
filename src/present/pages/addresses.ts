import type { Build } from "../../model/build.ts";
import type { CalendarDate, CalendarMonth } from "../../model/calendar.ts";

/**
 * Where each page of the site stands, from the site's root and without a leading slash.
 * A page is a folder with an `index.html`, so its url ends in `/`; the home page is "".
 */
export interface Addresses {
  readonly day: (date: CalendarDate) => string;
  readonly month: (month: CalendarMonth) => string;
  readonly assembly: (id: string) => string;
  readonly step: (id: string) => string;
  readonly rule: (id: string) => string;
  readonly photographs: (month: CalendarMonth) => string;
}

/** The pages there is one of, by what they are called in the index of sheets. */
export const places = {
  home: "",
  assemblies: "assemblies/",
  hours: "hours/",
  readings: "readings/",
  balance: "balance/",
  portion: "portion/",
  help: "help/",
  open: "open/",
  photographs: "photographs/",
  limits: "limits/",
  search: "search/",
  story: "story/",
  changes: "changes/",
  materials: "materials/",
  record: "record/",
  about: "about/",
  notFound: "404.html",
} as const;

/** The urls of a build's pages. Ids that differ only in case or in signs still get one each. */
export function addressesOf(build: Build): Addresses {
  const assemblies = slugs(build.assemblies.keys());
  const steps = slugs(build.steps.keys());
  const rules = slugs(build.rules.keys());
  return {
    day: (date) => `${date.replaceAll("-", "/")}/`,
    month: (month) => `${month.replace("-", "/")}/`,
    assembly: (id) => `${places.assemblies}${slugOf(assemblies, id)}/`,
    step: (id) => `steps/${slugOf(steps, id)}/`,
    rule: (id) => `${places.readings}${slugOf(rules, id)}/`,
    photographs: (month) => `${places.photographs}${month.replace("-", "/")}/`,
  };
}

/**
 * A name for each id, of lower-case letters, digits and hyphens only. The first of two ids
 * that come to the same name keeps it; the next gets `-2`, and so on, in the order given.
 *
 * @example slugs(["HS-07", "hs.07"]) // HS-07 → hs-07, hs.07 → hs-07-2
 */
export function slugs(ids: Iterable<string>): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  const names = new Map<string, string>();
  for (const id of ids) {
    const plain = id
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "")
      .slice(0, 80);
    let name = plain;
    for (let count = 2; taken.has(name); count += 1) name = `${plain}-${count}`;
    taken.add(name);
    names.set(id, name);
  }
  return names;
}

function slugOf(names: ReadonlyMap<string, string>, id: string): string {
  const name = names.get(id);
  if (name === undefined) throw new Error(`no page for "${id}": it is not declared`);
  return name;
}

/** The address a site stands at, with its closing slash. */
export function siteAddress(typed: string): string {
  return typed.endsWith("/") ? typed : `${typed}/`;
}

/** From a page back to the site's root: `../../../` for `2026/03/14/`, "" for the home page. */
export function rootOf(url: string): string {
  return "../".repeat(url.split("/").length - 1);
}

/**
 * A link from one page to another, relative to the page that holds it. Names the file, so
 * that it works without a web server too.
 *
 * @param root As from `rootOf`, or an absolute prefix that ends in `/`.
 * @param anchor An id on that page.
 * @example hrefTo("../", "2026/03/14/", "r1") // "../2026/03/14/index.html#r1"
 */
export function hrefTo(root: string, url: string, anchor?: string): string {
  const file = url === "" || url.endsWith("/") ? `${url}index.html` : url;
  return `${root}${file}${anchor === undefined ? "" : `#${anchor}`}`;
}

/**
 * An id for use in HTML, from any name. Different names may come to the same id.
 * @example anchorOf("d", "D-014") // "d-d-014"
 */
export function anchorOf(prefix: string, name: string): string {
  return `${prefix}-${name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
}
