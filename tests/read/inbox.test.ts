// An older log becomes sessions, or is refused row by row.

import { describe, expect, test } from "vitest";
import { Faults } from "../../src/read/faults.ts";
import { datePatternOf } from "../../src/read/inbox-mapping.ts";
import { readInbox } from "../../src/read/inbox-rows.ts";
import { SourceFile } from "../../src/read/source-file.ts";
import { readSmall } from "../support/temporary-journal.ts";

const usual = `columns: { date: Date, assembly: Part, step: Task, who: Who, hours: Time, kind: Type, note: Remarks }
`;

const present = {
  "days/2026-03-14.md": `---
date: 2026-03-14
sessions:
  - { assembly: spar, step: W-1, who: [ada, jon], hours: "1:15", kind: fabricate }
  - { assembly: wing, who: [ada], from: "18:40", to: "20:00", kind: assemble }
---
Holes.
`,
  "days/2026-03-15.md": "---\ndate: 2026-03-15\ndraft: true\n---\nNot yet.\n",
};

function read(rows: string, mapping = usual, head = "Date,Part,Task,Who,Time,Type,Remarks\n") {
  const { build } = readSmall(present);
  if (!build) throw new Error("no build");
  const faults = new Faults();
  const reading = readInbox(
    {
      table: new SourceFile("hours.csv", `${head}${rows}`),
      mapping: new SourceFile("mapping.yaml", mapping),
    },
    build,
    faults,
  );
  return {
    ...reading,
    sessions: reading.days.flatMap(({ sessions }) => sessions),
    found: faults.found.map(
      ({ code, span, message }) =>
        `${span.file}:${span.line}:${span.text.slice(span.column - 1, span.column - 1 + span.length)}: ${code}: ${message}`,
    ),
    help: faults.found.flatMap(({ help }) => help),
  };
}

describe("a row becomes a session", () => {
  test("by ids, titles, names and initials, letter case aside", () => {
    const { sessions, found, days } = read(
      "2024-03-02,spar,W-1,ada,1:15,fabricate,\n2024-03-02,Wing,,Ada Brook and J.R.,0:30,ASSEMBLE,two of us\n2024-03-01,,rivet the SPAR,ada; jon,2h,rework,\n",
    );
    expect(found).toEqual([]);
    expect(days.map(({ date, rows }) => [date, rows.map(({ line }) => line)])).toEqual([
      ["2024-03-01", [4]],
      ["2024-03-02", [2, 3]],
    ]);
    expect(sessions).toEqual([
      { assembly: "spar", step: "W-2", who: ["ada", "jon"], hours: "2:00", kind: "rework" },
      { assembly: "spar", step: "W-1", who: ["ada"], hours: "1:15", kind: "fabricate" },
      { assembly: "wing", who: ["ada", "jon"], hours: "0:30", kind: "assemble", note: "two of us" },
    ]);
  });

  test("by what the mapping says of values, and of every row", () => {
    const mapping = `columns: { date: Tag, hours: Dauer, assembly: Was, who: Wer }
values:
  assembly: { Flosse: Tail, Holm: spar }
  who: { ich: ada, beide: [ada, jon] }
always: { kind: fabricate, who: jon }
date: DD. MMM YY
separator: ";"
`;
    const { sessions, found, unused } = read(
      "2. March 24;Flosse;beide;1,5;x\n3. Mar 24;Holm;;0,25;\n",
      mapping,
      "Tag;Was;Wer;Dauer;Wetter\n",
    );
    expect(found).toEqual([]);
    expect(sessions).toEqual([
      { assembly: "tail", who: ["ada", "jon"], hours: "1:30", kind: "fabricate" },
      { assembly: "spar", who: ["jon"], hours: "0:15", kind: "fabricate" },
    ]);
    expect(unused).toEqual(["Wetter"]);
  });

  test("with clock times, and the columns in any order", () => {
    const { sessions, found } = read(
      "6:40 pm,20:05:00,wing,study,ada,2024-03-02\n",
      "columns: { date: d, assembly: a, who: w, kind: k, from: f, to: t }\n",
      "f,t,a,k,w,d\n",
    );
    expect(found).toEqual([]);
    expect(sessions).toEqual([
      { assembly: "wing", who: ["ada"], from: "18:40", to: "20:05", kind: "study" },
    ]);
  });

  test("with quotes, separators and line ends inside its cells", () => {
    const { sessions, found } = read(
      '\r\n2024-03-02,wing,,ada,1:15,shop,"a, ""b""\r\nc"\r\n,,,,,,\r\n2024-03-03,wing,,ada,1:15,shop,"d"\r\n',
    );
    expect(found).toEqual([]);
    expect(sessions.map(({ note }) => note)).toEqual(['a, "b" c', "d"]);
  });
});

test.each([
  ["YYYY-MM-DD", "2024-03-02", "2024-03-02"],
  ["MM/DD/YYYY", "3/2/2024", "2024-03-02"],
  ["DD.MM.YY", "02.03.24", "2024-03-02"],
  ["MMM DD, YYYY", "March 2, 2024", "2024-03-02"],
  ["MM/DD/YYYY", "2024-03-02", undefined],
])("a date as %s: %s", (pattern, text, date) => {
  expect(datePatternOf(pattern)?.read(text)).toBe(date);
});

test.each(["YYYY-MM", "date", "DD.DD.YYYY"])("%s is no pattern of a date", (pattern) => {
  expect(datePatternOf(pattern)).toBeUndefined();
});

describe("a row is refused, with its line and its cell", () => {
  test.each([
    ["2024-02-30,wing,,ada,1:15,shop,", "2024-02-30: not-a-date"],
    ["2.3.2024,wing,,ada,1:15,shop,", "2.3.2024: not-a-date"],
    ["2024-03-02,wnig,,ada,1:15,shop,", "wnig: unknown-name: `wnig` is no assembly of the journal"],
    ["2024-03-02,,W-9,ada,1:15,shop,", "W-9: unknown-name: `W-9` is no step of the journal"],
    ["2024-03-02,wing,,ada + bob,1:15,shop,", "ada + bob: unknown-name: `bob` is no person"],
    ["2024-03-02,wing,,ada,1:15,welding,", "welding: unknown-name: `welding` is no kind of work"],
    ["2024-03-02,wing,,ada,1.33,shop,", "1.33: not-a-duration"],
    ["2024-03-02,wing,,ada,,shop,", "missing-key: the row does not say `hours`"],
    ["2024-03-02,wing,,,1:15,shop,", "missing-key: the row does not say `who`"],
    ["2024-03-02,wing,,ada,1:15,,", "missing-key: the row does not say `kind`"],
    ["2024-03-02,,,ada,1:15,shop,", "missing-key: the row does not say `assembly`"],
    [",wing,,ada,1:15,shop,", "missing-key: the row does not say `date`"],
  ])("%s", (row, wanted) => {
    const { found, days } = read(`2024-03-01,wing,,ada,1:15,shop,\n${row}\n`);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain("hours.csv:3:");
    expect(found[0]).toContain(wanted);
    expect(days.map(({ date }) => date)).toEqual(["2024-03-01"]);
  });

  test.each([
    ["LF", "\n"],
    ["CRLF", "\r\n"],
  ])("far down in a file with %s, past blank lines and cells of several lines", (_, end) => {
    const good = (day: number) =>
      `2024-03-${String(day).padStart(2, "0")},wing,,ada,1:15,shop,"two${end}lines"`;
    const rows = Array.from({ length: 20 }, (_each, index) => good(index + 1));
    const bad = ["2024-03-21,wnig,,ada,1:15,shop,", "2024-03-22,wing,,ada,1.33,shop,"];
    const head = `Date,Part,Task,Who,Time,Type,Remarks${end}`;
    const table = [...rows, "", "", bad[0], "", bad[1], ""].join(end);
    const { found, days } = read(table, usual, head);
    // A line for the head, two for each good row, and the blank ones.
    expect(found.map((each) => each.split(": ").slice(0, 2).join(": "))).toEqual([
      "hours.csv:44:wnig: unknown-name",
      "hours.csv:46:1.33: not-a-duration",
    ]);
    expect(days.map(({ rows: from }) => from.map(({ line }) => line))).toEqual(
      rows.map((_each, index) => [2 + 2 * index]),
    );
  });

  test("half a pair of clock times", () => {
    const { found } = read(
      "18:40,,wing,study,ada,2024-03-02\n7 o'clock,8:00,wing,study,ada,2024-03-03\n",
      "columns: { date: d, assembly: a, who: w, kind: k, from: f, to: t }\n",
      "f,t,a,k,w,d\n",
    );
    expect(found[0]).toContain("hours.csv:2");
    expect(found[0]).toContain("the row does not say `to`");
    expect(found[1]).toContain("hours.csv:3:7 o'clock: not-a-time");
  });
});

describe("rows that say the same", () => {
  const rows =
    "2024-03-02,wing,,ada,1:15,shop,\n2024-03-02,Wing,,ada,1.25,shop,\n2024-03-02,wing,,ada,1:15,shop,other\n";

  test("are asked about", () => {
    const { found } = read(rows);
    expect(found).toEqual([
      "hours.csv:3:2024-03-02,Wing,,ada,1.25,shop,: duplicate-row: the row says the same as line 2",
    ]);
  });

  test("count once, or each", () => {
    const once = read(rows, `${usual}same-rows: once\n`);
    expect(once.found).toEqual([]);
    expect(once.sessions).toHaveLength(2);
    expect(once.twins.map(({ line }) => line)).toEqual([3]);
    const each = read(rows, `${usual}same-rows: each\n`);
    expect(each.sessions).toHaveLength(3);
    expect(each.twins).toEqual([]);
  });
});

describe("a day that the journal has", () => {
  test("is passed over where it says the same", () => {
    const { days, known, found } = read(
      "2026-03-14,spar,W-1,jon and ada,1:15,fabricate,x\n2024-03-02,wing,,ada,1:15,shop,\n",
    );
    expect(found).toEqual([]);
    expect(days.map(({ date }) => date)).toEqual(["2024-03-02"]);
    expect(known.map(({ date, row }) => [date, row.line])).toEqual([["2026-03-14", 2]]);
  });

  test("takes no session more, and not the same one twice", () => {
    const { found, days } = read(
      "2026-03-14,spar,W-1,ada,1:15,fabricate,\n2026-03-14,spar,W-1,ada + jon,1:15,fabricate,\n2026-03-14,spar,W-1,ada + jon,1:15,fabricate,x\n2026-03-15,wing,,ada,1:15,shop,\n",
    );
    expect(days).toEqual([]);
    expect(found).toEqual([
      "hours.csv:2:2026-03-14: duplicate-day: 2026-03-14 has an entry already, and this session is not in it",
      "hours.csv:4:2026-03-14: duplicate-day: 2026-03-14 has an entry already, and this session is not in it",
      "hours.csv:5:2026-03-15: duplicate-day: 2026-03-15 has an entry already, and this session is not in it",
    ]);
  });

  test("is known by its clock times too", () => {
    const { known } = read(
      "18:40,20:00,wing,assemble,ada,2026-03-14\n",
      "columns: { date: d, assembly: a, who: w, kind: k, from: f, to: t }\n",
      "f,t,a,k,w,d\n",
    );
    expect(known).toHaveLength(1);
  });
});

describe("the mapping", () => {
  test.each([
    [
      "columns: { date: Datum, hours: Time }\n",
      "unknown-name: the table has no column called `Datum`",
    ],
    [
      "columns: { date: Date, hours: Time }\n",
      "missing-key: nothing says which column holds `assembly`",
    ],
    [
      "columns: { date: Date, assembly: Part, who: Who, kind: Type, from: Time }\n",
      "which column holds `hours`",
    ],
    ["columns: { date: Date, ours: Time }\n", "unknown-key: the columns has no `ours`"],
    [`${usual}date: yesterday\n`, "not-a-date: `yesterday` is not a pattern of a date"],
    [`${usual}separator: x\n`, "not-a-choice: `x` does not part cells"],
    [`${usual}values: { assembly: Tail }\n`, "wrong-shape: expected what stands in the cells"],
    [`${usual}same-rows: never\n`, "not-a-choice"],
  ])("%s", (mapping, wanted) => {
    const { found } = read("2024-03-02,wing,,ada,1:15,shop,\n", mapping);
    expect(found[0]).toContain("mapping.yaml:");
    expect(found[0]).toContain(wanted);
  });
});

describe("the table", () => {
  test.each([
    ['2024-03-02,"wing,,ada\n', "a quotation mark is opened and not closed"],
    ['2024-03-02,wi"ng,,ada,1:15,shop,\n', "a quotation mark stands inside a cell"],
    ["2024-03-02,M\ufffdller,,ada,1:15,shop,\n", "the file is not in UTF-8"],
    ["2024-03-02,wing\n", "the row has 2 cells, and the first line names 7 columns"],
  ])("%j", (rows, message) => {
    const { found, days } = read(rows);
    expect(found[0]).toContain(`not-csv: ${message}`);
    expect(found[0]).toContain("hours.csv:2:");
    expect(days).toEqual([]);
  });

  test("that is empty", () => {
    expect(read("", usual, "").found[0]).toContain("not-csv: the file is empty");
  });
});
