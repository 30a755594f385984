import { existsSync, readdirSync, readFileSync } from "node:fs";
import ExifReader from "exifreader";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { type Entry, ListFault, readList } from "../../site-demo/draw/list.ts";
import { locationXmp, mark } from "../../site-demo/draw/metadata.ts";
import { picture, print, turned } from "../../site-demo/draw/picture.ts";
import { sceneNames } from "../../site-demo/draw/scenes/index.ts";

const zone = "America/Denver";
const small = 128;

function entry(scene: string, more: Partial<Entry> = {}): Entry {
  return {
    file: `2026-03-14/${scene}.jpg`,
    scene,
    detail: {},
    taken: "2026-03-14 19:20",
    orientation: 1,
    view: "",
    ...more,
  };
}

describe("drawing", () => {
  test.each(["rivet-row", "drawing-sheet"])(
    "%s comes out the same, byte for byte",
    async (scene) => {
      const first = await picture(entry(scene), zone, small);
      const second = await picture(entry(scene), zone, small);
      expect(first.equals(second)).toBe(true);
    },
  );

  test("another file name is another picture of the same scene", async () => {
    const one = await print(entry("rivet-row"), small);
    const other = await print(entry("rivet-row", { file: "2026-03-15/other.jpg" }), small);
    expect(Buffer.from(one.pixels).equals(Buffer.from(other.pixels))).toBe(false);
  });

  test.each(sceneNames())("%s draws with its defaults and shows something", async (scene) => {
    const { width, height, pixels } = await print(entry(scene), small);
    expect([width, height]).toEqual([128, 96]);
    const { channels } = await sharp(pixels, { raw: { width, height, channels: 3 } }).stats();
    // Neither black nor burnt out nor an even grey.
    for (const { mean, stdev } of channels) {
      expect(mean).toBeGreaterThan(12);
      expect(mean).toBeLessThan(225);
      expect(stdev).toBeGreaterThan(14);
    }
  });

  test("a camera held upright gives a tall picture", async () => {
    const { width, height } = await print(entry("mistake-hole", { orientation: 6 }), small);
    expect([width, height]).toEqual([96, 128]);
  });

  test("what a reading says is drawn: another number is another display", async () => {
    const one = await print(entry("scale-weighing", { detail: { reading: "2.41 lb" } }), small);
    const other = await print(entry("scale-weighing", { detail: { reading: "7.86 lb" } }), small);
    const differing = one.pixels.filter(
      (value, i) => Math.abs(value - (other.pixels[i] ?? 0)) > 20,
    );
    expect(differing.length).toBeGreaterThan(50);
    expect(differing.length).toBeLessThan(one.pixels.length / 20);
  });
});

test("holes to be cut are ringed on the blank, when the list says so", async () => {
  const plain = await print(entry("template-layout", { detail: { lines: "13" } }), 256);
  const ringed = await print(
    entry("template-layout", { detail: { lines: "13", rings: "3" } }),
    256,
  );
  const changed = plain.pixels.filter((value, i) => Math.abs(value - (ringed.pixels[i] ?? 0)) > 20);
  expect(changed.length).toBeGreaterThan(300);
  expect(changed.length).toBeLessThan(plain.pixels.length / 8);
});

describe("camera data", () => {
  test.each([
    ["2026-03-14 19:20", "2026:03:14 19:20:00", "-06:00"],
    ["2026-01-08 21:20", "2026:01:08 21:20:00", "-07:00"],
  ])("%s is in the bytes with its offset", async (taken, time, offset) => {
    const bytes = await picture(entry("instrument-dial", { taken, orientation: 8 }), zone, small);
    const { exif, gps } = ExifReader.load(bytes, { expanded: true });
    expect(exif?.DateTimeOriginal?.description).toBe(time);
    expect(exif?.OffsetTimeOriginal?.description).toBe(offset);
    expect(exif?.Make?.description).toBe("Bench Camera");
    expect(exif?.Orientation?.value).toBe(8);
    expect(gps?.Latitude).toBeCloseTo(45, 1);
    expect(gps?.Longitude).toBeCloseTo(-140, 1);
  });

  test("a few carry their place as XMP too, most do not", async () => {
    const entries = Array.from({ length: 60 }, (_, i) =>
      entry("mistake-hole", { file: `2026-03-14/xmp-${i}.jpg` }),
    );
    const located = entries.filter((one) => locationXmp(one) !== undefined);
    expect(located.length).toBeGreaterThan(3);
    expect(located.length).toBeLessThan(20);
    const xmpOf = async (one: Entry | undefined) =>
      ExifReader.load(await picture(one ?? entry("crate"), zone, 48), { expanded: true }).xmp?._raw;
    expect(await xmpOf(located[0])).toMatch(/GPSLatitude="45,\d+\.\d+N"/);
    expect(await xmpOf(entries.find((one) => !located.includes(one)))).toBeUndefined();
  });

  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    "orientation %i: honouring the tag shows it upright",
    async (orientation) => {
      const [width, height] = [48, 32];
      const corner = (x: number, y: number) =>
        x < width / 2
          ? y < height / 2
            ? [220, 30, 30]
            : [30, 200, 40]
          : y < height / 2
            ? [30, 60, 220]
            : [235, 235, 235];
      const pixels = Uint8Array.from(
        Array.from({ length: width * height }, (_, i) =>
          corner(i % width, Math.floor(i / width)),
        ).flat(),
      );
      const stored = turned({ width, height, pixels }, orientation);
      const jpeg = await sharp(stored.pixels, {
        raw: { width: stored.width, height: stored.height, channels: 3 },
      })
        .withMetadata({ orientation })
        .jpeg({ quality: 95, chromaSubsampling: "4:4:4" })
        .toBuffer();
      const shown = await sharp(jpeg).autoOrient().raw().toBuffer({ resolveWithObject: true });
      expect([shown.info.width, shown.info.height]).toEqual([width, height]);
      for (const [x, y] of [
        [10, 7],
        [37, 7],
        [10, 25],
        [37, 25],
      ] as const) {
        corner(x, y).forEach((value, c) => {
          expect(Math.abs((shown.data[(y * width + x) * 3 + c] ?? 0) - value)).toBeLessThan(24);
        });
      }
    },
  );
});

describe("the list", () => {
  const line = (more: string) =>
    `- { file: a/b.jpg, ${more}, taken: 2026-03-14 19:20, orientation: 1, view: "" }\n`;

  test("an unknown scene is named, with the nearest one", () => {
    expect(() => readList(line("scene: rivet-rows"))).toThrow(
      new ListFault("a/b.jpg: no scene `rivet-rows`, perhaps `rivet-row`"),
    );
  });

  test("a scene like no other is named without a guess", () => {
    expect(() => readList(line("scene: submarine"))).toThrow(
      new ListFault("a/b.jpg: no scene `submarine`"),
    );
  });

  test("a detail that the scene does not know is named with those it knows", async () => {
    await expect(print(entry("rivet-row", { detail: { rivets: "4" } }), small)).rejects.toThrow(
      "2026-03-14/rivet-row.jpg: scene rivet-row has no detail `rivets` (it has heads, bad, side)",
    );
  });

  test("every fault is told at once", () => {
    const text = '- { file: ../x.jpg, scene: crate, taken: today, orientation: 9, view: "" }\n';
    expect(() => readList(text)).toThrow(
      "../x.jpg: `file` is not a .jpg below photos/\n../x.jpg: `taken` is not a date and a time\n../x.jpg: `orientation` is not 1 to 8",
    );
  });
});

describe("the demo's photographs", () => {
  const photos = new URL("../../site-demo/photos/", import.meta.url);
  const entries = readList(
    readFileSync(new URL("../../site-demo/pictures.yaml", import.meta.url), "utf8"),
  );

  test("each was drawn from its entry as the list has it now (else: npm run pictures)", () => {
    const stale = entries.filter((one) => {
      const photo = new URL(one.file, photos);
      if (!existsSync(photo)) return true;
      const tags = ExifReader.load(readFileSync(photo));
      return tags.Software?.description !== mark(one);
    });
    expect(stale.map(({ file }) => file)).toEqual([]);
  });

  test("there are no others, and together they stay below 12 MB", () => {
    const found = readdirSync(photos, { recursive: true, withFileTypes: true }).filter((item) =>
      item.isFile(),
    );
    expect(found.length).toBe(entries.length);
    const total = entries.reduce(
      (sum, { file }) => sum + readFileSync(new URL(file, photos)).length,
      0,
    );
    expect(total).toBeLessThan(12_000_000);
  });
});
