import type {
  AlongDimension,
  RowDrawing as RowDrawingView,
} from "../../src/present/pages/views/row-drawing.ts";
import { ClecoMark } from "./cleco-mark.tsx";

/** A row of fasteners: the piece, its marks, and the dimensions around it. */
export function RowDrawing({ of, id, says }: { of: RowDrawingView; id: string; says: string }) {
  const { top, bottom, line, edges } = of;
  const height = bottom - top;
  return (
    <svg
      class={of.across.length > 0 ? "row-drawing sided" : "row-drawing"}
      height={of.height}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>Dimensioned drawing</title>
      <desc id={`${id}-desc`}>{says} The tables hold the same numbers.</desc>
      <rect class="metal" x="0" width="100%" y={top} height={height} />
      {of.keepOuts.map(({ clear, x, width }) => (
        <>
          {clear && <rect class="clear" x={clear.x} width={clear.width} y={top} height={height} />}
          <rect class="kept-out" x={x} width={width} y={top} height={height} />
        </>
      ))}
      <line class={edges.far ? "rim" : "open"} x1="0" x2="100%" y1={top} y2={top} />
      <line class={edges.near ? "rim" : "open"} x1="0" x2="100%" y1={bottom} y2={bottom} />
      <line class="rim" x1="0" x2="0" y1={top} y2={bottom} />
      <line class="rim" x1="100%" x2="100%" y1={top} y2={bottom} />
      <line class="centre" x1="0" x2="100%" y1={line} y2={line} />
      {of.breaks.map((x) => (
        <svg x={x} y={top} overflow="visible" aria-hidden="true">
          <path class="gap-in-sheet" d={`M-5-6v${height + 12}h10v-${height + 12}z`} />
          <path class="torn" d={torn(-5, height)} />
          <path class="torn" d={torn(5, height)} />
        </svg>
      ))}
      {of.along.flatMap(({ from, to, y }) =>
        [from, to].map((x) => <line class="extension" x1={x} x2={x} y1={bottom + 4} y2={y + 4} />),
      )}
      {of.fasteners.map(({ x, number }) => (
        <svg x={x} y={line} overflow="visible" aria-hidden="true">
          <ClecoMark colour={of.colour} />
          {number !== undefined && (
            <text y={top - line - 9} text-anchor="middle">
              {number}
            </text>
          )}
        </svg>
      ))}
      {of.keepOuts.map(({ tag, middle }) => (
        <text class="haloed" x={middle} y={top + 16} text-anchor="middle">
          {tag}
        </text>
      ))}
      {of.along.map((each) => (
        <Along of={each} />
      ))}
      {of.across.map(({ from, to, text, out }) => (
        <svg x="100%" y={from} overflow="visible" aria-hidden="true">
          <path class="extension" d={`M4 0h12M4 ${to - from}h12`} />
          <path class="dimension" d={`M10 0v${to - from}`} />
          <path class="arrowhead" d={`M10 0l-3 9h6zM10 ${to - from}l-3-9h6z`} />
          <text class={out ? "haloed out" : "haloed"} x="17" y={(to - from) / 2 + (out ? -3 : 4)}>
            {text}
          </text>
          {out && (
            <text class="haloed out" x="17" y={(to - from) / 2 + 11}>
              out
            </text>
          )}
        </svg>
      ))}
    </svg>
  );
}

/** Zigzag of a break, from above the piece to below it. */
function torn(x: number, height: number): string {
  const middle = height / 2;
  return `M${x}-8V${middle - 9}l-5 5 10 8-5 5V${height + 8}`;
}

/** A dimension along the row: arrows between its ends, or from outside where it is short. */
function Along({ of: { from, to, middle, y, text, out, place } }: { of: AlongDimension }) {
  const words = out ? "haloed out" : "haloed";
  if (place === "between") {
    return (
      <>
        <line class="dimension" x1={from} x2={to} y1={y} y2={y} />
        <svg x={from} y={y} overflow="visible" aria-hidden="true">
          <path class="arrowhead" d="M0 0l9-3v6z" />
        </svg>
        <svg x={to} y={y} overflow="visible" aria-hidden="true">
          <path class="arrowhead" d="M0 0l-9-3v6z" />
        </svg>
        <text class={words} x={middle} y={y + 4} text-anchor="middle">
          {text}
        </text>
      </>
    );
  }
  const right = place === "right";
  return (
    <>
      <line class="dimension" x1={from} x2={to} y1={y} y2={y} />
      <svg x={from} y={y} overflow="visible" aria-hidden="true">
        <path class="arrowhead" d="M0 0l-9-3v6z" />
        <path class="dimension" d={right ? "M-11 0h11" : "M-18 0h18"} />
        {!right && (
          <text class={words} x="-22" y="4" text-anchor="end">
            {text}
          </text>
        )}
      </svg>
      <svg x={to} y={y} overflow="visible" aria-hidden="true">
        <path class="arrowhead" d="M0 0l9-3v6z" />
        <path class="dimension" d={right ? "M0 0h18" : "M0 0h11"} />
        {right && (
          <text class={words} x="22" y="4">
            {text}
          </text>
        )}
      </svg>
    </>
  );
}
