import type { LayoutView } from "../../src/present/pages/views/layout-view.ts";
import { ClecoMark } from "./cleco-mark.tsx";
import { CutOutDrawing } from "./cut-out-drawing.tsx";
import { RowDrawing } from "./row-drawing.tsx";
import { Table } from "./table.tsx";
import { WordList, Words } from "./words.tsx";

/** A row or a cut-out to be marked out: words, drawing, checks, and the numbers as tables. */
export function Layout({ of }: { of: LayoutView }) {
  const { anchor, drawing, cleco } = of;
  return (
    <article class="layout" id={anchor} aria-labelledby={`${anchor}-head`}>
      <h3 id={`${anchor}-head`}>
        {of.number}. {of.title}
      </h3>
      {of.over.length > 0 && (
        <p class="over">
          {of.over.map((each) => (
            <span>
              <Words of={each} />
            </span>
          ))}
        </p>
      )}
      <p>{of.summary}</p>
      {of.note !== undefined && <p>{of.note}</p>}
      {of.trouble !== undefined && <p class="wants">Cannot be laid out: {of.trouble}.</p>}
      {drawing && (
        <figure data-pagefind-ignore>
          {drawing.kind === "row" ? (
            <RowDrawing of={drawing} id={anchor} says={of.summary} />
          ) : (
            <CutOutDrawing of={drawing} id={anchor} says={of.summary} />
          )}
          <figcaption>
            {cleco && (
              <span class="key">
                <svg viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
                  <ClecoMark colour={cleco.colour} />
                </svg>
                {cleco.legend}
              </span>
            )}
            {of.keptOut.map((each) => (
              <span class="key">{each}</span>
            ))}
            <small>{of.caption}</small>
          </figcaption>
        </figure>
      )}
      {of.templates.length > 0 && (
        <p class="full-size">
          <strong>Full size, to print:</strong> <WordList of={of.templates} />. Print at 100 %, and
          measure the bar before use.
        </p>
      )}
      {of.checks.length > 0 && (
        <ul class="checks">
          {of.checks.map((check) => (
            <li>
              <p>
                {check.what} <strong>{check.value}</strong>
              </p>
              <span class={`verdict ${check.standing}`}>{check.verdict}</span>
              <p class="evidence">
                <Words of={check.rule} />: {check.limits}; {check.source}
                {check.precedence !== undefined && `; ${check.precedence}`}
              </p>
            </li>
          ))}
        </ul>
      )}
      {of.deviation && (
        <p class="legend">
          Deviation <Words of={of.deviation} /> is named for it.
        </p>
      )}
      <Numbers of={of} />
    </article>
  );
}

function Numbers({ of }: { of: LayoutView }) {
  return (
    <div class="numbers" data-pagefind-ignore>
      <details open>
        <summary>Sizes</summary>
        <Table caption={`Sizes of ${of.title}`} quiet heads={["Size", "#Value", "#mm"]}>
          {of.sizes.map(({ what, typed, millimetres }) => (
            <tr>
              <th scope="row">{what}</th>
              <td class="n">{typed}</td>
              <td class="n">{millimetres}</td>
            </tr>
          ))}
        </Table>
      </details>
      {of.places.length > 0 && (
        <details open={of.places.length <= 16}>
          <summary>Places of all {of.places.length}, from the left end</summary>
          <Table
            caption={`Places of ${of.title}`}
            quiet
            heads={[
              "#No.",
              `#From left, ${of.unit}`,
              ...(of.taped ? ["#On a tape"] : []),
              `#From right, ${of.unit}`,
              "#mm",
            ]}
          >
            {of.places.map(({ number, left, tape, right, millimetres }) => (
              <tr>
                <th scope="row" class="n">
                  {number}
                </th>
                <td class="n">{left}</td>
                {of.taped && <td class="n">{tape}</td>}
                <td class="n">{right}</td>
                <td class="n">{millimetres}</td>
              </tr>
            ))}
          </Table>
        </details>
      )}
    </div>
  );
}
