import { Reading } from "./parts/reading.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("readings", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <Section id="rules" title="By rule" figure={`${page.rules.length}`}>
      <Table
        caption="Readings against each rule; a reading replaced by a later one is not counted as out"
        heads={[
          "Rule",
          "Limits",
          "Source",
          "#Readings",
          "#Within",
          "#Out",
          "#Accounted",
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
            <td class="n">{row.readings}</td>
            <td class="n">{row.within}</td>
            <td class={row.out > 0 ? "n red" : "n"}>{row.out}</td>
            <td class="n">{row.accountedFor}</td>
            <td class="n">{row.superseded}</td>
          </tr>
        ))}
      </Table>
    </Section>
    {page.unruled.length > 0 && (
      <Section id="unruled" title="Without a rule" figure={`${page.unruled.length}`}>
        {page.unruled.map((each) => (
          <Reading of={each} dated />
        ))}
      </Section>
    )}
  </Sheet>
));
