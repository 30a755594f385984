import type { Analysis, Hours, HoursLine } from "../../compute/analysis.ts";
import { helpReceived } from "../../compute/ledgers/help.ts";
import type { Build } from "../../model/build.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { type HelpEntry, type HelpKind, helpKinds } from "../../model/help.ts";

/** Help that somebody gave: a row of the register, or what only the sessions of a day tell. */
export interface StatementOfHelp {
  /** Absent: no row tells of it. */
  readonly entry?: HelpEntry;
  /** A person's id. */
  readonly person: string;
  readonly from: CalendarDate;
  /** Inclusive. */
  readonly to: CalendarDate;
  /** Days that have sessions of it, oldest first. */
  readonly dates: readonly CalendarDate[];
  /** What the sessions were for: steps with their titles, or assemblies where no step is named. */
  readonly on: readonly string[];
  readonly hours: Hours;
}

/** All help of one kind. */
export interface HelpOfKind {
  readonly kind: HelpKind;
  /** By first day; on the same day, rows of the register first. */
  readonly rows: readonly StatementOfHelp[];
  /** Every session once, also where two rows tell of it. */
  readonly total: Hours;
}

/** All help received, each kind apart, whether the journal keeps a register of it or not. */
export function helpStatement({ build, hours }: Analysis): HelpOfKind[] {
  const { rows, unlisted } = helpReceived(build.help?.entries ?? [], hours.lines);
  return helpKinds.map((kind) => {
    const listed = rows.filter(({ entry }) => entry.kind === kind);
    const rest = unlisted.filter((help) => help.kind === kind);
    return {
      kind,
      rows: [
        ...listed.map(({ entry, lines }) => ({
          entry,
          person: entry.person,
          from: entry.from,
          to: entry.to,
          ...bookedOn(build, lines),
        })),
        ...rest.map(({ person, date, lines }) => ({
          person,
          from: date,
          to: date,
          ...bookedOn(build, lines),
        })),
      ].sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0)),
      total: hoursOf([...new Set([...listed, ...rest].flatMap(({ lines }) => lines))]),
    };
  });
}

function bookedOn(
  { steps, assemblies }: Build,
  lines: readonly HoursLine[],
): Pick<StatementOfHelp, "dates" | "on" | "hours"> {
  const nameOf = ({ step, assembly }: HoursLine) =>
    step === undefined
      ? (assemblies.get(assembly)?.title ?? assembly)
      : `${step} ${steps.get(step)?.title ?? ""}`.trim();
  return {
    dates: [...new Set(lines.map(({ date }) => date))],
    on: [...new Set(lines.map(nameOf))],
    hours: hoursOf(lines),
  };
}

function hoursOf(lines: readonly HoursLine[]): Hours {
  const sum = (apart: boolean) =>
    lines.reduce((all, line) => all + (line.apart === apart ? line.minutes : 0), 0);
  return { build: sum(false), apart: sum(true) };
}
