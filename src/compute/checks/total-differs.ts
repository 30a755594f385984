import type { CalendarDate, Minutes } from "../../model/calendar.ts";
import type { Assertion } from "../../model/day.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { hoursText } from "../../model/hours-text.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each asserted total that differs from what the entries add up to, up to and including
 * its day, study and shop left out. `total` is the whole build, an assembly id that assembly and
 * everything below it. Names the last assertion of the same total that held, and what was
 * entered since.
 */
export function* totalDiffers({ build, hours }: Ledgers): Generator<Diagnostic> {
  const computed = new Map<string, Minutes>();
  const held = new Map<string, { assertion: Assertion; date: CalendarDate }>();
  let next = 0;
  for (const { date, assertions } of build.days) {
    for (let line = hours.lines[next]; line && line.date <= date; line = hours.lines[++next]) {
      if (line.apart) continue;
      const path = build.assemblies.get(line.assembly)?.path ?? [line.assembly];
      for (const of of ["total", ...path]) {
        computed.set(of, (computed.get(of) ?? 0) + line.minutes);
      }
    }
    for (const assertion of assertions) {
      const { of, minutes, span } = assertion;
      const sum = computed.get(of) ?? 0;
      if (sum === minutes) {
        held.set(of, { assertion, date });
        continue;
      }
      const what = of === "total" ? "the total" : `\`${of}\``;
      const size = hoursText(Math.abs(minutes - sum));
      const last = held.get(of);
      yield {
        code: "total-differs",
        severity: "error",
        span,
        message: `${what} up to ${date} is asserted as ${hoursText(minutes)}, but the entries add up to ${hoursText(sum)}`,
        label: `${size} too ${minutes > sum ? "much" : "little"}`,
        notes: last
          ? [
              `the last assertion of ${what} that holds: ${hoursText(last.assertion.minutes)} on ${last.date} (${placeText(last.assertion.span)})`,
              `entered since then: ${hoursText(sum - last.assertion.minutes)}`,
            ]
          : [`no earlier assertion of ${what} holds`],
        help: [
          last
            ? `look for a session missing or changed after ${last.date}, or correct the assertion`
            : "look for a session missing or changed, or correct the assertion",
          "kinds `study` and `shop` are not part of an asserted total",
        ],
      };
    }
  }
}
