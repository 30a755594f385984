import type { SquawkState } from "../../../compute/analysis.ts";
import { anchorOf } from "../addresses.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** An open item and what became of it. */
export interface SquawkView {
  readonly anchor: string;
  readonly id: string;
  readonly day: Mention;
  readonly found: string;
  readonly on?: Link;
  readonly owner?: string;
  readonly standing: SquawkState["standing"];
  readonly fixed?: { readonly text: string; readonly day: Mention };
  readonly closed?: { readonly day: Mention; readonly by?: string };
}

/** A squawk as the pages show it. */
export function squawkView(
  record: RecordIndex,
  links: Links,
  { squawk, standing }: SquawkState,
): SquawkView {
  const { step, assembly, owner, fixed, closed } = squawk;
  const on =
    step !== undefined
      ? links.step(step)
      : assembly !== undefined
        ? links.assembly(assembly)
        : undefined;
  return {
    anchor: anchorOf("squawk", squawk.id),
    id: squawk.id,
    day: links.day(squawk.date),
    found: squawk.found,
    ...(on ? { on } : {}),
    ...(owner === undefined ? {} : { owner: record.person(owner) }),
    standing,
    ...(fixed ? { fixed: { text: fixed.text, day: links.day(fixed.date) } } : {}),
    ...(closed
      ? {
          closed: {
            day: links.day(closed.date),
            ...(closed.by === undefined ? {} : { by: record.person(closed.by) }),
          },
        }
      : {}),
  };
}
