import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import type { Day } from "../../../src/model/day.ts";
import { eveningOffer, eveningThanks } from "../../../src/present/evening/offer.ts";
import {
  asOf,
  cure,
  day,
  moment,
  person,
  register,
  session,
  smallBuild,
} from "../../support/small-build.ts";

function analysisOf(days: readonly Day[], judgedOn = "2026-03-20") {
  const people = register(
    person(),
    person({ id: "jon", role: "unpaid help" }),
    person({ id: "max", role: "builder" }),
  );
  return analyze(smallBuild({ people, days }), asOf(judgedOn));
}

describe("what is offered", () => {
  test("in an empty journal: all builders, and nothing else", () => {
    expect(eveningOffer(analysisOf([]), "2026-03-14")).toEqual({
      people: ["ada", "max"],
      next: [],
    });
  });

  test("the last session, its people, and what was to come next", () => {
    const last = session({ assembly: "rudder", who: ["jon", "ada"] });
    const offer = eveningOffer(
      analysisOf([day({ sessions: [session(), last], next: ["drill the second row"] })]),
      "2026-03-15",
    );
    expect(offer).toEqual({ last, people: ["jon", "ada"], next: ["drill the second row"] });
  });

  test("a day of words has the newest plan, and the day before it the last session", () => {
    const worked = session({ date: "2026-03-10" });
    const offer = eveningOffer(
      analysisOf([
        day({ date: "2026-03-10", sessions: [worked], next: ["an old plan"] }),
        day({ date: "2026-03-12", next: ["order rivets"] }),
      ]),
      "2026-03-14",
    );
    expect(offer).toEqual({
      last: worked,
      people: ["ada"],
      next: ["order rivets"],
      gap: "last entry 2 days ago",
    });
  });

  test("nothing is offered from the day itself, or from later ones", () => {
    const analysis = analysisOf([
      day({ date: "2026-03-14", sessions: [session()], next: ["today's plan"] }),
      day({ date: "2026-03-16", sessions: [session({ date: "2026-03-16" })] }),
    ]);
    expect(eveningOffer(analysis, "2026-03-14")).toEqual({ people: ["ada", "max"], next: [] });
  });

  test.each([
    ["2026-03-15", undefined],
    ["2026-03-16", "last entry 2 days ago"],
    ["2026-03-23", "last entry 9 days ago"],
  ])("an entry for %s after the 14th says %s", (date, gap) => {
    expect(eveningOffer(analysisOf([day()]), date).gap).toBe(gap);
  });
});

describe("what is given back", () => {
  test("the hours of the day, of the month, and of the whole build", () => {
    const days = [
      day({ date: "2026-02-28", sessions: [session({ date: "2026-02-28", minutes: 100 })] }),
      day({ date: "2026-03-01", sessions: [session({ date: "2026-03-01", minutes: 30 })] }),
      day({
        sessions: [
          session({ minutes: 75, who: ["ada", "jon"] }),
          session({ minutes: 45, kind: "study" }),
        ],
        next: ["ribs", "spar"],
      }),
    ];
    expect(eveningThanks(analysisOf(days), "2026-03-14")).toEqual([
      "2:30 h on 14 March 2026 (and 0:45 h of study and shop), 3:00 h in March 2026, 4:40 h in all",
      "next: ribs",
    ]);
  });

  test("hours of study and shop are said beside, not left out", () => {
    const days = [day({ sessions: [session({ minutes: 45, kind: "shop" })] })];
    expect(eveningThanks(analysisOf(days), "2026-03-14")).toEqual([
      "0:00 h on 14 March 2026 (and 0:45 h of study and shop), 0:00 h in March 2026, 0:00 h in all",
    ]);
  });

  test("what may be worked on again, and when", () => {
    const days = [
      day({
        sessions: [session()],
        cures: [
          cure(),
          cure({
            step: "HS-07",
            mixed: moment("2026-03-14 19:00"),
            ready: moment("2026-03-14 23:00"),
          }),
        ],
      }),
    ];
    expect(eveningThanks(analysisOf(days, "2026-03-14"), "2026-03-14")[1]).toBe(
      "HS-08 may be worked on from 2026-03-16 20:10",
    );
    expect(eveningThanks(analysisOf(days, "2026-03-17"), "2026-03-14")).toHaveLength(1);
  });

  test("of the months, the one of the entry counts, though it is written later", () => {
    const days = [
      day({ date: "2026-02-28", sessions: [session({ date: "2026-02-28", minutes: 100 })] }),
      day({ sessions: [session({ minutes: 60 })] }),
    ];
    expect(eveningThanks(analysisOf(days), "2026-02-28")[0]).toBe(
      "1:40 h on 28 February 2026, 1:40 h in February 2026, 2:40 h in all",
    );
  });
});
