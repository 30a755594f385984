import type { RunChart as ChartView } from "../../src/present/pages/views/run-chart.ts";

/** Values against one rule over the calendar. The tables below hold the same numbers. */
export function RunChart({ of }: { of: ChartView }) {
  const { band, spans, limits, marks, struck, months, summary } = of;
  return (
    <figure class="chart">
      <svg class="plot" height="220" role="img" aria-labelledby="run-title run-desc">
        <title id="run-title">Values over time</title>
        <desc id="run-desc">{summary} The tables of readings hold the same values.</desc>
        {band && <rect class="band" x="0" width="100%" y={band.y} height={band.height} />}
        {spans.map(({ x, y, height }) => (
          <svg x={x} overflow="visible" aria-hidden="true">
            <rect class="band" x="-5" width="10" y={y} height={height} />
          </svg>
        ))}
        {limits.map(({ y, text, above }) => (
          <>
            <line class="limit" x1="0" x2="100%" y1={y} y2={y} />
            <text x="100%" y={y} dy={above ? -6 : 16} text-anchor="end">
              {text}
            </text>
          </>
        ))}
        {marks.map(({ x, y, out, replaced }) =>
          out ? (
            <svg x={x} y={y} overflow="visible" aria-hidden="true">
              <use class={replaced ? "again" : "red"} href="#out" y="-33" />
            </svg>
          ) : (
            <circle class={replaced ? "again" : "mark"} cx={x} cy={y} r="3.5" />
          ),
        )}
        {struck.map(({ x, y }) => (
          <svg x={x} y={y} overflow="visible" aria-hidden="true">
            <path class="struck" d="M-4-4l8 8m0-8l-8 8" />
          </svg>
        ))}
        {months.map(({ x, label }) => (
          <>
            <line class="tick" x1={x} x2={x} y1="100%" y2="97%" />
            {label !== undefined && (
              <svg x={x} y="100%" overflow="visible" aria-hidden="true">
                <text y="18">{label}</text>
              </svg>
            )}
          </>
        ))}
      </svg>
      <figcaption>
        Each value on its day{band || spans.length > 0 ? "; the shaded part is allowed" : ""}. A
        triangle lies outside; what is hollow was measured again.
        {struck.length > 0 && " A cross is a value that was amended since."}
        {struck.some(({ beyond }) => beyond) && " One at the edge lies beyond it."}
      </figcaption>
    </figure>
  );
}
