// Every figure of hours on every page leads to rows that add up to it, down to the entries.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import type { Edition } from "../../src/present/record/edition.ts";
import { journalFolder } from "../../src/read/files.ts";
import { readBuild } from "../../src/read/read-build.ts";
import { eventfulAnalysis, longAnalysis } from "../support/eventful-build.ts";
import { followFigures } from "../support/figures.ts";
import { renderedSite } from "../support/rendered-site.ts";
import { temporaryJournal } from "../support/temporary-journal.ts";

const rendered = (analysis: Analysis, edition: Edition) =>
  renderedSite({ analysis, diagnostics: analysis.diagnostics, pictures: new Map(), edition });

test("eventful private", async () => {
  const pages = await rendered(eventfulAnalysis(), "private");
  const followed = followFigures(pages);
  expect(followed.wrong).toEqual([]);
});
