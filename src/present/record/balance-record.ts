import type { EnvelopeVerdict } from "../../compute/envelope.ts";
import type {
  Balanced,
  BalanceLedger,
  BalanceSheet,
  CaseState,
  ChangeState,
  WeighingState,
} from "../../compute/ledgers/balance.ts";
import { momentUnit } from "../../compute/moments.ts";
import type { ArmLimit } from "../../model/arm-limit.ts";
import type { Balance, BalanceItem } from "../../model/balance.ts";
import { citationRecord, given, placeRecord, quantityRecord } from "./record-values.ts";

/** The register of weight and balance as data, as typed and worked out. */
export function balanceRecord({
  register,
  weighings,
  projection,
  events,
  empty,
  cases,
}: BalanceLedger) {
  const { limits, chord } = register;
  const sums = (sum: Balanced) => balancedRecord(register, sum);
  const changes = events.flatMap((event) => (event.kind === "change" ? [event.state] : []));
  return {
    datum: register.datum,
    emptyWeight: {
      oil: register.emptyWeight.oil,
      unusableFuel: register.emptyWeight.unusableFuel,
      ...given("note", register.emptyWeight.note),
    },
    ...given(
      "meanChord",
      chord && {
        leading: quantityRecord(chord.leading),
        trailing: quantityRecord(chord.trailing),
      },
    ),
    ...given(
      "limits",
      limits && {
        citation: citationRecord(limits.citation),
        ...given("maxWeight", limits.maxWeight && quantityRecord(limits.maxWeight)),
        ...given("forward", limits.forward && armLimitRecord(limits.forward)),
        ...given("aft", limits.aft && armLimitRecord(limits.aft)),
      },
    ),
    ...given(
      "inForce",
      empty && {
        basis: empty.basis,
        since: empty.since,
        changes: empty.changes,
        ...sums(empty.sum),
      },
    ),
    weighings: weighings.map((state) => weighingRecord(state, sums)),
    ...given(
      "projection",
      projection && {
        date: projection.projection.date,
        weighings: [...projection.projection.weighings],
        items: projection.projection.items.map(itemRecord),
        ...given("note", projection.projection.note),
        weighed: quantityRecord(projection.weighed),
        ...sums(projection.sum),
        source: placeRecord(projection.projection.span),
      },
    ),
    changes: changes.map((state) => changeRecord(state, sums)),
    cases: cases.map((state) => caseRecord(state, sums)),
    source: placeRecord(register.span),
  };
}

type Sums = (sum: BalanceSheet["sum"]) => ReturnType<typeof balancedRecord>;

function balancedRecord({ units }: Balance, { weight, moment, cg, chordPercent }: Balanced) {
  return {
    weight: quantityRecord(weight),
    moment: {
      exact: moment.toFraction(),
      decimal: moment.valueOf(),
      unit: momentUnit(units),
    },
    ...given("cg", cg && quantityRecord(cg)),
    ...given("percentMac", chordPercent?.valueOf()),
  };
}

function weighingRecord({ weighing, sum }: WeighingState, sums: Sums) {
  return {
    id: weighing.id,
    date: weighing.date,
    title: weighing.title,
    ...given("of", weighing.of),
    points: weighing.points.map(({ at, reads, tare, arm, span }) => ({
      at,
      reads: quantityRecord(reads),
      ...given("tare", tare && quantityRecord(tare)),
      arm: quantityRecord(arm),
      source: placeRecord(span),
    })),
    out: weighing.out.map(itemRecord),
    in: weighing.in.map(itemRecord),
    ...given("place", weighing.place),
    ...given("level", weighing.level),
    instruments: weighing.with.map(({ instrument }) => instrument),
    who: [...weighing.who],
    ...given("note", weighing.note),
    day: weighing.day,
    ...sums(sum),
    source: placeRecord(weighing.span),
  };
}

function changeRecord(state: ChangeState, sums: Sums) {
  const { change, sum, standing, after, movement, negligible } = state;
  return {
    id: change.id,
    date: change.date,
    title: change.title,
    out: change.out.map(itemRecord),
    in: change.in.map(itemRecord),
    ...given("note", change.note),
    day: change.day,
    counted: standing === "counted",
    net: sums(sum),
    ...given("after", after && sums(after)),
    ...given("movement", movement && quantityRecord(movement)),
    ...given(
      "negligible",
      negligible && {
        weight: negligible.weight,
        largest: quantityRecord(negligible.largest),
        ...given("cg", negligible.cg),
      },
    ),
    source: placeRecord(change.span),
  };
}

function caseRecord({ loading, sum, verdict, estimated }: CaseState, sums: Sums) {
  return {
    id: loading.id,
    title: loading.title,
    ...given("extreme", loading.extreme),
    items: loading.items.map(itemRecord),
    ...given("note", loading.note),
    private: loading.private,
    estimated,
    ...sums(sum),
    ...verdictRecord(verdict),
    source: placeRecord(loading.span),
  };
}

function verdictRecord({ kind, margins, beyond }: EnvelopeVerdict) {
  return {
    verdict: kind,
    margins: margins.map(({ limit, at, room }) => ({
      limit,
      at: quantityRecord(at),
      room: quantityRecord(room),
    })),
    beyond: beyond.map(({ limit, side, end, by }) => ({
      limit,
      side,
      end: quantityRecord(end),
      by: quantityRecord(by),
    })),
  };
}

function itemRecord({ name, weight, made, arm, part, serial, estimated, span }: BalanceItem) {
  return {
    what: name,
    weight: quantityRecord(weight),
    ...given("made", made),
    arm: quantityRecord(arm),
    ...given("part", part),
    ...given("serial", serial),
    estimated,
    source: placeRecord(span),
  };
}

function armLimitRecord(limit: ArmLimit) {
  return limit.kind === "constant"
    ? { arm: quantityRecord(limit.arm) }
    : {
        corners: limit.corners.map(({ weight, arm }) => ({
          weight: quantityRecord(weight),
          arm: quantityRecord(arm),
        })),
      };
}
