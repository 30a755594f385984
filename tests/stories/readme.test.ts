// Every command that the README gives is run as it stands there, in a folder like a fresh
// checkout; the commands of DEVELOPERS.md are there to be run.

import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoRun } from "../support/build-demo.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { projectFolder, quietNpm, ran, type Witnessed } from "../support/witness.ts";

const readme = textOf("README.md");
const developers = textOf("DEVELOPERS.md");
const { scripts } = JSON.parse(textOf("package.json")) as {
  readonly scripts: Readonly<Record<string, string>>;
};

function textOf(name: string): string {
  return readFileSync(join(projectFolder, name), "utf8");
}

/** The lines of all blocks of shell commands. */
function commandsOf(markdown: string): string[] {
  return [...markdown.matchAll(/^```sh\n([\s\S]*?)^```$/gm)].flatMap(([, block = ""]) =>
    block.split("\n").filter((line) => line !== ""),
  );
}

let checkout: string;
beforeAll(() => {
  checkout = mkdtempSync(join(tmpdir(), "witness-checkout-"));
  for (const name of ["node_modules", "src", "layouts", "package.json", "tsconfig.json"]) {
    symlinkSync(join(projectFolder, name), join(checkout, name));
  }
  symlinkSync(join(projectFolder, "site-demo"), join(checkout, "site-demo"));
  cpSync(join(projectFolder, "content"), join(checkout, "content"), { recursive: true });
});
afterAll(() => rmSync(checkout, { recursive: true, force: true }));

function run(command: string): Promise<Witnessed> {
  return ran("sh", ["-c", command], { cwd: checkout, env: quietNpm });
}

const witness = "npm run witness --";
const silent = "npm run -s witness --";
const clean = (said: Witnessed) => expect([said.status, said.stderr]).toEqual([0, ""]);

/** What each command has to come to; those of one list are run one after the other. */
const expectations: Readonly<Record<string, (said: Witnessed) => void>> = {
  [`${witness} check`]: (said) => {
    clean(said);
    expect(said.stdout).toContain("\n0 errors, 0 findings\n");
  },
  [`${silent} check --journal site-demo --json`]: (said) => {
    clean(said);
    expect(JSON.parse(said.stdout)).toMatchObject({ errors: [], totals: { days: 125 } });
  },
  [`${witness} explain expired-lot`]: (said) => {
    clean(said);
    expect(said.stdout).toContain("How to mend it");
  },
  [`${witness} explain hours --assembly rudder --month 2026-01`]: (said) => {
    clean(said);
    expect(said.stdout).toMatch(/\nbuilding: (?:\d+:\d\d \+ )+\d+:\d\d = 16:35\n/);
  },
  [`${witness} portion --journal site-demo`]: (said) => {
    clean(said);
    expect(said.stdout).toContain("They are never computed from hours");
  },
  [`${silent} portion --journal site-demo --what-if "B4=paid 0.5, assembly 0.5" --json`]: (
    said,
  ) => {
    clean(said);
    expect(JSON.parse(said.stdout)).toMatchObject({ portion: { sections: expect.any(Array) } });
  },
  [`${witness} seal 2026-01 --dry-run`]: (said) => {
    clean(said);
    expect(said.stdout).toMatch(/^[0-9a-f]{64} {2}days\/2026\/2026-01-10\.md$/m);
    expect(existsSync(join(checkout, "content/seals"))).toBe(false);
  },
  [`${witness} inbox content/inbox/hours.csv --map content/inbox/mapping.yaml`]: (said) => {
    expect(said.status).toBe(0);
    expect(said.stdout).toContain(`note: 'Bench built, 30" high'`);
    expect(said.stdout).toContain("3 days, 3 sessions to be written");
    expect(said.stderr).toContain("nothing was written");
    expect(existsSync(join(checkout, "content/days/2025"))).toBe(false);
  },
  // Nobody can be asked in a test; what the questions are is tried in tests/cli.
  [`${witness} evening`]: ({ status, stderr }) => {
    expect(status).toBe(2);
    expect(stderr).toContain("nobody can be asked here, and this is missing: --assembly");
  },
  [`${witness} evening --date 2026-02-14 --again --hours 1:30 --text "Deburred the other side." --dry-run`]:
    (said) => {
      clean(said);
      expect(said.stdout).toMatch(
        /date: 2026-02-14\n[\s\S]*hours: "1:30"[\s\S]*\n---\nDeburred the other side\.\n/,
      );
      expect(filesIn(join(checkout, "content"))).toEqual(filesIn(join(projectFolder, "content")));
    },
  [`${witness} build`]: (said) => {
    clean(said);
    expect(filesIn(join(checkout, "out/content/site"))).toContain("index.html");
  },
  [`${witness} export`]: (said) => {
    clean(said);
    expect(filesIn(join(checkout, "out/content/exports"))).toContain("hours-logbook.pdf");
  },
  [`${witness} export --take-away`]: (said) => {
    clean(said);
    expect(filesIn(join(checkout, "out/content/public-take-away"))).toEqual(
      expect.arrayContaining(["READ-FIRST.txt", "record/book.pdf", "site/index.html"]),
    );
  },
  // The starter journal is of an aircraft that is built: there the answer is why not.
  [`${witness} export --packet --edition private`]: ({ status, stderr }) => {
    expect(status).toBe(2);
    expect(stderr).toContain("project.yaml says `basis: amateur-built`");
  },
  [`${witness} reckon rivet-row length="6 in" diameter="1/8 in" edge=2D pitch-min=3D`]: (said) => {
    clean(said);
    // 6 in less twice 1/4 in of edge are 5 1/2 in; at no less than 3/8 in that is 14 gaps.
    expect(said.stdout).toMatch(/\b15 rivets?\b/);
  },
  [`${silent} reckon torque thread=1/4-28 nut=tension drag="12 lbf·in" --json`]: (said) => {
    clean(said);
    // AC 43.13-1B table 7-1: 50 to 70 lbf·in; par. 7-40d adds the drag.
    expect(JSON.parse(said.stdout)).toMatchObject({ low: 62, high: 82, unit: "lbf·in" });
  },
  [`${witness} reckon drill size="0.098 in"`]: (said) => {
    clean(said);
    // ASME B94.11M: No. 40 is 0.0980 in.
    expect(said.stdout).toContain("No. 40");
  },
  [`${witness} reckon flat-pattern legs="1, 2, 1.5 in" radius="0.16, 0.06 in" thickness="0.040 in" angle="90, 45 deg"`]:
    (said) => {
      clean(said);
      // By hand: flats 0.8 + 1.7586 + 1.4586 in; arcs at half the thickness pi/2 x 0.18 in and
      // pi/4 x 0.08 in.
      expect(said.stdout).toContain("4.3627 in");
    },
  [`${witness} reckon convert value="50 lbf·in" to="N·m"`]: (said) => {
    clean(said);
    // NIST SP 811: 1 lbf·in is 1.129 848 E-01 N·m.
    expect(said.stdout).toContain("5.649");
  },
};

/** What is looked at in other ways below. */
const others = ["npm ci && npm run demo", "npm test", `${witness} preview`];

test("every command of the README is looked at here, and no other", () => {
  expect(commandsOf(readme).toSorted()).toEqual(
    [...Object.keys(expectations), ...others].toSorted(),
  );
});

describe("the README's", () => {
  test.each(Object.entries(expectations))("%s", async (command, expectation) => {
    expectation(await run(command));
  });

  test("npm run witness -- preview", async () => {
    let page: Promise<string> | undefined;
    // A free port in place of the usual one, which a builder may have in use right now.
    const { stdout, stderr } = await ran(
      "npm",
      ["run", "witness", "--", "preview", "--port", "0"],
      {
        cwd: checkout,
        env: quietNpm,
        group: true,
        running: (child) => {
          let said = "";
          child.stdout?.on("data", (text: string) => {
            said += text;
            const address = /^preview: (http:\S+)$/m.exec(said)?.[1];
            if (page || !address || !/^site: .*\n/m.test(said)) return;
            page = fetch(address).then((response) => response.text());
            const end = () => process.kill(-(child.pid ?? 0), "SIGINT");
            page.then(end, end);
          });
        },
      },
    );
    expect(await page).toContain("<title>");
    expect(stderr).not.toContain("fault of the program");
    const address = /^preview: (http:\S+)$/m.exec(stdout)?.[1] ?? "";
    await expect(fetch(address)).rejects.toThrow();
  });

  test("npm ci && npm run demo", async () => {
    const { status, stderr } = await demoRun();
    expect([status, stderr]).toEqual([0, ""]);
    expect(textOf(".ci/run")).toContain("\nnpm ci\n");
    // On a fresh machine every picture is encoded.
  }, 600_000);

  test("npm test, which is what CI runs", () => {
    expect(textOf(".ci/run")).toMatch(/\nnpm ci\nnpm test\n$/);
    for (const part of ["types", "lint", "vitest"]) {
      expect(scripts.test).toContain(`npm run -s ${part}`);
      expect(scripts[part]).toBeDefined();
    }
  });
});

test("every script that README.md and DEVELOPERS.md name is there", () => {
  const named = [
    ...`${readme}\n${developers}`.matchAll(/\bnpm (?:run (?:-s )?([a-z]+)|(test))\b/g),
  ].map(([, name, test]) => name ?? test ?? "");
  expect(named.length).toBeGreaterThan(10);
  expect([...new Set(named)].filter((name) => scripts[name] === undefined)).toEqual([]);
});

test("every file and folder that README.md and DEVELOPERS.md name is there", () => {
  const named = [
    ...`${readme}\n${developers}`.matchAll(
      /`((?:src|tests|layouts|site-demo|content)\/[\w./-]*)`/g,
    ),
  ].map(([, path = ""]) => path);
  const paths = named.filter((path) => !/NAME/.test(path));
  expect(paths.length).toBeGreaterThan(5);
  expect(paths.filter((path) => !existsSync(join(projectFolder, path)))).toEqual([]);
});
