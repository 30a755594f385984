import { expect, test } from "vitest";
import {
  addressesOf,
  anchorOf,
  hrefTo,
  rootOf,
  slugs,
} from "../../../src/present/pages/addresses.ts";
import { smallBuild } from "../../support/small-build.ts";

test("ids that come to the same name get one each", () => {
  expect([...slugs(["HS-07", "hs.07", "hs_07", "HS-07-2"])]).toEqual([
    ["HS-07", "hs-07"],
    ["hs.07", "hs-07-2"],
    ["hs_07", "hs-07-3"],
    ["HS-07-2", "hs-07-2-2"],
  ]);
});

test.each([
  ["A..B", "a-b"],
  ["9", "9"],
  ["Z._-", "z"],
  ["x".repeat(200), "x".repeat(80)],
])("the name of %s holds letters, digits and hyphens only", (id, name) => {
  expect(slugs([id]).get(id)).toBe(name);
});

test("a day is a folder below its month", () => {
  const addresses = addressesOf(smallBuild());
  expect(addresses.day("2026-03-14")).toBe("2026/03/14/");
  expect(addresses.month("2026-03")).toBe("2026/03/");
});

test("an id that is not declared has no page", () => {
  expect(() => addressesOf(smallBuild()).step("HS-99")).toThrow("no page");
});

test.each([
  ["", ""],
  ["404.html", ""],
  ["hours/", "../"],
  ["2026/03/14/", "../../../"],
])("from %j the root is %j", (url, root) => {
  expect(rootOf(url)).toBe(root);
});

test("a link names the file, so that it works without a server", () => {
  expect(hrefTo("../", "")).toBe("../index.html");
  expect(hrefTo("../", "2026/03/14/", "reading-r1")).toBe("../2026/03/14/index.html#reading-r1");
  expect(hrefTo("", "404.html")).toBe("404.html");
});

test("an anchor is fit for HTML", () => {
  expect(anchorOf("deviation", "D-014 a/b")).toBe("deviation-d-014-a-b");
});
