import { createHash } from "node:crypto";
import path from "node:path";
import {
  type TemplatePaper,
  templateFile,
  templatePapers,
} from "../../../present/pages/template-files.ts";
import type { Template } from "../../../present/templates/template.ts";
import { kindOf, makeFolder, placeFile, writeFileWhole } from "../../output.ts";
import { templatePdf } from "./template-pdf.ts";

/** To be raised when a template is drawn otherwise than before. */
const version = 1;

export interface WritingTemplates {
  /** Where files are kept from one build to the next, by what is in them. */
  readonly cacheFolder: string;
  readonly signal?: AbortSignal;
}

/**
 * Writes the templates of a site, each on every paper, where its pages link to them. One that
 * was made before is taken from the cache.
 * @returns The names written, and how many had to be made.
 * @throws MachineProblem when site or cache cannot be written; whatever `signal` was aborted with.
 */
export async function writeTemplates(
  folder: string,
  templates: readonly Template[],
  { cacheFolder, signal }: WritingTemplates,
): Promise<{ readonly written: readonly string[]; readonly made: number }> {
  const written: string[] = [];
  let made = 0;
  for (const template of templates) {
    for (const paper of templatePapers) {
      signal?.throwIfAborted();
      const kept = path.join(cacheFolder, `${keyOf(template, paper)}.pdf`);
      if ((await kindOf(kept)) !== "file") {
        await writeFileWhole(kept, await templatePdf(template, paper));
        made += 1;
      }
      const name = templateFile(template.layout, paper);
      await makeFolder(path.dirname(path.join(folder, name)));
      await placeFile(kept, path.join(folder, name));
      written.push(name);
    }
  }
  return { written, made };
}

// Where something was typed is not drawn, and a line put in above changes nothing.
function keyOf(template: Template, paper: TemplatePaper): string {
  const text = JSON.stringify([version, paper, template], (name, value: unknown) => {
    if (name === "span") return undefined;
    return typeof value === "bigint" ? `${value}` : value;
  });
  return createHash("sha256").update(text).digest("hex").slice(0, 40);
}
