// An evening by questions: what is asked, with which answer in place, and what is not asked.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type * as prompts from "@clack/prompts";
import { beforeEach, describe, expect, onTestFinished, test, vi } from "vitest";
import { eveningCommand } from "../../src/cli/evening.ts";
import { Interrupted } from "../../src/cli/interrupted.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { smallRegisters, temporaryJournal } from "../support/temporary-journal.ts";

/** Each question as it was put: its words, and the answer that Enter would give. */
const asked: [string, unknown][] = [];
const shown: string[] = [];
/** What the builder answers, in order; `enter` takes what is in place. */
let answers: unknown[] = [];
const enter = Symbol("enter");
const leave = Symbol("leave");

interface Question {
  readonly message: string;
  readonly initialValue?: unknown;
  readonly initialValues?: unknown;
  readonly options?: readonly { readonly value: unknown }[];
  readonly validate?: (value: string | undefined) => string | Error | undefined;
}

vi.mock("@clack/prompts", async (original) => {
  const put = async (question: Question) => {
    const { message, options, validate } = question;
    const ready = question.initialValue ?? question.initialValues ?? options?.[0]?.value ?? "";
    asked.push([message, ready]);
    for (;;) {
      if (answers.length === 0) throw new Error(`nobody answers \`${message}\``);
      const answer = answers.shift();
      const value = answer === enter ? ready : answer;
      const complaint = typeof value === "string" ? validate?.(value) : undefined;
      if (complaint === undefined) return value;
      shown.push(String(complaint));
    }
  };
  const show = (text: string) => void shown.push(text);
  return {
    ...(await original<typeof prompts>()),
    ...{ text: put, select: put, multiselect: put, confirm: put },
    ...{ intro: show, cancel: show, log: { info: show, step: show } },
    isCancel: (value: unknown) => value === leave,
  };
});

beforeEach(() => {
  asked.length = 0;
  shown.length = 0;
});

const march10 = `---
date: 2026-03-10
sessions:
  - { assembly: spar, step: W-2, who: [ada, jon], hours: "1:15", kind: rework, stage: riveted }
next: [buff the rivets, order No. 30 reamers]
---
Rivets.
`;

const onePerson = "people:\n  - { id: ada, name: Ada Brook, role: builder }\n";

async function evening(
  flags: readonly string[],
  given: readonly unknown[],
  files: Readonly<Record<string, string>> = { "days/2026-03-10.md": march10 },
) {
  const { path, remove } = temporaryJournal({
    "project.yaml": (smallRegisters["project.yaml"] ?? "").replace(/judged-on.*\n/, ""),
    ...files,
  });
  onTestFinished(remove);
  answers = [...given];
  const terminal = recordedTerminal(true);
  const verb = eveningCommand(terminal, () => new Date("2026-03-15T04:00:00Z"));
  const file = join(path, "days/2026/2026-03-14.md");
  const thrown = await runVerb(verb, ["--journal", path, ...flags]).catch((error) => error);
  expect(answers).toEqual([]);
  const written = existsSync(file) ? readFileSync(file, "utf8") : undefined;
  return { thrown, written, said: terminal.said };
}

describe("an ordinary evening", () => {
  test("has last time's answers in place, and takes five of them as they are", async () => {
    const { written, thrown } = await evening(
      [],
      [enter, enter, enter, enter, "640p-905p", enter, "", "Buffed all.", "reamers, row B"],
    );
    expect(thrown).toBeUndefined();
    expect(asked).toEqual([
      ["Which assembly?", "spar"],
      ["Which step?", "W-2"],
      ["Who worked?", ["ada", "jon"]],
      ["Which kind of work?", "rework"],
      ["How long?", ""],
      ["Another session?", false],
      ["Title", ""],
      ["What went on?", ""],
      ["What comes next?", ""],
    ]);
    expect(shown.slice(0, 2)).toEqual([
      "Entry for Saturday 14 March 2026, last entry 4 days ago",
      "Last time you meant to:\nbuff the rivets\norder No. 30 reamers",
    ]);
    expect(shown).toContain("18:40 to 21:05");
    expect(written).toBe(`---
date: 2026-03-14
written: 2026-03-14 22:00
sessions:
  - { assembly: spar, step: W-2, who: [ada, jon], from: "18:40", to: "21:05", kind: rework }
next:
  - reamers
  - row B
---
Buffed all.
`);
  });

  test("asks again when a time cannot be read, and shows what it understood", async () => {
    const { written } = await evening(
      [],
      ["tail", ["ada"], "shop", "a while", "1.25", false, "", "", ""],
    );
    expect(shown).toContain("Write two times with a dash between, or hours and minutes.");
    expect(shown).toContain("1:15 h");
    expect(written).toContain('{ assembly: tail, who: [ada], hours: "1:15", kind: shop }');
  });

  test("may have a second session, of another kind", async () => {
    const session = (kind: string, hours: string) => ["tail", ["ada"], kind, hours];
    const { written } = await evening(
      [],
      [...session("shop", "1"), true, ...session("study", "0:30"), false, "Two things", "", ""],
    );
    expect(written?.match(/ {2}- \{ assembly: tail/g)).toHaveLength(2);
    expect(written).toContain("title: Two things");
  });

  test("may be one of words alone, and then a sentence is needed", async () => {
    const { written } = await evening([], ["", "", "", "Rain.", ""]);
    expect(shown).toContain("Without a session, a sentence is needed.");
    expect(written).toMatch(/^---\ndate: 2026-03-14\nwritten: .*\n---\nRain\.\n$/);
  });

  test("in a new journal offers the builder, and the first assembly", async () => {
    await evening([], [enter, enter, enter, "1:00", false, "", "", ""], {});
    expect(asked.slice(0, 3)).toEqual([
      ["Which assembly?", "wing"],
      ["Who worked?", ["ada"]],
      ["Which kind of work?", "assemble"],
    ]);
  });
});

describe("what was said by flags is not asked", () => {
  test.each([
    [
      ["--again"],
      ["1:00", false, "", "Words.", ""],
      ["How long?", "Another session?", "Title", "What went on?", "What comes next?"],
    ],
    [
      ["--again", "--title", "T", "--text", "Words.", "--next", "n"],
      ["1:00", false],
      ["How long?", "Another session?"],
    ],
    [
      ["--hours", "1", "--kind", "shop", "--text", "Words."],
      ["tail", ["ada"], false, "", ""],
      ["Which assembly?", "Who worked?", "Another session?", "Title", "What comes next?"],
    ],
  ])("%j", async (flags, given, questions) => {
    const { thrown, written } = await evening(flags, given);
    expect(thrown).toBeUndefined();
    expect(asked.map(([question]) => question)).toEqual(questions);
    expect(written).toBeDefined();
  });

  test("when nothing is missing, nothing at all is asked", async () => {
    const { written } = await evening(["--again", "--hours", "1:30", "--text", "Deburred."], []);
    expect(asked).toEqual([]);
    expect(written).toContain('hours: "1:30"');
  });

  test("in a shop of one, who worked is not asked", async () => {
    await evening([], [enter, enter, "1:00", false, "", "", ""], { "people.yaml": onePerson });
    expect(asked.map(([question]) => question)).not.toContain("Who worked?");
  });

  test("a step of the flags brings its assembly", async () => {
    await evening(["--step", "W-1", "--who", "ada"], ["assemble", "1", false, "", "", ""]);
    expect(asked[0]?.[0]).toBe("Which kind of work?");
  });
});

test.each(["--no-input", "--json"])("with %s nothing is asked", async (flag) => {
  const { thrown, written } = await evening(["--again", flag], []);
  expect(thrown).toMatchObject({
    name: "UsageProblem",
    message: "nobody can be asked here, and this is missing: --hours (or --from and --to)",
  });
  expect([asked, written]).toEqual([[], undefined]);
});

test.each([
  [[leave]],
  [[enter, leave]],
  [[enter, enter, enter, enter, "1:00", leave]],
  [[enter, enter, enter, enter, "1:00", false, "", "Words.", leave]],
])("who leaves in the middle has written nothing", async (given) => {
  const { thrown, written } = await evening([], given);
  expect(thrown).toBeInstanceOf(Interrupted);
  expect(shown).toContain("Nothing was written.");
  expect(written).toBeUndefined();
});
