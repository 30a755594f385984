import type { DayStrip as DayStripView } from "../../src/present/pages/views/day-strip.ts";

const lane = 18;

// A stroke an hour, in a frame of 24 by 9; every sixth is longer.
const ticks = Array.from({ length: 25 }, (_, hour) => `M${hour} 0v${hour % 6 === 0 ? 9 : 4}`).join(
  "",
);

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
      <svg
        viewBox="0 0 24 9"
        preserveAspectRatio="none"
        y={base}
        width="100%"
        height="9"
        aria-hidden="true"
      >
        <path class="ticks" d={ticks} />
      </svg>
      {hours.map(({ x, label }, index) => (
        <text
          x={x}
          y={base + 21}
          text-anchor={index === 0 ? "start" : index === hours.length - 1 ? "end" : "middle"}
        >
          {label}
        </text>
      ))}
    </svg>
  );
}
