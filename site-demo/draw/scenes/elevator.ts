import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** One elevator. */
export const elevator: Scene = {
  name: "elevator",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 17, thickness: 0.15, camber: 0 },
        tip: { chord: 11, thickness: 0.15, camber: 0 },
        span: 45,
        sweep: 2.4,
        spars: [0.16],
        ribs: 6,
      },
      hinges: "front",
      horn: true,
    }),
};
