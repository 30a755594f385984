import type { Registers } from "../model/build.ts";
import { inspectionResults } from "../model/inspection.ts";
import { roles } from "../model/person.ts";
import type { Project } from "../model/project.ts";
import { workKinds } from "../model/session.ts";
import { clock, date, dateAndClock, duration } from "./clock-syntax.ts";
import { drawingReference } from "./drawing-reference.ts";
import { placeCode } from "./place-code.ts";
import { notBelowZero, quantities, quantity, quantityOf } from "./quantity-shape.ts";
import { count, sizesShape } from "./registers-schema.ts";
import {
  choice,
  id,
  list,
  nameOf,
  optional,
  record,
  required,
  type Shape,
  text,
  yesOrNo,
} from "./shape.ts";
import { timecode } from "./timecode-syntax.ts";
import type { TextNode, TypedNode } from "./typed-tree.ts";
import { webLink } from "./web-link.ts";

// An amendment may replace a list as well as a word.
const anything: Shape<TypedNode> = (node) => node;

/** An amendment as typed; read before the rest, because it changes what the rest reads. */
export const amendmentsShape = list(
  "amendments",
  record("an amendment", {
    day: required(date, "day: 2026-03-02"),
    field: required(text, 'field: "sessions[2].hours"'),
    was: required(anything, 'was: "1:15"'),
    now: required(anything, 'now: "1:45"'),
    why: required(text, "why: forgot the clean-up"),
  }),
  'amendments: [{ day: 2026-03-02, field: "sessions[2].hours", was: "1:15", now: "1:45", why: … }]',
);

/** The shape of a day entry, with every name that it may use. Made once for a journal. */
export function dayShape(
  registers: Registers,
  project: Project,
  tasks: ReadonlyMap<string, unknown> = new Map(),
) {
  const task = nameOf("task", "tasks.csv", tasks);
  const person = nameOf("person", "people.yaml", registers.people);
  const assembly = nameOf("assembly", "assemblies.yaml", registers.assemblies);
  const step = nameOf("step", "assemblies.yaml", registers.steps);
  const rule = nameOf("rule", "rules.yaml", registers.rules);
  const instrument = nameOf("instrument", "instruments.yaml", registers.instruments);
  const lot = nameOf("lot", "lots.yaml", registers.lots);
  const people = list("people", person, "[ada, jon]");
  const rolesOf: Shape<ReadonlyMap<string, (typeof roles)[number]>> = (node, faults) => {
    if (node.kind !== "map") return text(node, faults) && undefined;
    const taken = new Map<string, (typeof roles)[number]>();
    for (const [name, { key, value }] of node.entries) {
      const known = person(key, faults);
      const role = choice("role", roles)(value, faults);
      if (known && role) taken.set(name, role.value);
    }
    return taken;
  };

  const session = record("a session", {
    assembly: required(assembly, "assembly: stabilizer"),
    step: optional(step, "step: HS-07"),
    who: required(people, "who: [ada]"),
    roles: optional(rolesOf, "roles: { jon: paid help }"),
    from: optional(clock, 'from: "18:40"'),
    to: optional(clock, 'to: "21:05"'),
    hours: optional(duration, 'hours: "1:15"'),
    kind: required(choice("kind of work", workKinds), "kind: assemble"),
    stage: optional(choice("stage", project.stages), "stage: riveted"),
    lots: optional(list("lots", lot, "lots: [rivets-ad3-7]"), "lots: [rivets-ad3-7]"),
    tasks: optional(list("tasks", task, "tasks: [F1]"), "tasks: [F1]"),
    note: optional(text, "note: what went on"),
    private: optional(yesOrNo, "private: true"),
  });

  const reading = record("a reading", {
    id: optional(id, "id: R-12"),
    step: optional(step, "step: HS-07"),
    assembly: optional(assembly, "assembly: stabilizer"),
    what: required(text, "what: edge distance"),
    at: optional(text, "at: front flange holes 1-12"),
    rule: optional(rule, "rule: edge-3-32"),
    with: optional(instrument, "with: caliper-1"),
    value: optional(quantity, "value: 0.19 in"),
    values: optional(quantities, "values: [0.141, 0.140] in"),
    of: optional(list("readings", text, "of: [R-1, R-2]"), "of: [R-1, R-2]"),
    temperature: optional(quantityOf("temperature"), "temperature: 61 °F"),
    drag: optional(notBelowZero(quantityOf("torque")), "drag: 4 lbf·in"),
    sizes: optional(sizesShape, "sizes: { D: 1/8 in }"),
    supersedes: optional(text, "supersedes: 2026-03-10.r2"),
    deviation: optional(id, "deviation: D-014"),
    private: optional(yesOrNo, "private: true"),
  });

  return record("an entry", {
    date: required(date, "date: 2026-03-14"),
    written: optional(dateAndClock, "written: 2026-03-14 21:40"),
    title: optional(text, "title: Tail ribs riveted"),
    place: optional(placeCode, "place: shop"),
    conditions: optional(
      record("conditions", {
        temperature: optional(quantityOf("temperature"), "temperature: 61 °F"),
        humidity: optional(quantityOf("ratio"), "humidity: 48 %"),
      }),
      "conditions: { temperature: 61 °F, humidity: 48 % }",
    ),
    draft: optional(yesOrNo, "draft: true"),
    private: optional(yesOrNo, "private: true"),
    sessions: optional(
      list(
        "sessions",
        session,
        'sessions: [{ assembly: wing, who: [ada], hours: "1:15", kind: assemble }]',
      ),
      'sessions: [{ assembly: wing, who: [ada], hours: "1:15", kind: assemble }]',
    ),
    readings: optional(
      list(
        "readings",
        reading,
        "readings: [{ what: edge distance, rule: edge-3-32, value: 0.19 in }]",
      ),
      "readings: [{ what: edge distance, rule: edge-3-32, value: 0.19 in }]",
    ),
    cures: optional(
      list(
        "cures",
        record("a cure", {
          step: required(step, "step: HS-08"),
          lot: optional(lot, "lot: sealant-b2-118"),
          mixed: required(clock, 'mixed: "20:10"'),
          closed: optional(clock, 'closed: "20:55"'),
          ready: required(dateAndClock, "ready: 2026-03-16 20:10"),
          source: optional(text, "source: maker's data sheet"),
          note: optional(text, "note: what was sealed"),
        }),
        'cures: [{ step: HS-08, mixed: "20:10", ready: 2026-03-16 20:10 }]',
      ),
      'cures: [{ step: HS-08, mixed: "20:10", ready: 2026-03-16 20:10 }]',
    ),
    holds: optional(
      list(
        "holds",
        record("a hold", {
          id: optional(id, "id: H-3"),
          step: required(step, "step: HS-08"),
          with: required(text, "with: clecos"),
          count: optional(count, "count: 24"),
          where: optional(text, "where: lower flange"),
        }),
        "holds: [{ step: HS-08, with: clecos, count: 24 }]",
      ),
      "holds: [{ step: HS-08, with: clecos, count: 24 }]",
    ),
    releases: optional(
      list(
        "releases",
        record("a release", {
          hold: optional(text, "hold: H-3"),
          step: optional(step, "step: HS-08"),
        }),
        "releases: [{ step: HS-08 }]",
      ),
      "releases: [{ step: HS-08 }]",
    ),
    deviations: optional(
      list(
        "deviations",
        record("a deviation", {
          id: required(id, "id: D-014"),
          step: optional(step, "step: HS-08"),
          drawing: required(drawingReference(project.drawings), "drawing: HS-03 rev C"),
          planned: required(text, "planned: 1.0 in block"),
          done: required(text, "done: 0.75 in block"),
          why: required(text, "why: the first rib sits further aft"),
          disposition: optional(text, "disposition: use as is"),
          "accepted-by": optional(person, "accepted-by: jon"),
          private: optional(yesOrNo, "private: true"),
        }),
        "deviations: [{ id: D-014, drawing: HS-03 rev C, planned: …, done: …, why: … }]",
      ),
      "deviations: [{ id: D-014, drawing: HS-03 rev C, planned: …, done: …, why: … }]",
    ),
    dispositions: optional(
      list(
        "dispositions",
        record("a disposition", {
          deviation: required(text, "deviation: D-014"),
          disposition: required(text, "disposition: use as is"),
          "accepted-by": optional(person, "accepted-by: jon"),
        }),
        "dispositions: [{ deviation: D-014, disposition: use as is, accepted-by: jon }]",
      ),
      "dispositions: [{ deviation: D-014, disposition: use as is, accepted-by: jon }]",
    ),
    squawks: optional(
      list(
        "squawks",
        record("a squawk", {
          id: required(id, "id: S-004"),
          found: required(text, "found: a nick in the aft flange"),
          step: optional(step, "step: HS-08"),
          assembly: optional(assembly, "assembly: stabilizer"),
          owner: optional(person, "owner: ada"),
        }),
        "squawks: [{ id: S-004, found: a nick in the aft flange }]",
      ),
      "squawks: [{ id: S-004, found: a nick in the aft flange }]",
    ),
    fixes: optional(
      list(
        "fixes",
        record("a fix", {
          squawk: required(text, "squawk: S-004"),
          did: optional(text, "did: blended out and primed"),
          "closed-by": optional(person, "closed-by: jon"),
        }),
        "fixes: [{ squawk: S-004, did: blended out and primed }]",
      ),
      "fixes: [{ squawk: S-004, did: blended out and primed }]",
    ),
    inspections: optional(
      list(
        "inspections",
        record("an inspection", {
          step: required(step, "step: HS-07"),
          look: required(text, "look: driven heads"),
          by: required(person, "by: jon"),
          open: required(text, "open: both skins off"),
          findings: required(text, "findings: none"),
          result: required(choice("result", inspectionResults), "result: clear"),
        }),
        "inspections: [{ step: HS-07, look: driven heads, by: jon, open: …, findings: …, result: clear }]",
      ),
      "inspections: [{ step: HS-07, look: driven heads, by: jon, open: …, findings: …, result: clear }]",
    ),
    photos: optional(
      list(
        "photos",
        record("a photograph", {
          file: required(text, "file: rib4.jpg"),
          caption: required(text, "caption: Row A driven"),
          alt: optional(text, "alt: a row of driven rivet heads"),
          step: optional(step, "step: HS-07"),
          assembly: optional(assembly, "assembly: stabilizer"),
          shows: optional(people, "shows: [ada]"),
          private: optional(yesOrNo, "private: true"),
        }),
        "photos: [{ file: rib4.jpg, caption: Row A driven }]",
      ),
      "photos: [{ file: rib4.jpg, caption: Row A driven }]",
    ),
    videos: optional(
      list(
        "recordings",
        record("a recording", {
          title: required(text, "title: Driving row A"),
          link: optional(webLink, "link: https://videos.example/row-a"),
          file: optional(text, "file: row-a.mp4"),
          host: optional(yesOrNo, "host: true"),
          picture: optional(text, "picture: rib4.jpg"),
          step: optional(step, "step: HS-07"),
          assembly: optional(assembly, "assembly: stabilizer"),
          length: optional(timecode, 'length: "12:40"'),
          times: optional(
            list(
              "times",
              record("a time", {
                at: required(timecode, 'at: "1:23"'),
                what: required(text, "what: the first rivet"),
                step: optional(step, "step: HS-07"),
                link: optional(webLink, "link: https://videos.example/row-a?from=83"),
              }),
              'times: [{ at: "1:23", what: the first rivet }]',
            ),
            'times: [{ at: "1:23", what: the first rivet }]',
          ),
          private: optional(yesOrNo, "private: true"),
        }),
        "videos: [{ title: Driving row A, link: https://videos.example/row-a }]",
      ),
      "videos: [{ title: Driving row A, link: https://videos.example/row-a }]",
    ),
    imported: optional(text, "imported: hours.csv"),
    amendments: optional(amendmentsShape, "amendments: […]"),
    next: optional(
      list("lines", text, "next: [drive the second row]"),
      "next: [drive the second row]",
    ),
    assert: optional(assertions(registers), 'assert: { total: "412:35" }'),
  });
}

/** A day entry as typed and checked for shape. */
export type TypedDay = NonNullable<ReturnType<ReturnType<typeof dayShape>>>;

function assertions(registers: Registers) {
  const totals = new Map([["total", undefined], ...registers.assemblies.entries()]);
  const of = nameOf("assembly (or `total`)", "assemblies.yaml", totals);
  const shape: Shape<readonly { of: string; minutes: number; node: TextNode }[]> = (
    node,
    faults,
  ) => {
    if (node.kind !== "map") {
      return faults.add("wrong-shape", node.span, {
        message: "expected totals by name",
        help: ['write `assert: { total: "412:35" }`'],
      });
    }
    const read = [];
    for (const { key, value } of node.entries.values()) {
      const named = of(key, faults);
      const total = duration(value, faults);
      if (named && total) read.push({ of: named.text, minutes: total.minutes, node: total.node });
    }
    return read;
  };
  return shape;
}
