import { expect, test } from "vitest";
import { lotsLedger } from "../../../src/compute/ledgers/lots.ts";
import {
  asOf,
  cure,
  day,
  lot,
  register,
  session,
  smallBuild,
  span,
} from "../../support/small-build.ts";

const lots = register(
  lot({
    expires: "2026-03-15",
    extensions: [{ on: "2026-03-20", until: "2026-06-30", why: "update test passed" }],
  }),
  lot({ id: "rivets" }),
);

test.each([
  ["2026-03-14", { expiry: "2026-03-15", expired: false, daysLeft: 1 }],
  ["2026-03-15", { expiry: "2026-03-15", expired: false, daysLeft: 0 }],
  ["2026-03-16", { expiry: "2026-03-15", expired: true, daysLeft: -1 }],
  ["2026-03-20", { expiry: "2026-06-30", expired: false, daysLeft: 102 }],
])("on %s the sealant is %o", (date, expected) => {
  expect(lotsLedger(smallBuild({ lots }), asOf(date))[0]).toMatchObject(expected);
});

test("what does not expire has no last day", () => {
  expect(lotsLedger(smallBuild({ lots }), asOf("2030-01-01"))[1]).toEqual({
    lot: lots.get("rivets"),
    uses: [],
    expired: false,
  });
});

test("uses are those of sessions and cures, at the place of the lot's name where there is one", () => {
  const [a, b, c] = [span({ line: 11 }), span({ line: 12 }), span({ line: 13 })];
  const sessions = [
    session({ lots: ["rivets", "sealant-1"], lotSpans: [b, a] }),
    session({ lots: ["sealant-1", "unheard-of"], lotSpans: [], span: c }),
  ];
  const cures = [
    cure({ lot: "sealant-1", lotSpan: b }),
    cure({ lot: "sealant-1", span: c }),
    cure(),
  ];
  const [sealant, rivets] = lotsLedger(
    smallBuild({ lots, days: [day({ sessions, cures })] }),
    asOf("2026-03-14"),
  );
  expect(sealant?.uses.map((use) => use.span.line)).toEqual([11, 13, 12, 13]);
  expect(rivets?.uses).toEqual([{ date: "2026-03-14", span: b }]);
});
