import type { Bound } from "../../../model/tolerance.ts";

/**
 * The limits of a rule as typed, with no size filled in: `1.3 D to 1.7 D`, `at most 0.060 in`,
 * `no limit`. A nominal value stands before them.
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
