import type { SealedFile } from "../model/seal.ts";
import { fileDigest } from "./digest.ts";
import { filesBelow, type JournalFolder } from "./files.ts";

/**
 * The digests of files of a journal, read now.
 * @param paths Below the journal's folder, in `days` or `photos`.
 * @param progress Called before each file.
 * @returns In the order given. Throws as `node:fs` does, also when a file has gone.
 */
export function sealedFiles(
  folder: JournalFolder,
  paths: readonly string[],
  progress: (done: number, total: number) => void = () => undefined,
): SealedFile[] {
  const found = new Map(
    ["days", "photos"]
      .flatMap((below) => filesBelow(folder, below))
      .map(({ path, absolute }) => [path, absolute]),
  );
  return paths.map((path, index) => {
    progress(index, paths.length);
    return { path, digest: fileDigest(found.get(path) ?? path) };
  });
}
