import { aluminium, machined, primer } from "../materials.ts";
import { here } from "../pose.ts";
import { channel, fastened } from "../props/airframe.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { boltHead, goldSurface } from "../props/fasteners.ts";
import { screwClamp, springClamp } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";

/** A spar along the bench, clamped and clecoed. */
export const sparOnBench: Scene = {
  name: "spar-on-bench",
  defaults: { clamps: "3", clecos: "24" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const clamps = Math.max(0, Math.min(10, numberIn(detail.clamps, 3)));
    const clecos = Math.max(0, Math.min(240, numberIn(detail.clecos, 24)));
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 1,
      night: setting.light === "lamp",
    });
    const near = random.pick([-1, 1]);
    const close = /close|through/.test(words);
    const length = 46;
    const height = 6.4;
    const web = random.chance(0.6)
      ? aluminium(random.whole(1, 99), 22)
      : primer(random.whole(1, 99));
    const cap = random.chance(0.6)
      ? machined(random.whole(1, 99))
      : primer(random.whole(1, 99), "#76824a");
    const spar = new Group();
    const holes = Array.from({ length: 7 }, (_, i) => ({
      x: 10 + i * 5.2,
      y: height / 2,
      radius: 1.35,
    }));
    spar.place(
      channel(length, height, 1.5, web, {
        gauge: 0.07,
        holes: words.includes("lightening") || random.chance(0.7) ? holes : [],
      }),
      here.move(-length / 2, 0, 0),
    );
    // A doubler at the root and bars along both edges of the web.
    spar.put(
      box(15, height - 1.2, 0.1, { bevel: 0.02 }),
      aluminium(random.whole(1, 99), 30),
      here.move(-length / 2 + 7.6, 0.6, -0.06),
    );
    for (const y of [0.12, height - 1.02])
      spar.put(box(length - 0.6, 0.9, 0.28, { bevel: 0.04 }), cap, here.move(0, y, -0.16));
    const places: { at: Vec3; out: Vec3 }[] = [];
    const rows = clecos > 170 ? 4 : clecos > 20 ? 2 : 1;
    const perRow = Math.max(1, Math.ceil(clecos / rows));
    const ys = [height - 0.55, 0.55, height - 1.35, 1.35];
    for (let i = 0; i < clecos; i++) {
      const row = Math.floor(i / perRow);
      const k = i % perRow;
      const share = perRow === 1 ? 0.5 : (k + (row % 2) * 0.5) / perRow;
      places.push({
        at: [-length / 2 + 1.4 + share * (length - 2.6), ys[row] ?? 1, -0.31],
        out: [0, 0, -1],
      });
    }
    // The web lies flat, its back up, so that the clecos stand.
    const lying = here.move(0, 0.1, 0).turnX(90);
    const flatGroup = new Group().place(spar).place(
      fastened(places, {
        kind: "cleco",
        size: random.pick(["3/32", "1/8", "1/8"]),
        plain: clecos > 40,
      }),
    );
    for (let i = 0; i < 5; i++) {
      for (const y of [1.9, height - 1.9])
        flatGroup.place(boltHead(0.25), here.move(-length / 2 + 2 + i * 2.4, y, -0.11).turnX(-90));
    }
    stage.place(flatGroup, lying.move(0, -height / 2, -1.6));
    stage.put(
      box(length + 6, 0.1, 2.6, { bevel: 0.02 }),
      aluminium(7, 12),
      here.move(2, 0, 7.4).turnY(1.4),
    );
    for (let i = 0; i < clamps; i++) {
      const x = clamps === 1 ? 0 : -length * 0.44 + (length * 0.88 * i) / (clamps - 1);
      const back = i % 2 === 0;
      if (close && Math.abs(x - near * -14) < 9) continue;
      if (random.chance(0.3))
        stage.place(
          springClamp(random.pick(["#d27b1e", "#b52a20", "#2a5d8c"])),
          here.move(x, 1.7, back ? -height / 2 + 0.3 : height / 2 - 0.3).turnY(back ? 0 : 180),
        );
      else
        stage.place(
          screwClamp(2.4, random.pick(["#7e2b22", "#2d4a63", "#4b5054"])),
          here.move(x, -0.7, back ? -height / 2 + 0.9 : height / 2 - 0.9).turnY(back ? -90 : 90),
        );
    }
    for (let x = -24; x <= 24; x += 16)
      stage.put(box(1.6, 0.1, height, { bevel: 0.02 }), goldSurface, here.move(x, 0, 0));
    return {
      stage,
      camera: framed(setting, {
        target: [near * (close ? -14 : -1.5), 1, 0],
        round: [near * -52, near * -34],
        above: [17, 30],
        limits: [12, 64],
        roundLimits: [-68, 68],
        away: close ? 24 : 45,
        aperture: 0.03,
        focusOn: [near * -8, 1.6, 0],
      }),
      light: lightFor(setting),
      extent: { centre: [near * -2, 1, 0], radius: 27 },
    };
  },
};
