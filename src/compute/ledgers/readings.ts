import type { Build } from "../../model/build.ts";
import { deviationsOf, readingsOf } from "../../model/build.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { MeasuredValue, Reading } from "../../model/measurement.ts";
import type { Limits, ToleranceRule } from "../../model/tolerance.ts";
import type { JudgedReading, JudgedValue } from "../analysis.ts";
import { judge, type Verdict } from "../judge.ts";
import { limitsOf } from "../limits.ts";
import { assure, standardUncertainty } from "../uncertainty.ts";

/**
 * Every reading against its rule, oldest first.
 *
 * A reading is superseded by the newest later one that names it, as long as that one has a rule
 * or it had none itself: a value judged by nothing puts nothing right. It is accounted for by a
 * deviation about which something has been decided. Without a rule, and where the rule's limits
 * cannot be worked out (`limits-not-known` and reading report that), there is no verdict, and
 * the values count as within no limits at all.
 *
 * @param build Days oldest first.
 */
export function readingsLedger(build: Build): JudgedReading[] {
  const all = readingsOf(build);
  const successors = successorsOf(all);
  const deviations = new Map(deviationsOf(build).map((deviation) => [deviation.id, deviation]));
  return all.map((reading) => {
    const rule = reading.rule === undefined ? undefined : build.rules.get(reading.rule);
    const limits = rule && limitsFor(reading, rule);
    const instrument =
      reading.instrument === undefined ? undefined : build.instruments.get(reading.instrument);
    const values = reading.values.map((value) =>
      judgedValue(value, limits ?? {}, rule, instrument),
    );
    const verdict = limits && values.length > 0 ? worstOf(values) : undefined;
    const successor = successors.get(reading.id);
    const deviation =
      reading.deviation === undefined ? undefined : deviations.get(reading.deviation);
    const judged = {
      reading,
      ...(rule ? { rule } : {}),
      limits: limits ?? {},
      values,
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

function successorsOf(readings: readonly Reading[]): Map<string, Reading> {
  const earlier = new Set<string>();
  const successors = new Map<string, Reading>();
  for (const reading of readings) {
    const replaced = reading.supersedes;
    if (replaced !== undefined && earlier.has(replaced)) successors.set(replaced, reading);
    earlier.add(reading.id);
  }
  return successors;
}

// Reading has reported a value of another dimension than its rule, and hands it on all the same.
function limitsFor(reading: Reading, rule: ToleranceRule): Limits | undefined {
  const result = limitsOf(rule, reading.sizes, reading.drag);
  if (!result.ok) return undefined;
  const wanted = (result.limits.lower ?? result.limits.upper)?.unit.dimension;
  const fits = reading.values.every(({ quantity }) => quantity.unit.dimension === wanted);
  return fits ? result.limits : undefined;
}

function judgedValue(
  value: MeasuredValue,
  limits: Limits,
  rule: ToleranceRule | undefined,
  instrument: Instrument | undefined,
): JudgedValue {
  const { quantity } = value;
  const verdict = judge(quantity, limits);
  const limited = limits.lower !== undefined || limits.upper !== undefined;
  const uncertainty = instrument && standardUncertainty(instrument, quantity);
  if (!rule || !limited || !uncertainty) return { value, verdict };
  return { value, verdict, assurance: assure(quantity, limits, uncertainty, rule.decision) };
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
