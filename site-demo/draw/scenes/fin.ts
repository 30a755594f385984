import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** The fin. */
export const fin: Scene = {
  name: "fin",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 32, thickness: 0.1, camber: 0 },
        tip: { chord: 19, thickness: 0.1, camber: 0 },
        span: 44,
        sweep: 14,
        spars: [0.3, 0.95],
        ribs: 5,
      },
      hinges: "rear",
    }),
};
