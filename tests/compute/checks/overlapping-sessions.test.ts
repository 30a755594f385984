import { expect, test } from "vitest";
import type { Session } from "../../../src/model/session.ts";
import { foundBy, messagesOf } from "../../support/found-by.ts";
import { day, session, smallBuild, span } from "../../support/small-build.ts";

const found = (...sessions: readonly Session[]) =>
  messagesOf("overlapping-sessions", smallBuild({ days: [day({ sessions })] }));

test("one may begin in the minute in which the other ends", () => {
  const first = session({ from: "18:00", to: "19:00" });
  expect(found(first, session({ from: "19:00", to: "20:00" }))).toEqual([]);
  expect(found(first, session({ from: "18:59", to: "20:00" }))).toEqual([
    "`ada` cannot be at two sessions at once: 18:59 to 20:00 on `stabilizer` begins before 18:00 to 19:00 on `stabilizer` is over",
  ]);
});

test("two people may work side by side; both at both are one fault", () => {
  const ada = session({ from: "18:00", to: "19:00" });
  const jon = session({ from: "18:00", to: "19:00", who: ["jon"] });
  expect(found(ada, jon)).toEqual([]);
  const both = { who: ["ada", "jon"], from: "18:00", to: "19:00" };
  expect(found(session({ ...both, step: "HS-07" }), session({ ...both, step: "HS-08" }))).toEqual([
    "`ada` and `jon` cannot be at two sessions at once: 18:00 to 19:00 on `HS-08` begins before 18:00 to 19:00 on `HS-07` is over",
  ]);
});

test("a long session overlaps each of the short ones inside it", () => {
  const long = session({ from: "10:00", to: "16:00", minutesSpan: span({ line: 3 }) });
  const short = session({ from: "11:00", to: "12:00", minutesSpan: span({ line: 4 }) });
  const shorter = session({ from: "13:00", to: "13:30", minutesSpan: span({ line: 5 }) });
  const diagnostics = foundBy(
    "overlapping-sessions",
    smallBuild({ days: [day({ sessions: [shorter, long, short] })] }),
  );
  expect(diagnostics.map((each) => [each.severity, each.span.line])).toEqual([
    ["error", 4],
    ["error", 5],
  ]);
  expect(diagnostics[0]?.notes).toEqual(["the other session: content/days/2026-03-14.md:3"]);
});

test("a session over midnight reaches into the next day", () => {
  const late = session({ from: "23:00", to: "01:00" });
  const early = session({ date: "2026-03-15", from: "00:30", to: "02:00" });
  const days = [day({ sessions: [late] }), day({ date: "2026-03-15", sessions: [early] })];
  expect(messagesOf("overlapping-sessions", smallBuild({ days }))).toHaveLength(1);
});

test("sessions with hours alone have no place on the clock", () => {
  expect(found(session(), session(), session({ from: "10:00", to: "11:00" }))).toEqual([]);
});
