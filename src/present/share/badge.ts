import { dateText, daysText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import type { RecordIndex } from "../pages/record-index.ts";

/** Where the badge stands, from the site's root. It never moves. */
export const badgeUrl = "badge.svg";

/** In pixels, as other sites are told to show it. */
export const badgeSize = { width: 300, height: 84 } as const;

/** The hours of the build as a small drawing, to be shown on somebody else's page. */
export interface Badge {
  /** `LB-2: 887:15 hours of building`. */
  readonly title: string;
  /** A sentence. */
  readonly says: string;
  /** In the drawing: above the figure, the figure, after it, and below. */
  readonly over: string;
  readonly figure: string;
  readonly unit: string;
  readonly below: string;
}

/** The badge of a record. Totals are the same in every edition. */
export function badgeOf({ analysis }: RecordIndex): Badge {
  const { build, hours, asOf } = analysis;
  const { designation, serial, title } = build.project;
  const figure = hoursText(hours.total.build);
  const days = daysText(build.days.length);
  const asOfText = dateText(asOf.date);
  return {
    title: `${designation}: ${figure} hours of building`,
    says: `${title}, serial ${serial}: ${figure} hours of building on ${days}, as of ${asOfText}.`,
    over: `${designation} build journal`,
    figure,
    unit: "hours of building",
    below: `${days}, as of ${asOfText}`,
  };
}

/**
 * What to copy into a page that shows the badge; without an address the name of the file.
 * Nothing but the picture is fetched from the site that it is shown on.
 */
export function badgeCode(
  address: string | undefined,
  { title }: { readonly title: string },
): string {
  const at = address ?? "";
  const { width, height } = badgeSize;
  const image = `<img src="${at}${badgeUrl}" width="${width}" height="${height}" alt="Hours of ${escaped(title)}">`;
  return address === undefined ? image : `<a href="${at}">${image}</a>`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");
}
