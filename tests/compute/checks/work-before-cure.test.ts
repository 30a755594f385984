import { expect, test } from "vitest";
import { foundBy } from "../../support/found-by.ts";
import { cure, day, lot, register, session, smallBuild } from "../../support/small-build.ts";

const timed = session({ date: "2026-03-15", step: "HS-08", from: "19:00", to: "20:00" });

function found(broken = timed, overrides = {}) {
  const days = [day({ cures: [cure(overrides)] }), day({ date: "2026-03-15", sessions: [broken] })];
  return foundBy("work-before-cure", smallBuild({ lots: register(lot({ private: true })), days }));
}

test("work on a curing joint is found at the session", () => {
  const [one] = found(timed, { citation: { document: "maker's data sheet" } });
  expect(one).toMatchObject({
    severity: "finding",
    message:
      "work on `HS-08` began at 2026-03-15 19:00, before its cure was over at 2026-03-16 20:10",
    notes: [
      "mixed at 2026-03-14 20:10: content/days/2026-03-14.md:1",
      "the time is from maker's data sheet",
    ],
  });
  expect(one?.help).toHaveLength(2);
  expect(one).not.toHaveProperty("private");
});

test("hours alone ask for the time first", () => {
  const [one] = found(session({ date: "2026-03-15", step: "HS-08" }));
  expect(one?.message).toBe(
    "work on `HS-08` began on 2026-03-15, at no stated time, before its cure was over at 2026-03-16 20:10",
  );
  expect(one?.help[0]).toBe("if the work began later that day, give `from` and `to`");
});

test("a private session or lot keeps the finding private", () => {
  expect(found({ ...timed, private: true })[0]?.private).toBe(true);
  const [one] = found(timed, { lot: "sealant-1" });
  expect(one?.notes).toEqual([
    "mixed at 2026-03-14 20:10 from lot `sealant-1`: content/days/2026-03-14.md:1",
  ]);
  expect(one?.private).toBe(true);
});
