// A builder asks what a word in brackets means.

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
