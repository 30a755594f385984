import { expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { sitePages } from "../../../src/present/pages/site.ts";
import { readSmall, smallRegisters } from "../../support/temporary-journal.ts";

const addressed = `${smallRegisters["project.yaml"]}address: https://journal.example/a/\n`;

function day(date: string, more = ""): [string, string] {
  const session = 'sessions: [{ assembly: wing, who: [ada], hours: "1:30", kind: assemble }]\n';
  return [`days/${date}.md`, `---\ndate: ${date}\n${session}${more}---\nSomething.\n`];
}

function site(
  files: Readonly<Record<string, string>>,
  shares: ReadonlyMap<string, string> = new Map(),
) {
  const { build, zone } = readSmall(files);
  if (!build || !zone) throw new Error("the journal cannot be read");
  const analysis = analyze(build, zone.asOf("2026-12-31"));
  return sitePages({
    analysis,
    diagnostics: [],
    pictures: new Map(),
    shares,
    edition: "public",
  });
}

const photos = "photos: [{ file: a.jpg, caption: A }, { file: b.jpg, caption: B, alt: Blue }]\n";

test("without an address nothing is drawn and nothing is shared", () => {
  const { pages, shareSheets, shell } = site(Object.fromEntries([day("2026-03-14")]));
  expect(shareSheets).toEqual([]);
  expect(shell.share).toBeUndefined();
  expect(pages.day[0]?.share).toBeUndefined();
});

test("a year of days without photographs is a drawing for each month and one for the record", () => {
  const days = Array.from({ length: 12 }, (_, month) =>
    Array.from({ length: 20 }, (_, each) =>
      day(`2026-${String(month + 1).padStart(2, "0")}-${String(each + 1).padStart(2, "0")}`),
    ),
  ).flat();
  const { shareSheets, pages } = site({
    ...Object.fromEntries(days),
    "project.yaml": addressed,
  });
  expect(pages.day).toHaveLength(240);
  expect(shareSheets).toHaveLength(13);
  const drawn = new Set(shareSheets.map(({ url }) => url));
  for (const { share } of pages.day) expect(drawn.has(share?.url ?? "none")).toBe(true);
});

test("a day shares its first photograph that could be read; the words are those of its picture", () => {
  const { pages } = site(
    {
      ...Object.fromEntries([day("2026-03-14", photos), day("2026-03-15")]),
      "photos/a.jpg": "a",
      "photos/b.jpg": "b",
      "project.yaml": addressed,
    },
    new Map([["b.jpg", "share/b-1200.jpg"]]),
  );
  expect(pages.day.map(({ share }) => share)).toEqual([
    { url: "share/b-1200.jpg", alt: "Blue" },
    {
      url: "share/2026-03.jpg",
      alt: "Drawn sheet: March 2026, 3:00 hours of building on 2 days.",
    },
  ]);
});

test("the ticks of a sheet are the hours of its days", () => {
  const { shareSheets } = site({
    ...Object.fromEntries([day("2026-03-01"), day("2026-03-31")]),
    "project.yaml": addressed,
  });
  const march = shareSheets.find(({ url }) => url === "share/2026-03.jpg");
  expect(march).toMatchObject({ figure: "3:00", from: "1 Mar", to: "31 Mar" });
  expect(march?.ticks.map(({ at }) => Math.round(at * 31 + 0.5))).toEqual([1, 31]);
  expect(march?.ticks.map(({ length }) => length)).toEqual([1, 1]);
});
