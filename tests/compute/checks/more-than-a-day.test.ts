import { expect, test } from "vitest";
import { foundBy } from "../../support/found-by.ts";
import { day, session, smallBuild, span } from "../../support/small-build.ts";

function found(minutes: readonly number[], lengthMinutes = 1440) {
  const sessions = minutes.map((each, index) =>
    session({ minutes: each, minutesSpan: span({ line: index + 5 }) }),
  );
  const jon = session({ who: ["jon"], minutes: 1440 - 60 });
  return foundBy(
    "more-than-a-day",
    smallBuild({ days: [day({ sessions: [...sessions, jon], lengthMinutes })] }),
  );
}

test("24 hours fit into a day, and a minute more does not", () => {
  expect(found([720, 720])).toEqual([]);
  const [one] = found([720, 721, 30]);
  expect(one?.message).toBe("`ada` has 24:31 on 2026-03-14, a day of 24:00");
  expect(one?.span.line).toBe(6);
  expect(one?.notes).toEqual([
    "sessions of `ada` on this day: 12:00 (line 5), 12:01 (line 6), 0:30 (line 7)",
  ]);
});

test("a day on which the clocks change is longer or shorter", () => {
  expect(found([1500], 1500)).toEqual([]);
  const [one] = found([1381], 1380);
  expect(one?.message).toBe("`ada` has 23:01 on 2026-03-14, a day of 23:00");
  expect(one?.notes[0]).toBe("the clocks changed on this day");
});
