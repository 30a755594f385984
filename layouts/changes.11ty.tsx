import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

/** The list is whole without a script; `assets/changes.js` marks what is new to this reader. */
export const { data, render } = template("changes", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">
      New sheets and corrections, by the date they were written down. The record has a feed too,
      which tells a reader's own program of each.
    </p>
    <div class="since" data-total={page.total} hidden>
      <p role="status" />
      <p>
        <button type="button">I have seen these</button>{" "}
        <button type="button" hidden>
          Forget that
        </button>
      </p>
      <p class="legend">
        If you press it, how many there are is kept in this browser until you have it forgotten. It
        stays there: it is sent to nobody, and nobody is told that you were here.
      </p>
    </div>
    {page.groups.length === 0 && <p class="empty">Nothing has been entered yet.</p>}
    {page.groups.map(({ month, text, changes }) => (
      <Section id={`in-${month}`} title={text} figure={`${changes.length}`}>
        <ul class="changes">
          {changes.map(({ date, on, sheet, says }) => (
            <li>
              <time datetime={date}>{on}</time> <Words of={sheet} /> <small>{says}</small>
            </li>
          ))}
        </ul>
      </Section>
    ))}
    <p class="legend">
      Older ones: <Words of={page.days} />.
    </p>
  </Sheet>
));
