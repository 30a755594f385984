import { expect, test } from "vitest";
import { foundBy, messagesOf } from "../../support/found-by.ts";
import { cure, day, lot, register, session, smallBuild } from "../../support/small-build.ts";

const extensions = [{ on: "2026-03-20", until: "2026-06-30", why: "update test passed" }];

function used(date: string, hidden = false) {
  const lots = register(
    lot({ expires: "2026-03-15", extensions, private: hidden }),
    lot({ id: "rivets" }),
  );
  const sessions = [session({ date, lots: ["sealant-1", "rivets"] })];
  return smallBuild({ lots, days: [day({ date, sessions })] });
}

test.each([
  ["2026-03-15", 0], // the last day is still good
  ["2026-03-16", 1],
  ["2026-03-19", 1],
  ["2026-03-20", 0], // extended from this day on
  ["2026-06-30", 0],
  ["2026-07-01", 1],
])("used on %s: %i", (date, count) => {
  expect(messagesOf("expired-lot", used(date))).toHaveLength(count);
});

test("an extension given after the use is noted and does not heal it", () => {
  const [one] = foundBy("expired-lot", used("2026-03-16"));
  expect(one).toMatchObject({
    severity: "finding",
    message: "lot `sealant-1` was used on 2026-03-16, after its last day, 2026-03-15",
    notes: [
      "Tank sealant, lot 1: content/lots.yaml:2",
      "extended on 2026-03-20 until 2026-06-30, after it was used",
    ],
  });
  expect(one).not.toHaveProperty("private");
  expect(foundBy("expired-lot", used("2026-07-01"))[0]?.notes).toHaveLength(1);
});

test("a private lot keeps its finding private", () => {
  expect(foundBy("expired-lot", used("2026-03-16", true))[0]?.private).toBe(true);
});

test("a cure uses its lot too", () => {
  const lots = register(lot({ expires: "2026-03-13" }));
  const days = [day({ cures: [cure({ lot: "sealant-1" })] })];
  expect(messagesOf("expired-lot", smallBuild({ lots, days }))).toHaveLength(1);
});
