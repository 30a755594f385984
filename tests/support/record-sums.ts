// Totals counted from `record.json` alone, with nothing of the program: whole numbers, and
// fractions of whole numbers.

interface Sum {
  build: number;
  apart: number;
}

interface Amount {
  readonly exact: string;
  readonly unit: string;
}

interface Item {
  readonly weight: Amount;
  readonly arm: Amount;
}

/** As much of the file as is counted here. */
export interface RecordFile {
  readonly people: readonly { readonly id: string }[];
  readonly assemblies: readonly { readonly id: string; readonly parent?: string }[];
  readonly steps: readonly { readonly id: string }[];
  readonly days: readonly {
    readonly date: string;
    readonly sessions: readonly {
      readonly assembly: string;
      readonly step?: string;
      readonly kind: string;
      readonly counted: "build" | "apart";
      readonly who: readonly { readonly person: string; readonly role: string }[];
      readonly minutes: number;
    }[];
  }[];
  readonly balance?: {
    readonly weighings: readonly {
      readonly id: string;
      readonly points: readonly {
        readonly reads: Amount;
        readonly tare?: Amount;
        readonly arm: Amount;
      }[];
      readonly out: readonly Item[];
      readonly in: readonly Item[];
    }[];
    readonly projection?: {
      readonly weighings: readonly string[];
      readonly items: readonly Item[];
      readonly weight: Amount;
      readonly moment: Amount;
    };
  };
  readonly portion?: {
    readonly sections: readonly {
      readonly tasks: readonly {
        readonly splits: readonly { readonly tenths?: Readonly<Record<string, number>> }[];
      }[];
    }[];
    readonly sum: Readonly<Record<string, number>>;
  };
  readonly totals: Readonly<Record<string, unknown>>;
}

/** Every total of hours, in the shape in which the file has them. */
export function hoursFrom({ people, assemblies, steps, days }: RecordFile) {
  const named = (ids: readonly string[]) =>
    new Map<string, Sum>(ids.map((id) => [id, { build: 0, apart: 0 }]));
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);
  const total: Sum = { build: 0, apart: 0 };
  const byAssembly = named(ids(assemblies));
  const byAssemblyRolledUp = named(ids(assemblies));
  const byStep = named(ids(steps));
  const byPerson = named(ids(people));
  const byRole = named([]);
  const byKind = named([]);
  const byMonth = named([...new Set(days.map(({ date }) => date.slice(0, 7)))]);
  const byDate = named(days.map(({ date }) => date));
  const toDate = named(days.map(({ date }) => date));
  const parents = new Map(assemblies.map(({ id, parent }) => [id, parent]));
  for (const { date, sessions } of days) {
    for (const { assembly, step, kind, counted, who, minutes } of sessions) {
      for (const { person, role } of who) {
        const add = (sums: Map<string, Sum>, key: string) => {
          const sum = sums.get(key) ?? { build: 0, apart: 0 };
          sum[counted] += minutes;
          sums.set(key, sum);
        };
        total[counted] += minutes;
        add(byAssembly, assembly);
        for (let at: string | undefined = assembly; at !== undefined; at = parents.get(at)) {
          add(byAssemblyRolledUp, at);
        }
        if (step !== undefined) add(byStep, step);
        add(byPerson, person);
        add(byRole, role);
        add(byKind, kind);
        add(byMonth, date.slice(0, 7));
        add(byDate, date);
      }
    }
    toDate.set(date, { ...total });
  }
  const rows = (sums: ReadonlyMap<string, Sum>) => [...sums].map(([id, sum]) => ({ id, ...sum }));
  return {
    total,
    byAssembly: rows(byAssembly),
    byAssemblyRolledUp: rows(byAssemblyRolledUp),
    byStep: rows(byStep),
    byPerson: rows(byPerson),
    byRole: rows(byRole),
    byKind: rows(byKind),
    byMonth: rows(byMonth),
    byDate: rows(byDate),
    toDate: rows(toDate),
  };
}

/** Tenths in the four columns, from the last division of every task. */
export function tenthsFrom({ portion }: RecordFile): Record<string, number> {
  const sums: Record<string, number> = { kit: 0, paid: 0, assembly: 0, fabrication: 0 };
  for (const { splits } of portion?.sections.flatMap(({ tasks }) => tasks) ?? []) {
    for (const [column, tenths] of Object.entries(splits.at(-1)?.tenths ?? {})) {
      sums[column] = (sums[column] ?? 0) + tenths;
    }
  }
  return sums;
}

/** Weight and moment of the projected empty weight, as `a/b`; all of it in the given units. */
export function projectedFrom(
  { balance }: RecordFile,
  units: { readonly weight: string; readonly arm: string },
): { readonly weight: string; readonly moment: string } {
  const items = balance?.projection?.items ?? [];
  const parts = (balance?.weighings ?? []).filter(({ id }) =>
    balance?.projection?.weighings.includes(id),
  );
  let weight: Ratio = [0n, 1n];
  let moment: Ratio = [0n, 1n];
  const add = (net: Ratio, arm: Amount) => {
    weight = sum(weight, net);
    moment = sum(moment, product(net, ratio(arm, units.arm)));
  };
  const weightOf = (amount: Amount) => ratio(amount, units.weight);
  for (const item of items) add(weightOf(item.weight), item.arm);
  for (const part of parts) {
    for (const { reads, tare, arm } of part.points) {
      add(tare ? sum(weightOf(reads), negative(weightOf(tare))) : weightOf(reads), arm);
    }
    for (const item of part.in) add(weightOf(item.weight), item.arm);
    for (const item of part.out) add(negative(weightOf(item.weight)), item.arm);
  }
  return { weight: written(weight), moment: written(moment) };
}

type Ratio = readonly [bigint, bigint];

function ratio({ exact, unit }: Amount, wanted: string): Ratio {
  if (unit !== wanted) throw new Error(`${exact} ${unit} is not in ${wanted}`);
  const [over, under = "1"] = exact.split("/");
  return [BigInt(over ?? ""), BigInt(under)];
}

const sum = ([a, b]: Ratio, [c, d]: Ratio): Ratio => [a * d + c * b, b * d];
const product = ([a, b]: Ratio, [c, d]: Ratio): Ratio => [a * c, b * d];
const negative = ([a, b]: Ratio): Ratio => [-a, b];

function written([over, under]: Ratio): string {
  let [a, b] = [over < 0n ? -over : over, under];
  while (b > 0n) [a, b] = [b, a % b];
  return under === a ? `${over / a}` : `${over / a}/${under / a}`;
}
