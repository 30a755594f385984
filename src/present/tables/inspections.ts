import type { Analysis } from "../../compute/analysis.ts";
import { inspectionsOf } from "../../model/build.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Person } from "../../model/person.ts";
import { assemblyOf, stepTitle } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** One look that somebody took. */
export interface InspectionRow {
  readonly inspection: Inspection;
  readonly assembly?: string;
  readonly stepTitle?: string;
  readonly person?: Person;
}

/** The rows of the inspections, by date, then in the order typed. */
export function inspectionRows({ build }: Analysis): InspectionRow[] {
  return inspectionsOf(build).map((inspection) => {
    const assembly = assemblyOf(build, inspection);
    const title = stepTitle(build, inspection.step);
    const person = build.people.get(inspection.by);
    return {
      inspection,
      ...(assembly === undefined ? {} : { assembly }),
      ...(title === undefined ? {} : { stepTitle: title }),
      ...(person ? { person } : {}),
    };
  });
}

export const inspectionsTable: Table<InspectionRow> = tableOf({
  name: "inspections",
  title: "Inspections",
  rows: inspectionRows,
  columns: [
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "The day of the look.",
      value: ({ inspection }) => inspection.date,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly of the step.",
      value: ({ assembly }) => assembly,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step looked at.",
      value: ({ inspection }) => inspection.step,
    },
    {
      key: "step_title",
      heading: "Step title",
      kind: "text",
      means: "Title of that step.",
      value: (row) => row.stepTitle,
    },
    {
      key: "look",
      heading: "Look",
      kind: "text",
      means: "Which of the step's declared looks this was.",
      value: ({ inspection }) => inspection.look,
    },
    {
      key: "by",
      heading: "By",
      kind: "text",
      means: "Who looked, as this edition shows the name.",
      value: ({ inspection, person }) => person?.name ?? inspection.by,
    },
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "What entitles them to be heard, by the builder's account.",
      value: ({ person }) => person?.standing,
    },
    {
      key: "open_to_view",
      heading: "Open to view",
      kind: "text",
      means: "What was open to view.",
      value: ({ inspection }) => inspection.open,
    },
    {
      key: "findings",
      heading: "Findings",
      kind: "text",
      means: "What was found.",
      value: ({ inspection }) => inspection.findings,
    },
    {
      key: "result",
      heading: "Result",
      kind: "text",
      means: "`clear` when nothing stood against closing, `held` when something did.",
      value: ({ inspection }) => inspection.result,
    },
    ...sourceColumns<InspectionRow>(({ inspection }) => inspection.span),
  ],
});
