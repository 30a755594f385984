import type { Comparison } from "../../src/present/pages/views/comparison.ts";
import { Verdict } from "./reading.tsx";
import { Table } from "./table.tsx";
import { Words } from "./words.tsx";

/** Pairs of values held against each other, each with its drawing. */
export function Comparisons({ of }: { of: readonly Comparison[] }) {
  return (
    <Table
      class="gauges"
      caption="On the drawing the first value stands in the middle, and the band around it is where the second may lie"
      heads={["What", "First", "Second", "Drawing", "Difference", "Verdict"]}
    >
      {of.map(({ of: reading, first, second, difference, out, drawing }) => (
        <tr>
          <th scope="row">
            {reading.what}
            <small>
              <Words of={reading.day} />
            </small>
          </th>
          <td class="values">
            <span class="value">{first.value}</span>
            <small>
              <Words of={first.where} />
            </small>
          </td>
          <td class="values">
            <span class="value">{second.value}</span>
            <small>
              <Words of={second.where} />
            </small>
          </td>
          <td>{drawing && <Drawing of={drawing} out={out} />}</td>
          <td class="values">
            <span class={out ? "value out" : "value"}>{difference}</span>
            <small>{reading.limits}</small>
          </td>
          <td>
            <Verdict of={reading} />
          </td>
        </tr>
      ))}
    </Table>
  );
}

function Drawing({ of, out }: { of: NonNullable<Comparison["drawing"]>; out: boolean }) {
  const { first, second, band } = of;
  return (
    <svg class="gauge" height="26" aria-hidden="true">
      <rect class="band" x={band.x} width={band.width} y="8" height="10" />
      <line class="base" x1={first} x2={second} y1="13" y2="13" />
      <line class="limit" x1={first} x2={first} y1="3" y2="23" />
      <use class={out ? "red" : undefined} href={out ? "#out" : "#in"} x={second} y="-15" />
    </svg>
  );
}
