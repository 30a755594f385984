import type { HoursChart as ChartView } from "../../src/present/pages/views/hours-chart.ts";

/** Hours to date over the calendar, with a triangle where an amendment was made. */
export function HoursChart({ of }: { of: ChartView }) {
  return (
    <figure class="chart">
      <svg class="plot" height="260" role="img" aria-labelledby="chart-title chart-desc">
        <title id="chart-title">Hours to date</title>
        <desc id="chart-desc">{of.summary} The table by month holds the same numbers.</desc>
        {of.levels.map(({ y, label }) => (
          <>
            <line class="grid" x1="0" x2="100%" y1={y} y2={y} />
            <text class="level" x="0" y={y} dy="-4">
              {label}
            </text>
          </>
        ))}
        <svg
          viewBox="0 0 1000 1000"
          preserveAspectRatio="none"
          width="100%"
          height="100%"
          aria-hidden="true"
        >
          <polyline points={of.line} />
        </svg>
        {of.months.map(({ x, label, late }) => (
          <>
            <line class="tick" x1={x} x2={x} y1="100%" y2="98%" />
            {label !== undefined && (
              <svg x={x} y="100%" overflow="visible" aria-hidden="true">
                <text y="18" text-anchor={late ? "end" : "start"}>
                  {label}
                </text>
              </svg>
            )}
          </>
        ))}
        {of.revisions.map(({ x, y }) => (
          <svg x={x} y={y} overflow="visible" aria-hidden="true">
            <path class="revision" d="M0-16l6 11h-12z" />
          </svg>
        ))}
      </svg>
      <figcaption>
        Hours to date by calendar day.
        {of.revisions.length > 0 && " A triangle marks a day on which an earlier one was amended."}
      </figcaption>
    </figure>
  );
}
