import { expect, test } from "vitest";
import { dayStrip } from "../../../../src/present/pages/views/day-strip.ts";
import { day, session } from "../../../support/small-build.ts";

const strip = (...times: readonly [from: string, to: string][]) =>
  dayStrip(
    day(),
    times.map(([from, to], index) => ({ number: index + 1, session: session({ from, to }) })),
  );

test("a bar stands where the clock stood", () => {
  expect(strip(["06:00", "18:00"])?.bars[0]).toMatchObject({
    x: "25%",
    width: "50%",
    middle: "50%",
    lane: 0,
    cut: false,
  });
});

test("a session over midnight ends with the strip", () => {
  expect(strip(["18:00", "01:00"])?.bars[0]).toMatchObject({ x: "75%", width: "25%", cut: true });
});

test("sessions at the same time lie above one another, later ones come down again", () => {
  const made = strip(["08:00", "12:00"], ["09:00", "10:00"], ["12:00", "13:00"]);
  expect(made?.bars.map(({ lane }) => lane)).toEqual([0, 1, 0]);
  expect(made?.lanes).toBe(2);
});

test("a minute can still be seen", () => {
  expect(strip(["08:00", "08:01"])?.bars[0]?.width).toBe("0.4%");
});

test("hours alone have no strip", () => {
  expect(dayStrip(day(), [{ number: 1, session: session() }])).toBeUndefined();
});

test("every sixth hour has its number", () => {
  expect(strip(["08:00", "09:00"])?.hours.map(({ label }) => label)).toEqual([
    "00",
    "06",
    "12",
    "18",
    "24",
  ]);
});
