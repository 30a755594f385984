import { describe, expect, onTestFinished, test } from "vitest";
import { explainCommand } from "../../src/cli/explain.ts";
import { UsageProblem } from "../../src/cli/journal.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { temporaryJournal } from "../support/temporary-journal.ts";

const files = {
  "days/2026-01-05.md": `---
date: 2026-01-05
sessions:
  - { assembly: spar, step: W-1, who: [ada, jon], hours: "1:15", kind: fabricate }
  - { assembly: tail, who: [ada], hours: "0:40", kind: study }
---
Holes.
`,
  "days/2026-02-10.md": `---
date: 2026-02-10
sessions:
  - { assembly: wing, who: [ada], from: "23:00", to: "00:05", kind: assemble }
amendments:
  - { day: 2026-01-05, field: "sessions[2].hours", was: "0:40", now: "0:50", why: the tea was short }
---
Late.
`,
};

async function explain(...args: readonly string[]) {
  const { path, remove } = temporaryJournal(files);
  onTestFinished(remove);
  const terminal = recordedTerminal();
  await runVerb(explainCommand(terminal), ["hours", "--journal", path, ...args]);
  const above = terminal.said.out.match(/[^\s"]*(?=journal\/days)/)?.[0] ?? "";
  return { ...terminal.said, out: terminal.said.out.replaceAll(above, "") };
}

test("every line with its place, and the arithmetic last", async () => {
  const { out, status } = await explain();
  expect(out).toBe(`hours of the whole build

journal/days/2026-01-05.md:4  2026-01-05  W-1   ada  builder      fabricate  1:15
journal/days/2026-01-05.md:4  2026-01-05  W-1   jon  unpaid help  fabricate  1:15
journal/days/2026-01-05.md:5  2026-01-05  tail  ada  builder      study      0:50  counted apart  hours was 0:40, now 0:50 (amended 2026-02-10: the tea was short)
journal/days/2026-02-10.md:4  2026-02-10  wing  ada  builder      assemble   1:05

study and shop: 0:50 = 0:50
building: 2:30 (2026-01) + 1:05 (2026-02) = 3:35
`);
  expect(status).toBe(0);
});

test("within one month the last line has every term", async () => {
  const { out } = await explain("--assembly", "wing", "--month", "2026-01");
  expect(out).toContain("hours on `wing` and everything below it, in 2026-01\n");
  expect(out.trimEnd().split("\n").at(-1)).toBe("building: 1:15 + 1:15 = 2:30");
});

test.each([
  [["--person", "jon"], "building: 1:15 = 1:15"],
  [["--role", "unpaid help"], "building: 1:15 = 1:15"],
  [["--kind", "study"], "study and shop: 0:50 = 0:50"],
  [["--step", "W-2"], "building: 0:00"],
])("%j", async (args, last) => {
  const { out } = await explain(...args);
  expect(out.trimEnd().split("\n").at(-1)).toBe(last);
});

test("--json has minutes, and what was amended", async () => {
  const { out } = await explain("--kind", "study", "--json");
  expect(JSON.parse(out)).toEqual({
    selection: { kind: "study" },
    lines: [
      {
        file: "journal/days/2026-01-05.md",
        line: 5,
        date: "2026-01-05",
        assembly: "tail",
        person: "ada",
        role: "builder",
        kind: "study",
        minutes: 50,
        counted: "apart",
        amended: [
          {
            on: "2026-02-10",
            field: "sessions[2].hours",
            was: "0:40",
            now: "0:50",
            why: "the tea was short",
          },
        ],
      },
    ],
    minutes: 0,
    minutesApart: 50,
  });
});

describe("refused", () => {
  test.each([
    [["--assembly", "wong"], "no assembly is called `wong`"],
    [["--step", "W-9"], "no step is called `W-9`"],
    [["--person", "bob"], "no person is called `bob`"],
  ])("%j", async (args, message) => {
    await expect(explain(...args)).rejects.toThrow(message);
    await expect(explain(...args)).rejects.toThrow(UsageProblem);
  });

  test("an option of `hours` with a check", async () => {
    const run = runVerb(explainCommand(recordedTerminal()), ["expired-lot", "--kind", "shop"]);
    await expect(run).rejects.toThrow("`--kind` goes with `witness explain hours` alone");
  });
});
