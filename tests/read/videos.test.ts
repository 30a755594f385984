import { describe, expect, test } from "vitest";
import { entry, marchFile, places, readSmall } from "../support/temporary-journal.ts";

const photo = "photos: [{ file: a.jpg, caption: A }]\n";

function read(videos: string, more: Readonly<Record<string, string>> = {}) {
  const { build, diagnostics } = readSmall({
    [marchFile]: entry(`${photo}videos:\n${videos}`),
    "photos/a.jpg": "a",
    ...more,
  });
  return { videos: build?.days[0]?.videos ?? [], diagnostics };
}

test("a recording elsewhere, with its picture, its length and its times", () => {
  const { videos, diagnostics } = read(
    `  - { title: Row A, link: "https://videos.example/a?x=1", picture: a.jpg, step: W-1, length: "1:02:03", times: [{ at: "0:00", what: jig }, { at: "61:05", what: rivet, link: "https://videos.example/a?t=3665" }] }\n`,
  );
  expect(diagnostics).toEqual([]);
  expect(videos).toMatchObject([
    {
      title: "Row A",
      source: { kind: "link", link: "https://videos.example/a?x=1" },
      picture: "a.jpg",
      step: "W-1",
      length: { seconds: 3723, typed: "1:02:03" },
      times: [
        { at: { seconds: 0, typed: "0:00" }, what: "jig" },
        {
          at: { seconds: 3665, typed: "61:05" },
          what: "rivet",
          link: "https://videos.example/a?t=3665",
        },
      ],
      private: false,
    },
  ]);
});

test("a file is not published unless asked for, and need not lie in the journal then", () => {
  const { videos, diagnostics } = read("  - { title: Row A, file: tapes/a.mp4 }\n");
  expect(diagnostics).toEqual([]);
  expect(videos[0]?.source).toEqual({ kind: "file", file: "tapes/a.mp4", host: false });
  const asked = read("  - { title: Row A, file: a.mp4, host: true }\n", { "videos/a.mp4": "" });
  expect(asked.diagnostics).toEqual([]);
  expect(asked.videos[0]?.source).toEqual({ kind: "file", file: "a.mp4", host: true });
});

describe("faults", () => {
  test.each([
    ["{ title: T }", "missing-key"],
    ["{ link: https://videos.example/a }", "missing-key"],
    ["{ title: T, link: https://videos.example/a, file: a.mp4 }", "wrong-shape"],
    ["{ title: T, link: https://videos.example/a, host: true }", "wrong-shape"],
    ["{ title: T, link: ftp://videos.example/a }", "not-a-link"],
    ['{ title: T, link: "javascript:alert(1)" }', "not-a-link"],
    ["{ title: T, link: //videos.example/a }", "not-a-link"],
    ["{ title: T, file: a.mp4, host: yes }", "not-a-choice"],
    ["{ title: T, file: ../a.mp4, host: true }", "path-leaves-journal"],
    ["{ title: T, file: a.mp4, host: true }", "missing-video"],
    ["{ title: T, link: https://videos.example/a, picture: b.jpg }", "unknown-name"],
    ["{ title: T, link: https://videos.example/a, step: W-9 }", "unknown-name"],
    ["{ title: T, link: https://videos.example/a, lenght: 1:00 }", "unknown-key"],
    ['{ title: T, file: a.mp4, length: "1:0" }', "not-a-time"],
    ['{ title: T, file: a.mp4, times: [{ at: "1:60", what: x }] }', "not-a-time"],
    [
      '{ title: T, file: a.mp4, times: [{ at: "0:09", what: x }, { at: "0:09", what: y }] }',
      "not-a-time",
    ],
    ['{ title: T, file: a.mp4, length: "1:00", times: [{ at: "1:01", what: x }] }', "not-a-time"],
    ['{ title: T, file: a.mp4, times: [{ at: "0:09" }] }', "missing-key"],
    [
      '{ title: T, file: a.mp4, times: [{ at: "0:09", what: x, link: https://videos.example/a }] }',
      "wrong-shape",
    ],
  ])("%s: %s", (typed, code) => {
    const { diagnostics } = read(`  - ${typed}\n`);
    expect(diagnostics.map((each) => each.code)).toEqual([code]);
    expect(places(diagnostics)[0]).toMatch(/^days\/2026-03-14\.md:5:/);
  });
});
