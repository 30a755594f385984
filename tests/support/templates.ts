import type { Edition } from "../../src/present/record/edition.ts";
import { type Template, templatesOf } from "../../src/present/templates/template.ts";
import { shownJournal } from "./shown-journal.ts";
import { entry, marchFile } from "./temporary-journal.ts";

/** A block called `layout`, as it stands in a day's prose. */
export function layoutBlock(yaml: string): string {
  return `\`\`\`layout\n${yaml.trim()}\n\`\`\`\n`;
}

/** The templates of a day with these blocks. */
export function templatesFrom(
  blocks: readonly string[],
  lines = "",
  edition: Edition = "public",
): readonly Template[] {
  const prose = `Marked out.\n\n${blocks.map(layoutBlock).join("\n")}`;
  return templatesOf(shownJournal({ [marchFile]: entry(lines, prose) }, edition));
}

/** The one template of a day with this block. */
export function templateFrom(block: string): Template {
  const [template] = templatesFrom([block]);
  if (!template) throw new Error("nothing to be printed");
  return template;
}
