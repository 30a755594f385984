import { aluminium, darkSteel, paint, rivetMetal, steel } from "../materials.ts";
import { circle, roundedRectangle } from "../outline.ts";
import { inset } from "../polygon.ts";
import { here } from "../pose.ts";
import { fastened } from "../props/airframe.ts";
import { shopFloor } from "../props/bench.ts";
import { boltHead } from "../props/fasteners.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, extrude, lathe } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec2, Vec3 } from "../vector.ts";

/** The firewall standing on its edge, with its stiffeners. */
export const firewall: Scene = {
  name: "firewall",
  defaults: { stiffeners: "4" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const stiffeners = Math.max(0, Math.min(9, numberIn(detail.stiffeners, 4)));
    const night = setting.light === "lamp" || setting.light === "strip";
    const stage = shopFloor(random.branch("room"), { depth: 60, night });
    const [w, h] = [40, 30];
    const outline = roundedRectangle(w, h, 6, 7).map(
      ([x, y]): Vec2 => [x * (1 - Math.max(0, y / h) * 0.12), y],
    );
    const sheet = { ...steel, color: [0.66, 0.66, 0.65] as const, roughness: 0.26 };
    const group = new Group();
    group.put(
      extrude(outline, 0.06, {
        holes: [
          circle(0, -h * 0.28, 1.7, 30),
          circle(w * 0.22, h * 0.2, 0.8, 20),
          circle(-w * 0.25, h * 0.16, 1.1, 24),
        ],
      }),
      sheet,
    );
    // The flange turned back all round.
    const ring = inset(outline, 0.05);
    for (const depth of [0]) {
      const rows: Vec3[][] = [
        ring.map(([x, y]): Vec3 => [x, y, depth]),
        ring.map(([x, y]): Vec3 => [x, y, depth - 1.6]),
      ];
      const closed = rows.map((row) => [...row, row[0] ?? [0, 0, 0]]);
      for (let i = 0; i < ring.length; i++) {
        const [a, b] = [closed[0]?.[i], closed[0]?.[i + 1]];
        const [c, d] = [closed[1]?.[i], closed[1]?.[i + 1]];
        if (!a || !b || !c || !d) continue;
        const n: Vec3 = [b[1] - a[1], a[0] - b[0], 0];
        const corner = (at: Vec3) => ({ at, normal: n, uv: [at[0], at[2]] as const });
        group.put([corner(a), corner(b), corner(d), corner(a), corner(d), corner(c)], sheet);
      }
    }
    const angleMetal = aluminium(random.whole(1, 99), 20);
    const places: { at: Vec3; out: Vec3 }[] = [];
    for (let i = 0; i < stiffeners; i++) {
      const upright = i < Math.ceil(stiffeners * 0.6);
      const k = upright ? Math.ceil(stiffeners * 0.6) : stiffeners - Math.ceil(stiffeners * 0.6);
      const n = upright ? i : i - Math.ceil(stiffeners * 0.6);
      const share = k === 1 ? 0.5 : n / (k - 1);
      if (upright) {
        const x = -w * 0.34 + w * 0.68 * share + (k === 1 ? w * 0.05 : 0);
        group.put(box(1.3, h * 0.86, 0.1), angleMetal, here.move(x, -h * 0.44, 0.12));
        group.put(box(0.1, h * 0.86, 1.1), angleMetal, here.move(x - 0.6, -h * 0.44, 0.62));
        for (let y = 0; y < 14; y++)
          places.push({ at: [x + 0.15, -h * 0.42 + (y * h * 0.82) / 13, 0.17], out: [0, 0, 1] });
      } else {
        const y = -h * 0.1 + h * 0.34 * share;
        group.put(box(w * 0.8, 1.3, 0.1), angleMetal, here.move(0, y - 0.65, 0.24));
        group.put(box(w * 0.8, 0.1, 1.1), angleMetal, here.move(0, y - 0.65, 0.74));
        for (let x = 0; x < 18; x++)
          places.push({ at: [-w * 0.38 + (x * w * 0.76) / 17, y + 0.15, 0.3], out: [0, 0, 1] });
      }
    }
    const riveted = places.filter((_, i) => i % 5 !== 0);
    const held = places.filter((_, i) => i % 5 === 0);
    group.place(fastened(riveted, { kind: "head", diameter: 0.125, surface: rivetMetal }, 1.3));
    group.place(
      fastened(held, { kind: "cleco", size: random.pick(["3/32", "1/8"]), plain: false }),
    );
    for (const [x, y] of [
      [-1, -1],
      [1, -1],
      [-0.88, 1],
      [0.88, 1],
    ] as const) {
      const at = here.move(x * w * 0.39, y * h * 0.36, 0.08);
      group.put(box(5, 5, 0.25, { bevel: 0.05 }), angleMetal, at.move(0, -2.5, 0.14));
      group.put(
        lathe(
          [
            [0.5, 0],
            [0.9, 0],
            [0.9, 0.2],
            [0.5, 0.2],
          ],
          26,
        ),
        darkSteel,
        at.move(0, 0, 0.27).turnX(90),
      );
      for (const dx of [-1.6, 1.6])
        for (const dy of [-1.6, 1.6]) group.place(boltHead(0.19), at.move(dx, dy, 0.27).turnX(90));
    }
    const height = 33;
    stage.put(box(70, 2, 26, { bevel: 0.1 }), paint("#8a6a43", 0.8), here.move(0, height - 2, -6));
    for (const x of [-30, 30])
      stage.put(box(3.5, height - 2, 3.5), paint("#9c7a4c", 0.85), here.move(x, 0, 0));
    for (const x of [-30, 30])
      stage.put(box(3.5, height - 2, 3.5), paint("#9c7a4c", 0.85), here.move(x, 0, -15));
    stage.put(box(3, 22, 3), paint("#9c7a4c", 0.85), here.move(-9, height, -12).turnX(-18));
    stage.put(box(3, 22, 3), paint("#9c7a4c", 0.85), here.move(9, height, -12).turnX(-18));
    stage.place(group, here.move(0, height + h / 2 + 0.1, 0).turnX(-9));
    return {
      stage,
      camera: framed(setting, {
        target: [0, height + h * 0.46, -1],
        round: [-40, 40],
        above: [5, 16],
        limits: [2, 30],
        away: 88,
        tallAway: 1.06,
        aperture: 0.016,
      }),
      light: lightFor(setting),
      extent: { centre: [0, height + 10, -4], radius: 36 },
    };
  },
};
