import type { Input, InputProblem, InputValue, ReadInput, Sum } from "../compute/reckon/sum.ts";
import type { Load } from "../model/load.ts";
import type { Quantity } from "../model/quantity.ts";
import type { UnderstoodInput } from "../present/reckon/answer-json.ts";
import type { InputFault } from "../present/reckon/fault-text.ts";
import { typedAs } from "../present/reckon/typed-as.ts";
import { nearestName } from "../read/nearest-name.ts";
import { readValue } from "./reckon-value.ts";

/** Inputs read: the values for the sum, and how each was understood. */
export type ReadInputs =
  | {
      readonly ok: true;
      readonly values: Readonly<Record<string, InputValue>>;
      readonly understood: readonly UnderstoodInput[];
    }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** One `NAME=VALUE` as typed. */
interface Argument {
  /** Place among the arguments. */
  readonly index: number;
  /** The whole argument. */
  readonly text: string;
  readonly name: string;
  readonly value: string;
}

type PlacedFault = InputFault & { readonly index: number };

/**
 * Reads the inputs of a sum as they were typed on the command line, `NAME=VALUE` each.
 * @returns Everything that is wrong at once: in the order typed, then what is missing.
 */
export function readInputs(sum: Sum, typed: readonly string[]): ReadInputs {
  const faults: PlacedFault[] = [];
  const given = new Map<string, Argument[]>();
  typed.forEach((text, index) => {
    const argument = argumentOf(text, index);
    if (!argument) {
      faults.push({ index, ...noName(text, typed[index - 1]) });
      return;
    }
    const input = inputNamed(sum, argument.name);
    const before = given.get(argument.name) ?? [];
    if (!input) faults.push({ index, ...unknownInput(sum, argument) });
    else if (before.length > 0 && input.kind !== "loads")
      faults.push({ index, ...givenTwice(argument) });
    else given.set(argument.name, [...before, argument]);
  });

  const understood = new Map<string, UnderstoodInput>();
  const lengths = new Map<string, Quantity>();
  // Inputs in terms of other inputs are read behind those.
  const order = ([, input]: readonly [string, Input]) => (input.kind === "length in sizes" ? 1 : 0);
  for (const [name, input] of Object.entries(sum.inputs).toSorted((a, b) => order(a) - order(b))) {
    const reads: ReadInput[] = [];
    for (const argument of given.get(name) ?? []) {
      const value = readValue(name, input, argument.value, lengths);
      if (value.ok === true) reads.push(value.read);
      else if (!value.ok) {
        const { message, help } = value;
        const example = `for example \`${typedAs(name, input.example)}\``;
        const offset = argument.text.length - argument.value.length + value.offset;
        const place = { text: argument.text, offset, length: value.length };
        faults.push({ index: argument.index, place, message, help: [...help, example] });
      }
    }
    const read = together(reads);
    if (!read) continue;
    const texts = given.get(name)?.map(({ value }) => value.trim()) ?? [];
    understood.set(name, { name, typed: texts.join(", "), read });
    if (read.kind === "quantity") lengths.set(name, read.value);
  }

  const missing = Object.entries(sum.inputs)
    .filter(([name, input]) => !given.has(name) && isRequired(input, given))
    .map(([name, input]) => missingInput(name, input));
  const inOrder = faults.toSorted((a, b) => a.index - b.index);
  if (inOrder.length + missing.length > 0) return { ok: false, faults: [...inOrder, ...missing] };
  return {
    ok: true,
    values: Object.fromEntries(Array.from(understood, ([name, { read }]) => [name, read.value])),
    understood: Object.keys(sum.inputs).flatMap((name) => understood.get(name) ?? []),
  };
}

/** A problem that the sum itself found, at the place where its input was typed. */
export function placedProblem(
  typed: readonly string[],
  { input, message, help }: InputProblem,
): InputFault {
  const found = typed.map(argumentOf).find((each) => each !== undefined && each.name === input);
  if (!found) return { message, help };
  const { text, value } = found;
  const place = { text, offset: text.length - value.length, length: Math.max(1, value.length) };
  return { place, message, help };
}

function argumentOf(text: string, index: number): Argument | undefined {
  const sign = text.indexOf("=");
  if (sign < 1) return undefined;
  return { index, text, name: text.slice(0, sign).trim(), value: text.slice(sign + 1) };
}

function inputNamed(sum: Sum, name: string): Input | undefined {
  return Object.hasOwn(sum.inputs, name) ? sum.inputs[name] : undefined;
}

function isRequired(
  { required, requiredUnless }: Input,
  given: ReadonlyMap<string, unknown>,
): boolean {
  return (
    required ?? (requiredUnless !== undefined && !requiredUnless.some((name) => given.has(name)))
  );
}

// Loads of several arguments are one list; every other input is typed once.
function together(reads: readonly ReadInput[]): ReadInput | undefined {
  const loads = reads.flatMap((read): readonly Load[] => (read.kind === "loads" ? read.value : []));
  return loads.length > 0 ? { kind: "loads", value: loads } : reads[0];
}

function noName(text: string, before: string | undefined): InputFault {
  const name = before === undefined ? undefined : argumentOf(before, 0)?.name;
  return {
    place: { text, offset: 0, length: Math.max(1, text.length) },
    message: `\`${text}\` is not an input: inputs are typed NAME=VALUE`,
    help: name
      ? [
          `put a value with blanks in quotes: \`${typedAs(name, `${before?.slice(name.length + 1)} ${text}`)}\``,
        ]
      : ["write the name of the input, `=` and the value without blanks between"],
  };
}

function unknownInput(sum: Sum, { text, name }: Argument): InputFault {
  const names = Object.keys(sum.inputs);
  const nearest = nearestName(name, names);
  return {
    place: { text, offset: 0, length: name.length || 1 },
    message: `\`${name}\` is not an input of \`${sum.name}\``,
    help: [
      nearest === undefined
        ? `it takes ${names.map((each) => `\`${each}\``).join(", ")}`
        : `did you mean \`${nearest}\`?`,
    ],
  };
}

function givenTwice({ text, name }: Argument): InputFault {
  return {
    place: { text, offset: 0, length: name.length },
    message: `\`${name}\` is given twice`,
    help: ["keep one of them"],
  };
}

function missingInput(name: string, { about, example, requiredUnless }: Input): InputFault {
  const instead = (requiredUnless ?? []).map((other) => ` (or \`${other}\`)`).join("");
  return {
    message: `\`${name}\`${instead} is missing: ${about}`,
    help: [`for example \`${typedAs(name, example)}\``],
  };
}
