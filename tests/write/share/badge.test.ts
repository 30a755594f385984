import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { badgeCode, badgeOf } from "../../../src/present/share/badge.ts";
import { lettering } from "../../../src/write/lettering.ts";
import { checkOutput } from "../../../src/write/output-checks.ts";
import { badgeDrawing, writeBadge } from "../../../src/write/share/write-badge.ts";
import { scratchFolder } from "../../support/scratch-folder.ts";
import { shownJournal } from "../../support/shown-journal.ts";
import { entry, marchFile } from "../../support/temporary-journal.ts";

const hours = 'sessions: [{ assembly: wing, who: [ada, jon], hours: "1:30", kind: assemble }]\n';
const badge = badgeOf(shownJournal({ [marchFile]: entry(hours) }));

test("says the hours of the record, also of days that the public edition does not show", () => {
  expect(badge.title).toBe("SM-1: 3:00 hours of building");
  expect(badge.says).toBe(
    "A small aeroplane, serial 0001: 3:00 hours of building on 1 day, as of 31 December 2026.",
  );
  const withheld = badgeOf(shownJournal({ [marchFile]: entry(`private: true\n${hours}`) }));
  expect(withheld).toEqual(badge);
});

test("is a drawing with words for those who cannot see it, and loads nothing", async () => {
  const tricky = { ...badge, title: 'A & <b> "c"', says: "1 < 2 & 3" };
  const svg = badgeDrawing(tricky, await lettering());
  expect(svg).toContain('<title id="t">A &amp; &lt;b&gt; "c"</title>');
  expect(svg).toContain('<desc id="d">1 &lt; 2 &amp; 3</desc>');
  expect(svg).toContain('role="img" aria-labelledby="t d"');
  const tags = new Set([...svg.matchAll(/<([a-z]+)/g)].map((found) => found[1]));
  expect([...tags].sort()).toEqual(["desc", "path", "svg", "title"]);
  expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/http|href|url\(|@/);
  expect(svg.length).toBeLessThan(30_000);
});

test("the file passes the checks of the output", async () => {
  const folder = scratchFolder();
  await writeBadge(folder, badge);
  expect(readFileSync(join(folder, "badge.svg"), "utf8")).toContain(badge.title);
  expect((await checkOutput(folder)).problems).toEqual([]);
});

test("the code for other pages names the whole address when there is one", () => {
  const project = { title: 'Two seats "Bracken" & floats' };
  expect(badgeCode("https://journal.example/a/", project)).toBe(
    '<a href="https://journal.example/a/"><img src="https://journal.example/a/badge.svg" width="300" height="84" alt="Hours of Two seats &quot;Bracken&quot; &amp; floats"></a>',
  );
  expect(badgeCode(undefined, project)).toMatch(/^<img src="badge\.svg" /);
});
