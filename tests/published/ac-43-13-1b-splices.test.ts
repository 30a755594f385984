// Source: FAA AC 43.13-1B (8 Sep 1998, change 1 27 Sep 2001), tables 4-9, 4-10 and 4-11: number
// of 2117-T4 (AD) protruding-head rivets per inch of width, single-lap joint, and the worked
// splice of par. 4-58g. Copied from page-by-page copies; the columns of table 4-9 were
// scrambled in its copy and put back in order. Open the pages again before you change a row.

import { describe, expect, test } from "vitest";
import { reckoned, refusal } from "../support/reckoned.ts";

const diameters = ["3/32", "1/8", "5/32", "3/16", "1/4"];

// biome-ignore format: laid out as the tables are printed
const tables: Record<string, readonly (readonly (string | number)[])[]> = {
  "4-9": [
    [".016", 6.5, 4.9, 0, 0, 0],
    [".020", 6.9, 4.9, 3.9, 0, 0],
    [".025", 8.6, 4.9, 3.9, 0, 0],
    [".032", 11.1, 6.2, 3.9, 3.3, 0],
    [".036", 12.5, 7.0, 4.5, 3.3, 2.4],
    [".040", 13.8, 7.7, 5.0, 3.5, 2.4],
    [".051", 0, 9.8, 6.4, 4.5, 2.5],
    [".064", 0, 12.3, 8.1, 5.6, 3.1],
    [".081", 0, 0, 10.2, 7.1, 3.9],
    [".091", 0, 0, 11.4, 7.9, 4.4],
    [".102", 0, 0, 12.8, 8.9, 4.9],
    [".128", 0, 0, 0, 11.2, 6.2],
  ],
  "4-10": [
    [".016", 6.5, 4.9, 0, 0, 0],
    [".020", 6.5, 4.9, 3.9, 0, 0],
    [".025", 6.9, 4.9, 3.9, 0, 0],
    [".032", 8.9, 4.9, 3.9, 3.3, 0],
    [".036", 10.0, 5.6, 3.9, 3.3, 2.4],
    [".040", 11.1, 6.2, 4.0, 3.3, 2.4],
    [".051", 0, 7.9, 5.1, 3.6, 2.4],
    [".064", 0, 9.9, 6.5, 4.5, 2.5],
    [".081", 0, 12.5, 8.1, 5.7, 3.1],
    [".091", 0, 0, 9.1, 6.3, 3.5],
    [".102", 0, 0, 10.3, 7.1, 3.9],
    [".128", 0, 0, 12.9, 8.9, 4.9],
  ],
  "4-11": [
    [".016", 6.3, 4.7, 0, 0, 0],
    [".020", 6.3, 4.7, 3.8, 0, 0],
    [".025", 6.3, 4.7, 3.8, 0, 0],
    [".032", 6.3, 4.7, 3.8, 3.2, 0],
    [".036", 7.1, 4.7, 3.8, 3.2, 2.4],
    [".040", 7.9, 4.7, 3.8, 3.2, 2.4],
    [".051", 10.1, 5.6, 3.8, 3.2, 2.4],
    [".064", 12.7, 7.0, 4.6, 3.2, 2.4],
    [".081", 0, 8.9, 5.8, 4.0, 2.4],
    [".091", 0, 10.0, 6.5, 4.5, 2.5],
    [".102", 0, 11.2, 7.3, 5.1, 2.8],
    [".128", 0, 0, 9.2, 6.4, 3.5],
  ],
};

const cells = Object.entries(tables).flatMap(([table, rows]) =>
  rows.flatMap(([thickness, ...numbers]) =>
    numbers.map((perInch, column) => ({ table, thickness, diameter: diameters[column], perInch })),
  ),
);

describe("rivets per inch", () => {
  test.each(cells)("table $table: $diameter rivet in $thickness sheet, $perInch", (cell) => {
    const typed = [
      `table=${cell.table}`,
      `thickness=${cell.thickness} in`,
      `diameter=${cell.diameter} in`,
      "width=1 in",
      "joint=full",
    ];
    if (cell.perInch === 0) {
      expect(refusal("splice", ...typed)).toContain("prints no number");
      return;
    }
    const answer = reckoned("splice", ...typed);
    expect(answer.perInch).toBe(cell.perInch);
    expect(answer.result).toBe(Math.ceil(Number(cell.perInch)));
  });
});

describe("worked splice, par. 4-58g", () => {
  // Clad 2024, t = 0.032, W = 10 in, single lap: 4.9 per inch x 0.75 = 3.7 per inch,
  // 10 x 3.7 = 37 rivets, in two rows of 19.
  const typed = ["table=4-10", "thickness=0.032 in", "diameter=1/8 in", "width=10 in"];

  test("37 rivets, two rows of 19", () => {
    expect(reckoned("splice", ...typed, "joint=sheet", "rows=2")).toMatchObject({
      result: 37,
      perInch: 4.9,
      reduced: 3.675,
      rounded: 3.7,
      perRow: 19,
    });
  });

  test("the notes of the tables: 80 % in stringers, 60 % in frames", () => {
    expect(reckoned("splice", ...typed, "joint=stringer").reduced).toBe(3.92);
    expect(reckoned("splice", ...typed, "joint=frame").reduced).toBe(2.94);
  });
});

// The AN-3 column of the same tables, 0 for a dash. Table 4-9 in .128 sheet is left out: the copy
// prints 3.2, the table's own note gives 4.2.
const bolts: Record<string, readonly number[]> = {
  //      .016 .020 .025 .032 .036 .040 .051 .064 .081 .091 .102 .128
  "4-9": [0, 0, 0, 0, 0, 3.3, 3.3, 3.3, 3.3, 3.3, 3.4],
  "4-10": [0, 0, 0, 0, 0, 0, 3.3, 3.3, 3.3, 3.3, 3.3, 3.3],
  "4-11": [0, 0, 0, 0, 0, 0, 0, 0, 3.2, 3.2, 3.2, 3.2],
};
const boltCells = Object.entries(bolts).flatMap(([table, numbers]) =>
  numbers.map((perInch, row) => [table, String(tables[table]?.[row]?.[0]), perInch] as const),
);

test.each(boltCells)("table %s, %s sheet: %d AN-3 bolts per inch", (table, thickness, perInch) => {
  const inputs = [`thickness=${thickness} in`, "fastener=AN-3", "width=1 in", "joint=full"];
  if (perInch === 0) {
    expect(refusal("splice", `table=${table}`, ...inputs)).toContain("no number of AN-3 bolts");
    return;
  }
  const answer = reckoned("splice", `table=${table}`, ...inputs);
  expect(answer.perInch).toBe(perInch);
  expect(answer).toMatchObject({ result: 4, unit: "bolts" });
});

test("bolts are refused where the table prints none, and beside a rivet", () => {
  const inputs = ["table=4-9", "fastener=AN-3", "width=1 in", "joint=full"];
  expect(refusal("splice", ...inputs, "thickness=.128 in")).toContain("no number of AN-3 bolts");
  expect(refusal("splice", ...inputs, "thickness=.040 in", "diameter=1/8 in")).toContain(
    "leave one of the two out",
  );
});
