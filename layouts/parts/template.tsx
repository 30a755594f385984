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
      `<!DOCTYPE html>\n${written(renderToString(layout({ page: sheet, shell: site.shell })))}\n`,
  };
}

const voidTag = /<(br|img|input|link|meta|source)((?: [^\s=>]+(?:="[^"]*")?)*)\/>/g;
const emptyShape = /><\/(?:circle|line|path|polyline|rect|use)>/g;
const setMark = /( data-[a-z-]+)="true"/g;

// The same document as HTML writes it, a tenth shorter. Rendered text has no bare `<`, so that
// what looks like a tag is one. Without white space between cells, the search index and a copied
// table run them together.
function written(html: string): string {
  return html
    .replace(voidTag, "<$1$2>")
    .replace(emptyShape, "/>")
    .replace(setMark, "$1")
    .replace(/<\/(td|th|dt|dd|tr|li|p|small|h[1-4])></g, "</$1> <");
}
