import { BookedDays } from "./parts/booked-days.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("hoursList", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.build.length > 0 && (
      <Section id="building" title="Building" figure={page.total.build} counts="build">
        <BookedDays of={page.build} counts="build" caption="Hours of building" main />
      </Section>
    )}
    {page.apart.length > 0 && (
      <Section
        id="apart"
        title="Study and shop, counted apart"
        figure={page.total.apart}
        counts="apart"
      >
        <BookedDays of={page.apart} counts="apart" caption="Hours of study and shop" main />
      </Section>
    )}
  </Sheet>
));
