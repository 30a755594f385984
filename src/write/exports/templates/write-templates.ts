import path from "node:path";
import { templateFile, templatePapers } from "../../../present/pages/template-files.ts";
import type { Template } from "../../../present/templates/template.ts";
import { writeUnflushed } from "../../output.ts";
import { templatePdf } from "./template-pdf.ts";

/**
 * Writes the templates of a site, each on every paper, where its pages link to them.
 * @returns The names written.
 * @throws MachineProblem when the site cannot be written; whatever `signal` was aborted with.
 */
export async function writeTemplates(
  folder: string,
  templates: readonly Template[],
  signal?: AbortSignal,
): Promise<string[]> {
  const written: string[] = [];
  for (const template of templates) {
    for (const paper of templatePapers) {
      signal?.throwIfAborted();
      const name = templateFile(template.layout, paper);
      await writeUnflushed(path.join(folder, name), await templatePdf(template, paper));
      written.push(name);
    }
  }
  return written;
}
