import { aluminium, dyed, paint } from "../materials.ts";
import { circle, ellipse } from "../outline.ts";
import { flat, here } from "../pose.ts";
import { anyTop, benchWithWall, steelRule } from "../props/bench.ts";
import { scriber, swarf } from "../props/tools.ts";
import { type Composition, framed, lightFor, type Scene, type Setting } from "../scene.ts";
import { extrude, lathe, quad, tube } from "../shape.ts";
import type { Vec2, Vec3 } from "../vector.ts";

/** A hole that went wrong, close, with a ring of red pencil round it. */
export const mistakeHole: Scene = {
  name: "mistake-hole",
  defaults: { shape: "double" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const stage = benchWithWall(random, {
      top: anyTop(random, ["boards", "oak", "mat", "plywood"]),
      scale: 0.3,
      night: setting.light === "lamp",
    });
    const bare = aluminium(random.whole(1, 99), 36);
    const metal =
      /dye/.test(words) || random.chance(0.6)
        ? dyed(
            bare,
            { u: 0.1, v: 0.1, width: 4.2, height: 1.7 },
            [
              [-4, 0, 4, 0],
              [-0.02, -2, -0.02, 2],
              [-1, -2, -1, 2],
              [1, -2, 1, 2],
            ],
            { seed: random.whole(1, 99), line: 0.007 },
          )
        : bare;
    const r = 0.064;
    const holes: Vec2[][] = [-2, -1, 1, 2].map((x) => circle(x, 0, r, 26));
    switch (detail.shape) {
      case "oblong":
        holes.push(
          ellipse(0.02, 0.01, r * 1.75, r * 1.02, 34).map(([x, y]): Vec2 => [x, y + x * 0.3]),
        );
        break;
      case "edge":
        holes.push(circle(0, -0.93, r, 26));
        break;
      default: {
        // Two holes that run into each other: a figure of eight.
        const apart = r * 1.25;
        const left = circle(-apart / 2, 0, r, 36).filter(([x]) => x < -0.002);
        const right = circle(apart / 2, 0, r * 1.03, 36).filter(([x]) => x > 0.002);
        const turned = ([x, y]: Vec2): Vec2 => [x * 0.9 - y * 0.42, x * 0.42 + y * 0.9];
        const byAngle = (list: Vec2[], cx: number) =>
          [...list].sort((a, b) => angle(a, cx) - angle(b, cx));
        holes.push([...byAngle(right, apart / 2), ...byAngle(left, -apart / 2)].map(turned));
      }
    }
    const thick = 0.07;
    stage.put(
      extrude(
        [
          [-3.6, -1.15],
          [3.6, -1.15],
          [3.6, 2.4],
          [-3.6, 2.4],
        ],
        thick,
        { holes, bevel: 0.012 },
      ),
      metal,
      flat,
    );
    const rim = lathe(
      [
        [r * 1.3, 0],
        [r * 1.14, 0.011],
        [r * 1.0, 0.006],
      ],
      26,
    );
    for (const x of [-2, -1, 1, 2]) stage.put(rim, bare, here.move(x, thick, 0));
    const ring: Vec3[] = [];
    const z0 = detail.shape === "edge" ? 0.93 : 0;
    for (let k = 0; k < 46; k++) {
      const a = (k / 45) * 2.3 * Math.PI + 0.5;
      const rr = 0.34 + k * 0.0014 + random.sway(0.004);
      ring.push([rr * Math.cos(a), 1, z0 + rr * 0.92 * Math.sin(a)]);
    }
    stage.put(
      tube(ring, 0.018, { sides: 6 }),
      paint("#a3201a", 0.75),
      here.move(0, thick + 0.001 - 0.03, 0).size(1, 0.03, 1),
    );
    const a0: Vec3 = [0.9, 1, z0 - 0.72];
    stage.put(
      tube([a0, [0.4, 1, z0 - 0.34]], 0.018, { sides: 6 }),
      paint("#a3201a", 0.75),
      here.move(0, thick + 0.001 - 0.03, 0).size(1, 0.03, 1),
    );
    stage.put(
      quad([-0.9, 0.0, 4], [0.9, 0, 4], [0.9, 0, 3.6], [-0.9, 0, 3.6]),
      paint("#e2cf9c", 0.8),
      here.move(0, 0.003, 0),
    );
    stage.place(swarf(random.branch("swarf"), 5, 0.7, 14), here.move(0, thick, 0.78));
    if (/scale|rule/.test(words)) stage.place(steelRule(4), here.move(-2, thick, 1).turnY(3));
    const side = random.pick([-1, 1]);
    stage.place(
      scriber(),
      here
        .move(side * 1.1, thick, 0.5)
        .turnY(side > 0 ? -150 : -40)
        .move(-5.8, 0, 0),
    );
    return {
      stage,
      camera: framed(setting, {
        target: [0, 0.05, 0.05],
        round: [-32, 32],
        above: [36, 54],
        limits: [22, 80],
        away: 3.9,
        zooms: [0.8, 1.1],
        aperture: 0.05,
        focusOn: [0, 0.07, 0],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0, 0], radius: 3.2 },
    };
  },
};

function angle([x, y]: Vec2, cx: number): number {
  const a = Math.atan2(y, x - cx);
  return cx > 0 ? a : a < 0 ? a + 2 * Math.PI : a;
}
