// Times and durations as they are typed at ten in the evening.

import { describe, expect, test } from "vitest";
import { spokenDate, spokenDuration, spokenTime } from "../../src/read/spoken-time.ts";

describe("a time of day", () => {
  test.each([
    ["18:40", "18:40"],
    ["1840", "18:40"],
    ["0730", "07:30"],
    ["730", "07:30"],
    ["7.30", "07:30"],
    ["7,30", "07:30"],
    ["7 30", "07:30"],
    ["19h", "19:00"],
    ["19h05", "19:05"],
    ["7", "07:00"],
    ["21", "21:00"],
    ["730p", "19:30"],
    ["730pm", "19:30"],
    ["7:30 PM", "19:30"],
    ["7 p.m.", "19:00"],
    ["12p", "12:00"],
    ["12a", "00:00"],
    ["12:15 am", "00:15"],
    ["0:05", "00:05"],
    ["24:00", "24:00"],
    ["  18:40 ", "18:40"],
  ])("%s is %s", (typed, read) => {
    expect(spokenTime(typed)).toBe(read);
  });

  test.each([
    "",
    "p",
    "25:00",
    "24:01",
    "18:60",
    "184",
    "18:4",
    "13pm",
    "0a",
    "7m",
    "18:40:00",
    "half seven",
    "-7",
    "7.5",
    "18:40-21:05",
  ])("%s is none", (typed) => {
    expect(spokenTime(typed)).toBeUndefined();
  });

  test("every minute of the day reads back in four ways of writing it", () => {
    for (let minute = 0; minute < 1440; minute++) {
      const hour = Math.floor(minute / 60);
      const two = (value: number) => String(value).padStart(2, "0");
      const expected = `${two(hour)}:${two(minute % 60)}`;
      const half = hour < 12 ? "am" : "pm";
      const twelve = hour % 12 === 0 ? 12 : hour % 12;
      for (const typed of [
        expected,
        `${hour}.${two(minute % 60)}`,
        `${two(hour)}${two(minute % 60)}`,
        `${twelve}:${two(minute % 60)} ${half}`,
      ]) {
        expect(`${typed} is ${spokenTime(typed)}`).toBe(`${typed} is ${expected}`);
      }
    }
  });
});

describe("a duration", () => {
  test.each([
    ["1:15", "1:15"],
    ["01:15", "1:15"],
    [":45", "0:45"],
    ["0:05", "0:05"],
    ["1h15", "1:15"],
    ["1h 15m", "1:15"],
    ["1 h 15 min", "1:15"],
    ["1 hour and 15 minutes", "1:15"],
    ["1h5", "1:05"],
    ["90min", "1:30"],
    ["90 m", "1:30"],
    ["75 minutes", "1:15"],
    ["2h", "2:00"],
    ["2 hrs", "2:00"],
    ["2", "2:00"],
    ["1.25", "1:15"],
    ["1,5", "1:30"],
    ["1.5h", "1:30"],
    ["0.1", "0:06"],
    ["12.35 h", "12:21"],
    ["1.75", "1:45"],
    ["1.00", "1:00"],
    ["0.80", "0:48"],
    ["100:00", "100:00"],
  ])("%s is %s", (typed, read) => {
    expect(spokenDuration(typed)).toBe(read);
  });

  test.each([
    ["", "nothing"],
    ["0", "no time at all"],
    ["0:00", "no time at all"],
    ["0 min", "no time at all"],
    ["1:60", "sixty minutes"],
    ["1:5", "one digit of minutes behind a colon"],
    ["1h75", "more than an hour of minutes"],
    ["1.33", "no whole minutes"],
    ["0.61", "no whole minutes"],
    ["1.30", "an hour and a half, or 78 minutes?"],
    ["1,15", "an hour and a quarter, or 69 minutes?"],
    ["0.05", "five minutes, or three?"],
    ["-1:00", "less than nothing"],
    ["an hour", "words"],
    ["18:40-21:05", "two times"],
    ["1:15:00", "seconds"],
  ])("%s is none: %s", (typed) => {
    expect(spokenDuration(typed)).toBeUndefined();
  });

  test("hundredths of an hour are whole minutes or nothing, never rounded", () => {
    for (let hundredths = 1; hundredths <= 2400; hundredths++) {
      const typed = `${Math.floor(hundredths / 100)}.${String(hundredths % 100).padStart(2, "0")} h`;
      const read = spokenDuration(typed);
      const [hours, minutes] = (read ?? "0:00").split(":").map(Number) as [number, number];
      // A hundredth of an hour is 36 seconds.
      expect([typed, (hours * 60 + minutes) * 60]).toEqual([
        typed,
        (hundredths * 36) % 60 === 0 ? hundredths * 36 : 0,
      ]);
    }
  });
});

describe("a day", () => {
  test.each([
    ["2026-03-14", "2026-03-14"],
    [" Today ", "2026-03-01"],
    ["yesterday", "2026-02-28"],
    ["2024-02-29", "2024-02-29"],
    ["2026-02-29", undefined],
    ["tomorrow", undefined],
    ["14.3.2026", undefined],
    ["", undefined],
  ])("%s is %s", (typed, read) => {
    expect(spokenDate(typed, "2026-03-01")).toBe(read);
  });
});
