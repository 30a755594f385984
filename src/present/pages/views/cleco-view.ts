import type { ClecoColour } from "../../../model/published/cleco-colours.ts";
import { clecoColour } from "../../../model/published/cleco-colours.ts";
import type { Quantity } from "../../../model/quantity.ts";

/** How a fastener of one size is drawn: never by colour alone. */
export interface ClecoView {
  readonly colour: ClecoColour;
  /** `hollow circle`. */
  readonly shape: string;
  /** What the mark means, with the size: `1/8 in: copper cleco, filled circle`. */
  readonly legend: string;
}

const shapes: Readonly<Record<ClecoColour, string>> = {
  silver: "hollow circle",
  copper: "filled circle",
  black: "square",
  brass: "diamond",
  other: "triangle",
};

/** The mark of a fastener with this nominal diameter. */
export function clecoView(diameter: Quantity): ClecoView {
  const colour = clecoColour(diameter);
  const shape = shapes[colour];
  const cleco = colour === "other" ? "no colour of its own in the trade's code" : `${colour} cleco`;
  return { colour, shape, legend: `${diameter.typed}: ${cleco}, drawn as a ${shape}` };
}
