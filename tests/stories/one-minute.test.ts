// One minute more in one entry changes exactly the totals it should, and nothing else.

import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { shop, witness } from "../support/witness.ts";

const site = "tests/sites/autumn-in-denver/input";
const november2 = "content/days/2026/2026-11-02.md";
const october30 = "content/days/2026/2026-10-30.md";
const november8 = "content/days/2026/2026-11-08.md";

type Leaves = ReadonlyMap<string, unknown>;

/** Every value of `hours.json` and `record.json`, by its path; items with an id by that. */
async function exported(edit?: { file: string; from: string; to: string }): Promise<Leaves> {
  const { cwd, file } = shop({}, site);
  // The totals that the builder vouches for would differ, and nothing would be exported.
  replace(file(november8), /^assert:.*\n/m, "");
  if (edit) replace(file(edit.file), edit.from, edit.to);
  const { status, stderr } = await witness(["export", "--edition", "private"], { cwd });
  expect([status, stderr]).toEqual([0, ""]);
  const leaves = new Map<string, unknown>();
  for (const name of ["hours", "record"]) {
    const json = readFileSync(file(`out/content/private-exports/${name}.json`), "utf8");
    addLeaves(`${name}`, JSON.parse(json), leaves);
  }
  return leaves;
}

function replace(file: string, from: string | RegExp, to: string): void {
  const text = readFileSync(file, "utf8");
  const changed = text.replace(from, to);
  expect(changed).not.toBe(text);
  writeFileSync(file, changed);
}

function addLeaves(path: string, value: unknown, leaves: Map<string, unknown>): void {
  if (typeof value !== "object" || value === null) {
    leaves.set(path, value);
    return;
  }
  for (const [key, item] of Object.entries(value)) {
    const { id, date, row } = item as { id?: string; date?: string; row?: number };
    const name = Array.isArray(value) ? (row ?? id ?? date ?? key) : key;
    addLeaves(`${path}.${name}`, item, leaves);
  }
}

/** What differs: for numbers by how much, else what stands there now. */
function differences(before: Leaves, after: Leaves): Record<string, unknown> {
  const changed: Record<string, unknown> = {};
  for (const path of new Set([...before.keys(), ...after.keys()])) {
    const [was, now] = [before.get(path), after.get(path)];
    if (Object.is(was, now)) continue;
    changed[path] = typeof was === "number" && typeof now === "number" ? now - was : now;
  }
  return changed;
}

/** The totals stand in both files. */
function inBoth(totals: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    ["hours", "record"].flatMap((name) =>
      Object.entries(totals).map(([path, by]) => [`${name}.totals.${path}.build`, by]),
    ),
  );
}

describe("of 640 minutes", () => {
  test("one more for one person is one more wherever that session counts", async () => {
    const [before, after] = await Promise.all([
      exported(),
      exported({ file: november2, from: '"20:30"', to: '"20:31"' }),
    ]);
    expect(before.get("hours.totals.total.build")).toBe(640);
    expect(differences(before, after)).toEqual({
      "hours.rows.7.to": "2026-11-02 20:31",
      "hours.rows.7.minutes": 1,
      "hours.rows.7.running_minutes": 1,
      "hours.rows.8.running_minutes": 1,
      "record.days.2026-11-02.sessions.0.to.local": "2026-11-02 20:31",
      "record.days.2026-11-02.sessions.0.to.epochMinutes": 1,
      "record.days.2026-11-02.sessions.0.minutes": 1,
      ...inBoth({
        total: 1,
        "byAssembly.spar": 1,
        "byAssemblyRolledUp.spar": 1,
        "byAssemblyRolledUp.wing": 1,
        "byStep.W-2": 1,
        "byPerson.ada": 1,
        "byRole.builder": 1,
        "byKind.rework": 1,
        "byMonth.2026-11": 1,
        "byDate.2026-11-02": 1,
        "toDate.2026-11-02": 1,
        "toDate.2026-11-08": 1,
      }),
    });
  });

  test("one more for two people is two more in what both worked on", async () => {
    const [before, after] = await Promise.all([
      exported(),
      exported({ file: october30, from: '"18:40"', to: '"18:39"' }),
    ]);
    const rows = Object.fromEntries(
      [1, 2].flatMap((row) => [
        [`hours.rows.${row}.from`, "2026-10-30 18:39"],
        [`hours.rows.${row}.minutes`, 1],
        [`hours.rows.${row}.running_minutes`, row],
      ]),
    );
    expect(differences(before, after)).toEqual({
      ...rows,
      "hours.rows.3.running_minutes": 2,
      "hours.rows.7.running_minutes": 2,
      "hours.rows.8.running_minutes": 2,
      "record.days.2026-10-30.sessions.0.from.local": "2026-10-30 18:39",
      "record.days.2026-10-30.sessions.0.from.epochMinutes": -1,
      "record.days.2026-10-30.sessions.0.minutes": 1,
      "record.days.2026-10-30.sessions.0.typed": "18:39",
      ...inBoth({
        total: 2,
        "byAssembly.spar": 2,
        "byAssemblyRolledUp.spar": 2,
        "byAssemblyRolledUp.wing": 2,
        "byStep.W-1": 2,
        "byPerson.ada": 1,
        "byPerson.jon": 1,
        "byRole.builder": 1,
        "byRole.unpaid help": 1,
        "byKind.fabricate": 2,
        "byMonth.2026-10": 2,
        "byDate.2026-10-30": 2,
        "toDate.2026-10-30": 2,
        "toDate.2026-10-31": 2,
        "toDate.2026-11-01": 2,
        "toDate.2026-11-02": 2,
        "toDate.2026-11-08": 2,
      }),
    });
  });
});

test("and a builder who vouched for the total is told", async () => {
  const { cwd, file } = shop({}, site);
  replace(file(november2), '"20:30"', '"20:31"');
  const { status, stdout } = await witness(["check", "--json"], { cwd });
  const { errors } = JSON.parse(stdout) as {
    errors: { code: string; file: string; line: number; message: string }[];
  };
  expect(errors.map(({ code, line }) => [code, line])).toEqual([
    ["total-differs", 12],
    ["total-differs", 12],
  ]);
  expect(errors.map(({ message }) => message).join("\n")).toContain("10:41");
  expect(status).toBe(1);
});
