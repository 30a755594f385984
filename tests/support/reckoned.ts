import { placedProblem, readInputs } from "../../src/cli/reckon-inputs.ts";
import { sums } from "../../src/compute/reckon/index.ts";
import type { Sum } from "../../src/compute/reckon/sum.ts";
import { answerJson, type Json } from "../../src/present/reckon/answer-json.ts";
import { answerText } from "../../src/present/reckon/answer-text.ts";
import { faultText } from "../../src/present/reckon/fault-text.ts";

/** The sum of a name; throws when there is none. */
export function sumNamed(name: string): Sum {
  const sum = sums.find((each) => each.name === name);
  if (sum) return sum;
  throw new Error(`no sum is called ${name}`);
}

/** The answer to inputs typed as on the command line, as JSON; throws when there is none. */
export function reckoned(name: string, ...typed: string[]): { readonly [key: string]: Json } {
  const { sum, read, answer } = answerTo(name, typed);
  return answerJson(sum, read.understood, answer);
}

/** The same as text. */
export function reckonedText(name: string, ...typed: string[]): string {
  const { sum, read, answer } = answerTo(name, typed);
  return answerText(sum, read.understood, answer);
}

/** What is said about inputs that have no answer; throws when there is one. */
export function refusal(name: string, ...typed: string[]): string {
  const sum = sumNamed(name);
  const read = readInputs(sum, typed);
  if (!read.ok) return read.faults.map((fault) => faultText(fault)).join("\n\n");
  const outcome = sum.reckon(read.values);
  if (outcome.ok) throw new Error(`${name} ${typed.join(" ")} has an answer`);
  return outcome.problems.map((each) => faultText(placedProblem(typed, each))).join("\n\n");
}

function answerTo(name: string, typed: readonly string[]) {
  const sum = sumNamed(name);
  const read = readInputs(sum, typed);
  const outcome = read.ok ? sum.reckon(read.values) : undefined;
  if (read.ok && outcome?.ok) return { sum, read, answer: outcome.answer };
  throw new Error(refusal(name, ...typed));
}
