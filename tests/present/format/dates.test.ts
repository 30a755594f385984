import { expect, test } from "vitest";
import {
  dateText,
  dateWithWeekday,
  daysText,
  fromThen,
  momentText,
  monthText,
  shortDate,
} from "../../../src/present/format/dates.ts";

test.each([
  ["2026-03-14", "Saturday 14 March 2026", "14 Mar"],
  ["2024-02-29", "Thursday 29 February 2024", "29 Feb"],
  ["1969-12-31", "Wednesday 31 December 1969", "31 Dec"],
  ["2026-12-01", "Tuesday 1 December 2026", "1 Dec"],
])("%s is %s, in short %s", (date, text, short) => {
  expect(dateWithWeekday(date)).toBe(text);
  expect(text.endsWith(dateText(date))).toBe(true);
  expect(shortDate(date)).toBe(short);
});

test("a month, a moment, days", () => {
  expect(monthText("2026-03")).toBe("March 2026");
  expect(momentText({ epochMinutes: 29_561_890, local: "2026-03-16 20:10" })).toBe(
    "16 March 2026, 20:10",
  );
  expect([0, 1, 2, -1].map(daysText)).toEqual(["0 days", "1 day", "2 days", "-1 day"]);
});

test.each([
  ["2026-03-14", "the same day"],
  ["2026-03-15", "in 1 day"],
  ["2026-03-24", "in 10 days"],
  ["2026-03-13", "1 day ago"],
  ["2026-02-14", "28 days ago"],
])("from 14 March, %s is %s", (date, words) => {
  expect(fromThen("2026-03-14", date)).toBe(words);
});
