import type { Assembly, Step } from "../model/assembly.ts";
import type { Registers } from "../model/build.ts";
import type { Span } from "../model/diagnostic.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Lot } from "../model/lot.ts";
import type { Person } from "../model/person.ts";
import { type Drawing, type Project, usualStages } from "../model/project.ts";
import { drawingReference } from "./drawing-reference.ts";
import type { Faults } from "./faults.ts";
import type { QuantityNode } from "./quantity-shape.ts";
import { readRules } from "./read-rules.ts";
import {
  assembliesShape,
  assemblyShape,
  instrumentsShape,
  lotsShape,
  peopleShape,
  projectShape,
} from "./registers-schema.ts";
import { given } from "./shape.ts";
import type { MapNode, TextNode, TypedNode } from "./typed-tree.ts";

/** The trees of the register files; `undefined` where a file is missing or at fault. */
export interface RegisterTrees {
  readonly people: MapNode | undefined;
  readonly assemblies: MapNode | undefined;
  readonly rules: MapNode | undefined;
  readonly instruments: MapNode | undefined;
  readonly lots: MapNode | undefined;
}

/** Reads `project.yaml`. */
export function readProject(tree: MapNode, faults: Faults): Project | undefined {
  const typed = projectShape(tree, faults);
  if (!typed) return undefined;
  return {
    title: typed.title.text,
    designation: typed.designation.text,
    serial: typed.serial.text,
    ...given({ registration: typed.registration?.text, address: typed.address }),
    basis: typed.basis.value,
    zone: typed.zone.text,
    begun: typed.begun.date,
    ...given({ judgedOn: typed["judged-on"]?.date }),
    summary: typed.summary.text,
    place: typed.place?.text ?? "shop",
    ...given({ expected: typed.expected?.minutes }),
    names: typed.names?.value ?? "names",
    private: typed.private ?? false,
    drawings: unique(typed.drawings ?? [], "drawing", faults).map(({ id, title, revision }) => ({
      id: id.text,
      title: title.text,
      revision: revision.text,
    })),
    stages: typed.stages?.map(({ text }) => text) ?? usualStages,
    span: typed.designation.span,
  };
}

/**
 * Reads the registers. What is at fault is left out, so that the rest can be read too.
 * @param drawings Those of project.yaml; absent when that could not be read, and then the
 *   drawings that steps name are not looked up.
 */
export function readRegisters(
  trees: RegisterTrees,
  drawings: readonly Drawing[] | undefined,
  faults: Faults,
): Registers {
  const { assemblies, steps } = readAssemblies(trees.assemblies, drawings, faults);
  return {
    people: readPeople(trees.people, faults),
    assemblies,
    steps,
    rules: readRules(trees.rules, steps, faults),
    instruments: readInstruments(trees.instruments, faults),
    lots: readLots(trees.lots, faults),
  };
}

function readPeople(tree: MapNode | undefined, faults: Faults): Map<string, Person> {
  const typed = tree && peopleShape(tree, faults);
  return byId(
    unique(typed?.people ?? [], "person", faults).map((person) => ({
      id: person.id.text,
      name: person.name.text,
      initials: person.initials?.text ?? initialsOf(person.name.text),
      role: person.role.value,
      ...given({ standing: person.standing?.text }),
      private: person.private ?? false,
      span: person.id.span,
    })),
  );
}

function initialsOf(name: string): string {
  return name
    .split(/[\s-]+/)
    .filter((part) => part !== "")
    .map((part) => `${[...part][0]}.`)
    .join("");
}

type TypedAssembly = NonNullable<ReturnType<typeof assemblyShape>>;

function readAssemblies(
  tree: MapNode | undefined,
  drawings: readonly Drawing[] | undefined,
  faults: Faults,
) {
  const drawing = drawings && drawingReference(drawings);
  const assemblies = new Map<string, Assembly>();
  const steps = new Map<string, Step>();
  const assemblyIds = new Map<string, Span>();
  const stepIds = new Map<string, Span>();

  // In the order of the file, so that of two with one id the second is at fault.
  const visitAll = (nodes: readonly TypedNode[], path: readonly string[]): string[] =>
    nodes.flatMap((node) => {
      const typed = assemblyShape(node, faults);
      return typed && isNew(typed.id, "assembly", assemblyIds, faults) ? [visit(typed, path)] : [];
    });

  const visit = (typed: TypedAssembly, above: readonly string[]): string => {
    const id = typed.id.text;
    const path = [...above, id];
    const parent = above.at(-1);
    const ownSteps = (typed.steps ?? []).filter((step) => isNew(step.id, "step", stepIds, faults));
    // A place in the map first: parents stand before their children.
    assemblies.set(id, {
      id,
      title: typed.title.text,
      ...given({ summary: typed.summary?.text, parent }),
      children: [],
      steps: ownSteps.map((step) => step.id.text),
      path,
      span: typed.id.span,
    });
    for (const step of ownSteps) {
      if (step.drawing) drawing?.(step.drawing, faults);
      steps.set(step.id.text, {
        id: step.id.text,
        title: step.title.text,
        assembly: id,
        ...given({ drawing: step.drawing?.text, planned: step.planned?.minutes }),
        looks: step.looks?.map(({ text }) => text) ?? [],
        span: step.id.span,
      });
    }
    const children = visitAll(typed.parts ?? [], path);
    const placed = assemblies.get(id);
    if (placed) assemblies.set(id, { ...placed, children });
    return id;
  };

  const typed = tree && assembliesShape(tree, faults);
  visitAll(typed?.assemblies ?? [], []);
  return { assemblies, steps };
}

function readInstruments(tree: MapNode | undefined, faults: Faults): Map<string, Instrument> {
  const typed = tree && instrumentsShape(tree, faults);
  const instruments = unique(typed?.instruments ?? [], "instrument", faults);
  for (const { resolution, uncertainty } of instruments)
    if (resolution && uncertainty) checkOneKind(resolution, uncertainty, faults);
  return byId(
    instruments.map((instrument) => ({
      id: instrument.id.text,
      title: instrument.title.text,
      ...given({
        resolution: instrument.resolution?.quantity,
        uncertainty: instrument.uncertainty?.quantity,
      }),
      coverage: instrument.coverage ?? 2,
      calibrations: (instrument.calibrations ?? [])
        .map(({ on, due, by }) => ({
          on: on.date,
          ...given({ due: due?.date, by: by?.text }),
          span: on.node.span,
        }))
        .sort((a, b) => (a.on < b.on ? -1 : 1)),
      span: instrument.id.span,
    })),
  );
}

// The step of a display and the calibration's uncertainty are of one kind, or one in per cent.
function checkOneKind(resolution: QuantityNode, uncertainty: QuantityNode, faults: Faults): void {
  const kind = ({ quantity: { unit } }: QuantityNode) =>
    unit.dimension === "temperature difference" ? "temperature" : unit.dimension;
  const [step, expanded] = [kind(resolution), kind(uncertainty)];
  if (step === expanded || step === "ratio" || expanded === "ratio") return;
  faults.add("wrong-dimension", uncertainty.span, {
    message: `the uncertainty is a ${expanded}, and the resolution a ${step}`,
    help: ["write both as one instrument shows them"],
  });
}

function readLots(tree: MapNode | undefined, faults: Faults): Map<string, Lot> {
  const typed = tree && lotsShape(tree, faults);
  return byId(
    unique(typed?.lots ?? [], "lot", faults).map((lot) => ({
      id: lot.id.text,
      title: lot.title.text,
      material: lot.material.text,
      ...given({ made: lot.made?.date, expires: lot.expires?.date }),
      extensions: (lot.extensions ?? []).map(({ on, until, why }) => ({
        on: on.date,
        until: until.date,
        why: why.text,
      })),
      private: lot.private ?? false,
      span: lot.id.span,
    })),
  );
}

/** Those whose id was not taken before; the others are faults. */
export function unique<T extends { readonly id: TextNode }>(
  items: readonly T[],
  what: string,
  faults: Faults,
): T[] {
  const seen = new Map<string, Span>();
  return items.filter((item) => isNew(item.id, what, seen, faults));
}

/**
 * Whether an id is free, compared without regard to letter case, because ids become addresses
 * and file names. Takes it, or adds a fault.
 */
export function isNew(
  id: TextNode,
  what: string,
  seen: Map<string, Span>,
  faults: Faults,
): boolean {
  const key = id.text.toLowerCase();
  const first = seen.get(key);
  if (!first) {
    seen.set(key, id.span);
    return true;
  }
  faults.add("duplicate-id", id.span, {
    message: `another ${what} is called \`${id.text}\``,
    notes: [`the first stands at ${first.file}:${first.line}`],
    help: ["give one of the two another id, and change it where it is used"],
  });
  return false;
}

function byId<T extends { readonly id: string }>(items: readonly T[]): Map<string, T> {
  return new Map(items.map((item) => [item.id, item]));
}
