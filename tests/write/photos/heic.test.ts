import { readFileSync } from "node:fs";
import { join } from "node:path";
import ExifReader from "exifreader";
import sharp from "sharp";
import { expect, test, vi } from "vitest";
import { installedHeicDecoder } from "../../../src/write/photos/heic-decoder.ts";
import { preparePictures } from "../../../src/write/photos/prepare-pictures.ts";
import { hiddenMetadata } from "../../../src/write/published-bytes.ts";
import { scratchFolder } from "../../support/scratch-folder.ts";
import { someDay, span } from "../../support/small-build.ts";
import { heicPicture, type Paint } from "../../support/small-heic.ts";
import { cornerColours } from "../../support/small-photos.ts";

const { topLeft, topRight, bottomLeft, bottomRight } = cornerColours;
const quarters =
  (...[a, b, c, d]: readonly (readonly [number, number, number])[]): Paint =>
  (x, y) =>
    (x < 32 ? (y < 16 ? a : c) : y < 16 ? b : d) ?? [0, 0, 0];
/** Lying on its side: turned once against the clock, the corners stand where they are named. */
const fallenRight = quarters(bottomLeft, topLeft, bottomRight, topRight);
/** The same to the other side: turned three times against the clock, or once with it. */
const fallenLeft = quarters(topRight, bottomRight, topLeft, bottomLeft);

/** EXIF of a telephone: held upright (orientation 6), and an invented place. */
const exif = await (async () => {
  const jpeg = await sharp({ create: { width: 8, height: 8, channels: 3, background: "#888" } })
    .withExif({
      IFD0: { Make: "GPS Exif test" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "0/1 0/1 0/1" },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  const at = jpeg.indexOf("Exif\0\0", 0, "latin1");
  return jpeg.subarray(at + 6, at - 2 + jpeg.readUInt16BE(at - 2));
})();

async function publish(bytes: Buffer, more: { readonly decodeHeic?: "none" } = {}) {
  const folder = scratchFolder({ "journal/photos/x.heic": bytes });
  const prepared = await preparePictures({
    photos: [
      { date: someDay, file: "x.heic", caption: "x", shows: [], private: false, span: span() },
    ],
    photosFolder: join(folder, "journal/photos"),
    cacheFolder: join(folder, "cache"),
    outputFolder: join(folder, "site"),
    ...more,
  });
  const picture = prepared.pictures.get("x.heic");
  const files = [...(picture?.jpeg ?? []), ...(picture?.avif ?? [])].map(({ url }) =>
    readFileSync(join(folder, "site", url)),
  );
  return { ...prepared, picture, files };
}

async function cornersOf(bytes: Buffer) {
  const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => {
    const from = (y * info.width + x) * info.channels;
    return [...data.subarray(from, from + 3)];
  };
  return [
    at(4, 4),
    at(info.width - 5, 4),
    at(4, info.height - 5),
    at(info.width - 5, info.height - 5),
  ];
}

function near(found: readonly number[], wanted: readonly number[]) {
  for (const [index, value] of wanted.entries()) {
    expect(Math.abs((found[index] ?? 0) - value)).toBeLessThan(40);
  }
}

test("the sample is what a telephone stores: a turn in its boxes, a place in its EXIF", async () => {
  expect(installedHeicDecoder()).toBeDefined();
  const bytes = heicPicture(64, 32, fallenLeft, { turns: 3, exif });
  const { exif: read, gps } = ExifReader.load(bytes, { expanded: true });
  expect(read?.Orientation?.value).toBe(6);
  expect(gps?.Latitude).toBe(0);
  expect(await sharp(bytes).metadata()).toMatchObject({ compression: "hevc" });
});

test.each([
  ["once against the clock", 1, fallenRight],
  ["once with it", 3, fallenLeft],
] as const)("with its decoder it is published upright, turned %s", async (_, turns, paint) => {
  const { picture, diagnostics, files } = await publish(
    heicPicture(64, 32, paint, { turns, exif }),
  );
  expect(diagnostics).toEqual([]);
  expect(picture).toMatchObject({ width: 32, height: 64 });
  expect(files).toHaveLength(2);
  for (const bytes of files) {
    const found = await cornersOf(bytes);
    for (const [index, wanted] of [topLeft, topRight, bottomLeft, bottomRight].entries()) {
      near(found[index] ?? [], wanted);
    }
    expect(hiddenMetadata(bytes)).toEqual([]);
    expect(await sharp(bytes).metadata()).not.toHaveProperty("exif");
  }
});

test("cut short, it is named and nothing is shown, nor printed", async () => {
  const said = vi.spyOn(process.stdout, "write");
  const whole = heicPicture(64, 32, fallenLeft, { exif });
  for (const part of [0.2, 0.5, 0.9]) {
    const { picture, diagnostics } = await publish(whole.subarray(0, whole.length * part));
    expect(picture).toBeUndefined();
    expect(diagnostics.map(({ code }) => code)).toEqual(["unreadable-photo"]);
  }
  expect(said.mock.calls.join()).not.toContain("HEIF");
  said.mockRestore();
});

test("a picture that takes too long is given up", async () => {
  const decode = installedHeicDecoder(0.001);
  await expect(decode?.(heicPicture(64, 32, fallenLeft))).rejects.toThrow(/^timeout/);
});

test("without its decoder the message says which setting gives JPEG", async () => {
  const { picture, diagnostics } = await publish(heicPicture(64, 32, fallenLeft), {
    decodeHeic: "none",
  });
  expect(picture).toBeUndefined();
  expect(diagnostics[0]?.message).toBe(
    "photo `x.heic` is a HEIC picture, which cannot be decoded here",
  );
  expect(diagnostics[0]?.help.join("\n")).toMatch(/`most compatible`.*heic-convert/s);
});
