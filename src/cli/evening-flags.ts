import type { Analysis } from "../compute/analysis.ts";
import { type WorkKind, workKinds } from "../model/session.ts";
import type { EveningOffer } from "../present/evening/offer.ts";
import { nearestName } from "../read/nearest-name.ts";
import { spokenDuration, spokenTime } from "../read/spoken-time.ts";
import type { NewSession } from "../write/entries/entry-text.ts";
import { UsageProblem } from "./journal.ts";

/** What may be said of a session on the command line in place of being asked. */
export interface SessionFlags {
  readonly assembly?: string;
  readonly step?: string;
  readonly who?: string;
  readonly from?: string;
  readonly to?: string;
  readonly hours?: string;
  readonly kind?: string;
  readonly stage?: string;
  readonly again?: boolean;
}

/** How long: `from` and `to`, or `hours`. */
export type SessionTime = Pick<NewSession, "from" | "to" | "hours">;

/** A session as far as the flags say it. */
export interface SpokenSession {
  readonly assembly?: string;
  readonly step?: string;
  readonly who?: readonly string[];
  readonly kind?: WorkKind;
  readonly stage?: string;
  readonly time?: SessionTime;
}

/**
 * What the flags say of a session, with `--again` filling in last time's assembly, step, people
 * and kind. A step brings its assembly along.
 * @throws UsageProblem when a flag cannot be read, or there is nothing to do again.
 */
export function sessionFromFlags(
  flags: SessionFlags,
  { build }: Analysis,
  { last, people }: EveningOffer,
): SpokenSession {
  if (flags.again && !last) {
    throw new UsageProblem("there is no earlier session to do again", [
      "name the work, as in `--assembly wing --kind assemble --hours 1:15`",
    ]);
  }
  const repeated = flags.again ? last : undefined;
  const assembly =
    flags.assembly ??
    (flags.step === undefined ? undefined : build.steps.get(flags.step)?.assembly) ??
    repeated?.assembly;
  const step = flags.step ?? (assembly === repeated?.assembly ? repeated?.step : undefined);
  const who = flags.who === undefined ? (repeated ? people : undefined) : listed(flags.who);
  const kind = flags.kind === undefined ? repeated?.kind : kindNamed(flags.kind);
  const time = timeFromFlags(flags);
  return {
    ...(assembly === undefined ? {} : { assembly }),
    ...(step === undefined ? {} : { step }),
    ...(who === undefined || who.length === 0 ? {} : { who }),
    ...(kind === undefined ? {} : { kind }),
    ...(flags.stage === undefined ? {} : { stage: flags.stage }),
    ...(time === undefined ? {} : { time }),
  };
}

/** The same, with a lone builder as the one who worked when nobody is named. */
export function withLoneBuilder(spoken: SpokenSession, { build }: Analysis): SpokenSession {
  const [first, second] = [...build.people.values()].filter(({ role }) => role === "builder");
  return spoken.who !== undefined || !first || second ? spoken : { ...spoken, who: [first.id] };
}

/** The flags that would make the session whole, empty when it is. */
export function missingFlags(
  { assembly, who, kind, time }: SpokenSession,
  { from, to }: SessionFlags,
): string[] {
  return [
    assembly === undefined ? "--assembly" : undefined,
    who === undefined ? "--who" : undefined,
    kind === undefined ? "--kind" : undefined,
    time !== undefined
      ? undefined
      : from !== undefined
        ? "--to"
        : to !== undefined
          ? "--from"
          : "--hours (or --from and --to)",
  ].filter((flag) => flag !== undefined);
}

/** The session itself, when nothing is missing. */
export function wholeSession(spoken: SpokenSession): NewSession | undefined {
  const { assembly, who, kind, time, step, stage } = spoken;
  if (assembly === undefined || who === undefined || kind === undefined || time === undefined) {
    return undefined;
  }
  return {
    assembly,
    ...(step === undefined ? {} : { step }),
    who,
    ...time,
    kind,
    ...(stage === undefined ? {} : { stage }),
  };
}

/** Whether the flags speak of a session at all. */
export function speakOfSession(flags: SessionFlags): boolean {
  const { assembly, step, who, from, to, hours, kind, stage, again } = flags;
  return again === true || [assembly, step, who, from, to, hours, kind, stage].some(isGiven);
}

/** Reads `18:40-21:05`, `1840 to 2105`, or a duration. */
export function spokenSpan(typed: string): SessionTime | undefined {
  const parts = typed.split(/\s*(?:-|–|\bto\b)\s*/);
  if (parts.length === 2) {
    const from = spokenTime(parts[0] ?? "");
    const to = spokenTime(parts[1] ?? "");
    return from && to ? { from, to } : undefined;
  }
  const hours = spokenDuration(typed);
  return hours ? { hours } : undefined;
}

const isGiven = (flag: string | undefined) => flag !== undefined;

function listed(names: string): string[] {
  return names
    .split(/[,\s]+/)
    .map((name) => name.trim())
    .filter((name) => name !== "");
}

function timeFromFlags({ from, to, hours }: SessionFlags): SessionTime | undefined {
  if (hours !== undefined) {
    if (from !== undefined || to !== undefined) {
      throw new UsageProblem("the time is said twice, by `--hours` and by `--from` or `--to`", [
        "keep `--hours`, or `--from` and `--to`",
      ]);
    }
    const read = spokenSpan(hours);
    if (read) return read;
    throw new UsageProblem(`\`${hours}\` is not a duration in whole minutes`, [
      "write it as in `--hours 1:15`, `--hours 90min` or `--hours 1.5`",
      ...(/^\d+[.,]\d\d$/.test(hours)
        ? [`hours and minutes have a colon between: \`--hours ${hours.replace(/[.,]/, ":")}\``]
        : []),
    ]);
  }
  const begin = clockNamed("--from", from);
  const end = clockNamed("--to", to);
  return begin && end ? { from: begin, to: end } : undefined;
}

function clockNamed(flag: string, typed: string | undefined): string | undefined {
  if (typed === undefined) return undefined;
  const read = spokenTime(typed);
  if (read) return read;
  throw new UsageProblem(`\`${flag} ${typed}\` is not a time of day`, [
    `write it as in \`${flag} 18:40\` or \`${flag} 640p\``,
  ]);
}

function kindNamed(text: string): WorkKind {
  const kind = workKinds.find((each) => each === text.trim().toLowerCase());
  if (kind) return kind;
  const nearest = nearestName(text, workKinds);
  throw new UsageProblem(`\`${text}\` is not a kind of work`, [
    ...(nearest ? [`did you mean \`--kind ${nearest}\`?`] : []),
    `the kinds of work are ${workKinds.join(", ")}`,
  ]);
}
