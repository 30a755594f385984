import { hoursTable } from "../tables/hours.ts";
import type { CellValue } from "../tables/table.ts";
import type { EditedAnalysis } from "./edition.ts";
import { recordHead, totalsRecord } from "./journal-record.ts";
import { projectRecord } from "./registers-record.ts";

/** Name of the schema's file, beside the logbook's data. */
export const hoursSchemaFile = "hours.schema.json";

/** Name and version of the format of `hours.json`. */
export const hoursFormat = { name: "witness-mark hours", version: 1 } as const;

/**
 * The rows of the logbook and every total, as plain data: what `hours.json` holds. A row has
 * the keys of the columns of `hours.csv`; an empty cell is absent.
 *
 * @param programVersion Version of this program, for the reader of an old file.
 */
export function hoursLogbookRecord(edited: EditedAnalysis, programVersion: string) {
  return {
    ...recordHead(edited, programVersion, hoursSchemaFile, hoursFormat),
    project: projectRecord(edited.analysis),
    rows: hoursTable.cells(edited.analysis).map((cells) => {
      const row: Record<string, Exclude<CellValue, undefined>> = {};
      hoursTable.heads.forEach(({ key }, index) => {
        const value = cells[index];
        if (value !== undefined) row[key] = value;
      });
      return row;
    }),
    totals: totalsRecord(edited.analysis.hours),
  };
}
