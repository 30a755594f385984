import type { Amendment } from "../model/amendment.ts";
import type { CalendarDate } from "../model/calendar.ts";
import { amendedReading } from "./amended-reading.ts";
import { amendmentsShape } from "./day-schema.ts";
import { Faults } from "./faults.ts";
import type { MapNode, TextNode, TypedNode } from "./typed-tree.ts";

/** An entry's tree under its date. */
export interface DatedTree {
  readonly date: CalendarDate;
  readonly tree: MapNode;
}

/**
 * Puts every amendment into the day it corrects, oldest first, so that what is read after this
 * is what the builder stands by. `was` has to be what stands there. An amendment in a draft is
 * looked at and not put in.
 * @returns The trees with corrections in place, in the order given, and the amendments.
 */
export function amend(
  days: readonly DatedTree[],
  faults: Faults,
): { trees: DatedTree[]; amendments: Amendment[] } {
  const trees = new Map(days.map((day) => [day.date, day.tree]));
  const made: { readonly amendment: Amendment; readonly was: TypedNode }[] = [];
  for (const { date, tree } of [...days].sort((a, b) => (a.date < b.date ? -1 : 1))) {
    const typed = tree.entries.get("amendments")?.value;
    // The shape's own faults are reported when the day is read; here they only stop the rest.
    for (const each of (typed && amendmentsShape(typed, new Faults())) ?? []) {
      const amended = amendOne(trees.get(each.day.date), each, date, faults);
      // A draft is not published: what it corrects would change with nothing to show why.
      if (!amended || isDraft(tree)) continue;
      trees.set(each.day.date, amended);
      const amendment = {
        date,
        day: each.day.date,
        field: each.field.text,
        was: asTyped(each.was),
        now: asTyped(each.now),
        why: each.why.text,
        span: each.field.span,
      };
      made.push({ amendment, was: each.was });
    }
  }
  // Behind all corrections, because one of them may have changed a reading's id.
  const amendments = made.map(({ amendment, was }): Amendment => {
    const tree = trees.get(amendment.day);
    const reading = tree && amendedReading(tree, parsePath(amendment.field) ?? [], was);
    return reading ? { ...amendment, reading } : amendment;
  });
  return {
    trees: days.map(({ date, tree }) => ({ date, tree: trees.get(date) ?? tree })),
    amendments,
  };
}

/** Whether an entry calls itself a draft. */
export function isDraft(tree: MapNode): boolean {
  const draft = tree.entries.get("draft")?.value;
  return draft?.kind === "text" && draft.text === "true";
}

type TypedAmendment = NonNullable<ReturnType<typeof amendmentsShape>>[number];

function amendOne(
  target: MapNode | undefined,
  { day, field, was, now }: TypedAmendment,
  date: CalendarDate,
  faults: Faults,
): MapNode | undefined {
  if (!target || day.date >= date) {
    return faults.add("amendment-does-not-match", day.node.span, {
      message: target
        ? `an amendment corrects an earlier day, and ${day.date} is not before ${date}`
        : `there is no entry for ${day.date}`,
      help: [target ? "correct this entry itself" : "write the date of the entry to be corrected"],
    });
  }
  if (isDraft(target)) {
    return faults.add("amendment-does-not-match", day.node.span, {
      message: `the entry for ${day.date} is a draft`,
      help: ["correct the draft itself"],
    });
  }
  const path = parsePath(field.text);
  if (!path) {
    return faults.add("amendment-does-not-match", field.span, {
      message: `\`${field.text}\` does not name a value of an entry`,
      help: ["write it as in `title`, `sessions[2].hours` or `readings[1].value`, counting from 1"],
    });
  }
  if (unamendable.has(String(path[0]))) {
    return faults.add("amendment-does-not-match", field.span, {
      message: `\`${path[0]}\` of an entry cannot be amended`,
      help: ["amend a value of the work itself, or say in the prose of this entry what was wrong"],
    });
  }
  const found = nodeAt(target, path);
  const typed = found === undefined ? "" : asTyped(found);
  const parent = nodeAt(target, path.slice(0, -1));
  if (typed !== asTyped(was) || (found === undefined && parent?.kind !== "map")) {
    return faults.add("amendment-does-not-match", was.span, {
      message: `\`${field.text}\` of ${day.date} is not \`${asTyped(was)}\``,
      notes: [
        found
          ? `it is \`${typed}\`, at ${found.span.file}:${found.span.line}`
          : "nothing stands there",
      ],
      help: ["write under `was` what stands there, word for word"],
    });
  }
  const amended = replaced(target, path, now);
  return amended.kind === "map" ? amended : undefined;
}

// What an entry is, and what it corrected itself: whoever changes these makes another entry of it.
const unamendable: ReadonlySet<string> = new Set(["date", "draft", "amendments"]);

type Path = readonly (string | number)[];

function parsePath(field: string): Path | undefined {
  if (!/^[a-z][a-z-]*(\[\d{1,4}\])?(\.[a-zA-Z][\w-]*(\[\d{1,4}\])?)*$/.test(field)) {
    return undefined;
  }
  return field
    .split(/[.[]/)
    .map((part) => (part.endsWith("]") ? Number(part.slice(0, -1)) - 1 : part));
}

function nodeAt(node: TypedNode | undefined, path: Path): TypedNode | undefined {
  const [first, ...rest] = path;
  if (first === undefined || node === undefined) return node;
  if (typeof first === "number") {
    return node.kind === "list" ? nodeAt(node.items[first], rest) : undefined;
  }
  return node.kind === "map" ? nodeAt(node.entries.get(first)?.value, rest) : undefined;
}

function asTyped(node: TypedNode): string {
  return node.kind === "text" ? node.text : node.source.trim();
}

function replaced(node: TypedNode, path: Path, by: TypedNode): TypedNode {
  const [first, ...rest] = path;
  if (first === undefined) return by;
  if (typeof first === "number" && node.kind === "list") {
    const items = node.items.map((item, index) =>
      index === first ? replaced(item, rest, by) : item,
    );
    return { ...node, items };
  }
  if (typeof first === "string" && node.kind === "map") {
    const entry = node.entries.get(first);
    const key: TextNode = entry?.key ?? { kind: "text", text: first, span: by.span, source: first };
    const value = entry ? replaced(entry.value, rest, by) : by;
    return { ...node, entries: new Map([...node.entries, [first, { key, value }]]) };
  }
  return node;
}
