import { expect, test } from "vitest";
import { materialsPage } from "../../../src/present/pages/materials-page.ts";
import { shownJournal } from "../../support/shown-journal.ts";

const lots = `lots:
  - { id: rivets-7, title: Rivets, material: rivets, made: 2025-03-10 }
  - { id: sealant-1, title: Sealant, material: sealant, expires: 2026-02-01, extensions: [{ on: 2026-01-20, until: 2026-03-01, why: test passed }] }
  - { id: secret-sheet, title: Quillwort sheet, material: sheet, private: true }
`;

const day = `---
date: 2026-01-14
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: assemble, lots: [rivets-7, secret-sheet] }
  - { assembly: tail, who: [ada], hours: "0:30", kind: assemble, lots: [rivets-7] }
---
`;

const hidden = `---
date: 2026-01-16
private: true
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: assemble, lots: [rivets-7] }
---
`;

const files = {
  "lots.yaml": lots,
  "days/2026-01-14.md": day,
  "days/2026-01-16.md": hidden,
};

test("a lot is listed with the steps, else the assemblies, and the days it went into", () => {
  const { groups } = materialsPage(shownJournal(files, "private"));
  expect(groups.map(({ material }) => material)).toEqual(["Rivets", "Sealant", "Sheet"]);
  const [rivets] = groups[0]?.rows ?? [];
  expect(rivets?.used.map(({ on, days }) => [on.text, days.map(({ text }) => text)])).toEqual([
    ["W-1", ["2026-01-14", "2026-01-16"]],
    ["Tail", ["2026-01-14"]],
  ]);
});

test("an extension stands with its reason, and a lot past its last day is marked", () => {
  const { groups } = materialsPage(shownJournal(files, "private"));
  expect(groups[1]?.rows[0]).toMatchObject({
    useBy: "1 March 2026",
    extensions: ["on 20 January 2026 extended to 1 March 2026: test passed"],
    expired: true,
    used: [],
  });
});

test("the public edition has no private lot, and no link to a private day", () => {
  const page = materialsPage(shownJournal(files));
  expect(JSON.stringify(page)).not.toMatch(/quillwort/i);
  const days = page.groups.flatMap(({ rows }) =>
    rows.flatMap(({ used }) => used.flatMap((each) => each.days)),
  );
  expect(days.length).toBeGreaterThan(1);
  for (const { text, href } of days) expect(href === undefined).toBe(text === "2026-01-16");
});
