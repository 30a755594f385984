import { MeasurementStrip } from "./parts/measurement-strip.tsx";
import { Values, Verdict } from "./parts/reading.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("rule", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">
      {page.filled !== undefined && `${page.filled}; `}
      {page.source}.
    </p>
    <p>{page.decision}</p>
    {page.set && (
      <p>
        From the rule set <Words of={page.set} />.
      </p>
    )}
    {page.advice.length > 0 && (
      <ul class="advice">
        {page.advice.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    )}
    {page.readings.length === 0 ? (
      <p class="empty">Nothing has been measured against this rule yet.</p>
    ) : (
      <Section id="readings" title="Readings" figure={`${page.readings.length}`}>
        <Table
          class="gauges"
          caption="Newest first; the band on each strip runs from limit to limit"
          heads={["Day", "Where", "Value", "Strip", "Verdict", "Measured with"]}
        >
          {page.readings.map((each) => (
            <tr>
              <td class="nb">
                <Words of={each.day} />
              </td>
              <td>
                {each.what}
                <small>
                  {each.at}
                  {each.step && (
                    <>
                      {" "}
                      <Words of={each.step} />
                    </>
                  )}
                </small>
              </td>
              <td class="values">
                <Values of={each} />
              </td>
              <td>{each.strip && <MeasurementStrip of={each.strip} bare />}</td>
              <td>
                <Verdict of={each} />
                {each.deviation && (
                  <small>
                    <Words of={each.deviation} />
                  </small>
                )}
                {each.supersededBy && (
                  <small>
                    by <Words of={each.supersededBy} />
                  </small>
                )}
              </td>
              <td>
                {page.filled === undefined && <small>{each.limits}</small>}
                {each.instrument !== undefined && <small>{each.instrument}</small>}
                {each.assurance !== undefined && <small>{each.assurance}</small>}
              </td>
            </tr>
          ))}
        </Table>
      </Section>
    )}
  </Sheet>
));
