import { Photo } from "./parts/photo.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Rulers, Timeline } from "./parts/timeline.tsx";
import { Tree } from "./parts/tree.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("home", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <div class="opening">
      <p class="summary">{page.summary}</p>
      <dl class="standing">
        {page.standings.map(({ figure, says, wants }) => (
          <div>
            <dt>
              <Words of={says} />
            </dt>
            <dd class={wants ? "wants" : undefined}>{figure}</dd>
          </div>
        ))}
      </dl>
    </div>
    {page.latest && (
      <Section id="latest" title="Newest sheet" figure={page.latest.day.text}>
        <div class="beside latest">
          <div>
            <h3>
              <a href={page.latest.day.href}>{page.latest.title}</a>
            </h3>
            <p>{page.latest.excerpt}</p>
            {page.latest.next.length > 0 && (
              <>
                <h4>Next</h4>
                <ul class="todo">
                  {page.latest.next.map((each) => (
                    <li>{each}</li>
                  ))}
                </ul>
              </>
            )}
          </div>
          {page.latest.photo && (
            <Photo of={page.latest.photo} sizes="(min-width: 60rem) 34rem, 92vw" first />
          )}
        </div>
      </Section>
    )}
    {page.newest && page.newest.rows.length > 0 && (
      <Section id="newest" title="The days before">
        <Timeline of={page.newest.rows} />
        <p>
          <a href={page.newest.month.href}>All of {page.newest.month.text}</a>
        </p>
      </Section>
    )}
    <Section id="months" title="Every month" figure={`${page.months.length}`}>
      <p class="legend">One tick a day, as tall as its hours of building.</p>
      <Rulers of={page.months} />
    </Section>
    <Section id="assemblies" title="Assemblies">
      <Tree of={page.assemblies} sum />
    </Section>
  </Sheet>
));
