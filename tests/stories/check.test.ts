// A builder asks what is wrong with the journal.

import { describe, expect, test } from "vitest";
import { shop, witness } from "../support/witness.ts";

const july2 = `---
date: 2026-07-02
sessions:
  - { assembly: spar, step: W-2, who: [ada], hours: "1:15", kind: assemble, lots: [sealant-1] }
---
Sealed.
`;
const july3 = `---
date: 2026-07-03
sessions:
  - { assembly: tial, who: [ada], hours: "0:45", kind: assemble }
---
Trimmed.
`;
const attention = { "days/2026/2026-07-02.md": july2 };
const wrong = { ...attention, "days/2026/2026-07-03.md": july3 };

const expiredLot = {
  code: "expired-lot",
  severity: "finding",
  file: "content/days/2026/2026-07-02.md",
  line: 4,
  column: 84,
};
const unknownName = {
  code: "unknown-name",
  severity: "error",
  file: "content/days/2026/2026-07-03.md",
  line: 4,
  column: 17,
  message: "no assembly is called `tial`",
  notes: [],
  help: ["write `tail`", "if it is a new assembly, declare it in assemblies.yaml"],
};

describe("a journal with an error and a finding", () => {
  test("has both said at once, in order of place, with the line and what to do", async () => {
    const { cwd } = shop(wrong);
    const { status, stdout, stderr } = await witness(["check"], {
      cwd,
      // Colours are for terminals; somebody who forces them elsewhere gets none either.
      env: { FORCE_COLOR: "1", TERM: "xterm-256color" },
    });
    expect(
      stdout,
    ).toBe(`content/days/2026/2026-07-02.md:4:84: finding[expired-lot]: lot \`sealant-1\` was used on 2026-07-02, after its last day, 2026-06-30
  |
4 |   - { assembly: spar, step: W-2, who: [ada], hours: "1:15", kind: assemble, lots: [sealant-1] }
  |                                                                                    ^^^^^^^^^ had expired
  = note: Sealant: content/lots.yaml:2
  = help: if another lot was used, name that one
  = help: if the maker allows a longer life, add it to the lot's \`extensions\` with the day on which it was given
  = help: otherwise record what becomes of the joint as a deviation or a squawk

content/days/2026/2026-07-03.md:4:17: error[unknown-name]: no assembly is called \`tial\`
  |
4 |   - { assembly: tial, who: [ada], hours: "0:45", kind: assemble }
  |                 ^^^^ did you mean \`tail\`?
  = help: write \`tail\`
  = help: if it is a new assembly, declare it in assemblies.yaml

2 days, 1 session, 0 readings, 1:15 h of building, 0:00 h of study and shop
1 error, 1 finding; \`witness explain NAME\` says more about each
`);
    expect(stderr).toBe("");
    expect(status).toBe(1);
  });

  test("`--json` is one object with stable keys, and nothing else", async () => {
    const { cwd } = shop(wrong);
    const { status, stdout, stderr } = await witness(["check", "--json"], { cwd });
    expect(JSON.parse(stdout)).toEqual({
      errors: [unknownName],
      findings: [
        {
          ...expiredLot,
          message: expect.stringContaining("2026-06-30"),
          notes: expect.any(Array),
          help: expect.any(Array),
        },
      ],
      totals: { minutes: 75, minutesApart: 0, days: 2, sessions: 1, readings: 0 },
    });
    expect([status, stderr]).toEqual([1, ""]);
  });

  test("`--annotate` is one line for each, as hosted builds read it", async () => {
    const { cwd } = shop(wrong);
    const { status, stdout } = await witness(["check", "--annotate"], { cwd });
    const lines = stdout.trimEnd().split("\n");
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(
      /^::error file=content\/days\/2026\/2026-07-03\.md,line=4,col=17,endColumn=21,title=error\[unknown-name\]::no assembly/,
    );
    expect(lines[1]).toMatch(/^::warning file=content\/days\/2026\/2026-07-02\.md,line=4,col=84,/);
    expect(status).toBe(1);
  });
});

describe("a journal that only wants attention", () => {
  test("passes; `--strict` does not let it pass", async () => {
    const { cwd } = shop(attention);
    const [plain, strict] = await Promise.all([
      witness(["check"], { cwd }),
      witness(["check", "--strict"], { cwd }),
    ]);
    expect(plain.stdout).toContain("finding[expired-lot]");
    expect([plain.status, strict.status]).toEqual([0, 1]);
    expect(strict.stdout).toBe(plain.stdout);
  });

  test("judged on an earlier day, the entry has not come yet", async () => {
    const { cwd } = shop(attention);
    const { status, stdout } = await witness(["check", "--as-of", "2026-07-01"], { cwd });
    expect(stdout).toContain("content/days/2026/2026-07-02.md:2:7: error[future-date]");
    expect(status).toBe(1);
  });
});

test("a clean journal elsewhere, seen from another folder", async () => {
  const { cwd } = shop();
  const { status, stdout } = await witness(["check", "--journal", "../content/"], {
    cwd: `${cwd}/content/days/..`,
  });
  expect(stdout).toBe(`0 days, 0 sessions, 0 readings, 0:00 h of building, 0:00 h of study and shop
0 errors, 0 findings
`);
  expect(status).toBe(0);
});
