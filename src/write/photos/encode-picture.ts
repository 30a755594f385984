import type { Metadata, Sharp } from "sharp";
import { type ContentKind, contentKind, kindInWords, pictureKinds } from "./content-kind.ts";
import { loadSharp } from "./load-sharp.ts";
import { type Refusal, refusal } from "./original.ts";

/** How pictures are made. Part of the cache's key: changing it encodes everything afresh. */
export interface Recipe {
  /** Narrowest first, in pixels; a narrower photo gets its own width as its last. */
  readonly widths: readonly number[];
  /** Present: cut to this shape, keeping the part with most to see, and enlarged when small. */
  readonly shape?: { readonly width: number; readonly height: number };
  /** Absent: no AVIF, for what only takes JPEG. */
  readonly avif?: { readonly quality: number; readonly effort: number };
  readonly jpeg: { readonly quality: number };
  /** Raised when the code below changes what comes out. */
  readonly version: number;
}

/** Measured on 12-megapixel photos: 800 px wide is about 75 kB as AVIF and 100 kB as JPEG. */
export const usualRecipe: Recipe = {
  widths: [240, 480, 800, 1200, 1600],
  avif: { quality: 50, effort: 2 },
  jpeg: { quality: 75 },
  version: 1,
};

/** What is refused, before or while decoding. */
export interface PictureLimits {
  readonly fileBytes: number;
  readonly pixels: number;
  readonly secondsEach: number;
}

/** 220 million pixels lets the largest phone cameras (108 and 200 Mpx) through. */
export const usualLimits: PictureLimits = { fileBytes: 80e6, pixels: 220e6, secondsEach: 60 };

/** Turns a HEIC file into a JPEG that stands upright. */
export type HeicDecoder = (bytes: Uint8Array) => Promise<Uint8Array>;

/** One encoded size. */
export interface EncodedFile {
  readonly format: "avif" | "jpeg";
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

/** What encoding one photograph depends on. */
export interface EncodeOptions {
  readonly recipe: Recipe;
  readonly limits: PictureLimits;
  /** Absent when no decoder is installed. */
  readonly decodeHeic?: HeicDecoder;
  readonly signal?: AbortSignal;
}

/**
 * Encodes a photograph afresh in every width of the recipe: upright, in sRGB, on white where
 * it was transparent, without any metadata. The first frame of several is taken.
 *
 * @param original All bytes of the file.
 * @returns The files, narrowest first, or why the photograph is refused.
 * @throws Whatever `signal` was aborted with, between two sizes.
 */
export async function encodePicture(
  original: Uint8Array,
  { recipe, limits, decodeHeic, signal }: EncodeOptions,
): Promise<EncodedFile[] | Refusal> {
  const kind = contentKind(original);
  if (!isPicture(kind)) return notAPicture(kind);
  const sharp = await loadSharp();
  const deadline = Date.now() + limits.secondsEach * 1000;
  const secondsLeft = (): number => Math.max(1, Math.ceil((deadline - Date.now()) / 1000));

  let bytes = original;
  if (kind === "heic") {
    const size = await sharp(original, { limitInputPixels: false })
      .metadata()
      .catch(() => undefined);
    if (size && size.width * size.height > limits.pixels) return enormous(size, limits);
    if (decodeHeic === undefined) return heicWithoutDecoder();
    try {
      bytes = await decodeHeic(original);
    } catch (error) {
      return isTimeout(error) ? tooSlow(limits) : damaged(kind, error);
    }
  }

  let upright: { data: Buffer; width: number; height: number; channels: 1 | 2 | 3 | 4 };
  try {
    const input = sharp(bytes, { limitInputPixels: false, failOn: "error" });
    const metadata = await input.metadata();
    if (metadata.width * metadata.height > limits.pixels) return enormous(metadata, limits);
    const full = recipe.shape ?? fullSize(metadata.autoOrient, recipe);
    const { data, info } = await sharp(bytes, {
      limitInputPixels: limits.pixels,
      failOn: "error",
    })
      .autoOrient()
      .resize(
        recipe.shape
          ? { ...full, fit: "cover", position: "attention" }
          : { ...full, fit: "fill", withoutEnlargement: true },
      )
      .flatten({ background: "#ffffff" })
      .toColourspace("srgb")
      .timeout({ seconds: secondsLeft() })
      .raw({ depth: "uchar" })
      .toBuffer({ resolveWithObject: true });
    upright = { data, width: info.width, height: info.height, channels: info.channels };
  } catch (error) {
    if (isTimeout(error)) return tooSlow(limits);
    return damaged(kind, error);
  }

  // From here on there are only pixels, so no metadata of the original can come through.
  const { data, width, height, channels } = upright;
  const files: EncodedFile[] = [];
  for (const w of widthsFor(width, recipe)) {
    const h = Math.max(1, Math.round((height * w) / width));
    const sized = (): Sharp =>
      sharp(data, { raw: { width, height, channels } })
        .resize({ width: w, height: h, fit: "fill" })
        .timeout({ seconds: secondsLeft() });
    try {
      if (recipe.avif) {
        signal?.throwIfAborted();
        const avif = await sized().avif(recipe.avif).toBuffer();
        files.push({ format: "avif", width: w, height: h, bytes: avif });
      }
      signal?.throwIfAborted();
      const jpeg = await sized()
        .jpeg({ ...recipe.jpeg, mozjpeg: true })
        .toBuffer();
      files.push({ format: "jpeg", width: w, height: h, bytes: jpeg });
    } catch (error) {
      if (isTimeout(error)) return tooSlow(limits);
      throw error;
    }
  }
  return files;
}

function isPicture(kind: ContentKind): boolean {
  return pictureKinds.some((known) => known === kind);
}

// Four times as tall as wide is plenty; beyond 65,535 px neither format can hold the height.
const tallest = 4;

function fullSize(
  { width, height }: Metadata["autoOrient"],
  { widths }: Recipe,
): { width: number; height: number } {
  const widest = widths.at(-1) ?? width;
  const scale = Math.min(1, widest / width, (widest * tallest) / height);
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
}

function widthsFor(width: number, { widths }: Recipe): number[] {
  return [...widths.filter((w) => w < width), width];
}

function isTimeout(error: unknown): boolean {
  return error instanceof Error && /^timeout:/.test(error.message);
}

const saveAsJpeg = "open it in a picture program and save it as JPEG";

function notAPicture(kind: ContentKind): Refusal {
  if (kind === "empty") {
    return refusal("is empty: 0 bytes", "empty file", [], ["copy it from the camera again"]);
  }
  const help: string[] = [];
  if (kind === "svg" || kind === "pdf") help.push("save the drawing as PNG");
  else if (kind === "video") help.push("take a still from it; videos are linked, not shown");
  else if (["bmp", "jpeg xl", "raw photograph"].includes(kind)) help.push(saveAsJpeg);
  else help.push("copy it from the camera again");
  return refusal(
    `is not a photograph that can be published: its content is ${kindInWords[kind]}`,
    kindInWords[kind],
    ["JPEG, PNG, WebP, AVIF, GIF, TIFF and HEIC are read, told by content and not by name"],
    help,
  );
}

function enormous(size: { width: number; height: number }, limits: PictureLimits): Refusal {
  const megapixels = (pixels: number): string => `${Math.ceil(pixels / 1e6)} megapixels`;
  return refusal(
    `is ${size.width} × ${size.height} pixels, above the limit of ${megapixels(limits.pixels)}`,
    megapixels(size.width * size.height),
    [],
    ["save it smaller; 1,600 pixels wide is all that the site shows"],
  );
}

function heicWithoutDecoder(): Refusal {
  return refusal(
    "is a HEIC picture, which cannot be decoded here",
    "HEIC",
    ["told by its content, whatever the name says"],
    [
      "save it as JPEG and name that file",
      "for photographs to come, set the phone's camera to JPEG: camera settings, formats, `most compatible`, or switch off `high efficiency pictures`",
      "or install the optional package `heic-convert` beside this program",
    ],
  );
}

function tooSlow({ secondsEach }: PictureLimits): Refusal {
  return refusal(
    `took longer than ${secondsEach} seconds to read and was given up`,
    "too slow",
    [],
    [saveAsJpeg],
  );
}

function damaged(kind: ContentKind, error: unknown): Refusal {
  const said = error instanceof Error ? (error.message.split("\n")[0] ?? "").trim() : "";
  const cut =
    /premature end|unexpected end|end of (file|image|stream)|truncat|bad seek|Cannot read full/i;
  return refusal(
    cut.test(error instanceof Error ? error.message : "")
      ? `is cut short: ${kindInWords[kind]} that ends before it is complete`
      : `is damaged: it begins as ${kindInWords[kind]} but cannot be read to its end`,
    "cannot be read",
    said === "" ? [] : [`the decoder says: ${said}`],
    ["copy it from the camera or the phone again"],
  );
}
