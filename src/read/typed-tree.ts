import type { Span } from "../model/diagnostic.ts";

/** A value as the builder typed it: always text, always with its place. */
export interface TextNode {
  readonly kind: "text";
  readonly text: string;
  readonly span: Span;
  /** As it stands in the file, quotes included. */
  readonly source: string;
}

export interface ListNode {
  readonly kind: "list";
  readonly items: readonly TypedNode[];
  readonly span: Span;
  readonly source: string;
}

export interface MapNode {
  readonly kind: "map";
  readonly entries: ReadonlyMap<string, MapEntry>;
  readonly span: Span;
  readonly source: string;
}

export interface MapEntry {
  readonly key: TextNode;
  readonly value: TypedNode;
}

/** Front matter or a register as typed, before anything is understood. */
export type TypedNode = TextNode | ListNode | MapNode;
