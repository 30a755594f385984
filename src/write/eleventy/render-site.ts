import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import Eleventy from "@11ty/eleventy";
import { register } from "tsx/esm/api";
import type { Site } from "../../present/pages/site.ts";
import { configure, type EleventyConfig, layoutsFolder } from "./config.ts";

let canRunLayouts = false;

/**
 * Writes every page of a site, and the layouts' assets, into a folder. Prints nothing.
 *
 * @param outputFolder Made when missing; what is in it stays unless a page has the same name.
 * @throws Error if a layout cannot be run or a file cannot be written.
 */
export async function renderSite(site: Site, outputFolder: string): Promise<void> {
  allowLayouts();
  const eleventy = new Eleventy(layoutsFolder, resolve(outputFolder), {
    quietMode: true,
    configPath: "",
    loader: "esm",
    config: (config: EleventyConfig) => configure(config, site),
  });
  await eleventy.init();
  eleventy.disableLogger();
  await eleventy.write();
}

// Eleventy imports the layouts by itself, and Node alone cannot read TSX.
function allowLayouts(): void {
  if (canRunLayouts) return;
  register({ tsconfig: fileURLToPath(new URL("../../../tsconfig.json", import.meta.url)) });
  canRunLayouts = true;
}
