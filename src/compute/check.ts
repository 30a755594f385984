import type { Diagnostic } from "../model/diagnostic.ts";
import type { Analysis } from "./analysis.ts";

/** What checks look at: everything computed from a build but the diagnostics themselves. */
export type Ledgers = Omit<Analysis, "diagnostics">;

/** Looks for one kind of fault and returns a diagnostic for each place that has it. */
export type Check = (ledgers: Ledgers) => Iterable<Diagnostic>;
