// Months are closed, and whatever is changed in them afterwards is found and named.

import { execFileSync } from "node:child_process";
import { mkdirSync, renameSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { UsageProblem } from "../../src/cli/journal.ts";
import { sealText } from "../../src/present/seals/seal-text.ts";
import { journalFolder } from "../../src/read/files.ts";
import { readBuild } from "../../src/read/read-build.ts";
import { seal, sealedJournal, threeMonths } from "../support/sealed-journal.ts";
import { witness } from "../support/witness.ts";

function read(path: string, photographs: "bytes" | "names" = "bytes") {
  const folder = journalFolder(path);
  if (!folder) throw new Error("no journal");
  return readBuild(folder, [], photographs);
}

const said = (path: string, photographs: "bytes" | "names" = "bytes") =>
  read(path, photographs).diagnostics.map(
    ({ code, span, message }) => `${code} ${span.file}: ${message}`,
  );

describe("a seal", () => {
  test("is plain text, reads back as it was meant, and is checked by common tools too", async () => {
    const { path, bytes } = await sealedJournal();
    const { build, diagnostics } = read(path);
    expect(diagnostics).toEqual([]);
    const [first, second] = build?.seals ?? [];
    if (!first || !second) throw new Error("two seals were made");
    expect(sealText(first)).toBe(bytes("seals/2026-01.seal").toString());
    expect(sealText(second)).toBe(bytes("seals/2026-02.seal").toString());
    expect(second).toMatchObject({
      month: "2026-02",
      designation: "SM-1",
      serial: "0001",
      version: "9.9.9",
      previous: { month: "2026-01", digest: first.digest },
      inMonth: { build: 120, apart: 0 },
      toDate: { build: 360, apart: 0 },
      entries: [{ path: "days/2026-02-10.md" }],
      photos: [{ path: "photos/b.jpg" }],
    });
    const sums = execFileSync("sha256sum", ["-c", "seals/2026-02.seal"], { cwd: path });
    expect(sums.toString()).toBe("days/2026-02-10.md: OK\nphotos/b.jpg: OK\n");
  });

  test("is the same bytes for the same journal", async () => {
    const one = await sealedJournal();
    const two = await sealedJournal();
    expect(one.bytes("seals/2026-02.seal")).toEqual(two.bytes("seals/2026-02.seal"));
  });

  test("--dry-run and --json say it and do not write it", async () => {
    const { path, has } = await sealedJournal([]);
    const dry = await seal(path, "2026-01", "--dry-run");
    const json = await seal(path, "2026-01", "--dry-run", "--json");
    expect(has("seals/2026-01.seal")).toBe(false);
    const answer = JSON.parse(json.said.out);
    expect(dry.said.out).toBe(answer.text);
    expect(answer.written).toBe(false);
    await seal(path, "2026-01");
    expect(read(path).build?.seals[0]?.digest).toBe(answer.digest);
  });

  test("is not made over errors, over another, or out of order", async () => {
    const { path, write } = await sealedJournal(["2026-01"]);
    await expect(seal(path, "2026-01")).rejects.toThrow(UsageProblem);
    await expect(seal(path, "2026-03")).rejects.toThrow("2026-02 has entries and is not sealed");
    await expect(seal(path, "2026-03", "--as-of", "2026-03-14")).rejects.toThrow("is not over");
    write("days/2026-03-20.md", "---\ndate: 2026-03-20\ntitel: x\n---\nWords.\n");
    const terminal = await seal(path, "2026-02");
    expect(terminal.said).toMatchObject({ status: 1 });
    expect(terminal.said.err).toContain("1 error: nothing was sealed");
  });

  test("leaves drafts alone, and says so", async () => {
    const draft = "---\ndate: 2026-01-09\ndraft: true\n---\nNot yet.\n";
    const { path, write, bytes } = await sealedJournal([], {
      ...threeMonths,
      "days/2026-01-09.md": draft,
    });
    const { said: made } = await seal(path, "2026-01");
    expect(made.err).toContain("not sealed: journal/days/2026-01-09.md: a draft");
    expect(bytes("seals/2026-01.seal").toString()).not.toContain("2026-01-09");
    write("days/2026-01-09.md", draft.replace("Not yet", "Not yet, still"));
    expect(said(path)).toEqual([]);
    write("days/2026-01-09.md", draft.replace("draft: true\n", ""));
    expect(said(path)).toEqual([
      "entry-after-seal journal/days/2026-01-09.md: `days/2026-01-09.md` is not in `seals/2026-01.seal`, which closed its month",
    ]);
  });
});

describe("one bit", () => {
  const sealedFiles = [
    ["days/2026-01-05.md", "seals/2026-01.seal"],
    ["days/2026-02-10.md", "seals/2026-02.seal"],
    ["photos/a.jpg", "seals/2026-01.seal"],
    ["photos/b.jpg", "seals/2026-02.seal"],
  ] as const;

  test("anywhere in a sealed file is found, with the file and the seal", async () => {
    const { path, bytes, write } = await sealedJournal();
    fc.assert(
      fc.property(
        fc.constantFrom(...sealedFiles),
        fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
        fc.nat(7),
        ([file, by], where, bit) => {
          const good = bytes(file);
          const bad = Buffer.from(good);
          const at = Math.floor(where * bad.length);
          bad[at] = (bad[at] ?? 0) ^ (1 << bit);
          write(file, bad);
          const found = read(path).diagnostics.filter(({ code }) =>
            /^sealed-(entry|photo)-differs$/.test(code),
          );
          write(file, good);
          return (
            found.length === 1 &&
            found.every(({ message }) => message.includes(file) && message.includes(by))
          );
        },
      ),
      { numRuns: 60 },
    );
    expect(said(path)).toEqual([]);
  });

  test("anywhere in a seal that another follows is found, and the seal is named", async () => {
    const { path, bytes, write } = await sealedJournal();
    const good = bytes("seals/2026-01.seal");
    for (let at = 0; at < good.length; at += 1) {
      const bad = Buffer.from(good);
      bad[at] = (bad[at] ?? 0) ^ 1;
      write("seals/2026-01.seal", bad);
      const found = said(path, "names").filter((each) => each.includes("seals/2026-01.seal"));
      expect(found, `byte ${at}`).not.toEqual([]);
    }
  });

  test("in a photograph waits for a reading of bytes; a missing one does not", async () => {
    const { path, write, remove } = await sealedJournal();
    write("photos/a.jpg", new Uint8Array([9]));
    expect(read(path, "names").diagnostics).toEqual([]);
    remove("photos/a.jpg");
    expect(read(path, "names").diagnostics.map(({ code }) => code)).toEqual([
      "sealed-photo-missing",
    ]);
  });
});

describe("what goes, comes or moves", () => {
  test("a removed photograph, named once", async () => {
    const { path, remove } = await sealedJournal();
    remove("photos/b.jpg");
    expect(said(path)).toEqual([
      "sealed-photo-missing journal/seals/2026-02.seal: `photos/b.jpg` was sealed in `seals/2026-02.seal` and is not there",
    ]);
  });

  test("a removed entry", async () => {
    const { path, remove } = await sealedJournal();
    remove("days/2026-01-20.md");
    expect(said(path)).toEqual([
      "sealed-entry-missing journal/seals/2026-01.seal: `days/2026-01-20.md` was sealed in `seals/2026-01.seal` and is not there",
    ]);
  });

  test("an entry moved to another folder", async () => {
    const { path } = await sealedJournal();
    mkdirSync(join(path, "days/2026"));
    renameSync(join(path, "days/2026-01-20.md"), join(path, "days/2026/2026-01-20.md"));
    const { diagnostics } = read(path);
    expect(diagnostics.map(({ code, notes }) => [code, notes])).toEqual([
      ["sealed-entry-missing", ["an entry of that day stands at `days/2026/2026-01-20.md`"]],
    ]);
  });

  test("an added entry, and one in a month before all seals", async () => {
    const { path, write } = await sealedJournal();
    write("days/2026-02-11.md", "---\ndate: 2026-02-11\n---\nLate.\n");
    write("days/2025-12-24.md", "---\ndate: 2025-12-24\n---\nEarly.\n");
    expect(said(path)).toEqual([
      "entry-after-seal journal/days/2025-12-24.md: `days/2025-12-24.md` is of a month that had no entries when `seals/2026-01.seal` was made",
      "entry-after-seal journal/days/2026-02-11.md: `days/2026-02-11.md` is not in `seals/2026-02.seal`, which closed its month",
    ]);
  });

  test("a removed seal in the chain", async () => {
    const { path, remove } = await sealedJournal(["2026-01", "2026-02", "2026-03"]);
    remove("seals/2026-02.seal");
    expect(said(path)).toEqual([
      "seal-chain-broken journal/seals/2026-03.seal: `seals/2026-02.seal` is missing: `seals/2026-03.seal` was made after it",
    ]);
    remove("seals/2026-01.seal");
    expect(said(path)).toHaveLength(1);
  });

  test("seals that changed places", async () => {
    const { path, bytes, write } = await sealedJournal();
    const [one, two] = [bytes("seals/2026-01.seal"), bytes("seals/2026-02.seal")];
    write("seals/2026-01.seal", two);
    write("seals/2026-02.seal", one);
    expect(said(path).filter((each) => each.startsWith("seal-chain-broken"))).toEqual([
      "seal-chain-broken journal/seals/2026-01.seal: `seals/2026-01.seal` is the seal of 2026-02",
      "seal-chain-broken journal/seals/2026-02.seal: `seals/2026-02.seal` is the seal of 2026-01",
    ]);
  });

  test("a seal taken from another aircraft", async () => {
    const { path, bytes, write } = await sealedJournal(["2026-01"]);
    const text = bytes("seals/2026-01.seal").toString();
    write("seals/2026-01.seal", text.replace("serial: 0001", "serial: 0002"));
    expect(said(path)).toEqual([
      "identity-differs journal/seals/2026-01.seal: the serial is `0002` here and `0001` in project.yaml",
    ]);
  });

  test("a zone that makes other hours of the same entries", async () => {
    const night =
      '---\ndate: 2026-03-08\nsessions:\n  - { assembly: spar, who: [ada], from: "01:00", to: "04:00", kind: fabricate }\n---\nLate.\n';
    const { path, bytes, write } = await sealedJournal(["2026-03"], {
      "days/2026-03-08.md": night,
    });
    const project = bytes("project.yaml").toString();
    write("project.yaml", project.replace("America/Denver", "America/Phoenix"));
    const { status, stdout } = await witness(["check", "--journal", path], { cwd: "/" });
    expect(stdout).toContain("error[sealed-total-differs]");
    expect(stdout).toContain("in the month, building: sealed 2:00, now 3:00");
    expect(status).toBe(4);
  });
});

describe("an amendment of a later month", () => {
  const amendment = `---
date: 2026-03-20
amendments:
  - { day: 2026-02-10, field: "sessions[1].to", was: "20:00", now: "20:30", why: forgot the clean-up }
---
Remembered.
`;

  test("corrects a sealed day, and the seals hold", async () => {
    const { path, write } = await sealedJournal();
    write("days/2026-03-20.md", amendment);
    const { build, diagnostics } = read(path);
    expect(diagnostics).toEqual([]);
    const corrected = build?.days.find(({ date }) => date === "2026-02-10");
    expect(corrected?.sessions[0]?.minutes).toBe(150);
    const { said: made } = await seal(path, "2026-03");
    expect(made.out).toContain("2:00 h of building");
    expect(made.out).toContain("8:30 h to date");
    expect(said(path)).toEqual([]);
  });

  test("in a draft changes nothing", async () => {
    const { path, write } = await sealedJournal();
    write("days/2026-03-20.md", amendment.replace("amendments:", "draft: true\namendments:"));
    const { build, diagnostics } = read(path);
    expect(diagnostics).toEqual([]);
    const day = build?.days.find(({ date }) => date === "2026-02-10");
    expect(day?.sessions[0]?.minutes).toBe(120);
  });
});

test("check, build and export exit 4 over a sealed record that differs, and write nothing", async () => {
  const { path, write, bytes, has } = await sealedJournal();
  write("days/2026-01-20.md", bytes("days/2026-01-20.md").toString().replace("Holes", "Wholes"));
  const run = async (...args: readonly string[]) => {
    const { status, stdout } = await witness([...args, "--journal", path], { cwd: path });
    expect(stdout).toContain(
      "error[sealed-entry-differs]: `days/2026-01-20.md` is not as it was sealed in `seals/2026-01.seal`",
    );
    return status;
  };
  expect(await run("check")).toBe(4);
  expect(await run("build")).toBe(4);
  expect(await run("export")).toBe(4);
  expect(await run("seal", "2026-03")).toBe(4);
  expect(has("out")).toBe(false);
  expect(has("seals/2026-03.seal")).toBe(false);
}, 30_000);
