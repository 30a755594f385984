import type { Analysis, DeviationState } from "../../compute/analysis.ts";
import { assemblyOf, personName, stepTitle } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** One deviation, with the names it mentions. */
export interface DeviationRow extends DeviationState {
  readonly assembly?: string;
  readonly stepTitle?: string;
  readonly acceptedBy?: string;
}

/** The rows of the deviations, by date, then in the order typed. */
export function deviationRows({ build, deviations }: Analysis): DeviationRow[] {
  return deviations.map((state) => {
    const assembly = assemblyOf(build, state.deviation);
    const title = stepTitle(build, state.deviation.step);
    const acceptedBy = personName(build, state.deviation.disposition?.by);
    return {
      ...state,
      ...(assembly === undefined ? {} : { assembly }),
      ...(title === undefined ? {} : { stepTitle: title }),
      ...(acceptedBy === undefined ? {} : { acceptedBy }),
    };
  });
}

export const deviationsTable: Table<DeviationRow> = tableOf({
  name: "deviations",
  title: "Deviations from the drawings",
  rows: deviationRows,
  columns: [
    {
      key: "deviation",
      heading: "Deviation",
      kind: "text",
      means: "Id of the deviation.",
      value: ({ deviation }) => deviation.id,
    },
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "The day it was written down for.",
      value: ({ deviation }) => deviation.date,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly of its step.",
      value: ({ assembly }) => assembly,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step.",
      value: ({ deviation }) => deviation.step,
    },
    {
      key: "step_title",
      heading: "Step title",
      kind: "text",
      means: "Title of that step.",
      value: (row) => row.stepTitle,
    },
    {
      key: "drawing",
      heading: "Drawing",
      kind: "text",
      means: "The drawing and revision departed from.",
      value: ({ deviation }) => deviation.drawing,
    },
    {
      key: "planned",
      heading: "Planned",
      kind: "text",
      means: "What the drawing says.",
      value: ({ deviation }) => deviation.planned,
    },
    {
      key: "done",
      heading: "Done",
      kind: "text",
      means: "What was done instead.",
      value: ({ deviation }) => deviation.done,
    },
    {
      key: "why",
      heading: "Why",
      kind: "text",
      means: "The builder's reason.",
      value: ({ deviation }) => deviation.why,
    },
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "`open` until there is a disposition, then `disposed`.",
      value: ({ open }) => (open ? "open" : "disposed"),
    },
    {
      key: "disposition",
      heading: "Disposition",
      kind: "text",
      means: "What was decided.",
      value: ({ deviation }) => deviation.disposition?.text,
    },
    {
      key: "disposition_date",
      heading: "Decided on",
      kind: "date",
      means: "The day of the entry that says so.",
      value: ({ deviation }) => deviation.disposition?.date,
    },
    {
      key: "accepted_by",
      heading: "Accepted by",
      kind: "text",
      means: "Who accepted it, by the builder's account; nothing here is a signature.",
      value: ({ acceptedBy }) => acceptedBy,
    },
    ...sourceColumns<DeviationRow>(({ deviation }) => deviation.span),
  ],
});
