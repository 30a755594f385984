import { type ContentKind, contentKind } from "./photos/content-kind.ts";

// Marks of metadata that can tell where the shop is: EXIF, XMP, and places in video files.
const marks = ["Exif", "GPS", "ns.adobe.com", "ISO6709"] as const;
const ownMarks: Readonly<Partial<Record<ContentKind, readonly string[]>>> = {
  video: ["\u00a9xyz", "loci"],
  // These chunks and items may hold compressed text, in which no mark would be seen.
  png: ["eXIf", "zTXt", "iTXt"],
  avif: ["mime"],
};

/**
 * Looks for metadata in a published picture or video.
 *
 * All bytes are searched except those that hold only coded pixels: among millions of these
 * the three letters `GPS` turn up by chance. Where the structure is not understood to its end,
 * nothing is excepted.
 *
 * @returns The marks found, such as `Exif`; none for a clean file.
 */
export function hiddenMetadata(bytes: Uint8Array): string[] {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kind = contentKind(buffer);
  const wanted = [...marks, ...(ownMarks[kind] ?? [])];
  const pieces = outside(buffer, pixelRanges(buffer, kind));
  return wanted.filter((mark) => pieces.some((piece) => piece.includes(mark, 0, "latin1")));
}

/** From `start` (inclusive) to `end` (exclusive). */
type Range = readonly [start: number, end: number];

function pixelRanges(buffer: Buffer, kind: ContentKind): Range[] {
  try {
    if (kind === "jpeg") return jpegPixels(buffer);
    if (kind === "png") return pngPixels(buffer);
    if (kind === "webp") return webpPixels(buffer);
    if (kind === "avif") return avifPixels(buffer);
    if (kind === "video") return boxesIn(buffer, 0, buffer.length).filter(isMedia).map(body);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  return [];
}

function outside(buffer: Buffer, ranges: readonly Range[]): Buffer[] {
  const pieces: Buffer[] = [];
  let at = 0;
  for (const [start, end] of ranges) {
    pieces.push(buffer.subarray(at, start));
    at = end;
  }
  pieces.push(buffer.subarray(at));
  return pieces;
}

// ITU-T T.81, annex B: what a decoder needs for the pixels. All others are remarks.
const tablesAndFrames = new Set([
  0xdb, 0xc4, 0xdd, 0xcc, 0xc0, 0xc1, 0xc2, 0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce,
  0xcf,
]);

function jpegPixels(buffer: Buffer): Range[] {
  const ranges: Range[] = [];
  let at = 2;
  while (at < buffer.length) {
    if (buffer.readUInt8(at) !== 0xff) throw new RangeError("no marker");
    const marker = buffer.readUInt8(at + 1);
    if (marker === 0xff) {
      at += 1; // fill byte
      continue;
    }
    if (marker === 0xd9) break; // end of image; what follows is searched
    const end = at + 2 + buffer.readUInt16BE(at + 2);
    if (marker === 0xda) {
      const next = endOfScan(buffer, end);
      ranges.push([at, next]);
      at = next;
    } else {
      if (tablesAndFrames.has(marker)) ranges.push([at, end]);
      at = end;
    }
  }
  return ranges;
}

function endOfScan(buffer: Buffer, from: number): number {
  for (let at = buffer.indexOf(0xff, from); at !== -1; at = buffer.indexOf(0xff, at + 1)) {
    const after = buffer[at + 1] ?? 0;
    const stuffedOrRestart = after === 0 || (after >= 0xd0 && after <= 0xd7);
    if (!stuffedOrRestart && after !== 0xff) return at;
  }
  throw new RangeError("no end of scan");
}

function pngPixels(buffer: Buffer): Range[] {
  const ranges: Range[] = [];
  for (let at = 8; at < buffer.length; ) {
    const end = at + 12 + buffer.readUInt32BE(at);
    const type = buffer.toString("latin1", at + 4, at + 8);
    if (end > buffer.length) throw new RangeError("chunk past the end");
    if (["IHDR", "PLTE", "IDAT", "fdAT"].includes(type)) ranges.push([at, end]);
    if (type === "IEND") break;
    at = end;
  }
  return ranges;
}

function webpPixels(buffer: Buffer): Range[] {
  const ranges: Range[] = [];
  for (let at = 12; at < buffer.length; ) {
    const length = buffer.readUInt32LE(at + 4);
    const end = at + 8 + length + (length % 2);
    if (end > buffer.length) throw new RangeError("chunk past the end");
    if (["VP8 ", "VP8L", "ALPH"].includes(buffer.toString("latin1", at, at + 4))) {
      ranges.push([at, end]);
    }
    at = end;
  }
  return ranges;
}

/** A box of ISO/IEC 14496-12; `start` is where its content begins. */
interface Box {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

function boxesIn(buffer: Buffer, from: number, to: number): Box[] {
  const boxes: Box[] = [];
  for (let at = from; at < to; ) {
    let size = buffer.readUInt32BE(at);
    let header = 8;
    if (size === 1) {
      size = Number(buffer.readBigUInt64BE(at + 8));
      header = 16;
    } else if (size === 0) size = to - at;
    if (size < header || at + size > to) throw new RangeError("box past the end");
    const type = buffer.toString("latin1", at + 4, at + 8);
    boxes.push({ type, start: at + header, end: at + size });
    at += size;
  }
  return boxes;
}

const isMedia = ({ type }: Box): boolean => type === "mdat";
const body = ({ start, end }: Box): Range => [start, end];

// The media data of an AVIF file may hold EXIF and XMP as items beside the pixels. It counts
// as pixels only when the file lists nothing but coded pictures and their arrangement.
function avifPixels(buffer: Buffer): Range[] {
  const boxes = boxesIn(buffer, 0, buffer.length);
  const meta = boxes.find(({ type }) => type === "meta");
  if (meta === undefined) return [];
  const list = boxesIn(buffer, meta.start + 4, meta.end).find(({ type }) => type === "iinf");
  if (list === undefined) return [];
  const version = buffer.readUInt8(list.start);
  const entries = boxesIn(buffer, list.start + (version === 0 ? 6 : 8), list.end);
  // `infe` version 2: version and flags, item id, protection, then the type.
  const types = entries.map(({ start }) =>
    buffer.readUInt8(start) === 2 ? buffer.toString("latin1", start + 8, start + 12) : "?",
  );
  if (!types.every((type) => type === "av01" || type === "grid")) return [];
  return boxes.filter(isMedia).map(body);
}
