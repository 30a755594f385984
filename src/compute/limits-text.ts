import { citationText, type SourceStatus } from "../model/citation.ts";
import { asTyped } from "../model/quantity.ts";
import type { Authority, Limits, ToleranceRule } from "../model/tolerance.ts";
import type { Sizes } from "./limits.ts";

const noSizes: Sizes = new Map();

const saidBy: Readonly<Record<Authority, string>> = {
  drawing: "limit of the drawing",
  manual: "limit of the manual",
  published: "published limit, not the drawing's",
  "common practice": "limit of common practice, not the drawing's",
};

/**
 * Limits as notes print them, each end exact and, where it was typed otherwise, as typed:
 * `0.121875 in (1.3 D) to 0.159375 in (1.7 D)`, `at least 0.1875 in (2 D)`. Those of a table
 * say what it was entered with: `57.2 lbf to 65.2 lbf at 53 °F`.
 * @param sizes Of the reading, with what a table is entered with among them.
 */
export function limitsText(limits: Limits, rule: ToleranceRule, sizes: Sizes = noSizes): string {
  const { table } = rule;
  const entry = table && sizes.get(table.by);
  const lower =
    limits.lower && endText(asTyped(limits.lower), table ? undefined : rule.lower?.typed);
  const upper =
    limits.upper && endText(asTyped(limits.upper), table ? undefined : rule.upper?.typed);
  const where = entry ? ` at ${asTyped(entry)}` : "";
  if (lower && upper) return `${lower} to ${upper}${where}`;
  if (lower || upper) return `${lower ? "at least" : "at most"} ${lower ?? upper}${where}`;
  return `no limits${where}`;
}

/**
 * Why a rule governs in place of a general one.
 * @example "a limit of the drawing comes before a published one"
 */
export function precedenceReason(rule: ToleranceRule, over: ToleranceRule): string {
  return rule.authority === over.authority
    ? "it is given for this step, the other in general"
    : `${limitOf[rule.authority]} comes before ${limitOf[over.authority]}`;
}

/** That reason as notes print it, with the rule that the reading names before it. */
export function precedenceText(rule: ToleranceRule, over: ToleranceRule): string {
  return `it wins over \`${over.id}\`: ${precedenceReason(rule, over)}`;
}

const limitOf: Readonly<Record<Authority, string>> = {
  drawing: "a limit of the drawing",
  manual: "a limit of the manual",
  published: "a published one",
  "common practice": "one of common practice",
};

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
