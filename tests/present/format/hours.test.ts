import { expect, test } from "vitest";
import { hoursInWords, hoursText } from "../../../src/present/format/hours.ts";

test.each([
  [0, "0:00", "no time"],
  [1, "0:01", "1 minute"],
  [59, "0:59", "59 minutes"],
  [60, "1:00", "1 hour"],
  [75, "1:15", "1 hour 15 minutes"],
  [120, "2:00", "2 hours"],
  [24755, "412:35", "412 hours 35 minutes"],
  [600_000, "10000:00", "10000 hours"],
  [-75, "-1:15", "minus 1 hour 15 minutes"],
])("%i minutes are %s, %s", (minutes, text, words) => {
  expect(hoursText(minutes)).toBe(text);
  expect(hoursInWords(minutes)).toBe(words);
});
