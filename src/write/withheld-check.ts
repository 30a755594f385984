import path from "node:path";
import { filesBelow, readBytesIfThere } from "./output.ts";
import type { OutputProblem } from "./output-checks.ts";

const readable = /\.(?:html|xml|json|svg|txt|css|js)$/;

/**
 * Looks for what an edition leaves out in every text of a site: a last look, because whatever
 * makes a page is given the edition and nothing else. The index of the search is made from the
 * pages afterwards.
 *
 * @param texts As from `withheldTexts`. Nothing is read when there are none.
 * @param except Folders that are still being written, or hold the program's own words alone.
 * @returns One problem for each file; the words themselves are not repeated.
 * @throws MachineProblem when a file cannot be read.
 */
export async function checkWithheld(
  folder: string,
  texts: readonly string[],
  except: readonly string[],
): Promise<OutputProblem[]> {
  if (texts.length === 0) return [];
  const problems: OutputProblem[] = [];
  for (const { path: file } of await filesBelow(folder)) {
    if (!readable.test(file) || except.some((name) => file.startsWith(`${name}/`))) continue;
    const said = (await readBytesIfThere(path.join(folder, file)))?.toString("utf8") ?? "";
    if (texts.some((text) => said.includes(text))) {
      problems.push({
        code: "private-words",
        file,
        message: "holds words that the journal keeps private",
      });
    }
  }
  return problems;
}
