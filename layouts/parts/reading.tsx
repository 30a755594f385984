import type { ReadingView } from "../../src/present/pages/views/reading-view.ts";
import { MeasurementStrip } from "./measurement-strip.tsx";
import { Words } from "./words.tsx";

/** The verdict in words, with a sign that does not need colour. */
export function Verdict({ of }: { of: ReadingView }) {
  return <span class={`verdict ${of.standing.replaceAll(" ", "-")}`}>{of.verdict}</span>;
}

/** The values as typed; those outside with how far. */
export function Values({ of }: { of: ReadingView }) {
  return (
    <>
      {of.values.map(({ text, out, excess }, index) => (
        <>
          {index > 0 && ", "}
          <span class={out ? "value out" : "value"}>
            {text}
            {excess !== undefined && ` (${excess})`}
          </span>
        </>
      ))}
    </>
  );
}

/** One reading: what it says first, the strip beside it, the evidence below. */
export function Reading({ of, dated = false }: { of: ReadingView; dated?: boolean }) {
  return (
    <article class="reading" id={of.anchor}>
      <header>
        <h3>{of.what}</h3>
        <p>
          {of.at}
          {of.step && (
            <>
              {of.at !== undefined && ", "}
              <Words of={of.step} />
            </>
          )}
          {dated && (
            <>
              {", "}
              <Words of={of.day} />
            </>
          )}
        </p>
        <p class="values">
          <Values of={of} />
        </p>
        <Verdict of={of} />
      </header>
      {of.strip && <MeasurementStrip of={of.strip} />}
      <p class="evidence">
        {of.limits !== undefined && of.rule && (
          <span>
            <Words of={of.rule} />: {of.limits}
          </span>
        )}
        {of.source !== undefined && <span>{of.source}</span>}
        {of.instrument !== undefined && <span>with {of.instrument}</span>}
        {of.drag !== undefined && <span>friction drag {of.drag} added to both limits</span>}
        {of.assurance !== undefined && <span>{of.assurance}</span>}
        {of.deviation && (
          <span>
            deviation <Words of={of.deviation} />
            {of.undecided && ", undecided"}
          </span>
        )}
        {of.supersedes && (
          <span>
            replaces <Words of={of.supersedes} />
          </span>
        )}
        {of.supersededBy && (
          <span>
            replaced by <Words of={of.supersededBy} />
          </span>
        )}
      </p>
    </article>
  );
}
