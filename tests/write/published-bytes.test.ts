import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { hiddenMetadata } from "../../src/write/published-bytes.ts";
import { brandedFile, locatedJpeg, noise } from "../support/small-photos.ts";

const formats = ["jpeg", "png", "webp", "avif"] as const;

describe.each(formats)("%s", (format) => {
  test("with a place in it is found out", async () => {
    const located = await sharp(await locatedJpeg())
      .keepMetadata()
      .toFormat(format)
      .toBuffer();
    const xmp = format === "png" ? "zTXt" : "ns.adobe.com"; // compressed in a PNG
    expect(hiddenMetadata(located)).toEqual(expect.arrayContaining(["Exif", "GPS", xmp]));
  });

  test("without metadata is clean", async () => {
    expect(hiddenMetadata(await noise(90, 60).toFormat(format).toBuffer())).toEqual([]);
  });

  test("is searched behind its end", async () => {
    const clean = await noise(90, 60).toFormat(format).toBuffer();
    const behind = Buffer.concat([clean, Buffer.from("Exif and ISO6709")]);
    expect(hiddenMetadata(behind)).toEqual(["Exif", "ISO6709"]);
  });

  test("that is cut short is searched as a whole", async () => {
    const located = await sharp(await locatedJpeg())
      .keepMetadata()
      .toFormat(format)
      .toBuffer();
    expect(hiddenMetadata(located.subarray(0, located.length - 10))).toContain("GPS");
  });
});

test("the letters GPS among coded pixels are not metadata", async () => {
  const clean = await noise(90, 60).jpeg().toBuffer();
  const among = Buffer.from(clean);
  among.write("GPS", among.length - 200, "latin1");
  expect(among.includes("GPS")).toBe(true);
  expect(hiddenMetadata(among)).toEqual([]);
});

test("the letters GPS in a JPEG's comment are", async () => {
  const clean = await noise(90, 60).jpeg().toBuffer();
  const comment = Buffer.from("\xff\xfe\x00\x0bGPS 0 0 0", "latin1");
  const commented = Buffer.concat([clean.subarray(0, 2), comment, clean.subarray(2)]);
  expect((await sharp(commented).metadata()).format).toBe("jpeg");
  expect(hiddenMetadata(commented)).toEqual(["GPS"]);
});

test.each([
  ["com.apple.quicktime.location.ISO6709", ["ISO6709"]],
  ["\u00a9xyz", ["\u00a9xyz"]],
])("a video whose index holds %s", (mark, found) => {
  const text = Buffer.from(mark, "latin1");
  const size = Buffer.alloc(4);
  size.writeUInt32BE(8 + text.length);
  const box = Buffer.concat([size, Buffer.from("moov"), text]);
  expect(hiddenMetadata(Buffer.concat([brandedFile("qt  "), box]))).toEqual(found);
  expect(hiddenMetadata(brandedFile("isom"))).toEqual([]);
});
