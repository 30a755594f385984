import { Transform } from "node:stream";
import { fileURLToPath } from "node:url";
import type { Site } from "../../present/pages/site.ts";
import { squeezeCss } from "./squeeze-css.ts";

/** The few settings of Eleventy that are used; its package brings no types. */
export interface EleventyConfig {
  setUseGitIgnore(enabled: boolean): void;
  setTemplateFormats(formats: readonly string[]): void;
  addExtension(extension: string, options: { readonly key: string }): void;
  addGlobalData(name: string, data: () => unknown): void;
  addPassthroughCopy(
    paths: Readonly<Record<string, string>>,
    options: { readonly transform: (source: string) => Transform | null },
  ): void;
}

/** Where the layouts are: the only folder that Eleventy reads. */
export const layoutsFolder = fileURLToPath(new URL("../../../layouts", import.meta.url));

/** Hands finished pages to Eleventy. It adds nothing and sees nothing of the journal. */
export function configure(config: EleventyConfig, site: Site): void {
  // What git ignores has nothing to do with what is published.
  config.setUseGitIgnore(false);
  // No Markdown, no Liquid, no HTML files: `{{` in a day's prose is prose.
  config.setTemplateFormats(["11ty.tsx"]);
  config.addExtension("11ty.tsx", { key: "11ty.js" });
  // Frozen, so that Eleventy hands it on as it is instead of copying thousands of pages.
  config.addGlobalData("site", () => Object.freeze({ ...site, pages: Object.freeze(site.pages) }));
  config.addPassthroughCopy({ [`${layoutsFolder}/assets`]: "assets" }, { transform: squeezed });
}

// The sheets are written to be read; what is sent is a quarter smaller.
function squeezed(source: string): Transform | null {
  if (!source.endsWith(".css")) return null;
  const chunks: Buffer[] = [];
  return new Transform({
    transform(chunk: Buffer, _encoding, done) {
      chunks.push(chunk);
      done();
    },
    flush(done) {
      done(null, squeezeCss(Buffer.concat(chunks).toString("utf8")));
    },
  });
}
