import { HoursChart } from "./parts/hours-chart.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Fact, Words } from "./parts/words.tsx";

// Only the outermost rows add up; the others are in them.
const mark = (depth: number, counts: "build" | "apart") =>
  depth === 0 ? { "data-part": counts } : { "data-figure": counts };

export const { data, render } = template("hours", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.sentence}</p>
    {page.chart && <HoursChart of={page.chart} />}
    <Section id="pace" title="Pace and forecast">
      {page.pace.says !== undefined && <p class="summary">{page.pace.says}</p>}
      {page.pace.refused !== undefined && <p class="empty">{page.pace.refused}</p>}
      {page.pace.forecast && (
        <>
          <dl class="facts">
            {page.pace.forecast.facts.map(({ label, value }) => (
              <Fact label={label}>{value}</Fact>
            ))}
          </dl>
          <p class="legend small">{page.pace.forecast.method}</p>
        </>
      )}
    </Section>
    {page.tables.map(({ id, title, says, heading, rows }) => (
      <Section id={id} title={title}>
        <Table
          class="hours"
          caption={says}
          sum
          heads={[heading, "#Building", "Share", "#Study and shop"]}
          foot={
            <tr>
              <th scope="row">sum</th>
              <td class="n" data-total="build">
                {page.total.build}
              </td>
              <td />
              <td class="n" data-total="apart">
                {page.total.apart}
              </td>
            </tr>
          }
        >
          {rows.map((row) => (
            <tr data-row>
              <th scope="row" class={`depth-${Math.min(row.depth, 3)}`}>
                <Words of={row.name} />
              </th>
              <td class="n" {...mark(row.depth, "build")}>
                {row.build}
              </td>
              <td>
                <svg class="share" width={row.share} height="10" aria-hidden="true" />
              </td>
              <td class="n" {...mark(row.depth, "apart")}>
                <Words of={row.apart} />
              </td>
            </tr>
          ))}
        </Table>
      </Section>
    ))}
  </Sheet>
));
