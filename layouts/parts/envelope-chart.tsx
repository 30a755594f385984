import type { EnvelopeChart as ChartView } from "../../src/present/pages/views/envelope-chart.ts";

/** Weight against centre of gravity, the limits as an outline, each case with its number. */
export function EnvelopeChart({ of }: { of: ChartView }) {
  return (
    <figure class="chart">
      <svg class="plot" height="360" role="img" aria-labelledby="chart-title chart-desc">
        <title id="chart-title">Weight and centre of gravity</title>
        <desc id="chart-desc">{of.summary} The tables hold the same numbers.</desc>
        <svg
          viewBox="0 0 1000 1000"
          preserveAspectRatio="none"
          width="100%"
          height="100%"
          aria-hidden="true"
        >
          {of.area !== undefined && <polygon class="band" points={of.area} />}
          {of.lines.map((points) => (
            <polyline points={points} />
          ))}
        </svg>
        {of.weights.map(({ top, label }) => (
          <>
            <line class="grid" x1="0" x2="100%" y1={top} y2={top} />
            <text x="4" y={top} dy="-4">
              {label}
            </text>
          </>
        ))}
        {of.arms.map(({ left, label, end }) => (
          <>
            <line class="tick" x1={left} x2={left} y1="100%" y2="98%" />
            <svg x={left} y="100%" overflow="visible" aria-hidden="true">
              <text y="18" text-anchor={end}>
                {label}
              </text>
            </svg>
          </>
        ))}
        {of.marks.map(({ left, top, label, kind, late }) => (
          <svg x={left} y={top} overflow="visible" aria-hidden="true">
            <path class={`loading ${kind === "outside" ? "beyond" : kind}`} d={shapes[kind]} />
            {label !== "" && (
              <text class="value" x={late ? -9 : 9} y="-6" text-anchor={late ? "end" : "start"}>
                {label}
              </text>
            )}
          </svg>
        ))}
      </svg>
      <figcaption>
        Upwards the weight ({of.units.weight}), to the right the centre of gravity aft of the datum
        ({of.units.arm}). A dot is a loading case with its number, a cross one outside the limits,
        the square E the empty aircraft.
      </figcaption>
    </figure>
  );
}

const shapes = {
  inside: "M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z",
  outside: "M-6-6l12 12M6-6l-12 12",
  empty: "M-5-5h10v10h-10z",
} as const;
