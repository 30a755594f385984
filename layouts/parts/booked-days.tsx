import type { Sum } from "../../src/present/pages/page.ts";
import type { BookedMonth } from "../../src/present/pages/views/booked-days.ts";
import { BookedSessions } from "./booked-sessions.tsx";
import { Table } from "./table.tsx";

/** Hours by session, day and month; the sessions add up to their month. */
export function BookedDays({
  of,
  counts,
  caption,
  main = false,
}: {
  of: readonly BookedMonth[];
  counts: Sum["of"];
  caption: string;
  /** Whether the page's own figures are sums of these. */
  main?: boolean;
}) {
  return (
    <Table caption={caption} heads={["Month", "Days and their sessions", "#Hours"]} sum main={main}>
      {of.map((row) => (
        <tr>
          <th scope="row" class="nb">
            {row.month}
          </th>
          <td class="booked">
            <BookedSessions of={row.days} counts={counts} />
          </td>
          <td class="n" data-subtotal={counts}>
            {row.hours}
          </td>
        </tr>
      ))}
    </Table>
  );
}
