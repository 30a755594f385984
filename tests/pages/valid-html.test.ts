// Every page of the sample site against HTML itself and against what is recommended on top of it.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { HtmlValidate } from "html-validate/node";
import { beforeAll, expect, test } from "vitest";
import { demoBuilt } from "../support/build-demo.ts";
import { demoSite } from "../support/demo-site.ts";
import { all, htmlTree, textOf } from "../support/html-tree.ts";
import { filesIn } from "../support/scratch-folder.ts";

const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    // A sheet is called what its builder called it, however long. The test below holds what the
    // site itself adds to that.
    "long-title": "off",
    // A bare `>` in text is HTML, as in the code of the badge; a bare `<` would be a broken tag.
    "no-raw-characters": "off",
  },
});

let pages: readonly (readonly [name: string, html: string])[];

beforeAll(async () => {
  await demoBuilt();
  pages = filesIn(demoSite)
    .filter((name) => name.endsWith(".html"))
    .map((name) => [name, readFileSync(join(demoSite, name), "utf8")] as const);
});

test("html-validate has nothing to say of any page", async () => {
  const said: string[] = [];
  for (const [name, html] of pages) {
    const { results } = await validator.validateString(html, name);
    for (const { messages } of results) {
      said.push(...messages.map(({ ruleId, message }) => `${name}: ${ruleId}: ${message}`));
    }
  }
  expect(said).toEqual([]);
  expect(pages.length).toBeGreaterThan(300);
});

test("it would say something of a page that is wrong", async () => {
  const [, html = ""] = pages[0] ?? [];
  const broken = html.replace('<main id="main"', '<main id="main"><p><div></div></p').concat("<b>");
  const { errorCount } = await validator.validateString(broken);
  expect(errorCount).toBeGreaterThan(1);
});

test("a title is at most 70 characters, or the sheet's own and nothing else", () => {
  const long = pages.filter(([, html]) => {
    const tree = htmlTree(html);
    const text = (tag: string) => textOf(all(tree, (each) => each.tag === tag)[0] ?? tree).trim();
    return text("title").length > 70 && text("title") !== text("h1");
  });
  expect(long.map(([name]) => name)).toEqual([]);
});
