// An evening in the shop, from the command line to the site; what the flags may say is tried in
// tests/cli/evening.test.ts.

import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { smallRegisters } from "../support/temporary-journal.ts";
import { shop, witness } from "../support/witness.ts";

const project = (smallRegisters["project.yaml"] ?? "").replace(/judged-on.*\n/, "");

test("an entry by flags is written, read back, refused a second time, and done again", async () => {
  const { cwd, file } = shop({ "project.yaml": project });
  const entry = file("content/days/2026/2026-03-14.md");
  const first = await witness(
    [
      ...["evening", "--date", "2026-03-14", "--step", "W-1", "--from", "640p", "--to", "9.05p"],
      ...["--kind", "fabricate", "--stage", "drilled", "--title", "Spar: drilled"],
      ...["--text", "Two rows of holes, all clean.", "--next", "deburr the spar"],
    ],
    { cwd },
  );
  expect(first).toEqual({
    status: 0,
    stderr: "",
    stdout: `wrote content/days/2026/2026-03-14.md
2:25 h on 14 March 2026, 2:25 h in March 2026, 2:25 h in all
next: deburr the spar
see it: npm run witness -- preview
`,
  });
  expect(readFileSync(entry, "utf8").replace(/written: .*/, "written: …")).toBe(`---
date: 2026-03-14
written: …
title: "Spar: drilled"
sessions:
  - { assembly: spar, step: W-1, who: [ada], from: "18:40", to: "21:05", kind: fabricate, stage: drilled }
next:
  - deburr the spar
---
Two rows of holes, all clean.
`);

  const [again, taken] = await Promise.all([
    witness(["evening", "--date", "2026-03-15", "--again", "--hours", "45min", "--json"], { cwd }),
    witness(["evening", "--date", "2026-03-14", "--text", "More."], { cwd }),
  ]);
  expect(again.status).toBe(0);
  expect(JSON.parse(again.stdout)).toMatchObject({
    file: "content/days/2026/2026-03-15.md",
    written: true,
    text: readFileSync(file("content/days/2026/2026-03-15.md"), "utf8"),
    errors: [],
  });
  expect(taken).toMatchObject({
    status: 2,
    stdout: "",
    stderr: expect.stringContaining(
      "witness: there is an entry for 2026-03-14 already: content/days/2026/2026-03-14.md\n",
    ),
  });

  const check = await witness(["check", "--json"], { cwd });
  expect(JSON.parse(check.stdout)).toMatchObject({
    errors: [],
    findings: [],
    totals: { minutes: 145 + 45, days: 2, sessions: 2 },
  });
});

test("where nobody can be asked, what is missing is named; wrong names write nothing", async () => {
  const { cwd, file } = shop({ "project.yaml": project });
  const [nothing, wrong] = await Promise.all([
    witness(["evening", "--date", "2026-03-14"], { cwd }),
    witness(
      ["evening", "--date", "2026-03-14", "--assembly", "tial", "--kind", "shop", "--hours", "1"],
      { cwd },
    ),
  ]);
  expect([nothing.status, nothing.stdout]).toEqual([2, ""]);
  expect(nothing.stderr).toMatch(
    /^witness: nobody can be asked here, and this is missing: --assembly, --kind, --hours/,
  );
  expect([wrong.status, wrong.stdout]).toEqual([1, ""]);
  expect(wrong.stderr).toContain("content/days/2026/2026-03-14.md:5:17: error[unknown-name]");
  expect(wrong.stderr).toContain("did you mean `tail`?");
  expect(existsSync(file("content/days/2026"))).toBe(false);
});
