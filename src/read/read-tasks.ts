import { type Task, type Tenths, tenthsOfATask } from "../model/portion.ts";
import { type CsvCell, csvRows } from "./csv-rows.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import { given } from "./shape.ts";
import type { SourceFile } from "./source-file.ts";

/** Columns of a list of tasks. The last one need not be there. */
const columns = ["section", "task_number", "task", "mfr_tenths"] as const;
type TaskColumn = (typeof columns)[number];

// Control characters, and those that turn the direction of what follows.
const unprintable = /[\p{Cc}\u2028\u2029\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]/u;

/**
 * Reads a list of tasks: CSV with the columns `section`, `task_number`, `task` and, where the
 * list gives the kit's own share, `mfr_tenths` in whole tenths. Columns may stand in any order,
 * parted by commas, or by semicolons or tabs as some spreadsheets do; rows at fault are left out.
 */
export function readTasks(source: SourceFile, faults: Faults): readonly Task[] {
  const table = csvRows(source, separatorOf(source), faults);
  if (!table) return [];
  const places = columnPlaces(table.heads, faults);
  if (!places) return [];
  const seen = new Map<string, CsvCell>();
  return table.rows.flatMap(({ cells }) => {
    const cellOf = (column: TaskColumn) => {
      const place = places.get(column);
      return place === undefined ? undefined : cells[place];
    };
    const section = filled(cellOf("section"), "section", faults);
    const number = filled(cellOf("task_number"), "task_number", faults);
    const title = filled(cellOf("task"), "task", faults);
    const typed = cellOf("mfr_tenths");
    const listed = typed && typed.text !== "" ? tenthsOf(typed, faults) : undefined;
    if (!section || !number || !title || !isTaskNumber(number, faults)) return [];
    const twin = seen.get(number.text);
    if (twin) {
      faults.add("duplicate-id", number.span, {
        message: `task \`${number.text}\` is listed twice`,
        notes: [`the other is ${twin.span.file}:${twin.span.line}`],
        help: ["a task stands in the list once; correct the number"],
      });
      return [];
    }
    seen.set(number.text, number);
    return [
      {
        id: number.text,
        section: section.text,
        title: title.text,
        ...given({ listed }),
        span: number.span,
      },
    ];
  });
}

// No column has any of these in its name, so the first line settles it.
function separatorOf({ text }: SourceFile): string {
  const [first = ""] = text.split("\n", 1);
  return [",", ";", "\t"].find((separator) => first.includes(separator)) ?? ",";
}

function columnPlaces(
  heads: readonly CsvCell[],
  faults: Faults,
): ReadonlyMap<TaskColumn, number> | undefined {
  const places = new Map<TaskColumn, number>();
  let sound = true;
  heads.forEach(({ text, span }, place) => {
    const column = columns.find((name) => name === text);
    if (column && !places.has(column)) {
      places.set(column, place);
      return;
    }
    sound = false;
    const nearest = column ? undefined : nearestName(text, columns);
    faults.add("not-csv", span, {
      message: column
        ? `the column \`${text}\` stands twice in the list of tasks`
        : `a list of tasks has no column \`${text}\``,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      notes: [`known here: ${columns.join(", ")}`],
      help: ["take the column out, or give it one of these names"],
    });
  });
  const first = heads[0];
  const lacking = columns.filter((name) => name !== "mfr_tenths" && !places.has(name));
  if (sound && first && lacking.length > 0) {
    sound = false;
    faults.add("not-csv", first.span, {
      message: `the list of tasks has no column \`${lacking.join("`, `")}\``,
      help: ["write `section,task_number,task` as the first line, or `…,mfr_tenths` behind it"],
    });
  }
  return sound ? places : undefined;
}

function filled(
  cell: CsvCell | undefined,
  column: TaskColumn,
  faults: Faults,
): CsvCell | undefined {
  if (cell?.text === "") {
    return faults.add("not-csv", cell.span, {
      message: `the cell of \`${column}\` is empty`,
      help: ["fill it in from the list, or take the row out"],
    });
  }
  // A cell may run over several lines; a task is said on one.
  const text = cell?.text.replaceAll(/\s+/g, " ");
  if (cell && text !== undefined && unprintable.test(text)) {
    return faults.add("not-csv", cell.span, {
      message: `the cell of \`${column}\` has a character that cannot be printed`,
      help: ["type the cell anew; such characters come along when text is copied"],
    });
  }
  return cell && text !== undefined ? { ...cell, text } : undefined;
}

function isTaskNumber({ text, span }: CsvCell, faults: Faults): boolean {
  if (/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/.test(text)) return true;
  faults.add("not-an-id", span, {
    message: `\`${text}\` cannot be used as a task number`,
    notes: [
      "a task number has letters, digits, dots, dashes and underscores, and begins with one of the first two",
    ],
    help: ["write it as on the list, without spaces: `F1`"],
  });
  return false;
}

function tenthsOf({ text, span }: CsvCell, faults: Faults): Tenths | undefined {
  const tenths = /^\d{1,2}$/.test(text) ? Number(text) : Number.NaN;
  if (tenths <= tenthsOfATask) return tenths;
  return faults.add("not-a-share", span, {
    message: `\`${text}\` is not a number of tenths: expected a whole number from 0 to 10`,
    help: ["write 9 for 0.9 of the point, or leave the cell empty"],
  });
}
