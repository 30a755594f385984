import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** The stabilizer, both halves. */
export const stabilizer: Scene = {
  name: "stabilizer",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 25, thickness: 0.11, camber: 0 },
        tip: { chord: 17, thickness: 0.1, camber: 0 },
        span: 46,
        sweep: 6,
        spars: [0.26, 0.94],
        ribs: 6,
      },
      both: true,
      hung: {
        root: { chord: 17, thickness: 0.14, camber: 0 },
        tip: { chord: 11, thickness: 0.14, camber: 0 },
        span: 45,
        sweep: -1.6,
        spars: [0.16],
        ribs: 6,
      },
      hinges: "rear",
    }),
};
