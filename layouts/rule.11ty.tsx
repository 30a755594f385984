import { Comparisons } from "./parts/comparisons.tsx";
import { OutcomeTables } from "./parts/outcomes.tsx";
import { RuleStanding } from "./parts/rule-standing.tsx";
import { RunChart } from "./parts/run-chart.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("rule", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">
      {page.filled !== undefined && `${page.filled}; `}
      {page.source}.
    </p>
    <p>{page.decision}</p>
    {page.set && (
      <p>
        From the rule set <Words of={page.set} />.
      </p>
    )}
    <RuleStanding of={page.standing} />
    {page.advice.length > 0 && (
      <ul class="advice lines">
        {page.advice.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    )}
    {page.chart && <RunChart of={page.chart} />}
    {page.comparisons.length > 0 && (
      <Section
        id="left-against-right"
        title="Left against right"
        figure={`${page.comparisons.length}`}
      >
        <Comparisons of={page.comparisons} />
      </Section>
    )}
    {page.groups.length === 0 ? (
      <p class="empty">Nothing has been measured against this rule yet.</p>
    ) : (
      <Section id="readings" title="Readings" figure={page.row.readings.text}>
        <OutcomeTables of={page.groups} limitsToo={page.filled === undefined} />
      </Section>
    )}
  </Sheet>
));
