import { creditColumns, type Split, type Tenths } from "../model/portion.ts";

/** What several tasks come to, in tenths of a point. */
export interface PortionSum {
  /** How many tasks are in it. */
  readonly tasks: number;
  readonly columns: Split;
  readonly total: Tenths;
  /** Assembly and fabrication by amateurs. */
  readonly builder: Tenths;
}

/** What a sum says about the two lines. */
export interface PortionVerdict {
  /** More than half: the builder's share alone is greater than all the rest. */
  readonly moreThanHalf: boolean;
  /** Neither more nor less than half, which is not more than half. */
  readonly exactlyHalf: boolean;
  /** 51 % or more, the stricter everyday line. */
  readonly fiftyOne: boolean;
  /** Tenths that may still pass from the builder to paid help; 0 when the line is not reached. */
  readonly headroomHalf: Tenths;
  readonly headroomFiftyOne: Tenths;
}

const none: PortionSum = {
  tasks: 0,
  columns: { kit: 0, paid: 0, assembly: 0, fabrication: 0 },
  total: 0,
  builder: 0,
};

/** Adds up splits. Whole tenths throughout. */
export function portionSum(splits: readonly Split[]): PortionSum {
  return addPortions(
    splits.map((columns) => ({
      tasks: 1,
      columns,
      total: creditColumns.reduce((sum, column) => sum + columns[column], 0),
      builder: columns.assembly + columns.fabrication,
    })),
  );
}

/** Adds up sums, as those of sections. */
export function addPortions(sums: readonly PortionSum[]): PortionSum {
  return sums.reduce(
    (sum, { tasks, columns, total, builder }) => ({
      tasks: sum.tasks + tasks,
      columns: {
        kit: sum.columns.kit + columns.kit,
        paid: sum.columns.paid + columns.paid,
        assembly: sum.columns.assembly + columns.assembly,
        fabrication: sum.columns.fabrication + columns.fabrication,
      },
      total: sum.total + total,
      builder: sum.builder + builder,
    }),
    none,
  );
}

/** Compares whole numbers; nothing is rounded, and nothing divided before it is compared. */
export function portionVerdict({
  total,
  builder,
}: Pick<PortionSum, "total" | "builder">): PortionVerdict {
  const moreThanHalf = 2 * builder > total;
  const fiftyOne = total > 0 && 100 * builder >= 51 * total;
  return {
    moreThanHalf,
    exactlyHalf: total > 0 && 2 * builder === total,
    fiftyOne,
    headroomHalf: moreThanHalf ? Math.floor((2 * builder - total - 1) / 2) : 0,
    headroomFiftyOne: fiftyOne ? Math.floor((100 * builder - 51 * total) / 100) : 0,
  };
}
