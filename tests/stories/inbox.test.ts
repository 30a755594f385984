// Hours of an older log come in whole, marked as entered later, or not at all.

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { inboxCommand } from "../../src/cli/inbox.ts";
import { UsageProblem } from "../../src/cli/journal.ts";
import { journalFolder } from "../../src/read/files.ts";
import { readBuild } from "../../src/read/read-build.ts";
import { createEntries } from "../../src/write/entries/create-entries.ts";
import { diskDyingAfter } from "../support/failing-disk.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { filesIn, scratchFolder } from "../support/scratch-folder.ts";
import { smallRegisters } from "../support/temporary-journal.ts";

const table = `Date,Part,Who,Time,Type,Remarks
2025-12-20,Wing,ada,1:15,assemble,
2025-12-20,Spar,ada + jon,2:00,fabricate,"holes, ""many"""
2025-12-28,Spar,ada,0.5,study,
`;
const mapping =
  "columns: { date: Date, assembly: Part, who: Who, hours: Time, kind: Type, note: Remarks }\n";
const at = () => new Date("2026-03-14T12:00:00Z");

const asserting = `---
date: 2026-01-10
sessions:
  - { assembly: wing, who: [ada], hours: "1:00", kind: assemble }
assert: { total: "1:00" }
---
Counted.
`;

function desk(files: Readonly<Record<string, string>> = {}) {
  const registers = Object.entries(smallRegisters).map(([name, text]) => [
    `content/${name}`,
    text.replace("judged-on: 2026-12-31\n", ""),
  ]);
  const folder = scratchFolder({
    ...Object.fromEntries(registers),
    "content/days/2026-01-09.md": "---\ndate: 2026-01-09\n---\nBegun.\n",
    "hours.csv": table,
    "mapping.yaml": mapping,
    ...files,
  });
  return {
    folder,
    days: () => filesIn(`${folder}/content/days`),
    inbox: async (...args: readonly string[]) => {
      const terminal = recordedTerminal();
      await runVerb(inboxCommand(terminal, at), [
        `${folder}/hours.csv`,
        ...["--map", `${folder}/mapping.yaml`, "--journal", `${folder}/content`, ...args],
      ]);
      return terminal.said;
    },
    build: () => {
      const content = journalFolder(`${folder}/content`);
      const read = content && readBuild(content);
      if (!read?.build) throw new Error("no build");
      return read.build;
    },
  };
}

describe("without --write", () => {
  test.each([[[]], [["--dry-run"]]])("%j shows everything and writes nothing", async (args) => {
    const { inbox, days } = desk();
    const { out, err, status } = await inbox(...args);
    expect(out).toContain("2025-12-20.md, from lines 2, 3");
    expect(out).toContain("  imported: hours.csv\n");
    expect(out).toContain("2 days, 3 sessions to be written");
    expect(err).toContain("nothing was written; `--write` behind the same command writes it");
    expect(status).toBe(0);
    expect(days()).toEqual(["2026-01-09.md"]);
  });
});

test("a long run of lines is told by its ends", async () => {
  const more = Array.from({ length: 6 }, () => "2025-12-20,Wing,ada,0:05,assemble,\n").join("");
  const { inbox } = desk({
    "hours.csv": table + more,
    "mapping.yaml": `${mapping}same-rows: each\n`,
  });
  expect((await inbox()).out).toContain("2025-12-20.md, from lines 2, 3, 5 to 10\n");
});

describe("with --write", () => {
  test("the entries read back as the rows said, and say where they are from and when they came", async () => {
    const { inbox, days, build, folder } = desk();
    const { out, status } = await inbox("--write");
    expect(out).toContain("2 days, 3 sessions written");
    expect(status).toBe(0);
    expect(days()).toEqual(["2025/2025-12-20.md", "2025/2025-12-28.md", "2026-01-09.md"]);
    expect(readFileSync(`${folder}/content/days/2025/2025-12-20.md`, "utf8")).toBe(`---
date: 2025-12-20
written: 2026-03-14 06:00
imported: hours.csv
sessions:
  - { assembly: wing, who: [ada], hours: "1:15", kind: assemble }
  - { assembly: spar, who: [ada, jon], hours: "2:00", kind: fabricate, note: 'holes, "many"' }
---
`);
    const [first, second] = build().days;
    expect(first).toMatchObject({
      date: "2025-12-20",
      imported: "hours.csv",
      late: 84,
      sessions: [
        { assembly: "wing", minutes: 75, kind: "assemble" },
        { assembly: "spar", minutes: 120, who: [{ person: "ada" }, { person: "jon" }] },
      ],
    });
    expect(second?.sessions[0]).toMatchObject({ minutes: 30, kind: "study" });
  });

  test("a second time, all of it is there already", async () => {
    const { inbox, days } = desk();
    await inbox("--write");
    const before = days();
    const { out, status } = await inbox("--write");
    expect(out).toContain("0 days, 0 sessions to be written");
    expect(out).toContain("in the journal already: lines 2, 3, 4");
    expect(status).toBe(0);
    expect(days()).toEqual(before);
  });

  test("--json says the same", async () => {
    const { inbox } = desk();
    const answer = JSON.parse((await inbox("--write", "--json")).out);
    expect(answer).toMatchObject({
      entries: [{ lines: [2, 3] }, { lines: [4] }],
      written: true,
      known: [],
      twins: [],
      unused: [],
      errors: [],
    });
  });
});

describe("one bad row, and nothing is written", () => {
  test.each([
    [
      "a part that is not known",
      "2025-12-29,Wnig,ada,1:15,shop,\n",
      "hours.csv:5:12: error[unknown-name]",
    ],
    [
      "a day that has an entry",
      "2026-01-09,Wing,ada,1:15,shop,\n",
      "hours.csv:5:1: error[duplicate-day]",
    ],
    ["a row twice", "2025-12-28,Spar,ada,0:30,study,\n", "hours.csv:5:1: error[duplicate-row]"],
    ["more than a day holds", "2025-12-29,Wing,ada,25:00,shop,\n", "error[more-than-a-day]"],
    ["a day to come", "2026-03-15,Wing,ada,1:00,shop,\n", "error[future-date]"],
  ])("%s", async (_, row, message) => {
    const { inbox, days } = desk({ "hours.csv": table + row });
    const { out, err, status } = await inbox("--write");
    expect(out).toContain(message);
    expect(err).toMatch(/\d errors?: nothing was written/);
    expect(status).toBe(1);
    expect(days()).toEqual(["2026-01-09.md"]);
  });

  test("and what the journal says of an entry leads back to the rows", async () => {
    const { inbox } = desk({ "hours.csv": `${table}2025-12-29,Wing,ada,25:00,shop,\n` });
    expect((await inbox()).out).toMatch(/= note: from \S*hours\.csv:5\n/);
  });
});

test("totals that a later day vouches for are told, and do not hold it up", async () => {
  const { inbox, days } = desk({ "content/days/2026-01-10.md": asserting });
  const { err, status } = await inbox("--write");
  expect(err).toContain("error[total-differs]");
  expect(err).toContain("totals that later days vouch for are others now");
  expect(status).toBe(1);
  expect(days()).toHaveLength(4);
});

describe("several entries at once", () => {
  const four = ["2024/2024-12-31", "2025/2025-01-01", "2025/2025-01-02", "2026/2026-01-03"];
  const entries = four.map((name) => ({ path: `${name}.md`, text: `new ${name}\n` }));
  const visible = (folder: string) =>
    filesIn(folder).filter((name) => !/(^|\/)\./.test(name) && name.endsWith(".md"));

  test("one that is there already keeps all of them out", async () => {
    const folder = scratchFolder({ "2025/2025-01-02.md": "there already" });
    await expect(createEntries(folder, entries)).rejects.toThrow("is there already");
    expect(filesIn(folder)).toEqual(["2025/2025-01-02.md"]);
    expect(readFileSync(`${folder}/2025/2025-01-02.md`, "utf8")).toBe("there already");
  });

  test("killed anywhere, all are there or none, each whole; the next call tidies up", async () => {
    const seen = new Set<number>();
    let finished = false;
    let calls = 0;
    for (; !finished; calls += 1) {
      const folder = scratchFolder({ "2023/2023-05-05.md": "old\n" });
      const disk = diskDyingAfter(calls);
      await createEntries(folder, entries).then(
        () => {
          finished = true;
        },
        () => undefined,
      );
      disk.revive();
      const there = visible(folder).filter((name) => !name.startsWith("2023/"));
      expect([calls, there.length === 0 || there.length === four.length]).toEqual([calls, true]);
      seen.add(there.length);
      for (const name of there) {
        const own = name.replace(/^inbox-[0-9a-f]{12}\//, "");
        expect(readFileSync(`${folder}/${name}`, "utf8")).toBe(`new ${own.slice(0, -3)}\n`);
      }
      await createEntries(folder, [{ path: "2027/2027-07-07.md", text: "later\n" }]);
      const kept = there.length === 0 ? [] : entries.map(({ path }) => path);
      expect(filesIn(folder)).toEqual(["2023/2023-05-05.md", ...kept, "2027/2027-07-07.md"].sort());
    }
    expect([...seen].sort()).toEqual([0, four.length]);
    expect(calls).toBeGreaterThan(10);
  });
});

describe("used wrongly", () => {
  test("without a mapping, or with a file that is not there", async () => {
    const { folder } = desk();
    const run = (...args: readonly string[]) =>
      runVerb(inboxCommand(recordedTerminal(), at), [...args, "--journal", `${folder}/content`]);
    await expect(run(`${folder}/hours.csv`)).rejects.toThrow("--map");
    await expect(run(`${folder}/hours.csv`, "--map", `${folder}/none.yaml`)).rejects.toBeInstanceOf(
      UsageProblem,
    );
  });

  test("--write together with --dry-run", async () => {
    const { inbox } = desk();
    await expect(inbox("--write", "--dry-run")).rejects.toBeInstanceOf(UsageProblem);
  });
});
