import { expect, test } from "vitest";
import { recordData, sheetData } from "../../../src/present/pages/structured-data.ts";
import { project } from "../../support/small-build.ts";

const facts = {
  title: 'Rivets </script><script>alert("1")</script>',
  description: "What went on.",
  url: "2026/03/14/",
  published: "2026-03-14T21:40:00Z",
  updated: "2026-03-19T20:00:00Z",
  images: [{ url: "photos/rib4-800.jpg", caption: "Row A" }],
  above: [
    { text: "Record", url: "" },
    { text: "March 2026", url: "2026/03/" },
  ],
};

test("without an address nothing is said: every place would be wrong", () => {
  const { address: _none, ...rest } = project();
  expect(sheetData(rest, "Ada", facts)).toBeUndefined();
  expect(recordData(rest, "Ada")).toBeUndefined();
});

test("a sheet's places are absolute, whether or not the address ends in a slash", () => {
  for (const address of ["https://journal.example/a", "https://journal.example/a/"]) {
    const [posting, way] = JSON.parse(sheetData(project({ address }), "Ada", facts) ?? "")[
      "@graph"
    ];
    expect(posting).toMatchObject({
      "@type": "BlogPosting",
      url: "https://journal.example/a/2026/03/14/",
      datePublished: "2026-03-14T21:40:00Z",
      dateModified: "2026-03-19T20:00:00Z",
      image: [{ contentUrl: "https://journal.example/a/photos/rib4-800.jpg" }],
    });
    expect(way.itemListElement.map(({ item }: { item: string }) => item)).toEqual([
      "https://journal.example/a/",
      "https://journal.example/a/2026/03/",
    ]);
  }
});

test("nothing in it can end the element it stands in", () => {
  expect(sheetData(project({ address: "https://journal.example/" }), "Ada", facts)).not.toContain(
    "<",
  );
});
