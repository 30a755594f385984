import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

export const { data, render } = template("about", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.summary}</p>
    <Section id="people" title="People" figure={`${page.people.length}`}>
      <Table caption="Who works on it" quiet heads={["Name", "Role"]}>
        {page.people.map(({ name, says }) => (
          <tr>
            <th scope="row">{name}</th>
            <td>{says}</td>
          </tr>
        ))}
      </Table>
    </Section>
    <Section id="not" title="What this is not">
      <div class="prose text">
        <p>
          It is not instructions. What was done here was done to the drawings and the manual of this
          one aircraft, by people with their own training and help. A picture of a rivet row is not
          a reason to drive one the same way.
        </p>
        <p>
          It is not a certificate, and nothing in it is a signature. Looks at the work are told as
          what somebody saw that day, and what they found. {shell.caution}
        </p>
        <p>
          Limits are printed with their source: <Words of={page.limits} />. A program compares
          numbers; it has not seen the part.
        </p>
      </div>
    </Section>
    <Section id="safety" title="Before you try any of it">
      <div class="prose text">
        <ul>
          <li>
            Sealants, primers and solvents: the maker's safety data sheet first, then air and
            gloves.
          </li>
          <li>Drills, rivet guns and compressed air: eyes and ears before anything else.</li>
          <li>
            Torque, edge distance, bend radius, pitch: from the drawing of the part in front of you.
          </li>
          <li>Whatever carries a load in flight: somebody else looks at it before it is closed.</li>
        </ul>
      </div>
    </Section>
    <Section id="badge" title="A badge for other pages">
      <p class="badge" data-pagefind-ignore>
        <a href={page.badge.src}>
          <img
            src={page.badge.src}
            width={page.badge.width}
            height={page.badge.height}
            alt={page.badge.alt}
            loading="lazy"
          />
        </a>
      </p>
      <div class="prose text" data-pagefind-ignore>
        <p>
          The hours of this build as one small drawing. It is drawn anew whenever these pages are,
          asks nobody for anything, and counts no readers. To show it elsewhere, copy this into the
          other page; or save the drawing and put it there as it is today.
        </p>
        <p>
          <code>{page.badge.code}</code>
        </p>
      </div>
    </Section>
    <Section id="site" title="About these pages">
      <div class="prose text">
        <p>
          They come from one place, ask nobody else for anything and work without scripts, the
          search excepted. They set nothing in your browser, but for one number if you press the
          button on the page of changes. {shell.editionNote}
        </p>
        <p>
          <Words of={page.record} />
        </p>
      </div>
    </Section>
  </Sheet>
));
