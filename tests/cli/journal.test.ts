// Finding the journal that was meant, judging it on a day, and naming its files from where the
// builder stands.

import { basename } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { asSeenFrom, openJournal, UsageProblem } from "../../src/cli/journal.ts";
import { scratchFolder } from "../support/scratch-folder.ts";
import {
  entry,
  marchFile,
  smallRegisters,
  temporaryJournal,
} from "../support/temporary-journal.ts";

function standIn(folder: string): void {
  const before = process.cwd();
  process.chdir(folder);
  onTestFinished(() => process.chdir(before));
}

function refusal(journal: string): [string, readonly string[]] {
  try {
    openJournal({ journal });
  } catch (error) {
    if (error instanceof UsageProblem) return [error.message, error.help];
    throw error;
  }
  throw new Error("it was opened");
}

describe("a journal that is not there", () => {
  const files = {
    "content/project.yaml": "title: x\n",
    "site-demo/project.yaml": "title: x\n",
    "site-demo/days/2026-01-01.md": "x\n",
    "src/main.ts": "x\n",
    "notes.txt": "x\n",
  };
  const both = "journals here: `--journal content`, `--journal site-demo`";

  test.each([
    ["sitedemo", "there is no folder `sitedemo`", "did you mean `--journal site-demo`?"],
    ["Content/", "there is no folder `Content/`", "did you mean `--journal content`?"],
    ["src", "`src` is not a journal: it has no `project.yaml`", both],
    ["notes.txt", "there is no folder `notes.txt`", both],
    ["site-demo/days", "`site-demo/days` is not a journal: it has no `project.yaml`", both],
  ])("%s", (journal, message, help) => {
    standIn(scratchFolder(files));
    expect(refusal(journal)).toEqual([message, [help]]);
  });

  test("stood in the middle of it, the way out is named", () => {
    standIn(`${scratchFolder(files)}/site-demo`);
    expect(refusal("content")).toEqual([
      "there is no folder `content`",
      ["journals here: `--journal .`"],
    ]);
  });

  test("and none far and wide", () => {
    standIn(scratchFolder({ "notes.txt": "x\n" }));
    expect(refusal("content")).toEqual([
      "there is no folder `content`",
      ["go to the folder that holds the journal, or name the journal: `--journal DIR`"],
    ]);
  });
});

describe("the day a journal is judged on", () => {
  const now = new Date("2026-03-14T03:00:00Z");
  const judged = (project: string, asOf?: string) => {
    const { path, remove } = temporaryJournal({ "project.yaml": project });
    onTestFinished(remove);
    const options = asOf === undefined ? { journal: path } : { journal: path, asOf };
    return openJournal(options, now).analysis?.asOf.date;
  };
  const fixed = smallRegisters["project.yaml"] ?? "";
  const open = fixed.replace(/judged-on.*\n/, "");

  test("is today in the shop, whatever the clock elsewhere says", () => {
    expect(judged(open)).toBe("2026-03-13");
    expect(judged(open.replace("America/Denver", "Asia/Tokyo"))).toBe("2026-03-14");
  });

  test("is the one that the project names, and `--as-of` before that", () => {
    expect(judged(fixed)).toBe("2026-12-31");
    expect(judged(fixed, "2026-02-28")).toBe("2026-02-28");
  });
});

test("totals are compared only when everything could be read", () => {
  const found = (lines: string) => {
    const { path, remove } = temporaryJournal({ [marchFile]: entry(lines) });
    onTestFinished(remove);
    return openJournal({ journal: path }).errors.map(({ code }) => code);
  };
  expect(found('assert: { total: "1:00" }')).toEqual(["total-differs"]);
  expect(found('assert: { total: "1:00" }\ntitel: x')).toEqual(["unknown-key"]);
});

test("files are named from where the builder stands, in the notes as well", () => {
  const sealed = 'sessions: [{ assembly: wing, who: [ada], hours: "1:00", kind: shop }]';
  const { path, remove } = temporaryJournal({
    [marchFile]: entry(sealed),
    "days/2026/2026-03-14.md": entry(sealed),
  });
  onTestFinished(remove);
  const { folder, errors } = openJournal({ journal: path });
  const [seen] = asSeenFrom(folder, errors, `${path}/days`);
  expect(seen?.span.file).toBe("../../journal/days/2026/2026-03-14.md");
  const lots = { ...errors[0], notes: ["the lot: journal/lots.yaml:2, of journal/people.yaml"] };
  const notes = asSeenFrom(folder, [lots as (typeof errors)[number]], `${path}/days`)[0]?.notes;
  expect(notes).toEqual(["the lot: ../../journal/lots.yaml:2, of journal/people.yaml"]);
  expect(asSeenFrom(folder, errors, `${path}/..`)).toEqual(errors);
  expect(basename(folder.absolute)).toBe("journal");
});
