import type { BookPhoto } from "../../../present/book/book-entry.ts";
import type { PrintPicture, PrintPictures } from "../../photos/print-pictures.ts";
import type { Pages } from "../paper/pages.ts";
import { type Mark, type PlacedLine, tagged } from "../paper/sheet.ts";
import type { Box } from "../paper/sheet-format.ts";
import type { Line, Typesetter } from "../paper/typesetter.ts";

const gap = 8;
const wantedHeight = 138;
const mostInRow = 3;
const captionAdvance = 9;

interface Framed {
  readonly photo: BookPhoto;
  /** Absent: the file could not be read, which the frame says. */
  readonly picture?: PrintPicture;
  /** Width by height, within what a frame takes. */
  readonly shape: number;
}

/** How high a row of photographs is at most, caption and all, in points. */
export const photoRowHeight = wantedHeight * 1.08 + 3 * captionAdvance + 10;

/** The photographs of an entry in rows of one height, each with its caption below. */
export function photoRows(
  pages: Pages,
  setter: Typesetter,
  photos: readonly BookPhoto[],
  pictures: PrintPictures,
): void {
  const framed = photos.map((photo): Framed => {
    const picture = pictures.get(photo.photo.file);
    return picture
      ? { photo, picture, shape: Math.min(2.6, Math.max(0.6, picture.width / picture.height)) }
      : { photo, shape: 4 / 3 };
  });
  for (const row of rowsOf(framed, pages.width)) {
    const shapes = row.reduce((sum, { shape }) => sum + shape, 0);
    const free = pages.width - gap * (row.length - 1);
    const height = Math.min(free / shapes, wantedHeight * 1.08);
    const captions = row.map(({ photo, shape }) => caption(setter, photo, shape * height));
    const tallest = Math.max(...captions.map((lines) => lines.length)) * captionAdvance + 6;
    pages.room(height + tallest + 4);
    pages.space(4);
    const top = pages.y;
    let left = pages.column.left;
    row.forEach((each, index) => {
      const right = left + each.shape * height;
      frame(pages, setter, each, { left, top, right, bottom: top + height });
      const placed = (captions[index] ?? []).map(
        (line, at): PlacedLine => ({ line, x: left, y: top + height + 9 + at * captionAdvance }),
      );
      pages.sheet.marks.push(tagged("P", placed));
      left = right + gap;
    });
    pages.space(height + tallest);
  }
}

/** As many as fit into a row at about the height wanted. */
function rowsOf(photos: readonly Framed[], width: number): Framed[][] {
  const rows: Framed[][] = [];
  let row: Framed[] = [];
  let wide = 0;
  for (const photo of photos) {
    const more = photo.shape * wantedHeight + (row.length > 0 ? gap : 0);
    if (row.length === mostInRow || (row.length > 0 && wide + more > width * 1.12)) {
      rows.push(row);
      row = [];
      wide = 0;
    }
    row.push(photo);
    wide += more;
  }
  return row.length > 0 ? [...rows, row] : rows;
}

function caption(
  setter: Typesetter,
  { number, photo, on, shows }: BookPhoto,
  width: number,
): Line[] {
  const size = 7.4;
  const more = [
    ...(on === undefined ? [] : [`(${on})`]),
    ...(shows.length === 0 ? [] : [`Shows ${shows.join(", ")}.`]),
  ].join(" ");
  return setter.wrapStyled(
    [
      { text: `${number} `, style: { face: "caps", size } },
      { text: `${photo.caption} `, style: { face: "small", size } },
      { text: more, style: { face: "small", size, ink: "second" } },
    ],
    width,
  );
}

function frame(pages: Pages, setter: Typesetter, { photo, picture }: Framed, box: Box): void {
  if (picture) {
    pages.sheet.marks.push(figure(picture, photo.alt, box));
    return;
  }
  pages.sheet.around(box, 0.4);
  const lines = setter.wrap(
    `The photograph ${photo.photo.file} could not be read.`,
    { face: "small", size: 8, ink: "red" },
    box.right - box.left - 16,
  );
  pages.sheet.marks.push(
    tagged(
      "P",
      lines.map((line, index) => ({ line, x: box.left + 8, y: box.top + 16 + index * 11 })),
    ),
  );
}

/** The picture itself, read from the disk only when its sheet is printed. */
function figure(picture: PrintPicture, alt: string, { left, top, right, bottom }: Box): Mark {
  return async ({ doc, root }) => {
    const bytes = await picture.bytes();
    const element = doc.struct("Figure", { alt, bbox: [left, top, right, bottom] });
    root.add(element);
    element.add(() => {
      const data = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
      doc
        .save()
        .rect(left, top, right - left, bottom - top)
        .clip();
      doc.image(data, left, top, {
        cover: [right - left, bottom - top],
        align: "center",
        valign: "center",
      });
      doc.restore();
      doc
        .lineWidth(0.5)
        .rect(left, top, right - left, bottom - top)
        .stroke();
    });
    element.end();
  };
}
