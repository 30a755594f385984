import { expect, test } from "vitest";
import type { Deviation } from "../../../src/model/deviation.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, deviation, disposition, smallBuild } from "../../support/small-build.ts";
import { reading } from "../../support/small-measurements.ts";

const found = (overrides: Partial<Deviation> = {}, hidden = false) =>
  foundBy(
    "deviation-without-disposition",
    smallBuild({
      days: [
        day({
          deviations: [deviation(overrides)],
          readings: [reading(["0.1 in"], { deviation: "D-014", private: hidden })],
        }),
      ],
    }),
  );

test("an undecided deviation is found, with the readings that rely on it", () => {
  const [one] = found();
  expect(one).toMatchObject({
    severity: "finding",
    message: "nothing has been decided about deviation `D-014` from `HS-03 rev C`",
    notes: ["reading `R-1` relies on it: content/days/2026-03-14.md:20"],
  });
  expect(one).not.toHaveProperty("private");
});

test("a decided one is not", () => {
  expect(found({ disposition: disposition() })).toEqual([]);
});

test("it is private when the deviation is, or a reading that its note names", () => {
  expect(found({ private: true })[0]?.private).toBe(true);
  expect(found({}, true)[0]?.private).toBe(true);
});
