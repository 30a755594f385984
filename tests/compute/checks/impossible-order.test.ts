import { describe, expect, test } from "vitest";
import type { Build } from "../../../src/model/build.ts";
import type { Day } from "../../../src/model/day.ts";
import { foundBy, messagesOf } from "../../support/found-by.ts";
import {
  cure,
  day,
  instrument,
  lot,
  moment,
  register,
  smallBuild,
  span,
  squawk,
} from "../../support/small-build.ts";
import { reading } from "../../support/small-measurements.ts";

const inDay = (overrides: Partial<Day>) =>
  messagesOf("impossible-order", smallBuild({ days: [day(overrides)] }));
const inRegisters = (overrides: Partial<Build>) =>
  messagesOf("impossible-order", smallBuild(overrides));

describe("an entry", () => {
  test("is written on its day or later", () => {
    expect(inDay({ written: moment("2026-03-14 00:01") })).toEqual([]);
    expect(inDay({ written: moment("2026-03-13 23:59") })).toEqual([
      "the entry for 2026-03-14 says that it was written at 2026-03-13 23:59, before that day",
    ]);
  });

  test("the place is that of `written`", () => {
    const written = moment("2026-03-13 20:00");
    const days = [day({ written, writtenSpan: span({ line: 3 }) })];
    expect(foundBy("impossible-order", smallBuild({ days }))[0]?.span.line).toBe(3);
  });
});

test("a joint is closed before its cure is over", () => {
  const closedAt = (local: string) => inDay({ cures: [cure({ closed: moment(local) })] });
  expect(closedAt("2026-03-16 20:09")).toEqual([]);
  expect(closedAt("2026-03-16 20:10")).toEqual([
    "the joint of `HS-08` was closed at 2026-03-16 20:10, and its cure was over at 2026-03-16 20:10",
  ]);
});

test("a squawk is fixed, then closed", () => {
  const fixed = { date: "2026-03-20", text: "drove two longer ones" };
  expect(inDay({ squawks: [squawk({ fixed, closed: { date: "2026-03-20" } })] })).toEqual([]);
  expect(inDay({ squawks: [squawk({ fixed, closed: { date: "2026-03-19" } })] })).toEqual([
    "squawk `S-004` was closed on 2026-03-19, before it was fixed on 2026-03-20",
  ]);
});

test("a calibration is made, then due", () => {
  const due = (date: string) =>
    inRegisters({
      instruments: register(
        instrument({ calibrations: [{ on: "2026-03-14", due: date, span: span() }] }),
      ),
    });
  expect(due("2026-03-14")).toEqual([]);
  expect(due("2026-03-13")).toEqual([
    "the calibration of `gauge-1` on 2026-03-14 was due again on 2026-03-13, before it was made",
  ]);
});

test("a lot is made, then expires", () => {
  const expires = (date: string) =>
    inRegisters({ lots: register(lot({ made: "2026-03-14", expires: date })) });
  expect(expires("2026-03-14")).toEqual([]);
  expect(expires("2026-03-13")).toEqual([
    "lot `sealant-1` expires on 2026-03-13, before it was made on 2026-03-14",
  ]);
});

describe("a reading supersedes", () => {
  const second = reading(["0.14 in"], { id: "R-2" });

  test("an earlier one of its day", () => {
    const later = reading(["0.14 in"], { id: "R-3", supersedes: "R-2" });
    expect(inDay({ readings: [second, later] })).toEqual([]);
  });

  test("not itself", () => {
    const supersedesSpan = span({ line: 33 });
    const itself = reading(["0.14 in"], { supersedes: "R-1", supersedesSpan });
    const days = [day({ readings: [itself] })];
    const [one] = foundBy("impossible-order", smallBuild({ days }));
    expect(one?.message).toBe("reading `R-1` supersedes itself");
    expect(one?.span.line).toBe(33);
  });

  test("not one that comes after it", () => {
    const earlier = reading(["0.14 in"], { supersedes: "R-2" });
    expect(inDay({ readings: [earlier, second] })).toEqual([
      "reading `R-1` supersedes `R-2`, which comes after it",
    ]);
  });
});
