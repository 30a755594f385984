import type { Build } from "../model/build.ts";
import type { AsOf, CalendarDate, CalendarMonth, Minutes } from "../model/calendar.ts";
import type { Cure } from "../model/cure.ts";
import type { Deviation } from "../model/deviation.ts";
import type { Diagnostic, Span } from "../model/diagnostic.ts";
import type { Hold, Release } from "../model/hold.ts";
import type { Inspection } from "../model/inspection.ts";
import type { Calibration, Instrument } from "../model/instrument.ts";
import type { Lot } from "../model/lot.ts";
import type { MeasuredValue, Reading } from "../model/measurement.ts";
import type { Role } from "../model/person.ts";
import type { Session, WorkKind } from "../model/session.ts";
import type { Squawk } from "../model/squawk.ts";
import type { FigureKind, Limits, ToleranceRule } from "../model/tolerance.ts";
import type { FigureValue } from "./figure.ts";
import type { Assurance, Verdict } from "./judge.ts";
import type { LaidOut } from "./laid-out.ts";
import type { AlterationLedger } from "./ledgers/alteration.ts";
import type { BalanceLedger } from "./ledgers/balance.ts";
import type { HelpLedger } from "./ledgers/help.ts";
import type { PortionLedger } from "./ledgers/portion.ts";
import type { LimitsFault } from "./limits.ts";
import type { AcceptanceZone } from "./uncertainty.ts";

/** One person's share of one session: the grain that every total is a sum of. */
export interface HoursLine {
  readonly date: CalendarDate;
  readonly session: Session;
  readonly assembly: string;
  readonly step?: string;
  readonly person: string;
  readonly role: Role;
  readonly kind: WorkKind;
  readonly minutes: Minutes;
  /** True for `study` and `shop`, which are totalled apart. */
  readonly apart: boolean;
}

/** Minutes of the build itself, and of `study` and `shop`, side by side. */
export interface Hours {
  readonly build: Minutes;
  readonly apart: Minutes;
}

/** Every total of hours. Maps hold each declared name, with zeros where nothing was booked. */
export interface HoursLedger {
  /** By date, then in the order typed. */
  readonly lines: readonly HoursLine[];
  readonly total: Hours;
  /** Booked to the assembly itself, its steps included, children not. */
  readonly byAssembly: ReadonlyMap<string, Hours>;
  /** The assembly and everything below it. */
  readonly byAssemblyRolledUp: ReadonlyMap<string, Hours>;
  readonly byStep: ReadonlyMap<string, Hours>;
  readonly byPerson: ReadonlyMap<string, Hours>;
  readonly byRole: ReadonlyMap<Role, Hours>;
  readonly byKind: ReadonlyMap<WorkKind, Hours>;
  /** Months with at least one day, oldest first. */
  readonly byMonth: ReadonlyMap<CalendarMonth, Hours>;
  readonly byDate: ReadonlyMap<CalendarDate, Hours>;
  /** Total up to and including each day, oldest first. */
  readonly toDate: ReadonlyMap<CalendarDate, Hours>;
}

/** How the values of a reading came about whose rule judges a figure made of several. */
export interface Figure {
  readonly kind: FigureKind;
  /**
   * The readings it is made of, in the order named: of each the newest that replaces it. The
   * reading itself, where it has values of its own.
   */
  readonly of: readonly Reading[];
}

/** One value of a reading with its verdict. */
export interface JudgedValue {
  /** As typed; where the rule judges a figure, that figure, computed exactly. */
  readonly value: MeasuredValue;
  /** The two values that the figure is the difference of. */
  readonly parts?: Pick<FigureValue, "larger" | "smaller">;
  readonly verdict: Verdict;
  /** Present when the instrument's uncertainty is known and there is a limit. */
  readonly assurance?: Assurance;
  /**
   * Which readings of this instrument the rule accepts, in the unit of the value. Present beside
   * `assurance` where the rule has a guard band and the guard bands leave room.
   */
  readonly acceptance?: AcceptanceZone;
}

/** What stands behind an out-of-limits reading. */
export type ReadingStanding =
  | "within"
  | "out"
  | "superseded"
  | "accounted for" // a deviation with a disposition is named
  | "no rule";

/** One reading against its rule. */
export interface JudgedReading {
  readonly reading: Reading;
  /** The rule that governs: the one named, or the one that wins over it. */
  readonly rule?: ToleranceRule;
  /** The general rule that the reading names, where `rule` wins over it. */
  readonly over?: ToleranceRule;
  readonly limits: Limits;
  /** Why there are no limits to judge by, although there is a rule. */
  readonly fault?: LimitsFault;
  /** What is held against the limits: each value or, with a `figure`, what is made of them. */
  readonly values: readonly JudgedValue[];
  readonly figure?: Figure;
  /** The worst of the values: outside before within. Absent without a rule. */
  readonly verdict?: Verdict;
  readonly standing: ReadingStanding;
  /** Id of the later reading that replaces this one. */
  readonly supersededBy?: string;
  readonly deviation?: Deviation;
}

/** A cure as of the day of judgement. */
export interface CureState {
  readonly cure: Cure;
  readonly over: boolean;
  /** Sessions on the same step's joint that began before it was ready. */
  readonly brokenBy: readonly Session[];
}

/** A hold and what ended it. */
export interface HoldState {
  readonly hold: Hold;
  readonly released?: Release;
}

/** A squawk is open until somebody closed it. */
export interface SquawkState {
  readonly squawk: Squawk;
  readonly standing: "open" | "fixed, not closed" | "closed";
}

export interface DeviationState {
  readonly deviation: Deviation;
  readonly open: boolean;
}

/** One look that a step declares. */
export interface LookState {
  readonly look: string;
  /** The newest inspection of this look, by date. */
  readonly inspection?: Inspection;
  readonly done: boolean;
}

/** Where a step stands. */
export interface StepState {
  readonly step: string;
  /** The newest stage typed on any session of the step. */
  readonly stage?: string;
  readonly stageDate?: CalendarDate;
  readonly looks: readonly LookState[];
  readonly firstDate?: CalendarDate;
  readonly lastDate?: CalendarDate;
}

/** A lot on the day of judgement. */
export interface LotState {
  readonly lot: Lot;
  /** Last day of use as known on the day of judgement; absent: does not expire. */
  readonly expiry?: CalendarDate;
  readonly expired: boolean;
  /** Days left, negative when expired. */
  readonly daysLeft?: number;
  /** Dates of the sessions and cures that used it. */
  readonly uses: readonly { readonly date: CalendarDate; readonly span: Span }[];
}

/** An instrument on the day of judgement. */
export interface InstrumentState {
  readonly instrument: Instrument;
  readonly calibration?: Calibration;
  readonly lapsed: boolean;
  readonly readings: readonly Reading[];
}

/** Everything computed from a build: what pages, exports and the terminal show. */
export interface Analysis {
  readonly build: Build;
  readonly asOf: AsOf;
  readonly hours: HoursLedger;
  readonly readings: readonly JudgedReading[];
  readonly cures: readonly CureState[];
  readonly holds: readonly HoldState[];
  readonly squawks: readonly SquawkState[];
  readonly deviations: readonly DeviationState[];
  readonly steps: ReadonlyMap<string, StepState>;
  /** Oldest first. */
  readonly layouts: readonly LaidOut[];
  readonly lots: readonly LotState[];
  readonly instruments: readonly InstrumentState[];
  /** Weight and balance; absent when the journal keeps no register of it. */
  readonly balance?: BalanceLedger;
  /** The major-portion sheet; absent when the journal keeps none. */
  readonly portion?: PortionLedger;
  /** Help received; absent when the journal keeps no register of it. */
  readonly help?: HelpLedger;
  /** What the papers of an alteration need; absent for an aircraft that is built. */
  readonly alteration?: AlterationLedger;
  /** From the checks only; in order of place. What reading found comes beside the build. */
  readonly diagnostics: readonly Diagnostic[];
}
