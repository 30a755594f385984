import type { Reading } from "../model/measurement.ts";
import type { FigureKind } from "../model/tolerance.ts";

/**
 * A reading as messages name it: `shop head diameter at rib 4 row A`; with the figure that is
 * judged in place of its values: `range of rivet pitch at upper cap`.
 */
export function readingText({ what, at }: Reading, figure?: { readonly kind: FigureKind }): string {
  const named = at === undefined ? what : `${what} at ${at}`;
  return figure ? `${figure.kind} of ${named}` : named;
}
