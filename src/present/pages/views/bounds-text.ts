import type { LimitTable } from "../../../model/limit-table.ts";
import type { Bound, ToleranceRule } from "../../../model/tolerance.ts";

/**
 * The limits of a rule as typed, with no size filled in: `1.3 D to 1.7 D`, `at most 0.060 in`,
 * `no limit`. With a nominal value: `14.375 in ± 0.015 in`, `96.250 in + 0.000 in, − 0.030 in`.
 * Those of a table: `by temperature, 40 °F to 90 °F`. What is judged in place of each value
 * stands before them: `range at most 0.020 in`.
 */
export function boundsText(
  rule: Partial<Pick<ToleranceRule, "lower" | "upper" | "nominal" | "table" | "judges">>,
): string {
  const limits = rule.table ? tableText(rule.table, rule) : plainText(rule);
  return rule.judges === undefined ? limits : `${rule.judges} ${limits}`;
}

function tableText({ by, rows }: LimitTable, { nominal, upper }: Bounds): string {
  const [first, last] = [rows[0], rows.at(-1)];
  const where = first && last ? `, ${first.at.typed} to ${last.at.typed}` : "";
  const plus = nominal && added(upper, nominal, "+");
  return `by ${by}${where}${plus === undefined ? "" : `, ± ${plus}`}`;
}

type Bounds = Partial<Pick<ToleranceRule, "lower" | "upper" | "nominal">>;

function plainText({ lower, upper, nominal }: Bounds): string {
  if (nominal) {
    const plus = added(upper, nominal, "+");
    const minus = added(lower, nominal, "-");
    if (plus !== undefined && plus === minus) return `${nominal.typed} ± ${plus}`;
    if (plus !== undefined && minus !== undefined) return `${nominal.typed} + ${plus}, − ${minus}`;
  }
  const limits =
    lower && upper
      ? `${lower.typed} to ${upper.typed}`
      : lower
        ? `at least ${lower.typed}`
        : upper
          ? `at most ${upper.typed}`
          : undefined;
  if (nominal) return limits ? `${nominal.typed}, ${limits}` : `${nominal.typed}, no limits`;
  return limits ?? "no limit";
}

// A tolerance is kept as the nominal value with something added or taken away.
function added(bound: Bound | undefined, nominal: Bound, sign: "+" | "-"): string | undefined {
  const start = `${nominal.typed} ${sign} `;
  return bound?.typed.startsWith(start) ? bound.typed.slice(start.length) : undefined;
}
