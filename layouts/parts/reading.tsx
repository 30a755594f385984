import type { ReadingView } from "../../src/present/pages/views/reading-view.ts";
import { FigureOf } from "./figure-of.tsx";
import { MeasurementStrip } from "./measurement-strip.tsx";
import { StruckLines } from "./struck.tsx";
import { Joined, Words } from "./words.tsx";

/** The verdict in words, with a sign that does not need colour. */
export function Verdict({ of }: { of: ReadingView }) {
  return <span class={`verdict ${of.standing.replaceAll(" ", "-")}`}>{of.verdict}</span>;
}

/** The values as typed; those outside with how far. */
export function Values({ of }: { of: ReadingView }) {
  return (
    <Joined
      by=", "
      of={of.values.map(({ text, out, excess }) => (
        <span class={out ? "value out" : "value"}>
          {text}
          {excess !== undefined && ` (${excess})`}
        </span>
      ))}
    />
  );
}

/** One reading: what it says first, the strip beside it, the evidence below. */
export function Reading({ of, dated = false }: { of: ReadingView; dated?: boolean }) {
  return (
    <article class="reading" id={of.anchor}>
      <header>
        <h3>{of.what}</h3>
        <p>
          <Joined
            by=", "
            of={[of.at, of.step && <Words of={of.step} />, dated && <Words of={of.day} />]}
          />
        </p>
        <p class="values">
          <Values of={of} />
        </p>
        <Verdict of={of} />
      </header>
      {of.strip && <MeasurementStrip of={of.strip} />}
      <StruckLines of={of.struck} />
      <p class="evidence">
        <Joined
          by="; "
          of={[
            of.figure && <FigureOf of={of.figure} />,
            of.limits !== undefined && of.rule && (
              <>
                <Words of={of.rule} />: {of.limits}
              </>
            ),
            of.source,
            of.precedence && (
              <>
                used in place of <Words of={of.precedence.over} />: {of.precedence.why}
              </>
            ),
            of.instrument !== undefined && `with ${of.instrument}`,
            of.drag,
            of.assurance,
            of.deviation && (
              <>
                deviation <Words of={of.deviation} />
                {of.undecided && ", undecided"}
              </>
            ),
            of.supersedes && (
              <>
                replaces <Words of={of.supersedes} />
              </>
            ),
            of.supersededBy && (
              <>
                replaced by <Words of={of.supersededBy} />
              </>
            ),
          ]}
        />
      </p>
    </article>
  );
}
