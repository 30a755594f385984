import { Command } from "commander";
import { sums } from "../compute/reckon/index.ts";
import type { Sum } from "../compute/reckon/sum.ts";
import { answerJson } from "../present/reckon/answer-json.ts";
import { answerText } from "../present/reckon/answer-text.ts";
import { faultText, type InputFault } from "../present/reckon/fault-text.ts";
import { sumList, sumText, type WorkedSum, workedLine } from "../present/reckon/sum-list.ts";
import { nearestName } from "../read/nearest-name.ts";
import { UsageProblem } from "./journal.ts";
import { placedProblem, readInputs } from "./reckon-inputs.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

interface ReckonOptions {
  readonly json?: boolean;
  readonly help?: boolean;
}

/**
 * `witness reckon NAME INPUT=VALUE …`: the sums of the shop, without a journal. Without a name,
 * or with `--help`, it lists them.
 */
export function reckonCommand(terminal: Terminal): Command {
  return new Command("reckon")
    .argument("[name]", "the sum, such as `rivet-row`")
    .argument("[inputs...]", "its inputs, `NAME=VALUE` each")
    .description("do a sum of the shop; without a name, list them all with a worked line each")
    .option("--json", "print the answer as one object")
    .helpOption(false)
    .option("-h, --help", "list the sums, or say what one of them takes")
    .action((name: string | undefined, inputs: readonly string[], options: ReckonOptions) => {
      if (name === undefined) {
        terminal.out(sumList(sums.map(worked)));
        return;
      }
      const sum = sumNamed(name);
      if (options.help) terminal.out(sumText(worked(sum)));
      else reckon(sum, inputs, options.json === true, terminal);
    });
}

function sumNamed(name: string): Sum {
  const sum = sums.find((each) => each.name === name);
  if (sum) return sum;
  const names = sums.map((each) => each.name);
  const nearest = nearestName(name, names);
  throw new UsageProblem(`no sum is called \`${name}\``, [
    nearest === undefined
      ? `the sums are ${names.join(", ")}`
      : `did you mean \`witness reckon ${nearest}\`?`,
    "`witness reckon` lists them with their inputs",
  ]);
}

function worked(sum: Sum): WorkedSum {
  const read = readInputs(sum, sum.example);
  const outcome = read.ok ? sum.reckon(read.values) : undefined;
  if (!outcome?.ok) throw new RangeError(`the example of ${sum.name} does not work`);
  return { sum, answer: outcome.answer };
}

function reckon(sum: Sum, typed: readonly string[], json: boolean, terminal: Terminal): void {
  const read = readInputs(sum, typed);
  if (!read.ok) {
    complain(sum, read.faults, terminal);
    return;
  }
  const outcome = sum.reckon(read.values);
  if (!outcome.ok) {
    complain(
      sum,
      outcome.problems.map((problem) => placedProblem(typed, problem)),
      terminal,
    );
    return;
  }
  const { answer } = outcome;
  terminal.out(
    json
      ? JSON.stringify(answerJson(sum, read.understood, answer), undefined, 2)
      : answerText(sum, read.understood, answer),
  );
}

function complain(sum: Sum, faults: readonly InputFault[], terminal: Terminal): void {
  const texts = faults.map((fault) => faultText(fault, terminal.paint));
  terminal.err(`${texts.join("\n\n")}\n\nwitness: \`${sum.name}\` was not reckoned`);
  terminal.err(`  = help: a line that works: ${workedLine(sum)}`);
  terminal.exit(exitCodes.usage);
}
