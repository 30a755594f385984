// The mistakes that evenings are made of: each is named at its place, with what to type.

import { describe, expect, test } from "vitest";
import { entry, marchFile, readSmall } from "../support/temporary-journal.ts";

function first(lines: string, prose?: string) {
  const { diagnostics } = readSmall({ [marchFile]: entry(lines, prose) });
  const [found] = diagnostics;
  return {
    count: diagnostics.length,
    code: found?.code,
    at: found && `${found.span.line}:${found.span.column}`,
    under: found?.span.text.slice(found.span.column - 1, found.span.column - 1 + found.span.length),
    message: found?.message,
    label: found?.label,
    help: found?.help,
  };
}

describe("what the parser stumbles over is said in plain words", () => {
  test.each([
    [
      "a colon in a title",
      "title: Ribs: done",
      "a colon inside the text is taken for a second key",
      'put the text in quotes: `"Ribs: done"`',
    ],
    [
      "a tab",
      "sessions:\n\t- { kind: shop }",
      "a tab is used to indent",
      "indent with spaces, two for each level",
    ],
    [
      "a lone quote",
      'title: "Ribs done',
      "a quotation mark is opened and not closed",
      "close it on the same line",
    ],
    [
      "an at sign first",
      "title: @home",
      "a value cannot begin with `@`",
      'put it in quotes: `"@home"`',
    ],
    [
      "a percent sign first",
      "title: %50 done",
      "a value cannot begin with `%`",
      'put it in quotes: `"%50 done"`',
    ],
    [
      "an open bracket",
      "next: [one, two",
      "a bracket is opened and not closed",
      "close `{` with `}` and `[` with `]`",
    ],
    [
      "a drill behind a hash in a list",
      "next: [drill #30 holes]",
      "after a space, `#` begins a comment, and the rest of the line is lost",
      "write a drill as `No. 30`, or put the whole value in quotes",
    ],
  ])("%s", (_what, lines, message, help) => {
    const found = first(lines);
    expect(found.message).toBe(message);
    expect(found.help?.[0]).toBe(help);
    expect(found.code).toBe("not-yaml");
  });

  test("a drill behind a hash in a title would be lost, and is not", () => {
    const found = first("title: Ream to #30 today");
    expect(found).toMatchObject({ code: "comment-swallows-text", at: "3:15", under: " #30 today" });
  });

  test("a comment with a blank behind its hash is a comment", () => {
    expect(first("title: Ribs # still to do").count).toBe(0);
  });

  test("a key that stands twice", () => {
    expect(first("title: One\ntitle: Two")).toMatchObject({
      code: "duplicate-key",
      at: "4:1",
      message: "`title` stands twice in the same place",
    });
  });
});

describe("names", () => {
  test("an unknown key is offered the nearest known one", () => {
    expect(first("titel: Ribs")).toMatchObject({
      code: "unknown-key",
      at: "3:1",
      under: "titel",
      message: "an entry has no `titel`",
      label: "did you mean `title`?",
    });
  });

  test.each([
    [
      "assembly",
      "{ assembly: wnig, who: [ada], hours: '1:00', kind: shop }",
      "no assembly is called `wnig`",
      "did you mean `wing`?",
    ],
    [
      "person",
      "{ assembly: wing, who: [adda], hours: '1:00', kind: shop }",
      "no person is called `adda`",
      "did you mean `ada`?",
    ],
    [
      "step",
      "{ assembly: spar, step: W-9, who: [ada], hours: '1:00', kind: shop }",
      "no step is called `W-9`",
      "did you mean `W-1`?",
    ],
    [
      "kind",
      "{ assembly: wing, who: [ada], hours: '1:00', kind: asemble }",
      "`asemble` is not a kind of work",
      "did you mean `assemble`?",
    ],
    [
      "stage",
      "{ assembly: wing, who: [ada], hours: '1:00', kind: shop, stage: rivetted }",
      "`rivetted` is not a stage",
      "did you mean `riveted`?",
    ],
    [
      "lot",
      "{ assembly: wing, who: [ada], hours: '1:00', kind: shop, lots: [sealant-2] }",
      "no lot is called `sealant-2`",
      "did you mean `sealant-1`?",
    ],
  ])("%s", (_what, session, message, label) => {
    expect(first(`sessions:\n  - ${session}`)).toMatchObject({ count: 1, message, label });
  });

  test("a step on another assembly", () => {
    const found = first(
      "sessions:\n  - { assembly: tail, step: W-1, who: [ada], hours: '1:00', kind: shop }",
    );
    expect(found).toMatchObject({ at: "4:29", message: "step `W-1` is not on `tail`" });
  });

  test("a look that the step does not ask for", () => {
    const found = first(
      "inspections:\n  - { step: W-1, look: hols, by: jon, open: all, findings: none, result: clear }",
    );
    expect(found).toMatchObject({ message: "step `W-1` asks for no look called `hols`" });
  });
});

describe("dates, times and durations", () => {
  const session = (time: string) =>
    `sessions:\n  - { assembly: wing, who: [ada], kind: shop, ${time} }`;

  test.each([
    ["hours: 1.25", "not-a-duration", 'write `"1:15"`'],
    [
      "hours: 90min",
      "not-a-duration",
      'write hours, a colon and two digits of minutes, as in `"1:15"`',
    ],
    [
      "from: 6.30pm, to: '19:00'",
      "not-a-time",
      'write hours and minutes on the 24-hour clock, as in `"18:40"`',
    ],
    ["from: 7.30, to: '19:00'", "not-a-time", 'write `"07:30"`'],
    [
      "from: '18:40'",
      "missing-key",
      'write `from: "18:40", to: "21:05"`, or `hours: "1:15"` alone',
    ],
    ["note: x", "missing-key", 'write `hours: "1:15"`, or `from: "18:40", to: "21:05"`'],
    [
      "from: '18:40', to: '18:40'",
      "not-a-duration",
      "write the time at which work ended; a time before `from` is on the next day",
    ],
    [
      "from: '18:40', to: '19:40', hours: '2:00'",
      "not-a-duration",
      "leave `hours` out, or correct one of the three",
    ],
  ])("%s", (time, code, help) => {
    const found = first(session(time));
    expect(found).toMatchObject({ count: 1, code });
    expect(found.help?.[0]).toBe(help);
  });

  test.each([
    ["2026-02-29", "write year, month and day, as in `2026-03-14`; the day has to exist"],
    ["2026-3-9", "write `2026-03-09`"],
    ["14.03.2026", "write year, month and day, as in `2026-03-14`; the day has to exist"],
  ])("date %s", (date, help) => {
    const { diagnostics } = readSmall({ [marchFile]: `---\ndate: ${date}\n---\nText.\n` });
    expect(diagnostics.map(({ code }) => code)).toEqual(["not-a-date"]);
    expect(diagnostics[0]?.help).toEqual([help]);
  });

  test("a date that differs from the file's name, and two entries of one day", () => {
    const { diagnostics } = readSmall({
      "days/2026-03-13.md": entry(""),
      "days/2026/2026-03-13.md": entry(""),
      "days/yesterday.md": entry(""),
    });
    expect(diagnostics.map(({ code }) => code).sort()).toEqual([
      "date-differs-from-file-name",
      "duplicate-day",
      "not-a-date",
    ]);
  });
});

describe("quantities", () => {
  const reading = (value: string) => `readings:\n  - { what: edge, rule: edge, ${value} }`;

  test.each([
    ["value: 0.19", "not-a-quantity", "4:38"],
    ["value: 0.25 inn", "not-a-quantity", "4:43"],
    ["value: 31 lbf·in", "wrong-dimension", "4:38"],
    ["values: [0.25, 0.26, O.27] in", "not-a-quantity", "4:52"],
  ])("%s", (value, code, at) => {
    const found = first(reading(value));
    expect(found).toMatchObject({ count: 1, code });
    expect(found.at).toBe(at);
  });

  test("values are kept as typed, each with its place", () => {
    const { build } = readSmall({ [marchFile]: entry(reading("values: [0.2500, 1/4, .26] in")) });
    const values = build?.days[0]?.readings[0]?.values ?? [];
    expect(values.map(({ quantity, span }) => [quantity.typed, span.column])).toEqual([
      ["0.2500 in", 40],
      ["1/4 in", 48],
      [".26 in", 53],
    ]);
  });

  test("a reading without a value, and one with both forms", () => {
    expect(first(reading("at: here"))).toMatchObject({ code: "missing-key" });
    expect(first(reading("value: 0.25 in, values: [0.25] in"))).toMatchObject({
      code: "unknown-key",
    });
  });
});

test("all problems of a journal are reported in one run, in order of place", () => {
  const { diagnostics } = readSmall({
    [marchFile]: entry("titel: x\nplase: y\nsessions:\n  - { kind: shop }\n"),
    "days/2026-03-15.md": "no fence",
    "lots.yaml": "lots:\n  - { id: a b, title: x, material: y }\n",
  });
  expect(diagnostics.map(({ span, code }) => `${span.file.slice(8)}:${span.line} ${code}`)).toEqual(
    [
      "days/2026-03-14.md:3 unknown-key",
      "days/2026-03-14.md:4 unknown-key",
      "days/2026-03-14.md:6 missing-key",
      "days/2026-03-14.md:6 missing-key",
      "days/2026-03-15.md:1 front-matter-missing",
      "lots.yaml:2 not-an-id",
    ],
  );
});

test("an entry with neither prose nor sessions is named", () => {
  expect(first("place: shop", "\n  \n")).toMatchObject({ code: "empty-day", at: "2:7" });
});

test("line ends of Windows and a byte order mark change no place", () => {
  const text = `\ufeff${entry("titel: Ribs")}`.replaceAll("\n", "\r\n");
  const { diagnostics } = readSmall({ [marchFile]: text });
  expect(diagnostics[0]).toMatchObject({
    code: "unknown-key",
    span: { line: 3, column: 1, text: "titel: Ribs" },
  });
});

test("a decimal comma inside braces is named where it cuts the value in two", () => {
  const { diagnostics } = readSmall({
    [marchFile]: entry("readings:\n  - { what: edge, rule: edge, value: 0,25 in }"),
  });
  const strayed = diagnostics.find(({ code }) => code === "unknown-key");
  expect(strayed?.message).toBe("a reading has no `25 in`");
  expect(strayed?.help).toEqual([
    "inside `{ … }` a comma ends a value: write decimals with a point, as in `0.25 in`",
  ]);
});
