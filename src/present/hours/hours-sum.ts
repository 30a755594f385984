import type { HoursLine } from "../../compute/analysis.ts";
import type { HoursSelection, SelectedHours } from "../../compute/hours-selection.ts";
import type { Amendment } from "../../model/amendment.ts";
import { monthOf } from "../../model/calendar.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Session } from "../../model/session.ts";
import { displayWidth } from "../diagnostics/display-width.ts";
import { printable } from "../diagnostics/printable.ts";
import { hoursText } from "../format/hours.ts";
import { amendmentText } from "../tables/hours.ts";

/** A sum of hours to be printed. */
export interface HoursSum extends SelectedHours {
  readonly selection: HoursSelection;
  readonly amendments: ReadonlyMap<Session, readonly Amendment[]>;
  /** A file of the journal as it can be opened from where the reader is. */
  readonly seen: (file: string) => string;
}

/**
 * A sum of hours line by line: where it was typed, when, on what, who, and how long. The last
 * line repeats the arithmetic; sums of more than one month are repeated month by month.
 */
export function hoursSumText(sum: HoursSum): string {
  const rows = sum.lines.map((line) => ({
    month: monthOf(line.date),
    cells: [
      placeText({ ...line.session.span, file: sum.seen(line.session.span.file) }),
      line.date,
      line.step ?? line.assembly,
      line.person,
      line.role,
      line.kind,
      hoursText(line.minutes),
    ].map(printable),
    notes: [
      ...(line.apart ? ["counted apart"] : []),
      ...(sum.amendments.get(line.session) ?? []).map((each) => printable(amendmentText(each))),
    ],
  }));
  const columns = rows[0]?.cells ?? [];
  const widths = columns.map((_, index) =>
    Math.max(...rows.map(({ cells }) => displayWidth(cells[index] ?? ""))),
  );
  const printed = rows.map(({ cells, notes }) => {
    const padded = cells.map((cell, index) => {
      const blanks = " ".repeat((widths[index] ?? 0) - displayWidth(cell));
      return index === cells.length - 1 ? blanks + cell : cell + blanks;
    });
    return [padded.join("  "), ...notes].join("  ");
  });
  return [
    `hours ${selectionText(sum.selection)}`,
    "",
    ...(printed.length > 0 ? [...printed, ""] : []),
    ...arithmetic(sum),
  ].join("\n");
}

/** The same as plain data. */
export function hoursSumJson({ selection, lines, total, amendments, seen }: HoursSum) {
  return {
    selection,
    lines: lines.map((line) => ({
      file: seen(line.session.span.file),
      line: line.session.span.line,
      date: line.date,
      assembly: line.assembly,
      ...(line.step === undefined ? {} : { step: line.step }),
      person: line.person,
      role: line.role,
      kind: line.kind,
      minutes: line.minutes,
      counted: line.apart ? "apart" : "build",
      amended: (amendments.get(line.session) ?? []).map(({ date, field, was, now, why }) => ({
        on: date,
        field,
        was,
        now,
        why,
      })),
    })),
    minutes: total.build,
    minutesApart: total.apart,
  };
}

function selectionText(selection: HoursSelection): string {
  const { assembly, step, person, role, kind, month } = selection;
  const parts = [
    ...(assembly === undefined ? [] : [`on \`${assembly}\` and everything below it`]),
    ...(step === undefined ? [] : [`on step \`${step}\``]),
    ...(person === undefined ? [] : [`of \`${person}\``]),
    ...(role === undefined ? [] : [`as ${role}`]),
    ...(kind === undefined ? [] : [`of the kind ${kind}`]),
    ...(month === undefined ? [] : [`in ${month}`]),
  ];
  return parts.length === 0 ? "of the whole build" : parts.join(", ");
}

function arithmetic({ lines, total }: SelectedHours): string[] {
  const apart = lines.filter((line) => line.apart);
  const build = lines.filter((line) => !line.apart);
  return [
    ...(apart.length > 0 ? [`study and shop: ${sumText(apart, total.apart)}`] : []),
    ...(build.length > 0 || apart.length === 0 ? [`building: ${sumText(build, total.build)}`] : []),
  ];
}

function sumText(lines: readonly HoursLine[], total: number): string {
  const months = new Map<string, number>();
  for (const { date, minutes } of lines) {
    months.set(monthOf(date), (months.get(monthOf(date)) ?? 0) + minutes);
  }
  const terms =
    months.size > 1
      ? [...months].map(([month, minutes]) => `${hoursText(minutes)} (${month})`)
      : lines.map(({ minutes }) => hoursText(minutes));
  return terms.length === 0 ? hoursText(total) : `${terms.join(" + ")} = ${hoursText(total)}`;
}
