// The law of a new entry: what is written reads back as what was given.

import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { workKinds } from "../../../src/model/session.ts";
import { type JournalFolder, journalFolder } from "../../../src/read/files.ts";
import { readBuild } from "../../../src/read/read-build.ts";
import { entryText, type NewEntry } from "../../../src/write/entries/entry-text.ts";
import { temporaryJournal } from "../../support/temporary-journal.ts";

const { path, remove } = temporaryJournal({});
const folder = journalFolder(path) as JournalFolder;
afterAll(remove);

// The entry as the reader understands it, in the words it was given in.
function readBack(text: string) {
  const { build, diagnostics } = readBuild(folder, [{ path: "days/2026/2026-03-14.md", text }]);
  const [day] = build?.days ?? [];
  return {
    faults: diagnostics.map(({ code, message }) => `${code}: ${message}`),
    entry: day && {
      date: day.date,
      ...(day.written ? { written: day.written.local } : {}),
      title: day.title,
      sessions: day.sessions.map(({ assembly, step, who, from, to, minutes, kind, stage }) => ({
        assembly,
        ...(step === undefined ? {} : { step }),
        who: who.map(({ person }) => person),
        ...(from && to
          ? { from: from.local.slice(11), to: to.local.slice(11) }
          : { hours: `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}` }),
        kind,
        ...(stage === undefined ? {} : { stage }),
      })),
      next: day.next,
      prose: day.prose,
    },
  };
}

const two = (value: number) => String(value).padStart(2, "0");
const clock = fc
  .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
  .map(([hour, minute]) => `${two(hour)}:${two(minute)}`);
const time = fc.oneof(
  fc.tuple(clock, clock).map(([from, to]) => (from === to ? { hours: "0:01" } : { from, to })),
  fc.integer({ min: 1, max: 1440 }).map((minutes) => ({
    hours: `${Math.floor(minutes / 60)}:${two(minutes % 60)}`,
  })),
);
const place = fc.constantFrom(
  { assembly: "wing" },
  { assembly: "spar", step: "W-1" },
  { assembly: "spar", step: "W-2", stage: "laid out" },
  { assembly: "tail" },
);
const session = fc
  .record({
    place,
    who: fc.constantFrom(["ada"], ["ada", "jon"]),
    time,
    kind: fc.constantFrom(...workKinds),
  })
  .map(({ place, who, time, kind }) => ({ ...place, who, ...time, kind }));

// What trips readers of YAML, among ordinary and extraordinary words.
const traps = fc.constantFrom(
  ...[
    "Ribs: done",
    "#30 holes",
    "ream to #30",
    "- a",
    "? b",
    "it's 3/32\"",
    "null",
    "true",
    "1.30",
  ],
  ...[
    "0x1F",
    "18:40 began",
    "values: [0.141, 0.140] in",
    "say values: [1] in",
    "{{ x }}",
    "{a: b}",
  ],
  ...[
    "[one, two",
    "%50",
    "@home",
    "`tick`",
    "&a",
    "*b",
    "!c",
    "---",
    "...",
    "a --- b",
    "~",
    "=",
    "<<",
  ],
  ...[
    "__proto__: x",
    "back\\slash",
    "tab\there",
    "翼 done",
    "2026-03-14",
    "end:",
    "| pipe",
    "> fold",
  ],
);
// A line of text without blanks at its ends; control signs cannot be typed at a prompt.
const line = fc.oneof(
  traps,
  fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 60 })
    .map((text) => text.replace(/[\p{Cc}\u2028\u2029]/gu, "").trim())
    .filter((text) => text !== ""),
);
const prose = fc
  .array(fc.oneof(line, fc.constantFrom("", "---", "    code", "---js")), { maxLength: 5 })
  .map((lines) => lines.join("\n"));

const anyEntry: fc.Arbitrary<NewEntry> = fc.record({
  date: fc.constant("2026-03-14"),
  written: fc.constant("2026-03-14 21:40"),
  title: line,
  sessions: fc.array(session, { minLength: 1, maxLength: 3 }),
  next: fc.array(line, { maxLength: 3 }),
  prose,
});

describe("what is written reads back", () => {
  test("as what was given, whatever the words", () => {
    fc.assert(
      fc.property(anyEntry, (given) => {
        const { faults, entry } = readBack(entryText(given));
        expect(faults).toEqual([]);
        const words = given.prose.trim();
        expect(entry).toEqual({ ...given, prose: words === "" ? "" : `${words}\n` });
      }),
      { numRuns: 120 },
    );
  });

  test("in two lines and more, where a title has them", () => {
    const given = { title: "one\ntwo\n\n  three", next: ["a\nb"] };
    const text = entryText({ date: "2026-03-14", sessions: [], prose: "x", ...given });
    expect(readBack(text)).toMatchObject({ faults: [], entry: given });
  });

  test("without a session, when there are words", () => {
    const text = entryText({ date: "2026-03-14", sessions: [], next: [], prose: "Rain." });
    expect(text).toBe("---\ndate: 2026-03-14\n---\nRain.\n");
    expect(readBack(text).faults).toEqual([]);
  });
});

test("an entry looks as if it had been typed", () => {
  const text = entryText({
    date: "2026-03-14",
    prose: "\nThe last rivets went in.\n\n",
    next: ["drill: No. 30"],
    sessions: [
      { assembly: "spar", step: "W-1", who: ["ada", "jon"], hours: "1:15", kind: "fabricate" },
      { assembly: "wing", who: ["ada"], from: "18:40", to: "21:05", kind: "assemble" },
    ],
    title: "Spar drilled",
    written: "2026-03-14 21:40",
  });
  expect(text).toBe(`---
date: 2026-03-14
written: 2026-03-14 21:40
title: Spar drilled
sessions:
  - { assembly: spar, step: W-1, who: [ada, jon], hours: "1:15", kind: fabricate }
  - { assembly: wing, who: [ada], from: "18:40", to: "21:05", kind: assemble }
next:
  - "drill: No. 30"
---
The last rivets went in.
`);
});
