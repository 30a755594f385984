import type { JudgedReading } from "../../../compute/analysis.ts";
import { precedenceReason } from "../../../compute/limits-text.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";

/** A reading that a figure is made of. */
export interface FigurePartView {
  /** Its id, with a link to its place; plain text when it is the reading itself. */
  readonly reading?: Mention;
  readonly at?: string;
  /** As typed, with commas between. */
  readonly values: string;
}

/** How a reading's value came about that is made of others. */
export interface FigureView {
  readonly kind: string;
  readonly of: readonly FigurePartView[];
}

/** Which rule a reading is judged by in place of the one it names, and why. */
export interface PrecedenceView {
  readonly over: Link;
  /** A part of a sentence: `a limit of the drawing comes before a published one`. */
  readonly why: string;
}

/** The figure of a reading; `undefined` for one whose values are judged each by itself. */
export function figureView(
  links: Links,
  { figure, reading }: Pick<JudgedReading, "figure" | "reading">,
): FigureView | undefined {
  if (!figure || figure.of.length === 0) return undefined;
  return {
    kind: figure.kind,
    of: figure.of.map(({ id, at, values }) => ({
      ...(id === reading.id ? {} : { reading: links.reading(id) }),
      ...(at === undefined || id === reading.id ? {} : { at }),
      values: values.map(({ quantity }) => quantity.typed).join(", "),
    })),
  };
}

/** Which general rule is won over; `undefined` where the reading's own rule governs. */
export function precedenceView(
  links: Links,
  { rule, over }: Pick<JudgedReading, "rule" | "over">,
): PrecedenceView | undefined {
  if (!rule || !over) return undefined;
  return { over: links.rule(over.id), why: precedenceReason(rule, over) };
}
