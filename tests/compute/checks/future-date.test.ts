import { expect, test } from "vitest";
import { foundBy, messagesOf } from "../../support/found-by.ts";
import { day, moment, smallBuild, span } from "../../support/small-build.ts";
import { readSmall } from "../../support/temporary-journal.ts";

test("the day of judgement itself has come, the next has not", () => {
  const build = smallBuild({ days: [day()] });
  expect(messagesOf("future-date", build, "2026-03-14")).toEqual([]);
  expect(messagesOf("future-date", build, "2026-03-13")).toEqual([
    "the entry is dated 2026-03-14, after 2026-03-13",
  ]);
});

test("written before the day of judgement is over, or not", () => {
  const written = (local: string) =>
    smallBuild({
      days: [day({ written: moment(local), writtenSpan: span({ line: 3, column: 10 }) })],
    });
  expect(messagesOf("future-date", written("2026-03-15 23:59"), "2026-03-15")).toEqual([]);
  const [one] = foundBy("future-date", written("2026-03-16 00:00"), "2026-03-15");
  expect(one?.message).toBe(
    "the entry for 2026-03-14 says that it was written at 2026-03-16 00:00, after 2026-03-15",
  );
  expect(one?.span.line).toBe(3);
  const unplaced = smallBuild({ days: [day({ written: moment("2026-03-16 00:00") })] });
  expect(foundBy("future-date", unplaced, "2026-03-15")[0]?.span.line).toBe(2);
});

test("an entry in the future is reported once, however late it says it was written", () => {
  const build = smallBuild({ days: [day({ written: moment("2026-03-14 21:00") })] });
  expect(messagesOf("future-date", build, "2026-03-01")).toHaveLength(1);
});

test("a weighing, a projection or a change that has not happened yet", () => {
  const { build } = readSmall({
    "balance.yaml": `datum: firewall
empty-weight: { oil: in, unusable-fuel: in }
weighings:
  - { id: W-1, on: 2026-04-01, title: First, points: [{ at: all, reads: 9 lb, arm: 1 in }] }
  - { id: W-2, on: 2026-03-01, title: Second, points: [{ at: all, reads: 9 lb, arm: 1 in }] }
projection: { on: 2026-05-01, items: [{ what: wings, weight: 9 lb, arm: 1 in }] }
changes:
  - { id: C-1, on: 2026-06-01, title: Radio, in: [{ what: radio, weight: 9 lb, arm: 1 in }] }
`,
  });
  if (!build) throw new Error("it cannot be read");
  const messages = foundBy("future-date", build, "2026-03-14").map(({ message }) => message);
  expect(messages).toEqual([
    "weighing `W-1` is dated 2026-04-01, after 2026-03-14",
    "the projection of the empty weight is dated 2026-05-01, after 2026-03-14",
    "change `C-1` is dated 2026-06-01, after 2026-03-14",
  ]);
});
