import { createHash } from "node:crypto";
import path from "node:path";
import { type MonthReport, reportUrl } from "../../../present/report/month-report.ts";
import { kindOf, makeFolder, placeFile, readBytesIfThere, writeFileWhole } from "../../output.ts";
import { reportPdf } from "./report-pdf.ts";

/** To be raised when a report is printed otherwise than before. */
const version = 1;

/**
 * Writes the report of each month beside the month's page. One that was printed before is taken
 * from the cache.
 * @param folder The site, with its photographs in it.
 * @returns How many had to be printed.
 * @throws MachineProblem when site or cache cannot be written; whatever `signal` was aborted with.
 */
export async function writeReports(
  folder: string,
  reports: readonly MonthReport[],
  { cacheFolder, signal }: { readonly cacheFolder: string; readonly signal?: AbortSignal },
): Promise<number> {
  let printed = 0;
  for (const report of reports) {
    signal?.throwIfAborted();
    const key = createHash("sha256")
      .update(JSON.stringify([version, report]))
      .digest("hex");
    const kept = path.join(cacheFolder, `${key.slice(0, 40)}.pdf`);
    if ((await kindOf(kept)) !== "file") {
      const bytes = await reportPdf(report, async (url) => {
        const picture = await readBytesIfThere(path.join(folder, url));
        if (picture) return picture;
        throw new Error(`a report shows \`${url}\`, which is not in the site`);
      });
      await writeFileWhole(kept, bytes);
      printed += 1;
    }
    const target = path.join(folder, reportUrl(report.month));
    await makeFolder(path.dirname(target));
    await placeFile(kept, target);
  }
  return printed;
}
