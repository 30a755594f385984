import type { Photo } from "../../../model/photo.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { PictureFile } from "../picture.ts";
import type { RecordIndex } from "../record-index.ts";

/** A picture ready to be placed: `srcset` texts are relative to the page. */
export interface PictureView {
  readonly avif: string;
  /** The JPEG for browsers without AVIF; at most 800 px wide. */
  readonly src: string;
  /** The largest JPEG, opened when the picture is followed. */
  readonly full: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
}

/** The smallest published size, for lists. */
export interface ThumbnailView {
  readonly avif: string;
  readonly jpeg: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
}

/** A photograph with its number on the sheet. */
export interface PhotoView {
  readonly number: number;
  readonly anchor: string;
  readonly caption: string;
  readonly day: Mention;
  readonly step?: Link;
  readonly assembly?: Link;
  /** Who can be seen, as the edition may name them. */
  readonly shows: readonly string[];
  /** Absent: the file could not be read, which the page says. */
  readonly picture?: PictureView;
}

/** A photograph as the pages show it; `number` counts those of one page from 1. */
export function photoView(
  record: RecordIndex,
  links: Links,
  photo: Photo,
  number: number,
): PhotoView {
  const picture = pictureView(record, links, photo);
  const { assembly, step } = photo;
  return {
    number,
    anchor: `photo-${number}`,
    caption: photo.caption,
    day: links.day(photo.date),
    ...(step === undefined ? {} : { step: links.step(step) }),
    ...(assembly === undefined ? {} : { assembly: links.assembly(assembly) }),
    shows: [...new Set(photo.shows.map((id) => record.person(id)))],
    ...(picture ? { picture } : {}),
  };
}

/** The picture alone; `undefined` when the file could not be read. */
export function pictureView(
  record: RecordIndex,
  links: Links,
  photo: Photo,
): PictureView | undefined {
  const picture = record.pictures.get(photo.file);
  const middle = picture?.jpeg.findLast(({ width }) => width <= 800) ?? picture?.jpeg[0];
  const largest = picture?.jpeg.at(-1);
  if (!picture || !middle || !largest) return undefined;
  // The smallest is for lists; a photo that has no larger one is shown in it.
  const set = (files: readonly PictureFile[]) =>
    files
      .filter(({ width }) => width <= 1200 && (width > 240 || files.length === 1))
      .map(({ url, width }) => `${links.root}${url} ${width}w`)
      .join(", ");
  return {
    avif: set(picture.avif),
    src: `${links.root}${middle.url}`,
    full: `${links.root}${largest.url}`,
    width: picture.width,
    height: picture.height,
    alt: photo.alt ?? photo.caption,
  };
}

/** The thumbnail of a photograph; `undefined` when the file could not be read. */
export function thumbnailView(
  record: RecordIndex,
  links: Links,
  photo: Photo,
): ThumbnailView | undefined {
  const picture = record.pictures.get(photo.file);
  const avif = picture?.avif[0];
  const jpeg = picture?.jpeg[0];
  if (!avif || !jpeg) return undefined;
  return {
    avif: `${links.root}${avif.url}`,
    jpeg: `${links.root}${jpeg.url}`,
    width: jpeg.width,
    height: jpeg.height,
    alt: photo.alt ?? photo.caption,
  };
}
