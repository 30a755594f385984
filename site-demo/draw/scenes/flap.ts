import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** A flap. */
export const flap: Scene = {
  name: "flap",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 15, thickness: 0.2, camber: 0.02 },
        tip: { chord: 15, thickness: 0.2, camber: 0.02 },
        span: 58,
        sweep: 0,
        spars: [0.26],
        ribs: 7,
      },
      hinges: "front",
    }),
};
