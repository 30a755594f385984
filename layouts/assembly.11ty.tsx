import { Photo } from "./parts/photo.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Tree } from "./parts/tree.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("assembly", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    {page.summary !== undefined && <p class="summary">{page.summary}</p>}
    {page.parts.length > 0 && (
      <Section id="parts" title="Parts" figure={page.total}>
        <p class="legend">
          {page.own} booked to {page.title} itself, and what was booked to its parts.
        </p>
        <Tree of={page.parts} />
      </Section>
    )}
    {page.steps.length > 0 && (
      <Section id="steps" title="Steps" figure={`${page.steps.length}`}>
        <Table
          caption="Steps of this assembly"
          quiet
          heads={["Step", "What", "Drawing", "Stage", "Looks", "Last", "#Booked", "#Planned"]}
        >
          {page.steps.map((row) => (
            <tr>
              <th scope="row" class="nb">
                <Words of={row.step} />
              </th>
              <td>{row.title}</td>
              <td class="nb">{row.drawing}</td>
              <td>{row.stage !== undefined && <span class="stage">{row.stage}</span>}</td>
              <td class="nb">{row.looks}</td>
              <td class="nb">{row.last && <Words of={row.last} />}</td>
              <td class={row.beyond ? "n wants" : "n"}>{row.booked}</td>
              <td class="n">{row.planned}</td>
            </tr>
          ))}
        </Table>
      </Section>
    )}
    {page.days.length > 0 && (
      <Section id="days" title="Days" figure={page.own}>
        <Table
          caption="Hours booked to the assembly itself, by day"
          heads={["Month", "Days", "#Hours"]}
        >
          {page.days.map((row) => (
            <tr>
              <th scope="row" class="nb">
                {row.month}
              </th>
              <td class="booked">
                {row.days.map(({ day, hours }) => (
                  <span>
                    <Words of={day} /> <small>{hours}</small>
                  </span>
                ))}
              </td>
              <td class="n">{row.hours}</td>
            </tr>
          ))}
        </Table>
        {page.apart !== undefined && (
          <p class="legend">
            Study and shop, {page.apart} with everything below, are counted apart.
          </p>
        )}
      </Section>
    )}
    {page.photos.length > 0 && (
      <Section
        id="photographs"
        title="Photographs"
        figure={`${page.photos.length + page.morePhotos}`}
      >
        <div class="contact">
          {page.photos.map((photo) => (
            <Photo of={photo} sizes="(min-width: 60rem) 22rem, 92vw" dated />
          ))}
        </div>
        {page.morePhotos > 0 && (
          <p class="legend">{page.morePhotos} older ones are on their days.</p>
        )}
      </Section>
    )}
  </Sheet>
));
