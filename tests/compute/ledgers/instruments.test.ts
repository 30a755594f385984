import { expect, test } from "vitest";
import { instrumentsLedger, isLapsed } from "../../../src/compute/ledgers/instruments.ts";
import { asOf, day, instrument, register, smallBuild, span } from "../../support/small-build.ts";
import { reading } from "../../support/small-measurements.ts";

const calibrated = instrument({
  calibrations: [
    { on: "2025-03-01", due: "2026-03-01", span: span() },
    { on: "2026-03-20", span: span() },
  ],
});

test.each([
  ["2025-02-28", true], // before the first
  ["2025-03-01", false],
  ["2026-03-01", false], // the due day is still good
  ["2026-03-02", true],
  ["2026-03-19", true],
  ["2026-03-20", false],
  ["2036-03-20", false], // nothing says when it is due
])("on %s a lapsed calibration is %s", (date, lapsed) => {
  expect(isLapsed(calibrated, date)).toBe(lapsed);
});

test("an instrument without calibrations is not under calibration", () => {
  expect(isLapsed(instrument(), "2026-03-14")).toBe(false);
});

test("each instrument has its readings and the calibration in force", () => {
  const instruments = register(calibrated, instrument({ id: "rule-1" }));
  const own = reading(["0.14 in"], { instrument: "gauge-1" });
  const build = smallBuild({ instruments, days: [day({ readings: [own, reading(["1 in"])] })] });
  expect(instrumentsLedger(build, asOf("2026-03-10"))).toEqual([
    {
      instrument: calibrated,
      calibration: calibrated.calibrations[0],
      lapsed: true,
      readings: [own],
    },
    { instrument: instruments.get("rule-1"), lapsed: false, readings: [] },
  ]);
});
