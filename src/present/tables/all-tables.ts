import type { Analysis } from "../../compute/analysis.ts";
import { amendmentsTable } from "./amendments.ts";
import { balanceTable } from "./balance.ts";
import { deviationsTable } from "./deviations.ts";
import { hoursTable } from "./hours.ts";
import { inspectionsTable } from "./inspections.ts";
import { lotsTable } from "./lots.ts";
import { openItemsTable } from "./open-items.ts";
import { photosTable } from "./photos.ts";
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
];

/** The tables that a record has: that of weight and balance only where a register of it is kept. */
export function tablesOf({ balance }: Analysis): readonly CellTable[] {
  return balance ? allTables : allTables.filter((table) => table !== balanceTable);
}
