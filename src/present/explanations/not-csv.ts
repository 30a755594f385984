import type { Explanation } from "./explanation.ts";

/** What `not-csv` means. */
export const notCsv: Explanation = {
  code: "not-csv",
  severity: "error",
  title: "A table that cannot be read",
  meaning:
    "The file given to `witness inbox` is not a table as CSV has it: a quotation mark that is not closed, a row with more or fewer cells than the first line names, or letters that are not UTF-8.",
  why: "Behind such a place, cells stand in the wrong columns. Nothing is written of a table that is not understood to its end.",
  mend: [
    "Export the table again, as `CSV UTF-8`, with the names of the columns in its first line.",
    'If its cells are parted by something else than a comma, say so in the mapping: `separator: ";"`.',
    "Put a cell that holds the separator in quotes.",
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
