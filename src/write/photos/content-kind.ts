/** What the bytes of a file are, whatever its name says. */
export type ContentKind =
  | "jpeg"
  | "png"
  | "webp"
  | "avif"
  | "gif"
  | "tiff"
  | "heic"
  | "empty"
  | "svg"
  | "pdf"
  | "video"
  | "archive"
  | "raw photograph"
  | "bmp"
  | "jpeg xl"
  | "text"
  | "unknown";

/** The kinds that are published, after being encoded afresh. */
export const pictureKinds = ["jpeg", "png", "webp", "avif", "gif", "tiff", "heic"] as const;

/** Each kind in plain words, to stand after "is". */
export const kindInWords: Readonly<Record<ContentKind, string>> = {
  jpeg: "a JPEG picture",
  png: "a PNG picture",
  webp: "a WebP picture",
  avif: "an AVIF picture",
  gif: "a GIF picture",
  tiff: "a TIFF picture",
  heic: "a HEIC picture",
  empty: "empty",
  svg: "an SVG drawing",
  pdf: "a PDF document",
  video: "a video",
  archive: "a compressed archive",
  "raw photograph": "a raw photograph",
  bmp: "a BMP picture",
  "jpeg xl": "a JPEG XL picture",
  text: "text",
  unknown: "no kind of picture that is known here",
};

/**
 * Tells a file by its first bytes; never by its name.
 * @param bytes The whole file, or at least its first 4 KiB.
 */
export function contentKind(bytes: Uint8Array): ContentKind {
  if (bytes.length === 0) return "empty";
  const start = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 4096));
  const begins = (...values: number[]): boolean => values.every((value, i) => start[i] === value);
  const latin = (from: number, to: number): string => start.toString("latin1", from, to);

  if (begins(0xff, 0xd8, 0xff)) return "jpeg";
  if (begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "png";
  if (latin(0, 6) === "GIF87a" || latin(0, 6) === "GIF89a") return "gif";
  if (latin(0, 4) === "RIFF") return latin(8, 12) === "WEBP" ? "webp" : "video";
  if (latin(4, 8) === "ftyp") return brandKind(start);
  if (latin(4, 8) === "JXL " || begins(0xff, 0x0a)) return "jpeg xl";
  if (begins(0x49, 0x49, 0x2a, 0x00) || begins(0x4d, 0x4d, 0x00, 0x2a)) {
    return latin(8, 10) === "CR" ? "raw photograph" : "tiff";
  }
  if (latin(0, 2) === "BM" && start.readUInt32LE(2) === bytes.length) return "bmp";
  if (begins(0x1a, 0x45, 0xdf, 0xa3) || ["moov", "mdat", "wide"].includes(latin(4, 8))) {
    return "video";
  }
  if (begins(0x50, 0x4b, 0x03, 0x04) || begins(0x1f, 0x8b)) return "archive";
  if (latin(0, 1024).includes("%PDF-")) return "pdf";
  const text = start.toString("utf8").replace(/^\uFEFF/, "");
  if (/<svg[\s>]/i.test(text)) return "svg";
  return start.includes(0) || text.includes("\uFFFD") ? "unknown" : "text";
}

// ISO/IEC 14496-12, 4.3: a box `ftyp` names the major brand, a version, then more brands.
function brandKind(start: Buffer): ContentKind {
  const end = Math.min(start.readUInt32BE(0), start.length);
  const brands = [start.toString("latin1", 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(start.toString("latin1", at, at + 4));
  const has = (...names: string[]): boolean => brands.some((brand) => names.includes(brand));
  if (has("avif", "avis")) return "avif";
  // ISO/IEC 23008-12, annex B: brands of pictures coded with HEVC.
  if (has("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs")) return "heic";
  if (brands[0] === "crx ") return "raw photograph";
  return has("mif1", "msf1") ? "heic" : "video";
}
