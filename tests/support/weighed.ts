import { analyze } from "../../src/compute/analyze.ts";
import type { BalanceLedger, CaseState } from "../../src/compute/ledgers/balance.ts";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { asOf } from "./small-build.ts";
import { readSmall } from "./temporary-journal.ts";

/** What every register of the tests begins with. */
export const balanceHead = `datum: leading edge of the wing
empty-weight: { oil: in, unusable-fuel: in }
`;

/** The ledger of a `balance.yaml`, and what the checks found; throws when it cannot be read. */
export function weighed(
  yaml: string,
  files: Readonly<Record<string, string>> = {},
): { readonly ledger: BalanceLedger; readonly found: readonly Diagnostic[] } {
  const { build, diagnostics } = readSmall({
    ...files,
    "balance.yaml": yaml.includes("datum:") ? yaml : `${balanceHead}${yaml}`,
  });
  if (!build || diagnostics.length > 0)
    throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  const { balance, diagnostics: found } = analyze(build, asOf("2026-12-31"));
  if (!balance) throw new Error("there is no register of weight and balance");
  return { ledger: balance, found };
}

/** What an empty weight, a weighing or a loading comes to, as plain numbers. */
export function numbers({ sum: { weight, moment, cg, chordPercent } }: Pick<CaseState, "sum">): {
  readonly weight: number;
  readonly moment: number;
  readonly cg: number;
  readonly percent: number;
} {
  return {
    weight: weight.amount.valueOf(),
    moment: moment.valueOf(),
    cg: cg?.amount.valueOf() ?? Number.NaN,
    percent: chordPercent?.valueOf() ?? Number.NaN,
  };
}

/** The empty weight in force; throws when there is none. */
export function emptyOf({ empty }: BalanceLedger) {
  if (!empty) throw new Error("nothing was weighed");
  return { ...numbers(empty), basis: empty.basis, changes: empty.changes };
}

/** The first loading case; throws when there is none. */
export function firstCase({ cases }: BalanceLedger): CaseState {
  const [first] = cases;
  if (!first) throw new Error("there is no loading case");
  return first;
}
