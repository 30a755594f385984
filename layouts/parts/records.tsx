import type { AmendmentView } from "../../src/present/pages/day-page.ts";
import type { CureView } from "../../src/present/pages/views/cure-view.ts";
import type { HoldView } from "../../src/present/pages/views/hold-view.ts";
import type { InspectionView } from "../../src/present/pages/views/inspection-view.ts";
import type { SessionRow } from "../../src/present/pages/views/session-row.ts";
import type { SquawkView } from "../../src/present/pages/views/squawk-view.ts";
import { StruckLines } from "./struck.tsx";
import { Table } from "./table.tsx";
import { Joined, WordList, Words } from "./words.tsx";

/** Sessions as rows; their hours add up to the foot. */
export function Sessions({
  of,
  hours,
  caption,
  dated = false,
}: {
  of: readonly SessionRow[];
  hours: { readonly build: string; readonly apart?: string };
  caption: string;
  dated?: boolean;
}) {
  return (
    <Table
      caption={caption}
      quiet
      sum
      main
      heads={[
        "No.",
        ...(dated ? ["Day"] : []),
        "When",
        dated ? "Stage and notes" : "On",
        "Who",
        "Kind",
        "#Hours",
      ]}
      foot={
        <>
          <tr>
            <th scope="row" colSpan={dated ? 6 : 5}>
              building
            </th>
            <td class="n" data-total="build">
              {hours.build}
            </td>
          </tr>
          {hours.apart !== undefined && (
            <tr>
              <th scope="row" colSpan={dated ? 6 : 5}>
                study and shop, apart
              </th>
              <td class="n" data-total="apart">
                {hours.apart}
              </td>
            </tr>
          )}
        </>
      }
    >
      {of.map((row) => (
        <tr
          id={dated ? undefined : row.anchor}
          data-row
          data-entry={!dated || undefined}
          data-private={row.day.href === undefined || undefined}
          data-step={row.step?.text}
        >
          <td class="no">{row.number}</td>
          {dated && (
            <td class="nb">
              <Words of={row.day} />
            </td>
          )}
          <td class="nb" data-clock>
            {row.when ?? "not said"}
          </td>
          <td>
            {row.step && !dated && (
              <>
                <span class="nb">
                  <Words of={row.step} />
                </span>{" "}
                {row.stepTitle}
                <br />
              </>
            )}
            {!dated && <Words of={row.assembly} />}
            {row.stage !== undefined && <span class="stage">{row.stage}</span>}
            {row.lots.length > 0 && <small>used {row.lots.join("; ")}</small>}
            {row.note !== undefined && <small>{row.note}</small>}
            <StruckLines of={row.struck} />
          </td>
          <td>{row.who.join(", ")}</td>
          <td>{row.kind}</td>
          <td class="n" data-part={row.of}>
            {row.hours}
            {row.product !== undefined && <small data-product>{row.product}</small>}
          </td>
        </tr>
      ))}
    </Table>
  );
}

/** Waits, each with the line from mixing to ready. */
export function Cures({ of }: { of: readonly CureView[] }) {
  return (
    <>
      {of.map((cure) => (
        <article class="cure">
          <h3>
            {cure.over ? "Was to wait" : "Waits"} until {cure.ready}
          </h3>
          <svg class="wait" height="26" aria-hidden="true">
            <line class="base" x1="0" x2="100%" y1="18" y2="18" />
            <rect class="waited" x="0" width="100%" y="10" height="8" />
            <line class="limit" x1="0.5" x2="0.5" y1="4" y2="25" />
            {cure.closedAt !== undefined && (
              <line class="tick" x1={cure.closedAt} x2={cure.closedAt} y1="6" y2="22" />
            )}
            <line class="limit" x1="100%" x2="100%" y1="4" y2="25" />
          </svg>
          <p class="evidence">
            <Joined
              by="; "
              of={[
                <>
                  <Words of={cure.step} /> {cure.stepTitle}
                </>,
                `mixed ${cure.mixed}`,
                cure.closed !== undefined && `joint closed ${cure.closed}`,
                `${cure.wait} in all`,
                cure.lot,
                cure.source !== undefined && `says ${cure.source}`,
                cure.note,
              ]}
            />
          </p>
          {cure.brokenBy.length > 0 && (
            <p class="wants">
              Worked on too early: <WordList of={cure.brokenBy} />
            </p>
          )}
        </article>
      ))}
    </>
  );
}

/** Things fastened only for now. */
export function Holds({ of, caption }: { of: readonly HoldView[]; caption: string }) {
  return (
    <Table caption={caption} quiet heads={["Hold", "Step", "With", "Put in", "Released"]}>
      {of.map((hold) => (
        <tr>
          <th scope="row">{hold.id}</th>
          <td class="nb">
            <Words of={hold.step} />
          </td>
          <td>{hold.text}</td>
          <td>
            <Words of={hold.day} />
          </td>
          <td>{hold.released ? <Words of={hold.released} /> : <span class="wants">open</span>}</td>
        </tr>
      ))}
    </Table>
  );
}

/** Open items and what became of them. */
export function Squawks({ of, caption }: { of: readonly SquawkView[]; caption: string }) {
  return (
    <Table caption={caption} quiet heads={["Squawk", "Found", "On", "Owner", "What was done"]}>
      {of.map((squawk) => (
        <tr id={squawk.anchor}>
          <th scope="row">{squawk.id}</th>
          <td>
            {squawk.found}
            <small>
              <Words of={squawk.day} />
            </small>
          </td>
          <td>{squawk.on && <Words of={squawk.on} />}</td>
          <td>{squawk.owner}</td>
          <td>
            {squawk.fixed && (
              <>
                {squawk.fixed.text}
                <small>
                  <Words of={squawk.fixed.day} />
                </small>
              </>
            )}
            {squawk.closed ? (
              <small>
                closed <Words of={squawk.closed.day} />
                {squawk.closed.by !== undefined && ` by ${squawk.closed.by}`}
              </small>
            ) : (
              <span class="wants">{squawk.standing}</span>
            )}
          </td>
        </tr>
      ))}
    </Table>
  );
}

/** Who looked at what, with the stamp of how it came out. */
export function Inspections({
  of,
  dated = false,
}: {
  of: readonly InspectionView[];
  dated?: boolean;
}) {
  return (
    <>
      {of.map((each) => (
        <article class="inspection">
          <div class={`stamp ${each.result}`}>
            <b>{each.result === "clear" ? "Looked at: clear" : "Looked at: held"}</b>
            <span>{each.stamped}</span>
          </div>
          <div>
            <h3>{each.look}</h3>
            <p>
              <Words of={each.step} /> {each.stepTitle}
            </p>
            <dl class="facts">
              <div>
                <dt>by</dt>
                <dd>
                  {each.by}
                  {each.standing !== undefined && <small>{each.standing}</small>}
                </dd>
              </div>
              <div>
                <dt>open to view</dt>
                <dd>{each.open}</dd>
              </div>
              <div>
                <dt>findings</dt>
                <dd>{each.findings}</dd>
              </div>
              {dated && (
                <div>
                  <dt>day</dt>
                  <dd>
                    <Words of={each.day} />
                  </dd>
                </div>
              )}
            </dl>
          </div>
        </article>
      ))}
    </>
  );
}

/** Corrections as a drawing's revision block: the old value struck, never removed. */
export function Amendments({
  of,
  caption,
  other,
}: {
  of: readonly AmendmentView[];
  caption: string;
  /** What the other day is: the one corrected, or the one that corrects. */
  other: string;
}) {
  return (
    <Table caption={caption} heads={["Value", "Was", "Now", "Why", other]} class="revisions">
      {of.map((each) => (
        <tr>
          <th scope="row">
            <code>{each.field}</code>
          </th>
          <td>
            <s>{each.was}</s>
          </td>
          <td>
            <strong>{each.now}</strong>
          </td>
          <td>{each.why}</td>
          <td>
            <Words of={each.day} />
          </td>
        </tr>
      ))}
    </Table>
  );
}
