import { describe, expect, test } from "vitest";
import type { BalanceLedger } from "../../../src/compute/ledgers/balance.ts";
import { emptyOf, firstCase, numbers, weighed } from "../../support/weighed.ts";

const whole = (id: string, on: string, weight: string, arm = "30 in") =>
  `  - { id: ${id}, on: ${on}, title: Weighing ${id}, points: [{ at: all, reads: ${weight}, arm: ${arm} }] }\n`;
const box = (weight: string, arm: string, more = "") =>
  `[{ what: box, weight: ${weight}, arm: ${arm}${more} }]`;
const change = (id: string, on: string, rest: string) =>
  `  - { id: ${id}, on: ${on}, title: Change ${id}, ${rest} }\n`;

/** What happened to the empty weight, one line each. */
function story({ events }: BalanceLedger): string[] {
  return events.map((event) => {
    if (event.kind !== "change")
      return `${event.kind} ${event.date}: ${event.state.sum.weight.typed}`;
    const { change: made, standing, after } = event.state;
    return `${made.id} ${standing}: ${after?.weight.typed ?? "-"}`;
  });
}

describe("the empty weight", () => {
  test("starts anew at every weighing of the whole aircraft, and takes the changes after it", () => {
    const { ledger } = weighed(
      `weighings:\n${whole("W-2", "2026-06-01", "1010 lb")}${whole("W-1", "2026-02-01", "1000 lb")}changes:\n` +
        change("C-3", "2026-07-01", `in: ${box("4 lb", "10 in")}`) +
        change("C-1", "2026-01-01", `in: ${box("7 lb", "10 in")}`) +
        change("C-2", "2026-03-01", `in: ${box("5 lb", "10 in")}, out: ${box("1 lb", "50 in")}`),
    );
    expect(story(ledger)).toEqual([
      "C-1 too early: -",
      "weighing 2026-02-01: 1000 lb",
      "C-2 counted: 1004 lb",
      "weighing 2026-06-01: 1010 lb",
      "C-3 counted: 1014 lb",
    ]);
    expect(emptyOf(ledger)).toMatchObject({ weight: 1014, basis: "weighed", changes: 1 });
    const second = ledger.events[3];
    expect(second?.kind === "weighing" && second.before?.weight.typed).toBe("1004 lb");
  });

  test("on the day of a weighing, a change is before it or after it as the builder says", () => {
    const on = (weighedWith: boolean) =>
      weighed(
        `weighings:\n${whole("W-1", "2026-02-01", "1000 lb")}changes:\n` +
          change("C-1", "2026-02-01", `in: ${box("5 lb", "10 in")}, weighed-with: ${weighedWith}`),
      ).ledger;
    expect(story(on(true))).toEqual(["C-1 too early: -", "weighing 2026-02-01: 1000 lb"]);
    expect(story(on(false))).toEqual(["weighing 2026-02-01: 1000 lb", "C-1 counted: 1005 lb"]);
  });

  test("weighings on one day stand in the order typed", () => {
    const { ledger } = weighed(
      `weighings:\n${whole("W-1", "2026-02-01", "1000 lb")}${whole("W-2", "2026-02-01", "1001 lb")}`,
    );
    expect(story(ledger)).toEqual(["weighing 2026-02-01: 1000 lb", "weighing 2026-02-01: 1001 lb"]);
  });

  test("there is none while nothing was weighed, and no case is worked out", () => {
    const { ledger } = weighed(
      `cases:\n  - { id: L-1, title: One, items: ${box("1 lb", "1 in")} }\n`,
    );
    expect(ledger).toMatchObject({ weighings: [], events: [], cases: [] });
    expect(ledger.empty).toBeUndefined();
  });

  test("weighings of parts do not make one", () => {
    const { ledger } = weighed(
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: Tail, of: tail, points: [{ at: all, reads: 40 lb, tare: 1 lb, arm: 240 in }] }\n",
    );
    expect(ledger.empty).toBeUndefined();
    expect(ledger.weighings[0]?.sum.weight.typed).toBe("39 lb");
  });

  test("its parts have no place on the chord of the whole, nor has what a change comes to", () => {
    const { ledger } = weighed(`mac: { lemac: 20 in, temac: 70 in }
weighings:
  - { id: W-1, on: 2026-02-01, title: Tail, of: tail, points: [{ at: all, reads: 40 lb, arm: 240 in }] }
${whole("W-2", "2026-03-01", "1000 lb")}changes:
${change("C-1", "2026-04-01", `in: ${box("5 lb", "10 in")}`)}`);
    expect(ledger.weighings.map(({ sum }) => sum.chordPercent?.valueOf())).toEqual([undefined, 20]);
    const [, made] = ledger.events;
    expect(made?.kind === "change" && made.state.sum.chordPercent).toBeUndefined();
    expect(made?.kind === "change" && made.state.after?.chordPercent).toBeDefined();
  });
});

describe("a projection", () => {
  const tail =
    "  - { id: W-1, on: 2026-01-01, title: Tail, of: tail, points: [{ at: all, reads: 40 lb, arm: 240 in }] }\n";
  const projection = `projection: { on: 2026-02-01, weighings: [W-1], items: ${box("960 lb", "20 in", ", estimated: true")} }\n`;

  test("counts the parts that were weighed by their own centre of gravity", () => {
    const { ledger } = weighed(
      `weighings:\n${tail}${projection}changes:\n${change("C-1", "2026-03-01", `in: ${box("10 lb", "20 in")}`)}`,
    );
    expect(story(ledger)).toEqual(["projection 2026-02-01: 1000 lb", "C-1 counted: 1010 lb"]);
    expect(ledger.projection).toMatchObject({ weighed: { typed: "40 lb" } });
    expect(emptyOf(ledger)).toMatchObject({ moment: 29_000, basis: "projected" });
  });

  test("gives way to a weighing, and stands before it only if it is older", () => {
    const startingOn = (on: string) =>
      story(weighed(`weighings:\n${tail}${whole("W-2", on, "1003 lb")}${projection}`).ledger);
    expect(startingOn("2026-04-01")).toEqual([
      "projection 2026-02-01: 1000 lb",
      "weighing 2026-04-01: 1003 lb",
    ]);
    expect(startingOn("2026-02-01")).toEqual([
      "projection 2026-02-01: 1000 lb",
      "weighing 2026-02-01: 1003 lb",
    ]);
    expect(startingOn("2026-01-15")).toEqual(["weighing 2026-01-15: 1003 lb"]);
  });

  test("makes every case an estimate; after a weighing only those with estimated items", () => {
    const estimated = (base: string, items: string) =>
      firstCase(weighed(`${base}cases:\n  - { id: L-1, title: One, items: ${items} }\n`).ledger)
        .estimated;
    const weighing = `weighings:\n${whole("W-2", "2026-03-01", "1000 lb")}`;
    expect(estimated(`weighings:\n${tail}${projection}`, box("1 lb", "1 in"))).toBe(true);
    expect(estimated(weighing, box("1 lb", "1 in"))).toBe(false);
    expect(estimated(weighing, box("1 lb", "1 in", ", estimated: true"))).toBe(true);
  });

  test("a part that weighs nothing is not counted", () => {
    const { ledger } = weighed(
      `weighings:\n${tail.replace("reads: 40 lb", "reads: 1 lb, tare: 1 lb")}${projection}`,
    );
    expect(emptyOf(ledger)).toMatchObject({ weight: 960, moment: 19_200 });
  });
});

describe("loading cases", () => {
  test("carry the moment of the empty aircraft exactly, though its arm does not end", () => {
    const { ledger } = weighed(`weighings:
  - id: W-1
    on: 2026-01-01
    title: Two scales
    points: [{ at: front, reads: 1 lb, arm: 0 in }, { at: back, reads: 2 lb, arm: 1 in }]
cases:
  - { id: L-1, title: Nothing aboard, items: [] }
`);
    const loaded = firstCase(ledger);
    expect(loaded.sum.moment.toFraction()).toBe("2");
    expect(loaded.sum.cg?.amount.toFraction()).toBe("2/3");
    expect(loaded.lines.map(({ load, moment }) => [load.role, moment.valueOf()])).toEqual([
      ["empty", 2],
    ]);
  });

  test("take counts and volumes, and arms in other units", () => {
    const { ledger } = weighed(`weighings:
${whole("W-1", "2026-01-01", "1000 lb")}cases:
  - id: L-1
    title: Loaded
    items:
      - { what: people, count: 2, weight: 170 lb, arm: 36 in }
      - { what: fuel, volume: 24 qt, density: 6 lb/gal, arm: 660.4 mm }
`);
    expect(numbers(firstCase(ledger))).toMatchObject({
      weight: 1000 + 340 + 36,
      moment: 30_000 + 340 * 36 + 36 * 26,
    });
  });

  test("when nothing is left to weigh, there is no centre of gravity and no verdict to trust", () => {
    const { ledger, found } = weighed(`weighings:
  - id: W-1
    on: 2026-01-01
    title: Slip
    points: [{ at: all, reads: 10 lb, arm: 30 in }]
    out: [{ what: fuel, weight: 100 lb, arm: 20 in }]
limits: { source: { document: Sheet }, max-weight: 1500 lb }
cases:
  - { id: L-1, title: Light, items: [{ what: pilot, weight: 170 lb, arm: 36 in }] }
changes:
${change("C-1", "2026-02-01", `in: ${box("5 lb", "10 in")}`)}`);
    expect(ledger.empty?.sum).not.toHaveProperty("cg");
    expect(firstCase(ledger).verdict.kind).toBe("no weight");
    expect(found.map(({ message }) => message)).toEqual([
      "weighing `W-1` comes to -90 lb",
      "loading case `L-1`, Light: all together weighs nothing, so nothing can be in balance",
    ]);
    const made = ledger.events.find(({ kind }) => kind === "change");
    expect(made?.kind === "change" && made.state).not.toHaveProperty("movement");
  });
});
