import type { Bound } from "../../../model/tolerance.ts";

/**
 * The limits of a rule as typed, with no size filled in: `1.3 D to 1.7 D`, `at most 0.060 in`,
 * `no limit`. With a nominal value: `14.375 in ± 0.015 in`, `96.250 in + 0.000 in, − 0.030 in`.
 */
export function boundsText({
  lower,
  upper,
  nominal,
}: {
  readonly lower?: Bound;
  readonly upper?: Bound;
  readonly nominal?: Bound;
}): string {
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
