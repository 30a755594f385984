// Reference: the Temporal polyfill (@js-temporal/polyfill), an implementation of zone arithmetic
// that shares no code with the one in use. Changes of the clock as in the IANA time zone data.

import { Temporal } from "@js-temporal/polyfill";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "../../src/model/calendar.ts";
import type { ClockNode } from "../../src/read/clock-syntax.ts";
import { Faults } from "../../src/read/faults.ts";
import { SourceFile } from "../../src/read/source-file.ts";
import { dateIn, isZone, ZoneClock } from "../../src/read/zone-clock.ts";

const span = new SourceFile("days/x.md", "from: x").span(6, 1);

function typed(text: string): ClockNode {
  const [clock = "", sign, hours, minutes] = text.split(/([+-])(\d\d):(\d\d)$/);
  const [hour = "0", minute = "0"] = clock.split(":");
  const size = Number(hours) * 60 + Number(minutes);
  return {
    minuteOfDay: Number(hour) * 60 + Number(minute),
    ...(sign ? { offset: sign === "-" ? -size : size } : {}),
    node: { kind: "text", text, span, source: text },
  };
}

// The same question put to Temporal: how many instants does the wall clock name?
function instants(zone: string, date: string, clock: string): number[] {
  const wall = Temporal.PlainDateTime.from(`${date}T${clock}`);
  const earlier = wall.toZonedDateTime(zone, { disambiguation: "earlier" });
  const later = wall.toZonedDateTime(zone, { disambiguation: "later" });
  if (!earlier.toPlainDateTime().equals(wall)) return [];
  const minutes = [earlier, later].map((each) => each.epochMilliseconds / 60_000);
  return [...new Set(minutes)];
}

const cases = [
  // zone, date, clock, what the clock does there
  ["America/Denver", "2026-03-08", "01:59", "plain"],
  ["America/Denver", "2026-03-08", "02:00", "gap"],
  ["America/Denver", "2026-03-08", "02:30", "gap"],
  ["America/Denver", "2026-03-08", "03:00", "plain"],
  ["America/Denver", "2026-11-01", "00:59", "plain"],
  ["America/Denver", "2026-11-01", "01:30", "fold"],
  ["America/Denver", "2026-11-01", "02:00", "plain"],
  ["Europe/Berlin", "2026-03-29", "02:30", "gap"],
  ["Europe/Berlin", "2026-10-25", "02:30", "fold"],
  ["Australia/Lord_Howe", "2026-04-05", "01:45", "fold"],
  ["Australia/Lord_Howe", "2026-10-04", "02:15", "gap"],
  ["Asia/Tokyo", "2024-02-29", "23:59", "plain"],
] as const;

describe.each(cases)("%s %s %s", (zone, date, clock, kind) => {
  test(`is a ${kind} time, as Temporal says`, () => {
    const faults = new Faults();
    const moment = new ZoneClock(zone).moment(date, typed(clock), faults);
    const expected = instants(zone, date, clock);
    expect(expected).toHaveLength({ plain: 1, gap: 0, fold: 2 }[kind]);
    if (kind === "plain") {
      expect(moment?.epochMinutes).toBe(expected[0]);
      expect(moment?.local).toBe(`${date} ${clock}`);
    } else {
      expect(moment).toBeUndefined();
      expect(faults.found.map(({ code }) => code)).toEqual([`time-in-${kind}`]);
    }
  });
});

test("an offset says which of the two is meant, and a wrong one is a fault", () => {
  const zone = new ZoneClock("America/Denver");
  const [first, second] = instants("America/Denver", "2026-11-01", "01:30");
  const faults = new Faults();
  const at = (text: string) => zone.moment("2026-11-01", typed(text), faults)?.epochMinutes;
  expect(at("01:30-06:00")).toBe(first);
  expect(at("01:30-07:00")).toBe(second);
  expect(faults.found).toEqual([]);
  expect(at("01:30-08:00")).toBeUndefined();
  expect(faults.found[0]?.notes).toEqual(["the offset is -06:00 or -07:00"]);
});

test("24:00 is midnight at the end of the day", () => {
  const moment = new ZoneClock("America/Denver").moment("2026-12-31", typed("24:00"), new Faults());
  expect(moment?.local).toBe("2027-01-01 00:00");
});

test("the length of a day follows the clock changes", () => {
  const zone = new ZoneClock("America/Denver");
  expect(zone.dayLength("2026-03-08")).toBe(23 * 60);
  expect(zone.dayLength("2026-11-01")).toBe(25 * 60);
  expect(zone.dayLength("2026-06-01")).toBe(24 * 60);
  expect(new ZoneClock("Australia/Lord_Howe").dayLength("2026-04-05")).toBe(24 * 60 + 30);
});

test("the end of a day of judgement is the next midnight on the zone's clock", () => {
  const end = new ZoneClock("Asia/Tokyo").asOf("2026-05-05").endEpochMinutes;
  expect(end).toBe(Date.UTC(2026, 4, 5, 15) / 60_000);
});

test("today is the date in the zone, not in UTC", () => {
  const now = new Date("2026-01-01T03:00:00Z");
  expect(dateIn("America/Denver", now)).toBe("2025-12-31");
  expect(dateIn("Pacific/Kiritimati", now)).toBe("2026-01-01");
});

test("zones are known by their names", () => {
  expect(isZone("America/Denver")).toBe(true);
  expect(isZone("Denver")).toBe(false);
});

test("any plain time of two years is where Temporal has it, in three zones", () => {
  const zones = ["America/Denver", "Europe/London", "Pacific/Auckland"];
  fc.assert(
    fc.property(
      fc.constantFrom(...zones),
      fc.integer({ min: 0, max: 730 }),
      fc.integer({ min: 0, max: 1439 }),
      (zone, day, minute) => {
        const date = addDays("2025-06-01", day);
        const clock = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
        const expected = instants(zone, date, clock);
        const moment = new ZoneClock(zone).moment(date, typed(clock), new Faults());
        expect(moment?.epochMinutes).toBe(expected.length === 1 ? expected[0] : undefined);
      },
    ),
    { numRuns: 300 },
  );
});
