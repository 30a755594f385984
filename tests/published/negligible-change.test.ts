// AC 43.13-1B, 8 Sep 1998, change 1 of 27 Sep 2001, par. 10-2c: negligible is one pound or less
// where the empty weight is less than 5,000 lb, two up to 50,000 lb, five above; and a movement
// of the centre of gravity of less than 0.05 % MAC for fixed wings.

import { describe, expect, test } from "vitest";
import {
  negligibleChangeSource,
  negligibleChordPercent,
  negligibleWeight,
} from "../../src/model/published/negligible-change.ts";
import { quantity } from "../support/typed-quantity.ts";
import { weighed } from "../support/weighed.ts";

test.each([
  ["900 lb", "1 lb"],
  ["4999.99 lb", "1 lb"],
  ["5000 lb", "2 lb"],
  ["50000 lb", "2 lb"],
  ["50001 lb", "5 lb"],
  ["2267 kg", "1 lb"],
  ["2268 kg", "2 lb"],
])("at %s empty, %s or less", (empty, most) => {
  expect(negligibleWeight(quantity(empty)).typed).toBe(most);
});

test("the movement and the paragraph", () => {
  expect(negligibleChordPercent.toFraction()).toBe("1/20");
  expect(negligibleChangeSource).toMatchObject({ place: "par. 10-2c", status: "read" });
});

describe("in a register, for an aircraft of 1000 lb with a chord of 50 in", () => {
  const made = (items: string, chord = "mac: { lemac: 20 in, temac: 70 in }\n") => {
    const { ledger } = weighed(`${chord}weighings:
  - { id: W-1, on: 2026-01-01, title: First, points: [{ at: all, reads: 1000 lb, arm: 30 in }] }
changes:
  - { id: C-1, on: 2026-02-01, title: Small, ${items} }
`);
    const change = ledger.events.find(({ kind }) => kind === "change");
    return change?.kind === "change" ? change.state.negligible : undefined;
  };

  test.each([
    ["exactly one pound in", "in: [{ what: box, weight: 1 lb, arm: 30 in }]", true],
    ["exactly one pound out", "out: [{ what: box, weight: 1 lb, arm: 30 in }]", true],
    ["a hair more", "in: [{ what: box, weight: 1.001 lb, arm: 30 in }]", false],
    [
      "a heavy exchange that comes to nothing",
      "in: [{ what: new, weight: 20 lb, arm: 30 in }], out: [{ what: old, weight: 20 lb, arm: 30 in }]",
      true,
    ],
  ])("%s", (_, items, negligible) => {
    expect(made(items)).toMatchObject({ weight: negligible, largest: { typed: "1 lb" } });
  });

  test("the movement is looked at by itself: 0.05 % of 50 in is 0.025 in, and not negligible", () => {
    const shift = (to: string) =>
      made(
        `in: [{ what: box, weight: 5 lb, arm: ${to} }], out: [{ what: box, weight: 5 lb, arm: 30 in }]`,
      );
    // 5 lb moved by 5 in moves 1000 lb by 0.025 in.
    expect(shift("35 in")).toMatchObject({ weight: true, cg: false });
    expect(shift("34.99 in")).toMatchObject({ weight: true, cg: true });
    expect(shift("25 in")).toMatchObject({ weight: true, cg: false });
  });

  test("without a chord nothing is said about the movement", () => {
    expect(made("in: [{ what: box, weight: 1 lb, arm: 30 in }]", "")).not.toHaveProperty("cg");
  });
});
