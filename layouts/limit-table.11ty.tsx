import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("limitTable", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.source}.</p>
    <p>How the values were copied: {page.status}.</p>
    {page.notes.length > 0 && (
      <ul class="advice">
        {page.notes.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    )}
    <Section id="values" title="Values" figure={`${page.rows.length}`}>
      <Table caption={`${page.title}: ${page.source}`} quiet heads={page.heads}>
        {page.rows.map(([first, ...rest]) => (
          <tr>
            <th scope="row" class={page.heads[0]?.startsWith("#") ? "n" : undefined}>
              {first}
            </th>
            {rest.map((each, index) => (
              <td class={page.heads[index + 1]?.startsWith("#") ? "n" : undefined}>{each}</td>
            ))}
          </tr>
        ))}
      </Table>
    </Section>
  </Sheet>
));
