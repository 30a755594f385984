import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** The rudder. */
export const rudder: Scene = {
  name: "rudder",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 21, thickness: 0.15, camber: 0 },
        tip: { chord: 14, thickness: 0.14, camber: 0 },
        span: 54,
        sweep: 3.5,
        spars: [0.17],
        ribs: 6,
      },
      standing: true,
      hinges: "front",
    }),
};
