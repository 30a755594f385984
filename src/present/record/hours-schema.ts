import { hoursTable } from "../tables/hours.ts";
import type { ColumnHead } from "../tables/table.ts";
import { hoursFormat, hoursSchemaFile } from "./hours-record.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  optional,
  schemaDialect,
  shared,
  text,
  whole,
  yesOrNo,
} from "./json-schema.ts";
import { headProperties, sharedDefinitions } from "./shared-definitions.ts";

/** Columns that every row of the hours has. */
const always = new Set([
  "row",
  "date",
  "assembly",
  "person",
  "name",
  "role",
  "kind",
  "minutes",
  "counted",
  "running_minutes",
  "days_late",
  "file",
  "line",
]);

/** The schema of `hours.json`: JSON Schema, draft 2020-12. */
export function hoursSchema(): JsonSchema {
  const { source, project, totals } = sharedDefinitions;
  return {
    $schema: schemaDialect,
    $id: hoursSchemaFile,
    title: "Hours of an aircraft build",
    ...object("The rows of the hours logbook and every total. What is not known is absent.", {
      ...headProperties(hoursFormat),
      project: shared("The aircraft being built or altered.", "project"),
      rows: list(
        "One row per person per session, by date, then in the order typed.",
        object(
          "A row.",
          Object.fromEntries(
            hoursTable.heads.map((head) => [
              head.key,
              always.has(head.key) ? cellSchema(head) : optional(cellSchema(head)),
            ]),
          ),
        ),
      ),
      totals: shared("Every total of hours.", "totals"),
    }),
    $defs: { source, project, totals },
  };
}

function cellSchema({ kind, means }: ColumnHead): JsonSchema {
  switch (kind) {
    case "number":
      return whole(means);
    case "date":
      return date(means);
    case "yes or no":
      return yesOrNo(means);
    case "moment":
    case "text":
      return text(means);
  }
}
