import { HoursChart } from "./parts/hours-chart.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("hours", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.sentence}</p>
    {page.chart && <HoursChart of={page.chart} />}
    {page.tables.map(({ id, title, says, heading, rows }) => (
      <Section id={id} title={title}>
        <Table
          class="hours"
          caption={says}
          heads={[heading, "#Building", "Share", "#Study and shop"]}
          foot={
            <tr>
              <th scope="row">sum</th>
              <td class="n">{page.total.build}</td>
              <td />
              <td class="n">{page.total.apart}</td>
            </tr>
          }
        >
          {rows.map((row) => (
            <tr>
              <th scope="row" class={`depth-${Math.min(row.depth, 3)}`}>
                <Words of={row.name} />
              </th>
              <td class="n">{row.build}</td>
              <td>
                <svg class="share" width={row.share} height="10" aria-hidden="true" />
              </td>
              <td class="n">{row.apart}</td>
            </tr>
          ))}
        </Table>
      </Section>
    ))}
  </Sheet>
));
