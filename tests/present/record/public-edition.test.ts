import { describe, expect, test } from "vitest";
import { editionNote, leftOutText } from "../../../src/present/record/edition.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { eventfulAnalysis, privateWords } from "../../support/eventful-build.ts";

const analysis = eventfulAnalysis();
const edited = publicEdition(analysis, analysis.diagnostics);

describe("the public edition", () => {
  test("counts what it leaves out", () => {
    expect(edited.leftOut).toEqual({
      days: 1,
      sessionNotes: 2,
      names: 1,
      readings: 1,
      lots: 1,
      photos: 1,
      videos: 0,
      deviations: 1,
      loadingCases: 0,
      invoices: 0,
      otherRecords: 1,
      amendments: 1,
      findingWords: analysis.diagnostics.filter((each) => each.private).length,
      omittedFiles: 1,
    });
    expect(leftOutText(edited.leftOut)).toContain(
      "1 day shown by its hours alone, 2 session notes",
    );
  });

  test("has no private word left anywhere in it, however deep", () => {
    const seen = new Set<unknown>();
    const texts: string[] = [];
    const visit = (value: unknown) => {
      if (typeof value === "string") texts.push(value);
      if (typeof value === "bigint" || typeof value !== "object" || value === null) return;
      if (seen.has(value)) return;
      seen.add(value);
      if (value instanceof Map) {
        for (const [key, each] of value) {
          visit(key);
          visit(each);
        }
      } else {
        for (const each of Object.values(value)) visit(each);
      }
    };
    visit(edited);
    const all = texts.join("\n");
    for (const word of privateWords) expect(all).not.toContain(word);
    expect(texts).not.toContain("jon");
  });

  test("keeps one object one object: a line's session is the day's session", () => {
    const sessions = new Set(edited.analysis.build.days.flatMap((day) => day.sessions));
    for (const { session } of edited.analysis.hours.lines) expect(sessions.has(session)).toBe(true);
    const cures = new Set(edited.analysis.build.days.flatMap((day) => day.cures));
    for (const { cure } of edited.analysis.cures) expect(cures.has(cure)).toBe(true);
  });

  test("keeps every total", () => {
    const { hours } = edited.analysis;
    expect(hours.total).toEqual(analysis.hours.total);
    expect([...hours.byPerson.values()]).toEqual([...analysis.hours.byPerson.values()]);
    expect(hours.byDate).toEqual(analysis.hours.byDate);
    expect(hours.lines.length).toBe(analysis.hours.lines.length);
  });

  test("keeps the corrections of what makes up the hours, without what is private in them", () => {
    const amendments = edited.analysis.build.days.flatMap((day) => day.amendments);
    expect(amendments.map(({ field, was, now, why }) => ({ field, was, now, why }))).toEqual([
      { field: "sessions[2].hours", was: "1:15", now: "1:45", why: "forgot the clean-up" },
      {
        field: "sessions[1].who",
        was: "[ada, person-2]",
        now: "[ada]",
        why: "written on a private day",
      },
      {
        field: "sessions[1].lots",
        was: "[sealant-1]",
        now: "[sealant-1, private]",
        why: "written on a private day",
      },
    ]);
  });
});

test("the private edition is the analysis itself", () => {
  const whole = privateEdition(analysis, analysis.diagnostics);
  expect(whole.analysis).toBe(analysis);
  expect(leftOutText(whole.leftOut)).toBe("");
  expect(editionNote(whole)).toMatch(/^Private edition/);
});
