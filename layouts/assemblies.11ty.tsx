import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Tree } from "./parts/tree.tsx";

export const { data, render } = template("assemblies", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="legend">
      Each assembly with everything below it. Hatching: empty is not begun, lines begun, crossed
      part closed, solid closed.
    </p>
    <section aria-labelledby="tree">
      <h2 id="tree" class="unseen">
        Drawing tree
      </h2>
      <Tree of={page.tree} sum />
    </section>
  </Sheet>
));
