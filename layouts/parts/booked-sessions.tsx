import type { Sum } from "../../src/present/pages/page.ts";
import type { BookedDay } from "../../src/present/pages/views/booked-days.ts";

/** The hours of each session of some days, each leading to its row on the sheet of the day. */
export function BookedSessions({
  of,
  counts,
  bare = false,
}: {
  of: readonly BookedDay[];
  counts: Sum["of"];
  /** Without the number of the day, where the row says it. */
  bare?: boolean;
}) {
  return (
    <>
      {of.map(({ day, sessions }) => (
        <span>
          {!bare && `${day} `}
          {sessions.map(({ text, href }, index) => (
            <>
              {index > 0 && "+ "}
              {href === undefined ? (
                <small data-part={counts} data-private>
                  {text}
                </small>
              ) : (
                <a data-part={counts} href={href}>
                  {text}
                </a>
              )}{" "}
            </>
          ))}
        </span>
      ))}
    </>
  );
}
