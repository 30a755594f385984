import type { Analysis } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import type { BalanceLedger, CaseState } from "../../src/compute/ledgers/balance.ts";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { asOf } from "./small-build.ts";
import { readSmall } from "./temporary-journal.ts";

/** What every register of the tests begins with. */
export const balanceHead = `datum: leading edge of the wing
empty-weight: { oil: in, unusable-fuel: in }
`;

/** A journal with a `balance.yaml`, analyzed; throws when it cannot be read. */
export function analysisWith(yaml: string, files: Readonly<Record<string, string>> = {}): Analysis {
  const { build, diagnostics } = readSmall({
    ...files,
    "balance.yaml": yaml.includes("datum:") ? yaml : `${balanceHead}${yaml}`,
  });
  if (!build || diagnostics.length > 0)
    throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  return analyze(build, asOf("2026-12-31"));
}

/** The ledger of a `balance.yaml`, and what the checks found; throws when it cannot be read. */
export function weighed(
  yaml: string,
  files: Readonly<Record<string, string>> = {},
): { readonly ledger: BalanceLedger; readonly found: readonly Diagnostic[] } {
  const { balance, diagnostics: found } = analysisWith(yaml, files);
  if (!balance) throw new Error("there is no register of weight and balance");
  return { ledger: balance, found };
}

/**
 * A register with everything in it: two weighings by two people, a part, changes too early,
 * counted and negligible, limits with corners, and cases inside, outside and private.
 */
export const eventfulBalance = `${balanceHead}mac: { lemac: 10 in, temac: 60 in }
limits:
  source: { document: Designer's weight sheet, edition: rev B }
  max-weight: 1450 lb
  forward: [{ weight: 1000 lb, arm: 20.0 in }, { weight: 1500 lb, arm: 22.0 in }]
  aft: 28.0 in
weighings:
  - { id: W-0, on: 2026-01-15, title: Tail on its own, of: tail, points: [{ at: tail, reads: 40 lb, tare: 1 lb, arm: 240 in }] }
  - id: W-1
    on: 2026-03-14
    title: First weighing
    points:
      - { at: left main wheel, reads: 425 lb, tare: 5 lb, arm: 32 in }
      - { at: right main wheel, reads: 425 lb, arm: 32 in }
      - { at: nose wheel, reads: 82.5 kg, tare: 2 lb, arm: -24 in }
    out: [{ what: fuel, volume: 10 gal, density: 5.9 lb/gal, arm: 26 in }]
    in: [{ what: seat cushions, weight: 4 lb, arm: 650 mm, estimated: true }]
    place: hangar
    level: longerons level
    with: [caliper]
    who: [ada, jon]
    note: doors shut
  - { id: W-2, on: 2026-08-01, title: After paint, points: [{ at: all, reads: 1030 lb, arm: 21.9 in }] }
projection: { on: 2026-02-01, weighings: [W-0], items: [{ what: the rest, weight: 900 lb, arm: 12 in }], note: early }
changes:
  - { id: C-0, on: 2026-01-01, title: Before anything, in: [{ what: radio, weight: 3 lb, arm: 20 in }] }
  - { id: C-1, on: 2026-04-01, title: Second radio, in: [{ what: radio, weight: 3 lb, arm: 20 in }], out: [{ what: blanking plate, weight: 0.25 lb, arm: 20 in }] }
  - { id: C-2, on: 2026-09-01, title: Lighter screws, out: [{ what: screws, weight: 0.5 lb, arm: 22 in }], note: counted }
cases:
  - { id: L-1, title: Half tanks, extreme: forward, items: [{ what: pilot, weight: 170 lb, arm: 36 in }, { what: fuel, volume: 14 gal, density: 6 lb/gal, arm: 26 in }] }
  - { id: L-2, title: Two up, items: [{ what: both, count: 2, weight: 190 lb, arm: 36 in }, { what: baggage, weight: 60 lb, arm: 58 in, estimated: true }] }
  - { id: L-3, title: Tools in the tail, extreme: aft, items: [{ what: tools, weight: 175 lb, arm: 110 in }], note: never }
  - { id: L-4, title: Secret pilot, private: true, items: [{ what: secret weight, weight: 75 lb, arm: 40 in }] }
`;

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
