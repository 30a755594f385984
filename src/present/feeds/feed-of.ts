import { rootOf } from "../pages/addresses.ts";
import type { DayPage } from "../pages/day-page.ts";
import type { Shell, Site } from "../pages/site.ts";
import type { Feed, FeedEntry } from "./feed.ts";

/** How many days the feed of the whole record holds. */
const entriesKept = 20;

/** How many days the feed of one assembly holds: there are many assemblies. */
const entriesKeptOfAssembly = 10;

/** The newest days of a site as feed entries, newest first. Only what the edition shows. */
export function feedOf({ shell, pages }: Site): Feed {
  return {
    info: {
      ...sharedInfo(shell),
      url: "",
      title: shell.title,
      subtitle: pages.home[0]?.summary ?? "",
    },
    entries: newest(pages.day, entriesKept).map((page) => entryOf(page, shell.address ?? "")),
  };
}

/**
 * A feed for each assembly that has days which the edition shows: the newest of them, newest
 * first, the whole entries as in the feed of the record.
 */
export function assemblyFeeds({ shell, pages }: Site): Feed[] {
  const byDate = new Map(pages.day.map((page) => [page.date, page]));
  return pages.assembly.flatMap((assembly): Feed[] => {
    const days = newest(assembly.sheets, entriesKeptOfAssembly);
    if (days.length === 0) return [];
    const to = shell.address ?? rootOf(assembly.url);
    return [
      {
        info: {
          ...sharedInfo(shell),
          url: assembly.url,
          of: `assembly ${assembly.id}`,
          title: assembly.feed?.title ?? assembly.title,
          subtitle: assembly.summary ?? assembly.description,
        },
        entries: days.flatMap((date) => {
          const page = byDate.get(date);
          return page ? [entryOf(page, to)] : [];
        }),
      },
    ];
  });
}

function sharedInfo({ identity, address, author, begun }: Shell) {
  return {
    language: "en",
    identity,
    ...(address === undefined ? {} : { address }),
    author,
    begun,
  };
}

function newest<Item>(items: readonly Item[], most: number): Item[] {
  return items.slice(-most).reverse();
}

function entryOf(page: DayPage, address: string): FeedEntry {
  return {
    id: page.date,
    url: page.url,
    title: page.title,
    published: page.published,
    updated: page.updated,
    summary: page.description,
    html: absolute(contentOf(page), page, address),
  };
}

function contentOf(page: DayPage): string {
  const figures = page.photos.flatMap(({ picture, caption }) =>
    picture
      ? [
          `<figure><img src="${escaped(picture.src)}" alt="${escaped(picture.alt)}"><figcaption>${escaped(caption)}</figcaption></figure>`,
        ]
      : [],
  );
  return [
    `<p>${page.hours.build} hours${page.dimension?.from && page.dimension.to ? `, ${page.dimension.from} to ${page.dimension.to}` : ""}.</p>`,
    page.prose?.html ?? "",
    ...figures,
    ...list("Sessions", page.sessions.map(sessionText)),
    ...list(
      "Findings",
      page.findings.map(({ title, message }) => `${title}: ${message}`),
    ),
    ...list(
      "Deviations",
      page.deviations.map(
        ({ id, drawing, planned, done, why }) =>
          `${id}, ${drawing}: planned ${planned}, done ${done}; ${why}`,
      ),
    ),
    ...list(
      "Readings",
      page.readings.map(
        ({ what, at, values, verdict }) =>
          `${what}${at === undefined ? "" : ` at ${at}`}: ${values.map(({ text }) => text).join(", ")} (${verdict})`,
      ),
    ),
    ...list(
      "Inspections",
      page.inspections.map(
        ({ step, look, by, open, findings, result }) =>
          `${step.text}, ${look}, by ${by}, ${open} open to view: ${findings} (${result})`,
      ),
    ),
    ...list(
      "Curing",
      page.cures.map(({ step, mixed, ready }) => `${step.text}: mixed ${mixed}, ready ${ready}`),
    ),
    ...list(
      "Squawks",
      [...page.squawks, ...page.squawkWork].map(
        ({ id, found, standing }) => `${id}: ${found} (${standing})`,
      ),
    ),
    ...list(
      "Recordings",
      page.videos.map(({ title, where, times }) =>
        [`${title} (${where})`, ...times.map(({ at, what }) => `${at} ${what}`)].join("; "),
      ),
    ),
    ...list("Next", page.next),
    ...(page.seal
      ? [`<p>Last sheet of the month, which is sealed: <code>${page.seal.short}</code></p>`]
      : []),
  ].join("\n");
}

function sessionText({ hours, assembly, step, kind, who, note }: DayPage["sessions"][number]) {
  const on = [assembly.text, ...(step ? [step.text] : [])].join(", ");
  return `${hours} ${kind}, ${on}, by ${who.join(", ")}${note === undefined ? "" : `: ${note}`}`;
}

function list(title: string, items: readonly string[]): string[] {
  if (items.length === 0) return [];
  return [`<h2>${title}</h2><ul>${items.map((item) => `<li>${escaped(item)}</li>`).join("")}</ul>`];
}

// A page's own links begin with its way back to the root, or are anchors on the page.
function absolute(html: string, { root, url }: DayPage, address: string): string {
  return html
    .replaceAll(`="${root}`, `="${address}`)
    .replace(/ href="#/g, ` href="${address}${url}#`);
}

function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
