import type { CalendarDate } from "../../model/calendar.ts";
import type { Site } from "./site.ts";

/** The pages worth finding, with the day that last changed them where one stands behind them. */
export function sitemapPages({ pages }: Site): {
  readonly url: string;
  readonly lastmod?: CalendarDate;
}[] {
  const { day, notFound, search, ...others } = pages;
  return [
    ...Object.values(others)
      .flat()
      .map(({ url }) => ({ url })),
    ...day.map(({ url, updated }) => ({ url, lastmod: updated.slice(0, 10) })),
  ];
}
