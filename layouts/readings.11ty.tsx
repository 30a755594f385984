import { Comparisons } from "./parts/comparisons.tsx";
import { CountCells } from "./parts/outcomes.tsx";
import { Reading } from "./parts/reading.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("readings", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <Section id="rules" title="By rule" figure={`${page.rules.length}`}>
      <p class="legend">{page.legend}</p>
      <Table
        caption="Readings against each rule; each count leads to its readings"
        heads={[
          "Rule",
          "Limits",
          "Source",
          "#Readings",
          "#Within",
          "#Undecided",
          "#Out",
          "#Accounted for",
          "#Replaced",
        ]}
      >
        {page.rules.map((row) => (
          <tr>
            <th scope="row">
              <Words of={row.rule} />
            </th>
            <td>{row.limits}</td>
            <td>
              <small>{row.source}</small>
            </td>
            <td class="n">
              <Words of={row.readings} />
            </td>
            <CountCells of={row.counts} />
          </tr>
        ))}
      </Table>
    </Section>
    {page.comparisons.length > 0 && (
      <Section
        id="left-against-right"
        title="Left against right"
        figure={`${page.comparisons.length}`}
      >
        <Comparisons of={page.comparisons} />
      </Section>
    )}
    {page.unruled.length > 0 && (
      <Section id="unruled" title="Without a rule" figure={`${page.unruled.length}`}>
        {page.unruled.map((each) => (
          <Reading of={each} dated />
        ))}
      </Section>
    )}
  </Sheet>
));
