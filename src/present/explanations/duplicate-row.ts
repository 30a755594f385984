import type { Explanation } from "./explanation.ts";

/** What `duplicate-row` means. */
export const duplicateRow: Explanation = {
  code: "duplicate-row",
  severity: "error",
  title: "Two rows that say the same",
  meaning:
    "Two rows of the table given to `witness inbox` have the same day, work, people, time, kind and note.",
  why: "It may be one session that was copied twice, or two that happen to be alike. The sum depends on it, and only the builder can know.",
  mend: [
    "Take one of the two out of the table.",
    "If all such rows of the table are copies, write `same-rows: once` in the mapping; if all are sessions of their own, `same-rows: each`.",
  ],
  example: [
    {
      file: "inbox/hours.csv",
      text: `Date,Part,Time,Work,Remarks
2024-03-02,stabilizer,1:15,fabricate,"ribs, ""left"" side"
2024-03-03,Stabilizer,0.75,fabricate,
`,
    },
    {
      file: "inbox/mapping.yaml",
      text: `columns: { date: Date, assembly: Part, hours: Time, kind: Work }
always: { who: ada }
`,
    },
  ],
};
