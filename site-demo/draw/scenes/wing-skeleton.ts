import { showWing } from "../props/wing.ts";
import { numberIn, type Scene } from "../scene.ts";

/** A wing's spars and ribs on the stands, without skins. */
export const wingSkeleton: Scene = {
  name: "wing-skeleton",
  defaults: { ribs: "14" },
  compose: (setting) =>
    showWing(setting, {
      ribs: Math.max(3, Math.min(22, numberIn(setting.detail.ribs, 14))),
      progress: { skins: [], primed: true, clecos: 0, riveted: false },
    }),
};
