import { describe, expect, test } from "vitest";
import { analyze } from "../../src/compute/analyze.ts";
import { type SealRefusal, sealing } from "../../src/compute/sealing.ts";
import { asOf, day, photo, seal, session, smallBuild } from "../support/small-build.ts";

const days = [
  day({
    date: "2026-02-10",
    file: "content/days/2026-02-10.md",
    sessions: [session({ date: "2026-02-10", minutes: 50 })],
  }),
  day({
    date: "2026-03-31",
    file: "content/days/2026-03-31.md",
    sessions: [session({ date: "2026-03-31", minutes: 30, who: ["ada", "jon"] })],
    photos: [photo({ file: "b.jpg" }), photo({ file: "a.jpg" }), photo({ file: "b.jpg" })],
  }),
  day({
    date: "2026-03-02",
    file: "content/days/2026-03-02.md",
    sessions: [session({ date: "2026-03-02", kind: "shop", minutes: 20 })],
  }),
];
const february = seal({ month: "2026-02", inMonth: { build: 50, apart: 0 } });

const of = (month: string, judged: string, seals = [february]) =>
  sealing(analyze(smallBuild({ days, seals }), asOf(judged)), month);

test("a month over, all before it sealed: its files, sorted and each once, and its totals", () => {
  expect(of("2026-03", "2026-04-01")).toEqual({
    month: "2026-03",
    designation: "SB-1",
    serial: "0001",
    previous: { month: "2026-02", digest: february.digest },
    inMonth: { build: 60, apart: 20 },
    toDate: { build: 110, apart: 20 },
    entries: ["days/2026-03-02.md", "days/2026-03-31.md"],
    photos: ["photos/a.jpg", "photos/b.jpg"],
  });
});

test("the first seal has none before it", () => {
  expect(of("2026-02", "2026-03-01", [])).not.toHaveProperty("previous");
});

describe("refused", () => {
  test.each([
    ["2026-03", "2026-03-31", [february], "2026-03 is not over"],
    ["2026-04", "2026-03-31", [february], "2026-04 is not over"],
    ["2026-03", "2026-04-01", [], "2026-02 has entries and is not sealed"],
    ["2026-02", "2026-04-01", [february], `2026-02 is sealed already: ${"202602aaaaaa"}`],
    ["2026-01", "2026-04-01", [], "there is no entry in 2026-01"],
    ["2026-02", "2026-04-01", [seal({ month: "2026-03" })], "2026-03 is sealed, and 2026-02 is"],
  ])("%s on %s", (month, judged, seals, why) => {
    expect((of(month, judged, seals) as SealRefusal).why).toContain(why);
  });
});
