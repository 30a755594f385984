import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { WordList, Words } from "./parts/words.tsx";

export const { data, render } = template("limits", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">
      A limit on the drawing or in the manual wins over a published one, and a published one over
      common practice. Where publications disagree they are different sets, and the builder picks
      the one the work is done to.
    </p>
    <Section id="rules" title="Rules of this project" figure={`${page.rules.length}`}>
      {page.rules.length === 0 ? (
        <p class="empty">This project declares no rules yet.</p>
      ) : (
        <Table
          caption="What readings are judged against"
          quiet
          heads={["Rule", "Limits", "Source"]}
        >
          {page.rules.map(({ rule, limits, source, advice }) => (
            <tr>
              <th scope="row">
                <Words of={rule} />
              </th>
              <td>{limits}</td>
              <td>
                {source}
                {advice.map((each) => (
                  <small>{each}</small>
                ))}
              </td>
            </tr>
          ))}
        </Table>
      )}
    </Section>
    <Section id="sets" title="Sets that come with the program" figure={`${page.sets.length}`}>
      <Table
        caption="Every value of a set is on its page"
        heads={["Set", "What", "Source", "Used by"]}
      >
        {page.sets.map(({ set, title, authority, source, status, usedBy }) => (
          <tr>
            <th scope="row">
              <Words of={set} />
            </th>
            <td>{title}</td>
            <td>
              {source}
              <small>
                {authority}; {status}
              </small>
            </td>
            <td>
              <WordList of={usedBy} />
            </td>
          </tr>
        ))}
      </Table>
    </Section>
    <Section id="tables" title="Tables behind the sums" figure={`${page.tables.length}`}>
      <Table caption="No reading is judged by these" heads={["Table", "Source"]}>
        {page.tables.map(({ table, source, status }) => (
          <tr>
            <th scope="row">
              <Words of={table} />
            </th>
            <td>
              {source}
              <small>{status}</small>
            </td>
          </tr>
        ))}
      </Table>
    </Section>
    <Section id="in-words" title="In words" figure={`${page.statements}`}>
      <p>
        <Words of={page.inWords} />: what is no limit for a reading, by kind of work, each with its
        document and place.
      </p>
    </Section>
  </Sheet>
));
