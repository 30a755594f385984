// Photographs made for tests: small, invented, each with one property that matters.

import { crc32, deflateSync } from "node:zlib";
import sharp, { type Sharp } from "sharp";

/** Corner colours of `corners`, as they are to be seen. */
export const cornerColours = {
  topLeft: [220, 30, 30],
  topRight: [30, 200, 30],
  bottomLeft: [30, 30, 220],
  bottomRight: [230, 220, 40],
} as const;

/** A picture 60 wide and 40 high whose four quarters have the colours above. */
export async function corners(): Promise<Sharp> {
  const quarter = ([r, g, b]: readonly [number, number, number]) =>
    sharp({ create: { width: 30, height: 20, channels: 3, background: { r, g, b } } })
      .png()
      .toBuffer();
  const [topLeft, topRight, bottomLeft, bottomRight] = await Promise.all([
    quarter(cornerColours.topLeft),
    quarter(cornerColours.topRight),
    quarter(cornerColours.bottomLeft),
    quarter(cornerColours.bottomRight),
  ]);
  const background = "#000000";
  const whole = sharp({ create: { width: 60, height: 40, channels: 3, background } }).composite([
    { input: topLeft, left: 0, top: 0 },
    { input: topRight, left: 30, top: 0 },
    { input: bottomLeft, left: 0, top: 20 },
    { input: bottomRight, left: 30, top: 20 },
  ]);
  return sharp(await whole.png().toBuffer());
}

/**
 * `corners` as a camera stores it that was held in one of eight ways: the pixels turned, and
 * the EXIF orientation (1 to 8) that turns them back.
 */
export async function stored(orientation: number): Promise<Buffer> {
  const turned = async (image: Sharp): Promise<Sharp> => sharp(await image.png().toBuffer());
  const upright = await corners();
  const ways: Record<number, () => Promise<Sharp>> = {
    1: async () => upright,
    2: async () => upright.flop(),
    3: async () => upright.rotate(180),
    4: async () => upright.flip(),
    5: async () => (await turned(upright.rotate(90))).flop(),
    6: async () => upright.rotate(270),
    7: async () => (await turned(upright.rotate(270))).flop(),
    8: async () => upright.rotate(90),
  };
  const image = await ways[orientation]?.();
  if (image === undefined) throw new Error(`no orientation ${orientation}`);
  return (await turned(image)).withMetadata({ orientation }).jpeg({ quality: 95 }).toBuffer();
}

/** Noise, which hardly compresses: wide enough for every published width unless told. */
export function noise(width = 600, height = 400, mean = 120): Sharp {
  return sharp({
    create: {
      width,
      height,
      channels: 3,
      background: "#808080",
      noise: { type: "gaussian", mean, sigma: 30 },
    },
  });
}

/** A plain JPEG, different for each number. */
export function plainJpeg(number: number, width = 40, height = 30): Promise<Buffer> {
  const background = { r: (number * 37) % 256, g: (number * 101) % 256, b: 128 };
  return sharp({ create: { width, height, channels: 3, background } })
    .jpeg()
    .toBuffer();
}

/** A picture that says where it was taken, in EXIF and in XMP. */
export function locatedJpeg(): Promise<Buffer> {
  const xmp = `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="0,0.0N" exif:GPSLongitude="0,0.0E"/></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;
  return noise(60, 40)
    .withExif({
      IFD0: { Make: "GPS Exif test" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "0/1 0/1 0/1", GPSLongitudeRef: "E" },
    })
    .withXmp(xmp)
    .jpeg()
    .toBuffer();
}

/** A black PNG of any size in pixels, a few kilobytes long. */
export function blackPng(width: number, height: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.writeUInt8(1, 8); // one bit a pixel, grey
  const rows = Buffer.alloc((1 + Math.ceil(width / 8)) * height);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** The head of a file of the ISO base media family with these brands. */
export function brandedFile(major: string, ...compatible: string[]): Buffer {
  const brands = Buffer.from([major, "\0\0\0\0", ...compatible].join(""), "latin1");
  const size = Buffer.alloc(4);
  size.writeUInt32BE(8 + brands.length);
  const rest = Buffer.from("\0\0\0\x10mdat12345678", "latin1");
  return Buffer.concat([size, Buffer.from("ftyp"), brands, rest]);
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}
