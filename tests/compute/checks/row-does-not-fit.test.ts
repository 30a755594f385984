import { describe, expect, test } from "vitest";
import { foundBy, messagesOf } from "../../support/found-by.ts";
import { day, smallBuild, span } from "../../support/small-build.ts";
import { cutOut, fastenerRow, layout, stated } from "../../support/small-layout.ts";

describe("row-does-not-fit", () => {
  const misfit = (piece: Parameters<typeof fastenerRow>[0]) =>
    foundBy(
      "row-does-not-fit",
      smallBuild({ days: [day({ layouts: [layout(fastenerRow(piece))] })] }),
    );

  test("says why, what stands in the way, and that the drawing governs", () => {
    const [found] = misfit({
      pitchMin: stated("1/2 in", "4 D"),
      count: { value: 20, span: span() },
      keepOuts: [],
    });
    expect(found).toMatchObject({
      severity: "finding",
      message:
        "row `Upper flange` cannot be laid out: so many rivets would stand a little above 0.2828 in apart, below the least pitch of 0.5 in",
      notes: ["length 6.000 in, edge 2.5 D", "least pitch 0.5 in"],
      help: ["at most 11 fit", "where the drawing gives places of its own, they govern"],
    });
  });

  test("names the stretches kept out", () => {
    const whole = { from: stated("0.1 in").length, to: stated("5.9 in").length };
    const [found] = misfit({
      pitchMin: stated("1/2 in"),
      keepOuts: [{ ...whole, clear: stated("1/8 in", "D"), what: "spar" }],
    });
    expect(found?.notes.at(-1)).toBe("kept out from 0.1 in to 5.9 in, clear by D: spar");
    const [bare] = misfit({ pitchMin: stated("1/2 in"), keepOuts: [whole] });
    expect(bare?.notes.at(-1)).toBe("kept out from 0.1 in to 5.9 in");
  });

  test("holes do not run into each other, nor over an edge", () => {
    const said = (piece: Parameters<typeof fastenerRow>[0]) =>
      misfit(piece).map(({ message }) =>
        message.replace("row `Upper flange` cannot be laid out: ", ""),
      );
    const count = (value: number) => ({ count: { value, span: span() } });
    expect(said(count(60))).toEqual([
      "holes of 0.125 in run into each other at a pitch of a little above 0.0911 in",
    ]);
    expect(said({ ...count(4), hole: stated("0.7 in") })).toEqual([
      "a hole of 0.7 in with its centre 0.3125 in from the edge runs over it",
    ]);
    expect(said({ ...count(4), side: stated("0.05 in") })).toEqual([
      "a hole of 0.125 in with its centre 0.05 in from the edge runs over it",
    ]);
    expect(said({ ...count(4), side: stated("0.5 in"), width: stated("0.55 in") })).toEqual([
      "a hole of 0.125 in with its centre 0.05 in from the edge runs over it",
    ]);
    // Left to the program, the hole is what the row keeps apart.
    expect(said({ pitchMin: stated("0.1 in"), hole: stated("0.25 in") })).toEqual([]);
  });

  test("is not found where a row fits", () => {
    expect(misfit({})).toEqual([]);
    expect(
      messagesOf("row-does-not-fit", smallBuild({ days: [day({ layouts: [layout(cutOut())] })] })),
    ).toEqual([]);
  });
});
