import { citationText, type SourceStatus } from "../model/citation.ts";
import { asTyped } from "../model/quantity.ts";
import type { Authority, Limits, ToleranceRule } from "../model/tolerance.ts";

const saidBy: Readonly<Record<Authority, string>> = {
  drawing: "limit of the drawing",
  manual: "limit of the manual",
  published: "published limit, not the drawing's",
  "common practice": "limit of common practice, not the drawing's",
};

/**
 * Limits as notes print them, each end exact and, where it was typed otherwise, as typed:
 * `0.121875 in (1.3 D) to 0.159375 in (1.7 D)`, `at least 0.1875 in (2 D)`.
 */
export function limitsText(limits: Limits, rule: ToleranceRule): string {
  const lower = limits.lower && endText(asTyped(limits.lower), rule.lower?.typed);
  const upper = limits.upper && endText(asTyped(limits.upper), rule.upper?.typed);
  if (lower && upper) return `${lower} to ${upper}`;
  return lower ? `at least ${lower}` : `at most ${upper}`;
}

const copiedFrom: Readonly<Record<SourceStatus, string>> = {
  read: "",
  secondary: ", copied second-hand and not from the publication itself",
  memory: ", from memory and not checked against the publication",
};

/**
 * Who a rule speaks for, and where it stands: `limit of the drawing: HS-03 (rev C)`. Says so
 * where a value shipped with the program was not read in the publication itself.
 */
export function authorityText({ authority, citation }: ToleranceRule): string {
  return `${saidBy[authority]}: ${citationText(citation)}${copiedFrom[citation.status ?? "read"]}`;
}

function endText(exact: string, typed: string | undefined): string {
  return typed === undefined || typed === exact ? exact : `${exact} (${typed})`;
}
