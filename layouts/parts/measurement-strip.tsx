import type { MeasurementStrip as StripView } from "../../src/present/pages/views/measurement-strip.ts";

/** The allowed band, the limits and the values. The words beside it say the same. */
export function MeasurementStrip({ of, bare = false }: { of: StripView; bare?: boolean }) {
  const { lower, upper, nominal, band, outside, marks } = of;
  return (
    <svg class={bare ? "gauge bare" : "gauge"} height={bare ? 26 : 58} aria-hidden="true">
      <rect class="band" x={band.x} width={band.width} y="18" height="10" />
      {outside.map(({ x, width }) => (
        <rect class="outside" x={x} width={width} y="18" height="10" />
      ))}
      <line class="base" x1="0" x2="100%" y1="28" y2="28" />
      {nominal !== undefined && <line class="nominal" x1={nominal} x2={nominal} y1="8" y2="40" />}
      {[lower, upper].map(
        (limit) =>
          limit && (
            <>
              <line class="limit" x1={limit.x} x2={limit.x} y1="12" y2="40" />
              {!bare && (
                <text x={limit.x} y="54" text-anchor="middle">
                  {limit.text}
                </text>
              )}
            </>
          ),
      )}
      {marks.map(({ x, out, spread, label }) => (
        <>
          {spread && <rect class="spread" x={spread.x} width={spread.width} y="26.5" height="3" />}
          <use class={out ? "red" : undefined} href={out ? "#out" : "#in"} x={x} />
          {label && !bare && (
            <text
              class={out ? "value out" : "value"}
              x={x}
              y="11"
              dx={label.anchor === "end" ? 4 : label.anchor === "start" ? -4 : 0}
              text-anchor={label.anchor}
            >
              {label.text}
            </text>
          )}
        </>
      ))}
    </svg>
  );
}
