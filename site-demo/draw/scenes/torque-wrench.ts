import { aluminium, machined, paint, primer } from "../materials.ts";
import { noise } from "../noise.ts";
import { circle } from "../outline.ts";
import { flat, here } from "../pose.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { nutAndEnd } from "../props/fasteners.ts";
import { socket, torqueWrench } from "../props/tools.ts";
import { type Composition, framed, isYes, lightFor, type Scene, type Setting } from "../scene.ts";
import { extrude, grid } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec2, Vec3 } from "../vector.ts";

/** Nuts on a fitting, the wrench beside them; with a stripe of paint from each nut to the plate once it is done. */
export const torqueWrenchScene: Scene = {
  name: "torque-wrench",
  defaults: { stripe: "yes", reading: "" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const striped = isYes(detail.stripe);
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.55,
      night: setting.light === "lamp",
    });
    const base = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 30);
    const bar = random.chance(0.5)
      ? machined(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 40);
    const work = new Group();
    const diameter = 0.3125;
    const outline: Vec2[] = [
      [-3.6, -1.5],
      [3.8, -1.1],
      [4, -0.6],
      [4, 0.6],
      [3.8, 1.1],
      [-3.6, 1.5],
    ];
    work.put(
      extrude(
        [
          [-6, -2.3],
          [7, -2.3],
          [7, 2.3],
          [-6, 2.3],
        ],
        0.16,
        { bevel: 0.02 },
      ),
      base,
      flat,
    );
    work.put(
      extrude(outline, 0.22, { bevel: 0.035, holes: [circle(3.1, 0, 0.36, 30)] }),
      bar,
      flat.move(0, 0, 0.16),
    );
    const top = 0.38;
    const places: Vec2[] = [
      [-2.7, -0.85],
      [-2.7, 0.85],
      [-0.9, -0.8],
      [-0.9, 0.8],
      [0.9, -0.7],
      [0.9, 0.7],
    ];
    const lacquer = paint("#f2c21a", 0.28);
    places.forEach(([x, z]) => {
      const turned = random.between(0, 60);
      work.place(nutAndEnd(diameter, turned), here.move(x, top, z));
      if (striped)
        work.put(
          stripe(diameter, random.whole(1, 999)),
          lacquer,
          here.move(x, top, z).turnY(random.between(-28, 28) - 90),
        );
    });
    const at = places[striped ? 5 : 3] ?? [0, 0];
    if (striped) {
      work.place(torqueWrench(), here.move(1.6, top + 0.05, -1.55).turnY(7));
      work.place(socket(0.56, 1.1), here.move(5.1, 0.16, 0.9));
    } else {
      work.place(socket(0.56, 1), here.move(at[0], top + 0.07, at[1]));
      work.place(torqueWrench(), here.move(at[0], top + 1, at[1]).turnY(-32));
    }
    stage.place(work, here.move(0, 0.02, 0).turnY(random.sway(20)));
    return {
      stage,
      camera: framed(setting, {
        target: striped ? [-0.2, 0.5, 0] : [0.8, 0.7, 0.4],
        round: [-34, 34],
        above: [24, 40],
        limits: [18, 62],
        away: striped ? 8.4 : 11,
        aperture: 0.042,
        focusOn: striped ? [-0.2, 0.7, 0.5] : [0.4, 0.8, 0.6],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0.4, 0], radius: 6.5 },
    };
  },
};

/** Paint drawn in one pull from the bolt's end over the nut and the washer onto the plate. */
function stripe(d: number, seed: number) {
  const profile: Vec2[] = [
    [-0.1 * d, 1.53 * d],
    [0.4 * d, 1.53 * d],
    [0.47 * d, 1.47 * d],
    [0.5 * d, 1.26 * d],
    [0.6 * d, 1.22 * d],
    [0.64 * d, 1.05 * d],
    [0.88 * d, 1.02 * d],
    [0.95 * d, 0.9 * d],
    [0.97 * d, 0.22 * d],
    [1.02 * d, 0.18 * d],
    [1.14 * d, 0.17 * d],
    [1.2 * d, 0.04 * d],
    [1.7 * d, 0.02 * d],
    [2.3 * d, 0.015 * d],
  ];
  const rows: Vec3[][] = [];
  for (let i = 0; i < profile.length - 1; i++) {
    const [a, b] = [profile[i] ?? [0, 0], profile[i + 1] ?? [0, 0]];
    for (let s = 0; s < 4; s++) {
      const t = s / 4;
      const x = a[0] + (b[0] - a[0]) * t;
      const y = a[1] + (b[1] - a[1]) * t;
      const run = i + t;
      const end = Math.min(1, (profile.length - 1 - run) / 1.2);
      const half =
        d * 0.27 * (1 + 0.25 * noise(run * 0.8, 3, seed)) * Math.sqrt(Math.max(0.05, end));
      const drift = d * 0.06 * noise(run * 0.5, 9, seed);
      const row: Vec3[] = [];
      for (let k = 0; k <= 6; k++) {
        const across = k / 3 - 1;
        const round = 0.045 * d * (1 - across * across) + 0.012 * d;
        row.push([x + round * 0.8, y + round, drift + across * half]);
      }
      rows.push(row);
    }
  }
  return grid(rows);
}
