// A builder asks what a word in brackets means.

import { writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { shop, witness } from "../support/witness.ts";

test("a check by its name, a name mistyped, and the list of all", async () => {
  const { cwd } = shop();
  const [one, json, mistyped, list] = await Promise.all([
    // As it is copied from a message.
    witness(["explain", "finding[expired-lot]:"], { cwd }),
    witness(["explain", "expired-lot", "--json"], { cwd }),
    witness(["explain", "expird-lot"], { cwd }),
    witness(["explain", "--json"], { cwd }),
  ]);
  expect([one.status, json.status, mistyped.status, list.status]).toEqual([0, 0, 2, 0]);

  expect(one.stdout).toMatch(/^finding\[expired-lot\]: /);
  expect(one.stdout).toContain("\nWhy it matters\n");
  expect(one.stdout).toContain("\nHow to mend it\n");
  const widest = Math.max(
    ...(one.stdout
      .split("\nThis works")[0]
      ?.split("\n")
      .map((l) => l.length) ?? [0]),
  );
  expect(widest).toBeLessThanOrEqual(80);

  const explanation = JSON.parse(json.stdout);
  expect(explanation).toMatchObject({ code: "expired-lot", severity: "finding" });
  expect(one.stdout).toContain(explanation.title);

  expect(mistyped).toEqual({
    status: 2,
    stdout: "",
    stderr:
      "witness: no check is called `expird-lot`\n" +
      "  = help: did you mean `witness explain expired-lot`?\n",
  });

  const all = JSON.parse(list.stdout) as { code: string; title: string }[];
  expect(all.map(({ code }) => code)).toContain("expired-lot");
  expect(new Set(all.map(({ code }) => code)).size).toBe(all.length);
});

test("the rule sets, and one of them with a rule that can be copied", async () => {
  const { cwd, file } = shop();
  const [list, one, json] = await Promise.all([
    witness(["explain", "rule-sets"], { cwd }),
    witness(["explain", "edge-distance-2d"], { cwd }),
    witness(["explain", "rule-sets", "--json"], { cwd }),
  ]);
  expect([list.status, one.status, json.status]).toEqual([0, 0, 0]);
  expect(list.stdout).toContain("ac43-13-1b-table-7-1 ");
  expect(JSON.parse(json.stdout)).toHaveLength(list.stdout.trim().split("\n").length);
  expect(one.stdout).toContain("Army TM 10-5410-229-13&P");

  const rule = /^ {2}- \{.*\}$/m.exec(one.stdout)?.[0] ?? "";
  writeFileSync(file("content/rules.yaml"), `rules:\n${rule}\n`);
  const check = await witness(["check"], { cwd });
  expect(check.stdout).toContain("0 errors");
});
