import { expect, test } from "vitest";
import type { Reading } from "../../../src/model/measurement.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, instrument, register, smallBuild, span } from "../../support/small-build.ts";
import { reading } from "../../support/small-measurements.ts";
import { weighed } from "../../support/weighed.ts";

const calibrations = [
  { on: "2025-03-01", due: "2026-03-13", span: span() },
  { on: "2026-04-02", span: span() },
];
const instruments = register(instrument({ calibrations }), instrument({ id: "rule-1" }));
const measured = (overrides: Partial<Reading> = {}) =>
  reading(["0.14 in"], { instrument: "gauge-1", ...overrides });
const found = (...readings: readonly Reading[]) =>
  foundBy("lapsed-calibration", smallBuild({ instruments, days: [day({ readings })] }));

test("a reading after the due day is found, at the instrument's name", () => {
  const [one] = found(measured({ instrumentSpan: span({ line: 8, column: 30 }) }));
  expect(one).toMatchObject({
    severity: "finding",
    message:
      "`gauge-1` measured shop head diameter on 2026-03-14, after its calibration was due on 2026-03-13",
    label: "calibration had lapsed",
    notes: ["Rivet gauge: content/instruments.yaml:2", "next calibrated on 2026-04-02"],
    span: { line: 8, column: 30 },
  });
  expect(one).not.toHaveProperty("private");
});

test("a reading before the first calibration is found", () => {
  const [one] = found(measured({ date: "2025-02-28" }));
  expect(one?.message).toBe(
    "`gauge-1` measured shop head diameter on 2025-02-28, before its first calibration",
  );
  expect(one?.label).toBe("not yet calibrated");
});

test("a valid calibration, none at all, or no instrument is not", () => {
  expect(found(measured({ date: "2026-03-13" }))).toEqual([]);
  expect(found(measured({ date: "2026-04-02" }))).toEqual([]);
  expect(found(measured({ instrument: "rule-1" }))).toEqual([]);
  expect(found(reading(["0.14 in"]))).toEqual([]);
});

test("a later reading heals it, if it names an instrument", () => {
  const again = measured({ id: "R-2", supersedes: "R-1", instrument: "rule-1" });
  expect(found(measured(), again)).toEqual([]);
  const { instrument: _instrument, ...bare } = again;
  expect(found(measured(), bare)).toHaveLength(1);
});

test("a private reading keeps its finding private", () => {
  expect(found(measured({ private: true }))[0]?.private).toBe(true);
});

test("a weighing with scales past their calibration, at the name of the scales", () => {
  const weighing = (on: string, ...scales: readonly string[]) =>
    weighed(
      `weighings:
  - { id: W-1, on: ${on}, title: First, with: [${scales.join(", ")}], points: [{ at: all, reads: 9 lb, arm: 1 in }] }
`,
      {
        "instruments.yaml": `instruments:
  - id: scales
    title: Three scales
    calibrations: [{ on: 2026-02-01, due: 2026-05-01 }]
  - { id: bathroom, title: Bathroom scales }
`,
      },
    ).found;
  expect(weighing("2026-05-01", "scales", "bathroom")).toEqual([]);
  expect(weighing("2026-05-02", "bathroom", "scales")).toMatchObject([
    {
      message: "`scales` weighed `W-1` on 2026-05-02, after its calibration was due on 2026-05-01",
      label: "calibration had lapsed",
      span: { line: 4, column: 63 },
    },
  ]);
  expect(weighing("2026-01-31", "scales")).toMatchObject([
    {
      message: "`scales` weighed `W-1` on 2026-01-31, before its first calibration",
      label: "not yet calibrated",
    },
  ]);
});
