import type { Html } from "../../src/present/markdown/render-prose.ts";

/** A day's prose. The one place where HTML is placed as it is: `renderProse` made it. */
export function Prose({ of }: { of: Html }) {
  return <div class="prose" dangerouslySetInnerHTML={{ __html: of.html }} />;
}
