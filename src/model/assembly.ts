import type { Minutes } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** A node of the tree that work is booked to. */
export interface Assembly {
  readonly id: string;
  readonly title: string;
  readonly summary?: string;
  readonly parent?: string;
  /** Ids of the assemblies below, in the order declared. */
  readonly children: readonly string[];
  /** Ids of the steps on this assembly itself, in the order declared. */
  readonly steps: readonly string[];
  /** Ids from the root to this one, both included. */
  readonly path: readonly string[];
  readonly span: Span;
}

/** One task from the drawings or the manual. */
export interface Step {
  readonly id: string;
  readonly title: string;
  readonly assembly: string;
  readonly drawing?: string;
  readonly planned?: Minutes;
  /** What has to be looked at before the step may be `closed`; each is a name of a look. */
  readonly looks: readonly string[];
  readonly span: Span;
}
