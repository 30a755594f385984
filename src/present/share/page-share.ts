import { monthOf } from "../../model/calendar.ts";
import type { Day } from "../../model/day.ts";
import type { Photo } from "../../model/photo.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { monthShare, recordShare, type SharePicture } from "./share-sheet.ts";

/** The share picture of a day: its first photograph that could be read, else its month's sheet. */
export function dayShare(record: RecordIndex, day: Day): SharePicture | undefined {
  if (record.analysis.build.project.address === undefined) return undefined;
  return photoShare(record, day.photos) ?? monthShare(record, monthOf(day.date));
}

/** The first of these photographs that has a share picture, else the sheet of the record. */
export function photosShare(
  record: RecordIndex,
  photos: readonly Photo[],
): SharePicture | undefined {
  if (record.analysis.build.project.address === undefined) return undefined;
  return photoShare(record, photos) ?? recordShare(record);
}

/** The photograph that stands for a day: the first that could be read. */
export function shareablePhoto(
  { photos }: Day,
  canBeRead: (file: string) => boolean,
): Photo | undefined {
  return photos.find(({ file }) => canBeRead(file));
}

function photoShare(record: RecordIndex, photos: readonly Photo[]): SharePicture | undefined {
  for (const { file, alt, caption } of photos) {
    const url = record.shares.get(file);
    if (url !== undefined) return { url, alt: alt ?? caption };
  }
  return undefined;
}
