import { describe, expect, test } from "vitest";
import { listHead, portioned, splitsOf, taskList } from "../support/portioned.ts";
import { entry, marchFile, pointed, readSmall } from "../support/temporary-journal.ts";

const faults = (tasks: string, sheet = "", files = {}) =>
  pointed(
    readSmall({ ...files, "tasks.csv": tasks, "portion.yaml": `${listHead}${sheet}` }).diagnostics,
  );

describe("the list of tasks", () => {
  test("keeps quoted commas, the kit's own tenths and the order of the rows, in any order of columns", () => {
    const { register } = portioned(
      "",
      'task,mfr_tenths,section,task_number\r\n"Cores or shells, skins",9,Fuselage,F2\r\nLong members,,Fuselage,F1\r\n',
    );
    expect(
      [...register.tasks.values()].map(({ id, title, listed }) => [id, title, listed]),
    ).toEqual([
      ["F2", "Cores or shells, skins", 9],
      ["F1", "Long members", undefined],
    ]);
  });

  test("names what is wrong by line and what it points at", () => {
    expect(faults("section,task_number,task,who\nFuselage,F1,Do it,me\n")).toEqual([
      "tasks.csv:1 not-csv who",
    ]);
    expect(faults("section,task,task\nFuselage,F1,Do it\n")).toEqual(["tasks.csv:1 not-csv task"]);
    expect(faults("section,task\nFuselage,Do it\n")).toEqual(["tasks.csv:1 not-csv section"]);
    expect(
      faults(
        "section,task_number,task,mfr_tenths\nFuselage,F1,Do it,11\nFuselage,F 2,Do it,\nFuselage,F1,Again,\nFuselage,,None,\nWings,W1\n",
      ),
    ).toEqual([
      "tasks.csv:2 not-a-share 11",
      "tasks.csv:3 not-an-id F 2",
      "tasks.csv:4 duplicate-id F1",
      "tasks.csv:5 not-csv ,",
      "tasks.csv:6 not-csv Wings,W1",
    ]);
  });

  test.each([
    ["with a byte order mark", "\ufeffsection,task_number,task\nFuselage,F1,Do it\n"],
    ["with semicolons", "section;task_number;task\r\nFuselage;F1;Do it\r\n"],
    ["with tabs", "section\ttask_number\ttask\nFuselage\tF1\tDo it\n"],
    ["quoted throughout", '"section","task_number","task"\r\n"Fuselage","F1","Do it"\r\n'],
    ["with blanks and blank rows", " section , task_number ,task\n,,\n\n Fuselage , F1 , Do it \n"],
    ["with a cell over two lines", 'section,task_number,task\r\nFuselage,F1,"Do\r\n  it"\r\n'],
  ])("may come %s", (_, text) => {
    const { register } = portioned("", text);
    expect(
      [...register.tasks.values()].map(({ section, id, title }) => [section, id, title]),
    ).toEqual([["Fuselage", "F1", "Do it"]]);
  });

  test.each([
    ["two rows of one number", "Fuselage,F1,Do,\nWings,F1,Do,\n", "3 duplicate-id F1"],
    ["a number that is a formula", "Fuselage,=F1,Do,\n", "2 not-an-id =F1"],
    ["a number that is a key of JavaScript", "Fuselage,__proto__,Do,\n", "2 not-an-id __proto__"],
    ["fewer than no tenths", "Fuselage,F1,Do,-1\n", "2 not-a-share -1"],
    ["tenths with an exponent", "Fuselage,F1,Do,1e1\n", "2 not-a-share 1e1"],
    ["tenths in other digits", "Fuselage,F1,Do,٣\n", "2 not-a-share ٣"],
    ["text that turns round", "Fuselage,F1,a\u202eb,\n", "2 not-csv a\u202eb"],
    ["a control character", "Fuselage,F1,a\u0000b,\n", "2 not-csv a\u0000b"],
    ["a quotation mark inside", 'Fuselage,F1,3/32" drill,\n', "2 not-csv F"],
  ])("refuses %s", (_, rows, fault) => {
    expect(faults(`section,task_number,task,mfr_tenths\n${rows}`)).toEqual([`tasks.csv:${fault}`]);
  });

  test("refuses what is not UTF-8, and an empty file", () => {
    const found = (tasks: string | Uint8Array) =>
      readSmall({ "tasks.csv": tasks, "portion.yaml": listHead }).diagnostics.map(
        ({ message }) => message,
      );
    expect(found(Uint8Array.of(0xff, 0xfe, 0x73, 0, 0x65, 0))).toEqual([
      "the file is not in UTF-8",
    ]);
    expect(found("")).toEqual(["the file is empty"]);
  });

  test("of 50,000 tasks is read at once, whatever their names", () => {
    const rows = Array.from({ length: 50_000 }, (_, index) => `S${index % 7},T${index},Do\n`);
    const text = `section,task_number,task\nA,constructor,toString\n${rows.join("")}`;
    const { register, undecided } = portioned("", text);
    expect([register.tasks.size, undecided]).toEqual([50_001, 50_001]);
  });

  test("belongs to a sheet, and the sheet to it", () => {
    const missing = (files: Record<string, string>) => pointed(readSmall(files).diagnostics);
    expect(missing({ "tasks.csv": taskList("F1") })).toEqual(["portion.yaml:1 missing-file"]);
    expect(missing({ "portion.yaml": `${listHead}${splitsOf("F1 kit 1.0")}` })).toEqual([
      "tasks.csv:1 missing-file",
    ]);
  });
});

describe("the sheet", () => {
  test("keeps every division with its reason; the newest counts", () => {
    const { tasks, sum } = portioned(
      `splits:
  - { task: F1, on: 2026-02-01, kit: 0.4, paid: 0.2, fabrication: 0.4, why: sent out for welding }
  - { task: F1, on: 2026-01-03, kit: 0.4, fabrication: 0.6 }
`,
      taskList("F1"),
    );
    expect(tasks.get("F1")?.history.map(({ date, why }) => [date, why])).toEqual([
      ["2026-01-03", undefined],
      ["2026-02-01", "sent out for welding"],
    ]);
    expect(sum.builder).toBe(4);
  });

  test("wants a reason for a change and for a task put aside", () => {
    expect(
      faults(
        taskList("F1", "F2"),
        `splits:
  - { task: F1, on: 2026-01-03, kit: 1 }
  - { task: F1, on: 2026-01-04, fabrication: 1 }
  - { task: F2, on: 2026-01-04, not-applicable: true }
`,
      ),
    ).toEqual(["portion.yaml:8 missing-key F1", "portion.yaml:9 missing-key F2"]);
  });

  test("refuses two divisions of one day, tasks that are not there, and a number given twice", () => {
    expect(
      faults(
        taskList("F1"),
        `added: [{ task: F1, section: Fuselage, title: Again, on: 2026-01-03, why: none }]
splits:
  - { task: F1, on: 2026-01-03, kit: 1 }
  - { task: F1, on: 2026-01-03, fabrication: 1, why: mistyped }
  - { task: G1, on: 2026-01-03, kit: 1 }
claims: [{ task: F3, steps: [W-1] }]
`,
      ),
    ).toEqual([
      "portion.yaml:6 duplicate-id F1",
      "portion.yaml:9 duplicate-id F1",
      "portion.yaml:10 unknown-name G1",
      "portion.yaml:11 unknown-name F3",
    ]);
  });

  test("sessions claim tasks by name, and only those there are", () => {
    const session = (task: string) => ({
      [marchFile]: entry(
        `sessions: [{ assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: fabricate, tasks: [${task}] }]`,
      ),
    });
    const { tasks } = portioned(splitsOf("F1 fabrication 1"), taskList("F1"), session("F1"));
    expect(tasks.get("F1")?.claims.map(({ date }) => date)).toEqual(["2026-03-14"]);
    expect(faults(taskList("F1"), "", session("F9"))).toEqual([`${marchFile}:3 unknown-name F9`]);
  });
});
