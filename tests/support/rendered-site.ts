import { readdirSync } from "node:fs";
import type { SiteInput } from "../../src/present/pages/record-index.ts";
import { type Site, sitePages } from "../../src/present/pages/site.ts";

interface Layout {
  readonly data: { readonly pagination: { readonly data: string } };
  readonly render: (of: { sheet: unknown; site: Site }) => string;
}

const folder = new URL("../../layouts/", import.meta.url);

/** The HTML of every page of a site, by its file, without Eleventy and without a disk. */
export async function renderedSite(input: SiteInput): Promise<Map<string, string>> {
  const site = sitePages(input);
  const html = new Map<string, string>();
  for (const name of readdirSync(folder).filter((each) => each.endsWith(".11ty.tsx"))) {
    const { data, render } = (await import(new URL(name, folder).href)) as Layout;
    const kind = data.pagination.data.replace("site.pages.", "") as keyof Site["pages"];
    for (const sheet of site.pages[kind]) {
      const { url } = sheet;
      html.set(url === "" || url.endsWith("/") ? `${url}index.html` : url, render({ sheet, site }));
    }
  }
  return html;
}
