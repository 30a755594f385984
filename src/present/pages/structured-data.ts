import type { Project } from "../../model/project.ts";
import { siteAddress } from "./addresses.ts";

/** A page of the record in the words of schema.org, as JSON for a `script` of data. */
export type StructuredData = string;

/** What is said of one day's sheet. */
export interface SheetFacts {
  readonly title: string;
  readonly description: string;
  /** From the site's root. */
  readonly url: string;
  /** RFC 3339. */
  readonly published: string;
  readonly updated: string;
  /** From the site's root. */
  readonly images: readonly { readonly url: string; readonly caption: string }[];
  /** Recordings that can be seen somewhere; without a url they are passed over. */
  readonly videos?: readonly VideoFacts[];
  /** Words above it, outermost first: the record, the month. */
  readonly above: readonly { readonly text: string; readonly url: string }[];
}

/** What is said of one recording. */
export interface VideoFacts {
  readonly name: string;
  /** From the site's root, or a whole address elsewhere. */
  readonly url?: string;
  /** From the site's root. */
  readonly picture?: string;
  readonly date: string;
  readonly times: readonly {
    readonly seconds: number;
    readonly what: string;
    readonly href?: string;
  }[];
}

/** A day as a `BlogPosting` with its way up; `undefined` while the site's address is unknown. */
export function sheetData(
  { address, title }: Project,
  author: string,
  sheet: SheetFacts,
): StructuredData | undefined {
  if (address === undefined) return undefined;
  const at = (url: string) => new URL(url, siteAddress(address)).href;
  return safe({
    "@context": "https://schema.org",
    "@graph": [
      {
        "@type": "BlogPosting",
        headline: sheet.title,
        description: sheet.description,
        url: at(sheet.url),
        datePublished: sheet.published,
        dateModified: sheet.updated,
        author: { "@type": "Person", name: author },
        isPartOf: { "@type": "Blog", name: title, url: at("") },
        ...(sheet.images.length === 0
          ? {}
          : {
              image: sheet.images.map(({ url, caption }) => ({
                "@type": "ImageObject",
                contentUrl: at(url),
                caption,
              })),
            }),
        ...videosOf(sheet, at),
      },
      {
        "@type": "BreadcrumbList",
        itemListElement: sheet.above.map(({ text, url }, index) => ({
          "@type": "ListItem",
          position: index + 1,
          name: text,
          item: at(url),
        })),
      },
    ],
  });
}

// A recording needs a picture to be known by; each place in it begins where the next ends.
function videosOf({ videos = [], description }: SheetFacts, at: (url: string) => string) {
  const shown = videos.flatMap(({ name, url, picture, date, times }) => {
    if (url === undefined || picture === undefined) return [];
    const own = !/^https?:/.test(url);
    return [
      {
        "@type": "VideoObject",
        name,
        description,
        thumbnailUrl: at(picture),
        uploadDate: date,
        ...(own ? { contentUrl: at(url) } : { url }),
        ...(times.length === 0
          ? {}
          : {
              hasPart: times.map(({ seconds, what, href }, index) => ({
                "@type": "Clip",
                name: what,
                startOffset: seconds,
                ...(times[index + 1] ? { endOffset: times[index + 1]?.seconds } : {}),
                url: own ? `${at(url)}#t=${seconds}` : (href ?? url),
              })),
            }),
      },
    ];
  });
  return shown.length === 0 ? {} : { video: shown };
}

/** The whole record as a `Blog`; `undefined` while the site's address is unknown. */
export function recordData(
  { address, title, summary }: Project,
  author: string,
): StructuredData | undefined {
  if (address === undefined) return undefined;
  return safe({
    "@context": "https://schema.org",
    "@type": "Blog",
    name: title,
    description: summary,
    url: siteAddress(address),
    author: { "@type": "Person", name: author },
  });
}

// Inside `script` nothing is escaped: a `<` could end it.
function safe(data: unknown): StructuredData {
  return JSON.stringify(data).replaceAll("<", "\\u003c");
}
