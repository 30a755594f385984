import { BookedDays } from "./parts/booked-days.tsx";
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
    {page.apart !== undefined && (
      <p class="legend">
        Study and shop,{" "}
        <a href={page.sums.apart.href} data-figure="apart">
          {page.apart}
        </a>
        , are counted apart.
      </p>
    )}
    {page.parts.length > 0 && (
      <Section id="parts" title="Parts" figure={page.total} counts="build">
        <div data-sum data-main>
          <p class="legend">
            <span data-part="build">
              {page.days.length > 0 ? <a href="#days">{page.own}</a> : page.own}
            </span>{" "}
            booked to {page.title} itself
            {page.daysApart.length > 0 && (
              <>
                {" "}
                (and{" "}
                <a href="#apart" data-part="apart">
                  {page.ownApart}
                </a>{" "}
                of study and shop)
              </>
            )}
            , and what was booked to its parts:
          </p>
          <Tree of={page.parts} parts />
        </div>
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
            <tr data-row>
              <th scope="row" class="nb">
                <Words of={row.step} />
              </th>
              <td>{row.title}</td>
              <td class="nb">{row.drawing}</td>
              <td>{row.stage !== undefined && <span class="stage">{row.stage}</span>}</td>
              <td class="nb">{row.looks}</td>
              <td class="nb">{row.last && <Words of={row.last} />}</td>
              <td class={row.beyond ? "n wants" : "n"} data-figure="build">
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
    {page.days.length > 0 && (
      <Section id="days" title="Days" figure={page.own} counts="build">
        <BookedDays
          of={page.days}
          counts="build"
          caption="Hours booked to the assembly itself"
          main={page.parts.length === 0}
        />
      </Section>
    )}
    {page.daysApart.length > 0 && (
      <Section
        id="apart"
        title="Study and shop, counted apart"
        figure={page.ownApart}
        counts="apart"
      >
        <BookedDays
          of={page.daysApart}
          counts="apart"
          caption="Study and shop booked to the assembly itself"
          main={page.parts.length === 0}
        />
      </Section>
    )}
    {page.feed && (
      <p class="legend" data-pagefind-ignore>
        Its newest days as a feed: <a href="feed.xml">Atom</a> or <a href="feed.json">JSON</a>.
      </p>
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
