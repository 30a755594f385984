import { loadSharp } from "./load-sharp.ts";

const readSvg = { operation: ["VipsForeignLoadSvg"] };

/**
 * Turns a drawing of this program's own into a JPEG. SVG is otherwise refused, whatever a file
 * is called; it is read here alone, so no photograph may be decoded at the same time.
 *
 * @param svg Shapes only: fonts differ from machine to machine.
 */
export async function drawPicture(svg: string): Promise<Uint8Array> {
  const sharp = await loadSharp();
  sharp.unblock(readSvg);
  try {
    return await sharp(Buffer.from(svg))
      .flatten({ background: "#ffffff" })
      .jpeg({ quality: 84, chromaSubsampling: "4:4:4", mozjpeg: true })
      .toBuffer();
  } finally {
    sharp.block(readSvg);
  }
}
