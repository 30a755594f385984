import { deviationsTable } from "./deviations.ts";
import { hoursTable } from "./hours.ts";
import { inspectionsTable } from "./inspections.ts";
import { lotsTable } from "./lots.ts";
import { openItemsTable } from "./open-items.ts";
import { photosTable } from "./photos.ts";
import { readingsTable } from "./readings.ts";
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
];
