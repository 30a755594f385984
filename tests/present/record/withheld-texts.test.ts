import { expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { withheldTexts } from "../../../src/present/record/withheld-texts.ts";
import { checkWithheld } from "../../../src/write/withheld-check.ts";
import { scratchFolder } from "../../support/scratch-folder.ts";
import { asOf, day, photo, session, smallBuild } from "../../support/small-build.ts";

const analysis = analyze(
  smallBuild({
    days: [
      day({
        date: "2026-03-14",
        title: "Ribs on the bench",
        prose: "Everybody may read this sentence.",
        sessions: [session({ note: "the neighbour called about it", private: true })],
        photos: [
          photo({ caption: "The shed with its *number* on the door", private: true }),
          photo({ caption: "Everybody may read this", private: true }),
          photo({ caption: "Rib 4", private: true }),
        ],
      }),
      day({ date: "2026-03-15", title: "A visit of the banker", private: true, prose: "" }),
    ],
  }),
  asOf("2026-03-31"),
);

test("stretches of what is left out, as long as they are not said openly too", () => {
  const texts = withheldTexts(analysis, publicEdition(analysis, []));
  expect(texts.sort()).toEqual([
    "A visit of the banker",
    "The shed with its",
    "the neighbour called about it",
  ]);
});

test("the private edition leaves nothing out", () => {
  expect(withheldTexts(analysis, privateEdition(analysis, []))).toEqual([]);
});

test("a file that holds one is named, without repeating it", async () => {
  const folder = scratchFolder({
    "index.html": "<p>Ribs</p>",
    "2026/03/14/index.html": "<p>A visit of the banker</p>",
    "feed.xml": "<title>A visit of the banker</title>",
    "limits/index.html": "A visit of the banker",
    "photos/a.jpg": "A visit of the banker",
  });
  const problems = await checkWithheld(folder, ["A visit of the banker"], ["limits"]);
  expect(problems.map(({ code, file }) => `${code} ${file}`)).toEqual([
    "private-words 2026/03/14/index.html",
    "private-words feed.xml",
  ]);
  expect(JSON.stringify(problems)).not.toContain("banker");
  expect(await checkWithheld(folder, [], [])).toEqual([]);
});
