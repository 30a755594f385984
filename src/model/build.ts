import type { Alteration } from "./alteration.ts";
import type { Assembly, Step } from "./assembly.ts";
import type { Balance } from "./balance.ts";
import type { Cure } from "./cure.ts";
import type { Day } from "./day.ts";
import type { Deviation } from "./deviation.ts";
import type { Help } from "./help.ts";
import type { Hold, Release } from "./hold.ts";
import type { Inspection } from "./inspection.ts";
import type { Instrument } from "./instrument.ts";
import type { Layout } from "./layout.ts";
import type { Lot } from "./lot.ts";
import type { Reading } from "./measurement.ts";
import type { Person } from "./person.ts";
import type { Photo } from "./photo.ts";
import type { Portion } from "./portion.ts";
import type { Project } from "./project.ts";
import type { Seal } from "./seal.ts";
import type { Session } from "./session.ts";
import type { Squawk } from "./squawk.ts";
import type { ToleranceRule } from "./tolerance.ts";
import type { Video } from "./video.ts";

/** A file of the journal that is not published, and why. */
export interface Omission {
  readonly file: string;
  readonly why: string;
}

/** What is declared by id. Iterates in the order declared. */
export interface Registers {
  readonly people: ReadonlyMap<string, Person>;
  /** Parents before children. */
  readonly assemblies: ReadonlyMap<string, Assembly>;
  readonly steps: ReadonlyMap<string, Step>;
  readonly rules: ReadonlyMap<string, ToleranceRule>;
  readonly instruments: ReadonlyMap<string, Instrument>;
  readonly lots: ReadonlyMap<string, Lot>;
}

/** Everything read from a journal, as one immutable value. */
export interface Build extends Registers {
  /** Name of the journal's folder. */
  readonly journal: string;
  readonly project: Project;
  /** Absent when the journal keeps no register of weight and balance. */
  readonly balance?: Balance;
  /** Absent when the journal keeps no major-portion sheet. */
  readonly portion?: Portion;
  /** Absent when the journal keeps no register of help. */
  readonly help?: Help;
  /** Absent when the journal says nothing of an alteration beside its entries. */
  readonly alteration?: Alteration;
  /** By date, oldest first. */
  readonly days: readonly Day[];
  /** Months that were closed, oldest first. */
  readonly seals: readonly Seal[];
  /** Drafts and the like: files in, but not published. */
  readonly omissions: readonly Omission[];
}

// The lists below run through all days in order; each is a fresh array.

export const sessionsOf = (build: Build): Session[] => build.days.flatMap((day) => day.sessions);
export const readingsOf = (build: Build): Reading[] => build.days.flatMap((day) => day.readings);
export const curesOf = (build: Build): Cure[] => build.days.flatMap((day) => day.cures);
export const holdsOf = (build: Build): Hold[] => build.days.flatMap((day) => day.holds);
export const releasesOf = (build: Build): Release[] => build.days.flatMap((day) => day.releases);
export const squawksOf = (build: Build): Squawk[] => build.days.flatMap((day) => day.squawks);
export const layoutsOf = (build: Build): Layout[] => build.days.flatMap((day) => day.layouts);
export const photosOf = (build: Build): Photo[] => build.days.flatMap((day) => day.photos);
export const videosOf = (build: Build): Video[] => build.days.flatMap((day) => day.videos);
export const deviationsOf = (build: Build): Deviation[] =>
  build.days.flatMap((day) => day.deviations);
export const inspectionsOf = (build: Build): Inspection[] =>
  build.days.flatMap((day) => day.inspections);
