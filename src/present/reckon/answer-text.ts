import type { Answer, Part, Sum } from "../../compute/reckon/sum.ts";
import { printable } from "../diagnostics/printable.ts";
import { figureText, roundedText, wordsText } from "../format/reckoned.ts";
import type { UnderstoodInput } from "./answer-json.ts";
import { wrapped } from "./wrapped.ts";

const widest = 88;
const longestCell = 26;

/**
 * An answer as text: what was given, the numbers, then formula, source and cautions. No line end
 * at the end.
 */
export function answerText(
  sum: Pick<Sum, "name" | "about">,
  inputs: readonly UnderstoodInput[],
  answer: Answer,
): string {
  const parts: readonly Part[] = answer.result
    ? [
        {
          name: "result",
          title: "result",
          value: { kind: "figure", figure: answer.result },
        },
        ...answer.parts,
      ]
    : answer.parts;
  return [
    `${sum.name}: ${sum.about}`,
    ...labelled("given", inputs.map(givenText).join("; ")),
    "",
    ...partLines(parts),
    "",
    ...labelled("formula", answer.formula),
    ...labelled("source", answer.source),
    ...answer.cautions.flatMap((caution) => labelled("caution", wordsText(caution))),
  ].join("\n");
}

/** The gist of an answer in one line: its result, or its first few parts. */
export function answerLine({ result, parts }: Answer): string {
  if (result) return figureText(result);
  const named = parts.filter(({ value }) => value.kind !== "rows" && value.kind !== "none");
  if (named.length > 0)
    return named
      .slice(0, 3)
      .map((part) => `${part.title}: ${valueText(part)}`)
      .join("; ");
  return parts
    .flatMap(({ value }) => (value.kind === "rows" ? value.rows : []))
    .map((row) => row.slice(0, 2).map(valueText).join(" "))
    .join("; ");
}

// A length in terms of another input is shown with what it comes to.
function givenText({ name, typed, read }: UnderstoodInput): string {
  const shown = `${name} ${printable(typed)}`;
  if (read.kind !== "length in sizes") return shown;
  const { amount, unit } = read.value;
  const value = `${roundedText({ value: amount, unit: unit.symbol })} ${unit.symbol}`;
  return value === typed ? shown : `${shown}, which is ${value}`;
}

function partLines(parts: readonly Part[]): string[] {
  const short = parts.filter(({ value }) => value.kind !== "rows");
  const width = Math.max(0, ...short.map(({ title }) => title.length));
  return parts.flatMap((part): string[] => {
    if (part.value.kind === "rows") return [`  ${part.title}`, ...rowLines(part.value.rows)];
    return wrapped(valueText(part), widest - width - 4).map((line, index) =>
      `  ${(index === 0 ? part.title : "").padEnd(width)}  ${line}`.trimEnd(),
    );
  });
}

function valueText({ value }: Part): string {
  switch (value.kind) {
    case "figure":
      return figureText(value.figure);
    case "figures": {
      const unit = value.figures[0]?.unit ?? "";
      return `${value.figures.map(roundedText).join(", ")} ${unit}`.trimEnd();
    }
    case "text":
      return printable(value.text);
    case "texts":
      return value.texts.map(printable).join(", ");
    case "none":
      return `none: ${value.why}`;
    case "rows":
      return "";
  }
}

// A table where every row has the same short cells, otherwise one block for each row.
function rowLines(rows: readonly (readonly Part[])[]): string[] {
  const [first] = rows;
  const same =
    first !== undefined &&
    rows.every(
      (row) =>
        row.length === first.length &&
        row.every(
          (part, column) =>
            part.name === first[column]?.name && cellText(part).length <= longestCell,
        ),
    );
  if (!same) {
    return rows.flatMap((row) =>
      partLines(row).map((line, index) => `  ${index === 0 ? "-" : " "}${line.slice(1)}`),
    );
  }
  const cells = [first.map(({ title }) => title), ...rows.map((row) => row.map(cellText))];
  const widths = first.map((_, column) =>
    Math.max(...cells.map((row) => row[column]?.length ?? 0)),
  );
  const isNumber = first.map(({ value }) => value.kind === "figure");
  return cells.map((row) =>
    `    ${row
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return isNumber[column] ? cell.padStart(width) : cell.padEnd(width);
      })
      .join("  ")}`.trimEnd(),
  );
}

function cellText(part: Part): string {
  const { value } = part;
  if (value.kind !== "figure") return valueText(part);
  return `${roundedText(value.figure)} ${value.figure.unit}`.trimEnd();
}

function labelled(label: string, text: string): string[] {
  const indent = 2 + "formula: ".length;
  return wrapped(text, widest - indent).map((line, index) =>
    index === 0 ? `  ${`${label}: `.padEnd(indent - 2)}${line}` : `${" ".repeat(indent)}${line}`,
  );
}
