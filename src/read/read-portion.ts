import type { Registers } from "../model/build.ts";
import {
  creditColumns,
  type Portion,
  type Split,
  type SplitEntry,
  type Task,
  tenthsOfATask,
} from "../model/portion.ts";
import type { Basis } from "../model/project.ts";
import { tenthsText } from "../model/tenths-text.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import { portionShape, type TypedPortion, type TypedSplit } from "./portion-schema.ts";
import { readTasks } from "./read-tasks.ts";
import { given } from "./shape.ts";
import type { SourceFile } from "./source-file.ts";
import type { MapNode, TextNode } from "./typed-tree.ts";

/** The two files of the sheet; `undefined` where one is missing or cannot be taken apart. */
export interface PortionFiles {
  readonly sheet: MapNode | undefined;
  readonly tasks: SourceFile | undefined;
}

/**
 * Reads `portion.yaml` with the list of tasks in `tasks.csv`. What is at fault is left out, so
 * that the rest can be read too. A journal of an alteration has no such sheet.
 */
export function readPortion(
  files: PortionFiles,
  { basis, registers }: { readonly basis: Basis; readonly registers: Pick<Registers, "steps"> },
  faults: Faults,
): Portion | undefined {
  if (basis === "alteration") return refuse(files, faults);
  const listed = files.tasks ? readTasks(files.tasks, faults) : [];
  const typed = files.sheet && portionShape(registers)(files.sheet, faults);
  if (!typed) return undefined;
  const tasks = new Map(listed.map((task) => [task.id, task]));
  for (const task of readAdded(typed, tasks, faults)) tasks.set(task.id, task);
  // Without the list there is nothing to compare names with; that it lacks is a fault of its own.
  const known = files.tasks ? tasks : undefined;
  return {
    list: {
      title: typed.list.title.text,
      ...given({ year: typed.list.year?.text }),
      aircraft: typed.list.aircraft.text,
      from: typed.list.from.text,
      loaded: typed.list.loaded.date,
    },
    tasks,
    splits: readSplits(typed.splits ?? [], known, faults),
    steps: readClaims(typed.claims ?? [], known, faults),
    span: typed.list.title.span,
  };
}

function refuse({ sheet, tasks }: PortionFiles, faults: Faults): undefined {
  const span = sheet?.span ?? tasks?.span(0, 1);
  if (!span) return undefined;
  return faults.add("portion-of-an-alteration", span, {
    message: "an alteration has no major-portion sheet",
    notes: [
      "project.yaml says `basis: alteration`: work on a type-certificated aircraft, which can never be the project of such a sheet",
    ],
    help: [
      "take `portion.yaml` and `tasks.csv` out of the journal",
      "if the aircraft is amateur-built after all, write `basis: amateur-built` in project.yaml",
    ],
  });
}

function readAdded(
  { added }: TypedPortion,
  listed: ReadonlyMap<string, Task>,
  faults: Faults,
): Task[] {
  const seen = new Map(listed);
  return (added ?? []).flatMap(({ task, section, title, on, why }) => {
    const twin = seen.get(task.text);
    if (twin) {
      faults.add("duplicate-id", task.span, {
        message: `task \`${task.text}\` is there already`,
        notes: [`the other is ${twin.span.file}:${twin.span.line}`],
        help: ["give the added task a number that the list does not have"],
      });
      return [];
    }
    const made: Task = {
      id: task.text,
      section: section.text,
      title: title.text,
      added: { date: on.date, why: why.text },
      span: task.span,
    };
    seen.set(made.id, made);
    return [made];
  });
}

type Known = ReadonlyMap<string, Task> | undefined;

function readSplits(typed: readonly TypedSplit[], tasks: Known, faults: Faults): SplitEntry[] {
  const taken = new Map<string, TextNode>();
  const read = typed.flatMap((entry): SplitEntry[] => {
    if (!isKnown(entry.task, tasks, faults)) return [];
    const key = `${entry.task.text} ${entry.on.date}`;
    const twin = taken.get(key);
    if (twin) {
      faults.add("duplicate-id", entry.task.span, {
        message: `task \`${entry.task.text}\` is divided twice on ${entry.on.date}`,
        notes: [`the other is ${twin.span.file}:${twin.span.line}`],
        help: ["keep one of the two, or give the later one its own day and say `why`"],
      });
      return [];
    }
    taken.set(key, entry.task);
    const divided = divisionOf(entry, faults);
    if (divided === undefined) return [];
    return [
      {
        task: entry.task.text,
        date: entry.on.date,
        ...(divided === "not applicable" ? {} : { split: divided }),
        salvage: entry.salvage ?? false,
        ...given({
          why: entry.why?.text,
          source: entry.source?.text,
          note: entry.note?.text,
        }),
        span: entry.task.span,
      },
    ];
  });
  const ordered = read.toSorted((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
  const seen = new Set<string>();
  for (const { task, span, split, why } of ordered) {
    const again = seen.has(task);
    seen.add(task);
    if (why !== undefined || (split && !again)) continue;
    faults.add("missing-key", span, {
      message: again
        ? `task \`${task}\` was divided before, and nothing says why it is changed`
        : `task \`${task}\` is not applicable, and nothing says why`,
      help: ["write `why: …`; earlier divisions stay in the record with the reason"],
    });
  }
  return ordered;
}

function divisionOf(entry: TypedSplit, faults: Faults): Split | "not applicable" | undefined {
  const typed = creditColumns.filter((column) => entry.node.entries.has(column));
  const name = entry.task.text;
  if (entry["not-applicable"]) {
    if (typed.length === 0) return "not applicable";
    return faults.add("not-a-split", entry.task.span, {
      message: `task \`${name}\` is not applicable and has shares as well`,
      label: typed.join(", "),
      help: ["leave the shares out, or leave `not-applicable` out"],
    });
  }
  if (typed.length === 0) {
    return faults.add("not-a-split", entry.task.span, {
      message: `task \`${name}\` has no shares`,
      help: [
        `write tenths under \`${creditColumns.join("`, `")}\`, or \`not-applicable: true\` with the reason`,
      ],
    });
  }
  // A share that could not be read has its own fault.
  if (typed.some((column) => entry[column] === undefined)) return undefined;
  const split: Split = {
    kit: entry.kit ?? 0,
    paid: entry.paid ?? 0,
    assembly: entry.assembly ?? 0,
    fabrication: entry.fabrication ?? 0,
  };
  const sum = creditColumns.reduce((total, column) => total + split[column], 0);
  if (sum === tenthsOfATask) return split;
  return faults.add("not-a-split", entry.task.span, {
    message: `the shares of task \`${name}\` come to ${tenthsText(sum)}, and a task is one point`,
    notes: typed.map((column) => `${column} ${tenthsText(split[column])}`),
    help: ["divide the whole point between the four columns"],
  });
}

function readClaims(
  typed: NonNullable<TypedPortion["claims"]>,
  tasks: Known,
  faults: Faults,
): Map<string, readonly string[]> {
  const claims = new Map<string, readonly string[]>();
  for (const { task, steps } of typed) {
    if (!isKnown(task, tasks, faults)) continue;
    const before = claims.get(task.text) ?? [];
    claims.set(task.text, [...new Set([...before, ...steps.map(({ text }) => text)])]);
  }
  return claims;
}

function isKnown(node: TextNode, tasks: Known, faults: Faults): boolean {
  if (!tasks || tasks.has(node.text)) return true;
  const nearest = nearestName(node.text, tasks.keys());
  faults.add("unknown-name", node.span, {
    message: `no task is called \`${node.text}\``,
    label: nearest ? `did you mean \`${nearest}\`?` : "not in tasks.csv",
    help: [
      ...(nearest ? [`write \`${nearest}\``] : []),
      "a task that the list does not have is declared under `added` in portion.yaml",
    ],
  });
  return false;
}
