import { describe, expect, test } from "vitest";
import { balancePage } from "../../../src/present/pages/balance-page.ts";
import { recordIndex } from "../../../src/present/pages/record-index.ts";
import { sitePages } from "../../../src/present/pages/site.ts";
import type { Edition } from "../../../src/present/record/edition.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { analysisWith, eventfulBalance } from "../../support/weighed.ts";

const day = { "days/2026-03-14.md": "---\ndate: 2026-03-14\n---\nWeighed it.\n" };

function input(yaml: string, edition: Edition = "private") {
  const analysis = analysisWith(yaml, day);
  return { analysis, diagnostics: analysis.diagnostics, pictures: new Map(), edition };
}

function pageOf(yaml: string, edition: Edition = "private") {
  const page = balancePage(recordIndex(input(yaml, edition)));
  if (!page) throw new Error("there is no page");
  return page;
}

describe("a journal without the register", () => {
  const site = sitePages({
    analysis: eventfulAnalysis(),
    diagnostics: [],
    pictures: new Map(),
    edition: "public",
  });

  test("has no page and no place in the index of sheets", () => {
    expect(site.pages.balance).toEqual([]);
    expect(site.shell.nav.map(({ part }) => part)).not.toContain("balance");
  });
});

test("with it there is one page, in the index between readings and open items", () => {
  const { pages, shell } = sitePages(input(eventfulBalance, "public"));
  expect(pages.balance.map(({ url }) => url)).toEqual(["balance/"]);
  const parts = shell.nav.map(({ part }) => part);
  expect(parts.slice(parts.indexOf("balance") - 1, parts.indexOf("balance") + 2)).toEqual([
    "readings",
    "balance",
    "open",
  ]);
});

describe("the page", () => {
  const page = pageOf(eventfulBalance);

  test("says what the empty weight is, where it comes from and what is in it", () => {
    expect(page.sentence).toBe(
      "As weighed on 1 August 2026, with 1 change of equipment since, the empty aircraft comes to 1029.50 lb, with its centre of gravity 21.90 in aft of the datum, 23.80 % of the mean aerodynamic chord. Oil and unusable fuel are in it.",
    );
    expect(page.dimension).toMatchObject({ figure: "1029.50 lb" });
    expect(page.definition.map(({ label }) => label)).toEqual([
      "Datum",
      "Oil",
      "Unusable fuel",
      "Mean aerodynamic chord",
    ]);
    expect(page.limits.at(-1)).toEqual({
      label: "Source",
      value: "Designer's weight sheet (rev B)",
    });
  });

  test("tells the story of the empty weight, with links to its lines and to the day", () => {
    expect(
      page.events.map(({ on, what, change, weight, movement }) => [
        on.text,
        what,
        change,
        weight,
        movement,
      ]),
    ).toEqual([
      ["1 January 2026", "Before anything", "+3.00", "–", ""],
      ["1 February 2026", "Projected empty weight", "", "939.00", ""],
      ["14 March 2026", "First weighing", "", "969.88", ""],
      ["1 April 2026", "Second radio", "+2.75", "972.63", "-0.01"],
      ["1 August 2026", "After paint", "", "1030.00", ""],
      ["1 September 2026", "Lighter screws", "-0.50", "1029.50", "0.00"],
    ]);
    expect(page.events[2]?.on.href).toBe("../2026/03/14/index.html");
    expect(page.events[3]?.on).not.toHaveProperty("href");
    const anchors = [
      ...page.weighings,
      ...(page.projection ? [page.projection] : []),
      ...page.changes,
      ...page.caseSheets,
    ].map(({ anchor }) => anchor);
    expect(new Set(anchors).size).toBe(anchors.length);
    for (const { sheet } of page.events) expect(anchors).toContain(sheet.href?.slice(1));
    for (const { href } of page.cases) expect(anchors).toContain(href.slice(1));
  });

  test("notes what is negligible, with its source, and what was not counted", () => {
    expect(page.events.map(({ notes }) => notes)).toEqual([
      ["before the first weighing, which has it already"],
      [],
      ["+30.88 lb against what was reckoned before"],
      [
        "weight change not negligible (1 lb or less)",
        "movement of the CG negligible (below 0.05 % MAC)",
      ],
      ["+57.37 lb against what was reckoned before"],
      [
        "weight change negligible (1 lb or less)",
        "movement of the CG negligible (below 0.05 % MAC)",
      ],
    ]);
    expect(page.negligible).toContain("AC 43.13-1B (8 Sep 1998, change 1 27 Sep 2001), par. 10-2c");
  });

  test("shows every weighing net of tare, as typed beside it", () => {
    const [, first] = page.weighings;
    expect(
      first?.rows.map(({ what, says, weight, estimated }) => [what, says, weight, estimated]),
    ).toEqual([
      ["left main wheel", "425 lb less 5 lb", "420.00", false],
      ["right main wheel", "no tare said", "425.00", false],
      ["nose wheel", "82.5 kg less 2 lb", "179.88", false],
      ["fuel", "taken out, 10 gal × 5.9 lb/gal", "-59.00", false],
      ["seat cushions", "at 650 mm", "4.00", true],
    ]);
    expect(first?.sum).toMatchObject({ what: "empty weight", weight: "969.88", arm: "21.95" });
    expect(first?.facts).toEqual([
      { label: "Weighed", value: "the whole aircraft" },
      { label: "Place", value: "hangar" },
      { label: "Levelled", value: "longerons level" },
      { label: "Scales", value: "Caliper (not under calibration)" },
      { label: "By", value: "Ada Brook, Jon Reed" },
    ]);
    expect(page.weighings[2]?.facts.slice(1)).toEqual([
      { label: "Scales", value: "not said" },
      { label: "By", value: "not said" },
    ]);
  });

  test("judges every case in words, and the rows of a case make its sum", () => {
    expect(
      page.cases.map(({ title, verdict, says, marks }) => [title, verdict, says, marks]),
    ).toEqual([
      [
        "Half tanks",
        "inside the limits given",
        [
          "166.50 lb below the greatest weight",
          "2.90 in behind the forward limit",
          "3.96 in ahead of the aft limit",
        ],
        ["extreme forward"],
      ],
      ["Two up", "outside", ["too heavy by 19.50 lb"], ["estimated"]],
      ["Tools in the tail", "outside", ["behind the aft limit by 6.70 in"], ["extreme aft"]],
      [
        "Secret pilot",
        "inside the limits given",
        [
          "345.50 lb below the greatest weight",
          "2.71 in behind the forward limit",
          "4.87 in ahead of the aft limit",
        ],
        [],
      ],
    ]);
    expect(page.casesLack).toEqual([]);
    for (const { rows, sum } of page.caseSheets) {
      const total = rows.reduce((weight, row) => weight + Math.round(Number(row.weight) * 100), 0);
      expect(total / 100).toBe(Number(sum.weight));
    }
  });

  test("its findings are those of the register, without a link to the page itself", () => {
    expect(page.findings.map(({ title }) => title)).toEqual([
      "loading outside envelope",
      "loading outside envelope",
    ]);
    expect(page.findings[0]).not.toHaveProperty("day");
    const { pages } = sitePages(input(eventfulBalance));
    expect(pages.open[0]?.findings[0]?.day).toEqual({
      text: "Weight and balance",
      href: "../balance/index.html",
    });
  });

  test("says first and last that it permits nothing", () => {
    expect(page.cautions[0]).toContain("Nothing here certifies an aircraft or permits a loading");
    expect(page.cautions[0]).toContain("a licensed person govern");
  });
});

test("the public edition has no private case, and shows people as it does elsewhere", () => {
  const people = `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: jon, name: Jon Reed, role: unpaid help, private: true }
`;
  const analysis = analysisWith(eventfulBalance, { ...day, "people.yaml": people });
  const page = balancePage(
    recordIndex({
      analysis,
      diagnostics: analysis.diagnostics,
      pictures: new Map(),
      edition: "public",
    }),
  );
  const text = JSON.stringify(page);
  expect(text).not.toMatch(/secret/i);
  expect(text).not.toContain("Jon Reed");
  expect(page?.weighings[1]?.facts.at(-1)?.value).toBe("Ada Brook, unpaid help");
  expect(page?.cases).toHaveLength(3);
});

describe("what a register lacks is said", () => {
  const weighing =
    "weighings:\n  - { id: W-1, on: 2026-03-14, title: First, points: [{ at: all, reads: 1000 lb, arm: -3 in }] }\n";
  const one = "cases:\n  - { id: L-1, title: One, items: [] }\n";

  test("nothing weighed", () => {
    const page = pageOf(one);
    expect(page.sentence).toContain("Nothing has been weighed or projected yet");
    expect(page).not.toHaveProperty("dimension");
    expect(page).not.toHaveProperty("chart");
    expect(page.casesLack[0]).toContain("wait for an empty weight");
    expect(page.block.cells[0]).toEqual({ label: "empty weight", value: "not weighed" });
  });

  test("no limits, no extremes, and a centre of gravity ahead of the datum", () => {
    const page = pageOf(weighing + one);
    expect(page.sentence).toContain("3.00 in ahead of the datum.");
    expect(page.cases[0]?.verdict).toBe("no limits given");
    expect(page.casesLack).toEqual([
      "No limits are declared, so no case can be judged.",
      "No case is marked as the extreme forward one.",
      "No case is marked as the extreme aft one.",
    ]);
  });

  test("a projection is an estimate and says so", () => {
    const page = pageOf(
      "projection: { on: 2026-03-14, items: [{ what: all, weight: 900 lb, arm: 10 in }] }\n",
    );
    expect(page.sentence).toMatch(/^Not weighed yet: as projected on 14 March 2026,/);
    expect(page.dimension?.says).toContain("projected empty weight");
    expect(page.cautions.join(" ")).toContain("for planning and for nothing else");
  });

  test.each([
    ["in", "in", "Oil and unusable fuel are in it."],
    ["out", "out", "Neither oil nor unusable fuel is in it."],
    ["in", "out", "Oil is in it, unusable fuel is not."],
    ["out", "in", "Unusable fuel is in it, oil is not."],
  ])("oil %s, unusable fuel %s", (oil, fuel, expected) => {
    const page = pageOf(
      `datum: firewall\nempty-weight: { oil: ${oil}, unusable-fuel: ${fuel}, note: by the sheet }\n${weighing}`,
    );
    expect(page.sentence.endsWith(expected)).toBe(true);
    expect(page.definition.at(-1)?.value).toBe("by the sheet");
  });
});
