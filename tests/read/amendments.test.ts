// A correction to an earlier day: the value that counts is the new one, and the old one stays to
// be read.

import { describe, expect, test } from "vitest";
import { pointed, readSmall } from "../support/temporary-journal.ts";

const marchTwo = `---
date: 2026-03-02
title: Spar drilled
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: fabricate }
  - { assembly: spar, step: W-1, who: [ada], hours: "1:15", kind: fabricate }
readings:
  - { step: W-1, what: edge distance, rule: edge, with: caliper, values: [0.26, 0.24] in }
---
Holes.
`;

function amended(lines: string, days: Readonly<Record<string, string>> = {}) {
  const { build, diagnostics } = readSmall({
    "days/2026-03-02.md": marchTwo,
    "days/2026-03-05.md": `---\ndate: 2026-03-05\namendments:\n${lines}\n---\nPut right.\n`,
    ...days,
  });
  return {
    day: build?.days[0],
    amendments: (build?.days ?? []).flatMap((day) => day.amendments),
    found: pointed(diagnostics),
    diagnostics,
  };
}

const hours = `  - { day: 2026-03-02, field: "sessions[2].hours", was: "1:15", now: "1:45", why: forgot the clean-up }`;

describe("a value is replaced", () => {
  test("and both values stand with the day that corrects", () => {
    const { day, amendments, found } = amended(hours);
    expect(found).toEqual([]);
    expect(day?.sessions.map(({ minutes }) => minutes)).toEqual([60, 105]);
    expect(amendments).toEqual([
      {
        date: "2026-03-05",
        day: "2026-03-02",
        field: "sessions[2].hours",
        was: "1:15",
        now: "1:45",
        why: "forgot the clean-up",
        span: expect.objectContaining({ line: 4, file: "journal/days/2026-03-05.md" }),
      },
    ]);
  });

  test.each([
    ["title", "was: Spar drilled, now: Spar and ribs drilled", { title: "Spar and ribs drilled" }],
    [
      "readings[1].values",
      'was: "[0.26, 0.24] in", now: "[0.26, 0.25] in"',
      {
        readings: [
          { values: [{ quantity: { typed: "0.26 in" } }, { quantity: { typed: "0.25 in" } }] },
        ],
      },
    ],
    [
      "sessions[1].who",
      "was: [ada], now: [ada, jon]",
      { sessions: [{ who: [{ person: "ada" }, { person: "jon" }] }, {}] },
    ],
    ["sessions[1].kind", "was: fabricate, now: study", { sessions: [{ kind: "study" }, {}] }],
    [
      "sessions[1].note",
      'was: "", now: the other side too',
      { sessions: [{ note: "the other side too" }, {}] },
    ],
    ["place", 'was: "", now: hangar', { place: "hangar" }],
  ])("%s", (field, values, expected) => {
    const { day, found } = amended(
      `  - { day: 2026-03-02, field: "${field}", ${values}, why: so }`,
    );
    expect(found).toEqual([]);
    expect(day).toMatchObject(expected);
  });

  test("twice, the later correction naming what the earlier one put there", () => {
    const again = hours.replace('"1:15"', '"1:45"').replace('now: "1:45"', 'now: "1:30"');
    const { day, amendments, found } = amended(hours, {
      "days/2026-03-06.md": `---\ndate: 2026-03-06\namendments:\n${again}\n---\nAgain.\n`,
    });
    expect(found).toEqual([]);
    expect(day?.sessions[1]?.minutes).toBe(90);
    expect(amendments.map(({ date, was, now }) => [date, was, now])).toEqual([
      ["2026-03-05", "1:15", "1:45"],
      ["2026-03-06", "1:45", "1:30"],
    ]);
  });

  test("by something that is checked like any other value, at the place where it was typed", () => {
    const { found, day } = amended(hours.replace("1:45", "1:4"));
    expect(found).toEqual(['days/2026-03-05.md:4 not-a-duration "1:4"']);
    expect(day?.sessions).toHaveLength(1);
  });

  test("by a name that is not declared, which is found too", () => {
    const { found } = amended(
      '  - { day: 2026-03-02, field: "sessions[1].who", was: [ada], now: [adda], why: so }',
    );
    expect(found).toEqual(["days/2026-03-05.md:4 unknown-name adda"]);
  });
});

describe("what does not match", () => {
  test.each([
    [
      "another value",
      hours.replace('"1:15"', '"1:10"'),
      '"1:10"',
      "`sessions[2].hours` of 2026-03-02 is not `1:10`",
    ],
    [
      "a blank more",
      hours.replace('"1:15"', '" 1:15"'),
      '" 1:15"',
      "`sessions[2].hours` of 2026-03-02 is not ` 1:15`",
    ],
    [
      "an item too far",
      hours.replace("[2]", "[3]"),
      '"1:15"',
      "`sessions[3].hours` of 2026-03-02 is not `1:15`",
    ],
    [
      "an item before the first",
      hours.replace("[2]", "[0]"),
      '"1:15"',
      "`sessions[0].hours` of 2026-03-02 is not `1:15`",
    ],
    [
      "no path",
      hours.replace("sessions[2].hours", "sessions 2"),
      '"sessions 2"',
      "`sessions 2` does not name a value of an entry",
    ],
    [
      "a day without an entry",
      hours.replace("03-02", "03-01"),
      "2026-03-01",
      "there is no entry for 2026-03-01",
    ],
    [
      "the day itself",
      hours.replace("03-02", "03-05"),
      "2026-03-05",
      "an amendment corrects an earlier day, and 2026-03-05 is not before 2026-03-05",
    ],
    [
      "nothing there",
      '  - { day: 2026-03-02, field: "conditions.humidity", was: 50 %, now: 48 %, why: so }',
      "50 %",
      "`conditions.humidity` of 2026-03-02 is not `50 %`",
    ],
  ])("%s", (_what, lines, under, message) => {
    const { day, amendments, diagnostics, found } = amended(lines);
    expect(found).toEqual([`days/2026-03-05.md:4 amendment-does-not-match ${under}`]);
    expect(diagnostics[0]?.message).toBe(message);
    // What was typed first stands as it was.
    expect(day?.sessions.map(({ minutes }) => minutes)).toEqual([60, 75]);
    expect(amendments).toEqual([]);
  });

  test.each(["date", "draft", "amendments"])("what makes an entry another one: `%s`", (field) => {
    const lines = `  - { day: 2026-03-02, field: ${field}, was: "", now: x, why: so }`;
    expect(amended(lines).found).toEqual([
      `days/2026-03-05.md:4 amendment-does-not-match ${field}`,
    ]);
  });

  test("a draft, and from a draft nothing is corrected", () => {
    const draft = (text: string) => text.replace("\n---\n", "\ndraft: true\n---\n");
    const corrected = amended(hours, { "days/2026-03-02.md": draft(marchTwo) });
    expect(corrected.found).toEqual(["days/2026-03-05.md:4 amendment-does-not-match 2026-03-02"]);
    const { day, amendments, found } = amended(`${hours}\ndraft: true`);
    expect(found).toEqual([]);
    expect(day?.sessions[1]?.minutes).toBe(75);
    expect(amendments).toEqual([]);
  });

  test("a correction of a later day", () => {
    const { found } = amended(hours.replace("03-02", "03-09"), {
      "days/2026-03-09.md": marchTwo.replace("2026-03-02", "2026-03-09"),
    });
    expect(found).toEqual(["days/2026-03-05.md:4 amendment-does-not-match 2026-03-09"]);
  });

  test("what stands there is said with its place", () => {
    const { diagnostics } = amended(hours.replace('"1:15"', '"1:10"'));
    expect(diagnostics[0]?.notes).toEqual(["it is `1:15`, at journal/days/2026-03-02.md:6"]);
  });

  test("an amendment with a missing key is one fault, and changes nothing", () => {
    const { found, day } = amended(hours.replace(", why: forgot the clean-up", ""));
    expect(found).toEqual([expect.stringMatching(/^days\/2026-03-05\.md:4 missing-key \{ day/)]);
    expect(day?.sessions[1]?.minutes).toBe(75);
  });
});

describe("a reading that is corrected", () => {
  const reading = (lines: string) => amended(lines).amendments[0]?.reading;
  const amounts = (lines: string) =>
    reading(lines)?.values.map(({ typed, unit }) => [typed, unit.symbol]);

  test("is known by its id, with the values that it had", () => {
    const lines = `  - { day: 2026-03-02, field: "readings[1].values", was: "[0.26, 0.24] in", now: "[0.26, 0.25] in", why: slip }`;
    expect(reading(lines)?.id).toBe("2026-03-02.r1");
    expect(amounts(lines)).toEqual([
      ["0.26 in", "in"],
      ["0.24 in", "in"],
    ]);
  });

  test("by an id that another amendment gave it", () => {
    const lines = `  - { day: 2026-03-02, field: "readings[1].values", was: "[0.26, 0.24] in", now: "[0.26, 0.25] in", why: slip }
  - { day: 2026-03-02, field: "readings[1].id", was: "", now: E-1, why: named }`;
    expect(reading(lines)?.id).toBe("E-1");
  });

  test("whole, value by value, or in something else than a value", () => {
    const old =
      "{ step: W-1, what: edge distance, rule: edge, with: caliper, values: [0.26, 0.24] in }";
    const whole = `  - { day: 2026-03-02, field: "readings[1]", was: ${old}, now: { step: W-1, what: edge distance, rule: edge, value: 0.25 in }, why: slip }`;
    expect(amounts(whole)).toEqual([
      ["0.26 in", "in"],
      ["0.24 in", "in"],
    ]);
    const place = `  - { day: 2026-03-02, field: "readings[1].at", was: "", now: rib 4, why: left out }`;
    expect(reading(place)).toEqual({ id: "2026-03-02.r1", values: [] });
    expect(amended(hours).amendments[0]).not.toHaveProperty("reading");
  });
});

test("an old value that was no quantity is shown as text alone", () => {
  const { build } = readSmall({
    "days/2026-03-02.md": marchTwo.replace("values: [0.26, 0.24] in", "value: 0.26"),
    "days/2026-03-05.md": `---\ndate: 2026-03-05\namendments:\n  - { day: 2026-03-02, field: "readings[1].value", was: 0.26, now: 0.26 in, why: unit }\n---\nRight.\n`,
  });
  expect(build?.days[1]?.amendments[0]).toMatchObject({
    was: "0.26",
    reading: { id: "2026-03-02.r1", values: [] },
  });
});
