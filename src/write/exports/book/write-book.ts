import { createHash } from "node:crypto";
import { photosOf } from "../../../model/build.ts";
import type { Diagnostic } from "../../../model/diagnostic.ts";
import type { RecordIndex } from "../../../present/pages/record-index.ts";
import { writeFileInBits } from "../../output.ts";
import { printPictures } from "../../photos/print-pictures.ts";
import { tidyMemory } from "../../tidy-memory.ts";
import type { BookImprint } from "./book-context.ts";
import { printBook } from "./book-pdf.ts";

/** Where photographs are taken from, and how a long work is followed. */
export interface BookFolders {
  /** The journal's `photos` folder. */
  readonly photosFolder: string;
  /** Where encoded pictures are kept between runs; outside journal and output. */
  readonly cacheFolder: string;
  /** Called with what is being done: `photograph 12 of 300`, `page 12 of 300`. */
  readonly progress?: (text: string) => void;
  readonly signal?: AbortSignal;
}

/** A book that was written. */
export interface WrittenBook {
  readonly bytes: number;
  /** 64 hexadecimal digits. */
  readonly sha256: string;
  readonly pages: number;
  /** One finding for each photograph that could not be read, by place. */
  readonly diagnostics: readonly Diagnostic[];
}

/** After so many photographs memory is tidied. */
const photosBetween = 200;

/**
 * Writes the book of the build, page by page: the path holds the old file until the new one is
 * whole.
 * @throws MachineProblem when cache or file cannot be written; whatever `signal` was aborted
 *   with. The old file stays in both cases.
 */
export async function writeBook(
  file: string,
  record: RecordIndex,
  imprint: BookImprint,
  { photosFolder, cacheFolder, progress, signal }: BookFolders,
): Promise<WrittenBook> {
  const stop = signal ? { signal } : {};
  // What was read and written before leaves hundreds of megabytes that are no longer in use.
  tidyMemory();
  const { pictures, diagnostics } = await printPictures({
    photos: imprint.sections.includes("log") ? photosOf(record.analysis.build) : [],
    photosFolder,
    cacheFolder,
    progress: (done, total) => {
      if (done % photosBetween === 0) tidyMemory();
      progress?.(`photograph ${done} of ${total}`);
    },
    ...stop,
  });
  const digest = createHash("sha256");
  let bytes = 0;
  let pages = 0;
  await writeFileInBits(file, async (put) => {
    pages = await printBook(record, {
      imprint,
      pictures,
      put: async (bit) => {
        digest.update(bit);
        bytes += bit.length;
        await put(bit);
      },
      ...(progress ? { progress } : {}),
      ...stop,
    });
  });
  return { bytes, sha256: digest.digest("hex"), pages, diagnostics };
}
