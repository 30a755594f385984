import type { Analysis } from "../../compute/analysis.ts";
import type { Balanced, BalanceLedger, BalanceLoad } from "../../compute/ledgers/balance.ts";
import { type MomentLine, momentUnit } from "../../compute/moments.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Span } from "../../model/diagnostic.ts";
import { convert } from "../../model/quantity.ts";
import { verdictWords } from "../balance/verdict-words.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** A line of a weighing, projection, change or loading case, or what one of them comes to. */
export interface BalanceTableRow {
  readonly part: "weighing" | "projection" | "change" | "loading case" | "empty weight";
  readonly id: string;
  readonly date?: CalendarDate;
  readonly title: string;
  readonly row: "line" | "sum";
  readonly what: string;
  /** Of a line. */
  readonly line?: MomentLine<BalanceLoad>;
  /** Of a sum. */
  readonly sum?: Balanced;
  readonly verdict?: string;
  readonly ledger: BalanceLedger;
  readonly span: Span;
}

/**
 * The rows of weight and balance: the lines of each weighing, projection, change and loading
 * case with their sum behind them, and at the end the empty weight in force. None without a
 * register.
 */
export function balanceRows({ balance: ledger }: Analysis): BalanceTableRow[] {
  if (!ledger) return [];
  const { weighings, projection, events, cases, empty } = ledger;
  const sheet = (
    about: Pick<BalanceTableRow, "part" | "id" | "date" | "title" | "span" | "verdict">,
    { lines, sum }: { readonly lines: readonly MomentLine<BalanceLoad>[]; readonly sum: Balanced },
  ): BalanceTableRow[] => {
    const { verdict, ...rest } = about;
    return [
      ...lines.map((line) => ({
        ...rest,
        row: "line" as const,
        what: line.load.name,
        line,
        ledger,
        span: line.load.item?.span ?? line.load.point?.span ?? about.span,
      })),
      {
        ...rest,
        row: "sum",
        what: "sum",
        sum,
        ledger,
        ...(verdict === undefined ? {} : { verdict }),
      },
    ];
  };
  return [
    ...weighings.flatMap((state) => sheet({ part: "weighing", ...state.weighing }, state)),
    ...(projection
      ? sheet(
          {
            part: "projection",
            id: "projection",
            date: projection.projection.date,
            title: "projected empty weight",
            span: projection.projection.span,
          },
          projection,
        )
      : []),
    ...events.flatMap((event) =>
      event.kind === "change" ? sheet({ part: "change", ...event.state.change }, event.state) : [],
    ),
    ...cases.flatMap((state) => {
      const { verdict, says } = verdictWords(state.verdict);
      const words = [verdict, ...(verdict === "outside" ? says : [])].join(": ");
      return sheet({ part: "loading case", ...state.loading, verdict: words }, state);
    }),
    ...(empty
      ? [
          {
            part: "empty weight" as const,
            id: empty.basis,
            date: empty.since,
            title: `${empty.basis}, ${empty.changes} changes since`,
            row: "sum" as const,
            what: "in force",
            sum: empty.sum,
            ledger,
            span: ledger.register.span,
          },
        ]
      : []),
  ];
}

export const balanceTable: Table<BalanceTableRow> = tableOf({
  name: "balance",
  title: "Weight and balance, line by line",
  rows: balanceRows,
  columns: [
    {
      key: "part",
      heading: "Part",
      kind: "text",
      means:
        "A weighing, the projection, a change of equipment, a loading case or the empty weight in force.",
      value: ({ part }) => part,
    },
    { key: "id", heading: "Id", kind: "text", means: "Its id.", value: ({ id }) => id },
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "When it was; empty for loading cases.",
      value: ({ date }) => date,
    },
    {
      key: "title",
      heading: "Title",
      kind: "text",
      means: "Its title.",
      value: ({ title }) => title,
    },
    {
      key: "row",
      heading: "Row",
      kind: "text",
      means: "`line` for one weight at its arm, `sum` for what they come to. Only lines add up.",
      value: ({ row }) => row,
    },
    { key: "what", heading: "What", kind: "text", means: "What it is.", value: ({ what }) => what },
    {
      key: "part_number",
      heading: "Part number",
      kind: "text",
      means: "Part number of an item, as marked; empty where none was typed.",
      value: ({ line }) => line?.load.item?.part,
    },
    {
      key: "serial_number",
      heading: "Serial number",
      kind: "text",
      means: "Serial number of an item, as marked; empty where none was typed.",
      value: ({ line }) => line?.load.item?.serial,
    },
    {
      key: "weight_as_typed",
      heading: "Weight as typed",
      kind: "text",
      means: "The weight as typed, tare, counts, volumes and densities too; empty for sums.",
      value: ({ line }) => line && weightTyped(line.load),
    },
    {
      key: "arm_as_typed",
      heading: "Arm as typed",
      kind: "text",
      means: "The arm as typed; empty for sums and for the empty aircraft.",
      value: ({ line }) => (line?.load.item ?? line?.load.point)?.arm.typed,
    },
    {
      key: "estimated",
      heading: "Estimated",
      kind: "yes or no",
      means: "Whether it was marked as an estimate; empty for sums.",
      value: ({ line }) => line && (line.load.item?.estimated ?? false),
    },
    {
      key: "weight",
      heading: "Weight",
      kind: "number",
      means: "Net weight, below zero for what is taken out, in the unit beside it.",
      value: ({ line, sum, ledger }) =>
        (
          line?.weight ??
          (sum && convert(sum.weight, ledger.register.units.weight).amount)
        )?.valueOf(),
    },
    {
      key: "weight_unit",
      heading: "Unit of weight",
      kind: "text",
      means: "Unit of `weight`.",
      value: ({ ledger }) => ledger.register.units.weight.symbol,
    },
    {
      key: "arm",
      heading: "Arm",
      kind: "number",
      means: "Arm from the datum, aft counting up; of a sum its centre of gravity.",
      value: ({ line, sum }) => (line?.arm ?? sum?.cg?.amount)?.valueOf(),
    },
    {
      key: "arm_unit",
      heading: "Unit of arm",
      kind: "text",
      means: "Unit of `arm`.",
      value: ({ ledger }) => ledger.register.units.arm.symbol,
    },
    {
      key: "moment",
      heading: "Moment",
      kind: "number",
      means:
        "Weight times arm, in the unit beside it; reckoned exactly, given to the nearest number that a computer holds.",
      value: ({ line, sum }) => (line?.moment ?? sum?.moment)?.valueOf(),
    },
    {
      key: "moment_unit",
      heading: "Unit of moment",
      kind: "text",
      means: "Unit of `moment`.",
      value: ({ ledger }) => momentUnit(ledger.register.units),
    },
    {
      key: "percent_mac",
      heading: "MAC, per cent",
      kind: "number",
      means:
        "Centre of gravity of a sum in per cent of the mean aerodynamic chord, where that is known.",
      value: ({ sum }) => sum?.chordPercent?.valueOf(),
    },
    {
      key: "verdict",
      heading: "Verdict",
      kind: "text",
      means: "Of a loading case: inside the limits given, or outside and by how much.",
      value: ({ verdict }) => verdict,
    },
    ...sourceColumns<BalanceTableRow>(({ span }) => span),
  ],
});

function weightTyped({ point, item }: BalanceLoad): string | undefined {
  if (point)
    return point.tare ? `${point.reads.typed} less ${point.tare.typed}` : point.reads.typed;
  return item && (item.made ?? item.weight.typed);
}
