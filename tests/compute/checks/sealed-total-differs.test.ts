import { expect, test } from "vitest";
import type { Amendment } from "../../../src/model/amendment.ts";
import type { SealedMinutes } from "../../../src/model/seal.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, seal, session, smallBuild, span } from "../../support/small-build.ts";

const none = { build: 0, apart: 0 };

function found(
  inMonth: SealedMinutes,
  toDate: SealedMinutes,
  amendments: readonly Amendment[] = [],
) {
  const days = [
    day({ date: "2026-02-10", sessions: [session({ date: "2026-02-10", minutes: 50 })] }),
    day({
      date: "2026-03-02",
      sessions: [
        session({ date: "2026-03-02", minutes: 30, who: ["ada", "jon"] }),
        session({ date: "2026-03-02", kind: "study", minutes: 7 }),
      ],
    }),
    day({
      date: "2026-04-02",
      sessions: [session({ date: "2026-04-02", minutes: 500 })],
      amendments,
    }),
  ];
  const seals = [
    seal({ month: "2026-02", inMonth: { build: 50, apart: 0 }, toDate: { build: 50, apart: 0 } }),
    seal({ month: "2026-03", inMonth, toDate }),
  ];
  return foundBy("sealed-total-differs", smallBuild({ days, seals }));
}

const amendment = (field: string, day: string): Amendment => ({
  date: "2026-04-02",
  day,
  field,
  was: "0:40",
  now: "0:30",
  why: "so",
  span: span(),
});

test("totals as sealed hold", () => {
  expect(found({ build: 60, apart: 7 }, { build: 110, apart: 7 })).toEqual([]);
});

test("each total that is another is named", () => {
  const [one, ...more] = found({ build: 61, apart: 7 }, none);
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: "error",
    message: "the totals in `seals/2026-03.seal` are not what its entries add up to",
    notes: [
      "in the month, building: sealed 1:01, now 1:00",
      "to date, building: sealed 0:00, now 1:50",
      "to date, study and shop: sealed 0:00, now 0:07",
    ],
  });
});

test("an amendment of a later month to hours up to then is the reason, and no fault", () => {
  const hours = "sessions[1].hours";
  expect(found({ build: 70, apart: 7 }, none, [amendment(hours, "2026-03-02")])).toEqual([]);
  expect(found({ build: 70, apart: 7 }, none, [amendment("title", "2026-03-02")])).toHaveLength(1);
  expect(found({ build: 70, apart: 7 }, none, [amendment(hours, "2026-04-01")])).toHaveLength(1);
});
