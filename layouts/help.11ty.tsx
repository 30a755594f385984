import type { HelpKindView } from "../src/present/pages/help-page.ts";
import { Findings } from "./parts/finding.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Joined, Words } from "./parts/words.tsx";

export const { data, render } = template("help", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.description}</p>
    {page.findings.length > 0 && (
      <Section id="findings" title="Findings" figure={`${page.findings.length}`}>
        <Findings of={page.findings} />
      </Section>
    )}
    {page.kinds.map((kind) => (
      <Kind of={kind} />
    ))}
    {page.unlisted.length > 0 && (
      <Section id="unlisted" title="In sessions alone" figure={`${page.unlisted.length}`}>
        <Table
          caption="Help that sessions have and no row tells of"
          heads={["Date", "Who", "Kind"]}
        >
          {page.unlisted.map((row) => (
            <tr>
              <td class="nb">
                <Words of={row.on} />
              </td>
              <th scope="row">{row.who}</th>
              <td>{row.kind}</td>
            </tr>
          ))}
        </Table>
      </Section>
    )}
    <Section id="cautions" title="How it is counted">
      <ul class="advice">
        {page.cautions.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    </Section>
  </Sheet>
));

function Kind({ of }: { of: HelpKindView }) {
  const id = of.title.toLowerCase().replace(" ", "-");
  return (
    <Section id={id} title={of.title} figure={`${of.rows.length}`}>
      {of.rows.length === 0 ? (
        <p class="empty">None is listed.</p>
      ) : (
        <Table
          caption={`${of.title}, by first day`}
          quiet
          heads={["No.", "Who and what", "When", "Share of tasks"]}
        >
          {of.rows.map((row) => (
            <tr>
              <td class="nb">{row.number}</td>
              <th scope="row">
                {row.who}
                <small>{row.what}</small>
                {row.marks.map((mark) => (
                  <small>{mark}</small>
                ))}
              </th>
              <td>
                <Joined by=" to " of={row.when.map((each) => <Words of={each} />)} />
              </td>
              <td>{row.shares}</td>
            </tr>
          ))}
        </Table>
      )}
    </Section>
  );
}
