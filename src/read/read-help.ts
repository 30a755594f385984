import type { Registers } from "../model/build.ts";
import { type Help, type HelpEntry, helpKinds } from "../model/help.ts";
import type { Tenths } from "../model/portion.ts";
import { date } from "./clock-syntax.ts";
import type { Faults } from "./faults.ts";
import { forAircraft } from "./identity.ts";
import { unique } from "./registers.ts";
import {
  choice,
  given,
  id,
  list,
  nameOf,
  optional,
  record,
  required,
  type Shape,
  text,
} from "./shape.ts";
import { share } from "./tenths-syntax.ts";
import type { MapNode } from "./typed-tree.ts";

/** What `help.yaml` may name. */
export interface HelpNames extends Pick<Registers, "people"> {
  /** Those of the major-portion sheet; empty without one. */
  readonly tasks: ReadonlyMap<string, unknown>;
}

function helpShape({ people, tasks }: HelpNames) {
  const task = nameOf("task", "tasks.csv", tasks);
  const shares: Shape<ReadonlyMap<string, Tenths>> = (node, faults) => {
    if (node.kind !== "map") {
      return faults.add("wrong-shape", node.span, {
        message: "expected tasks with their shares",
        help: ["write `shares: { F1: 0.2 }`"],
      });
    }
    const read = new Map<string, Tenths>();
    for (const [name, { key, value }] of node.entries) {
      const known = task(key, faults);
      const tenths = share(value, faults);
      if (known && tenths !== undefined) read.set(name, tenths);
    }
    return read;
  };
  return record("help.yaml", {
    for: forAircraft,
    help: required(
      list(
        "help",
        record("a row of help", {
          id: required(id, "id: P-1"),
          who: required(nameOf("person", "people.yaml", people), "who: jon"),
          kind: required(choice("kind of help", helpKinds), "kind: paid help"),
          from: required(date, "from: 2026-03-14"),
          to: optional(date, "to: 2026-03-15"),
          what: required(text, "what: riveted the rear spar with me"),
          place: optional(text, "place: shop"),
          shares: optional(shares, "shares: { F1: 0.2 }"),
          invoice: optional(text, "invoice: 2026-117"),
          note: optional(text, "note: by the hour"),
        }),
        "[{ id: P-1, who: jon, kind: paid help, from: 2026-03-14, what: … }]",
      ),
      "help: [{ id: P-1, who: jon, kind: paid help, from: 2026-03-14, what: … }]",
    ),
  });
}

/** Reads `help.yaml`. What is at fault is left out, so that the rest can be read too. */
export function readHelp(tree: MapNode, names: HelpNames, faults: Faults): Help | undefined {
  const typed = helpShape(names)(tree, faults);
  if (!typed) return undefined;
  const entries = unique(typed.help, "row of help", faults).map((row): HelpEntry => {
    const to = row.to ?? row.from;
    if (to.date < row.from.date) {
      faults.add("not-a-date", to.node.span, {
        message: `help \`${row.id.text}\` ends on ${to.date}, before it begins`,
        help: ["correct `from` or `to`; for one day, leave `to` out"],
      });
    }
    if (row.shares && row.kind.value !== "paid help") {
      faults.add("wrong-shape", row.kind.span, {
        message: `help \`${row.id.text}\` is ${row.kind.value} and has shares of tasks`,
        help: [
          "leave `shares` out: only paid help takes a share from the builder; or correct `kind`",
        ],
      });
    }
    return {
      id: row.id.text,
      person: row.who.text,
      kind: row.kind.value,
      from: row.from.date,
      to: to.date,
      what: row.what.text,
      shares: row.shares ?? new Map(),
      ...given({
        place: row.place?.text,
        invoice: row.invoice?.text,
        note: row.note?.text,
      }),
      span: row.id.span,
    };
  });
  return {
    entries: entries.toSorted((a, b) => (a.from === b.from ? 0 : a.from < b.from ? -1 : 1)),
    span: typed.span,
  };
}
