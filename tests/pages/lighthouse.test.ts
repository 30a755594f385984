// What Lighthouse says of three pages, its performance excepted: on a busy machine that score is
// the machine's. `npm run lighthouse` measures it, with the machine at rest.

import { afterAll, beforeAll, expect, test } from "vitest";
import { hostDemo } from "../support/demo-site.ts";
import { judged } from "../support/lighthouse.ts";

const pages = ["2026/03/index.html", "2026/03/14/index.html", "hours/index.html", "index.html"];

let host: { address: string; close: () => void };

beforeAll(async () => {
  host = await hostDemo();
});

afterAll(() => host?.close());

test("accessibility, best practices and search: 100 on timeline, day, hours and home", async () => {
  const answers = await judged(
    pages.map((page) => host.address + page),
    ["accessibility", "best-practices", "seo"],
  );
  expect(answers.map(({ scores, lacks }) => ({ scores, lacks }))).toEqual(
    pages.map(() => ({
      scores: { accessibility: 100, "best-practices": 100, seo: 100 },
      lacks: [],
    })),
  );
}, 180_000);
