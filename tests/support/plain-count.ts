import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Temporal } from "@js-temporal/polyfill";
import { parse } from "yaml";

/** What a journal comes to, counted without any of the program's own code. */
export interface PlainCount {
  /** Person-minutes of all kinds of work but study and shop. */
  readonly minutes: number;
  readonly minutesApart: number;
  readonly days: number;
  readonly sessions: number;
  readonly readings: number;
  /** Person-minutes of the build by person, by assembly itself, and by month. */
  readonly byPerson: Readonly<Record<string, number>>;
  readonly byAssembly: Readonly<Record<string, number>>;
  readonly byMonth: Readonly<Record<string, number>>;
}

interface Session {
  readonly assembly: string;
  readonly who: readonly string[];
  readonly kind: string;
  readonly hours?: string;
  readonly from?: string;
  readonly to?: string;
}

interface Entry {
  readonly date: string;
  readonly draft?: boolean;
  readonly sessions?: readonly Session[];
  readonly readings?: readonly unknown[];
  readonly amendments?: readonly { day: string; field: string; was: unknown; now: unknown }[];
}

/**
 * Reads a journal's entries with a YAML parser and counts the hours with Temporal: a second
 * opinion on the totals, as short as it can be. It believes what is typed.
 */
export function plainCount(journal: string): PlainCount {
  const zone = /^zone: (\S+)/m.exec(readFileSync(join(journal, "project.yaml"), "utf8"))?.[1] ?? "";
  const files = readdirSync(join(journal, "days"), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".md"))
    .map((name) => readFileSync(join(journal, "days", name), "utf8"));
  const entries = files.map(entryOf).filter(({ draft }) => draft !== true);
  amend(entries);

  const count = { minutes: 0, minutesApart: 0, sessions: 0, readings: 0 };
  const [byPerson, byAssembly, byMonth] = [{}, {}, {}] as Record<string, number>[];
  const add = (sums: Record<string, number> | undefined, name: string, minutes: number) => {
    if (sums) sums[name] = (sums[name] ?? 0) + minutes;
  };
  for (const { date, sessions = [], readings = [] } of entries) {
    count.readings += readings.length;
    for (const session of sessions) {
      const minutes = minutesOf(session, date, zone);
      count.sessions++;
      if (session.kind === "study" || session.kind === "shop") {
        count.minutesApart += minutes * session.who.length;
        continue;
      }
      count.minutes += minutes * session.who.length;
      for (const person of session.who) add(byPerson, person, minutes);
      add(byAssembly, session.assembly, minutes * session.who.length);
      add(byMonth, date.slice(0, 7), minutes * session.who.length);
    }
  }
  return {
    ...count,
    days: entries.length,
    byPerson: byPerson ?? {},
    byAssembly: byAssembly ?? {},
    byMonth: byMonth ?? {},
  };
}

function entryOf(text: string): Entry {
  const [, head = ""] = text.split(/^---[ \t]*\r?$/m);
  // A list with its unit behind it is no YAML.
  const yaml = head.replace(/\b(values: )(\[[^\]]*\] [^,}\n]*)/g, '$1"$2"');
  return parse(yaml, { version: "1.2", schema: "core" }) as Entry;
}

function amend(entries: readonly Entry[]): void {
  const days = new Map(entries.map((entry) => [entry.date, entry]));
  const inOrder = entries.toSorted((a, b) => (a.date < b.date ? -1 : 1));
  for (const { day, field, now } of inOrder.flatMap(({ amendments = [] }) => amendments)) {
    const path = field.split(/[.[\]]+/).filter((part) => part !== "");
    const last = path.pop() ?? "";
    let place = days.get(day) as unknown as Record<string, unknown>;
    for (const part of path) {
      place = place[/^\d+$/.test(part) ? Number(part) - 1 : part] as Record<string, unknown>;
    }
    place[last] = now;
  }
}

function minutesOf({ hours, from, to }: Session, date: string, zone: string): number {
  if (from === undefined || to === undefined) {
    const [whole, part] = String(hours).split(":").map(Number) as [number, number];
    return whole * 60 + part;
  }
  const begin = pointInTime(date, from, zone);
  const end = pointInTime(date, to, zone);
  const next = Temporal.PlainDate.from(date).add({ days: 1 }).toString();
  const until = Temporal.ZonedDateTime.compare(end, begin) > 0 ? end : pointInTime(next, to, zone);
  return begin.until(until, { largestUnit: "minutes" }).total("minutes");
}

function pointInTime(date: string, clock: string, zone: string): Temporal.ZonedDateTime {
  return /[+-]\d\d:\d\d$/.test(clock)
    ? Temporal.Instant.from(`${date}T${clock}`).toZonedDateTimeISO(zone)
    : Temporal.ZonedDateTime.from(`${date}T${clock}[${zone}]`, { disambiguation: "reject" });
}
