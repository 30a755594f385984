import Fraction from "fraction.js";
import type { Build } from "../../model/build.ts";
import { deviationsOf, readingsOf } from "../../model/build.ts";
import { governingRule } from "../../model/governing-rule.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Reading } from "../../model/measurement.ts";
import { type Quantity, quantityOf } from "../../model/quantity.ts";
import { newestOf, successorsOf } from "../../model/successors.ts";
import type { Limits, ToleranceRule } from "../../model/tolerance.ts";
import type { Figure, JudgedReading, JudgedValue } from "../analysis.ts";
import { type FigurePart, figuresOf } from "../figure.ts";
import { judge, type Verdict } from "../judge.ts";
import { type LimitsResult, limitsOf, type Sizes } from "../limits.ts";
import {
  acceptanceZone,
  assure,
  combinedVariance,
  type StandardUncertainty,
  standardUncertainty,
} from "../uncertainty.ts";

const one = new Fraction(1);

/**
 * Every reading against the rule that governs it, oldest first.
 *
 * A reading is superseded by the newest later one that names it, as long as that one has a rule
 * or it had none itself: a value judged by nothing puts nothing right. It is accounted for by a
 * deviation about which something has been decided. Without a rule, and where the rule's limits
 * cannot be worked out (`limits-not-known`, `outside-the-table` and reading report that), there
 * is no verdict, and the values count as within no limits at all.
 *
 * A figure made of other readings is made of the newest that replace them: it speaks of the
 * aircraft as it is now.
 *
 * @param build Days oldest first.
 */
export function readingsLedger(build: Build): JudgedReading[] {
  const all = readingsOf(build);
  const byId = new Map(all.map((reading) => [reading.id, reading]));
  const successors = successorsOf(all);
  const governs = governingRule(build.rules);
  const deviations = new Map(deviationsOf(build).map((deviation) => [deviation.id, deviation]));
  return all.map((reading) => {
    const { rule, over } = governs(reading.rule, reading.step) ?? {};
    const figure = rule?.judges && {
      kind: rule.judges,
      of: sourcesOf(reading, byId).map((each) => newestOf(each, successors)),
    };
    const measured = measuredIn(reading, figure);
    const result = rule && limitsOf(rule, sizesOf(reading), reading.drag);
    const limits = result && limitsFor(measured, result);
    const values = measured.map((each) => judgedValue(each, limits ?? {}, rule, build.instruments));
    const verdict = limits && values.length > 0 ? worstOf(values) : undefined;
    const successor = successors.get(reading.id);
    const deviation =
      reading.deviation === undefined ? undefined : deviations.get(reading.deviation);
    const judged = {
      reading,
      ...(rule ? { rule } : {}),
      ...(over ? { over } : {}),
      limits: limits ?? {},
      ...(result?.ok === false ? { fault: result.fault } : {}),
      values,
      ...(figure ? { figure } : {}),
      ...(verdict ? { verdict } : {}),
      ...(successor ? { supersededBy: successor.id } : {}),
      ...(deviation ? { deviation } : {}),
    };
    if (successor && (successor.rule !== undefined || !rule)) {
      return { ...judged, standing: "superseded" };
    }
    if (!verdict) return { ...judged, standing: "no rule" };
    if (verdict.kind === "within") return { ...judged, standing: "within" };
    return { ...judged, standing: deviation?.disposition ? "accounted for" : "out" };
  });
}

/** The sizes of a reading, and what a table may be entered with beside them. */
export function sizesOf({ sizes, temperature }: Pick<Reading, "sizes" | "temperature">): Sizes {
  return temperature ? new Map([...sizes, ["temperature", temperature.quantity]]) : sizes;
}

function sourcesOf(reading: Reading, byId: ReadonlyMap<string, Reading>): readonly Reading[] {
  if (!reading.of) return [reading];
  return reading.of.map((named) => byId.get(named.reading)).filter((each) => each !== undefined);
}

// What is held against the limits, with the values that it is known as well as.
interface Measured {
  readonly value: JudgedValue["value"];
  readonly of: readonly FigurePart[];
  readonly parts?: JudgedValue["parts"];
}

function measuredIn(reading: Reading, figure: Figure | undefined): readonly Measured[] {
  if (!figure) return reading.values.map((value) => ({ value, of: [{ reading, value }] }));
  const span = reading.of?.[0]?.span ?? reading.values[0]?.span ?? reading.span;
  return figuresOf(figure.kind, figure.of).map(({ quantity, larger, smaller }) => ({
    value: { quantity, span },
    of: [larger, smaller],
    parts: { larger, smaller },
  }));
}

// Reading has reported a value of another dimension than its rule, and hands it on all the same.
function limitsFor(measured: readonly Measured[], result: LimitsResult): Limits | undefined {
  if (!result.ok) return undefined;
  const wanted = (result.limits.lower ?? result.limits.upper)?.unit.dimension;
  const fits = measured.every(({ value }) => value.quantity.unit.dimension === wanted);
  return fits ? result.limits : undefined;
}

function judgedValue(
  { value, of, parts }: Measured,
  limits: Limits,
  rule: ToleranceRule | undefined,
  instruments: ReadonlyMap<string, Instrument>,
): JudgedValue {
  const { quantity } = value;
  const judged = { value, ...(parts ? { parts } : {}), verdict: judge(quantity, limits) };
  const limited = limits.lower !== undefined || limits.upper !== undefined;
  const uncertainty = rule && limited ? uncertaintyOf(quantity, of, instruments) : undefined;
  if (!rule || !uncertainty) return judged;
  const assurance = assure(quantity, limits, uncertainty, rule.decision);
  // A figure is never below zero: where zero itself could not be proven, nothing could.
  const least = quantityOf(new Fraction(0), quantity.unit);
  const hopeless =
    parts !== undefined &&
    limits.lower === undefined &&
    assure(least, limits, uncertainty, rule.decision).kind !== "proven";
  const acceptance =
    rule.decision === "simple" || hopeless
      ? undefined
      : acceptanceZone(limits, uncertainty, rule.decision, quantity.unit);
  return {
    ...judged,
    assurance:
      hopeless && assurance.kind === "not proven"
        ? { ...assurance, kind: "no acceptance zone" }
        : assurance,
    ...(acceptance ? { acceptance } : {}),
  };
}

// The two values of a figure count as independent (JCGM 100:2008, 5.1.2). An error that both
// have in common drops out of a difference, so this errs on the large side.
function uncertaintyOf(
  { unit }: Quantity,
  of: readonly FigurePart[],
  instruments: ReadonlyMap<string, Instrument>,
): StandardUncertainty | undefined {
  const known = of
    .map(({ reading: { instrument: named }, value }) => {
      const instrument = named === undefined ? undefined : instruments.get(named);
      return instrument && standardUncertainty(instrument, value.quantity);
    })
    .filter((each) => each !== undefined);
  if (known.length < of.length) return undefined;
  const components = known.map(({ variance }) => ({ sensitivity: one, variance }));
  return { dimension: unit.dimension, variance: combinedVariance(components) };
}

function worstOf(values: readonly JudgedValue[]): Verdict {
  return values
    .map(({ verdict }) => verdict)
    .reduce((worst, verdict) => (isWorse(verdict, worst) ? verdict : worst), { kind: "within" });
}

/** Whether one verdict is further outside its limits than another, whatever their units. */
export function isWorse(a: Verdict, b: Verdict): boolean {
  if (a.kind === "within") return false;
  if (b.kind === "within") return true;
  return a.by.mul(a.limit.unit.factor).gt(b.by.mul(b.limit.unit.factor));
}
