import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Timeline } from "./parts/timeline.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("month", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.apart !== undefined && (
      <p class="legend">Study and shop, {page.apart}, are counted apart.</p>
    )}
    {page.seal && (
      <p class="legend">
        Sealed as <code>{page.seal.short}</code>: <Words of={page.seal.means} />.
      </p>
    )}
    <h2 class="unseen">Days</h2>
    <Timeline of={page.rows} />
  </Sheet>
));
