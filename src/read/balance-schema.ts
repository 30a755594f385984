import { belongings, extremes } from "../model/balance.ts";
import type { Registers } from "../model/build.ts";
import { date } from "./clock-syntax.ts";
import { parseDensity } from "./density-syntax.ts";
import { forAircraft } from "./identity.ts";
import { addSyntaxFault, type QuantityNode, quantityOf } from "./quantity-shape.ts";
import { count } from "./registers-schema.ts";
import {
  choice,
  id,
  list,
  nameOf,
  optional,
  record,
  required,
  type Shape,
  text,
  textAs,
  yesOrNo,
} from "./shape.ts";

const anyMass = quantityOf("mass");

/** A weight of zero or more: what is taken out stands under `out`, not below zero. */
const weight: Shape<QuantityNode> = (node, faults) => {
  const read = anyMass(node, faults);
  if (!read || read.quantity.amount.gte(0)) return read;
  return faults.add("not-a-quantity", read.span, {
    message: `\`${read.node.text}\` is not a weight: expected zero or more`,
    help: ["write it without the sign; what is taken out stands under `out`"],
  });
};

const someWeight: Shape<QuantityNode> = (node, faults) => {
  const read = weight(node, faults);
  if (!read || read.quantity.amount.gt(0)) return read;
  return faults.add("not-a-quantity", read.span, {
    message: `\`${read.node.text}\` is not a weight to compare with: expected more than zero`,
    help: ["write the weight that the limit is for, as in `1500 lb`"],
  });
};

const volume: Shape<QuantityNode> = (node, faults) => {
  const read = quantityOf("volume")(node, faults);
  if (!read || read.quantity.amount.gte(0)) return read;
  return faults.add("not-a-quantity", read.span, {
    message: `\`${read.node.text}\` is not a volume: expected zero or more`,
    help: ["write it without the sign; what is taken out stands under `out`"],
  });
};

const arm = quantityOf("length");

const density = textAs((node, faults) => {
  const parsed = parseDensity(node.text);
  return parsed.ok
    ? { density: parsed.density, span: node.span }
    : addSyntaxFault("not-a-quantity", "a density", node, parsed, faults);
});

/** Something with a weight, or a volume and its density, at an arm. */
const item = record("an item", {
  what: required(text, "what: fuel"),
  weight: optional(weight, "weight: 170 lb"),
  count: optional(count, "count: 2"),
  volume: optional(volume, "volume: 30 gal"),
  density: optional(density, "density: 6 lb/gal"),
  arm: required(arm, "arm: 95 in"),
  estimated: optional(yesOrNo, "estimated: true"),
  part: optional(text, "part: 4471-2"),
  serial: optional(text, 'serial: "0093"'),
});
export type TypedItem = NonNullable<ReturnType<typeof item>>;

const itemExample = "[{ what: fuel, volume: 30 gal, density: 6 lb/gal, arm: 95 in }]";
const items = list("items", item, itemExample);

const corner = record("a corner of a limit", {
  weight: required(someWeight, "weight: 1200 lb"),
  arm: required(arm, "arm: 60 in"),
});
export type TypedCorner = NonNullable<ReturnType<typeof corner>>;
const corners = list(
  "corners",
  corner,
  "[{ weight: 900 lb, arm: 60 in }, { weight: 1500 lb, arm: 63 in }]",
);

/** One arm for every weight, or corners. */
export type TypedArmLimit =
  | { readonly arm: QuantityNode }
  | { readonly corners: readonly TypedCorner[]; readonly typed: number };
const armLimit: Shape<TypedArmLimit> = (node, faults) => {
  if (node.kind === "list") {
    const read = corners(node, faults);
    return read && { corners: read, typed: node.items.length };
  }
  const read = arm(node, faults);
  return read && { arm: read };
};

/** The shape of `balance.yaml`, with every name that it may use. */
export function balanceShape(registers: Registers) {
  const people = list("people", nameOf("person", "people.yaml", registers.people), "[ada, jon]");
  const scales = list(
    "instruments",
    nameOf("instrument", "instruments.yaml", registers.instruments),
    "[scale-left, scale-right]",
  );

  const weighing = record("a weighing", {
    id: required(id, "id: W-1"),
    on: required(date, "on: 2027-05-02"),
    title: required(text, "title: First weighing, on three scales"),
    of: optional(nameOf("assembly", "assemblies.yaml", registers.assemblies), "of: empennage"),
    points: required(
      list(
        "points",
        record("a point of a weighing", {
          at: required(text, "at: left main wheel"),
          reads: required(weight, "reads: 650 lb"),
          tare: optional(weight, "tare: 5 lb"),
          arm: required(arm, "arm: 70 in"),
        }),
        "points: [{ at: left main wheel, reads: 650 lb, tare: 5 lb, arm: 70 in }]",
      ),
      "points: [{ at: left main wheel, reads: 650 lb, tare: 5 lb, arm: 70 in }]",
    ),
    out: optional(items, `out: ${itemExample}`),
    in: optional(items, `in: ${itemExample}`),
    place: optional(text, "place: hangar, doors shut"),
    level: optional(text, "level: longerons level, both ways"),
    with: optional(scales, "with: [scale-left, scale-right]"),
    who: optional(people, "who: [ada]"),
    note: optional(text, "note: what was aboard"),
    day: optional(date, "day: 2027-05-02"),
  });

  const change = record("a change of equipment", {
    id: required(id, "id: C-1"),
    on: required(date, "on: 2027-06-01"),
    title: required(text, "title: Second radio"),
    out: optional(items, `out: ${itemExample}`),
    in: optional(items, `in: ${itemExample}`),
    "weighed-with": optional(yesOrNo, "weighed-with: false"),
    note: optional(text, "note: why"),
    day: optional(date, "day: 2027-06-01"),
  });

  const loadingCase = record("a loading case", {
    id: required(id, "id: L-1"),
    title: required(text, "title: Pilot alone, full tanks"),
    extreme: optional(choice("extreme", extremes), "extreme: forward"),
    items: required(items, `items: ${itemExample}`),
    note: optional(text, "note: baggage stays empty"),
    private: optional(yesOrNo, "private: true"),
  });

  const named = <T>(what: string, shape: Shape<T>, example: string) =>
    optional(list(what, shape, example), example);

  return record("balance.yaml", {
    for: forAircraft,
    datum: required(text, "datum: leading edge of the wing at the root"),
    "empty-weight": required(
      record("the definition of the empty weight", {
        oil: required(choice("place for the oil", belongings), "oil: in"),
        "unusable-fuel": required(choice("place for the fuel", belongings), "unusable-fuel: in"),
        note: optional(text, "note: who says so"),
      }),
      "empty-weight: { oil: in, unusable-fuel: in }",
    ),
    mac: optional(
      record("the mean aerodynamic chord", {
        lemac: required(arm, "lemac: 62 in"),
        temac: required(arm, "temac: 114 in"),
      }),
      "mac: { lemac: 62 in, temac: 114 in }",
    ),
    limits: optional(
      record("limits of weight and balance", {
        source: required(
          record("a source", {
            document: required(text, "document: Designer's weight sheet"),
            edition: optional(text, "edition: rev B"),
            place: optional(text, "place: sheet 3"),
          }),
          "source: { document: Designer's weight sheet, edition: rev B }",
        ),
        "max-weight": optional(someWeight, "max-weight: 1500 lb"),
        forward: optional(armLimit, "forward: 63 in"),
        aft: optional(armLimit, "aft: 70 in"),
      }),
      "limits: { source: { document: Designer's weight sheet }, max-weight: 1500 lb, aft: 70 in }",
    ),
    weighings: named(
      "weighings",
      weighing,
      "weighings: [{ id: W-1, on: 2027-05-02, title: First weighing, points: […] }]",
    ),
    projection: optional(
      record("a projection", {
        on: required(date, "on: 2026-11-08"),
        weighings: optional(list("weighings", id, "[W-1]"), "weighings: [W-1]"),
        items: optional(items, `items: ${itemExample}`),
        note: optional(text, "note: where the estimates come from"),
      }),
      "projection: { on: 2026-11-08, items: [{ what: wings, weight: 250 lb, arm: 70 in }] }",
    ),
    changes: named(
      "changes",
      change,
      "changes: [{ id: C-1, on: 2027-06-01, title: Second radio, in: […] }]",
    ),
    cases: named("cases", loadingCase, "cases: [{ id: L-1, title: Pilot alone, items: […] }]"),
  });
}
export type TypedBalance = NonNullable<ReturnType<ReturnType<typeof balanceShape>>>;
