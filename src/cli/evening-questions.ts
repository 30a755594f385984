import { cancel, confirm, intro, isCancel, log, multiselect, select, text } from "@clack/prompts";
import type { Analysis } from "../compute/analysis.ts";
import type { CalendarDate } from "../model/calendar.ts";
import { type WorkKind, workKinds } from "../model/session.ts";
import type { EveningOffer } from "../present/evening/offer.ts";
import { dateWithWeekday } from "../present/format/dates.ts";
import type { NewEntry, NewSession } from "../write/entries/entry-text.ts";
import type { EveningOptions } from "./evening.ts";
import { type SessionTime, type SpokenSession, spokenSpan } from "./evening-flags.ts";
import { Interrupted } from "./interrupted.ts";

interface Evening {
  readonly analysis: Analysis;
  readonly date: CalendarDate;
  readonly offer: EveningOffer;
  readonly options: EveningOptions;
  /** What the flags said of the first session. */
  readonly spoken: SpokenSession;
}

// What `select` gives for none; no id is empty.
const none = "";

/**
 * Asks for an evening, with last time's answers in place. What was said by flags is not asked.
 * @throws Interrupted when the builder leaves.
 */
export async function askEvening(evening: Evening): Promise<NewEntry> {
  const { date, offer, options, spoken } = evening;
  intro(`Entry for ${dateWithWeekday(date)}${offer.gap ? `, ${offer.gap}` : ""}`);
  if (offer.next.length > 0) log.info(`Last time you meant to:\n${offer.next.join("\n")}`);
  const sessions: NewSession[] = [];
  let session = await askSession(evening, spoken);
  while (session) {
    sessions.push(session);
    const another = answered(await confirm({ message: "Another session?", initialValue: false }));
    session = another ? await askSession(evening, {}) : undefined;
  }
  const title =
    options.title ?? answered(await text({ message: "Title", placeholder: "may stay empty" }));
  const prose =
    options.text ??
    answered(
      await text({
        message: "What went on?",
        placeholder: "in plain words",
        validate: (words) =>
          sessions.length === 0 && !words?.trim()
            ? "Without a session, a sentence is needed."
            : undefined,
      }),
    );
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

// Undefined when nobody worked: an entry of words.
async function askSession(
  evening: Evening,
  spoken: SpokenSession,
): Promise<NewSession | undefined> {
  const { last } = evening.offer;
  const assembly = spoken.assembly ?? (await askAssembly(evening));
  if (assembly === none) return undefined;
  const again = evening.options.again && spoken.assembly !== undefined;
  const step = spoken.step ?? (again ? none : await askStep(evening, assembly));
  const who = spoken.who ?? (await askWho(evening));
  const kind =
    spoken.kind ??
    answered(
      await select<WorkKind>({
        message: "Which kind of work?",
        options: workKinds.map((value) => ({ value, label: value })),
        initialValue: last?.kind ?? "assemble",
      }),
    );
  const time = spoken.time ?? (await askTime());
  return {
    assembly,
    ...(step === none ? {} : { step }),
    who,
    ...time,
    kind,
    ...(spoken.stage === undefined ? {} : { stage: spoken.stage }),
  };
}

async function askAssembly({ analysis, offer, options }: Evening): Promise<string> {
  return answered(
    await select({
      message: "Which assembly?",
      options: [
        ...[...analysis.build.assemblies.values()].map(({ id, title, path }) => ({
          value: id,
          label: `${"  ".repeat(path.length - 1)}${title}`,
        })),
        { value: none, label: "none: no work, only words" },
      ],
      ...(options.text !== undefined
        ? { initialValue: none }
        : offer.last
          ? { initialValue: offer.last.assembly }
          : {}),
    }),
  );
}

async function askStep({ analysis, offer }: Evening, assembly: string): Promise<string> {
  const steps = analysis.build.assemblies.get(assembly)?.steps ?? [];
  if (steps.length === 0) return none;
  return answered(
    await select({
      message: "Which step?",
      options: [
        ...steps.map((id) => ({
          value: id,
          label: `${id}  ${analysis.build.steps.get(id)?.title}`,
        })),
        { value: none, label: "none of them" },
      ],
      ...(offer.last?.step ? { initialValue: offer.last.step } : {}),
    }),
  );
}

async function askWho({ analysis, offer }: Evening): Promise<readonly string[]> {
  const people = [...analysis.build.people.values()];
  if (people.length === 1) return people.map(({ id }) => id);
  return answered(
    await multiselect({
      message: "Who worked?",
      options: people.map(({ id, name }) => ({ value: id, label: name })),
      initialValues: [...offer.people],
      required: true,
    }),
  );
}

async function askTime(): Promise<SessionTime> {
  const typed = answered(
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

function answered<T>(answer: T): Exclude<T, symbol> {
  if (!isCancel(answer)) return answer as Exclude<T, symbol>;
  cancel("Nothing was written.");
  throw new Interrupted();
}
