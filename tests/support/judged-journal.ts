// Journals on disk: the shared registers in `journal/`, with a test's own files laid over them.

import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { analyze } from "../../src/compute/analyze.ts";
import { type Build, photosOf, videosOf } from "../../src/model/build.ts";
import type { CalendarDate } from "../../src/model/calendar.ts";
import { byPlace, type Diagnostic } from "../../src/model/diagnostic.ts";
import { Faults } from "../../src/read/faults.ts";
import { journalFolder, readText } from "../../src/read/files.ts";
import { readInbox } from "../../src/read/inbox-rows.ts";
import { readBuild } from "../../src/read/read-build.ts";
import { SourceFile } from "../../src/read/source-file.ts";
import { preparePictures } from "../../src/write/photos/prepare-pictures.ts";
import { publishVideos } from "../../src/write/videos/publish-videos.ts";

const shared = fileURLToPath(new URL("./journal", import.meta.url));

/** The day on which journals of the tests are judged. */
export const judgedOn: CalendarDate = "2026-06-30";

/** What a test's journal has beside, or in place of, the shared registers. */
export interface Overlay {
  /** A folder to be copied over them. */
  readonly folder?: string;
  /** Files to be written over them, by path below the journal's folder. */
  readonly files?: readonly { readonly file: string; readonly text: string }[];
  /** Files of the shared journal to be left out. */
  readonly without?: readonly string[];
}

/** Everything that reading, checks and pictures find in such a journal, in order of place. */
export async function foundInJournal({
  folder,
  files = [],
  without = [],
}: Overlay): Promise<Diagnostic[]> {
  const above = mkdtempSync(join(tmpdir(), "journal-"));
  try {
    const journal = join(above, "content");
    cpSync(shared, journal, { recursive: true });
    for (const name of without) rmSync(join(journal, name));
    if (folder !== undefined) cpSync(folder, journal, { recursive: true });
    for (const { file, text } of files) {
      mkdirSync(dirname(join(journal, file)), { recursive: true });
      writeFileSync(join(journal, file), text);
    }
    const opened = journalFolder(journal);
    if (!opened) throw new Error("the journal was just written");
    const { build, zone, diagnostics } = readBuild(opened);
    if (!build || !zone) return [...diagnostics];
    const judged = analyze(build, zone.asOf(judgedOn)).diagnostics;
    const inbox = inboxFaults(journal, build);
    const photos = photosOf(build);
    const pictures =
      photos.length === 0 || diagnostics.length > 0
        ? []
        : (
            await preparePictures({
              photos,
              photosFolder: join(journal, "photos"),
              cacheFolder: join(above, "cache"),
              outputFolder: join(above, "site"),
            })
          ).diagnostics;
    const { diagnostics: recordings } = await publishVideos({
      videos: diagnostics.length > 0 ? [] : videosOf(build),
      videosFolder: join(journal, "videos"),
      outputFolder: join(above, "site"),
    });
    return [...diagnostics, ...judged, ...inbox, ...pictures, ...recordings].sort(byPlace);
  } finally {
    rmSync(above, { recursive: true });
  }
}

// What is wrong with an older log that lies in `inbox`, when there is one.
function inboxFaults(journal: string, build: Build): readonly Diagnostic[] {
  const faults = new Faults();
  const [table, mapping] = ["hours.csv", "mapping.yaml"].map((name) => {
    const file = join(journal, "inbox", name);
    return existsSync(file) ? new SourceFile(`content/inbox/${name}`, readText(file)) : undefined;
  });
  if (table && mapping) readInbox({ table, mapping }, build, faults);
  return faults.found;
}
