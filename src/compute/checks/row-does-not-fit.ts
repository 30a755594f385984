import type Fraction from "fraction.js";
import type { Diagnostic } from "../../model/diagnostic.ts";
import type { FastenerRow } from "../../model/layout.ts";
import { quantityOf } from "../../model/quantity.ts";
import { unitOf } from "../../model/unit.ts";
import type { Ledgers } from "../check.ts";
import type { LaidOut } from "../laid-out.ts";
import { nearText } from "../near-text.ts";
import { amountIn } from "../reckon/amount-in.ts";
import type { NoRow } from "../reckon/lay-row.ts";
import { noRow } from "../reckon/no-row.ts";
import type { Words } from "../reckon/sum.ts";

/** Reports each row that cannot be laid out with the edge, pitch and keep-outs it asks for. */
export function* rowDoesNotFit({ layouts }: Ledgers): Generator<Diagnostic> {
  for (const laidOut of layouts) {
    const { layout, row } = laidOut;
    const { piece } = layout;
    if (piece.kind !== "row" || row?.ok !== false) continue;
    const { message, help } = whyNoRow(piece, row, laidOut);
    yield {
      code: "row-does-not-fit",
      severity: "finding",
      span: (piece.count ?? piece.pitch ?? piece.length).span,
      message: `row \`${layout.title}\` cannot be laid out: ${message}`,
      label: "no row like this",
      notes: [
        `length ${piece.length.typed}, edge ${piece.edge.typed}`,
        ...(laidOut.least ? [`least pitch ${nearText(laidOut.least)}`] : []),
        ...piece.keepOuts.map(
          ({ from, to, clear, what }) =>
            `kept out from ${from.typed} to ${to.typed}${clear ? `, clear by ${clear.typed}` : ""}${what ? `: ${what}` : ""}`,
        ),
      ],
      help: [...help, "where the drawing gives places of its own, they govern"],
    };
  }
}

/** Why a row cannot be laid out, in words without a full stop, and what to do. */
export function whyNoRow(
  { length, diameter }: FastenerRow,
  { why }: NoRow,
  { least }: Pick<LaidOut, "least">,
): { readonly message: string; readonly help: readonly string[] } {
  const { unit } = length.length;
  const figure = (value: Fraction) => ({ value, unit: unit.symbol });
  const problem = noRow(why, figure, {
    least: figure(amountIn(least ?? diameter, unit)),
    length: figure(length.length.amount),
  });
  return { message: exactWords(problem.message), help: problem.help.map(exactWords) };
}

function exactWords(words: Words): string {
  if (typeof words === "string") return words;
  return words
    .map((word) =>
      typeof word === "string" || typeof word.value === "number"
        ? word
        : nearText(quantityOf(word.value, unitOf(word.unit))),
    )
    .join("");
}
