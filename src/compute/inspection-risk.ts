import { normalTail } from "./normal-distribution.ts";

/** How the parts that are made scatter, in any one unit. */
export type Process =
  | { readonly kind: "normal"; readonly mean: number; readonly sd: number }
  /** Above zero only; mean shape × scale. */
  | { readonly kind: "gamma"; readonly shape: number; readonly scale: number };

/** What parts are inspected against, in the process's unit. */
export interface InspectionPlan {
  readonly lower?: number;
  readonly upper?: number;
  /** Standard uncertainty of one measurement; above zero. */
  readonly u: number;
  /** How far inside each limit a reading has to be; negative takes readings outside it. */
  readonly guard: number;
}

/** Shares of all parts made, 0 to 1. */
export interface InspectionRisk {
  /** Outside a limit, whether or not anybody measures. */
  readonly nonConforming: number;
  /** Outside a limit and accepted: the consumer's risk of JCGM 106:2012, 9.4. */
  readonly wronglyAccepted: number;
  /** Within the limits and rejected: the producer's risk. */
  readonly wronglyRejected: number;
}

/**
 * What an inspection lets through and what it throws away, over all parts a process makes: the
 * integrals of JCGM 106:2012, 9.3 and 9.4, by Simpson's rule over stretches that end at the
 * limits. Absolute error below 1e-7 for shapes from 1 upwards.
 */
export function inspectionRisk(made: Process, plan: InspectionPlan): InspectionRisk {
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = plan;
  const [from, to] = supportOf(made);
  const density = (x: number) => densityAt(made, x);
  const conforms = (x: number) => x >= lower && x <= upper;
  const cuts = [from, lower, upper, to]
    .filter((x) => x >= from && x <= to)
    .toSorted((a, b) => a - b);
  let nonConforming = 0;
  let wronglyAccepted = 0;
  let wronglyRejected = 0;
  for (const [index, end] of cuts.entries()) {
    const begin = cuts[index - 1];
    if (begin === undefined || end <= begin) continue;
    const share = integral(density, begin, end);
    const accepted = integral((x) => density(x) * acceptance(x, plan), begin, end);
    if (conforms((begin + end) / 2)) wronglyRejected += share - accepted;
    else {
      nonConforming += share;
      wronglyAccepted += accepted;
    }
  }
  return { nonConforming, wronglyAccepted, wronglyRejected };
}

/**
 * The guard band that brings the consumer's risk down to what is wanted, by bisection.
 * @param wanted Share of all parts, above 0.
 * @returns 0 when simple acceptance is good enough already; `undefined` when no band of up to
 *   eight standard uncertainties is.
 */
export function guardFor(
  made: Process,
  plan: Omit<InspectionPlan, "guard">,
  wanted: number,
): number | undefined {
  const risk = (guard: number) => inspectionRisk(made, { ...plan, guard }).wronglyAccepted;
  let low = 0;
  let high = 8 * plan.u;
  if (risk(low) <= wanted) return low;
  if (risk(high) > wanted) return undefined;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (risk(middle) > wanted) low = middle;
    else high = middle;
  }
  return high;
}

// The probability that a part whose true value is x reads inside the acceptance limits.
function acceptance(x: number, { lower, upper, u, guard }: InspectionPlan): number {
  const above = upper === undefined ? 0 : normalTail((upper - guard - x) / u);
  const below = lower === undefined ? 0 : normalTail((x - lower - guard) / u);
  return Math.max(0, 1 - above - below);
}

// Where all but about 1e-20 of the parts are.
function supportOf(made: Process): readonly [number, number] {
  if (made.kind === "normal") {
    return [made.mean - 10 * made.sd, made.mean + 10 * made.sd];
  }
  const { shape, scale } = made;
  return [0, scale * (shape + 12 * Math.sqrt(shape) + 50)];
}

function densityAt(made: Process, x: number): number {
  if (made.kind === "normal") {
    const z = (x - made.mean) / made.sd;
    return Math.exp(-(z * z) / 2) / (made.sd * Math.sqrt(2 * Math.PI));
  }
  const { shape, scale } = made;
  if (x <= 0) return shape === 1 ? 1 / scale : 0;
  const t = x / scale;
  return Math.exp((shape - 1) * Math.log(t) - t - logGamma(shape)) / scale;
}

// Stirling's series for x of 8 or more (NIST Digital Library of Mathematical Functions, 5.11.1),
// reached by Γ(x + 1) = x Γ(x); error below 1e-12.
function logGamma(x: number): number {
  let shift = 0;
  let at = x;
  for (; at < 8; at++) shift += Math.log(at);
  const series = 1 / (12 * at) - 1 / (360 * at ** 3) + 1 / (1260 * at ** 5) - 1 / (1680 * at ** 7);
  return (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + series - shift;
}

function integral(of: (x: number) => number, from: number, to: number): number {
  const steps = 2000;
  const width = (to - from) / steps;
  let sum = of(from) + of(to);
  for (let step = 1; step < steps; step++) sum += of(from + step * width) * (step % 2 ? 4 : 2);
  return (sum * width) / 3;
}
