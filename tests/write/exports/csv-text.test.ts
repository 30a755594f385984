import { parse } from "csv-parse/sync";
import initSqlJs from "sql.js";
import { beforeAll, describe, expect, test } from "vitest";
import { openJournal } from "../../../src/cli/journal.ts";
import { allTables } from "../../../src/present/tables/all-tables.ts";
import { balanceTable } from "../../../src/present/tables/balance.ts";
import { hoursTable } from "../../../src/present/tables/hours.ts";
import type { CellTable, CellValue, ColumnKind } from "../../../src/present/tables/table.ts";
import { csvText } from "../../../src/write/exports/csv-text.ts";
import { eventfulAnalysis, longAnalysis, trickyTexts } from "../../support/eventful-build.ts";
import { analysisWith, eventfulBalance } from "../../support/weighed.ts";

const eventful = eventfulAnalysis();

/** What a reader of the file gets: the documented way back from its cells. */
function readBack(text: string, table: CellTable): CellValue[][] {
  const [heads = [], ...rows] = parse(text, { bom: true, relax_column_count: false }) as string[][];
  expect(heads).toEqual(table.heads.map(({ key }) => key));
  return rows.map((cells) =>
    cells.map((cell, index) => cellValue(cell, table.heads[index]?.kind ?? "text")),
  );
}

function cellValue(cell: string, kind: ColumnKind): CellValue {
  if (cell === "") return undefined;
  if (kind === "number") return Number(cell);
  if (kind === "yes or no") return cell === "yes";
  return kind === "text" && cell.startsWith("'") ? cell.slice(1) : cell;
}

const sample = openJournal({ journal: new URL("../../../site-demo", import.meta.url).pathname });

describe.each(allTables.map((table) => [table.name, table] as const))("%s.csv", (_, table) => {
  const small = table === balanceTable ? analysisWith(eventfulBalance) : eventful;
  // The registers of tasks and of help are in the sample journal.
  const analysis = table.cells(small).length > 0 ? small : (sample.analysis ?? small);

  test("read back, it is the table", () => {
    const cells = table.cells(analysis);
    expect(cells.length).toBeGreaterThan(0);
    expect(readBack(csvText(table, analysis), table)).toEqual(cells);
  });

  test("is UTF-8 with a mark, and its records end in CRLF", () => {
    const text = csvText(table, analysis);
    expect(text.startsWith("\ufeff")).toBe(true);
    expect(text.endsWith("\r\n")).toBe(true);
    const outsideQuotes = text.replace(/"(?:[^"]|"")*"/g, "");
    expect(outsideQuotes.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  test("has a value of the declared kind in every cell", () => {
    const shapes: Record<ColumnKind, (value: CellValue) => boolean> = {
      text: (value) => typeof value === "string",
      number: (value) => typeof value === "number" && Number.isFinite(value),
      date: (value) => /^\d{4}-\d{2}-\d{2}$/.test(String(value)),
      moment: (value) => /^\d{4}-\d{2}-\d{2} \d{2}:\d{2}$/.test(String(value)),
      "yes or no": (value) => typeof value === "boolean",
    };
    for (const row of table.cells(analysis)) {
      row.forEach((value, index) => {
        const head = table.heads[index];
        if (!head) throw new Error("a cell without a column");
        if (value !== undefined)
          expect({ head: head.key, ok: shapes[head.kind](value) }).toEqual({
            head: head.key,
            ok: true,
          });
      });
    }
  });
});

/** Cells as the simplest of readers sees them: outside quotes any line end ends a record. */
function simplyRead(text: string): string[][] {
  const records: string[][] = [[""]];
  let quoted = false;
  for (const character of text.replace(/^\ufeff/, "")) {
    const record = records.at(-1) ?? [];
    if (character === '"') quoted = !quoted;
    else if (quoted) record.push(`${record.pop()}${character}`);
    else if (character === ",") record.push("");
    else if (/[\r\n]/.test(character)) records.push([""]);
    else record.push(`${record.pop()}${character}`);
  }
  return records;
}

test.each(["a note\n=1+1", "\n=1+1", "a note\r@SUM(A1)", "x\r\n-1+1", "\u2028=1", "a\n\n+1"])(
  "a line end in a cell begins no record of its own: %j",
  (note) => {
    const [first] = eventful.build.days;
    const [line] = eventful.hours.lines;
    if (!first || !line) throw new Error("no hours");
    const lines = [{ ...line, session: { ...line.session, note } }];
    const changed = { ...eventful, hours: { ...eventful.hours, lines } };
    const records = simplyRead(csvText(hoursTable, changed)).filter((cells) => cells.length > 1);
    expect(records).toHaveLength(2);
    for (const cells of records) {
      expect(cells).toHaveLength(hoursTable.heads.length);
      for (const cell of cells) expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/);
    }
  },
);

describe("hours.csv", () => {
  let SQL: Awaited<ReturnType<typeof initSqlJs>>;
  beforeAll(async () => {
    SQL = await initSqlJs();
  });

  function database(text: string) {
    const [heads = [], ...rows] = parse(text, { bom: true }) as string[][];
    const db = new SQL.Database();
    // `minutes` is a number as it stands in the file: nothing is trimmed or converted before.
    db.run(
      `create table hours (${heads.map((head) => `"${head}" ${head === "minutes" ? "integer" : "text"}`)})`,
    );
    for (const row of rows) db.run(`insert into hours values (${row.map(() => "?")})`, row);
    return (query: string) =>
      Object.fromEntries((db.exec(query)[0]?.values ?? []) as [string, number][]);
  }

  test.each([
    ["eventful", eventful],
    ["long", longAnalysis(200)],
  ])("its sums are the totals: %s build", (_, each) => {
    const query = database(csvText(hoursTable, each));
    const { hours } = each;
    expect(query("select counted, sum(minutes) from hours group by counted")).toEqual({
      build: hours.total.build,
      apart: hours.total.apart,
    });
    const nonZero = (map: ReadonlyMap<string, { build: number; apart: number }>) =>
      Object.fromEntries(
        [...map]
          .map(([id, { build, apart }]) => [id, build + apart] as const)
          .filter(([, sum]) => sum > 0),
      );
    for (const [column, map] of [
      ["assembly", hours.byAssembly],
      ["person", hours.byPerson],
      ["role", hours.byRole],
      ["kind", hours.byKind],
      ["date", hours.byDate],
    ] as const) {
      expect(query(`select ${column}, sum(minutes) from hours group by ${column}`)).toEqual(
        nonZero(map),
      );
    }
    expect(query("select substr(date, 1, 7), sum(minutes) from hours group by 1")).toEqual(
      nonZero(hours.byMonth),
    );
    expect(query("select step, sum(minutes) from hours where step <> '' group by step")).toEqual(
      nonZero(hours.byStep),
    );
  });

  test("is in order, and every row adds up to its running total", () => {
    const rows = hoursTable.rows(longAnalysis(60));
    const sums = { build: 0, apart: 0 };
    let date = "";
    rows.forEach((row, index) => {
      const counted = row.line.apart ? "apart" : "build";
      sums[counted] += row.line.minutes;
      expect(row.number).toBe(index + 1);
      expect(row.runningMinutes).toBe(sums[counted]);
      expect(row.line.date >= date).toBe(true);
      date = row.line.date;
    });
  });

  test("no cell begins as a formula or is taken for a number or a date", () => {
    const records = parse(csvText(hoursTable, eventful), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    const notes = records.map(({ note }) => note ?? "").filter((note) => note !== "");
    for (const text of trickyTexts.filter((each) => !each.startsWith("say"))) {
      expect(notes).toContain(`'${text}`);
    }
    for (const record of records) {
      for (const cell of Object.values(record)) expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/);
    }
  });

  test("names the amendment, the lateness and the place it was typed", () => {
    const records = parse(csvText(hoursTable, eventful), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(records[1]).toMatchObject({
      minutes: "105",
      amended:
        "hours was 1:15, now 1:45 (amended 2026-03-15: forgot the clean-up); note was secret-amendment, now secret-note (amended 2026-03-15: wording)",
      file: "content/days/2026-03-14.md",
      line: "8",
    });
    expect(records.find(({ date }) => date === "2026-03-15")).toMatchObject({ days_late: "4" });
  });
});

test("readings.csv gives limits in the unit of the value, and the value as typed", () => {
  const readings = allTables.find(({ name }) => name === "readings");
  if (!readings) throw new Error("no readings");
  const records = parse(csvText(readings, eventful), { bom: true, columns: true }) as Record<
    string,
    string
  >[];
  // 1.3 D and 1.7 D of a 3/32 rivet: 0.121875 in and 0.159375 in; 1 in is 25.4 mm exactly.
  expect(records[0]).toMatchObject({
    value_as_typed: "0.1410 in",
    value: "0.141",
    unit: "in",
    lower: "0.121875",
    upper: "0.159375",
    verdict: "within",
    source: "Builder's manual (2025), sheet 5-2",
  });
  expect(records[1]).toMatchObject({ value: "0.3", verdict: "above", standing: "accounted for" });
  expect(records[2]).toMatchObject({ value_as_typed: "5/32 in", value: "0.15625" });
  expect(records[3]).toMatchObject({
    value: "3.7",
    unit: "mm",
    lower: "3.095625",
    upper: "4.048125",
  });
});
