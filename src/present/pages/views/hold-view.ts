import type { HoldState } from "../../../compute/analysis.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";

/** Something fastened only for now. */
export interface HoldView {
  readonly id: string;
  readonly day: Mention;
  readonly step: Link;
  /** `24 clecos, front spar`. */
  readonly text: string;
  /** Absent while open. */
  readonly released?: Mention;
}

/** A hold as the pages show it. */
export function holdView(links: Links, { hold, released }: HoldState): HoldView {
  return {
    id: hold.id,
    day: links.day(hold.date),
    step: links.step(hold.step),
    text: `${hold.count === undefined ? "" : `${hold.count} `}${hold.with}${
      hold.where === undefined ? "" : `, ${hold.where}`
    }`,
    ...(released ? { released: links.day(released.date) } : {}),
  };
}
