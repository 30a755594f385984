import { describe, expect, test } from "vitest";
import { type EnvelopeVerdict, judgeLoading } from "../../src/compute/envelope.ts";
import type { ArmLimit } from "../../src/model/arm-limit.ts";
import type { BalanceLimits } from "../../src/model/balance.ts";
import { span } from "../support/small-build.ts";
import { quantity } from "../support/typed-quantity.ts";

const forward: ArmLimit = {
  kind: "corners",
  corners: [
    { weight: quantity("1000 lb"), arm: quantity("60 in") },
    { weight: quantity("1500 lb"), arm: quantity("65 in") },
  ],
};
const limits: BalanceLimits = {
  citation: { document: "Weight sheet" },
  maxWeight: quantity("1500 lb"),
  forward,
  aft: { kind: "constant", arm: quantity("70 in") },
  span: span(),
};

const judge = (weight: string, cg: string | undefined, of: BalanceLimits | undefined = limits) =>
  judgeLoading(quantity(weight), cg === undefined ? undefined : quantity(cg), of);
const rooms = ({ margins }: EnvelopeVerdict) =>
  margins.map(({ limit, room }) => `${limit} ${room.typed}`);

describe("inside", () => {
  test("with the room left to each limit", () => {
    const verdict = judge("1200 lb", "66 in");
    expect(verdict.kind).toBe("inside");
    expect(rooms(verdict)).toEqual(["greatest weight 300 lb", "forward 4 in", "aft 4 in"]);
  });

  test.each([
    ["the forward limit", "1200 lb", "62 in"],
    ["the aft limit", "1200 lb", "70 in"],
    ["the greatest weight", "1500 lb", "66 in"],
    ["the lowest corner", "1000 lb", "60 in"],
    ["the aft limit, typed in millimetres", "1200 lb", "1778 mm"],
  ])("on %s", (_, weight, cg) => {
    expect(judge(weight, cg).kind).toBe("inside");
  });
});

describe("outside, by exactly how much", () => {
  test.each([
    ["1200 lb", "61.9 in", ["greatest weight 300 lb", "forward -0.1 in", "aft 8.1 in"]],
    ["1200 lb", "70.001 in", ["greatest weight 300 lb", "forward 8.001 in", "aft -0.001 in"]],
  ])("%s at %s", (weight, cg, expected) => {
    const verdict = judge(weight, cg);
    expect(verdict.kind).toBe("outside");
    expect(rooms(verdict)).toEqual(expected);
  });

  test("too heavy is said once, although the forward limit ends there too", () => {
    const verdict = judge("1500.5 lb", "66 in");
    expect(verdict).toMatchObject({ kind: "outside", beyond: [] });
    expect(rooms(verdict)).toEqual(["greatest weight -0.5 lb", "aft 4 in"]);
  });

  test("below the weights that the forward limit is given for", () => {
    expect(judge("990 lb", "66 in")).toMatchObject({
      kind: "outside",
      beyond: [
        { limit: "forward", side: "below", end: { typed: "1000 lb" }, by: { typed: "10 lb" } },
      ],
    });
  });

  test("above them, where no greatest weight says it already", () => {
    const { maxWeight: _, ...open } = limits;
    expect(judge("1510 lb", "66 in", open)).toMatchObject({
      kind: "outside",
      margins: [{ limit: "aft" }],
      beyond: [
        { limit: "forward", side: "above", end: { typed: "1500 lb" }, by: { typed: "10 lb" } },
      ],
    });
  });
});

test("without limits, or with one alone, nothing more is said than can be", () => {
  expect(judgeLoading(quantity("1 lb"), quantity("1 in"), undefined)).toEqual({
    kind: "no limits",
    margins: [],
    beyond: [],
  });
  const { citation, span: at } = limits;
  const alone = judge("1200 lb", "900 in", { citation, maxWeight: quantity("1500 lb"), span: at });
  expect(rooms(alone)).toEqual(["greatest weight 300 lb"]);
  expect(alone.kind).toBe("inside");
});

test("what has no weight has no place", () => {
  expect(judge("0 lb", undefined).kind).toBe("no weight");
});
