import { expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { withheldTexts } from "../../../src/present/record/withheld-texts.ts";
import { checkWithheld } from "../../../src/write/withheld-check.ts";
import { scratchFolder } from "../../support/scratch-folder.ts";
import {
  asOf,
  day,
  person,
  photo,
  register,
  session,
  smallBuild,
} from "../../support/small-build.ts";

const analysis = analyze(
  smallBuild({
    people: register(person(), person({ id: "pip", name: "Pip Quillfeather", private: true })),
    days: [
      day({
        date: "2026-03-14",
        title: "Ribs on the bench",
        prose: "Everybody may read this sentence.",
        sessions: [
          session({ note: "not for everybody", private: true }),
          session({ note: "the neighbour called about the noise of it", private: true }),
        ],
        photos: [
          photo({ caption: "The shed at the end of the lane with its *number*", private: true }),
          photo({ caption: "Everybody may read this", private: true }),
          photo({ caption: "Rib 4", private: true }),
        ],
      }),
      day({
        date: "2026-03-15",
        title: "A long visit of the banker on the hill",
        private: true,
        prose: "",
      }),
    ],
  }),
  asOf("2026-03-31"),
);

test("stretches of what is left out, as long as they are not said openly too", () => {
  const texts = withheldTexts(analysis, publicEdition(analysis, []));
  expect(texts.sort()).toEqual([
    "A long visit of the banker on the hill",
    "Pip Quillfeather",
    "The shed at the end of the lane with its",
    "the neighbour called about the noise of it",
  ]);
});

test("the private edition leaves nothing out", () => {
  expect(withheldTexts(analysis, privateEdition(analysis, []))).toEqual([]);
});

test("a file that holds one is named, without repeating it", async () => {
  const folder = scratchFolder({
    "index.html": "<p>Ribs</p>",
    "2026/03/14/index.html": "<p>A long visit of the banker on the hill</p>",
    "feed.xml": "<title>A long visit of the banker on the hill</title>",
    "limits/index.html": "A long visit of the banker on the hill",
    "photos/a.jpg": "A long visit of the banker on the hill",
  });
  const problems = await checkWithheld(
    folder,
    ["A long visit of the banker on the hill"],
    ["limits"],
  );
  expect(problems.map(({ code, file }) => `${code} ${file}`)).toEqual([
    "private-words 2026/03/14/index.html",
    "private-words feed.xml",
  ]);
  expect(JSON.stringify(problems)).not.toContain("banker");
  expect(await checkWithheld(folder, [], [])).toEqual([]);
});
