import { dimensions } from "../../model/unit.ts";
import { editions } from "./edition.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  oneOf,
  shared,
  text,
  whole,
  yesOrNo,
} from "./json-schema.ts";

const minutes = (description: string): JsonSchema => whole(`${description}, whole minutes.`, 0);

const namedHours = (description: string): JsonSchema =>
  list(
    description,
    object("Minutes of one named thing.", {
      id: text("Its id, name, month or date."),
      build: minutes("Of the build itself"),
      apart: minutes("Of study and shop, which are totalled apart"),
    }),
  );

/** Definitions that the schemas of the data files share. */
export const sharedDefinitions: Readonly<Record<string, JsonSchema>> = {
  source: object("Where in the journal something was typed.", {
    file: text("Path of the file, with `/` between parts."),
    line: whole("Line, counted from 1.", 1),
    column: whole("Column, counted from 1.", 1),
  }),
  moment: object("A point in time.", {
    local: {
      description: "The shop's clock, on 24 hours.",
      type: "string",
      pattern: "^\\d{4}-\\d{2}-\\d{2} \\d{2}:\\d{2}$",
    },
    epochMinutes: whole("Whole minutes since 1970-01-01T00:00Z."),
  }),
  quantity: object("A value as typed and as understood.", {
    typed: text("As typed, trailing zeros and all; for a computed limit, as computed."),
    exact: {
      description: "The exact amount in `unit`: a whole number, or two parted by `/`.",
      type: "string",
      pattern: "^-?\\d+(/\\d+)?$",
    },
    decimal: { description: "The nearest binary floating-point number.", type: "number" },
    unit: text("Unit as printed."),
    dimension: oneOf("What the unit measures.", dimensions),
  }),
  project: object("The aircraft being built or altered.", {
    title: text("Title of the journal."),
    designation: text("Designation of the aircraft."),
    serial: text("The builder's serial number, as typed."),
    registration: { optional: text("Registration mark.") },
    builders: list(
      "Who builds, as the edition names them, in the order declared.",
      text("A name."),
    ),
    basis: oneOf("Why the aircraft needs a record.", ["amateur-built", "alteration"]),
    zone: text("IANA time zone of the shop."),
    begun: date("The day work began."),
    summary: text("One or two sentences."),
    address: { optional: text("Where the site stands.") },
    names: oneOf("How the public edition shows people.", ["names", "initials"]),
    private: yesOrNo("Whether only the private edition is made."),
    defaultPlace: text("Place code of days that name none."),
    expectedMinutes: { optional: minutes("That the builder expects the build to take in all") },
    drawings: list(
      "Drawings with the revision the work is done to.",
      object("A drawing.", {
        id: text("Id of the drawing."),
        title: text("Its title."),
        revision: text("Its revision."),
      }),
    ),
    stages: list("The order a joint goes through, first to last.", text("A stage.")),
    source: shared("Where it was declared.", "source"),
  }),
  totals: object(
    "Every total of hours. Each person present at a session is credited with all of its minutes.",
    {
      total: object("The whole.", {
        build: minutes("Of the build itself"),
        apart: minutes("Of study and shop, which are totalled apart"),
      }),
      byAssembly: namedHours("Booked to each assembly itself, its steps included, parts not."),
      byAssemblyRolledUp: namedHours("Each assembly and everything below it."),
      byStep: namedHours("By step; sessions need not name one, so this may sum to less."),
      byPerson: namedHours("By person."),
      byRole: namedHours("By role."),
      byKind: namedHours("By kind of work."),
      byMonth: namedHours("By month, oldest first."),
      byDate: namedHours("By day, oldest first."),
      toDate: namedHours("Total up to and including each day, oldest first."),
    },
  ),
};

/** The properties that every data file begins with. */
export function headProperties(format: { readonly name: string; readonly version: number }) {
  return {
    $schema: text("Name of the file with this schema."),
    format: { description: "Name of the format.", const: format.name },
    formatVersion: { description: "Version of the format.", const: format.version },
    program: object("The program that wrote the file.", {
      name: text("Its name."),
      version: text("Its version."),
    }),
    edition: oneOf("Who the file is for.", editions),
    editionNote: text("Which edition this is and what it lacks, in words."),
    caution: text("What this is not, and what governs instead."),
    asOf: date("The day of judgement."),
  };
}
