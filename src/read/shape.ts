import type { Span } from "../model/diagnostic.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import type { ListNode, MapNode, TextNode, TypedNode } from "./typed-tree.ts";

/**
 * Reads one typed node as a value.
 * @returns `undefined` when a fault was added; a shape never throws at what was typed.
 */
export type Shape<T> = (node: TypedNode, faults: Faults) => T | undefined;

/** One key of a record: how its value is read, whether it must be there, and how it looks. */
export interface Field<T> {
  readonly shape: Shape<T>;
  readonly required: boolean;
  /** A line that works, for messages: `date: 2026-03-14`. */
  readonly example: string;
}

type Fields = Record<string, Field<unknown>>;
type ValueOf<F> = F extends Field<infer T> ? T : never;

/** What a record reads as: its fields, and where it stands. */
export type RecordOf<F extends Fields> = {
  readonly [K in keyof F]: F[K]["required"] extends true
    ? ValueOf<F[K]>
    : ValueOf<F[K]> | undefined;
} & { readonly span: Span; readonly node: MapNode };

export function required<T>(shape: Shape<T>, example: string): Field<T> & { required: true } {
  return { shape, required: true, example };
}

export function optional<T>(shape: Shape<T>, example: string): Field<T> & { required: false } {
  return { shape, required: false, example };
}

// What stands behind a comma inside braces is a key, even where a decimal was meant.
function strayed(name: string): readonly string[] {
  return /^\d/.test(name)
    ? ["inside `{ … }` a comma ends a value: write decimals with a point, as in `0.25 in`"]
    : ["leave it out, or move what it says into the prose"];
}

/**
 * A map with known keys only. An unknown key is a fault, with the nearest known one as help;
 * so is a required key that is missing.
 * @param what Its name in messages: `a session`.
 */
export function record<F extends Fields>(what: string, fields: F): Shape<RecordOf<F>> {
  const names = Object.keys(fields);
  return (node, faults) => {
    const map = asMap(node, what, fields, faults);
    if (!map) return undefined;
    for (const [name, { key }] of map.entries) {
      if (Object.hasOwn(fields, name)) continue;
      const nearest = nearestName(name, names);
      faults.add("unknown-key", key.span, {
        message: `${what} has no \`${name}\``,
        label: nearest ? `did you mean \`${nearest}\`?` : "not known here",
        notes: [`known here: ${names.join(", ")}`],
        help: nearest ? [`write \`${fields[nearest]?.example ?? nearest}\``] : strayed(name),
      });
    }
    const values: Record<string, unknown> = { span: map.span, node: map };
    let complete = true;
    for (const name of names) {
      const field = fields[name] as Field<unknown>;
      const entry = map.entries.get(name);
      if (entry && !isBlank(entry.value)) {
        values[name] = field.shape(entry.value, faults);
        if (values[name] === undefined && field.required) complete = false;
      } else if (field.required) {
        complete = false;
        faults.add("missing-key", entry?.key.span ?? map.span, {
          message: entry ? `\`${name}\` of ${what} is empty` : `${what} needs \`${name}\``,
          help: [`write \`${field.example}\``],
        });
      }
    }
    return complete ? (values as RecordOf<F>) : undefined;
  };
}

/** A list whose every item has the shape. Items at fault are left out of the value. */
export function list<T>(what: string, shape: Shape<T>, example: string): Shape<readonly T[]> {
  return (node, faults) => {
    if (node.kind !== "list") {
      return faults.add("wrong-shape", node.span, {
        message: `expected a list of ${what}, found ${kindOf(node)}`,
        help: [`write \`${example}\``],
      });
    }
    return node.items.map((item) => shape(item, faults)).filter((item) => item !== undefined);
  };
}

/** Text with its place. */
export const text: Shape<TextNode> = (node, faults) => {
  if (node.kind === "text") return node;
  return faults.add("wrong-shape", node.span, {
    message: `expected text, found ${kindOf(node)}`,
    help: ["put the text in quotes if it begins with a bracket"],
  });
};

/** Text read further by a function that adds its own fault. */
export function textAs<T>(read: (node: TextNode, faults: Faults) => T | undefined): Shape<T> {
  return (node, faults) => {
    const typed = text(node, faults);
    return typed && read(typed, faults);
  };
}

/** One of a few words. */
export function choice<const T extends string>(
  what: string,
  choices: readonly T[],
): Shape<{ readonly value: T; readonly span: Span }> {
  return textAs((node, faults) => {
    const value = choices.find((word) => word === node.text);
    if (value !== undefined) return { value, span: node.span };
    const nearest = nearestName(node.text, choices);
    return faults.add("not-a-choice", node.span, {
      message: `\`${node.text}\` is not a ${what}`,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      notes: [`a ${what} is one of: ${choices.join(", ")}`],
      help: [`write \`${nearest ?? choices.join("` or `")}\``],
    });
  });
}

/** `true` or `false`, and nothing else. */
export const yesOrNo: Shape<boolean> = textAs((node, faults) => {
  if (node.text === "true") return true;
  if (node.text === "false") return false;
  faults.add("not-a-choice", node.span, {
    message: `expected \`true\` or \`false\`, found \`${node.text}\``,
    help: ["write `true` or `false`, in lower case"],
  });
  return undefined;
});

/** A name that other entries refer to: letters, digits, dots, dashes and underscores. */
export const id: Shape<TextNode> = textAs((node, faults) => {
  if (/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/.test(node.text)) return node;
  return faults.add("not-an-id", node.span, {
    message: `\`${node.text}\` cannot be used as an id`,
    notes: [
      "an id has letters, digits, dots, dashes and underscores, and begins with one of the first two",
    ],
    help: ["write a short name without spaces, as in `HS-07`, and put the words into `title`"],
  });
});

/** A name declared elsewhere. Compared as typed; the nearest declared one is offered. */
export function nameOf(
  what: string,
  where: string,
  declared: { has(name: string): boolean; keys(): Iterable<string> },
): Shape<TextNode> {
  return textAs((node, faults) => {
    if (declared.has(node.text)) return node;
    const nearest = nearestName(node.text, declared.keys());
    return faults.add("unknown-name", node.span, {
      message: `no ${what} is called \`${node.text}\``,
      label: nearest ? `did you mean \`${nearest}\`?` : `not in ${where}`,
      help: [
        ...(nearest ? [`write \`${nearest}\``] : []),
        `if it is a new ${what}, declare it in ${where}`,
      ],
    });
  });
}

/** Leaves out what is `undefined`, as types with exact optional properties want it. */
export function given<T extends object>(
  values: T,
): { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
} {
  const kept = Object.fromEntries(
    Object.entries(values).filter(([, value]) => value !== undefined),
  );
  return kept as ReturnType<typeof given<T>>;
}

function asMap(node: TypedNode, what: string, fields: Fields, faults: Faults): MapNode | undefined {
  if (node.kind === "map") return node;
  const example = Object.values(fields)
    .filter((field) => field.required)
    .map((field) => field.example);
  return faults.add("wrong-shape", node.span, {
    message: `expected ${what}, found ${kindOf(node)}`,
    help: [`write \`{ ${example.join(", ") || "key: value"} }\``],
  });
}

function kindOf(node: TextNode | ListNode | MapNode): string {
  if (node.kind === "list") return "a list";
  if (node.kind === "map") return "keys and values";
  return node.text === "" ? "nothing" : `\`${node.text}\``;
}

// A key with nothing behind it counts as not there; `""` was typed on purpose.
function isBlank(node: TypedNode): boolean {
  return node.kind === "text" && node.text === "" && node.source === "";
}
