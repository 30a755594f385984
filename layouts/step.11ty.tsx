import { BookedDays } from "./parts/booked-days.tsx";
import { Deviation } from "./parts/deviation.tsx";
import { Photo } from "./parts/photo.tsx";
import { Reading } from "./parts/reading.tsx";
import { Cures, Holds, Inspections, Sessions, Squawks } from "./parts/records.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("step", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <Section id="stages" title="Stages" figure={page.drawing}>
      <ol class="stages" data-pagefind-ignore>
        {page.stages.map(({ stage, here, passed }) => (
          <li
            class={here ? "here" : passed ? "passed" : undefined}
            aria-current={here ? "step" : undefined}
          >
            {stage}
          </li>
        ))}
      </ol>
    </Section>
    {page.looks.length > 0 && (
      <Section id="looks" title="To be looked at before closing" figure={`${page.looks.length}`}>
        <ul class="looks">
          {page.looks.map(({ look, standing }) => (
            <li>
              {look} <b class={standing === "clear" ? "fine" : "wants"}>{standing}</b>
            </li>
          ))}
        </ul>
      </Section>
    )}
    {page.deviations.length > 0 && (
      <Section id="deviations" title="Deviations" figure={`${page.deviations.length}`}>
        {page.deviations.map((each) => (
          <Deviation of={each} dated />
        ))}
      </Section>
    )}
    {page.sessions.length > 0 && (
      <Section id="sessions" title="Sessions" figure={page.hours.build} counts="build">
        <Sessions of={page.sessions} hours={page.hours} caption="Sessions on this step" dated />
      </Section>
    )}
    {page.days.length > 0 && (
      <Section id="sessions" title="Sessions" figure={page.hours.build} counts="build">
        <BookedDays of={page.days} counts="build" caption="Hours of building on this step" main />
      </Section>
    )}
    {page.daysApart.length > 0 && (
      <Section
        id="apart"
        title="Study and shop, counted apart"
        figure={page.hours.apart}
        counts="apart"
      >
        <BookedDays of={page.daysApart} counts="apart" caption="Study and shop on this step" main />
      </Section>
    )}
    {page.sessions.length + page.days.length + page.daysApart.length === 0 && (
      <p class="empty">Nothing has been booked to this step.</p>
    )}
    {page.readings.length > 0 && (
      <Section
        id="readings"
        title="Readings"
        figure={`${page.readings.length + page.earlierReadings}`}
      >
        {page.earlierReadings > 0 && (
          <p class="legend">
            {page.earlierReadings} earlier ones, none of them out of limits, are on their days and
            on the pages of their rules.
          </p>
        )}
        {page.readings.map((each) => (
          <Reading of={each} dated />
        ))}
      </Section>
    )}
    {page.inspections.length > 0 && (
      <Section id="inspections" title="Inspections" figure={`${page.inspections.length}`}>
        <Inspections of={page.inspections} dated />
      </Section>
    )}
    {page.cures.length > 0 && (
      <Section id="cures" title="Curing" figure={`${page.cures.length}`}>
        <Cures of={page.cures} />
      </Section>
    )}
    {page.holds.length > 0 && (
      <Section id="holds" title="Held for now" figure={`${page.holds.length}`}>
        <Holds of={page.holds} caption="Holds on this step" />
      </Section>
    )}
    {page.squawks.length > 0 && (
      <Section id="squawks" title="Squawks" figure={`${page.squawks.length}`}>
        <Squawks of={page.squawks} caption="Squawks on this step" />
      </Section>
    )}
    {page.photos.length > 0 && (
      <Section
        id="photographs"
        title="Photographs"
        figure={`${page.photos.length + page.earlierPhotos}`}
      >
        <div class="contact">
          {page.photos.map((photo) => (
            <Photo of={photo} sizes="(min-width: 60rem) 22rem, 92vw" dated />
          ))}
        </div>
        {page.earlierPhotos > 0 && (
          <p class="legend">{page.earlierPhotos} older ones are on their days.</p>
        )}
      </Section>
    )}
  </Sheet>
));
