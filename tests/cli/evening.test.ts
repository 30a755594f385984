// An evening by flags, with the clock in hand: what is written, and what is refused.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { eveningCommand } from "../../src/cli/evening.ts";
import { openJournal, UsageProblem } from "../../src/cli/journal.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { smallRegisters, temporaryJournal } from "../support/temporary-journal.ts";

// In the shop, on the clock of America/Denver.
const tenInTheEvening = new Date("2026-03-15T04:00:00Z"); // 14 March, 22:00
const noJudgedOn = (smallRegisters["project.yaml"] ?? "").replace(/judged-on.*\n/, "");

const march10 = `---
date: 2026-03-10
sessions:
  - { assembly: tail, who: [jon], hours: "0:30", kind: shop }
  - { assembly: spar, step: W-2, who: [ada, jon], hours: "1:15", kind: assemble, stage: riveted }
next: [buff the rivets, order No. 30 reamers]
---
Rivets.
`;

function journal(files: Readonly<Record<string, string>> = { "days/2026-03-10.md": march10 }) {
  const { path, remove } = temporaryJournal({ "project.yaml": noJudgedOn, ...files });
  onTestFinished(remove);
  return path;
}

async function evening(path: string, args: readonly string[], at = tenInTheEvening) {
  const terminal = recordedTerminal();
  await runVerb(
    eveningCommand(terminal, () => at),
    ["--journal", path, ...args],
  );
  return terminal.said;
}

async function refusal(path: string, args: readonly string[], at = tenInTheEvening) {
  const before = readdirSync(path, { recursive: true });
  const problem = await evening(path, args, at).then(
    () => undefined,
    (error: unknown) => error,
  );
  expect(readdirSync(path, { recursive: true })).toEqual(before);
  expect(problem).toBeInstanceOf(UsageProblem);
  const { message, help } = problem as UsageProblem;
  return { message: message.replaceAll(path, "journal"), help };
}

function entryOf(path: string, date: string): string {
  return readFileSync(join(path, "days", date.slice(0, 4), `${date}.md`), "utf8");
}

describe("an entry from flags", () => {
  test("is written as one would type it, and reads back", async () => {
    const path = journal();
    const said = await evening(path, [
      ...["--title", "Ribs: done", "--step", "W-1", "--who", "ada, jon", "--from", "640p"],
      ...["--to", "2105", "--kind", "Fabricate", "--stage", "drilled"],
      ...["--text", "The last rib went in.", "--next", "deburr", "--next", "No. 30, row B"],
    ]);
    expect(entryOf(path, "2026-03-14")).toBe(`---
date: 2026-03-14
written: 2026-03-14 22:00
title: "Ribs: done"
sessions:
  - { assembly: spar, step: W-1, who: [ada, jon], from: "18:40", to: "21:05", kind: fabricate, stage: drilled }
next:
  - deburr
  - No. 30, row B
---
The last rib went in.
`);
    expect(said.status).toBe(0);
    expect(said.err).toBe("");
    expect(said.out.split("\n").slice(1)).toEqual([
      "4:50 h on 14 March 2026, 7:20 h in March 2026, 7:20 h in all",
      "next: deburr",
      expect.stringMatching(/^see it: npm run witness -- preview --journal /),
      "",
    ]);
    const { analysis, errors, findings } = openJournal({ journal: path }, tenInTheEvening);
    expect([errors, findings]).toEqual([[], []]);
    expect(analysis?.build.days.at(-1)).toMatchObject({
      date: "2026-03-14",
      title: "Ribs: done",
      next: ["deburr", "No. 30, row B"],
      prose: "The last rib went in.\n",
      sessions: [{ assembly: "spar", step: "W-1", minutes: 145, kind: "fabricate" }],
    });
  });

  test("`--again` takes assembly, step, people and kind from the last session, but not its stage", async () => {
    const path = journal();
    await evening(path, ["--again", "--hours", "90 min"]);
    expect(entryOf(path, "2026-03-14")).toContain(
      '  - { assembly: spar, step: W-2, who: [ada, jon], hours: "1:30", kind: assemble }\n',
    );
  });

  test.each([
    [["--who", "ada"], "{ assembly: spar, step: W-2, who: [ada],"],
    [["--kind", "inspect"], 'who: [ada, jon], hours: "1:00", kind: inspect }'],
    [["--step", "W-1"], "{ assembly: spar, step: W-1, who: [ada, jon],"],
    [["--assembly", "tail"], "{ assembly: tail, who: [ada, jon],"],
    [["--stage", "closed"], "kind: assemble, stage: closed }"],
  ])("`--again` with %j has the flag's word over last time's", async (flags, written) => {
    const path = journal();
    await evening(path, ["--again", "--hours", "1", ...flags]);
    expect(entryOf(path, "2026-03-14")).toContain(written);
  });

  test("a lone builder need not be named; with two, nobody is credited unasked", async () => {
    const flags = ["--assembly", "tail", "--kind", "shop", "--hours", "0:20"];
    const alone = journal({});
    await evening(alone, flags);
    expect(entryOf(alone, "2026-03-14")).toContain("who: [ada]");
    const two = journal({
      "people.yaml": `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: eve, name: Eve Brook, role: builder }
`,
    });
    expect(await refusal(two, flags)).toMatchObject({
      message: "nobody can be asked here, and this is missing: --who",
      help: expect.arrayContaining(["people: ada, eve"]),
    });
  });

  test("words alone are an entry", async () => {
    const path = journal();
    await evening(path, ["--text", "Rain on the roof, read the manual."]);
    expect(entryOf(path, "2026-03-14")).toBe(
      "---\ndate: 2026-03-14\nwritten: 2026-03-14 22:00\n---\nRain on the roof, read the manual.\n",
    );
  });

  test("past midnight is over midnight", async () => {
    const path = journal();
    await evening(path, ["--again", "--from", "22:30", "--to", "0:15", "--date", "2026-03-13"]);
    const { analysis } = openJournal({ journal: path }, tenInTheEvening);
    expect(analysis?.build.days.at(-1)?.sessions[0]?.minutes).toBe(105);
  });
});

describe("which day it is", () => {
  test.each([
    ["at ten in the evening", "2026-03-15T04:00:00Z", "2026-03-14", "2026-03-14 22:00"],
    ["one minute before four", "2026-03-15T09:59:00Z", "2026-03-14", "2026-03-15 03:59"],
    ["at four", "2026-03-15T10:00:00Z", "2026-03-15", "2026-03-15 04:00"],
    ["just past midnight at new year", "2026-01-01T07:05:00Z", "2025-12-31", "2026-01-01 00:05"],
    // America/Denver, 1 November 2026: 02:00 daylight time becomes 01:00 standard time.
    [
      "in the first 01:30 of autumn",
      "2026-11-01T07:30:00Z",
      "2026-10-31",
      "2026-11-01 01:30-06:00",
    ],
    [
      "in the second 01:30 of autumn",
      "2026-11-01T08:30:00Z",
      "2026-10-31",
      "2026-11-01 01:30-07:00",
    ],
  ])("%s", async (_when, now, date, written) => {
    const path = journal({});
    const at = new Date(now);
    const said = await evening(path, ["--text", "Words."], at);
    expect(said).toMatchObject({ status: 0, err: "" });
    expect(entryOf(path, date)).toBe(`---\ndate: ${date}\nwritten: ${written}\n---\nWords.\n`);
    expect(openJournal({ journal: path }, at).errors).toEqual([]);
  });

  test("`--date yesterday`, and any day that exists", async () => {
    const path = journal();
    await evening(path, ["--text", "Words.", "--date", "yesterday"]);
    await evening(path, ["--text", "Words.", "--date", "2026-02-28"]);
    expect(readdirSync(join(path, "days", "2026"))).toEqual(["2026-02-28.md", "2026-03-13.md"]);
    await expect(evening(path, ["--text", "x", "--date", "2026-02-29"])).rejects.toThrow(
      "Write it as in 2026-03-14, or `yesterday`; the day has to exist.",
    );
  });

  test("a day that has not come yet is refused", async () => {
    const path = journal();
    const said = await evening(path, ["--text", "Plans.", "--date", "2026-03-16"]);
    expect(said.status).toBe(1);
    expect(said.err).toContain("error[future-date]: the entry is dated 2026-03-16");
    expect(existsSync(join(path, "days", "2026"))).toBe(false);
  });

  test("an existing day is refused, naming its file", async () => {
    const path = journal();
    const { message, help } = await refusal(path, [
      "--again",
      "--hours",
      "1",
      "--date",
      "2026-03-10",
    ]);
    expect(message).toMatch(
      /^there is an entry for 2026-03-10 already: .*journal\/days\/2026-03-10\.md$/,
    );
    expect(help).toContain("or name another day: `--date YYYY-MM-DD`");
  });

  test("so is a draft, and a file that cannot be read", async () => {
    const draft = march10.replace("date: 2026-03-10", "date: 2026-03-10\ndraft: true");
    const path = journal({ "days/2026-03-10.md": draft, "days/2026/2026-03-11.md": "no fence" });
    expect((await refusal(path, ["--text", "x", "--date", "2026-03-10"])).message).toContain(
      "already",
    );
    const said = await evening(path, ["--text", "x", "--date", "2026-03-11"]);
    expect(said.status).toBe(1);
    expect(said.err).toContain("2026-03-11 has two entries");
    expect(entryOf(path, "2026-03-11")).toBe("no fence");
  });
});

describe("what is not written", () => {
  test("wrong names, each with its suggestion, and the entry is not lost", async () => {
    const path = journal();
    const said = await evening(path, [
      ...["--assembly", "tial", "--step", "W-11", "--who", "adda", "--kind", "shop"],
      ...["--hours", "1", "--stage", "drild", "--text", "Much was done."],
    ]);
    expect(said.status).toBe(1);
    expect(said.out).toBe("");
    for (const name of ["tail", "W-1", "ada", "drilled"]) {
      expect(said.err).toContain(`did you mean \`${name}\`?`);
    }
    expect(said.err).not.toContain("empty-day");
    expect(said.err).toContain("nothing was written");
    expect(said.err).toMatch(/\nMuch was done\.\n$/);
    expect(existsSync(join(path, "days", "2026"))).toBe(false);
  });

  test.each([
    [["--hours", "an hour"], "`an hour` is not a duration in whole minutes"],
    [["--hours", "1.33"], "`1.33` is not a duration in whole minutes"],
    [["--from", "25:00", "--to", "26:00"], "`--from 25:00` is not a time of day"],
    [["--from", "18:40", "--to", "late"], "`--to late` is not a time of day"],
    [["--from", "18:40"], "nobody can be asked here, and this is missing: --to"],
    [["--to", "18:40"], "nobody can be asked here, and this is missing: --from"],
    [
      ["--from", "18:40", "--to", "19:40", "--hours", "1"],
      "the time is said twice, by `--hours` and by `--from` or `--to`",
    ],
    [[], "nobody can be asked here, and this is missing: --hours (or --from and --to)"],
  ])("a time said as %j", async (flags, message) => {
    expect((await refusal(journal(), ["--again", ...flags])).message).toBe(message);
  });

  test("nothing said names everything that is missing, and the names to choose from", async () => {
    const path = journal();
    expect(await refusal(path, [])).toEqual({
      message:
        "nobody can be asked here, and this is missing: --assembly, --kind, --hours (or --from and --to)",
      help: [
        "name it on the command line, as in `--assembly wing --kind assemble --hours 1:15`",
        "assemblies: wing, spar, tail",
        "kinds: fabricate, assemble, inspect, rework, study, shop",
        "`--again` takes assembly, step, people and kind from the last session",
        "`--text` alone makes an entry of words",
      ],
    });
  });

  test("a kind of work that there is not", async () => {
    expect(await refusal(journal(), ["--again", "--hours", "1", "--kind", "asemble"])).toEqual({
      message: "`asemble` is not a kind of work",
      help: [
        "did you mean `--kind assemble`?",
        "the kinds of work are fabricate, assemble, inspect, rework, study, shop",
      ],
    });
  });

  test("`--again` in a journal without a session before that day", async () => {
    const flags = ["--again", "--hours", "1"];
    expect((await refusal(journal({}), flags)).message).toBe(
      "there is no earlier session to do again",
    );
    expect((await refusal(journal(), [...flags, "--date", "2026-03-09"])).message).toBe(
      "there is no earlier session to do again",
    );
  });

  test("a session that overlaps with the night before", async () => {
    const path = journal({
      "days/2026-03-13.md": `---
date: 2026-03-13
sessions: [{ assembly: tail, who: [ada], from: "22:00", to: "01:00", kind: shop }]
---
Late.
`,
    });
    const flags = ["--assembly", "tail", "--kind", "shop", "--from", "0:30", "--to", "2:00"];
    const said = await evening(path, flags);
    expect(said.status).toBe(1);
    expect(said.err).toContain("error[overlapping-sessions]");
    expect(existsSync(join(path, "days", "2026"))).toBe(false);
  });

  test("an entry into a journal that is judged on a day of the past", async () => {
    const finished = `${noJudgedOn}judged-on: 2026-03-12\n`;
    const path = journal({ "project.yaml": finished, "days/2026-03-10.md": march10 });
    const flags = ["--again", "--hours", "1", "--date", "2026-03-11"];
    expect(await refusal(path, flags)).toEqual({
      message: "this journal is judged on 2026-03-12, as a finished one is",
      help: [
        "take `judged-on` out of project.yaml to go on with it",
        "`--dry-run` shows an entry without writing it",
      ],
    });
    expect((await evening(path, [...flags, "--dry-run"])).status).toBe(0);
  });
});

describe("what is written with a word beside it", () => {
  test("an entry that makes a vouched total another one", async () => {
    const vouched = march10.replace("next:", 'assert: { total: "2:30" }\nnext:');
    const path = journal({ "days/2026-03-10.md": vouched });
    expect(openJournal({ journal: path }, tenInTheEvening).errors).toEqual([]);
    const said = await evening(path, [
      ...["--date", "2026-03-09", "--assembly", "tail", "--kind", "assemble", "--hours", "1"],
    ]);
    expect(said.status).toBe(1);
    expect(said.err).toContain("error[total-differs]");
    expect(said.err).toContain("a total that a later day vouches for is another one now");
    expect(entryOf(path, "2026-03-09")).toContain('hours: "1:00"');
  });

  test("a finding of the entry itself", async () => {
    const path = journal();
    const said = await evening(path, [
      "--step",
      "W-1",
      "--stage",
      "closed",
      "--kind",
      "assemble",
      "--hours",
      "1",
    ]);
    expect(said.status).toBe(0);
    expect(said.out).toContain("wrote ");
    expect(said.err).toContain("finding[inspection-missing-before-closing]");
  });

  test("an entry into a journal that has errors elsewhere", async () => {
    const path = journal({ "days/2026-03-10.md": march10.replace("tail", "tial") });
    const said = await evening(path, ["--again", "--hours", "1"]);
    expect(said).toMatchObject({ status: 0, err: "" });
    expect(entryOf(path, "2026-03-14")).toContain("assembly: spar");
  });
});

test("`--dry-run` prints the entry and writes nothing", async () => {
  const path = journal();
  const said = await evening(path, ["--again", "--hours", "1", "--dry-run"]);
  expect(said).toEqual({
    status: 0,
    err: "",
    out: `---
date: 2026-03-14
written: 2026-03-14 22:00
sessions:
  - { assembly: spar, step: W-2, who: [ada, jon], hours: "1:00", kind: assemble }
---
`,
  });
  expect(existsSync(join(path, "days", "2026"))).toBe(false);
});

describe("`--json`", () => {
  test("says the file, what was written, and that it was", async () => {
    const path = journal();
    const said = await evening(path, ["--again", "--hours", "1", "--json"]);
    expect(said).toMatchObject({ status: 0, err: "" });
    const answer = JSON.parse(said.out);
    expect(answer).toEqual({
      file: expect.stringMatching(/journal\/days\/2026\/2026-03-14\.md$/),
      written: true,
      text: entryOf(path, "2026-03-14"),
      errors: [],
      findings: [],
    });
  });

  test("says what stands against it, and that nothing was written", async () => {
    const path = journal();
    const said = await evening(path, ["--again", "--who", "adda", "--hours", "1", "--json"]);
    expect(said).toMatchObject({ status: 1, err: "" });
    const answer = JSON.parse(said.out);
    expect(answer).toMatchObject({
      written: false,
      errors: [{ code: "unknown-name", severity: "error", line: 5, column: 40 }],
    });
    expect(existsSync(join(path, "days", "2026"))).toBe(false);
  });
});

test("a journal that cannot be read at all is said to be so", async () => {
  const path = journal({ "project.yaml": "title: [" });
  const said = await evening(path, ["--text", "x"]);
  expect(said.status).toBe(1);
  expect(said.out).toContain("error[not-yaml]");
  expect(said.err).toContain("nothing was written; put right what is above first");
});
