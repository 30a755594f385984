import { describe, expect, test } from "vitest";
import { weighed } from "../../support/weighed.ts";

const register = (limits: string, items: string, more = "") => `weighings:
  - { id: W-1, on: 2026-01-01, title: First, points: [{ at: all, reads: 1000 lb, arm: 30 in }] }
limits: { source: { document: Sheet, edition: rev B }, ${limits} }
cases:
  - { id: L-1, title: Loaded, items: ${items}${more} }
`;
const box = (weight: string, arm: string, more = "") =>
  `[{ what: box, weight: ${weight}, arm: ${arm}${more} }]`;

const found = (yaml: string) => weighed(yaml).found;
const messages = (limits: string, items: string) =>
  found(register(limits, items)).map(({ message }) => message);

test("a case on a limit is inside, a hair beyond it is found", () => {
  // 1000 lb at 30 in and 200 lb at 42 in come to 32 in.
  expect(messages("aft: 32 in", box("200 lb", "42 in"))).toEqual([]);
  expect(messages("aft: 31.9999 in", box("200 lb", "42 in"))).toEqual([
    "loading case `L-1`, Loaded: its centre of gravity is behind the aft limit by 0.0001 in",
  ]);
});

describe("how far it is outside is said exactly or as more than", () => {
  test.each([
    ["max-weight: 1100 lb", "150 lb", "30 in", "above the greatest weight by 50 lb"],
    [
      "aft: 31 in",
      "500 lb",
      "40 in",
      "its centre of gravity is behind the aft limit by more than 2.33 in",
    ],
    [
      "forward: 31 in",
      "500 lb",
      "31 in",
      "its centre of gravity is ahead of the forward limit by more than 0.66 in",
    ],
    [
      "aft: 30.3333 in",
      "500 lb",
      "31 in",
      "its centre of gravity is behind the aft limit by more than 0.000033 in",
    ],
    [
      "aft: 30.33333333 in",
      "500 lb",
      "31 in",
      "its centre of gravity is behind the aft limit by less than 0.000001 in",
    ],
  ])("%s, %s at %s", (limits, weight, arm, expected) => {
    expect(messages(limits, box(weight, arm))).toEqual([
      `loading case \`L-1\`, Loaded: ${expected}`,
    ]);
  });

  test("everything that is broken stands in one message", () => {
    expect(messages("max-weight: 1100 lb, aft: 31 in", box("200 lb", "42 in"))).toEqual([
      "loading case `L-1`, Loaded: above the greatest weight by 100 lb; its centre of gravity is behind the aft limit by 1 in",
    ]);
  });
});

test("says where the limits come from, and what is an estimate", () => {
  const [one] = found(register("aft: 31 in", box("200 lb", "42 in", ", estimated: true")));
  expect(one).toMatchObject({
    severity: "finding",
    label: "outside the limits",
    notes: ["aft limit 31 in", "limits from Sheet (rev B)", "some of its weights are estimates"],
  });
  expect(one?.span.text).toContain("L-1");
  expect(one).not.toHaveProperty("private");
});

test("says that the empty weight is only projected", () => {
  const [one] = found(`projection: { on: 2026-01-01, items: ${box("1000 lb", "30 in")} }
limits: { source: { document: Sheet }, max-weight: 900 lb }
cases:
  - { id: L-1, title: Nothing aboard, items: [] }
`);
  expect(one?.notes.at(-1)).toBe("the empty weight is projected, not weighed");
});

test("a private case makes a private finding", () => {
  const [one] = found(register("aft: 31 in", box("200 lb", "42 in"), ", private: true"));
  expect(one?.private).toBe(true);
});

test("without limits or without cases there is nothing to find", () => {
  const [weighings = ""] = register("aft: 31 in", "[]").split("limits:");
  expect(found(weighings)).toEqual([]);
  expect(
    found(`${weighings}cases:\n  - { id: L-1, title: One, items: ${box("9000 lb", "900 in")} }\n`),
  ).toEqual([]);
});
