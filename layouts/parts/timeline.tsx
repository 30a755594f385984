import type { MonthRuler } from "../../src/present/pages/views/month-ruler.ts";
import type { TimelineRow } from "../../src/present/pages/views/timeline-row.ts";
import { Thumbnail } from "./photo.tsx";

/** Days on a vertical dimension line, with breaks where nothing was done. */
export function Timeline({
  of,
  sum = false,
}: {
  of: readonly TimelineRow[];
  /** Whether the days add up to the figures of the page. */
  sum?: boolean;
}) {
  const mark = (counts: "build" | "apart") =>
    sum ? { "data-part": counts } : { "data-figure": counts };
  return (
    <ol class="days" data-sum={sum || undefined} data-main={sum || undefined}>
      {of.map((row) =>
        row.kind === "gap" ? (
          <li class="gap">
            <svg viewBox="0 0 24 40" width="24" height="40" aria-hidden="true">
              <path d="M12 0v11L3 17l18 6-9 6v11" />
            </svg>
            <span>{row.text}</span>
          </li>
        ) : (
          <li
            id={row.toDate === undefined ? undefined : `to-${row.date.slice(8)}`}
            data-row
            data-private={row.href === undefined || undefined}
          >
            <time datetime={row.date}>{row.label}</time>
            <svg class="length" height="22" aria-hidden="true">
              <line class="ink" x1="0" x2={row.length} y1="11" y2="11" />
              <line class="ink" x1={row.length} x2={row.length} y1="5" y2="17" />
              <text x={row.length} y="16.5" dx="8" {...mark("build")}>
                {row.hours}
              </text>
            </svg>
            <div>
              {row.marks?.map((mark) => (
                <p>
                  <strong>{mark}</strong>
                </p>
              ))}
              <h3>{row.href === undefined ? row.title : <a href={row.href}>{row.title}</a>}</h3>
              {row.excerpt !== undefined && <p class="excerpt">{row.excerpt}</p>}
              <p>
                <span class="unseen" data-figure="build">
                  {row.hours} hours
                </span>
                {row.apart !== undefined && (
                  <span {...mark("apart")}>{row.apart} study and shop</span>
                )}
                {row.toDate !== undefined && <span data-running>{row.toDate} to date</span>}
                {row.assemblies.length > 0 && <span>{row.assemblies.join(", ")}</span>}
                {row.photographs !== undefined && <span>{row.photographs}</span>}
                {row.deviations !== undefined && <span class="red">{row.deviations}</span>}
                {row.findings !== undefined && <span class="wants">{row.findings}</span>}
              </p>
            </div>
            {row.picture && <Thumbnail of={row.picture} />}
          </li>
        ),
      )}
    </ol>
  );
}

/** Months as rulers, one tick a day. */
export function Rulers({ of }: { of: readonly MonthRuler[] }) {
  return (
    <ol class="rulers" data-sum data-main>
      {of.map(({ month, hours, days, ticks }) => (
        <li data-row>
          <a href={month.href}>{month.text}</a>
          <svg viewBox="0 0 310 100" preserveAspectRatio="none" height="30" aria-hidden="true">
            <path d={`M0 100h310${ticks}`} />
          </svg>
          <span>{days}</span>
          <b data-part="build">{hours}</b>
        </li>
      ))}
    </ol>
  );
}
