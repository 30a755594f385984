import type { HelpLedger } from "../../compute/ledgers/help.ts";
import { helpKinds } from "../../model/help.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  oneOf,
  optional,
  shared,
  text,
  whole,
} from "./json-schema.ts";
import { given, placeRecord } from "./record-values.ts";

/** Help received, as data. */
export function helpRecord({ rows, unlisted }: HelpLedger) {
  return {
    rows: rows.map(({ entry, minutes }) => ({
      id: entry.id,
      person: entry.person,
      kind: entry.kind,
      from: entry.from,
      to: entry.to,
      what: entry.what,
      ...given("place", entry.place),
      shares: [...entry.shares].map(([task, tenths]) => ({ task, tenths })),
      ...given("invoice", entry.invoice),
      ...given("note", entry.note),
      minutes,
      source: placeRecord(entry.span),
    })),
    unlisted: unlisted.map(({ person, kind, date: on, minutes }) => ({
      person,
      kind,
      date: on,
      minutes,
    })),
  };
}

/** What `help` in the record contains. */
export const helpSchema: JsonSchema = object("Help received, beside what sessions have of it.", {
  rows: list(
    "Rows of the register, by first day.",
    object("Help that somebody gave.", {
      id: text("Number of the row."),
      person: text("Who; a person's id."),
      kind: oneOf("Paid, unpaid, or instruction, which counts as neither.", helpKinds),
      from: date("First day."),
      to: date("Last day, inclusive."),
      what: text("What they did."),
      place: optional(text("Where.")),
      shares: list(
        "Shares of tasks of the major-portion sheet, of paid help.",
        object("A share.", { task: text("Number of the task."), tenths: whole("Tenths.", 0) }),
      ),
      invoice: optional(text("Number of the bill; in the private edition only.")),
      note: optional(text("The builder's remark.")),
      minutes: whole("Minutes of sessions of that person in that role on those days.", 0),
      source: shared("Where it was typed.", "source"),
    }),
  ),
  unlisted: list(
    "Help in sessions that no row tells of, by day.",
    object("A person's help on one day.", {
      person: text("Who; a person's id."),
      kind: oneOf("In which role.", helpKinds),
      date: date("The day."),
      minutes: whole("Minutes of those sessions.", 0),
    }),
  ),
});
