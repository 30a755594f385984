import type { PortionLedger } from "../../compute/ledgers/portion.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import { printable } from "../diagnostics/printable.ts";
import { builderPercent, splitText } from "../format/portion.ts";
import { portionRecord } from "../record/portion-record.ts";
import { linesOf, portionCautions, portionSentence } from "./portion-words.ts";

/** A sheet as it is, and as it would be with other divisions of some tasks. */
export interface TriedPortion {
  readonly now: PortionLedger;
  /** Absent: nothing is tried out. */
  readonly after?: PortionLedger;
  /** Ids of the tasks that are tried out, in the order typed. */
  readonly tried: readonly string[];
}

/** The sheet for the terminal: sections, the sum, both lines, and what a change would do. */
export function portionText({ now, after, tried }: TriedPortion): string {
  const changes = tried.map((id) => {
    const before = now.tasks.get(id);
    const proposed = after?.tasks.get(id);
    const from = before?.current ? splitText(before.current.split) : "not divided yet";
    return `  ${printable(id)}  ${from}  becomes  ${splitText(proposed?.current?.split)}`;
  });
  return [
    printable(now.register.list.title),
    "",
    ...sheetText(now),
    ...(after ? ["", "what if (nothing is written):", ...changes, "", ...sheetText(after)] : []),
    "",
    portionCautions[0] ?? "",
  ].join("\n");
}

/** The same as plain data. */
export function portionJson({ now, after, tried }: TriedPortion) {
  return {
    portion: portionRecord(now),
    ...(after ? { whatIf: { tasks: [...tried], portion: portionRecord(after) } } : {}),
  };
}

function sheetText(ledger: PortionLedger): string[] {
  const heads = ["", "kit", "paid", "assembly", "fabrication", "builder", "of", ""];
  const rows = [
    ...ledger.sections.map(({ section, sum }) => ({ what: section, sum })),
    { what: "all", sum: ledger.sum },
  ].map(({ what, sum }) => [
    printable(what),
    tenthsText(sum.columns.kit),
    tenthsText(sum.columns.paid),
    tenthsText(sum.columns.assembly),
    tenthsText(sum.columns.fabrication),
    tenthsText(sum.builder),
    tenthsText(sum.total),
    builderPercent(sum),
  ]);
  const widths = heads.map((head, index) =>
    Math.max(head.length, ...rows.map((row) => (row[index] ?? "").length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, index) =>
        index === 0 ? cell.padEnd(widths[index] ?? 0) : cell.padStart(widths[index] ?? 0),
      )
      .join("  ")
      .trimEnd();
  return [
    line(heads),
    ...rows.map(line),
    "",
    portionSentence(ledger),
    ...linesOf(ledger).map(
      ({ title, verdict, says }) =>
        `${title}: ${verdict}${says.length > 0 ? ` (${says.join("; ")})` : ""}`,
    ),
  ];
}
