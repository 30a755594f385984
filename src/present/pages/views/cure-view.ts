import type { CureState } from "../../../compute/analysis.ts";
import { citationText } from "../../../model/citation.ts";
import { dateText, momentText } from "../../format/dates.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** A wait, and whether it was kept. */
export interface CureView {
  readonly day: Mention;
  readonly step: Link;
  readonly stepTitle: string;
  readonly lot?: string;
  readonly mixed: string;
  readonly closed?: string;
  readonly ready: string;
  /** `1 day 4 hours`. */
  readonly wait: string;
  readonly over: boolean;
  /** Days on which the joint was worked on too early. */
  readonly brokenBy: readonly Mention[];
  /** Where the joint was closed, as a part of the wait; for the drawing. */
  readonly closedAt?: Percent;
  readonly source?: string;
  readonly note?: string;
}

/** A cure as the pages show it. */
export function cureView(record: RecordIndex, links: Links, state: CureState): CureView {
  const { cure, over, brokenBy } = state;
  const { steps } = record.analysis.build;
  const minutes = cure.ready.epochMinutes - cure.mixed.epochMinutes;
  return {
    day: links.day(cure.date),
    step: links.step(cure.step),
    stepTitle: steps.get(cure.step)?.title ?? cure.step,
    ...(cure.lot === undefined ? {} : { lot: lotText(record, cure.lot) }),
    mixed: momentText(cure.mixed),
    ...(cure.closed
      ? {
          closed: momentText(cure.closed),
          closedAt: percent(
            (100 * (cure.closed.epochMinutes - cure.mixed.epochMinutes)) / Math.max(1, minutes),
          ),
        }
      : {}),
    ready: momentText(cure.ready),
    wait: waitText(minutes),
    over,
    brokenBy: [...new Set(brokenBy.map(({ date }) => date))].map((date) => links.day(date)),
    ...(cure.citation ? { source: citationText(cure.citation) } : {}),
    ...(cure.note === undefined ? {} : { note: cure.note }),
  };
}

/** A lot by its title and its last day of use. */
export function lotText({ analysis }: RecordIndex, id: string): string {
  const lot = analysis.build.lots.get(id);
  if (!lot) return id;
  return `${lot.title} (${id}${lot.expires ? `, use by ${dateText(lot.expires)}` : ""})`;
}

function waitText(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  const hours = Math.floor((minutes % 1440) / 60);
  const rest = minutes % 60;
  const part = (count: number, unit: string) =>
    count === 0 ? [] : [`${count} ${unit}${count === 1 ? "" : "s"}`];
  return [...part(days, "day"), ...part(hours, "hour"), ...part(rest, "minute")].join(" ");
}
