import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pdfText } from "./pdf-text.ts";
import { filesIn } from "./scratch-folder.ts";

/** What has to be the same in whatever comes out. */
export interface Identity {
  readonly designation: string;
  readonly serial: string;
  readonly registration: string;
  readonly builder: string;
}

/**
 * Every way in which a file below a folder says another identity than this, or leaves it out,
 * as `file: what`; and the files that were looked into. Tables, schemas, lists, pages of the
 * site and the journal itself are passed over.
 */
export async function identityFaults(
  folder: string,
  identity: Identity,
): Promise<{ readonly faults: readonly string[]; readonly crawled: readonly string[] }> {
  const { designation, serial, registration, builder } = identity;
  const line = `${designation}, serial ${serial}, ${registration}`;
  const faults: string[] = [];
  const crawled: string[] = [];
  for (const name of filesIn(folder)) {
    if (/^(?:site|journal)\//.test(name) || name.endsWith(".schema.json")) continue;
    const file = join(folder, name);
    const lacking = (text: string, parts: readonly string[], where = name) => {
      const words = text.replaceAll(/\s+/g, " ");
      for (const part of parts) if (!words.includes(part)) faults.push(`${where}: no ${part}`);
    };
    if (name.endsWith(".pdf")) {
      const pages = await pdfText(readFileSync(file));
      pages.forEach((page, index) => {
        lacking(page, [line], `${name} page ${index + 1}`);
      });
      lacking(pages.join(" "), [builder]);
    } else if (name.endsWith(".txt")) {
      lacking(readFileSync(file, "utf8"), [line, builder]);
    } else if (name.endsWith(".json")) {
      const { project } = JSON.parse(readFileSync(file, "utf8")) as {
        readonly project: Readonly<Record<string, unknown>>;
      };
      for (const part of ["designation", "serial", "registration"] as const)
        if (project[part] !== identity[part]) faults.push(`${name}: ${part} ${project[part]}`);
      if (JSON.stringify(project.builders) !== JSON.stringify([builder]))
        faults.push(`${name}: builders ${JSON.stringify(project.builders)}`);
    } else continue;
    crawled.push(name);
  }
  return { faults, crawled };
}
