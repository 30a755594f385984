import { showWing } from "../props/wing.ts";
import { numberIn, type Scene } from "../scene.ts";

/** A wing with its skins on, the top or the bottom up. */
export const wingSkinned: Scene = {
  name: "wing-skinned",
  defaults: { clecos: "120", side: "top" },
  compose: (setting) => {
    const clecos = Math.max(0, numberIn(setting.detail.clecos, 120));
    return showWing(setting, {
      ribs: 14,
      upsideDown: setting.detail.side === "bottom",
      progress: {
        skins: setting.detail.side === "bottom" ? [-1, 1] : [1, -1],
        primed: true,
        clecos,
        riveted: clecos < 20,
        film: clecos > 20,
      },
    });
  },
};
