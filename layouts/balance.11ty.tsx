import type { BalancePage, BalanceSheetView } from "../src/present/pages/balance-page.ts";
import { EnvelopeChart } from "./parts/envelope-chart.tsx";
import { Findings } from "./parts/finding.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Fact, Words } from "./parts/words.tsx";

export const { data, render } = template("balance", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.sentence}</p>
    <p class="left-off">{page.cautions[0]}</p>
    {page.findings.length > 0 && (
      <Section id="findings" title="Findings" figure={`${page.findings.length}`}>
        <Findings of={page.findings} />
      </Section>
    )}
    <Section id="definition" title="What is counted, and from where">
      <Facts of={page.definition} />
      {page.limits.length > 0 && (
        <>
          <h3 class="small">Limits</h3>
          <Facts of={page.limits} />
        </>
      )}
    </Section>
    {(page.cases.length > 0 || page.casesLack.length > 0) && (
      <Section id="cases" title="Loading cases" figure={`${page.cases.length}`}>
        {page.casesLack.map((each) => (
          <p class="legend">{each}</p>
        ))}
        {page.chart && <EnvelopeChart of={page.chart} />}
        {page.cases.length > 0 && <Cases of={page} />}
        <div class="beside">
          {page.caseSheets.map((each) => (
            <Lines of={each} units={page.units} />
          ))}
        </div>
      </Section>
    )}
    <Section id="empty-weight" title="How the empty weight came about">
      {page.cases.length === 0 && page.chart && <EnvelopeChart of={page.chart} />}
      {page.negligible !== undefined && <p class="legend">{page.negligible}</p>}
      {page.events.length === 0 ? (
        <p class="empty">Nothing has been weighed or projected yet.</p>
      ) : (
        <EmptyWeight of={page} />
      )}
    </Section>
    {page.weighings.length > 0 && (
      <Section id="weighings" title="Weighings" figure={`${page.weighings.length}`}>
        {page.weighings.map((each) => (
          <Lines of={each} units={page.units} />
        ))}
      </Section>
    )}
    {page.projection && (
      <Section id="projection-lines" title="Projection">
        <Lines of={page.projection} units={page.units} />
      </Section>
    )}
    {page.changes.length > 0 && (
      <Section id="changes" title="Changes of equipment" figure={`${page.changes.length}`}>
        {page.changes.map((each) => (
          <Lines of={each} units={page.units} />
        ))}
      </Section>
    )}
    <Section id="cautions" title="What these numbers are not">
      <ul class="advice">
        {page.cautions.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    </Section>
  </Sheet>
));

function Facts({ of }: { of: BalancePage["definition"] }) {
  return (
    <dl class="facts">
      {of.map(({ label, value }) => (
        <Fact label={label}>{value}</Fact>
      ))}
    </dl>
  );
}

function Cases({ of: { cases, units, hasChord } }: { of: BalancePage }) {
  return (
    <Table
      caption="Each case: the empty aircraft and what is put aboard, against the limits"
      heads={[
        "No.",
        "Case",
        `#Weight, ${units.weight}`,
        `#CG, ${units.arm}`,
        ...(hasChord ? ["#% MAC"] : []),
        "From the limits",
      ]}
    >
      {cases.map((each) => (
        <tr>
          <td class="no">{each.number}</td>
          <th scope="row">
            <a href={each.href}>{each.title}</a>
            {each.marks.length > 0 && <small>{each.marks.join(", ")}</small>}
            <div class={verdictClass(each)}>{each.verdict}</div>
          </th>
          <td class="n">{each.weight}</td>
          <td class="n">{each.cg}</td>
          {hasChord && <td class="n">{each.percent}</td>}
          <td class="nb">
            {each.says.map((says) => (
              <small>{says}</small>
            ))}
          </td>
        </tr>
      ))}
    </Table>
  );
}

function verdictClass({ inside, outside }: BalancePage["cases"][number]): string {
  if (inside) return "verdict within";
  return outside ? "verdict out" : "verdict no-rule";
}

function EmptyWeight({ of: { events, units, hasChord } }: { of: BalancePage }) {
  return (
    <Table
      caption="Each row starts anew or changes the one before; the last one is in force"
      heads={[
        "Date",
        "What",
        `#Change, ${units.weight}`,
        `#Empty weight, ${units.weight}`,
        `#CG, ${units.arm}`,
        ...(hasChord ? ["#% MAC"] : []),
        `#CG moved, ${units.arm}`,
      ]}
    >
      {events.map((event) => (
        <tr>
          <td class="nb">
            <Words of={event.on} />
          </td>
          <th scope="row">
            <Words of={event.sheet} />
            {event.notes.map((note) => (
              <small>{note}</small>
            ))}
          </th>
          <td class="n">{event.change}</td>
          <td class="n">{event.weight}</td>
          <td class="n">{event.cg}</td>
          {hasChord && <td class="n">{event.percent}</td>}
          <td class="n">{event.movement}</td>
        </tr>
      ))}
    </Table>
  );
}

/** The lines of a weighing, a change or a loading, and what they come to. */
function Lines({ of, units }: { of: BalanceSheetView; units: BalancePage["units"] }) {
  return (
    <article class="lines" id={of.anchor}>
      <h3>{of.title}</h3>
      {of.on && (
        <dl class="facts">
          <Fact label="Date">
            <Words of={of.on} />
          </Fact>
          {of.facts.map(({ label, value }) => (
            <Fact label={label}>{value}</Fact>
          ))}
        </dl>
      )}
      {of.note !== undefined && <p class="legend">{of.note}</p>}
      <Table
        caption={`Lines of ${of.title}`}
        quiet
        heads={[
          "Item",
          `#Weight, ${units.weight}`,
          `#Arm, ${units.arm}`,
          `#Moment, ${units.moment}`,
        ]}
        foot={
          <tr>
            <th scope="row">{of.sum.what}</th>
            <td class="n">{of.sum.weight}</td>
            <td class="n">{of.sum.arm}</td>
            <td class="n">{of.sum.moment}</td>
          </tr>
        }
      >
        {of.rows.map((row) => (
          <tr>
            <th scope="row">
              {row.what}
              {row.says !== undefined && <small>{row.says}</small>}
              {row.estimated && <small>estimated</small>}
            </th>
            <td class="n">{row.weight}</td>
            <td class="n">{row.arm}</td>
            <td class="n">{row.moment}</td>
          </tr>
        ))}
      </Table>
    </article>
  );
}
