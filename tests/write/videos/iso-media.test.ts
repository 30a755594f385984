import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lookIntoMedia, type MediaReport } from "../../../src/write/videos/iso-media.ts";
import { box, brand, largeBox, place, recording, track } from "../../support/small-videos.ts";

/** The report, and how many bytes were asked for. */
async function look(bytes: Buffer): Promise<MediaReport & { asked: number }> {
  let asked = 0;
  const report = await lookIntoMedia({
    bytes: bytes.length,
    read: async (offset, length) => {
      asked += length;
      expect(offset).toBeLessThanOrEqual(bytes.length);
      return bytes.subarray(offset, offset + length);
    },
  });
  return { ...report, asked };
}

test("a plain recording tells nothing", async () => {
  expect(await look(recording())).toMatchObject({ tells: [], tracks: 2 });
  expect(await look(recording(box("udta", box("name", "Row A"), "\0\0\0\0")))).toMatchObject({
    tells: [],
    tracks: 2,
  });
});

describe("what tells a place is found", () => {
  const keys = box("keys", "mdtacom.apple.quicktime.location.ISO6709");
  test.each([
    ["user data of telephones", recording(place()), "`©xyz`"],
    ["3GPP", recording(box("udta", box("loci", "\0\0\0\0"))), "`loci`"],
    ["keys of QuickTime", recording(box("meta", keys)), "`com.apple.quicktime.location`"],
    ["deep in a track", recording(box("trak", box("udta", box("\u00a9xyz", "+0")))), "`©xyz`"],
    ["XMP at the top", Buffer.concat([recording(), box("uuid", "ns.adobe.com")]), "XMP"],
    ["EXIF in room left free", Buffer.concat([recording(), box("free", "Exif\0\0")]), "`Exif`"],
    ["after the pictures", Buffer.concat([recording(), box("udta", box("loci"))]), "`loci`"],
    ["in a fragment", Buffer.concat([recording(), box("moof", box("loci"))]), "`loci`"],
    ["a track of data", recording(track("meta")), "`meta`"],
    ["a track of a camera's own", recording(track("camm")), "`camm`"],
    ["words, as flying cameras write them", recording(track("text")), "`text`"],
  ])("%s", async (_, bytes, says) => {
    const { tells } = await look(bytes);
    expect(tells.join()).toContain(says);
  });
});

test("the coded pictures are not read, however many there are", async () => {
  const coded = Buffer.alloc(5_000_000, 7);
  const bytes = Buffer.concat([brand, largeBox("mdat", coded), box("moov", track("vide"))]);
  const { asked, broken } = await look(bytes);
  expect(broken).toBeUndefined();
  expect(asked).toBeLessThan(2_000);
});

describe("hostile files come to an end", () => {
  const nested = (depth: number): Buffer => {
    let inner = box("trak");
    for (let at = 0; at < depth; at++) inner = box("trak", inner);
    return inner;
  };
  const sized = (size: number, type = "moov"): Buffer => {
    const head = Buffer.alloc(16);
    head.writeUInt32BE(size);
    head.write(type, 4, "latin1");
    return head;
  };
  test.each([
    ["empty", Buffer.alloc(0), "no description"],
    ["only a brand", brand, "no description"],
    ["without pictures", Buffer.concat([brand, box("moov", track("vide"))]), "neither pictures"],
    ["cut in a head", recording().subarray(0, brand.length + 5), "cut short"],
    ["cut in a box", recording().subarray(0, 90), "cut short"],
    ["a size that never moves on", Buffer.concat([brand, sized(4)]), "damaged at byte"],
    ["a size past the end", Buffer.concat([brand, sized(0x7fffffff)]), "cut short"],
    [
      "64 bits past all files",
      Buffer.concat([brand, largeBox("moov", brand, 2 ** 52)]),
      "cut short",
    ],
    [
      "64 bits that are not a number",
      Buffer.concat([brand, sized(1, "moov").subarray(0, 8), Buffer.alloc(8, 255)]),
      "damaged at byte",
    ],
    [
      "64 bits smaller than their own head",
      Buffer.concat([brand, largeBox("moov", brand, 3)]),
      "damaged",
    ],
    ["boxes in boxes", Buffer.concat([brand, box("moov", nested(200))]), "without end"],
    [
      "a child larger than its parent",
      Buffer.concat([brand, box("moov", sized(5000, "trak"))]),
      "damaged at byte",
    ],
    [
      "millions of boxes",
      Buffer.concat([
        brand,
        box("moov", Buffer.concat(Array.from({ length: 30_000 }, () => box("free")))),
      ]),
      "more than 20000 boxes",
    ],
    ["zeros", Buffer.alloc(100_000), "no description"],
  ])("%s", async (_, bytes, says) => {
    expect((await look(bytes)).broken).toContain(says);
  });

  test("any bytes at all, and any damage to a good file", async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
        await look(Buffer.from(bytes));
      }),
      { numRuns: 300 },
    );
    const good = recording(place());
    await fc.assert(
      fc.asyncProperty(fc.nat(good.length - 1), fc.nat(255), async (at, byte) => {
        const bad = Buffer.from(good);
        bad.writeUInt8(byte, at);
        const { broken, tells } = await look(bad);
        // One changed byte never makes it publishable, unless it hit the mark itself.
        if (broken === undefined && tells.length === 0) {
          const mark = good.indexOf("\u00a9xyz", 0, "latin1");
          const head = brand.length;
          const hidesAll = at >= head && at < head + 8;
          expect(hidesAll || (at >= mark && at < mark + 4)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});
