import type { DayStrip as DayStripView } from "../../src/present/pages/views/day-strip.ts";

const lane = 18;

/** Midnight to midnight, with the sessions on it. The table below it says the same. */
export function DayStrip({ of: { hours, bars, lanes } }: { of: DayStripView }) {
  const base = 16 + lanes * lane;
  return (
    <svg class="strip" height={base + 26} aria-hidden="true">
      {bars.map(({ number, x, width, middle, kind, lane: row, cut }) => (
        <>
          <rect
            class={`bar ${kind}${cut ? " cut" : ""}`}
            x={x}
            width={width}
            y={base - (row + 1) * lane}
            height={lane - 4}
          />
          <text x={middle} y={base - (row + 1) * lane - 4} text-anchor="middle">
            {number}
          </text>
        </>
      ))}
      <line class="base" x1="0" x2="100%" y1={base} y2={base} />
      {hours.map(({ x, label }) => (
        <line class="tick" x1={x} x2={x} y1={base} y2={base + (label === undefined ? 4 : 9)} />
      ))}
      {hours
        .filter(({ label }) => label !== undefined)
        .map(({ x, label }, index, all) => (
          <text
            x={x}
            y={base + 21}
            text-anchor={index === 0 ? "start" : index === all.length - 1 ? "end" : "middle"}
          >
            {label}
          </text>
        ))}
    </svg>
  );
}
