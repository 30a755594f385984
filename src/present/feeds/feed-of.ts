import type { DayPage } from "../pages/day-page.ts";
import type { Site } from "../pages/site.ts";
import type { Feed, FeedEntry } from "./feed.ts";

/** How many days the feeds hold. */
const entriesKept = 20;

/** The newest days of a site as feed entries, newest first. Only what the edition shows. */
export function feedOf(site: Site): Feed {
  const { shell, pages } = site;
  const { address } = shell;
  return {
    info: {
      title: shell.title,
      subtitle: pages.home[0]?.summary ?? "",
      language: "en",
      identity: shell.identity,
      ...(address === undefined ? {} : { address }),
      author: shell.author,
      begun: shell.begun,
    },
    entries: pages.day
      .slice(-entriesKept)
      .reverse()
      .map((page) => entryOf(page, address ?? "")),
  };
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
    ...list("Next", page.next),
    ...(page.seal
      ? [`<p>Last sheet of the month, which is sealed: <code>${page.seal.short}</code></p>`]
      : []),
  ].join("\n");
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
