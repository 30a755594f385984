// The register of weight and balance: what it reads as, and every slip at its place.

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { places, readSmall } from "../support/temporary-journal.ts";

const head = `datum: firewall
empty-weight: { oil: in, unusable-fuel: out }
`;
const read = (yaml: string) => readSmall({ "balance.yaml": head + yaml });

/** The one fault, where it stands in the file, and what it says. */
function fault(yaml: string) {
  const { diagnostics } = read(yaml);
  const [one, ...more] = diagnostics;
  expect(more.map(({ message }) => message)).toEqual([]);
  if (!one) throw new Error("nothing is wrong with it");
  const { code, message, span, help, severity } = one;
  const under = span.text.slice(span.column - 1, span.column - 1 + span.length);
  return { code, message, severity, under, line: span.line - 2, help };
}

const point = "points: [{ at: all, reads: 100 lb, arm: 10 in }]";
const weighing = (more = "", id = "W-1", on = "2026-02-01") =>
  `weighings:\n  - { id: ${id}, on: ${on}, title: First, ${point}${more} }\n`;
const limits = (text: string) => `limits: { source: { document: Sheet }, ${text} }\n`;
const item = (text: string) =>
  `cases:\n  - { id: L-1, title: One, items: [{ what: fuel, arm: 5 in, ${text} }] }\n`;

test("a journal without the register has no weight and balance, and nothing is missing", () => {
  const { build, diagnostics } = readSmall({});
  expect(diagnostics).toEqual([]);
  expect(build).toBeDefined();
  expect(build).not.toHaveProperty("balance");
});

test("a whole register reads as typed, by date", () => {
  const { build, diagnostics } = read(`mac: { lemac: 10 in, temac: 60 in }
limits:
  source: { document: Sheet, edition: rev B, place: page 2 }
  max-weight: 1500 lb
  forward: 20 in
  aft: [{ weight: 900 lb, arm: 30 in }, { weight: 1500 lb, arm: 28 in }]
weighings:
  - id: W-2
    on: 2026-05-01
    title: Whole
    points: [{ at: left main, reads: 650 lb, tare: 5 lb, arm: 70 in }]
    out: [{ what: fuel, volume: 30 gal, density: 5.9 lb/gal, arm: 95 in }]
    in: [{ what: seats, count: 2, weight: 12 lb, arm: 68.5 in, estimated: true }]
    place: hangar
    level: longerons
    with: [caliper]
    who: [ada, jon]
    note: doors shut
  - { id: W-1, on: 2026-02-01, title: Tail, of: tail, ${point} }
projection: { on: 2026-03-01, weighings: [W-1], items: [], note: early }
changes:
  - { id: C-1, on: 2026-06-01, title: Radio, in: [{ what: radio, weight: 3 lb, arm: 20 in }], note: new }
cases:
  - { id: L-1, title: Solo, extreme: forward, items: [], note: light, private: true }
`);
  expect(diagnostics).toEqual([]);
  const balance = build?.balance;
  expect(balance).toMatchObject({
    datum: "firewall",
    emptyWeight: { oil: "in", unusableFuel: "out" },
    units: { weight: { symbol: "lb" }, arm: { symbol: "in" } },
    chord: { leading: { typed: "10 in" }, trailing: { typed: "60 in" } },
    limits: {
      citation: { document: "Sheet", edition: "rev B", place: "page 2" },
      maxWeight: { typed: "1500 lb" },
      forward: { kind: "constant", arm: { typed: "20 in" } },
      aft: { kind: "corners", corners: [{ arm: { typed: "30 in" } }, { arm: { typed: "28 in" } }] },
    },
    projection: { date: "2026-03-01", weighings: ["W-1"], items: [], note: "early" },
    changes: [{ id: "C-1", day: "2026-06-01", out: [], note: "new" }],
    cases: [{ id: "L-1", extreme: "forward", note: "light", private: true }],
  });
  expect(balance?.weighings.map(({ id, of }) => [id, of])).toEqual([
    ["W-1", "tail"],
    ["W-2", undefined],
  ]);
  expect(balance?.weighings[1]).toMatchObject({
    points: [{ at: "left main", reads: { typed: "650 lb" }, tare: { typed: "5 lb" } }],
    out: [{ name: "fuel", made: "30 gal × 5.9 lb/gal", weight: { typed: "177 lb" } }],
    in: [{ name: "seats", made: "2 × 12 lb", weight: { typed: "24 lb" }, estimated: true }],
    place: "hangar",
    level: "longerons",
    with: [{ instrument: "caliper" }],
    who: ["ada", "jon"],
    note: "doors shut",
    day: "2026-05-01",
  });
});

describe("sums are shown in the units typed first", () => {
  test.each([
    [
      "those of a weighing",
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: First, points: [{ at: all, reads: 100 kg, arm: 10 mm }] }\n",
    ],
    [
      "those of a projection",
      "projection: { on: 2026-02-01, items: [{ what: wings, weight: 100 kg, arm: 10 mm }] }\n",
    ],
    [
      "those of a change",
      "changes:\n  - { id: C-1, on: 2026-02-01, title: One, out: [{ what: wings, weight: 100 kg, arm: 10 mm }] }\n",
    ],
    [
      "those of a case",
      "cases:\n  - { id: L-1, title: One, items: [{ what: wings, weight: 100 kg, arm: 10 mm }] }\n",
    ],
  ])("%s", (_, yaml) => {
    expect(read(yaml).build?.balance?.units).toMatchObject({
      weight: { symbol: "kg" },
      arm: { symbol: "mm" },
    });
  });

  test("pounds and inches where there are none", () => {
    expect(read("").build?.balance?.units).toMatchObject({
      weight: { symbol: "lb" },
      arm: { symbol: "in" },
    });
  });
});

describe("an entry that tells of it", () => {
  const days = {
    "days/2026-01-31.md": "---\ndate: 2026-01-31\n---\nWeighed it, late.\n",
  };
  const on = (day: string) =>
    readSmall({ ...days, "balance.yaml": head + weighing(`, day: ${day}`) });

  test("is the one named", () => {
    expect(on("2026-01-31").diagnostics).toEqual([]);
    expect(on("2026-01-31").build?.balance?.weighings[0]?.day).toBe("2026-01-31");
  });

  test("has to be there when it is named", () => {
    const { diagnostics } = on("2026-01-30");
    expect(places(diagnostics)).toEqual(["balance.yaml:4:101 unknown-name"]);
    expect(diagnostics[0]).toMatchObject({
      message: "no entry is of 2026-01-30",
      label: "did you mean `2026-01-31`?",
    });
    const alone = readSmall({ "balance.yaml": head + weighing(", day: 2026-01-30") });
    expect(alone.diagnostics[0]).not.toHaveProperty("label");
  });
});

describe("slips of a weighing", () => {
  test.each([
    ["an unknown key", weighing(", scales: two"), "unknown-key", "scales", 2],
    ["an unknown person", weighing(", who: [adda]"), "unknown-name", "adda", 2],
    ["unknown scales", weighing(", with: [calliper]"), "unknown-name", "calliper", 2],
    ["an unknown part", weighing(", of: tale"), "unknown-name", "tale", 2],
    [
      "tare above the reading",
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: First, points: [{ at: all, reads: 100 lb, tare: 46 kg, arm: 1 in }] }\n",
      "not-a-quantity",
      "46 kg",
      2,
    ],
    [
      "a reading below zero",
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: First, points: [{ at: all, reads: -100 lb, arm: 1 in }, { at: b, reads: 1 lb, arm: 1 in }] }\n",
      "not-a-quantity",
      "-100 lb",
      2,
    ],
    [
      "a force for a weight",
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: First, points: [{ at: all, reads: 100 lbf, arm: 1 in }, { at: b, reads: 1 lb, arm: 1 in }] }\n",
      "wrong-dimension",
      "100 lbf",
      2,
    ],
    [
      "no points",
      "weighings:\n  - { id: W-1, on: 2026-02-01, title: First, points: [] }\n",
      "missing-key",
      "{ id: W-1, on: 2026-02-01, title: First, points: [] }",
      2,
    ],
  ])("%s", (_, yaml, code, under, line) => {
    expect(fault(yaml)).toMatchObject({ code, under, line, severity: "error" });
  });

  test("two of one name, whatever their letters", () => {
    expect(fault(`${weighing()}${weighing("", "w-1").replace("weighings:\n", "")}`)).toMatchObject({
      code: "duplicate-id",
      message: "another weighing is called `w-1`",
      line: 3,
    });
  });
});

describe("slips of an item", () => {
  test.each([
    ["no weight at all", "estimated: true", "missing-key", "`fuel` has no weight"],
    [
      "a volume without its density",
      "volume: 3 gal",
      "missing-key",
      "`fuel` needs both `volume` and `density`, and nothing else",
    ],
    [
      "a density without its volume",
      "density: 6 lb/gal",
      "missing-key",
      "`fuel` needs both `volume` and `density`, and nothing else",
    ],
    [
      "a count of volumes",
      "count: 2, volume: 3 gal, density: 6 lb/gal",
      "missing-key",
      "`fuel` needs both `volume` and `density`, and nothing else",
    ],
    [
      "a weight and a volume",
      "weight: 18 lb, volume: 3 gal, density: 6 lb/gal",
      "missing-key",
      "`fuel` has a weight and says it in another way too",
    ],
    [
      "a density that is none",
      "volume: 3 gal, density: 6 lb",
      "not-a-quantity",
      "`6 lb` is not a density: expected a mass for each unit of volume",
    ],
    [
      "a volume below zero",
      "volume: -3 gal, density: 6 lb/gal",
      "not-a-quantity",
      "`-3 gal` is not a volume: expected zero or more",
    ],
    [
      "a weight below zero",
      "weight: -3 lb",
      "not-a-quantity",
      "`-3 lb` is not a weight: expected zero or more",
    ],
  ])("%s", (_, text, code, message) => {
    const { diagnostics } = read(item(text));
    expect(diagnostics[0]).toMatchObject({ code, message });
  });

  test("the help for a sign says where it belongs", () => {
    const { diagnostics } = read(item("weight: -3 lb"));
    expect(diagnostics[0]?.help).toEqual([
      "write it without the sign; what is taken out stands under `out`",
    ]);
  });
});

describe("slips of the limits", () => {
  test.each([
    [
      "no limit",
      "limits: { source: { document: Sheet } }\n",
      "missing-key",
      "the limits name a source and no limit",
    ],
    [
      "no source",
      "limits: { aft: 30 in }\n",
      "missing-key",
      "limits of weight and balance needs `source`",
    ],
    [
      "one corner",
      limits("aft: [{ weight: 900 lb, arm: 30 in }]"),
      "wrong-shape",
      "the `aft` limit has one corner, which makes no line",
    ],
    [
      "corners out of order",
      limits(
        "aft: [{ weight: 900 lb, arm: 30 in }, { weight: 1500 lb, arm: 30 in }, { weight: 500 kg, arm: 30 in }]",
      ),
      "wrong-shape",
      "the corner at `500 kg` comes after a heavier one",
    ],
    [
      "a greatest weight of nothing",
      limits("max-weight: 0 lb, aft: 3 in"),
      "not-a-quantity",
      "`0 lb` is not a weight to compare with: expected more than zero",
    ],
    [
      "crossed",
      limits("forward: 30 in, aft: 20 in"),
      "wrong-shape",
      "the forward limit lies behind the aft limit",
    ],
    [
      "crossed at a corner",
      limits(
        "forward: [{ weight: 900 lb, arm: 20 in }, { weight: 1500 lb, arm: 31 in }], aft: 30 in",
      ),
      "wrong-shape",
      "the forward limit lies behind the aft limit at 1500 lb",
    ],
  ])("%s", (_, yaml, code, message) => {
    expect(fault(yaml)).toMatchObject({ code, message });
  });

  test("limits that touch, and corners of two weights, are fine", () => {
    expect(
      read(
        limits(
          "forward: [{ weight: 900 lb, arm: 20 in }, { weight: 1500 lb, arm: 30 in }], aft: [{ weight: 800 lb, arm: 30 in }, { weight: 1500 lb, arm: 30 in }]",
        ),
      ).diagnostics,
    ).toEqual([]);
  });

  test("a chord that ends before it begins", () => {
    expect(fault("mac: { lemac: 60 in, temac: 1000 mm }\n")).toMatchObject({
      code: "wrong-shape",
      message: "the trailing edge at `1000 mm` does not lie behind the leading edge at `60 in`",
    });
  });
});

describe("slips of a change", () => {
  const change = (on: string, more: string) =>
    `${weighing()}changes:\n  - { id: C-1, on: ${on}, title: Radio${more} }\n`;
  const radio = ", in: [{ what: radio, weight: 3 lb, arm: 20 in }]";

  test("on the day of a weighing it has to say which side of it", () => {
    expect(fault(change("2026-02-01", radio))).toMatchObject({
      code: "missing-key",
      under: "2026-02-01",
      line: 4,
      message: "change `C-1` is of the day of a weighing, which may have it already",
    });
  });

  test("on any other day there is nothing to say", () => {
    expect(fault(change("2026-02-02", `${radio}, weighed-with: true`))).toMatchObject({
      code: "wrong-shape",
      message: "change `C-1` says `weighed-with`, but nothing was weighed on 2026-02-02",
    });
  });

  test("nothing in and nothing out is no change", () => {
    expect(fault(change("2026-02-02", ""))).toMatchObject({
      code: "missing-key",
      message: "change `C-1` neither puts anything in nor takes anything out",
    });
  });
});

describe("slips of a projection", () => {
  const tail = weighing(", of: tail");
  const projection = (weighings: string) =>
    `projection: { on: 2026-03-01, weighings: [${weighings}] }\n`;

  test("a weighing that is not there, or is of the whole aircraft", () => {
    expect(fault(`${tail}${projection("W-11")}`)).toMatchObject({
      code: "unknown-name",
      message: "no weighing of a part is called `W-11`",
    });
    expect(fault(`${weighing()}${projection("W-1")}`)).toMatchObject({ code: "unknown-name" });
  });

  test("a weighing counted twice", () => {
    expect(fault(`${tail}${projection("W-1, W-1")}`)).toMatchObject({
      code: "duplicate-id",
      message: "weighing `W-1` is counted twice",
    });
  });
});

test("what is at fault is left out, and the rest is read", () => {
  const { build, diagnostics } = read(
    "cases:\n  - { id: L-1, title: One, items: [{ what: a, arm: 1 in }, { what: b, weight: 1 lb, arm: 1 in }] }\n",
  );
  expect(diagnostics).toHaveLength(1);
  expect(build?.balance?.cases[0]?.items.map(({ name }) => name)).toEqual(["b"]);
});

test("a register that cannot be read at all leaves the journal without it", () => {
  const { build, diagnostics } = readSmall({ "balance.yaml": "datum: firewall\n" });
  expect(diagnostics.map(({ message }) => message)).toEqual(["balance.yaml needs `empty-weight`"]);
  expect(build).not.toHaveProperty("balance");
});

test("the register that README.md shows can be read", () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const [, yaml = ""] = /```yaml\n(datum:[\s\S]*?)```/.exec(readme) ?? [];
  const scales = ["left", "right", "nose"].map((side) => `  - { id: scale-${side}, title: Scale }`);
  const { build, diagnostics } = readSmall({
    "balance.yaml": yaml,
    "instruments.yaml": `instruments:\n${scales.join("\n")}\n`,
  });
  expect(diagnostics).toEqual([]);
  expect(build?.balance?.weighings[0]?.points).toHaveLength(3);
  expect(build?.balance?.cases[0]?.items).toHaveLength(2);
});
