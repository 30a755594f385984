import type { Span } from "./diagnostic.ts";

/** In what capacity somebody worked. */
export const roles = ["builder", "unpaid help", "paid help", "instruction", "inspector"] as const;
export type Role = (typeof roles)[number];

/** Somebody who works on, inspects or visits the project. */
export interface Person {
  readonly id: string;
  readonly name: string;
  readonly initials: string;
  /** The role taken unless a session says otherwise. */
  readonly role: Role;
  /** What entitles them to be heard: `airframe mechanic`, `technical counselor`. */
  readonly standing?: string;
  /** A private person appears in the public edition as a role only. */
  readonly private: boolean;
  readonly span: Span;
}
