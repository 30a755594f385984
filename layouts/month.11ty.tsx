import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Timeline } from "./parts/timeline.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("month", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.apart !== undefined && (
      <p class="legend">
        Study and shop,{" "}
        <a href="#days" data-figure="apart">
          {page.apart}
        </a>
        , are counted apart.
      </p>
    )}
    <p class="legend">
      Brought forward:{" "}
      <a href={page.brought.sum.href} data-brought>
        {page.brought.text}
      </a>
    </p>
    {page.report && (
      <p class="legend">
        To print and hand round: <Words of={page.report} />.
      </p>
    )}
    {page.seal && (
      <p class="legend">
        Sealed as <code>{page.seal.short}</code>: <Words of={page.seal.means} />.
      </p>
    )}
    <section aria-labelledby="days">
      <h2 id="days" class="unseen">
        Days
      </h2>
      <Timeline of={page.rows} sum />
    </section>
  </Sheet>
));
