import type { ArmLimit } from "./arm-limit.ts";
import type { CalendarDate } from "./calendar.ts";
import type { Citation } from "./citation.ts";
import type { Span } from "./diagnostic.ts";
import type { Load } from "./load.ts";
import type { Quantity } from "./quantity.ts";
import type { Unit } from "./unit.ts";

/** Whether a liquid counts to the empty weight; that depends on the basis of certification. */
export const belongings = ["in", "out"] as const;
export type Belonging = (typeof belongings)[number];

/** Ends of the range of the centre of gravity. */
export const extremes = ["forward", "aft"] as const;
export type Extreme = (typeof extremes)[number];

/** What the words "empty weight" mean in one register: without it the number means nothing. */
export interface EmptyWeightDefinition {
  readonly oil: Belonging;
  readonly unusableFuel: Belonging;
  readonly note?: string;
}

/** Something with a weight at an arm. The weight is zero or more, whether put in or taken out. */
export interface BalanceItem extends Load {
  /** How the weight was typed when it was not one: `30 gal × 5.9 lb/gal`, `2 × 12 lb`. */
  readonly made?: string;
  /** Its part number, as marked. */
  readonly part?: string;
  /** Its serial number, as marked. */
  readonly serial?: string;
  /** Nobody weighed it yet. */
  readonly estimated: boolean;
  readonly span: Span;
}

/** One scale of a weighing. */
export interface WeighingPoint {
  /** What stands on it: `left main`. */
  readonly at: string;
  readonly reads: Quantity;
  /** What it shows with chocks and blocks alone; absent: none was typed. */
  readonly tare?: Quantity;
  readonly arm: Quantity;
  readonly span: Span;
}

/** A weighing of the whole aircraft, or of a part of it. */
export interface Weighing {
  readonly id: string;
  readonly date: CalendarDate;
  readonly title: string;
  /** Id of the assembly that was weighed; absent: the whole aircraft. */
  readonly of?: string;
  readonly points: readonly WeighingPoint[];
  /** What stood on the scales and does not belong to the empty weight. */
  readonly out: readonly BalanceItem[];
  /** What belongs to the empty weight and did not stand on the scales. */
  readonly in: readonly BalanceItem[];
  readonly place?: string;
  /** How it was levelled. */
  readonly level?: string;
  /** Ids of the scales, as instruments. */
  readonly with: readonly { readonly instrument: string; readonly span: Span }[];
  /** Ids of the people who weighed. */
  readonly who: readonly string[];
  readonly note?: string;
  /** The day whose entry tells of it. */
  readonly day: CalendarDate;
  readonly span: Span;
}

/** What the empty aircraft is expected to weigh, while it cannot be weighed. */
export interface Projection {
  readonly date: CalendarDate;
  /** Ids of weighings of parts that are counted in. */
  readonly weighings: readonly string[];
  /** Everything else. */
  readonly items: readonly BalanceItem[];
  readonly note?: string;
  readonly span: Span;
}

/** Equipment put in or taken out after a weighing. */
export interface EquipmentChange {
  readonly id: string;
  readonly date: CalendarDate;
  readonly title: string;
  readonly out: readonly BalanceItem[];
  readonly in: readonly BalanceItem[];
  /** On the day of a weighing: whether that weighing has it already. */
  readonly weighedWith?: boolean;
  readonly note?: string;
  /** The day whose entry tells of it. */
  readonly day: CalendarDate;
  readonly span: Span;
}

/** How heavy the aircraft may be, and where its centre of gravity may lie. Ends are inclusive. */
export interface BalanceLimits {
  readonly citation: Citation;
  readonly maxWeight?: Quantity;
  readonly forward?: ArmLimit;
  readonly aft?: ArmLimit;
  readonly span: Span;
}

/** The mean aerodynamic chord; its trailing edge lies aft of its leading edge. */
export interface MeanChord {
  readonly leading: Quantity;
  readonly trailing: Quantity;
}

/** One way of loading the empty aircraft. */
export interface LoadingCase {
  readonly id: string;
  readonly title: string;
  /** Set when it is meant to be the extreme one. */
  readonly extreme?: Extreme;
  readonly items: readonly BalanceItem[];
  readonly note?: string;
  /** A private case is left out of the public edition: it may tell what somebody weighs. */
  readonly private: boolean;
  readonly span: Span;
}

/** The register of weight and balance. Arms aft of the datum count up. */
export interface Balance {
  /** Where arms are counted from, in words. */
  readonly datum: string;
  readonly emptyWeight: EmptyWeightDefinition;
  /** The units typed first; sums are shown in them. */
  readonly units: { readonly weight: Unit; readonly arm: Unit };
  /** By date, then in the order typed. */
  readonly weighings: readonly Weighing[];
  readonly projection?: Projection;
  /** By date, then in the order typed. */
  readonly changes: readonly EquipmentChange[];
  readonly limits?: BalanceLimits;
  readonly chord?: MeanChord;
  /** In the order typed. */
  readonly cases: readonly LoadingCase[];
  readonly span: Span;
}
