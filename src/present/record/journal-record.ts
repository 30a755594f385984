import type { HoursLedger } from "../../compute/analysis.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Seal } from "../../model/seal.ts";
import { alterationRecord } from "./alteration-record.ts";
import { balanceRecord } from "./balance-record.ts";
import { daysRecord } from "./day-record.ts";
import { caution, type EditedAnalysis, type Edition, editionNote } from "./edition.ts";
import { helpRecord } from "./help-record.ts";
import { portionRecord } from "./portion-record.ts";
import { given, hoursRecord, namedHours, placeRecord } from "./record-values.ts";
import { projectRecord, registersRecord } from "./registers-record.ts";

/** What every data file says about itself first. */
export interface RecordHead {
  readonly $schema: string;
  readonly format: string;
  /** Changes when a reader of the older format would go wrong. */
  readonly formatVersion: number;
  readonly program: { readonly name: string; readonly version: string };
  readonly edition: Edition;
  readonly editionNote: string;
  readonly caution: string;
  /** The day of judgement. */
  readonly asOf: CalendarDate;
}

/** The whole record as data: what `record.json` holds and `record.schema.json` describes. */
export type JournalRecord = ReturnType<typeof journalRecord>;

/** Every total of hours as data, what `totals` holds. */
export type TotalsRecord = ReturnType<typeof totalsRecord>;

/** Name of the schema's file, beside the record. */
export const recordSchemaFile = "record.schema.json";

/** Name and version of the record's format. */
export const recordFormat = { name: "witness-mark record", version: 1 } as const;

/**
 * The whole record as plain data: registers, days with everything as typed and as understood,
 * totals, findings. What is not known is absent, never null. The same analysis gives the same
 * record, in the same order.
 *
 * @param programVersion Version of this program, for the reader of an old file.
 */
export function journalRecord(edited: EditedAnalysis, programVersion: string) {
  const { analysis, edition, leftOut, diagnostics } = edited;
  return {
    ...recordHead(edited, programVersion, recordSchemaFile, recordFormat),
    ...(edition === "public" ? { leftOut: { ...leftOut } } : {}),
    project: projectRecord(analysis),
    ...registersRecord(analysis),
    days: daysRecord(analysis),
    seals: analysis.build.seals.map(sealRecord),
    ...given("balance", analysis.balance && balanceRecord(analysis.balance)),
    ...given("portion", analysis.portion && portionRecord(analysis.portion)),
    ...given("help", analysis.help && helpRecord(analysis.help)),
    ...given("alteration", analysis.alteration && alterationRecord(analysis.alteration)),
    omissions: analysis.build.omissions.map(({ file, why }) => ({ file, why })),
    totals: totalsRecord(analysis.hours),
    findings: diagnostics.map(findingRecord),
  };
}

/** The first lines of a data file. */
export function recordHead(
  edited: EditedAnalysis,
  programVersion: string,
  schema: string,
  format: { readonly name: string; readonly version: number },
): RecordHead {
  return {
    $schema: schema,
    format: format.name,
    formatVersion: format.version,
    program: { name: "Witness Mark", version: programVersion },
    edition: edited.edition,
    editionNote: editionNote(edited),
    caution,
    asOf: edited.analysis.asOf.date,
  };
}

/** Every total of hours, in whole minutes. Each list has every declared name, zeros included. */
export function totalsRecord(hours: HoursLedger) {
  return {
    total: hoursRecord(hours.total),
    byAssembly: namedHours(hours.byAssembly),
    byAssemblyRolledUp: namedHours(hours.byAssemblyRolledUp),
    byStep: namedHours(hours.byStep),
    byPerson: namedHours(hours.byPerson),
    byRole: namedHours(hours.byRole),
    byKind: namedHours(hours.byKind),
    byMonth: namedHours(hours.byMonth),
    byDate: namedHours(hours.byDate),
    toDate: namedHours(hours.toDate),
  };
}

function sealRecord(seal: Seal) {
  return {
    month: seal.month,
    digest: seal.digest,
    ...given("previous", seal.previous),
    programVersion: seal.version,
    inMonth: { ...seal.inMonth },
    toDate: { ...seal.toDate },
    entries: seal.entries.length,
    photographs: seal.photos.length,
    source: placeRecord(seal.span),
  };
}

function findingRecord(diagnostic: Diagnostic) {
  const withheld = diagnostic.span.line === 0;
  return {
    code: diagnostic.code,
    severity: diagnostic.severity,
    message: diagnostic.message,
    ...given("label", diagnostic.label),
    notes: [...diagnostic.notes],
    help: [...diagnostic.help],
    ...(withheld ? {} : { source: placeRecord(diagnostic.span) }),
  };
}
