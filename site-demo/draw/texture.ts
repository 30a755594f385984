import sharp from "sharp";
import type { Image } from "./materials.ts";

/**
 * Draws an SVG body as a picture to print on a face.
 *
 * @param body SVG elements in a coordinate system of `width` by `height`. No
 *   text elements: what a font looks like depends on the machine.
 */
export async function drawn(
  body: string,
  { width, height, ground = "#ffffff" }: { width: number; height: number; ground?: string },
): Promise<Image> {
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">` +
    `<rect width="${width}" height="${height}" fill="${ground}"/>${body}</svg>`;
  const { data, info } = await sharp(Buffer.from(svg))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const linear = Float32Array.from({ length: 256 }, (_, i) => {
    const c = i / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  const out = new Float32Array(info.width * info.height * 3);
  for (let i = 0; i < out.length; i++) out[i] = linear[data[i] ?? 0] ?? 0;
  return { width: info.width, height: info.height, data: out };
}
