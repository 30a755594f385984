import { expect, test } from "vitest";
import { holdsLedger } from "../../../src/compute/ledgers/holds.ts";
import type { Release } from "../../../src/model/hold.ts";
import { day, hold, release, smallBuild } from "../../support/small-build.ts";

function releasedOn(...releases: readonly Release[]) {
  const dates = [...new Set(["2026-03-14", ...releases.map(({ date }) => date)])].sort();
  const days = dates.map((date) =>
    day({
      date,
      holds: date === "2026-03-14" ? [hold()] : [],
      releases: releases.filter((each) => each.date === date),
    }),
  );
  return holdsLedger(smallBuild({ days }))[0]?.released?.date;
}

test("a hold nobody released is open", () => {
  expect(releasedOn()).toBeUndefined();
  expect(releasedOn(release({ hold: "H-2", date: "2026-03-15" }))).toBeUndefined();
  expect(releasedOn(release({ step: "HS-07", date: "2026-03-15" }))).toBeUndefined();
});

test("a release by name or by step ends it, on the same day or later, and no earlier one does", () => {
  expect(releasedOn(release({ hold: "H-1", date: "2026-03-14" }))).toBe("2026-03-14");
  expect(releasedOn(release({ step: "HS-08", date: "2026-03-20" }))).toBe("2026-03-20");
  expect(releasedOn(release({ hold: "H-1", date: "2026-03-13" }))).toBeUndefined();
  expect(releasedOn(release({ step: "HS-08", date: "2026-03-13" }))).toBeUndefined();
});

test("the first of two releases counts", () => {
  const byName = release({ hold: "H-1", date: "2026-03-18" });
  const byStep = release({ step: "HS-08", date: "2026-03-16" });
  expect(releasedOn(byName, byStep)).toBe("2026-03-16");
  expect(releasedOn({ ...byName, date: "2026-03-15" }, byStep)).toBe("2026-03-15");
});
