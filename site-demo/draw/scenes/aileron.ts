import { showSurface } from "../props/tail.ts";
import type { Scene } from "../scene.ts";

/** An aileron. */
export const aileron: Scene = {
  name: "aileron",
  defaults: { finish: "bare", clecos: "60" },
  compose: (setting) =>
    showSurface(setting, {
      plan: {
        root: { chord: 13, thickness: 0.2, camber: 0 },
        tip: { chord: 12, thickness: 0.2, camber: 0 },
        span: 52,
        sweep: 0,
        spars: [0.24],
        ribs: 7,
      },
      hinges: "front",
    }),
};
