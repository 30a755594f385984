import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("inWords", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">
      Nothing on this page is a limit for a reading. The drawing, the manual and the rules of the
      country win over all of it. It is told in the words of this program.
    </p>
    {page.groups.map(({ subject, anchor, note, statements }) => (
      <Section id={anchor} title={subject} figure={`${statements.length}`}>
        {note !== undefined && <p>{note}</p>}
        <Table caption={`What is said: ${subject}`} quiet heads={["What is said", "Where"]}>
          {statements.map(({ says, source, status }) => (
            <tr>
              <td>{says}</td>
              <td>
                {source}
                {status !== undefined && <small>{status}</small>}
              </td>
            </tr>
          ))}
        </Table>
      </Section>
    ))}
  </Sheet>
));
