import sharp from "sharp";
import { lightAt } from "./lighting.ts";
import { type Entry, ListFault, unknownScene } from "./list.ts";
import { exif, locationXmp } from "./metadata.ts";
import { Random } from "./random.ts";
import { develop, type Print } from "./render/develop.ts";
import { type Effort, render } from "./render/render.ts";
import type { Setting } from "./scene.ts";
import { sceneNamed } from "./scenes/index.ts";
import { lightFrom, sideFrom, viewFrom } from "./view.ts";

/** The longer side of a finished picture, in pixels: the widest that the site shows in a page. */
const longSide = 1200;
/** Pictures are committed, so none may be larger than this, in bytes. */
const mostBytes = 66_000;

const efforts: readonly (readonly [upTo: number, effort: Effort])[] = [
  [200, { samples: 1, sky: 8, points: 2, shadow: 192 }],
  [500, { samples: 2, sky: 16, points: 5, shadow: 512 }],
  [1000, { samples: 2, sky: 32, points: 14, shadow: 896 }],
  // Twice the rays look hardly better at this size and take twice as long over 185 pictures.
  [Number.POSITIVE_INFINITY, { samples: 2, sky: 24, points: 12, shadow: 1024 }],
];

/** Draws a picture as it would be seen, upright, without its camera data. */
export async function print(entry: Entry, side = longSide): Promise<Print> {
  const scene = sceneNamed(entry.scene);
  if (!scene) throw new ListFault(`${entry.file}: ${unknownScene(entry.scene)}`);
  const strange = Object.keys(entry.detail).filter((key) => !(key in scene.defaults));
  if (strange.length > 0) {
    const known = Object.keys(scene.defaults).join(", ") || "none";
    throw new ListFault(
      `${entry.file}: scene ${entry.scene} has no detail \`${strange[0]}\` (it has ${known})`,
    );
  }
  const random = new Random(entry.file);
  const month = Number(entry.taken.slice(5, 7));
  const hour = Number(entry.taken.slice(11, 13)) + Number(entry.taken.slice(14, 16)) / 60;
  const chance = random.branch("hour");
  const side0 = chance.pick([-1, 1]) * chance.between(42, 84);
  const setting: Setting = {
    random,
    detail: { ...scene.defaults, ...entry.detail },
    light: lightFrom(entry.view) ?? lightAt(month, hour, chance),
    lightFrom: sideFrom(entry.view) ?? side0,
    view: viewFrom(entry.view),
    words: `${entry.file.replace(/^.*\//, "")} ${entry.view}`.toLowerCase(),
    tall: entry.orientation >= 5,
    month,
    hour,
  };
  const { stage, camera, light, extent } = await scene.compose(setting);
  const short = Math.round((side * 3) / 4);
  const size = setting.tall ? { width: short, height: side } : { width: side, height: short };
  const effort = efforts.find(([upTo]) => side <= upTo)?.[1] ?? {
    samples: 1,
    sky: 8,
    points: 3,
    shadow: 256,
  };
  const frame = render(stage, camera, light, extent, size, effort);
  return develop(frame, camera, light, entry.file);
}

/**
 * Draws a picture as the camera would have stored it: turned as it was held,
 * with its camera data.
 *
 * @param zone The shop's zone, for the offset beside the time.
 */
export async function picture(entry: Entry, zone: string, side = longSide): Promise<Buffer> {
  const stored = turned(await print(entry, side), entry.orientation);
  const raw = { width: stored.width, height: stored.height, channels: 3 } as const;
  let best: Buffer | undefined;
  for (const quality of [76, 68, 60, 52, 44, 36]) {
    let image = sharp(stored.pixels, { raw })
      .withMetadata({ orientation: entry.orientation })
      .withExifMerge(exif(entry, zone));
    const xmp = locationXmp(entry);
    if (xmp) image = image.withXmp(xmp);
    best = await image.jpeg({ quality, mozjpeg: true, chromaSubsampling: "4:2:0" }).toBuffer();
    if (best.length <= mostBytes) break;
  }
  return best ?? Buffer.alloc(0);
}

/** The pixels as a camera held that way stores them: turning them by the tag's rule shows them upright. */
export function turned({ width, height, pixels }: Print, orientation: number): Print {
  const swapped = orientation >= 5;
  const [w, h] = swapped ? [height, width] : [width, height];
  const out = new Uint8Array(pixels.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [fx, fy] = [width - 1 - x, height - 1 - y];
      // EXIF 2.32, 4.6.4: where row 0 and column 0 of what is stored lie in the scene.
      const [sx, sy] = (
        {
          1: [x, y],
          2: [fx, y],
          3: [fx, fy],
          4: [x, fy],
          5: [y, x],
          6: [y, fx],
          7: [fy, fx],
          8: [fy, x],
        } as Record<number, [number, number]>
      )[orientation] ?? [x, y];
      const from = (y * width + x) * 3;
      const to = (sy * w + sx) * 3;
      out[to] = pixels[from] ?? 0;
      out[to + 1] = pixels[from + 1] ?? 0;
      out[to + 2] = pixels[from + 2] ?? 0;
    }
  }
  return { width: w, height: h, pixels: out };
}
