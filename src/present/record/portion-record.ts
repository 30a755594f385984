import type { PortionLedger, SectionState, TaskState } from "../../compute/ledgers/portion.ts";
import type { PortionSum, PortionVerdict } from "../../compute/portion.ts";
import type { SplitEntry } from "../../model/portion.ts";
import { given, placeRecord } from "./record-values.ts";

/** The major-portion sheet as data, in whole tenths of a point. */
export function portionRecord(ledger: PortionLedger) {
  const { register, sections, sum, verdict, worst } = ledger;
  return {
    list: {
      title: register.list.title,
      ...given("year", register.list.year),
      aircraft: register.list.aircraft,
      from: register.list.from,
      loaded: register.list.loaded,
      source: placeRecord(register.span),
    },
    sections: sections.map(sectionRecord),
    sum: sumRecord(sum),
    verdict: verdictRecord(verdict),
    notApplicable: ledger.notApplicable,
    undecided: ledger.undecided,
    worst: verdictRecord(worst),
  };
}

function sectionRecord({ section, tasks, sum, notApplicable, undecided }: SectionState) {
  return {
    section,
    tasks: tasks.map(taskRecord),
    sum: sumRecord(sum),
    notApplicable,
    undecided,
  };
}

function taskRecord(state: TaskState) {
  const { task, history, standing, claims, gaps, missingKinds, help, conflicts } = state;
  return {
    task: task.id,
    title: task.title,
    ...given("added", task.added && { on: task.added.date, why: task.added.why }),
    ...given("listedKitTenths", task.listed),
    standing,
    splits: history.map(splitRecord),
    evidence: claims.map((claim) => ({
      date: claim.date,
      kind: claim.kind,
      amateur: claim.amateur,
      paid: claim.paid,
      placed: claim.placed,
      told: claim.told,
      photographs: claim.photos,
      source: placeRecord(claim.session.span),
    })),
    gaps: [...gaps],
    missingKinds: [...missingKinds],
    help: { tenths: help.tenths, rows: [...help.rows] },
    contradictions: [...conflicts],
    source: placeRecord(task.span),
  };
}

function splitRecord(entry: SplitEntry) {
  return {
    on: entry.date,
    ...given("tenths", entry.split && { ...entry.split }),
    ...given("why", entry.why),
    ...given("kitSource", entry.source),
    salvage: entry.salvage,
    ...given("note", entry.note),
    source: placeRecord(entry.span),
  };
}

function sumRecord({ tasks, columns, total, builder }: PortionSum) {
  return { tasks, ...columns, total, builder };
}

function verdictRecord(verdict: PortionVerdict) {
  return {
    moreThanHalf: verdict.moreThanHalf,
    exactlyHalf: verdict.exactlyHalf,
    fiftyOne: verdict.fiftyOne,
    headroomHalfTenths: verdict.headroomHalf,
    headroomFiftyOneTenths: verdict.headroomFiftyOne,
  };
}
