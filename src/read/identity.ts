import type { Person } from "../model/person.ts";
import type { Project } from "../model/project.ts";
import type { Faults } from "./faults.ts";
import { optional, type RecordOf, record, type Shape, text } from "./shape.ts";
import type { MapNode, TextNode } from "./typed-tree.ts";

const example = 'for: { designation: LB-2, serial: "0047" }';

const fields = {
  builder: optional(text, "builder: Ada Someone"),
  designation: optional(text, "designation: LB-2"),
  serial: optional(text, 'serial: "0047"'),
  registration: optional(text, "registration: N000XX"),
};

/** Which aircraft a file is kept for. */
const identityShape: Shape<RecordOf<typeof fields>> = record("the aircraft of a file", fields);

/** The key `for`, which any register may have: whose aircraft it is kept for. */
export const forAircraft = optional(identityShape, example);

/** What a file says of the aircraft it is kept for, as far as it says anything. */
export type StatedIdentity = { readonly [Part in keyof typeof fields]?: TextNode };

/** What every file of a journal has to agree with. */
export interface Identity {
  readonly project: Project;
  readonly people: ReadonlyMap<string, Person>;
}

/** Compares the `for` of a register with the project and its builders. */
export function compareRegister(tree: MapNode, identity: Identity, faults: Faults): void {
  const typed = tree.entries.get("for")?.value;
  if (typed?.kind !== "map") return;
  const stated: StatedIdentity = Object.fromEntries(
    Object.keys(fields).flatMap((name) => {
      const node = typed.entries.get(name)?.value;
      return node?.kind === "text" ? [[name, node]] : [];
    }),
  );
  compareIdentity(stated, identity, faults);
}

/**
 * Reports each part that a file states otherwise than `project.yaml` and `people.yaml` do. What
 * it does not state is not compared; white space does not count.
 */
export function compareIdentity(
  { builder, ...stated }: StatedIdentity,
  { project, people }: Identity,
  faults: Faults,
): void {
  for (const part of ["designation", "serial", "registration"] as const) {
    const node = stated[part];
    const known = project[part];
    if (!node || onOneLine(node.text) === onOneLine(known ?? "")) continue;
    faults.add("identity-differs", node.span, {
      message: known
        ? `the ${part} is \`${node.text}\` here and \`${known}\` in project.yaml`
        : `the ${part} is \`${node.text}\` here, and project.yaml has none`,
      help: [
        "write the same in both; a file of another aircraft does not belong into this journal",
      ],
    });
  }
  const builders = [...people.values()].filter(({ role }) => role === "builder");
  if (!builder || builders.some(({ name }) => onOneLine(name) === onOneLine(builder.text))) return;
  faults.add("identity-differs", builder.span, {
    message: `the builder is \`${builder.text}\` here, and nobody in people.yaml is a builder of that name`,
    notes: builders.map(({ name }) => `people.yaml has \`${name}\` as builder`),
    help: ["write the name as in people.yaml, or correct it there"],
  });
}

function onOneLine(typed: string): string {
  return typed.trim().replace(/\s+/g, " ");
}
