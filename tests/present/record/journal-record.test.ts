import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { kindsApart } from "../../../src/model/session.ts";
import { hoursLogbookRecord } from "../../../src/present/record/hours-record.ts";
import { hoursSchema } from "../../../src/present/record/hours-schema.ts";
import { journalRecord } from "../../../src/present/record/journal-record.ts";
import type { JsonSchema } from "../../../src/present/record/json-schema.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { recordSchema } from "../../../src/present/record/record-schema.ts";
import { eventfulAnalysis, longAnalysis } from "../../support/eventful-build.ts";

const analysis = eventfulAnalysis();

/** What a reader of the file gets. */
function fromFile<T>(value: T): T {
  return JSON.parse(JSON.stringify(value));
}

function validator(schema: JsonSchema): ValidateFunction {
  return new Ajv2020({ allErrors: true, strict: true }).compile(schema);
}

describe.each([
  ["record.json", recordSchema(), journalRecord],
  ["hours.json", hoursSchema(), hoursLogbookRecord],
] as const)("the schema of %s", (_, schema, make) => {
  const validate = validator(schema);

  test.each([
    ["private", privateEdition],
    ["public", publicEdition],
  ] as const)("describes the %s edition", (_edition, edit) => {
    for (const each of [analysis, longAnalysis(40)]) {
      const record = fromFile(make(edit(each, each.diagnostics), "0.1.0"));
      validate(record);
      expect(validate.errors ?? []).toEqual([]);
    }
  });

  test("closes every object and describes every property", () => {
    const open: string[] = [];
    const silent: string[] = [];
    const visit = (node: unknown, path: string) => {
      if (typeof node !== "object" || node === null) return;
      const each = node as Record<string, unknown>;
      if (each.type === "object" && each.additionalProperties !== false) open.push(path);
      if (each.type === "object") {
        for (const [name, property] of Object.entries(each.properties ?? {})) {
          if (!(property as JsonSchema).description) silent.push(`${path}.${name}`);
        }
      }
      for (const [key, value] of Object.entries(each)) visit(value, `${path}.${key}`);
    };
    visit(schema, "");
    expect(open).toEqual([]);
    expect(silent).toEqual([]);
  });
});

describe("the schema of record.json refuses", () => {
  const validate = validator(recordSchema());
  const record = () =>
    fromFile(journalRecord(privateEdition(analysis, analysis.diagnostics), "0.1.0"));

  test.each([
    ["a property it does not know", (each: Record<string, unknown>) => ({ ...each, extra: 1 })],
    ["a missing register", ({ people: _people, ...rest }: Record<string, unknown>) => rest],
    [
      "minutes with a fraction",
      (each: Record<string, unknown>) => ({
        ...each,
        totals: { ...(each.totals as object), total: { build: 1.5, apart: 0 } },
      }),
    ],
    [
      "a date that is not one",
      (each: Record<string, unknown>) => ({ ...each, asOf: "14 March 2026" }),
    ],
  ])("%s", (_, spoil) => {
    expect(validate(record())).toBe(true);
    expect(validate(spoil(record()))).toBe(false);
  });
});

/** Every total, from the days of a record alone: what a stranger's program would do. */
function rebuiltTotals(record: ReturnType<typeof journalRecord>) {
  type Sums = Map<string, { build: number; apart: number }>;
  const empty = (ids: readonly string[]): Sums =>
    new Map(ids.map((id) => [id, { build: 0, apart: 0 }]));
  const list = (sums: Sums) => [...sums].map(([id, each]) => ({ id, ...each }));
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);
  const total = { build: 0, apart: 0 };
  const byAssembly = empty(ids(record.assemblies));
  const byAssemblyRolledUp = empty(ids(record.assemblies));
  const byStep = empty(ids(record.steps));
  const byPerson = empty(ids(record.people));
  const byRole = empty(["builder", "unpaid help", "paid help", "instruction", "inspector"]);
  const byKind = empty(["fabricate", "assemble", "inspect", "rework", "study", "shop"]);
  const byMonth = empty(record.days.map(({ date }) => date.slice(0, 7)));
  const byDate = empty(record.days.map(({ date }) => date));
  const toDate: Sums = new Map();
  const parents = new Map(record.assemblies.map(({ id, parent }) => [id, parent]));
  for (const day of record.days) {
    for (const session of day.sessions) {
      const counted = session.counted === "apart" ? "apart" : "build";
      for (const { person, role } of session.who) {
        const add = (sums: Sums, id: string | undefined) => {
          const each = id === undefined ? undefined : sums.get(id);
          if (each) each[counted] += session.minutes;
        };
        total[counted] += session.minutes;
        add(byAssembly, session.assembly);
        for (
          let id: string | undefined = session.assembly;
          id !== undefined;
          id = parents.get(id)
        ) {
          add(byAssemblyRolledUp, id);
        }
        add(byStep, session.step);
        add(byPerson, person);
        add(byRole, role);
        add(byKind, session.kind);
        add(byMonth, day.date.slice(0, 7));
        add(byDate, day.date);
      }
    }
    toDate.set(day.date, { ...total });
  }
  return {
    total,
    byAssembly: list(byAssembly),
    byAssemblyRolledUp: list(byAssemblyRolledUp),
    byStep: list(byStep),
    byPerson: list(byPerson),
    byRole: list(byRole),
    byKind: list(byKind),
    byMonth: list(byMonth),
    byDate: list(byDate),
    toDate: list(toDate),
  };
}

describe.each([
  ["eventful", analysis],
  ["long", longAnalysis(90)],
] as const)("the %s build", (_, each: Analysis) => {
  test.each([
    ["private", privateEdition],
    ["public", publicEdition],
  ] as const)("can be added up again from the %s record alone", (_edition, edit) => {
    const record = fromFile(journalRecord(edit(each, each.diagnostics), "0.1.0"));
    expect(record.totals.total).toEqual(each.hours.total);
    expect(rebuiltTotals(record)).toEqual(record.totals);
  });

  test("has the same rows in hours.json as in its days", () => {
    const { rows, totals } = fromFile(
      hoursLogbookRecord(privateEdition(each, each.diagnostics), "0.1.0"),
    );
    const expected = each.build.days.flatMap((day) =>
      day.sessions.flatMap((session) =>
        session.who.map(({ person }) => ({
          date: day.date,
          person,
          kind: session.kind,
          minutes: session.minutes,
          counted: kindsApart.includes(session.kind) ? "apart" : "build",
        })),
      ),
    );
    expect(
      rows.map(({ date, person, kind, minutes, counted }) => ({
        date,
        person,
        kind,
        minutes,
        counted,
      })),
    ).toEqual(expected);
    expect(totals.total).toEqual(each.hours.total);
  });
});

describe("the record", () => {
  const record = fromFile(journalRecord(privateEdition(analysis, analysis.diagnostics), "0.1.0"));
  const [first, second, third] = record.days;

  test("has values as typed, exactly, and as understood", () => {
    expect(first?.readings[0]?.values[0]).toMatchObject({
      quantity: {
        typed: "0.1410 in",
        exact: "141/1000",
        decimal: 0.141,
        unit: "in",
        dimension: "length",
      },
      verdict: "within",
    });
    expect(first?.readings[1]?.values[0]?.quantity).toMatchObject({
      typed: "5/32 in",
      exact: "5/32",
      decimal: 0.15625,
    });
    expect(first?.readings[0]).toMatchObject({
      lower: { exact: "39/320", unit: "in" },
      verdict: "above",
      standing: "accounted for",
      deviation: "D-014",
    });
    expect(first?.conditions.temperature).toMatchObject({
      typed: "61 °F",
      exact: "61",
      unit: "°F",
    });
  });

  test("has hours as typed beside the minutes in force, and the amendment that says why", () => {
    expect(first?.sessions[1]).toMatchObject({ number: 2, minutes: 105, typed: "1:45" });
    expect(second?.amendments[0]).toMatchObject({
      day: "2026-03-14",
      field: "sessions[2].hours",
      was: "1:15",
      now: "1:45",
    });
    expect(second).toMatchObject({ late: 4, written: { local: "2026-03-19 20:00" } });
  });

  test("says how each thing stands", () => {
    expect(first?.holds[0]).toMatchObject({ id: "H-1", released: "2026-03-15" });
    expect(first?.squawks.map(({ standing }) => standing)).toEqual(["closed", "open"]);
    expect(first?.deviations.map(({ open }) => open)).toEqual([false, true, true]);
    expect(first?.cures[0]).toMatchObject({ over: true, brokenBy: [] });
    expect(record.steps[0]?.looks).toMatchObject([
      { look: "driven heads", done: false, result: "held" },
      { look: "before closing", done: true, result: "clear" },
    ]);
    expect(record.lots[0]).toMatchObject({
      expires: "2026-08-03",
      expiry: "2026-12-18",
      expired: false,
    });
    expect(record.instruments[1]).toMatchObject({ id: "wrench-1", lapsed: true });
  });

  test("lists every file of the journal: a day each, or an omission with its reason", () => {
    expect(record.days.map(({ source }) => source.file)).toEqual(
      analysis.build.days.map(({ file }) => file),
    );
    expect(record.omissions).toEqual([{ file: "content/days/2026-03-21.md", why: "draft" }]);
    expect(third?.private).toBe(true);
  });
});

test("neither edition changes the analysis", () => {
  const fresh = eventfulAnalysis();
  const before = JSON.stringify(journalRecord(privateEdition(fresh, fresh.diagnostics), "0.1.0"));
  publicEdition(fresh, fresh.diagnostics);
  expect(JSON.stringify(journalRecord(privateEdition(fresh, fresh.diagnostics), "0.1.0"))).toBe(
    before,
  );
});
