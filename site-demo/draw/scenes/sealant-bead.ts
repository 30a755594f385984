import { aluminium, maskingTape, paint, primer, sealant } from "../materials.ts";
import { layered, noise } from "../noise.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { shopHead } from "../props/fasteners.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, grid, lathe, quad, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { hex, type Vec3 } from "../vector.ts";

/** A fillet of tank sealant along a joint, with a dab on every rivet. */
export const sealantBead: Scene = {
  name: "sealant-bead",
  defaults: { state: "wet", length: "18" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const wet = detail.state !== "cured";
    if (numberIn(detail.length, 18) <= 4) return coupon(setting, wet);
    const length = Math.max(9, Math.min(40, numberIn(detail.length, 18)));
    const stuff = sealant(wet);
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.6,
      night: setting.light === "lamp",
    });
    const work = new Group();
    const skin = aluminium(random.whole(1, 99), 24);
    const rib = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 30);
    work.put(box(length + 3, 0.05, 7, { bevel: 0.01 }), skin, here.move(0, 0, 0.4));
    work.put(box(length, 2.6, 0.06, { bevel: 0.01 }), rib, here.move(0, 0.05, -0.9));
    work.put(box(length, 0.05, 0.8, { bevel: 0.01 }), rib, here.move(0, 0.05, -0.5));
    const seed = random.whole(1, 999);
    // The fillet: a concave run in the corner, with the marks of the stick in it.
    const bead = (z: number, y: number, size: number, offset: number) => {
      const rows: Vec3[][] = [];
      const steps = Math.round(length * 9);
      for (let i = 0; i <= steps; i++) {
        const x = -length / 2 + 0.2 + ((length - 0.4) * i) / steps;
        const k = size * (1 + 0.13 * layered(x * 1.1, offset, 2, seed));
        const row: Vec3[] = [];
        for (let s = 0; s <= 9; s++) {
          const a = (s / 9) * (Math.PI / 2);
          const ripple = 0.012 * noise(x * 3 + s * 0.25, s * 0.5, seed + 5);
          const inner = 1.16 - Math.sin(2 * a) * 0.44;
          row.push([x, y + Math.sin(a) * k * inner + ripple, z + Math.cos(a) * k * inner + ripple]);
        }
        rows.push(row);
      }
      return grid(rows);
    };
    work.put(bead(-0.87, 0.1, 0.42, 3), stuff);
    work.put(bead(-0.1, 0.05, 0.16, 40), stuff);
    const pitch = 0.92;
    for (let x = -length / 2 + 0.8; x < length / 2 - 0.4; x += pitch) {
      work.put(shopHead(0.1), rib, here.move(x, 0.1, -0.42));
      const k = random.between(0.9, 1.12);
      work.put(
        lathe(
          [
            [0.24, 0],
            [0.23, 0.04],
            [0.18, 0.1],
            [0.1, 0.135],
            [0.03, 0.15],
            [0, 0.15],
          ],
          18,
        ),
        stuff,
        here
          .move(x + random.sway(0.03), 0.09, -0.42 + random.sway(0.03))
          .turnY(random.between(0, 180))
          .size(k, k, k * random.between(0.88, 1.1)),
      );
    }
    // Tape laid as a border, so that the edge comes out straight.
    if (random.chance(0.75)) {
      work.put(
        quad(
          [-length / 2 - 0.6, 0.056, 1.15],
          [length / 2 + 0.6, 0.056, 1.15],
          [length / 2 + 0.6, 0.056, 0.28],
          [-length / 2 - 0.6, 0.056, 0.28],
        ),
        maskingTape(3, random.pick(["#e2cf9c", "#3f74bd"])),
      );
    }
    const near = random.pick([-1, 1]);
    if (wet) {
      const stick = here
        .move(near * 3.1, 0.32, 1.5)
        .turnY(near * 52)
        .turnZ(near * 4);
      work.put(box(5.6, 0.08, 0.42, { bevel: 0.02, round: 0.2 }), paint("#d9b884", 0.7), stick);
      work.put(
        lathe(
          [
            [0.3, -0.1],
            [0.34, 0.06],
            [0.2, 0.17],
            [0, 0.2],
          ],
          18,
        ),
        stuff,
        stick.move(-2.5, 0, 0).size(1.3, 1, 0.9),
      );
      const cup = here.move(-near * 3.6, 0.05, 2.6);
      work.put(
        lathe(
          [
            [0, 0],
            [0.95, 0],
            [1.15, 1.25],
            [1.2, 1.27],
            [1.1, 1.25],
            [0.92, 0.1],
            [0, 0.1],
          ],
          30,
        ),
        paint("#efece4", 0.6),
        cup,
      );
      work.put(
        lathe(
          [
            [1.05, 0.8],
            [0.6, 0.72],
            [0, 0.7],
          ],
          30,
        ),
        stuff,
        cup,
      );
    } else {
      work.put(
        tube(
          [
            [near * 0.5, 0.2, 1.7],
            [near * 4.2, 0.2, 2.4],
          ],
          0.14,
          { sides: 10 },
        ),
        paint("#26477e", 0.4),
      );
      work.put(
        cylinder(0.7, 1.3, { sides: 26, bevel: 0.06 }),
        paint("#cfc9ba", 0.5),
        here.move(-near * 3.2, 0.05, 2.5),
      );
    }
    stage.place(work);
    const long = length > 12;
    return {
      stage,
      camera: framed(setting, {
        target: [near * (long ? 0.6 : 0), 0.4, -0.1],
        round: long ? [near * 34, near * 48] : [-28, 28],
        above: [26, 38],
        limits: [16, 60],
        roundLimits: [-58, 58],
        away: long ? 9.4 : 9.2,
        aperture: 0.042,
        focusOn: [near * 1.2, 0.3, -0.3],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0.4, 0], radius: Math.min(12, Math.max(7, length * 0.5)) },
    };
  },
};

/** Two short beads on a scrap of skin, for watching how a lot cures. */
function coupon(setting: Setting, wet: boolean): Composition {
  const { random, detail } = setting;
  const stuff = sealant(wet);
  const length = numberIn(detail.length, 3);
  const seed = random.whole(1, 999);
  const stage = benchWithWall(random, {
    top: anyTop(random),
    scale: 0.5,
    night: setting.light === "lamp",
  });
  stage.put(box(9, 0.3, 9, { bevel: 0.08 }), {
    color: hex("#e9e7df"),
    roughness: 0.12,
    metal: false,
  });
  const work = new Group().put(
    box(5.4, 0.04, 3.6, { bevel: 0.01 }),
    aluminium(random.whole(1, 99), 26),
  );
  for (const z of [-0.75, 0.75]) {
    const rows: Vec3[][] = [];
    for (let i = 0; i <= 40; i++) {
      const t = i / 40;
      const end = Math.sqrt(Math.max(0, 1 - (2 * t - 1) ** 8));
      const k = 0.26 * end * (1 + 0.12 * layered(t * 6, z, 2, seed));
      rows.push(
        Array.from({ length: 11 }, (_, s): Vec3 => {
          const a = (s / 10) * Math.PI;
          return [(t - 0.5) * length, 0.04 + k * 0.7 * Math.sin(a), z + k * Math.cos(a)];
        }),
      );
    }
    work.put(grid(rows), stuff);
  }
  stage.place(work, here.move(0, 0.3, 0).turnY(random.sway(14)));
  stage.put(
    box(5.6, 0.08, 0.42, { bevel: 0.02, round: 0.2 }),
    paint("#d9b884", 0.7),
    here.move(2.4, 0.42, 3.3).turnY(24),
  );
  stage.put(box(3, 0.02, 0.9), maskingTape(4), here.move(-2.4, 0.3, 3.4).turnY(-6));
  return {
    stage,
    camera: framed(setting, {
      target: [0, 0.3, 0.6],
      round: [-30, 30],
      above: [34, 48],
      away: 13,
      aperture: 0.036,
      focusOn: [0, 0.4, 0.6],
    }),
    light: lightFor(setting),
    extent: { centre: [0, 0.3, 0.5], radius: 7 },
  };
}
