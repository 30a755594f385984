import type { OutcomeCount, OutcomeGroup } from "../../src/present/pages/views/outcome-counts.ts";
import type { ReadingView } from "../../src/present/pages/views/reading-view.ts";
import { FigureOf } from "./figure-of.tsx";
import { MeasurementStrip } from "./measurement-strip.tsx";
import { Values, Verdict } from "./reading.tsx";
import { StruckLines } from "./struck.tsx";
import { Table } from "./table.tsx";
import { Words } from "./words.tsx";

/** One cell for each outcome, each leading to its readings. */
export function CountCells({ of }: { of: readonly OutcomeCount[] }) {
  return (
    <>
      {of.map(({ count, wants }) => (
        <td class={wants ? "n red" : "n"}>
          <Words of={count} />
        </td>
      ))}
    </>
  );
}

/** The readings of a rule, one table for each outcome. */
export function OutcomeTables({
  of,
  limitsToo,
}: {
  of: readonly OutcomeGroup[];
  /** Whether each row says its limits, because they are not all the same. */
  limitsToo: boolean;
}) {
  return (
    <>
      <p class="legend">Newest first; the band on each strip runs from limit to limit.</p>
      {of.map(({ anchor, title, readings }) => (
        <div id={anchor}>
          <h3 class="small">{title}</h3>
          <Table
            class="gauges"
            caption={title}
            quiet
            heads={["Day", "Where", "Value", "Strip", "Verdict", "Measured with"]}
          >
            {readings.map((each) => (
              <Row of={each} limitsToo={limitsToo} />
            ))}
          </Table>
        </div>
      ))}
    </>
  );
}

function Row({ of, limitsToo }: { of: ReadingView; limitsToo: boolean }) {
  return (
    <tr>
      <td class="nb">
        <Words of={of.day} />
      </td>
      <td>
        {of.what}
        <small>
          {of.at}
          {of.step && (
            <>
              {" "}
              <Words of={of.step} />
            </>
          )}
        </small>
      </td>
      <td class="values">
        <Values of={of} />
        <StruckLines of={of.struck} />
      </td>
      <td>{of.strip && <MeasurementStrip of={of.strip} bare />}</td>
      <td>
        <Verdict of={of} />
        {of.deviation && (
          <small>
            <Words of={of.deviation} />
          </small>
        )}
        {of.supersededBy && (
          <small>
            by <Words of={of.supersededBy} />
          </small>
        )}
      </td>
      <td>
        {limitsToo && <small>{of.limits}</small>}
        {of.figure && (
          <small>
            <FigureOf of={of.figure} />
          </small>
        )}
        {of.precedence && (
          <small>
            in place of <Words of={of.precedence.over} />: {of.precedence.why}
          </small>
        )}
        {of.instrument !== undefined && <small>{of.instrument}</small>}
        {of.assurance !== undefined && <small>{of.assurance}</small>}
      </td>
    </tr>
  );
}
