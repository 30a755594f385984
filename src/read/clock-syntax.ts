import { type CalendarDate, isCalendarDate, type Minutes } from "../model/calendar.ts";
import type { Faults } from "./faults.ts";
import { textAs } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** A date with its place. */
export interface DateNode {
  readonly date: CalendarDate;
  readonly node: TextNode;
}

/** A wall-clock time as typed, not yet in a zone. */
export interface ClockNode {
  /** 0 to 1440; 1440 is midnight at the end of the day. */
  readonly minuteOfDay: Minutes;
  /** Minutes east of UTC when an offset was typed, as in `01:30-06:00`. */
  readonly offset?: Minutes;
  readonly node: TextNode;
}

/** `2026-03-14`: a day that exists. */
export const date = textAs<DateNode>((node, faults) => {
  if (isCalendarDate(node.text)) return { date: node.text, node };
  const typed = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(node.text);
  const padded = typed
    ? [typed[1], typed[2]?.padStart(2, "0"), typed[3]?.padStart(2, "0")].join("-")
    : undefined;
  return faults.add("not-a-date", node.span, {
    message: `\`${node.text}\` is not a date`,
    help: [
      padded && isCalendarDate(padded)
        ? `write \`${padded}\``
        : "write year, month and day, as in `2026-03-14`; the day has to exist",
    ],
  });
});

/** `18:40`, or `01:30-06:00` where the clock shows an hour twice. */
export const clock = textAs<ClockNode>((node, faults) => readClock(node.text, node, faults));

/** `2026-03-16 20:10`: a date and a time. */
export const dateAndClock = textAs<{ date: CalendarDate; clock: ClockNode }>((node, faults) => {
  const parts = /^(\S+)[ T](\S+)$/.exec(node.text);
  if (!parts?.[1] || !parts[2] || !isCalendarDate(parts[1])) {
    return faults.add("not-a-time", node.span, {
      message: `\`${node.text}\` is not a date and a time`,
      help: ["write the date, a space and the time, as in `2026-03-16 20:10`"],
    });
  }
  const read = readClock(parts[2], node, faults);
  return read && { date: parts[1], clock: read };
});

/** `1:15`: hours and minutes. */
export const duration = textAs<{ minutes: Minutes; node: TextNode }>((node, faults) => {
  const typed = /^(\d{1,6}):([0-5]\d)$/.exec(node.text);
  if (typed) return { minutes: Number(typed[1]) * 60 + Number(typed[2]), node };
  const decimal = /^(\d{1,4})(?:[.,](\d+))?( ?h)?$/.exec(node.text);
  const minutes = decimal ? Number(`${decimal[1]}.${decimal[2] ?? 0}`) * 60 : Number.NaN;
  return faults.add("not-a-duration", node.span, {
    message: `\`${node.text}\` is not a duration in hours and minutes`,
    help: [
      Number.isInteger(minutes)
        ? `write \`"${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}"\``
        : 'write hours, a colon and two digits of minutes, as in `"1:15"`',
    ],
  });
});

function readClock(typed: string, node: TextNode, faults: Faults): ClockNode | undefined {
  const parts = /^(\d{1,2}):(\d{2})(?:(Z)|([+-])(\d{2}):(\d{2}))?$/.exec(typed);
  const hour = Number(parts?.[1]);
  const minute = Number(parts?.[2]);
  if (!parts || minute > 59 || hour > 24 || (hour === 24 && minute > 0)) {
    const meant = /^(\d{1,2})[.h]?([0-5]\d)$/.exec(typed);
    return faults.add("not-a-time", node.span, {
      message: `\`${typed}\` is not a time of day`,
      help: [
        meant && Number(meant[1]) < 24
          ? `write \`"${meant[1]?.padStart(2, "0")}:${meant[2]}"\``
          : 'write hours and minutes on the 24-hour clock, as in `"18:40"`',
      ],
    });
  }
  const minuteOfDay = hour * 60 + minute;
  if (parts[3]) return { minuteOfDay, offset: 0, node };
  if (!parts[4]) return { minuteOfDay, node };
  const size = Number(parts[5]) * 60 + Number(parts[6]);
  return { minuteOfDay, offset: parts[4] === "-" ? -size : size, node };
}
