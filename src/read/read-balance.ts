import Fraction from "fraction.js";
import { type ArmLimit, armAt } from "../model/arm-limit.ts";
import type {
  Balance,
  BalanceItem,
  BalanceLimits,
  EquipmentChange,
  LoadingCase,
  MeanChord,
  Projection,
  Weighing,
} from "../model/balance.ts";
import type { Registers } from "../model/build.ts";
import type { CalendarDate } from "../model/calendar.ts";
import type { Span } from "../model/diagnostic.ts";
import { compareQuantities, convert, type Quantity, quantityOf } from "../model/quantity.ts";
import { unitOf } from "../model/unit.ts";
import {
  balanceShape,
  type TypedArmLimit,
  type TypedBalance,
  type TypedItem,
} from "./balance-schema.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import { unique } from "./registers.ts";
import { given } from "./shape.ts";
import type { MapNode, TextNode } from "./typed-tree.ts";

/**
 * Reads `balance.yaml`. What is at fault is left out, so that the rest can be read too.
 * @param entries The dates that have an entry.
 */
export function readBalance(
  tree: MapNode,
  registers: Registers,
  entries: ReadonlySet<CalendarDate>,
  faults: Faults,
): Balance | undefined {
  const typed = balanceShape(registers)(tree, faults);
  if (!typed) return undefined;
  const dayOf = (on: CalendarDate, day: { date: CalendarDate; node: TextNode } | undefined) =>
    tellingDay(on, day, entries, faults);
  const weighings = unique(typed.weighings ?? [], "weighing", faults)
    .map((each) => readWeighing(each, dayOf, faults))
    .sort(byDate);
  const projection = typed.projection && readProjection(typed.projection, weighings, faults);
  const bases = [
    ...weighings.filter(({ of }) => of === undefined),
    ...(projection ? [projection] : []),
  ];
  const changes = unique(typed.changes ?? [], "change of equipment", faults)
    .map((each) => readChange(each, new Set(bases.map(({ date }) => date)), dayOf, faults))
    .sort(byDate);
  const cases = unique(typed.cases ?? [], "loading case", faults).map((each) =>
    readCase(each, faults),
  );
  const register = { weighings, ...given({ projection }), changes, cases };
  return {
    datum: typed.datum.text,
    emptyWeight: {
      oil: typed["empty-weight"].oil.value,
      unusableFuel: typed["empty-weight"]["unusable-fuel"].value,
      ...given({ note: typed["empty-weight"].note?.text }),
    },
    units: unitsOf(register),
    ...register,
    ...given({
      limits: typed.limits && readLimits(typed.limits, faults),
      chord: typed.mac && readChord(typed.mac, faults),
    }),
    span: typed.datum.span,
  };
}

type Typed<Key extends "weighings" | "changes" | "cases"> = NonNullable<TypedBalance[Key]>[number];
type DayOf = (
  on: CalendarDate,
  day: { readonly date: CalendarDate; readonly node: TextNode } | undefined,
) => CalendarDate;

function readWeighing(typed: Typed<"weighings">, dayOf: DayOf, faults: Faults): Weighing {
  const points = typed.node.entries.get("points")?.value;
  if (points?.kind === "list" && points.items.length === 0) {
    faults.add("missing-key", typed.span, {
      message: `weighing \`${typed.id.text}\` has no points`,
      help: ["write `points: [{ at: left main wheel, reads: 650 lb, tare: 5 lb, arm: 70 in }]`"],
    });
  }
  return {
    id: typed.id.text,
    date: typed.on.date,
    title: typed.title.text,
    ...given({ of: typed.of?.text }),
    points: typed.points.map(({ at, reads, tare, arm, span }) => {
      if (tare && compareQuantities(tare.quantity, reads.quantity) > 0) {
        faults.add("not-a-quantity", tare.span, {
          message: `the tare of \`${tare.node.text}\` is more than the scale reads, \`${reads.node.text}\``,
          help: [
            "`reads` is what the scale shows with the aircraft on it, `tare` what it shows with chocks alone",
          ],
        });
      }
      return {
        at: at.text,
        reads: reads.quantity,
        ...given({ tare: tare?.quantity }),
        arm: arm.quantity,
        span,
      };
    }),
    ...readItems(typed, faults),
    ...given({ place: typed.place?.text, level: typed.level?.text, note: typed.note?.text }),
    with: (typed.with ?? []).map(({ text, span }) => ({ instrument: text, span })),
    who: typed.who?.map(({ text }) => text) ?? [],
    day: dayOf(typed.on.date, typed.day),
    span: typed.id.span,
  };
}

function readChange(
  typed: Typed<"changes">,
  baseDates: ReadonlySet<CalendarDate>,
  dayOf: DayOf,
  faults: Faults,
): EquipmentChange {
  const weighedWith = typed["weighed-with"];
  const sameDay = baseDates.has(typed.on.date);
  if (sameDay && weighedWith === undefined) {
    faults.add("missing-key", typed.on.node.span, {
      message: `change \`${typed.id.text}\` is of the day of a weighing, which may have it already`,
      label: "before or after?",
      help: [
        "write `weighed-with: true` when it was aboard or off before the weighing, `weighed-with: false` when it came after",
      ],
    });
  }
  if (!sameDay && weighedWith !== undefined) {
    faults.add("wrong-shape", typed.on.node.span, {
      message: `change \`${typed.id.text}\` says \`weighed-with\`, but nothing was weighed on ${typed.on.date}`,
      help: ["leave `weighed-with` out: the dates say it already, or correct the date"],
    });
  }
  if (!typed.node.entries.has("out") && !typed.node.entries.has("in")) {
    faults.add("missing-key", typed.span, {
      message: `change \`${typed.id.text}\` neither puts anything in nor takes anything out`,
      help: ["write `in: […]`, `out: […]` or both"],
    });
  }
  return {
    id: typed.id.text,
    date: typed.on.date,
    title: typed.title.text,
    ...readItems(typed, faults),
    ...given({ weighedWith, note: typed.note?.text }),
    day: dayOf(typed.on.date, typed.day),
    span: typed.id.span,
  };
}

function readCase(typed: Typed<"cases">, faults: Faults): LoadingCase {
  return {
    id: typed.id.text,
    title: typed.title.text,
    ...given({ extreme: typed.extreme?.value, note: typed.note?.text }),
    items: itemsFrom(typed.items, faults),
    private: typed.private ?? false,
    span: typed.id.span,
  };
}

function readProjection(
  typed: NonNullable<TypedBalance["projection"]>,
  weighings: readonly Weighing[],
  faults: Faults,
): Projection {
  const parts = weighings.filter(({ of }) => of !== undefined).map(({ id }) => id);
  const counted = new Map<string, Span>();
  for (const { text, span } of typed.weighings ?? []) {
    if (!parts.includes(text)) {
      const nearest = nearestName(text, parts);
      faults.add("unknown-name", span, {
        message: `no weighing of a part is called \`${text}\``,
        label: nearest ? `did you mean \`${nearest}\`?` : "a part is weighed with `of:`",
        help: [
          "name weighings that say `of:`; once the whole aircraft was weighed, no projection is needed",
        ],
      });
    } else if (counted.has(text)) {
      faults.add("duplicate-id", span, {
        message: `weighing \`${text}\` is counted twice`,
        help: ["name it once"],
      });
    } else counted.set(text, span);
  }
  return {
    date: typed.on.date,
    weighings: [...counted.keys()],
    items: itemsFrom(typed.items ?? [], faults),
    ...given({ note: typed.note?.text }),
    span: typed.on.node.span,
  };
}

function readItems(
  typed: {
    readonly in?: readonly TypedItem[] | undefined;
    readonly out?: readonly TypedItem[] | undefined;
  },
  faults: Faults,
) {
  return { out: itemsFrom(typed.out ?? [], faults), in: itemsFrom(typed.in ?? [], faults) };
}

function itemsFrom(typed: readonly TypedItem[], faults: Faults): BalanceItem[] {
  return typed.flatMap((each) => {
    const weighed = weightOf(each, faults);
    if (!weighed) return [];
    return [
      {
        name: each.what.text,
        ...weighed,
        arm: each.arm.quantity,
        ...given({ part: each.part?.text, serial: each.serial?.text }),
        estimated: each.estimated ?? false,
        span: each.what.span,
      },
    ];
  });
}

// A weight, so many times a weight, or a volume with its density; never two of them.
function weightOf(
  { what, weight, count, volume, density, span, node }: TypedItem,
  faults: Faults,
): { readonly weight: Quantity; readonly made?: string } | undefined {
  const help = [
    "write `weight: 170 lb`, or `count: 2, weight: 12 lb`, or `volume: 30 gal, density: 6 lb/gal`",
  ];
  if (weight && !volume && !density) {
    if (count === undefined) return { weight: weight.quantity };
    const { amount, unit, typed: each } = weight.quantity;
    return { weight: quantityOf(amount.mul(count), unit), made: `${count} × ${each}` };
  }
  if (volume && density && !weight && count === undefined) {
    const { mass, per, typed: asTyped } = density.density;
    return {
      weight: quantityOf(convert(volume.quantity, per).amount.mul(mass.amount), mass.unit),
      made: `${volume.quantity.typed} × ${asTyped}`,
    };
  }
  // What was typed and could not be read has its fault already.
  const typed = ["weight", "count", "volume", "density"].filter((key) => node.entries.has(key));
  const readable = [weight, count, volume, density].filter((each) => each !== undefined);
  if (typed.length > readable.length) return undefined;
  const message = weight
    ? `\`${what.text}\` has a weight and says it in another way too`
    : volume || density
      ? `\`${what.text}\` needs both \`volume\` and \`density\`, and nothing else`
      : `\`${what.text}\` has no weight`;
  return faults.add("missing-key", span, { message, help });
}

function readLimits(
  typed: NonNullable<TypedBalance["limits"]>,
  faults: Faults,
): BalanceLimits | undefined {
  const { source, forward: front, aft: back } = typed;
  const maxWeight = typed["max-weight"]?.quantity;
  if (!["max-weight", "forward", "aft"].some((key) => typed.node.entries.has(key))) {
    return faults.add("missing-key", typed.span, {
      message: "the limits name a source and no limit",
      help: ["write `max-weight: 1500 lb`, `forward: 63 in` or `aft: 70 in`, or all three"],
    });
  }
  const forward = front && readArmLimit(front, "forward", typed.span, faults);
  const aft = back && readArmLimit(back, "aft", typed.span, faults);
  if (forward && aft) refuseCrossed(forward, aft, typed.span, faults);
  return {
    citation: {
      document: source.document.text,
      ...given({ edition: source.edition?.text, place: source.place?.text }),
    },
    ...given({ maxWeight, forward, aft }),
    span: source.document.span,
  };
}

function readArmLimit(
  typed: TypedArmLimit,
  end: string,
  span: Span,
  faults: Faults,
): ArmLimit | undefined {
  if ("arm" in typed) return { kind: "constant", arm: typed.arm.quantity };
  const { corners } = typed;
  if (typed.typed < 2) {
    return faults.add("wrong-shape", corners[0]?.span ?? span, {
      message: `the \`${end}\` limit has one corner, which makes no line`,
      help: [
        `write \`${end}: 63 in\` for one arm at every weight, or at least two corners in order of weight`,
      ],
    });
  }
  const back = corners.find((corner, index) => {
    const before = corners[index - 1];
    return before && compareQuantities(before.weight.quantity, corner.weight.quantity) > 0;
  });
  if (back) {
    return faults.add("wrong-shape", back.weight.span, {
      message: `the corner at \`${back.weight.node.text}\` comes after a heavier one`,
      help: ["write the corners in order of weight, the lightest first"],
    });
  }
  return {
    kind: "corners",
    corners: corners.map(({ weight, arm }) => ({ weight: weight.quantity, arm: arm.quantity })),
  };
}

// Both lines are straight between corners, so they cross if they do at a corner.
function refuseCrossed(forward: ArmLimit, aft: ArmLimit, span: Span, faults: Faults): void {
  const corners = [forward, aft].flatMap((limit) =>
    limit.kind === "corners" ? limit.corners.map(({ weight }) => weight) : [],
  );
  // Limits without corners are the same at every weight: any one will do.
  const weights = corners.length > 0 ? corners : [quantityOf(new Fraction(1), unitOf("kg"))];
  for (const weight of weights) {
    const front = armAt(forward, weight, "forward");
    const back = armAt(aft, weight, "aft");
    if (!front || !back || compareQuantities(front, back) <= 0) continue;
    faults.add("wrong-shape", span, {
      message: `the forward limit lies behind the aft limit${corners.length > 0 ? ` at ${weight.typed}` : ""}`,
      notes: [`forward ${front.typed}, aft ${back.typed}; arms aft of the datum count up`],
      help: ["exchange the two, or look at the signs"],
    });
    return;
  }
}

function readChord(
  { lemac, temac }: NonNullable<TypedBalance["mac"]>,
  faults: Faults,
): MeanChord | undefined {
  if (compareQuantities(lemac.quantity, temac.quantity) < 0)
    return { leading: lemac.quantity, trailing: temac.quantity };
  return faults.add("wrong-shape", temac.span, {
    message: `the trailing edge at \`${temac.node.text}\` does not lie behind the leading edge at \`${lemac.node.text}\``,
    help: ["exchange `lemac` and `temac`, or look at the signs: arms aft of the datum count up"],
  });
}

function tellingDay(
  on: CalendarDate,
  day: { readonly date: CalendarDate; readonly node: TextNode } | undefined,
  entries: ReadonlySet<CalendarDate>,
  faults: Faults,
): CalendarDate {
  if (!day) return on;
  if (!entries.has(day.date)) {
    const nearest = nearestName(day.date, entries);
    faults.add("unknown-name", day.node.span, {
      message: `no entry is of ${day.date}`,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      help: ["name the day whose entry tells of it, or leave `day` out"],
    });
  }
  return day.date;
}

type Register = Pick<Balance, "weighings" | "projection" | "changes" | "cases">;

function unitsOf({ weighings, projection, changes, cases }: Register): Balance["units"] {
  const point = weighings[0]?.points[0];
  if (point) return { weight: point.reads.unit, arm: point.arm.unit };
  const first =
    projection?.items[0] ??
    changes.flatMap((change) => [...change.out, ...change.in])[0] ??
    cases.flatMap(({ items }) => items)[0];
  return first
    ? { weight: first.weight.unit, arm: first.arm.unit }
    : { weight: unitOf("lb"), arm: unitOf("in") };
}

function byDate(a: { readonly date: CalendarDate }, b: { readonly date: CalendarDate }): number {
  if (a.date === b.date) return 0;
  return a.date < b.date ? -1 : 1;
}
