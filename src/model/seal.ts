import type { CalendarMonth, Minutes } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** A file as a seal names it. */
export interface SealedFile {
  /** Below the journal's folder, with `/` between parts: `days/2026/2026-03-14.md`. */
  readonly path: string;
  /** SHA-256 of its bytes, 64 hexadecimal digits in lower case. */
  readonly digest: string;
}

/** Person-minutes at sealing: of the build itself, and of `study` and `shop`. */
export interface SealedMinutes {
  readonly build: Minutes;
  readonly apart: Minutes;
}

/** What a seal says, before it is written down. */
export interface SealContent {
  readonly month: CalendarMonth;
  readonly designation: string;
  readonly serial: string;
  /** Version of the program that made it. */
  readonly version: string;
  /** The seal before it, by its month and the digest of its own bytes; absent: it is the first. */
  readonly previous?: { readonly month: CalendarMonth; readonly digest: string };
  readonly inMonth: SealedMinutes;
  /** Up to and including the month's last day. */
  readonly toDate: SealedMinutes;
  /** By path: at least one. */
  readonly entries: readonly SealedFile[];
  /** By path. */
  readonly photos: readonly SealedFile[];
}

/** A month closed with hashes and totals, as it stands on disk. */
export interface Seal extends SealContent {
  /** SHA-256 of the seal's own bytes, 64 hexadecimal digits in lower case. */
  readonly digest: string;
  /** Where its month was typed. */
  readonly span: Span;
  /** Where its totals were typed. */
  readonly minutesSpan: Span;
}

/** The folder of a journal that holds its seals. */
export const sealFolder = "seals";

/**
 * Where the seal of a month stands, below the journal's folder.
 * @example sealPath("2026-03") // "seals/2026-03.seal"
 */
export function sealPath(month: CalendarMonth): string {
  return `${sealFolder}/${month}.seal`;
}

/** The first twelve digits of a digest: what is copied onto pages, feeds and paper. */
export function shortSeal({ digest }: Pick<Seal, "digest">): string {
  return digest.slice(0, 12);
}

/** Faults that mean that a sealed record differs from what was sealed. */
export const sealFaults = [
  "not-a-seal",
  "seal-chain-broken",
  "sealed-entry-differs",
  "sealed-entry-missing",
  "entry-after-seal",
  "sealed-photo-differs",
  "sealed-photo-missing",
] as const;
export type SealFault = (typeof sealFaults)[number];

/** Whether a diagnostic's code says that a sealed record differs. */
export function isSealFault(code: string): boolean {
  return code === "sealed-total-differs" || sealFaults.some((each) => each === code);
}
