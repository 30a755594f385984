import type { Build } from "../../model/build.ts";
import { squawksOf } from "../../model/build.ts";
import type { SquawkState } from "../analysis.ts";

/** Every squawk with its standing, in the order found: open until somebody closed it. */
export function squawksLedger(build: Build): SquawkState[] {
  return squawksOf(build).map((squawk) => {
    if (squawk.closed) return { squawk, standing: "closed" };
    return { squawk, standing: squawk.fixed ? "fixed, not closed" : "open" };
  });
}
