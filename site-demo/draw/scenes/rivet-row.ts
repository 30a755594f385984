import {
  aluminium,
  darkSteel,
  filmed,
  goldRivet,
  paint,
  primer,
  rivetMetal,
  rubber,
} from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, pencil, plate, tapeStrip } from "../props/bench.ts";
import { factoryHead, flushHead, holeMark, shopHead } from "../props/fasteners.ts";
import { buckingBar, rivetBox } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, lathe, tube } from "../shape.ts";
import type { Vec3 } from "../vector.ts";

/** A row of driven rivets, close; the ones that went wrong are ringed. */
export const rivetRow: Scene = {
  name: "rivet-row",
  defaults: { heads: "12", bad: "0", side: "shop" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const heads = Math.max(1, Math.min(60, numberIn(detail.heads, 12)));
    const bad = Math.min(heads, numberIn(detail.bad, 0));
    const shop = detail.side !== "factory";
    const diameter = random.pick([0.125, 0.125, 0.094]);
    const pitch = heads > 14 ? 0.46 : 0.52;
    const width = (heads - 1) * pitch + 2.2;
    const empty = /empty|hole/.test(words);
    const under = random.pick([
      aluminium(random.whole(1, 99), 30),
      primer(random.whole(1, 99)),
      aluminium(random.whole(1, 99), 22),
    ]);
    const over = shop
      ? random.pick([primer(random.whole(1, 99)), aluminium(random.whole(1, 99), 34)])
      : random.pick([aluminium(random.whole(1, 99), 34), filmed(random.whole(1, 99))]);
    const rivet = random.chance(0.6) ? rivetMetal : goldRivet;
    const flush = !shop && (/upper|skin/.test(words) || !/spar/.test(words));

    const stage = benchWithWall(random, {
      top: anyTop(random, ["boards", "oak", "plywood", "mat", "carpet"]),
      scale: 0.42,
      night: setting.light === "lamp",
    });
    stage.place(plate(width + 1.7, 3.1, 0.063, under), here.move(0.3, 0, -0.3));
    const top = 0.126;
    const extra = random.branch("extra");
    // Often the upper sheet is the foot of an angle or of a rib.
    if (shop ? extra.chance(0.55) : extra.chance(0.25)) {
      stage.put(box(width + 0.2, 1.3, 0.063, { bevel: 0.012 }), over, here.move(0, 0.1, -0.72));
      stage.put(
        tube(
          [
            [-width / 2 - 0.1, 0.15, -0.66],
            [width / 2 + 0.1, 0.15, -0.66],
          ],
          0.06,
          { sides: 8 },
        ),
        over,
      );
    }
    if (extra.chance(0.5))
      stage.place(
        extra.chance(0.5) ? buckingBar() : rivetBox(extra),
        here.move(extra.sway(3), 0, -3.2).turnY(extra.between(0, 360)),
      );
    if (extra.chance(0.45))
      stage.place(
        pencil(extra.pick(["#a3201a", "#c9821f", "#2f5d8a"])),
        here
          .move(extra.pick([-1, 1]) * 2.4, 0.02, 2.6)
          .turnY(extra.sway(24))
          .size(0.9),
      );
    else if (extra.chance(0.5))
      stage.place(
        tapeStrip(2.2, 0.75, 3),
        here
          .move(extra.sway(2), top + 0.002, 0.48)
          .turnY(extra.sway(7))
          .size(0.5, 1, 0.42),
      );
    stage.place(plate(width + 0.2, 1.5, 0.063, over), here.move(0, 0.063, 0));
    const order = random.branch("bad");
    const small = /doubler|rejected|small/.test(words);
    const leaning = /practice|sideways/.test(words);
    const wide = /stiffener|wide/.test(words);
    const wrong = new Set<number>();
    if (bad === 1 && small) wrong.add(1);
    // Towards the trailing edge's end the wedge gives least support.
    if (!shop) for (let i = 0; i < bad; i++) wrong.add(heads - 1 - i);
    while (wrong.size < bad) wrong.add(order.whole(0, heads - 1));
    const red = paint("#a3201a", 0.7);
    for (let i = 0; i < heads; i++) {
      const x = (i - (heads - 1) / 2) * pitch;
      const at = here
        .move(x + random.sway(0.008), top, random.sway(0.01))
        .turnY(random.between(0, 360));
      if (wrong.has(i)) {
        if (empty) {
          stage.put(holeMark(diameter * 1.05, 20), rubber("#070708"), at.move(0, 0.002, 0));
          stage.put(
            lathe(
              [
                [diameter * 0.56, 0.003],
                [diameter * 0.53, 0.012],
                [diameter * 0.5, 0.004],
              ],
              20,
            ),
            rivetMetal,
            at,
          );
        } else if (shop) {
          const kind = small ? 0 : leaning ? 1 : wide ? 2 : order.whole(0, 2);
          const head =
            kind === 0
              ? shopHead(diameter * 0.8, { flat: 1.2 })
              : kind === 1
                ? shopHead(diameter, { lean: 0.6, flat: 0.85 })
                : shopHead(diameter, { flat: 0.42 });
          stage.put(head, rivet, at);
        } else {
          stage.put(factoryHead(diameter), rivet, at.move(0, -0.012, 0).turnZ(9));
          stage.put(
            lathe(
              [
                [0.28, 0.001],
                [0.2, 0.006],
                [0.12, 0.002],
              ],
              20,
            ),
            darkSteel,
            at.move(0.05, 0, 0.04).size(1, 0.4, 0.8),
          );
        }
        const ring: Vec3[] = [];
        for (let k = 0; k < 30; k++) {
          const a = (k / 29) * 2.12 * Math.PI + 0.4;
          const r = 0.24 + k * 0.0012 + random.sway(0.006);
          ring.push([x + r * Math.cos(a), top + 0.002, r * 0.94 * Math.sin(a)]);
        }
        stage.put(
          tube(
            ring.map(([px, , pz]): Vec3 => [px, top * 12, pz]),
            0.02,
            { sides: 6 },
          ),
          red,
          here.move(0, top - top * 0.6 + 0.001, 0).size(1, 0.05, 1),
        );
      } else if (shop) {
        stage.put(shopHead(diameter, { flat: random.between(0.93, 1.05) }), rivet, at);
      } else {
        stage.put(flush ? flushHead(diameter) : factoryHead(diameter, 24), rivet, at);
      }
    }
    const half = ((heads - 1) * pitch) / 2 + 0.3;
    const side = random.pick([-1, 1]);
    // A long row, or any row in a tall picture, runs away from the viewer. It
    // stands far enough off that the near end is still in the picture.
    const receding = width > 9 || setting.tall;
    const slope = setting.tall ? 0.22 : 0.29;
    const turn = receding ? random.between(58, 66) : random.sway(20);
    const radians = (Math.abs(turn) * Math.PI) / 180;
    const away = half * (Math.cos(radians) / slope + Math.sin(radians)) + 0.6;
    return {
      stage,
      camera: framed(setting, {
        target: [0, 0.1, -0.05],
        round: receding ? [side * turn, side * turn] : [turn, turn],
        above: receding ? [24, 36] : [32, 52],
        limits: [21, 80],
        roundLimits: receding ? [-68, 68] : [-24, 24],
        away,
        zooms: [0.98, 1.15],
        tallAway: 1,
        aperture: receding ? 0.024 : 0.03,
        focusOn: [side * half * 0.2, top, 0],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0, 0], radius: Math.max(4.5, width * 0.5) },
    };
  },
};
