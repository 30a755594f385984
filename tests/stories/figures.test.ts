// Every figure of hours on every page leads to rows that add up to it, down to the entries.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import { editions } from "../../src/present/record/edition.ts";
import { journalFolder } from "../../src/read/files.ts";
import { readBuild } from "../../src/read/read-build.ts";
import { anyHours, lastDate } from "../support/any-build.ts";
import { demoBuilt } from "../support/build-demo.ts";
import { demoSite } from "../support/demo-site.ts";
import { eventfulAnalysis, longAnalysis } from "../support/eventful-build.ts";
import { type Followed, followFigures, type Pages } from "../support/figures.ts";
import { renderedSite } from "../support/rendered-site.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { asOf } from "../support/small-build.ts";
import { readSmall } from "../support/temporary-journal.ts";
import { projectFolder } from "../support/witness.ts";

/** Minutes of everybody at every session, counted from the sessions themselves. */
function minutesOf({ build }: Analysis): number {
  return build.days
    .flatMap((day) => day.sessions)
    .reduce((sum, { minutes, who }) => sum + minutes * who.length, 0);
}

function expectFollowed({ wrong, figures, entries }: Followed, atLeast: number, minutes?: number) {
  expect(wrong).toEqual([]);
  expect(figures).toBeGreaterThan(atLeast);
  if (minutes !== undefined) {
    expect([...entries.values()].reduce((sum, each) => sum + each, 0)).toBe(minutes);
  }
}

const rendered = (analysis: Analysis, edition: (typeof editions)[number]) =>
  renderedSite({ analysis, diagnostics: analysis.diagnostics, pictures: new Map(), edition });

describe("on the site of", () => {
  test("a build in which everything happens", async () => {
    const analysis = eventfulAnalysis();
    const pages = await rendered(analysis, "private");
    expectFollowed(followFigures(pages), 100, minutesOf(analysis));
  });

  test("the same for everybody: the private day has no sheet, its hours count", async () => {
    const pages = await rendered(eventfulAnalysis(), "public");
    expectFollowed(followFigures(pages), 100);
  });

  test("a long build, with more sessions on a step than can be read", async () => {
    const analysis = longAnalysis(150);
    const pages = await rendered(analysis, "private");
    expectFollowed(followFigures(pages), 2000, minutesOf(analysis));
  });

  // Rows that tell of the same session, rows of several months, study apart, a private day.
  test.each(editions)("a build with help of every kind, %s", async (edition) => {
    const { build, diagnostics } = readSmall({
      ...Object.fromEntries(
        ["2026-03-14", "2026-03-20", "2026-04-02", "2026-04-05"].map((date) => [
          `days/${date}.md`,
          `---\ndate: ${date}\n${date === "2026-04-02" ? "private: true\n" : ""}sessions:
  - { assembly: spar, who: [ada, jon], hours: "1:15", kind: assemble, roles: { jon: paid help } }
  - { assembly: spar, who: [jon], hours: "0:30", kind: study, roles: { jon: paid help } }
  - { assembly: spar, who: [jon], hours: "2:00", kind: fabricate }
---\nDid it.\n`,
        ]),
      ),
      "help.yaml": `help:
  - { id: P-1, who: jon, kind: paid help, from: 2026-03-14, to: 2026-04-02, what: rivets }
  - { id: P-2, who: jon, kind: paid help, from: 2026-03-20, what: the same day again }
  - { id: U-1, who: jon, kind: unpaid help, from: 2026-03-14, to: 2026-03-31, what: held the bar }
  - { id: I-1, who: jon, kind: instruction, from: 2026-03-14, what: no session tells of it }
`,
    });
    expect(diagnostics).toEqual([]);
    if (!build) throw new Error("the journal is sound");
    const pages = await rendered(analyze(build, asOf("2026-12-31")), edition);
    const help = pages.get("help/index.html") ?? "";
    // Of each: P-1 with three days, P-2 with one of them; U-1 with two; and two days unlisted.
    expect(help.match(/data-subtotal="build"/g)).toHaveLength(6);
    expect(help.match(/data-subtotal="apart"/g)).toHaveLength(3);
    // Overlapping rows have no sum together.
    expect(help.match(/data-total/g)).toHaveLength(1);
    expect(help).toMatch(/data-subtotal="build"[^>]*>3:45</);
    expect(help).toMatch(/data-subtotal="apart"[^>]*>1:30</);
    expectFollowed(followFigures(pages), 100);
  });

  test("any build", async () => {
    await fc.assert(
      fc.asyncProperty(anyHours, fc.constantFrom(...editions), async (build, edition) => {
        const { wrong } = followFigures(await rendered(analyze(build, asOf(lastDate)), edition));
        expect(wrong).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });

  test("the sample journal, as it is read", async () => {
    const folder = journalFolder(join(projectFolder, "site-demo"));
    const read = folder && readBuild(folder, [], "names");
    if (!read?.build || !read.zone) throw new Error("the sample journal cannot be read");
    const analysis = analyze(read.build, read.zone.asOf(read.build.project.judgedOn ?? lastDate));
    const pages = await rendered(analysis, "private");
    expectFollowed(followFigures(pages), 2000, minutesOf(analysis));
  });

  test("the sample journal, as it is published", async () => {
    await demoBuilt();
    const pages = new Map(
      filesIn(demoSite)
        .filter((name) => name.endsWith(".html"))
        .map((name) => [name, readFileSync(join(demoSite, name), "utf8")]),
    );
    expectFollowed(followFigures(pages), 2000);
  });
});

describe("it would be noticed", () => {
  const counted =
    /(data-(?:figure|part|total|subtotal)="(?:build|apart)"[^>]*>(?:<a [^>]*>)?)(\d+):(\d\d)/g;

  /** Pages with one figure a minute off. */
  function spoiled(pages: Pages, where: number): { pages: Pages; at: string } {
    const places = [...pages].flatMap(([path, html]) =>
      [...html.matchAll(counted)].map((found) => ({ path, found })),
    );
    const place = places[Math.floor(where * places.length)];
    if (!place) throw new Error("there are no figures");
    const { path, found } = place;
    const [whole, before = "", hours = "", minutes = ""] = found;
    const other = `${before}${hours}:${minutes === "59" ? "58" : String(Number(minutes) + 1).padStart(2, "0")}`;
    const html = pages.get(path) ?? "";
    const next = html.slice(0, found.index) + other + html.slice(found.index + whole.length);
    return { pages: new Map([...pages, [path, next]]), at: `${path}: ${whole}` };
  }

  test("one minute anywhere", async () => {
    const pages = await rendered(eventfulAnalysis(), "private");
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (where) => {
        const { pages: wrong, at } = spoiled(pages, where);
        expect(followFigures(wrong).wrong, at).not.toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test.each([
    ["a figure that nothing explains", "</h1>", "</h1><p>12:34 hours</p>", "is not marked"],
    [
      "a link to no page",
      'href="../../../steps/hs-07/index.html"',
      'href="../gone.html"',
      "no page",
    ],
    ["a session without its row", 'id="s-1"', 'id="other"', "no place there"],
  ])("%s", async (_, from, to, why) => {
    const pages = await rendered(eventfulAnalysis(), "private");
    const path = "2026/03/14/index.html";
    const html = pages.get(path) ?? "";
    expect(html).toContain(from);
    const { wrong } = followFigures(new Map([...pages, [path, html.replaceAll(from, to)]]));
    expect(wrong.join("\n")).toContain(why);
  });
});
