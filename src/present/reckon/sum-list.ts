import type { Answer, Input, Sum } from "../../compute/reckon/sum.ts";
import { answerLine } from "./answer-text.ts";
import { quotedArgument } from "./typed-as.ts";
import { wrapped } from "./wrapped.ts";

const widest = 96;

/** A sum together with the answer to its own example. */
export interface WorkedSum {
  readonly sum: Sum;
  readonly answer: Answer;
}

/** The line that shows a sum at work, as it is typed. */
export function workedLine({ name, example }: Pick<Sum, "name" | "example">): string {
  return `witness reckon ${name} ${example.map(quotedArgument).join(" ")}`;
}

/** One sum: what it is for, its inputs, and a worked line with its answer. */
export function sumText({ sum, answer }: WorkedSum): string {
  const inputs = Object.entries(sum.inputs);
  const width = Math.max(...inputs.map(([name, input]) => shown(name, input).length));
  return [
    `${sum.name}: ${sum.about}`,
    ...inputs.flatMap(([name, input]) =>
      wrapped(aboutText(input), widest - width - 6).map(
        (line, index) => `    ${(index === 0 ? shown(name, input) : "").padEnd(width)}  ${line}`,
      ),
    ),
    `    $ ${workedLine(sum)}`,
    ...wrapped(answerLine(answer), widest - 8).map(
      (line, index) => `      ${index === 0 ? "→" : " "} ${line}`,
    ),
  ].join("\n");
}

/** Every sum, with how to type one in front. */
export function sumList(worked: readonly WorkedSum[]): string {
  return [
    "usage: witness reckon NAME INPUT=VALUE … [--json]",
    "",
    "Does the sums of the shop without a journal. Values are typed with their units, as the",
    "trade writes them; one with blanks goes in quotes. Inputs in brackets may be left out.",
    "",
    worked.map(sumText).join("\n\n"),
  ].join("\n");
}

function shown(name: string, { required }: Input): string {
  return required ? name : `[${name}]`;
}

function aboutText(input: Input): string {
  if (input.kind !== "choice") return `${input.about}, as \`${input.example}\``;
  return `${input.about} (${input.choices.join(", ")})`;
}
