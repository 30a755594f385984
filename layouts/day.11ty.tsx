import { DayStrip } from "./parts/day-strip.tsx";
import { Deviation } from "./parts/deviation.tsx";
import { Findings, Flag } from "./parts/finding.tsx";
import { Layout } from "./parts/layout.tsx";
import { Photo } from "./parts/photo.tsx";
import { Prose } from "./parts/prose.tsx";
import { Reading } from "./parts/reading.tsx";
import { Amendments, Cures, Holds, Inspections, Sessions, Squawks } from "./parts/records.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Video } from "./parts/video.tsx";
import { Words } from "./parts/words.tsx";

const wide = "(min-width: 60rem) 34rem, 92vw";

export const { data, render } = template("day", ({ page, shell }) => {
  // Two stand beside the prose; of more, the others follow in rows.
  const beside = page.photos.slice(0, page.photos.length === 2 ? 2 : 1);
  const rest = page.photos.slice(beside.length);
  return (
    <Sheet page={page} shell={shell}>
      {page.late !== undefined && (
        <p class="notice wants">Late entry: written down {page.late} after the day.</p>
      )}
      {page.imported !== undefined && (
        <p class="notice wants">
          Imported from <code>{page.imported}</code>, an older log: entered later, not typed in the
          evening.
        </p>
      )}
      {page.findings.length > 0 && (
        <p class="notice">
          <Flag text={`${page.findings.length}`} />
          <a href="#findings">
            {page.findings.length === 1 ? "A finding" : "Findings"} on this sheet
          </a>
        </p>
      )}
      {page.corrected.length > 0 && (
        <Amendments of={page.corrected} caption="Corrected later" other="Amended on" />
      )}
      <div class={beside.length > 0 ? "beside" : undefined}>
        <div>
          {page.leftOff && (
            <aside class="left-off" aria-label="where the sheet before left off">
              <p>
                Left over from <Words of={page.leftOff.day} />
              </p>
              <ul class="todo">
                {page.leftOff.items.map((each) => (
                  <li>{each}</li>
                ))}
              </ul>
            </aside>
          )}
          {page.prose && <Prose of={page.prose} />}
          {page.next.length > 0 && (
            <>
              <h2 class="small">Next</h2>
              <ul class="todo">
                {page.next.map((each) => (
                  <li>{each}</li>
                ))}
              </ul>
            </>
          )}
        </div>
        {beside.map((photo, index) => (
          <Photo of={photo} sizes={wide} first={index === 0} />
        ))}
      </div>
      {rest.length > 0 && (
        <div class="contact">
          {rest.map((photo) => (
            <Photo of={photo} sizes="(min-width: 60rem) 24rem, 92vw" />
          ))}
        </div>
      )}
      {page.videos.length > 0 && (
        <Section id="recordings" title="Recordings" figure={`${page.videos.length}`}>
          {page.videos.map((each) => (
            <Video of={each} />
          ))}
        </Section>
      )}
      {page.findings.length > 0 && (
        <Section id="findings" title="Findings" figure={`${page.findings.length}`}>
          <Findings of={page.findings} />
        </Section>
      )}
      {page.deviations.length > 0 && (
        <Section id="deviations" title="Deviations" figure={`${page.deviations.length}`}>
          {page.deviations.map((each) => (
            <Deviation of={each} />
          ))}
        </Section>
      )}
      {page.dispositions.length > 0 && (
        <Section id="dispositions" title="Deviations decided today">
          {page.dispositions.map((each) => (
            <Deviation of={each} dated />
          ))}
        </Section>
      )}
      {page.sessions.length > 0 && (
        <Section id="sessions" title="Sessions" figure={page.hours.build} counts="build">
          {page.strip && <DayStrip of={page.strip} />}
          {page.offStrip.length > 0 && (
            <p class="legend">Only the hours were written of no. {page.offStrip.join(", ")}.</p>
          )}
          <Sessions of={page.sessions} hours={page.hours} caption="Sessions of the day" />
        </Section>
      )}
      {page.steps.length > 0 && (
        <Section id="steps" title="Steps" figure={`${page.steps.length}`}>
          <Table
            caption="Steps worked on"
            quiet
            heads={["Step", "What", "Drawing", "Stage reached", "#Today", "#In all", "#Planned"]}
          >
            {page.steps.map((row) => (
              <tr data-row>
                <th scope="row">
                  <Words of={row.step} />
                </th>
                <td>{row.title}</td>
                <td>{row.drawing}</td>
                <td>{row.stage !== undefined && <span class="stage">{row.stage}</span>}</td>
                <td class="n">
                  <a href="#sessions" data-figure="build" data-only={row.step.text}>
                    {row.today}
                  </a>
                </td>
                <td class="n" data-figure="build">
                  {row.booked}
                </td>
                <td class="n" data-planned>
                  {row.planned}
                </td>
              </tr>
            ))}
          </Table>
        </Section>
      )}
      {page.readings.length > 0 && (
        <Section id="readings" title="Readings" figure={`${page.readings.length}`}>
          {page.readings.map((each) => (
            <Reading of={each} />
          ))}
        </Section>
      )}
      {page.layouts.length > 0 && (
        <Section id="layouts" title="Layouts" figure={`${page.layouts.length}`}>
          {page.layouts.map((each) => (
            <Layout of={each} />
          ))}
        </Section>
      )}
      {page.inspections.length > 0 && (
        <Section id="inspections" title="Inspections" figure={`${page.inspections.length}`}>
          <Inspections of={page.inspections} />
        </Section>
      )}
      {page.cures.length > 0 && (
        <Section id="cures" title="Curing" figure={`${page.cures.length}`}>
          <Cures of={page.cures} />
        </Section>
      )}
      {page.holds.length > 0 && (
        <Section id="holds" title="Held for now" figure={`${page.holds.length}`}>
          <Holds of={page.holds} caption="Put in today" />
        </Section>
      )}
      {page.releases.length > 0 && (
        <Section id="releases" title="Released" figure={`${page.releases.length}`}>
          <Holds of={page.releases} caption="Released today" />
        </Section>
      )}
      {page.squawks.length > 0 && (
        <Section id="squawks" title="Squawks" figure={`${page.squawks.length}`}>
          <Squawks of={page.squawks} caption="Found today" />
        </Section>
      )}
      {page.squawkWork.length > 0 && (
        <Section id="squawk-work" title="Squawks worked on" figure={`${page.squawkWork.length}`}>
          <Squawks of={page.squawkWork} caption="Earlier squawks worked on or closed today" />
        </Section>
      )}
      {page.amendments.length > 0 && (
        <Section id="amendments" title="Amendments" figure={`${page.amendments.length}`}>
          <Amendments of={page.amendments} caption="Earlier sheets corrected today" other="Sheet" />
        </Section>
      )}
      {page.seal && (
        <p class="legend">
          Last sheet of a month that is sealed as <code>{page.seal.short}</code>:{" "}
          <Words of={page.seal.means} />.
        </p>
      )}
    </Sheet>
  );
});
