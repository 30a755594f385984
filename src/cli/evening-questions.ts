import { cancel, confirm, intro, isCancel, log, multiselect, select, text } from "@clack/prompts";
import type { Analysis } from "../compute/analysis.ts";
import type { CalendarDate } from "../model/calendar.ts";
import { type WorkKind, workKinds } from "../model/session.ts";
import type { EveningOffer } from "../present/evening/offer.ts";
import { dateWithWeekday } from "../present/format/dates.ts";
import { spokenDuration, spokenTime } from "../read/spoken-time.ts";
import type { NewEntry, NewSession } from "../write/entries/entry-text.ts";
import type { EveningOptions } from "./evening.ts";
import { Interrupted } from "./interrupted.ts";

interface Evening {
  readonly analysis: Analysis;
  readonly date: CalendarDate;
  readonly offer: EveningOffer;
  readonly options: EveningOptions;
}

/**
 * Asks for an evening, with last time's answers in place. What was said by flags is not asked.
 * @throws Interrupted when the builder leaves.
 */
export async function askEvening(evening: Evening): Promise<NewEntry> {
  const { date, offer, options } = evening;
  intro(`Entry for ${dateWithWeekday(date)}${offer.gap ? `, ${offer.gap}` : ""}`);
  if (offer.next.length > 0) log.info(`Last time you meant to:\n${offer.next.join("\n")}`);
  const sessions: NewSession[] = [];
  let another = true;
  while (another) {
    sessions.push(await askSession(evening, sessions.length === 0));
    another = answered(await confirm({ message: "Another session?", initialValue: false }));
  }
  const title =
    options.title ?? answered(await text({ message: "Title", placeholder: "may stay empty" }));
  const prose =
    options.text ??
    answered(await text({ message: "What went on?", placeholder: "in plain words" }));
  const next =
    options.next ??
    answered(
      await text({ message: "What comes next?", placeholder: "commas between; may stay empty" }),
    )
      ?.split(",")
      .map((line) => line.trim())
      .filter((line) => line !== "");
  return {
    date,
    ...(title ? { title } : {}),
    sessions,
    next: next ?? [],
    prose: prose ?? "",
  };
}

async function askSession(evening: Evening, first: boolean): Promise<NewSession> {
  const { analysis, offer, options } = evening;
  const { build } = analysis;
  const last = offer.last;
  const flags = first ? options : ({} as Partial<EveningOptions>);
  const assembly =
    flags.assembly ??
    answered(
      await select({
        message: "Which assembly?",
        options: [...build.assemblies.values()].map(({ id, title, path }) => ({
          value: id,
          label: `${"  ".repeat(path.length - 1)}${title}`,
        })),
        ...(last ? { initialValue: last.assembly } : {}),
      }),
    );
  const step = flags.step ?? (await askStep(evening, assembly));
  const who =
    flags.who?.split(",") ??
    answered(
      await multiselect({
        message: "Who worked?",
        options: [...build.people.values()].map(({ id, name }) => ({ value: id, label: name })),
        initialValues: [...offer.people],
        required: true,
      }),
    );
  const kind = answered(
    await select<WorkKind>({
      message: "Which kind of work?",
      options: workKinds.map((value) => ({ value, label: value })),
      initialValue: workKinds.find((each) => each === flags.kind) ?? last?.kind ?? "assemble",
    }),
  );
  const time = await askTime(flags);
  return { assembly, ...(step ? { step } : {}), who, ...time, kind };
}

async function askStep({ analysis, offer }: Evening, assembly: string): Promise<string> {
  const steps = analysis.build.assemblies.get(assembly)?.steps ?? [];
  if (steps.length === 0) return "";
  return answered(
    await select({
      message: "Which step?",
      options: [
        ...steps.map((id) => ({
          value: id,
          label: `${id}  ${analysis.build.steps.get(id)?.title}`,
        })),
        { value: "", label: "none of them" },
      ],
      ...(offer.last?.step ? { initialValue: offer.last.step } : {}),
    }),
  );
}

async function askTime(
  flags: Partial<EveningOptions>,
): Promise<Pick<NewSession, "from" | "to" | "hours">> {
  const typed =
    flags.hours ??
    (flags.from && flags.to ? `${flags.from}-${flags.to}` : undefined) ??
    answered(
      await text({
        message: "How long?",
        placeholder: "18:40-21:05, or 1:15",
        validate: (value) =>
          spokenSpan(value ?? "")
            ? undefined
            : "Write two times with a dash between, or hours and minutes.",
      }),
    );
  const span = spokenSpan(typed);
  if (!span) throw new Error("an answer that was validated does not read");
  log.step(span.hours ? `${span.hours} h` : `${span.from} to ${span.to}`);
  return span;
}

function spokenSpan(typed: string): Pick<NewSession, "from" | "to" | "hours"> | undefined {
  const parts = typed.split(/\s*(?:-|–|to)\s*/);
  if (parts.length === 2) {
    const from = spokenTime(parts[0] ?? "");
    const to = spokenTime(parts[1] ?? "");
    return from && to ? { from, to } : undefined;
  }
  const hours = spokenDuration(typed);
  return hours ? { hours } : undefined;
}

function answered<T>(answer: T): Exclude<T, symbol> {
  if (!isCancel(answer)) return answer as Exclude<T, symbol>;
  cancel("Nothing was written.");
  throw new Interrupted();
}
