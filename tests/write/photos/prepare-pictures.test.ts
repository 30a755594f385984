import { spawn } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, describe, expect, test, vi } from "vitest";
import type { Photo } from "../../../src/model/photo.ts";
import { usualLimits, usualRecipe } from "../../../src/write/photos/encode-picture.ts";
import {
  type PictureOptions,
  type PreparedPictures,
  preparePictures,
} from "../../../src/write/photos/prepare-pictures.ts";
import { hiddenMetadata } from "../../../src/write/published-bytes.ts";
import { failOnce } from "../../support/failing-disk.ts";
import { addFiles, filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { someDay, span } from "../../support/small-build.ts";
import {
  blackPng,
  brandedFile,
  cornerColours,
  corners,
  locatedJpeg,
  noise,
  plainJpeg,
  stored,
} from "../../support/small-photos.ts";

afterEach(() => vi.restoreAllMocks());

/** A photo as an entry names it, on the line that is its number. */
function photo(file: string, line = 1): Photo {
  return {
    date: someDay,
    file,
    caption: file,
    shows: [],
    private: false,
    span: span({ line, text: file }),
  };
}

/** A journal with these files in `photos/`, and room for cache and site beside it. */
function workshop(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = scratchFolder();
  mkdirSync(join(folder, "journal/photos"), { recursive: true });
  addFiles(join(folder, "journal/photos"), files);
  return folder;
}

let builds = 0;

/** Prepares the named photos into a new site beside the journal. */
async function prepare(
  folder: string,
  files: readonly string[],
  more: Partial<PictureOptions> = {},
): Promise<PreparedPictures & { site: string }> {
  builds += 1;
  const site = join(folder, `site-${builds}`);
  const prepared = await preparePictures({
    photos: files.map((file, i) => photo(file, i + 1)),
    photosFolder: join(folder, "journal/photos"),
    cacheFolder: join(folder, "cache"),
    outputFolder: site,
    ...more,
  });
  return { ...prepared, site };
}

/** The one finding of a single photo. */
async function finding(bytes: string | Uint8Array, file = "x.jpg", more = {}) {
  const { diagnostics, pictures } = await prepare(workshop({ [file]: bytes }), [file], more);
  expect(pictures.size).toBe(0);
  expect(diagnostics).toHaveLength(1);
  return diagnostics[0];
}

describe("a published picture", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])("stands upright: orientation %i", async (orientation) => {
    const { pictures, site } = await prepare(workshop({ "x.jpg": await stored(orientation) }), [
      "x.jpg",
    ]);
    const picture = pictures.get("x.jpg");
    expect(picture).toMatchObject({ width: 60, height: 40 });
    for (const { url, width, height } of [...(picture?.avif ?? []), ...(picture?.jpeg ?? [])]) {
      const { data, info } = await sharp(readFileSync(join(site, url)))
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect([info.width, info.height]).toEqual([width, height]);
      const at = (x: number, y: number): number[] => [
        ...data.subarray((y * info.width + x) * 3, (y * info.width + x) * 3 + 3),
      ];
      for (const [found, wanted] of [
        [at(10, 6), cornerColours.topLeft],
        [at(50, 6), cornerColours.topRight],
        [at(10, 34), cornerColours.bottomLeft],
        [at(50, 34), cornerColours.bottomRight],
      ] as const) {
        for (const channel of [0, 1, 2] as const) {
          expect(Math.abs((found[channel] ?? -1) - wanted[channel])).toBeLessThan(25);
        }
      }
    }
  });

  test("carries nothing of where and with what it was taken", async () => {
    const original = await locatedJpeg();
    expect(hiddenMetadata(original)).toEqual(["Exif", "GPS", "ns.adobe.com"]);
    const { pictures, site } = await prepare(workshop({ "x.jpg": original }), ["x.jpg"]);
    const files = filesIn(site);
    expect(files).toHaveLength(2);
    for (const file of files) {
      const bytes = readFileSync(join(site, file));
      expect(hiddenMetadata(bytes)).toEqual([]);
      const { exif, xmp, icc, iptc } = await sharp(bytes).metadata();
      expect([exif, xmp, icc, iptc]).toEqual([undefined, undefined, undefined, undefined]);
    }
    expect(pictures.get("x.jpg")?.jpeg).toHaveLength(1);
  });

  test("comes in every width up to its own, the same in both formats", async () => {
    const { pictures, site } = await prepare(
      workshop({ "x.png": await noise(1300, 30).png().toBuffer() }),
      ["x.png"],
    );
    const picture = pictures.get("x.png");
    expect(picture?.avif.map(({ width }) => width)).toEqual([240, 480, 800, 1200, 1300]);
    expect(picture?.jpeg.map(({ width }) => width)).toEqual([240, 480, 800, 1200, 1300]);
    const wide = await prepare(workshop({ "x.png": await noise(1700, 34).png().toBuffer() }), [
      "x.png",
    ]);
    expect(wide.pictures.get("x.png")).toMatchObject({ width: 1600, height: 32 });
    expect(wide.pictures.get("x.png")?.jpeg.map(({ width }) => width)).toEqual(usualRecipe.widths);
    for (const { url } of [...(picture?.avif ?? []), ...(picture?.jpeg ?? [])]) {
      expect(url).toMatch(/^photos\/[0-9a-f]{20}-\d+\.(avif|jpg)$/);
      expect(statSync(join(site, url)).size).toBeGreaterThan(100);
    }
  });

  test("is never made larger than the original, and may be a single pixel", async () => {
    const { pictures } = await prepare(workshop({ "x.png": blackPng(1, 1) }), ["x.png"]);
    expect(pictures.get("x.png")?.jpeg).toMatchObject([{ width: 1, height: 1 }]);
  });

  test("that is very tall stays within what the formats can hold", async () => {
    const { pictures, diagnostics } = await prepare(workshop({ "x.png": blackPng(8, 70_000) }), [
      "x.png",
    ]);
    expect(diagnostics).toEqual([]);
    expect(pictures.get("x.png")).toMatchObject({ width: 1, height: 6400 });
  });

  test.each(["jpeg", "png", "webp", "avif", "gif", "tiff"] as const)(
    "may come from %s, whatever its name says",
    async (format) => {
      const bytes = await (await corners()).toFormat(format).toBuffer();
      const { pictures } = await prepare(workshop({ "x.jpg": bytes }), ["x.jpg"]);
      expect(pictures.get("x.jpg")).toMatchObject({ width: 60, height: 40 });
    },
  );

  test("shows white where the original was transparent, and eight bits of sixteen", async () => {
    const clear = await sharp({
      create: { width: 20, height: 20, channels: 4, background: { r: 9, g: 9, b: 9, alpha: 0 } },
    })
      .png()
      .toBuffer();
    const deep = await sharp({
      create: { width: 20, height: 20, channels: 3, background: "#c86432" },
    })
      .toColourspace("rgb16")
      .png()
      .toBuffer();
    expect((await sharp(deep).metadata()).depth).toBe("ushort");
    const { pictures, site } = await prepare(workshop({ "clear.png": clear, "deep.png": deep }), [
      "clear.png",
      "deep.png",
    ]);
    const colour = async (file: string): Promise<number[]> => {
      const url = pictures.get(file)?.jpeg[0]?.url ?? "";
      const { data } = await sharp(readFileSync(join(site, url)))
        .raw()
        .toBuffer({ resolveWithObject: true });
      return [...data.subarray(0, 3)];
    };
    expect(await colour("clear.png")).toEqual([255, 255, 255]);
    const [r = 0, g = 0, b = 0] = await colour("deep.png");
    expect(Math.abs(r - 0xc8) + Math.abs(g - 0x64) + Math.abs(b - 0x32)).toBeLessThan(12);
  });

  test("of a large phone camera, 108 megapixels, is taken", async () => {
    const { pictures, diagnostics } = await prepare(
      workshop({ "x.png": blackPng(12_000, 9_000) }),
      ["x.png"],
      { recipe: { ...usualRecipe, widths: [480] } },
    );
    expect(diagnostics).toEqual([]);
    expect(pictures.get("x.png")).toMatchObject({ width: 480, height: 360 });
  });
});

describe("what is no photograph is named and the others go on", () => {
  const svg = '<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>';

  test("in one run, at each photo's own place", async () => {
    const good = await plainJpeg(1);
    const folder = workshop({
      "drawing.jpg": svg,
      "empty.jpg": "",
      "good.jpg": good,
      "short.jpg": (await noise(200, 200).jpeg().toBuffer()).subarray(0, 3000),
      "note.jpg": "picture of the rib, to follow",
    });
    const files = ["short.jpg", "good.jpg", "empty.jpg", "drawing.jpg", "note.jpg", "gone.jpg"];
    const { pictures, diagnostics, encoded, reused } = await prepare(folder, files);
    expect([...pictures.keys()]).toEqual(["good.jpg"]);
    expect([encoded, reused]).toEqual([1, 0]);
    expect(diagnostics.map(({ span, message }) => `${span.line}: ${message}`)).toEqual([
      "1: photo `short.jpg` is cut short: a JPEG picture that ends before it is complete",
      "3: photo `empty.jpg` is empty: 0 bytes",
      "4: photo `drawing.jpg` is not a photograph that can be published: its content is an SVG drawing",
      "5: photo `note.jpg` is not a photograph that can be published: its content is text",
      "6: photo `gone.jpg` is not in the `photos` folder",
    ]);
    for (const { code, severity, help } of diagnostics) {
      expect([code, severity]).toEqual(["unreadable-photo", "finding"]);
      expect(help.length).toBeGreaterThan(0);
    }
  });

  test.each(["jpeg", "png", "webp", "avif", "gif", "tiff"] as const)(
    "a %s that is cut in the middle",
    async (format) => {
      const whole = await noise(120, 90).toFormat(format).toBuffer();
      const found = await finding(whole.subarray(0, whole.length / 2));
      expect(found?.message).toMatch(/is (cut short|damaged): /);
      expect(found?.message).toMatch(
        new RegExp(`\\b${format === "webp" ? "WebP" : format}\\b`, "i"),
      );
    },
  );

  test("a PDF, a video, a raw photograph and an archive under a picture's name", async () => {
    const messages: (string | undefined)[] = [];
    for (const bytes of [
      Buffer.from("%PDF-1.7\n"),
      brandedFile("qt  "),
      brandedFile("crx "),
      Buffer.from("PK\x03\x04"),
      Buffer.from([0, 1, 2, 3, 255]),
    ]) {
      messages.push((await finding(bytes))?.label);
    }
    expect(messages).toEqual([
      "a PDF document",
      "a video",
      "a raw photograph",
      "a compressed archive",
      "no kind of picture that is known here",
    ]);
  });

  test("256 megapixels in a few kilobytes", async () => {
    const bytes = blackPng(16_000, 16_000);
    expect(bytes.length).toBeLessThan(100_000);
    expect((await finding(bytes))?.message).toBe(
      "photo `x.jpg` is 16000 × 16000 pixels, above the limit of 220 megapixels",
    );
  });

  test("the limit on pixels takes just as many and not one more", async () => {
    const limits = { ...usualLimits, pixels: 1200 };
    const inside = await prepare(workshop({ "x.png": blackPng(40, 30) }), ["x.png"], { limits });
    expect(inside.diagnostics).toEqual([]);
    expect((await finding(blackPng(1201, 1), "x.png", { limits }))?.message).toContain("1201 × 1");
  });

  test("a file above the limit in bytes", async () => {
    const limits = { ...usualLimits, fileBytes: 1_000_000 };
    const found = await finding(Buffer.alloc(1_000_001), "x.jpg", { limits });
    expect(found?.message).toBe("photo `x.jpg` is 1.1 MB, above the 1 MB that is read");
  });

  test("HEIC without a decoder, by its content, with the setting that gives JPEG", async () => {
    for (const name of ["x.heic", "X.HEIC", "x.jpg"]) {
      const found = await finding(brandedFile("mif1", "mif1", "heic"), name, {
        decodeHeic: "none",
      });
      expect(found?.message).toBe(
        `photo \`${name}\` is a HEIC picture, which cannot be decoded here`,
      );
      expect(found?.help.join("\n")).toContain("`most compatible`");
    }
  });

  test("HEIC that the decoder does not understand", async () => {
    const found = await finding(brandedFile("heic"), "x.heic", {
      decodeHeic: async () => {
        throw new Error("no such item");
      },
    });
    expect(found?.message).toBe(
      "photo `x.heic` is damaged: it begins as a HEIC picture but cannot be read to its end",
    );
    expect(found?.notes).toEqual(["the decoder says: no such item"]);
  });
});

test("HEIC goes through the decoder when there is one", async () => {
  const jpeg = await (await corners()).jpeg().toBuffer();
  const { pictures } = await prepare(workshop({ "x.heic": brandedFile("heic") }), ["x.heic"], {
    decodeHeic: async () => jpeg,
  });
  expect(pictures.get("x.heic")).toMatchObject({ width: 60, height: 40 });
});

describe("the journal is not left", () => {
  test.each([
    ["../secret.jpg", "does not stay below the `photos` folder"],
    ["a/../../secret.jpg", "does not stay below the `photos` folder"],
    ["/etc/hostname", "does not stay below the `photos` folder"],
    ["C:/secret.jpg", "does not stay below the `photos` folder"],
    ["..\\secret.jpg", "does not stay below the `photos` folder"],
    ["a\0.jpg", "does not stay below the `photos` folder"],
    ["", "does not stay below the `photos` folder"],
    ["%2e%2e/secret.jpg", "is not in the `photos` folder"],
    ["inner", "is not a file"],
    ["out.jpg", "is a link that leads out of the journal"],
    ["out-folder/secret.jpg", "is a link that leads out of the journal"],
    ["dangling.jpg", "is a link that leads nowhere"],
    ["loop.jpg", "is a link that leads nowhere"],
    ["inner/x.jpg/y.jpg", "is not in the `photos` folder"],
    [`${"long".repeat(100)}.jpg`, "cannot be read from the disk"],
  ])("%j %s", async (file, why) => {
    const picture = await plainJpeg(1);
    const folder = workshop({ "inner/x.jpg": picture });
    const photos = join(folder, "journal/photos");
    addFiles(folder, { "secret.jpg": picture, "journal/secret.jpg": picture });
    symlinkSync(join(folder, "secret.jpg"), join(photos, "out.jpg"));
    symlinkSync(folder, join(photos, "out-folder"));
    symlinkSync(join(folder, "nothing"), join(photos, "dangling.jpg"));
    symlinkSync("loop.jpg", join(photos, "loop.jpg"));
    const { pictures, diagnostics, site } = await prepare(folder, [file]);
    expect(pictures.size).toBe(0);
    expect(diagnostics[0]?.message).toBe(`photo \`${file}\` ${why}`);
    expect(filesIn(site)).toEqual([]);
  });

  test("a link inside it is followed, also when the journal itself stands behind one", async () => {
    const folder = workshop({ "inner/x.jpg": await plainJpeg(1) });
    symlinkSync("inner/x.jpg", join(folder, "journal/photos/near.jpg"));
    symlinkSync(join(folder, "journal"), join(folder, "shortcut"));
    const { diagnostics } = await prepare(folder, ["near.jpg"], {
      photosFolder: join(folder, "shortcut/photos"),
    });
    expect(diagnostics).toEqual([]);
  });

  test("a `photos` folder that is a link out of it", async () => {
    const folder = workshop();
    addFiles(folder, { "elsewhere/x.jpg": await plainJpeg(1) });
    rmSync(join(folder, "journal/photos"), { recursive: true });
    symlinkSync(join(folder, "elsewhere"), join(folder, "journal/photos"));
    const { diagnostics } = await prepare(folder, ["x.jpg"]);
    expect(diagnostics[0]?.message).toContain("leads out of the journal");
  });

  test("a name that differs in capitals or accents is pointed out", async () => {
    const folder = workshop({ "2026/Flügel.JPG": await plainJpeg(1) });
    const { diagnostics } = await prepare(folder, ["2026/flu\u0308gel.jpg"]);
    expect(diagnostics[0]?.help).toEqual([
      "a file of nearly the same name is there: `2026/Flügel.JPG`",
    ]);
  });

  test("only what is named is published, never an original", async () => {
    const named = await plainJpeg(1);
    const folder = workshop({ "named.jpg": named, "draft.jpg": await plainJpeg(2) });
    const { site, pictures } = await prepare(folder, ["named.jpg", "named.jpg"]);
    const picture = pictures.get("named.jpg");
    const urls = [...(picture?.avif ?? []), ...(picture?.jpeg ?? [])].map(({ url }) => url).sort();
    expect(filesIn(site)).toEqual(urls);
    for (const url of urls) expect(readFileSync(join(site, url)).equals(named)).toBe(false);
  });
});

describe("the cache", () => {
  test("spares a second run everything", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1), "b.jpg": await plainJpeg(2) });
    const first = await prepare(folder, ["a.jpg", "b.jpg"]);
    expect([first.encoded, first.reused]).toEqual([2, 0]);
    const second = await prepare(folder, ["a.jpg", "b.jpg"]);
    expect([second.encoded, second.reused]).toEqual([0, 2]);
    expect(second.pictures).toEqual(first.pictures);
    for (const file of filesIn(first.site)) {
      const [one, two] = [first.site, second.site].map((site) => readFileSync(join(site, file)));
      expect(one?.equals(two ?? Buffer.alloc(0))).toBe(true);
    }
  });

  test("asks the same of a renamed file, and of a second one with the same bytes", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1) });
    const first = await prepare(folder, ["a.jpg"]);
    renameSync(join(folder, "journal/photos/a.jpg"), join(folder, "journal/photos/b.jpg"));
    copyFileSync(join(folder, "journal/photos/b.jpg"), join(folder, "journal/photos/c.jpg"));
    const second = await prepare(folder, ["b.jpg", "c.jpg"]);
    expect([second.encoded, second.reused]).toEqual([0, 2]);
    expect(second.pictures.get("c.jpg")).toEqual(first.pictures.get("a.jpg"));
  });

  test("notices other bytes under the same name, of the same size and with the same date", async () => {
    const folder = workshop();
    const file = join(folder, "journal/photos/a.jpg");
    const old = new Date("2026-01-02T03:04:05Z");
    const size = 2_000;
    const padded = async (number: number): Promise<Buffer> => {
      const jpeg = await plainJpeg(number);
      return Buffer.concat([jpeg, Buffer.alloc(size - jpeg.length)]);
    };
    writeFileSync(file, await padded(1));
    utimesSync(file, old, old);
    // Only a file that has been left alone for a while is remembered: let it be ten seconds.
    const now = Date.now.bind(Date);
    vi.spyOn(Date, "now").mockImplementation(() => now() + 10_000);
    const first = await prepare(folder, ["a.jpg"]);
    writeFileSync(file, await padded(2));
    utimesSync(file, old, old);
    const second = await prepare(folder, ["a.jpg"]);
    expect(second.encoded).toBe(1);
    expect(second.pictures).not.toEqual(first.pictures);

    // Remembered: the third run does not read the original at all.
    const { default: fs } = await import("node:fs/promises");
    const reading = vi.spyOn(fs, "readFile");
    const fourth = await prepare(folder, ["a.jpg"]);
    expect(fourth.pictures).toEqual(second.pictures);
    expect(reading.mock.calls.filter(([path]) => String(path).endsWith("a.jpg"))).toEqual([]);
  });

  test("is made anew for another recipe", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1) });
    const first = await prepare(folder, ["a.jpg"]);
    const other = { ...usualRecipe, jpeg: { quality: 20 } };
    const second = await prepare(folder, ["a.jpg"], { recipe: other });
    expect(second.encoded).toBe(1);
    expect(second.pictures).not.toEqual(first.pictures);
  });

  test("makes anew what is missing, cut or unreadable in it", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1) });
    const cache = join(folder, "cache");
    const first = await prepare(folder, ["a.jpg"]);
    const damages = [
      (file: string) => rmSync(join(cache, file)),
      (file: string) => writeFileSync(join(cache, file), "x"),
    ];
    for (const damage of damages) {
      for (const file of filesIn(cache)) {
        damage(file);
        const again = await prepare(folder, ["a.jpg"]);
        expect(again.encoded).toBe(file === "originals.json" ? 0 : 1);
        expect(again.pictures).toEqual(first.pictures);
      }
    }
  });

  test("keeps what was done before an abort", async () => {
    const names = Array.from({ length: 8 }, (_, i) => `${i}.jpg`);
    const folder = workshop(
      Object.fromEntries(await Promise.all(names.map(async (n, i) => [n, await plainJpeg(i)]))),
    );
    const stop = new AbortController();
    const reason = new Error("Ctrl-C");
    const aborted = prepare(folder, names, {
      signal: stop.signal,
      progress: (done) => {
        if (done === 4) stop.abort(reason);
      },
    });
    await expect(aborted).rejects.toBe(reason);
    const resumed = await prepare(folder, names);
    expect(resumed.diagnostics).toEqual([]);
    expect(resumed.pictures.size).toBe(8);
    expect(resumed.reused).toBeGreaterThanOrEqual(4);
    expect(resumed.encoded).toBeGreaterThan(0);
  });

  test("survives a kill in the middle of the work", async () => {
    const names = Array.from({ length: 30 }, (_, i) => `${i}.jpg`);
    const folder = workshop(
      Object.fromEntries(
        await Promise.all(names.map(async (n, i) => [n, await plainJpeg(i, 500, 400)])),
      ),
    );
    const script = `
      const { preparePictures } = await import(${JSON.stringify(new URL("../../../src/write/photos/prepare-pictures.ts", import.meta.url).href)});
      const [folder, photos] = process.argv.slice(1);
      await preparePictures({
        photos: JSON.parse(photos),
        photosFolder: folder + "/journal/photos",
        cacheFolder: folder + "/cache",
        outputFolder: folder + "/killed",
        progress: (done) => process.stdout.write(done + "\\n"),
      });`;
    const child = spawn(
      process.execPath,
      [
        "--import",
        "tsx",
        "--input-type=module",
        "-e",
        script,
        folder,
        JSON.stringify(names.map((n) => photo(n))),
      ],
      { stdio: ["ignore", "pipe", "inherit"] },
    );
    const ended = new Promise<NodeJS.Signals | null>((resolve) => {
      child.once("exit", (_, signal) => resolve(signal));
    });
    await new Promise((resolve) => child.stdout.once("data", resolve));
    child.kill("SIGKILL");
    expect(await ended).toBe("SIGKILL");
    const resumed = await prepare(folder, names);
    expect(resumed.diagnostics).toEqual([]);
    expect(resumed.pictures.size).toBe(30);
    expect(resumed.reused).toBeGreaterThan(0);
    expect(resumed.encoded).toBeGreaterThan(0);
    for (const file of filesIn(resumed.site)) {
      await sharp(readFileSync(join(resumed.site, file)))
        .raw()
        .toBuffer();
    }
  });

  test("forgets what is not used only when it is told to", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1), "b.jpg": await plainJpeg(2) });
    await prepare(folder, ["a.jpg", "b.jpg"]);
    await prepare(folder, ["a.jpg"]);
    expect((await prepare(folder, ["a.jpg", "b.jpg"])).encoded).toBe(0);
    await prepare(folder, ["a.jpg"], { prune: true });
    expect((await prepare(folder, ["a.jpg", "b.jpg"])).encoded).toBe(1);
  });

  test("clears away what killed runs left, once it is old", async () => {
    const folder = workshop({ "a.jpg": await plainJpeg(1) });
    addFiles(folder, { "cache/ab/.1-2.witness-tmp": "half", "cache/ab/.3-4.witness-tmp": "half" });
    const longAgo = new Date(Date.now() - 2 * 3_600_000);
    utimesSync(join(folder, "cache/ab/.1-2.witness-tmp"), longAgo, longAgo);
    await prepare(folder, ["a.jpg"]);
    const left = filesIn(join(folder, "cache")).filter((file) => file.endsWith(".witness-tmp"));
    expect(left).toEqual(["ab/.3-4.witness-tmp"]);
  });
});

test("a full disk is a problem of the machine, not of the photo", async () => {
  const folder = workshop({ "a.jpg": await plainJpeg(1) });
  mkdirSync(join(folder, "cache"));
  failOnce("open", "ENOSPC");
  await expect(prepare(folder, ["a.jpg"])).rejects.toMatchObject({ kind: "disk full" });
  expect((await prepare(folder, ["a.jpg"])).pictures.size).toBe(1);
});

test("progress counts each file once, to the end", async () => {
  const folder = workshop({ "a.jpg": await plainJpeg(1), "b.jpg": "" });
  const seen: string[] = [];
  await prepare(folder, ["a.jpg", "b.jpg", "a.jpg"], {
    progress: (done, total, label) => seen.push(`${done}/${total} ${label}`),
  });
  expect(seen).toHaveLength(2);
  expect(seen.map((line) => line.split(" ")[0])).toEqual(["1/2", "2/2"]);
  expect(seen.map((line) => line.split(" ")[1]).sort()).toEqual(["a.jpg", "b.jpg"]);
});

test("a published file that another program changed in place is made anew", async () => {
  const folder = workshop({ "a.jpg": await plainJpeg(1) });
  const { site } = await prepare(folder, ["a.jpg"]);
  const [file = ""] = filesIn(site);
  chmodSync(join(site, file), 0o644);
  writeFileSync(join(site, file), "changed in place by another program");
  expect((await prepare(folder, ["a.jpg"])).encoded).toBe(1);
});
