import type { Build } from "../../model/build.ts";
import { readingsOf } from "../../model/build.ts";
import type { AsOf, CalendarDate } from "../../model/calendar.ts";
import type { Instrument } from "../../model/instrument.ts";
import { calibrationOn } from "../../model/instrument.ts";
import type { InstrumentState } from "../analysis.ts";
import { grouped } from "../grouped.ts";

/**
 * Whether an instrument under calibration was without a valid one on a day. The due day itself
 * is still good. An instrument with no calibrations at all is not under calibration: never.
 */
export function isLapsed(instrument: Instrument, date: CalendarDate): boolean {
  if (instrument.calibrations.length === 0) return false;
  const calibration = calibrationOn(instrument, date);
  return !calibration || (calibration.due !== undefined && calibration.due < date);
}

/** Every declared instrument on the day of judgement, in the order declared, with its readings. */
export function instrumentsLedger(build: Build, asOf: AsOf): InstrumentState[] {
  const readings = grouped(readingsOf(build), ({ instrument }) => instrument);
  return Array.from(build.instruments.values(), (instrument) => {
    const calibration = calibrationOn(instrument, asOf.date);
    return {
      instrument,
      ...(calibration ? { calibration } : {}),
      lapsed: isLapsed(instrument, asOf.date),
      readings: readings.get(instrument.id) ?? [],
    };
  });
}
