import type { DeviationState } from "../../../compute/analysis.ts";
import { anchorOf } from "../addresses.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** What departs from the drawings, in red pencil. */
export interface DeviationView {
  readonly anchor: string;
  readonly id: string;
  readonly day: Mention;
  readonly step?: Link;
  readonly drawing: string;
  readonly planned: string;
  readonly done: string;
  readonly why: string;
  /** Absent while undecided. */
  readonly disposition?: {
    readonly text: string;
    readonly day: Mention;
    readonly by?: string;
  };
}

/** A deviation as the pages show it. */
export function deviationView(
  record: RecordIndex,
  links: Links,
  { deviation }: DeviationState,
): DeviationView {
  const { disposition, step } = deviation;
  return {
    anchor: anchorOf("deviation", deviation.id),
    id: deviation.id,
    day: links.day(deviation.date),
    ...(step === undefined ? {} : { step: links.step(step) }),
    drawing: deviation.drawing,
    planned: deviation.planned,
    done: deviation.done,
    why: deviation.why,
    ...(disposition
      ? {
          disposition: {
            text: disposition.text,
            day: links.day(disposition.date),
            ...(disposition.by === undefined ? {} : { by: record.person(disposition.by) }),
          },
        }
      : {}),
  };
}
