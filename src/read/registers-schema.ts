import { roles } from "../model/person.ts";
import { authorities, decisionRules, figureKinds } from "../model/tolerance.ts";
import { date, duration } from "./clock-syntax.ts";
import { forAircraft } from "./identity.ts";
import { limitTableExample, limitTableShape } from "./limit-table.ts";
import { placeCode } from "./place-code.ts";
import { notBelowZero, quantity } from "./quantity-shape.ts";
import {
  choice,
  id,
  list,
  optional,
  record,
  required,
  type Shape,
  text,
  textAs,
  yesOrNo,
} from "./shape.ts";
import type { TextNode, TypedNode } from "./typed-tree.ts";
import { isZone } from "./zone-clock.ts";

// The shapes of the registers, as typed; `registers.ts` turns them into the model.

const zone = textAs((node, faults) => {
  if (isZone(node.text)) return node;
  return faults.add("not-a-zone", node.span, {
    message: `\`${node.text}\` is not a time zone`,
    help: ["write the name of the zone as in `America/Denver` or `Europe/Berlin`"],
  });
});

export const projectShape = record("project.yaml", {
  title: required(text, "title: A two-seat aeroplane"),
  designation: required(text, "designation: LB-2"),
  serial: required(text, 'serial: "0047"'),
  registration: optional(text, "registration: N000XX"),
  basis: required(choice("basis", ["amateur-built", "alteration"]), "basis: amateur-built"),
  zone: required(zone, "zone: America/Denver"),
  begun: required(date, "begun: 2025-09-06"),
  "judged-on": optional(date, "judged-on: 2026-11-10"),
  summary: required(text, "summary: What is being built, in one sentence."),
  address: optional(address(), "address: https://journal.example/"),
  place: optional(placeCode, "place: shop"),
  expected: optional(duration, 'expected: "1800:00"'),
  names: optional(choice("name style", ["names", "initials"]), "names: names"),
  private: optional(yesOrNo, "private: true"),
  stages: optional(list("stages", text, "stages: [drilled, riveted, closed]"), "stages: [cut]"),
  drawings: optional(
    list(
      "drawings",
      record("a drawing", {
        id: required(id, "id: HS-03"),
        title: required(text, "title: Front spar"),
        revision: required(text, "revision: C"),
      }),
      "drawings: [{ id: HS-03, title: Front spar, revision: C }]",
    ),
    "drawings: [{ id: HS-03, title: Front spar, revision: C }]",
  ),
});

export const peopleShape = record("people.yaml", {
  for: forAircraft,
  people: required(
    list(
      "people",
      record("a person", {
        id: required(id, "id: ada"),
        name: required(text, "name: Ada Someone"),
        initials: optional(text, "initials: A.S."),
        role: required(choice("role", roles), "role: builder"),
        standing: optional(text, "standing: airframe mechanic"),
        private: optional(yesOrNo, "private: true"),
      }),
      "people: [{ id: ada, name: Ada Someone, role: builder }]",
    ),
    "people: [{ id: ada, name: Ada Someone, role: builder }]",
  ),
});

/** A step as typed. */
export const stepShape = record("a step", {
  id: required(id, "id: HS-07"),
  title: required(text, "title: Rivet the tail ribs"),
  drawing: optional(text, "drawing: HS-03 rev C"),
  planned: optional(duration, 'planned: "14:00"'),
  looks: optional(list("looks", text, "looks: [driven heads]"), "looks: [driven heads]"),
});

/** An assembly as typed; `parts` are read with this same shape by `registers.ts`. */
export const assemblyShape = record("an assembly", {
  id: required(id, "id: stabilizer"),
  title: required(text, "title: Stabilizer"),
  summary: optional(text, "summary: What it is."),
  steps: optional(
    list("steps", stepShape, "steps: [{ id: HS-07, title: Rivet the tail ribs }]"),
    "steps: [{ id: HS-07, title: Rivet the tail ribs }]",
  ),
  parts: optional(nodes("assemblies"), "parts: [{ id: stabilizer, title: Stabilizer }]"),
});

export const assembliesShape = record("assemblies.yaml", {
  for: forAircraft,
  assemblies: required(nodes("assemblies"), "assemblies: [{ id: wing, title: Wing }]"),
});

/** Names and their sizes: `{ D: 3/32 in }`. */
export const sizesShape: Shape<ReadonlyMap<string, TextNode>> = mapOf("sizes", "{ D: 3/32 in }");

export const rulesShape = record("rules.yaml", {
  for: forAircraft,
  rules: required(
    list(
      "rules",
      record("a rule", {
        id: required(id, "id: heads-3-32"),
        title: required(text, "title: Shop head diameter"),
        set: optional(text, "set: ac43-13-1b-table-7-1"),
        with: optional(
          mapOf("parameters", "{ thread: 10-32, nut: tension }"),
          "with: { D: 1/8 in }",
        ),
        authority: optional(choice("authority", authorities), "authority: drawing"),
        source: optional(
          record("a source", {
            document: required(text, "document: Builder's manual"),
            edition: optional(text, "edition: rev C"),
            place: optional(text, "place: sheet 5-2"),
          }),
          "source: { document: HS-03, edition: rev C }",
        ),
        sizes: optional(sizesShape, "sizes: { D: 3/32 in }"),
        "at-least": optional(text, "at-least: 2 D"),
        "at-most": optional(text, "at-most: 0.25 in"),
        nominal: optional(text, "nominal: 12.500 in"),
        tolerance: optional(tolerance(), "tolerance: 0.015 in"),
        table: optional(limitTableShape, limitTableExample),
        judges: optional(choice("judgement", ["each value", ...figureKinds]), "judges: range"),
        over: optional(text, "over: edge-1-8"),
        steps: optional(list("steps", text, "steps: [HS-07, HS-08]"), "steps: [HS-07, HS-08]"),
        decision: optional(choice("decision rule", decisionRules), "decision: simple"),
        "adds-drag": optional(yesOrNo, "adds-drag: true"),
        advice: optional(
          list("sentences", text, "advice: [one sentence]"),
          "advice: [one sentence]",
        ),
      }),
      "rules: [{ id: edge, title: Edge distance, set: edge-distance-2d, with: { D: 1/8 in } }]",
    ),
    "rules: [{ id: edge, title: Edge distance, set: edge-distance-2d, with: { D: 1/8 in } }]",
  ),
});

const wholeNumber = textAs((node, faults) => {
  if (/^\d{1,6}$/.test(node.text)) return Number(node.text);
  return faults.add("not-a-number", node.span, {
    message: `\`${node.text}\` is not a whole number`,
    help: ["write digits only, as in `24`"],
  });
});

/** A whole number as typed, for counts. */
export const count: Shape<number> = wholeNumber;

const coverage = textAs((node, faults) => {
  if (/^\d(\.\d{1,4})?$/.test(node.text) && Number(node.text) > 0) return Number(node.text);
  return faults.add("not-a-number", node.span, {
    message: `\`${node.text}\` is not a coverage factor`,
    help: ["write the factor k of the calibration sheet, as in `coverage: 2`"],
  });
});

export const instrumentsShape = record("instruments.yaml", {
  for: forAircraft,
  instruments: required(
    list(
      "instruments",
      record("an instrument", {
        id: required(id, "id: caliper-1"),
        title: required(text, "title: Digital caliper"),
        resolution: optional(notBelowZero(quantity), "resolution: 0.0005 in"),
        uncertainty: optional(notBelowZero(quantity), "uncertainty: 0.001 in"),
        coverage: optional(coverage, "coverage: 2"),
        calibrations: optional(
          list(
            "calibrations",
            record("a calibration", {
              on: required(date, "on: 2025-08-20"),
              due: optional(date, "due: 2026-08-20"),
              by: optional(text, "by: calibration bench"),
            }),
            "calibrations: [{ on: 2025-08-20, due: 2026-08-20 }]",
          ),
          "calibrations: [{ on: 2025-08-20, due: 2026-08-20 }]",
        ),
      }),
      "instruments: [{ id: caliper-1, title: Digital caliper }]",
    ),
    "instruments: [{ id: caliper-1, title: Digital caliper }]",
  ),
});

export const lotsShape = record("lots.yaml", {
  for: forAircraft,
  lots: required(
    list(
      "lots",
      record("a lot", {
        id: required(id, "id: sealant-b2-118"),
        title: required(text, "title: Tank sealant, lot 118"),
        material: required(text, "material: sealant"),
        made: optional(date, "made: 2025-11-03"),
        expires: optional(date, "expires: 2026-08-03"),
        extensions: optional(
          list(
            "extensions",
            record("an extension", {
              on: required(date, "on: 2026-08-05"),
              until: required(date, "until: 2026-12-18"),
              why: required(text, "why: update test passed"),
            }),
            "extensions: [{ on: 2026-08-05, until: 2026-12-18, why: update test passed }]",
          ),
          "extensions: [{ on: 2026-08-05, until: 2026-12-18, why: update test passed }]",
        ),
        private: optional(yesOrNo, "private: true"),
      }),
      "lots: [{ id: sealant-b2-118, title: Tank sealant, material: sealant }]",
    ),
    "lots: [{ id: sealant-b2-118, title: Tank sealant, material: sealant }]",
  ),
});

function address() {
  return textAs((node, faults) => {
    const url = URL.canParse(node.text) ? new URL(node.text) : undefined;
    if (url && /^https?:$/.test(url.protocol)) return node.text.replace(/\/*$/, "/");
    return faults.add("wrong-shape", node.span, {
      message: `\`${node.text}\` is not an address of a site`,
      help: ["write it with `https://`, as in `https://journal.example/`"],
    });
  });
}

function nodes(what: string): Shape<readonly TypedNode[]> {
  return list(what, (node) => node, "[{ id: wing, title: Wing }]");
}

function mapOf(what: string, example: string): Shape<ReadonlyMap<string, TextNode>> {
  return (node, faults) => {
    if (node.kind !== "map") {
      return faults.add("wrong-shape", node.span, {
        message: `expected ${what} with their names`,
        help: [`write \`${example}\``],
      });
    }
    const values = new Map<string, TextNode>();
    for (const [name, { value }] of node.entries) {
      const read = text(value, faults);
      if (read) values.set(name, read);
    }
    return values;
  };
}

// One amount for both sides, or one for each.
function tolerance(): Shape<{ plus: TextNode; minus: TextNode; same: boolean }> {
  const both = record("a tolerance", {
    plus: required(text, "plus: 0.015 in"),
    minus: required(text, "minus: 0.000 in"),
  });
  return (node, faults) => {
    if (node.kind === "map") {
      const read = both(node, faults);
      return read && { plus: read.plus, minus: read.minus, same: false };
    }
    const read = text(node, faults);
    return read && { plus: read, minus: read, same: true };
  };
}
