import type { Quantity } from "./quantity.ts";
import type { Unit } from "./unit.ts";

/** How heavy a liquid is: a mass for each unit of volume, such as 6 lb per gallon. */
export interface Density {
  readonly typed: string;
  readonly mass: Quantity;
  /** The mass is for one of this. */
  readonly per: Unit;
}
