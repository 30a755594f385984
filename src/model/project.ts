import type { CalendarDate, Minutes } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** Why the aircraft needs a record: it is built by its owner, or a finished one is altered. */
export type Basis = "amateur-built" | "alteration";

/** A drawing with the revision the work is done to. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly revision: string;
}

/** How the public edition prints people who did not ask to be named. */
export type NameStyle = "names" | "initials";

/** The aircraft being built or altered. */
export interface Project {
  readonly title: string;
  readonly designation: string;
  readonly serial: string;
  readonly registration?: string;
  readonly basis: Basis;
  /** IANA time zone of the shop, such as `America/Denver`. */
  readonly zone: string;
  readonly begun: CalendarDate;
  /** The day a finished or sample journal is judged on; absent: today. */
  readonly judgedOn?: CalendarDate;
  /** One or two sentences for newcomers. */
  readonly summary: string;
  /** Where the site will stand, for feeds and canonical links; absent until known. */
  readonly address?: string;
  /** Place code used when a day names none. */
  readonly place: string;
  /** Hours of building that the builder expects in all; absent: not said, and nothing is forecast. */
  readonly expected?: Minutes;
  readonly names: NameStyle;
  /** Nothing of a private project is made for the public: there is its private edition alone. */
  readonly private: boolean;
  readonly drawings: readonly Drawing[];
  /** The order a joint goes through, first to last. */
  readonly stages: readonly string[];
  readonly span: Span;
}

/** The order of stages when a project declares none. */
export const usualStages = [
  "laid out",
  "cut",
  "drilled",
  "clecoed",
  "deburred",
  "primed",
  "riveted",
  "bonded",
  "sealed",
  "inspected",
  "closed",
] as const;
