import type { Build } from "../../model/build.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { calibrationOn } from "../../model/instrument.ts";
import type { Ledgers } from "../check.ts";
import { isLapsed } from "../ledgers/instruments.ts";

/**
 * Reports each reading taken with an instrument that is under calibration but had no valid one
 * on that day: past its due day, or not yet calibrated. The due day itself is still good. A
 * reading is not reported when a later one, taken with a named instrument, replaces it. Scales of
 * a weighing are looked at in the same way.
 */
export function* lapsedCalibration({ build, readings }: Ledgers): Generator<Diagnostic> {
  yield* lapsedScales(build);
  const byId = new Map(readings.map(({ reading }) => [reading.id, reading]));
  for (const { reading, supersededBy } of readings) {
    const { date, instrument: id, what } = reading;
    const instrument = id === undefined ? undefined : build.instruments.get(id);
    if (!instrument || !isLapsed(instrument, date)) continue;
    const successor = supersededBy === undefined ? undefined : byId.get(supersededBy);
    if (successor?.instrument !== undefined) continue;
    const calibration = calibrationOn(instrument, date);
    const next = instrument.calibrations.find(({ on }) => on > date);
    yield {
      code: "lapsed-calibration",
      severity: "finding",
      span: reading.instrumentSpan ?? reading.span,
      message: calibration?.due
        ? `\`${instrument.id}\` measured ${what} on ${date}, after its calibration was due on ${calibration.due}`
        : `\`${instrument.id}\` measured ${what} on ${date}, before its first calibration`,
      label: calibration ? "calibration had lapsed" : "not yet calibrated",
      notes: [
        `${instrument.title}: ${placeText(instrument.span)}`,
        ...(next ? [`next calibrated on ${next.on}`] : []),
      ],
      help: [
        "measure again with a calibrated instrument, and name this reading there as `supersedes:`",
        "if it was calibrated in time, add that to `calibrations` of the instrument",
      ],
      ...(reading.private ? { private: true } : {}),
    };
  }
}

function* lapsedScales({ balance, instruments }: Build): Generator<Diagnostic> {
  for (const { id, date, with: scales } of balance?.weighings ?? []) {
    for (const { instrument: name, span } of scales) {
      const instrument = instruments.get(name);
      if (!instrument || !isLapsed(instrument, date)) continue;
      const calibration = calibrationOn(instrument, date);
      yield {
        code: "lapsed-calibration",
        severity: "finding",
        span,
        message: calibration?.due
          ? `\`${instrument.id}\` weighed \`${id}\` on ${date}, after its calibration was due on ${calibration.due}`
          : `\`${instrument.id}\` weighed \`${id}\` on ${date}, before its first calibration`,
        label: calibration ? "calibration had lapsed" : "not yet calibrated",
        notes: [`${instrument.title}: ${placeText(instrument.span)}`],
        help: [
          "weigh again with calibrated scales, and enter that as another weighing",
          "if they were calibrated in time, add that to `calibrations` of the instrument",
        ],
      };
    }
  }
}
