import type { HelpHoursView, HelpKindView } from "../src/present/pages/help-page.ts";
import { BookedSessions } from "./parts/booked-sessions.tsx";
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
          quiet
          sum
          heads={["Date", "Who", "Kind", "Sessions", "#Building", "#Study and shop"]}
        >
          {page.unlisted.map((row) => (
            <tr>
              <td class="nb">
                <Words of={row.on} />
              </td>
              <th scope="row">{row.who}</th>
              <td class="nb">{row.kind}</td>
              <Hours of={row.hours} bare />
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
          sum
          heads={[
            ...["No.", "Who and what", "When", "Share of tasks"],
            ...["Sessions", "#Building", "#Study and shop"],
          ]}
          foot={
            of.total && (
              <tr>
                <th scope="row" colspan={5}>
                  sum
                </th>
                <Total of={of.total.build} counts="build" />
                <Total of={of.total.apart} counts="apart" />
              </tr>
            )
          }
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
              <Hours of={row.hours} />
            </tr>
          ))}
        </Table>
      )}
    </Section>
  );
}

function Hours({ of, bare = false }: { of: HelpHoursView; bare?: boolean }) {
  return (
    <>
      <td class="booked">
        <Months of={of.buildMonths} counts="build" bare={bare} />
        <Months of={of.apartMonths} counts="apart" bare={bare} />
      </td>
      <td class="n" data-subtotal={of.build === "" ? undefined : "build"}>
        {of.build}
      </td>
      <td class="n" data-subtotal={of.apart === "" ? undefined : "apart"}>
        {of.apart}
      </td>
    </>
  );
}

function Months({
  of,
  counts,
  bare,
}: {
  of: HelpHoursView["buildMonths"];
  counts: "build" | "apart";
  bare: boolean;
}) {
  return (
    <>
      {of.map(({ month, days }) => (
        <>
          {!bare && <small>{month}: </small>}
          <BookedSessions of={days} counts={counts} bare={bare} />
        </>
      ))}
    </>
  );
}

function Total({ of, counts }: { of: string; counts: "build" | "apart" }) {
  return (
    <td class="n" data-total={of === "" ? undefined : counts}>
      {of}
    </td>
  );
}
