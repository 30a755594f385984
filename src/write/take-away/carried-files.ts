import { createHash } from "node:crypto";
import path from "node:path";
import { csvRecords } from "../exports/csv-records.ts";
import { spreadsheetText } from "../exports/spreadsheet-text.ts";
import { eachPiece, filesBelow, writeFileWhole } from "../output.ts";

/** A file of a take-away. */
export interface CarriedFile {
  /** From the folder, with `/` between parts. */
  readonly path: string;
  readonly bytes: number;
  /** 64 hexadecimal digits. */
  readonly sha256: string;
}

/** Names of the two lists, at the root of the folder. */
export const carriedLists = { table: "files.csv", digests: "files.sha256" } as const;

/**
 * Every file below a folder with its size and the digest of its bytes, by path.
 * @param except Names directly in the folder that are left out.
 * @param progress Called before each file, counted from 1.
 * @throws MachineProblem; whatever `signal` was aborted with.
 */
export async function carriedFiles(
  folder: string,
  except: readonly string[],
  progress: (file: number, of: number) => void,
  signal?: AbortSignal,
): Promise<CarriedFile[]> {
  const found = (await filesBelow(folder)).filter((file) => !except.includes(file.path));
  const listed: CarriedFile[] = [];
  for (const [index, file] of found.entries()) {
    signal?.throwIfAborted();
    progress(index + 1, found.length);
    const digest = createHash("sha256");
    let bytes = 0;
    await eachPiece(path.join(folder, file.path), (piece) => {
      digest.update(piece);
      bytes += piece.byteLength;
    });
    listed.push({ path: file.path, bytes, sha256: digest.digest("hex") });
  }
  return listed;
}

/**
 * Writes the list twice: as a table with sizes, and as the lines that `sha256sum -c` reads.
 * @returns SHA-256 of the second list, which stands for all files.
 */
export async function writeCarriedLists(
  folder: string,
  files: readonly CarriedFile[],
): Promise<string> {
  const table = csvRecords([
    ["path", "bytes", "sha256"],
    ...files.map((file) => [spreadsheetText(file.path), file.bytes, spreadsheetText(file.sha256)]),
  ]);
  const lines = files.map((file) => `${file.sha256}  ${file.path}\n`).join("");
  await writeFileWhole(path.join(folder, carriedLists.table), table);
  await writeFileWhole(path.join(folder, carriedLists.digests), lines);
  return createHash("sha256").update(lines).digest("hex");
}
