import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { UsageProblem } from "../../src/cli/journal.ts";
import { portionCommand } from "../../src/cli/portion.ts";
import { listHead, splitsOf, taskList } from "../support/portioned.ts";
import { recordedTerminal, runVerb } from "../support/recorded-terminal.ts";
import { smallRegisters, temporaryJournal } from "../support/temporary-journal.ts";

const kept = {
  "tasks.csv": taskList("F1", "F2"),
  "portion.yaml": `${listHead}${splitsOf("F1 kit 0.4, assembly 0.6", "F2 fabrication 1")}`,
};

async function portion(files: Readonly<Record<string, string>>, ...args: readonly string[]) {
  const { path, remove } = temporaryJournal(files);
  onTestFinished(remove);
  const terminal = recordedTerminal();
  const before = contents(path);
  await runVerb(portionCommand(terminal), ["--journal", path, ...args]);
  expect(contents(path)).toEqual(before);
  return terminal.said;
}

const contents = (path: string) =>
  readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map(({ parentPath, name }) => [name, readFileSync(join(parentPath, name), "utf8")]);

test("adds up the sheet, section by section", async () => {
  const { out, status } = await portion(kept);
  expect(status).toBe(0);
  expect(out).toBe(`A list made up for the tests

          kit  paid  assembly  fabrication  builder   of
Fuselage  0.4   0.0       0.6          1.0      1.6  2.0  80.0 %
all       0.4   0.0       0.6          1.0      1.6  2.0  80.0 %

Of 2.0 points on the sheet the builder claims 1.6, which is 80.0 %.
More than half of the points: reached (0.5 of a point may still pass from the builder to paid help)
51 % or more: reached (0.5 of a point may still pass from the builder to paid help)

The shares are the builder's own account, task by task. They are never computed from hours: the sheet counts tasks, not time.
`);
});

test("tries out divisions and writes nothing", async () => {
  const { out } = await portion(kept, "--what-if", "F2=paid 1", "--what-if", "F1=not applicable");
  expect(out).toContain(`what if (nothing is written):
  F2  fabrication 1.0  becomes  paid 1.0
  F1  kit 0.4, assembly 0.6  becomes  not applicable
`);
  expect(out).toContain("Of 1.0 points on the sheet the builder claims 0.0, which is 0.0 %");
});

test("says the same as one object", async () => {
  const { out } = await portion(kept, "--what-if", "F2=paid 0.7, fabrication 0.3", "--json");
  const { portion: now, whatIf } = JSON.parse(out);
  expect([now.sum.builder, whatIf.portion.sum.builder, whatIf.tasks]).toEqual([16, 9, ["F2"]]);
  expect(whatIf.portion.verdict).toMatchObject({ moreThanHalf: false, exactlyHalf: false });
});

test.each([
  ["F2", "does not say which task"],
  ["F2=paid 0.7", "come to 0.7"],
  ["F2=paid 0.75, kit 0.25", "not a share"],
  ["F2=paid 0.5, paid 0.5", "stands twice"],
  ["F9=paid 1", "no task is called `F9`"],
])("refuses `%s`", async (typed, why) => {
  const refused = portion(kept, "--what-if", typed);
  await expect(refused).rejects.toThrow(UsageProblem);
  await expect(refused).rejects.toThrow(why);
});

test("refuses a task that is tried out twice", async () => {
  await expect(portion(kept, "--what-if", "F2=paid 1", "--what-if", "F2=kit 1")).rejects.toThrow(
    "tried out twice",
  );
});

test("says so when there is no sheet, and why an alteration has none", async () => {
  await expect(portion({})).rejects.toThrow("keeps no major-portion sheet");
  const project = (smallRegisters["project.yaml"] ?? "").replace("amateur-built", "alteration");
  await expect(portion({ "project.yaml": project })).rejects.toMatchObject({
    help: [expect.stringContaining("an alteration has none")],
  });
});

test("adds nothing up when the journal has errors", async () => {
  const { out, err, status } = await portion({
    ...kept,
    "portion.yaml": `${listHead}${splitsOf("F1 kit 0.4")}`,
  });
  expect(out).toContain("error[not-a-split]");
  expect(err).toContain("1 error: nothing was added up");
  expect(status).toBe(1);
});
