import type { Inspection } from "../../../model/inspection.ts";
import { shortDate } from "../../format/dates.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** Who looked at what. */
export interface InspectionView {
  readonly day: Mention;
  readonly step: Link;
  readonly stepTitle: string;
  readonly look: string;
  readonly by: string;
  /** `airframe mechanic`, where the edition may say it. */
  readonly standing?: string;
  readonly open: string;
  readonly findings: string;
  readonly result: Inspection["result"];
  /** For the stamp: `14 Mar 2026`. */
  readonly stamped: string;
}

/** An inspection as the pages show it. */
export function inspectionView(
  record: RecordIndex,
  links: Links,
  inspection: Inspection,
): InspectionView {
  const { build } = record.analysis;
  const person = build.people.get(inspection.by);
  return {
    day: links.day(inspection.date),
    step: links.step(inspection.step),
    stepTitle: build.steps.get(inspection.step)?.title ?? inspection.step,
    look: inspection.look,
    by: record.person(inspection.by),
    ...(person?.standing !== undefined ? { standing: person.standing } : {}),
    open: inspection.open,
    findings: inspection.findings,
    result: inspection.result,
    stamped: `${shortDate(inspection.date)} ${inspection.date.slice(0, 4)}`,
  };
}
