import type { CutOutDrawing as CutOutDrawingView } from "../../src/present/pages/views/cut-out-drawing.ts";

/** An opening in a sheet with its dimensions, to scale. */
export function CutOutDrawing({
  of,
  id,
  says,
}: {
  of: CutOutDrawingView;
  id: string;
  says: string;
}) {
  const { sheet, along, across, leader } = of;
  const [x, y] = of.centre;
  const [reach, rise] = of.reach;
  return (
    <svg
      class="cut-out-drawing"
      viewBox={`0 0 ${of.width} ${of.height}`}
      width={of.width}
      height={of.height}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>Dimensioned drawing</title>
      <desc id={`${id}-desc`}>{says} The table holds the same numbers.</desc>
      <rect class="metal" x={sheet.x} y={sheet.y} width={sheet.width} height={sheet.height} />
      <path class="opening" d={of.outline} />
      {of.holes.map((hole) => (
        <>
          <circle class="hidden-line" cx={hole.x} cy={hole.y} r={hole.r} />
          <path class="extension" d={`M${hole.x - 3} ${hole.y}h6m-3-3v6`} />
        </>
      ))}
      <path
        class="centre"
        d={`M${x - reach - 10} ${y}h${2 * reach + 20}M${x} ${y - rise - 10}v${2 * rise + 20}`}
      />
      {leader && (
        <>
          <path class="extension" d={leader.path} />
          {leader.lines.map((each) => (
            <text class="haloed" x={each.x} y={each.y}>
              {each.text}
            </text>
          ))}
        </>
      )}
      <path
        class="extension"
        d={`M${along.from} ${along.y - 12}v16M${along.to} ${along.y - 12}v16`}
      />
      <path class="dimension" d={`M${along.from} ${along.y}H${along.to}`} />
      <path
        class="arrowhead"
        d={`M${along.from} ${along.y}l9-3v6zM${along.to} ${along.y}l-9-3v6z`}
      />
      <text class="haloed" x={x} y={along.y + 4} text-anchor="middle">
        {along.text}
      </text>
      {across && (
        <>
          <path
            class="extension"
            d={`M${across.x - 12} ${across.from}h16M${across.x - 12} ${across.to}h16`}
          />
          <path class="dimension" d={`M${across.x} ${across.from}V${across.to}`} />
          <path
            class="arrowhead"
            d={`M${across.x} ${across.from}l-3 9h6zM${across.x} ${across.to}l-3-9h6z`}
          />
          <text class="haloed" x={across.x + 6} y={y + 4}>
            {across.text}
          </text>
        </>
      )}
    </svg>
  );
}
