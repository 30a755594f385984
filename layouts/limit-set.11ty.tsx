import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { WordList } from "./parts/words.tsx";

export const { data, render } = template("limitSet", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.source}.</p>
    <p>
      Speaks as: {page.authority}. How the values were copied: {page.status}.
    </p>
    {page.usedBy.length > 0 && (
      <p>
        Used here by <WordList of={page.usedBy} />.
      </p>
    )}
    <ul class="advice">
      {page.advice.map((each) => (
        <li>{each}</li>
      ))}
    </ul>
    <Section id="values" title="Values" figure={`${page.rows.length}`}>
      <Table
        class="set"
        caption={`Every limit of ${page.title}: ${page.source}`}
        heads={[...page.parameters, "Limits"]}
      >
        {page.rows.map(({ given, limits }) => (
          <tr>
            {given.map((each) => (
              <td>{each}</td>
            ))}
            <td>{limits}</td>
          </tr>
        ))}
      </Table>
    </Section>
  </Sheet>
));
