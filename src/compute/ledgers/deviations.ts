import type { Build } from "../../model/build.ts";
import { deviationsOf } from "../../model/build.ts";
import type { DeviationState } from "../analysis.ts";

/** Every deviation, in the order recorded: open until a disposition is given. */
export function deviationsLedger(build: Build): DeviationState[] {
  return deviationsOf(build).map((deviation) => ({
    deviation,
    open: deviation.disposition === undefined,
  }));
}
