import { expect, test } from "vitest";
import { deviationsLedger } from "../../../src/compute/ledgers/deviations.ts";
import { day, deviation, disposition, smallBuild } from "../../support/small-build.ts";

test("a deviation is open until something is decided", () => {
  const deviations = [deviation(), deviation({ id: "D-2", disposition: disposition() })];
  const states = deviationsLedger(smallBuild({ days: [day({ deviations })] }));
  expect(states.map(({ open }) => open)).toEqual([true, false]);
});
