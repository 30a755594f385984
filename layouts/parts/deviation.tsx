import type { DeviationView } from "../../src/present/pages/views/deviation-view.ts";
import { Fact, Words } from "./words.tsx";

/** What departs from the drawings, in red pencil inside a revision cloud. */
export function Deviation({ of, dated = false }: { of: DeviationView; dated?: boolean }) {
  return (
    <article class="cloud" id={of.anchor}>
      <h3>
        {of.id} <small>from {of.drawing}</small>
      </h3>
      <dl class="facts">
        <Fact label="planned">
          <s>{of.planned}</s>
        </Fact>
        <Fact label="done">
          <strong>{of.done}</strong>
        </Fact>
        <Fact label="why">{of.why}</Fact>
        <Fact label="disposition">
          {of.disposition ? (
            <>
              {of.disposition.text}
              <small>
                {of.disposition.by !== undefined && `accepted by ${of.disposition.by}, `}
                <Words of={of.disposition.day} />
              </small>
            </>
          ) : (
            <span class="wants">undecided</span>
          )}
        </Fact>
        {of.step && (
          <Fact label="step">
            <Words of={of.step} />
          </Fact>
        )}
        {dated && (
          <Fact label="found">
            <Words of={of.day} />
          </Fact>
        )}
      </dl>
    </article>
  );
}
