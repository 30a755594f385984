import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Timeline } from "./parts/timeline.tsx";
import { WordList } from "./parts/words.tsx";

export const { data, render } = template("story", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.summary}</p>
    <p class="summary">{page.sentence}</p>
    {page.rows.length > 0 && (
      <Section id="days" title="What was begun, and what was closed" figure={`${page.rows.length}`}>
        <p class="legend">
          The days on which an assembly was first worked on, or its last step was closed. The
          figures are the hours of that day.
        </p>
        <Timeline of={page.rows} />
      </Section>
    )}
    <p class="legend">
      From here: <WordList of={page.ways} />.
    </p>
  </Sheet>
));
