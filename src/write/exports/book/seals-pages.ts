import type { SealedMinutes } from "../../../model/seal.ts";
import { monthText } from "../../../present/format/dates.ts";
import { hoursText } from "../../../present/format/hours.ts";
import { grouped } from "../logbook/wording.ts";
import type { Pages } from "../paper/pages.ts";
import type { BookContext } from "./book-context.ts";

/** Every sealed month with the digest of its seal, to be compared with the files. */
export function sealsPages(pages: Pages, { record }: BookContext): void {
  pages.paragraph(
    "A seal is a small text file with the digests of the entries and photographs of one month, its totals, and the digest of the seal before it. The digests below are SHA-256 of those files. With this book in other hands, anybody who has the files can tell that none of them was changed after the book was printed, and in which order the months were sealed. A seal shows neither that an entry is true nor the day on which it was made.",
  );
  const digest = 262;
  const minutes = ({ build, apart }: SealedMinutes) => [
    { text: hoursText(build) },
    { text: apart === 0 ? "–" : hoursText(apart) },
  ];
  pages.table({
    title: "Seals of months",
    columns: [
      {
        heading: "Month",
        width: pages.width - digest - 40 - 40 - 52 - 46,
        align: "left",
        face: "small",
      },
      { heading: "Digest of the seal", width: digest, align: "left", face: "text" },
      { heading: "Entries", width: 40, align: "right", face: "text" },
      { heading: "Photos", width: 40, align: "right", face: "text" },
      { heading: "Build to date", width: 52, align: "right", face: "text" },
      { heading: "Apart", width: 46, align: "right", face: "text" },
    ],
    rows: record.analysis.build.seals.map((seal) => ({
      cells: [
        { text: monthText(seal.month), bold: true },
        { text: grouped(seal.digest, 8) },
        { text: `${seal.entries.length}` },
        { text: `${seal.photos.length}` },
        ...minutes(seal.toDate),
      ],
    })),
    filled: false,
    none: "no seals",
  });
}
