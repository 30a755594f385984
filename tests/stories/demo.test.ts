// The sample journal: `npm run demo` on a fresh machine, what it finds, and whether its sums are
// right.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import initSqlJs from "sql.js";
import { beforeAll, describe, expect, test } from "vitest";
import { demoRun } from "../support/build-demo.ts";
import { demoExports, demoSite } from "../support/demo-site.ts";
import { plainCount } from "../support/plain-count.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { projectFolder, type Witnessed, witness } from "../support/witness.ts";

interface Finding {
  readonly code: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

interface Answer {
  readonly errors: readonly Finding[];
  readonly findings: readonly Finding[];
  readonly totals: Readonly<Record<string, number>>;
}

const journal = join(projectFolder, "site-demo");
const planted = JSON.parse(
  readFileSync(join(projectFolder, "tests/sites/site-demo-findings.json"), "utf8"),
) as Finding[];

let demo: Witnessed;
let check: Witnessed;

beforeAll(async () => {
  [demo, check] = await Promise.all([
    demoRun(),
    witness(["check", "--journal", "site-demo", "--json"], { cwd: projectFolder }),
  ]);
});

describe("check", () => {
  test("lists what was planted, each at its line, and nothing else", () => {
    const { errors, findings } = JSON.parse(check.stdout) as Answer;
    expect(errors).toEqual([]);
    expect(findings.map(({ code, file, line, column }) => ({ code, file, line, column }))).toEqual(
      planted.map(({ code, file, line, column }) => ({
        code,
        file: `site-demo/${file}`,
        line,
        column,
      })),
    );
    expect([check.status, check.stderr]).toEqual([0, ""]);
  });

  test("comes to what a plain count of the entries comes to", () => {
    const { totals } = JSON.parse(check.stdout) as Answer;
    const { byPerson, byAssembly, byMonth, ...counted } = plainCount(journal);
    expect(totals).toEqual(counted);
    expect(counted.days).toBeGreaterThanOrEqual(120);
    expect(Object.keys(byMonth).length).toBeGreaterThanOrEqual(14);
    const { totals: sums } = hours();
    const inPlain = (rows: readonly Sum[]) =>
      Object.fromEntries(rows.filter(({ build }) => build > 0).map(({ id, build }) => [id, build]));
    expect(inPlain(sums.byAssembly)).toEqual(byAssembly);
    expect(inPlain(sums.byMonth)).toEqual(byMonth);
    // Private people go by a number in the public edition, so their sums are compared in order.
    expect(sorted(Object.values(inPlain(sums.byPerson)))).toEqual(sorted(Object.values(byPerson)));
  });
});

describe("npm run demo", () => {
  test("prints where site and exports are, and what the checks found", () => {
    expect([demo.status, demo.stderr]).toEqual([0, ""]);
    expect(demo.stdout).toContain(`\nsite: ${demoSite} (`);
    expect(demo.stdout).toContain(`\nexports: ${demoExports}\n`);
    expect(demo.stdout).toContain(`0 errors, ${planted.length} findings`);
    for (const code of new Set(planted.map((each) => each.code))) {
      const count = planted.filter((each) => each.code === code).length;
      expect(demo.stdout).toMatch(new RegExp(`^ +${count} {2}${code}$`, "m"));
    }
  });

  test("shows every day that is not private or a draft, and at least 150 pictures", () => {
    const files = filesIn(demoSite);
    const days = files.filter((name) => /^\d{4}\/\d\d\/\d\d\/index\.html$/.test(name));
    const { days: all } = plainCount(journal);
    expect(days.length).toBe(all - 1);
    const shown = Number(/(\d+) photographs/.exec(demo.stdout)?.[1]);
    expect(shown).toBeGreaterThanOrEqual(150);
    expect(files.filter((name) => name.endsWith(".jpg")).length).toBeGreaterThanOrEqual(shown);
  });

  test("publishes no word of a draft, of a private day, session, lot or person", () => {
    const hidden =
      /quillwort|thistledown|not in the mood for company|estate sale|hinge-estate|philippa|\bpip\b/i;
    const telling = [demoSite, demoExports].flatMap((folder) =>
      filesIn(folder)
        .filter((name) => /\.(html|xml|json|csv|txt|js|css)$/.test(name))
        .filter((name) => hidden.test(readFileSync(join(folder, name), "utf8"))),
    );
    expect(telling).toEqual([]);
  });
});

describe("hours.csv, added up by a database", () => {
  test("has the sums of hours.json", async () => {
    const { Database } = await initSqlJs();
    const database = new Database();
    const rows = parse(readFileSync(join(demoExports, "hours.csv"), "utf8"), {
      bom: true,
      columns: true,
    }) as Record<string, string>[];
    database.run(
      "create table hours (assembly text, step text, person text, role text, kind text, month text, date text, counted text, minutes integer)",
    );
    for (const { assembly, step, person, role, kind, date, counted, minutes } of rows) {
      database.run("insert into hours values (?, ?, ?, ?, ?, ?, ?, ?, ?)", [
        ...[assembly, step, person, role, kind, date?.slice(0, 7), date, counted].map(
          (cell) => cell ?? null,
        ),
        Number(minutes),
      ]);
    }
    const { totals } = hours();
    const sumsBy = (column: string) =>
      database
        .exec(
          `select ${column}, sum(iif(counted = 'build', minutes, 0)), sum(iif(counted = 'apart', minutes, 0))
           from hours where ${column} <> '' group by ${column} order by ${column}`,
        )
        .flatMap(({ values }) => values);
    const inJson = (sums: readonly Sum[]) =>
      sums
        .filter(({ build, apart }) => build + apart > 0)
        .map(({ id, build, apart }) => [id, build, apart])
        .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
    expect(sumsBy("assembly")).toEqual(inJson(totals.byAssembly));
    expect(sumsBy("step")).toEqual(inJson(totals.byStep));
    expect(sumsBy("person")).toEqual(inJson(totals.byPerson));
    expect(sumsBy("role")).toEqual(inJson(totals.byRole));
    expect(sumsBy("kind")).toEqual(inJson(totals.byKind));
    expect(sumsBy("month")).toEqual(inJson(totals.byMonth));
    expect(sumsBy("date")).toEqual(inJson(totals.byDate));
    const all = database.exec(
      "select sum(iif(counted = 'build', minutes, 0)), sum(iif(counted = 'apart', minutes, 0)) from hours",
    )[0]?.values[0];
    expect(all).toEqual([totals.total.build, totals.total.apart]);
    const answer = JSON.parse(check.stdout) as Answer;
    expect(all).toEqual([answer.totals.minutes, answer.totals.minutesApart]);
  });
});

interface Sum {
  readonly id: string;
  readonly build: number;
  readonly apart: number;
}

type SumsBy = `by${"Assembly" | "Step" | "Person" | "Role" | "Kind" | "Month" | "Date"}`;

function hours() {
  return JSON.parse(readFileSync(join(demoExports, "hours.json"), "utf8")) as {
    readonly totals: Readonly<Record<SumsBy, readonly Sum[]>> & {
      readonly total: Omit<Sum, "id">;
    };
  };
}

const sorted = (numbers: readonly number[]) => numbers.toSorted((a, b) => a - b);
