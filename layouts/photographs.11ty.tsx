import { Photo } from "./parts/photo.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

export const { data, render } = template("photographs", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.newest.length === 0 && <p class="empty">No photographs yet.</p>}
    {page.months.length > 0 && (
      <nav aria-label="photographs by month">
        <ul class="index">
          {page.months.map(({ month, count }) => (
            <li>
              <a href={month.href}>{month.text}</a> <b>{count}</b>
            </li>
          ))}
        </ul>
      </nav>
    )}
    {page.newest.length > 0 && (
      <Section id="newest" title="Newest">
        <div class="contact">
          {page.newest.map((photo, index) => (
            <Photo of={photo} sizes="(min-width: 60rem) 22rem, 92vw" first={index === 0} dated />
          ))}
        </div>
      </Section>
    )}
  </Sheet>
));
