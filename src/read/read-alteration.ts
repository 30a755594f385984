import type { Alteration, AlterationTest } from "../model/alteration.ts";
import type { Registers } from "../model/build.ts";
import type { Basis } from "../model/project.ts";
import {
  type ContinuedHeading,
  continuedHeadings,
} from "../model/published/alteration-paperwork.ts";
import { date } from "./clock-syntax.ts";
import type { Faults } from "./faults.ts";
import { forAircraft } from "./identity.ts";
import { unique } from "./registers.ts";
import { given, id, list, nameOf, optional, record, required, text } from "./shape.ts";
import type { MapNode } from "./typed-tree.ts";

/** What `alteration.yaml` may name. */
export interface AlterationNames extends Pick<Registers, "people" | "steps"> {
  /** Changes of equipment of `balance.yaml`; empty without one. */
  readonly changes: ReadonlyMap<string, unknown>;
}

const words = optional(text, "Two sentences.");

const continuedShape = record(
  "instructions for continued airworthiness",
  Object.fromEntries(
    continuedHeadings.map(({ key }) => [key, optional(text, `${key}: not applicable`)]),
  ),
);

function alterationShape({ people, steps, changes }: AlterationNames) {
  const step = nameOf("step", "assemblies.yaml", steps);
  return record("alteration.yaml", {
    for: forAircraft,
    title: required(text, "title: Second radio"),
    where: required(text, "where: instrument panel, right-hand side"),
    maker: optional(text, "maker: as on the data plate"),
    work: optional(
      list("paragraphs", text, "work: [Cut the opening.]"),
      "work: [Cut the opening.]",
    ),
    data: optional(
      list(
        "documents",
        record("a document", {
          document: required(text, "document: LE-2"),
          revision: required(text, "revision: original"),
          title: optional(text, "title: Leading edge"),
          place: optional(text, "place: sheet 2"),
          from: optional(text, "from: who issued it"),
          note: words,
        }),
        "data: [{ document: LE-2, revision: original }]",
      ),
      "data: [{ document: LE-2, revision: original }]",
    ),
    tests: optional(
      list(
        "tests",
        record("a test", {
          id: required(id, "id: T-1"),
          what: required(text, "what: proof load on the bond"),
          step: optional(step, "step: N-1"),
          on: optional(date, "on: 2026-04-20"),
          by: optional(nameOf("person", "people.yaml", people), "by: ada"),
          result: optional(text, "result: no set after ten minutes"),
        }),
        "tests: [{ id: T-1, what: proof load on the bond }]",
      ),
      "tests: [{ id: T-1, what: proof load on the bond }]",
    ),
    "earlier-changes": optional(text, "earlier-changes: none that meet it"),
    "flight-manual": optional(text, "flight-manual: no change"),
    changes: optional(
      list("changes", nameOf("change of equipment", "balance.yaml", changes), "changes: [C-1]"),
      "changes: [C-1]",
    ),
    "continued-airworthiness": optional(
      continuedShape,
      "continued-airworthiness: { servicing: not applicable }",
    ),
  });
}

/**
 * Reads `alteration.yaml`. What is at fault is left out, so that the rest can be read too. Only a
 * journal of an alteration has it.
 */
export function readAlteration(
  tree: MapNode,
  { basis, names }: { readonly basis: Basis; readonly names: AlterationNames },
  faults: Faults,
): Alteration | undefined {
  if (basis !== "alteration") {
    return faults.add("not-an-alteration", tree.span, {
      message: `the journal has \`alteration.yaml\`, and project.yaml says \`basis: ${basis}\``,
      notes: ["the file is about work on a finished type-certificated aircraft"],
      help: [
        "take `alteration.yaml` out of the journal",
        "if a type-certificated aircraft is altered, write `basis: alteration` in project.yaml",
      ],
    });
  }
  const typed = alterationShape(names)(tree, faults);
  if (!typed) return undefined;
  const continued = new Map<ContinuedHeading, string>();
  for (const { key } of continuedHeadings) {
    const said = typed["continued-airworthiness"]?.[key]?.text;
    if (said !== undefined) continued.set(key, said);
  }
  return {
    title: typed.title.text,
    where: typed.where.text,
    ...given({ maker: typed.maker?.text }),
    work: (typed.work ?? []).map((each) => each.text),
    data: (typed.data ?? []).map(({ document, revision, title, place, from, note, span }) => ({
      document: document.text,
      revision: revision.text,
      ...given({ title: title?.text, place: place?.text, from: from?.text, note: note?.text }),
      span,
    })),
    tests: unique(typed.tests ?? [], "test", faults).map((test): AlterationTest => {
      if (test.result && !test.on) {
        faults.add("missing-key", test.id.span, {
          message: `test \`${test.id.text}\` has a result and no day`,
          help: ["write `on:` with the day it was made, or leave `result` out until then"],
        });
      }
      return {
        id: test.id.text,
        what: test.what.text,
        ...given({
          step: test.step?.text,
          date: test.on?.date,
          by: test.by?.text,
          result: test.result?.text,
        }),
        span: test.id.span,
      };
    }),
    ...given({
      earlierChanges: typed["earlier-changes"]?.text,
      flightManual: typed["flight-manual"]?.text,
      changes: typed.changes?.map((each) => each.text),
    }),
    continued,
    span: typed.title.span,
  };
}
