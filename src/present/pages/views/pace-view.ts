import { type Forecast, forecast, leastMonths, paceOf } from "../../../compute/forecast.ts";
import { monthText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import type { RecordIndex } from "../record-index.ts";

/** How fast it goes, and when it may be done; or why nothing is said of that. */
export interface PaceView {
  /** The pace of the last whole months; absent while there is none. */
  readonly says?: string;
  readonly forecast?: {
    /** What remains, and three months: when a tenth, half and nine tenths of all ways are done. */
    readonly facts: readonly { readonly label: string; readonly value: string }[];
    /** How it is made and what it takes for granted. */
    readonly method: string;
  };
  /** Why there is no forecast. */
  readonly refused?: string;
}

const reasons: Readonly<Record<Extract<Forecast, { kind: "refused" }>["why"], string>> = {
  "nothing expected":
    "No forecast: the builder has not said how many hours the whole is expected to take.",
  "already there": "No forecast: the hours that the builder expected have been spent.",
  "too few months": `No forecast: it takes ${leastMonths} whole months to look back on.`,
  "nothing booked": "No forecast: nothing was booked in the last whole months.",
  "too far": "No forecast: at this pace it would be more than twenty years ahead.",
};

/** The pace and the forecast of a record. */
export function paceView({ analysis: { build, hours, asOf } }: RecordIndex): PaceView {
  const pace = paceOf(hours, asOf.date);
  const answer = forecast(pace, hours.total.build, build.project.expected, asOf.date);
  const count = pace.months.length;
  const each = pace.months.map(({ minutes }) => minutes);
  const [first] = pace.months;
  const last = pace.months.at(-1);
  return {
    ...(first && last
      ? {
          says:
            `In the last ${count === 1 ? "whole month" : `${count} whole months`}, ` +
            `${monthText(first.month)} to ${monthText(last.month)}, ${hoursText(pace.minutes)} were booked: ` +
            `${hoursText(Math.round(pace.minutes / count))} a month, the least ${hoursText(Math.min(...each))} ` +
            `and the most ${hoursText(Math.max(...each))}.`,
        }
      : {}),
    ...(answer.kind === "refused"
      ? { refused: reasons[answer.why] }
      : {
          forecast: {
            facts: [
              { label: "expected by the builder", value: hoursText(answer.expected) },
              { label: "remaining", value: hoursText(answer.remaining) },
              { label: "1 in 10: by", value: monthText(answer.tenth.month) },
              { label: "even odds: by", value: monthText(answer.half.month) },
              { label: "9 in 10: by", value: monthText(answer.ninetieth.month) },
            ],
            method:
              `The method: each month to come is taken to be one of those ${count} over again, any of them ` +
              "as likely as any other and whatever came before, and all the ways that can go are counted. " +
              "It takes the builder's figure for the whole as given and knows nothing of what is still " +
              "ahead, of seasons, of money or of a harder part; the true spread is wider. It is arithmetic on " +
              "the past, not a promise.",
          },
        }),
  };
}
