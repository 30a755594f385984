import { expect, test } from "vitest";
import { paceView } from "../../../../src/present/pages/views/pace-view.ts";
import { shownJournal } from "../../../support/shown-journal.ts";
import { smallRegisters } from "../../../support/temporary-journal.ts";

const day = (date: string, hours: string) => ({
  [`days/${date}.md`]: `---\ndate: ${date}\nsessions:\n  - { assembly: wing, who: [ada], hours: "${hours}", kind: fabricate }\n---\n`,
});

const year = Object.assign(
  {},
  ...["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"].map((month) =>
    day(`2026-${month}-10`, month === "07" ? "4:00" : "10:00"),
  ),
) as Record<string, string>;

const expecting = (hours: string) => ({
  "project.yaml": `${smallRegisters["project.yaml"]}expected: "${hours}"\n`,
});

test("the pace is told of whole months, the least and the most of them", () => {
  expect(paceView(shownJournal(year)).says).toBe(
    "In the last 11 whole months, February 2026 to December 2026, 104:00 were booked: 9:27 a month, the least 4:00 and the most 10:00.",
  );
});

test("without the builder's own figure nothing is forecast, and the page says so", () => {
  const { forecast, refused } = paceView(shownJournal(year));
  expect(forecast).toBeUndefined();
  expect(refused).toMatch(/the builder has not said/);
});

test("with it, three months and how they come about", () => {
  // 20 hours remain: two months unless the short one comes up twice, or once beside a ten.
  const { forecast, refused } = paceView(shownJournal({ ...year, ...expecting("134:00") }));
  expect(refused).toBeUndefined();
  expect(forecast?.facts).toEqual([
    { label: "expected by the builder", value: "134:00" },
    { label: "remaining", value: "20:00" },
    { label: "1 in 10: by", value: "February 2027" },
    { label: "even odds: by", value: "February 2027" },
    { label: "9 in 10: by", value: "March 2027" },
  ]);
  expect(forecast?.method).toMatch(/those 11 over again.*not a promise/);
});

test("a young journal says what it takes", () => {
  const { says, refused } = paceView(
    shownJournal({ ...day("2026-12-01", "3:00"), ...expecting("500:00") }),
  );
  expect(says).toBeUndefined();
  expect(refused).toBe("No forecast: it takes 6 whole months to look back on.");
});
