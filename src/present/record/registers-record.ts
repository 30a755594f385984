import type { Analysis, InstrumentState, LotState } from "../../compute/analysis.ts";
import type { Assembly, Step } from "../../model/assembly.ts";
import type { LimitTable } from "../../model/limit-table.ts";
import type { Person } from "../../model/person.ts";
import type { Precedence, ToleranceRule } from "../../model/tolerance.ts";
import { buildersOf } from "./identity.ts";
import {
  citationRecord,
  given,
  placeRecord,
  quantityRecord,
  sizesRecord,
} from "./record-values.ts";

/** The project, as data. */
export function projectRecord({ build }: Analysis) {
  const { project } = build;
  return {
    title: project.title,
    designation: project.designation,
    serial: project.serial,
    ...given("registration", project.registration),
    builders: buildersOf(build).map(({ name }) => name),
    basis: project.basis,
    zone: project.zone,
    begun: project.begun,
    summary: project.summary,
    ...given("address", project.address),
    names: project.names,
    private: project.private,
    defaultPlace: project.place,
    ...given("expectedMinutes", project.expected),
    drawings: project.drawings.map(({ id, title, revision }) => ({ id, title, revision })),
    stages: [...project.stages],
    source: placeRecord(project.span),
  };
}

/** What is declared by id, as data, with how each thing stands on the day of judgement. */
export function registersRecord(analysis: Analysis) {
  const { build } = analysis;
  return {
    people: [...build.people.values()].map(personRecord),
    assemblies: [...build.assemblies.values()].map(assemblyRecord),
    steps: [...build.steps.values()].map((step) => stepRecord(step, analysis)),
    rules: [...build.rules.values()].map(ruleRecord),
    instruments: analysis.instruments.map(instrumentRecord),
    lots: analysis.lots.map(lotRecord),
  };
}

function personRecord(person: Person) {
  return {
    id: person.id,
    name: person.name,
    initials: person.initials,
    role: person.role,
    ...given("standing", person.standing),
    private: person.private,
    source: placeRecord(person.span),
  };
}

function assemblyRecord(assembly: Assembly) {
  return {
    id: assembly.id,
    title: assembly.title,
    ...given("summary", assembly.summary),
    ...given("parent", assembly.parent),
    path: [...assembly.path],
    children: [...assembly.children],
    steps: [...assembly.steps],
    source: placeRecord(assembly.span),
  };
}

function stepRecord(step: Step, { steps }: Analysis) {
  const state = steps.get(step.id);
  return {
    id: step.id,
    title: step.title,
    assembly: step.assembly,
    ...given("drawing", step.drawing),
    ...given("plannedMinutes", step.planned),
    ...given("stage", state?.stage),
    ...given("stageDate", state?.stageDate),
    ...given("firstDate", state?.firstDate),
    ...given("lastDate", state?.lastDate),
    looks: (state?.looks ?? []).map(({ look, done, inspection }) => ({
      look,
      done,
      ...given("date", inspection?.date),
      ...given("by", inspection?.by),
      ...given("result", inspection?.result),
    })),
    source: placeRecord(step.span),
  };
}

function ruleRecord(rule: ToleranceRule) {
  return {
    id: rule.id,
    title: rule.title,
    authority: rule.authority,
    citation: citationRecord(rule.citation),
    ...given("set", rule.set),
    ...given("lower", rule.lower?.typed),
    ...given("upper", rule.upper?.typed),
    ...given("nominal", rule.nominal?.typed),
    ...given("table", rule.table && tableRecord(rule.table)),
    ...given("judges", rule.judges),
    ...given("over", rule.over && precedenceRecord(rule.over)),
    sizes: sizesRecord(rule.sizes),
    decision: rule.decision,
    addsDrag: rule.addsDrag,
    advice: [...rule.advice],
    source: placeRecord(rule.span),
  };
}

function tableRecord({ by, rows }: LimitTable) {
  return {
    by,
    rows: rows.map(({ at, lower, upper, nominal }) => ({
      at: quantityRecord(at),
      ...given("lower", lower && quantityRecord(lower)),
      ...given("upper", upper && quantityRecord(upper)),
      ...given("nominal", nominal && quantityRecord(nominal)),
    })),
  };
}

function precedenceRecord({ rule, steps }: Precedence) {
  return { rule, ...given("steps", steps && [...steps]) };
}

function instrumentRecord({ instrument, lapsed }: InstrumentState) {
  return {
    id: instrument.id,
    title: instrument.title,
    ...given("resolution", instrument.resolution && quantityRecord(instrument.resolution)),
    ...given("uncertainty", instrument.uncertainty && quantityRecord(instrument.uncertainty)),
    coverage: instrument.coverage,
    calibrations: instrument.calibrations.map(({ on, due, by }) => ({
      on,
      ...given("due", due),
      ...given("by", by),
    })),
    lapsed,
    source: placeRecord(instrument.span),
  };
}

function lotRecord({ lot, expiry, expired, daysLeft, uses }: LotState) {
  return {
    id: lot.id,
    title: lot.title,
    material: lot.material,
    ...given("made", lot.made),
    ...given("expires", lot.expires),
    extensions: lot.extensions.map(({ on, until, why }) => ({ on, until, why })),
    private: lot.private,
    ...given("expiry", expiry),
    expired,
    ...given("daysLeft", daysLeft),
    uses: uses.map(({ date, span }) => ({ date, source: placeRecord(span) })),
    source: placeRecord(lot.span),
  };
}
