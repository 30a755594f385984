import type { Analysis } from "../../compute/analysis.ts";
import { amendmentsTable } from "./amendments.ts";
import { balanceTable } from "./balance.ts";
import { deviationsTable } from "./deviations.ts";
import { evidenceTable } from "./evidence.ts";
import { helpTable } from "./help.ts";
import { hoursTable } from "./hours.ts";
import { inspectionsTable } from "./inspections.ts";
import { lotsTable } from "./lots.ts";
import { openItemsTable } from "./open-items.ts";
import { photosTable } from "./photos.ts";
import { portionHistoryTable, portionTable } from "./portion.ts";
import { readingsTable } from "./readings.ts";
import { sealsTable } from "./seals.ts";
import type { CellTable } from "./table.ts";

/** Every table that is exported, in the order listed for the reader. */
export const allTables: readonly CellTable[] = [
  hoursTable,
  readingsTable,
  deviationsTable,
  inspectionsTable,
  photosTable,
  lotsTable,
  openItemsTable,
  amendmentsTable,
  sealsTable,
  balanceTable,
  portionTable,
  portionHistoryTable,
  evidenceTable,
  helpTable,
];

/** The tables that a record has: those of a register only where the register is kept. */
export function tablesOf({ balance, portion, help }: Analysis): readonly CellTable[] {
  const absent = new Set<CellTable>([
    ...(balance ? [] : [balanceTable]),
    ...(portion ? [] : [portionTable, portionHistoryTable, evidenceTable]),
    ...(help ? [] : [helpTable]),
  ]);
  return allTables.filter((table) => !absent.has(table));
}
