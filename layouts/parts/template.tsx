import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Shell, Site, SitePages } from "../../src/present/pages/site.ts";

/** What Eleventy hands to a template: the finished site and the page whose turn it is. */
interface TemplateData<Kind extends keyof SitePages> {
  readonly site: Site;
  readonly sheet: SitePages[Kind][number];
}

/**
 * A template for one kind of page: Eleventy turns over the finished pages of that kind and
 * each is written where it says. The layout only places what is there.
 */
export function template<Kind extends keyof SitePages>(
  kind: Kind,
  layout: (of: { page: SitePages[Kind][number]; shell: Shell }) => VNode,
) {
  return {
    data: {
      layout: false,
      pagination: { data: `site.pages.${kind}`, size: 1, alias: "sheet" },
      permalink: ({ sheet: { url } }: TemplateData<Kind>) =>
        url === "" || url.endsWith("/") ? `${url}index.html` : url,
    },
    render: ({ sheet, site }: TemplateData<Kind>): string =>
      `<!DOCTYPE html>\n${spaced(renderToString(layout({ page: sheet, shell: site.shell })))}\n`,
  };
}

// Without white space between them, the search index and a copied table run cells together.
function spaced(html: string): string {
  return html.replace(/<\/(td|th|dt|dd|tr|li|p|small|h[1-4])></g, "</$1> <");
}
