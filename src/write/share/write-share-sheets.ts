import { createHash } from "node:crypto";
import path from "node:path";
import type { ShareSheet } from "../../present/share/share-sheet.ts";
import { lettering } from "../lettering.ts";
import { kindOf, makeFolder, placeFile, writeFileWhole } from "../output.ts";
import { drawPicture } from "../photos/draw-picture.ts";
import { sheetDrawing } from "./sheet-drawing.ts";

/** To be raised when a sheet is drawn otherwise than before. */
const version = 1;

/**
 * Draws the share pictures of a site and puts them where its pages name them. One that was
 * drawn before is taken from the cache.
 * @returns How many had to be drawn.
 * @throws MachineProblem when site or cache cannot be written; whatever `signal` was aborted with.
 */
export async function writeShareSheets(
  folder: string,
  sheets: readonly ShareSheet[],
  { cacheFolder, signal }: { readonly cacheFolder: string; readonly signal?: AbortSignal },
): Promise<number> {
  let drawn = 0;
  for (const sheet of sheets) {
    signal?.throwIfAborted();
    const { url, alt: _alt, ...shown } = sheet;
    const key = createHash("sha256")
      .update(JSON.stringify([version, shown]))
      .digest("hex");
    const kept = path.join(cacheFolder, `${key.slice(0, 40)}.jpg`);
    if ((await kindOf(kept)) !== "file") {
      await writeFileWhole(kept, await drawPicture(sheetDrawing(sheet, await lettering())));
      drawn += 1;
    }
    await makeFolder(path.dirname(path.join(folder, url)));
    await placeFile(kept, path.join(folder, url));
  }
  return drawn;
}
