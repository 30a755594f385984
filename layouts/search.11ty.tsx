import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

/** The form is there from the start; `assets/search.js` fills its lists and the results. */
export const { data, render } = template("search", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <search class="search" data-root={page.root} hidden>
      <form>
        <p class="field words">
          <label for="q">Words, a part number, a size</label>
          <input id="q" name="q" type="search" autocomplete="off" spellcheck={false} />
        </p>
        {[
          ["sheet", "Kind of sheet"],
          ["assembly", "Assembly"],
          ["month", "Month"],
          ["kind", "Kind of work"],
          ["finding", "Finding"],
        ].map(([name, label]) => (
          <p class="field">
            <label for={`f-${name}`}>{label}</label>
            <select id={`f-${name}`} name={name}>
              <option value="">any</option>
            </select>
          </p>
        ))}
        <p class="field">
          <label for="order">In order of</label>
          <select id="order" name="order">
            <option value="">fit</option>
            <option value="date desc">newest first</option>
            <option value="date asc">oldest first</option>
            <option value="hours desc">most hours</option>
          </select>
        </p>
        <p class="field">
          <button type="submit">Search</button>
        </p>
      </form>
      <p class="count" role="status" />
      <ol class="results" />
      <p class="more" hidden>
        <button type="button">Show more</button>
      </p>
    </search>
    <p class="empty unsearched">
      The search needs a script, which has not run. Everything is also in the lists below.
    </p>
    <Section id="by-month" title="By month" figure={`${page.months.length}`}>
      <ul class="index">
        {page.months.map(({ month, says }) => (
          <li data-row>
            <a href={month.href}>{month.text}</a> <small data-figure="build">{says}</small>
          </li>
        ))}
      </ul>
    </Section>
    <Section id="by-assembly" title="By assembly" figure={`${page.assemblies.length}`}>
      <ul class="index">
        {page.assemblies.map(({ text, href }) => (
          <li>
            <a href={href}>{text}</a>
          </li>
        ))}
      </ul>
    </Section>
  </Sheet>
));
