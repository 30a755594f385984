import type { LastDay } from "../src/present/pages/open-items-page.ts";
import { Deviation } from "./parts/deviation.tsx";
import { Findings } from "./parts/finding.tsx";
import { Cures, Holds, Squawks } from "./parts/records.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

function LastDays({ of, caption }: { of: readonly LastDay[]; caption: string }) {
  return (
    <Table caption={caption} quiet heads={["What", "Last day", "Left"]}>
      {of.map(({ what, until, left, over }) => (
        <tr>
          <th scope="row">{what}</th>
          <td class="nb">{until}</td>
          <td class={over ? "wants" : undefined}>{left}</td>
        </tr>
      ))}
    </Table>
  );
}

export const { data, render } = template("open", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <Section id="findings" title="Findings" figure={`${page.findings.length}`}>
      {page.findings.length === 0 ? (
        <p class="empty">None.</p>
      ) : (
        <Findings of={page.findings} dated />
      )}
    </Section>
    <Section id="deviations" title="Deviations undecided" figure={`${page.deviations.length}`}>
      {page.deviations.length === 0 && <p class="empty">None.</p>}
      {page.deviations.map((each) => (
        <Deviation of={each} dated />
      ))}
    </Section>
    <Section id="looks" title="Looks due" figure={`${page.looks.length}`}>
      {page.looks.length === 0 ? (
        <p class="empty">None on any step that has been begun.</p>
      ) : (
        <Table
          caption="To be looked at before the step is closed"
          heads={["Step", "What", "Look", "Stage", "Standing"]}
        >
          {page.looks.map((row) => (
            <tr>
              <th scope="row" class="nb">
                <Words of={row.step} />
              </th>
              <td>{row.title}</td>
              <td>{row.look}</td>
              <td>
                <span class="stage">{row.stage}</span>
              </td>
              <td>{row.standing}</td>
            </tr>
          ))}
        </Table>
      )}
    </Section>
    <Section id="squawks" title="Squawks" figure={`${page.squawks.length}`}>
      {page.squawks.length === 0 ? (
        <p class="empty">None open.</p>
      ) : (
        <Squawks of={page.squawks} caption="Squawks not closed" />
      )}
    </Section>
    <Section id="cures" title="Curing" figure={`${page.cures.length}`}>
      {page.cures.length === 0 ? (
        <p class="empty">Nothing is curing.</p>
      ) : (
        <Cures of={page.cures} />
      )}
    </Section>
    <Section id="holds" title="Held for now" figure={`${page.holds.length}`}>
      {page.holds.length === 0 ? (
        <p class="empty">Nothing is held by clecos, clamps or tape.</p>
      ) : (
        <Holds of={page.holds} caption="Holds not released" />
      )}
    </Section>
    <Section id="lots" title="Lots near or past their last day" figure={`${page.lots.length}`}>
      {page.lots.length === 0 ? (
        <p class="empty">None within 60 days.</p>
      ) : (
        <LastDays of={page.lots} caption="Lots and their last day of use" />
      )}
    </Section>
    <Section
      id="calibrations"
      title="Calibrations due or lapsed"
      figure={`${page.calibrations.length}`}
    >
      {page.calibrations.length === 0 ? (
        <p class="empty">None within 60 days.</p>
      ) : (
        <LastDays of={page.calibrations} caption="Instruments and when their calibration is due" />
      )}
    </Section>
  </Sheet>
));
