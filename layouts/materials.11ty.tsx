import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("materials", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="legend">
      As the builder wrote it down: which lot was opened, and what it went into. A lot is not proof
      of the material; its papers are.
    </p>
    {page.groups.length === 0 && <p class="empty">No lots have been declared.</p>}
    {page.groups.map(({ id, material, rows }) => (
      <Section id={id} title={material} figure={`${rows.length}`}>
        <Table
          caption={`Lots of it: ${material}`}
          quiet
          heads={["Lot", "Made", "Use by", "Went into"]}
        >
          {rows.map((row) => (
            <tr id={row.anchor}>
              <th scope="row">
                {row.title}
                <small>{row.id}</small>
              </th>
              <td>{row.made}</td>
              <td>
                {row.useBy}
                {row.extensions.map((each) => (
                  <small>{each}</small>
                ))}
                {row.expired && <span class="wants">past its last day</span>}
              </td>
              <td class="booked">
                {row.used.length === 0 && "not used yet"}
                {row.used.map(({ on, days }) => (
                  <div>
                    <Words of={on} />:{" "}
                    {days.map((day) => (
                      <span>
                        <Words of={day} />
                      </span>
                    ))}
                  </div>
                ))}
              </td>
            </tr>
          ))}
        </Table>
      </Section>
    ))}
  </Sheet>
));
