import { aluminium, dyed, paint, rubber, type Scribed, steel } from "../materials.ts";
import { rectangle } from "../outline.ts";
import { flat, here } from "../pose.ts";
import { anyTop, benchWithWall, steelRule } from "../props/bench.ts";
import { holeMark } from "../props/fasteners.ts";
import { scriber, trySquare } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { cylinder, extrude, lathe, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { hex, type Vec2 } from "../vector.ts";

/** The lightening holes of the sample journal's doubler, in inches. */
const lighteningHole = 2.25;

/** A blank brushed with layout dye, lines and the rings of holes to be cut scribed through it. */
export const templateLayout: Scene = {
  name: "template-layout",
  defaults: { lines: "6", rings: "0" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const lines = Math.max(1, Math.min(40, numberIn(detail.lines, 6)));
    const long = /feet|receding/.test(words);
    const [w, d] = long
      ? [34, 6]
      : random.pick([
          [12, 7],
          [10, 8],
          [14, 5.6],
        ]);
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: long ? 1 : 0.62,
      night: setting.light === "lamp",
    });
    const scribed: Scribed[] = [];
    const cross: { x: number; y: number }[] = [];
    // Some run along the blank, the rest across it, and now and then one slants.
    const along = Math.max(1, Math.min(3, Math.round(lines / 4)));
    const ys: number[] = [];
    for (let i = 0; i < along; i++) {
      const y = along === 1 ? -d * 0.08 : -d * 0.3 + (d * 0.6 * i) / (along - 1);
      ys.push(y);
      scribed.push([-w * 0.47, y, w * 0.47, y + random.sway(0.03)]);
    }
    const across = lines - along;
    for (let i = 0; i < across; i++) {
      const x = across === 1 ? 0 : -w * 0.4 + (w * 0.8 * i) / (across - 1);
      const slant = i === across - 1 && lines > 4 ? d * 0.22 : 0;
      scribed.push([x - slant, -d * 0.42, x + slant, d * 0.42]);
      if (!slant) for (const y of ys) cross.push({ x, y });
    }
    const rings = ringCentres(
      cross.filter(({ y }) => Math.abs(y - (ys[Math.floor(along / 2)] ?? 0)) < 1e-9),
      Math.max(0, Math.min(6, numberIn(detail.rings, 0))),
    );
    for (const ring of rings) scribed.push(...ringLines(ring));
    const cut = random.pick(["rectangle", "taper", "notched", "gusset"] as const);
    const wet = /wet|tacky/.test(words);
    const blank = dyed(
      aluminium(random.whole(1, 99), 26),
      {
        u: random.sway(w * 0.06),
        v: 0,
        width: w * (random.chance(0.4) ? 0.62 : 0.95),
        height: d * 0.9,
      },
      scribed,
      { seed: random.whole(1, 999), wet, line: 0.009 },
    );
    const work = new Group();
    const thick = 0.08;
    work.put(
      extrude(outlineOf(long ? "rectangle" : cut, w, d), thick, { bevel: 0.015 }),
      blank,
      flat,
    );
    for (const { x, y } of cross) {
      // Inside a ring only its centre is punched: the rest falls out with the slug.
      const inside = rings.some(
        (ring) =>
          (ring.x !== x || ring.y !== y) &&
          Math.hypot(ring.x - x, ring.y - y) < lighteningHole / 2 + 0.1,
      );
      if (inside) continue;
      work.put(
        lathe(
          [
            [0.07, 0.001],
            [0.05, 0.01],
            [0.03, 0.002],
          ],
          12,
        ),
        { ...steel, color: [0.8, 0.8, 0.83] },
        here.move(x, thick, -y),
      );
      work.put(holeMark(0.05, 10), rubber("#15161a"), here.move(x, thick + 0.003, -y));
    }
    const side = random.pick([-1, 1]);
    const reach = Math.min(w, 14);
    work.place(
      scriber(),
      here.move(side * reach * 0.1, thick, d * 0.28).turnY(random.between(16, 40) * side),
    );
    if (random.chance(0.6))
      work.place(trySquare(), here.move(-reach * 0.38, thick, d * 0.44).turnY(random.sway(5)));
    else work.place(steelRule(6), here.move(-reach * 0.4, thick, d * 0.36).turnY(random.sway(9)));
    // The dye's pot, its brush in the lid.
    const pot = here.move(side * (reach * 0.36), 0, -d * 0.5 - 1.7);
    work.put(
      cylinder(0.9, 1.6, { sides: 30, bevel: 0.12 }),
      { color: hex("#23408f"), roughness: 0.15, metal: false },
      pot,
    );
    work.put(
      cylinder(0.55, 0.4, { sides: 24, bevel: 0.05 }),
      paint("#17191d", 0.4),
      pot.move(0, 1.6, 0),
    );
    if (/bee/.test(words)) work.place(bee(), here.move(0.8, thick, 0.6).turnY(40));
    stage.place(work, here.turnY(random.sway(7)));
    return {
      stage,
      camera: framed(setting, {
        target: [long ? -3 : 0, 0, 0.1],
        round: long ? [44, 54] : [-34, 34],
        above: long ? [18, 24] : [38, 58],
        limits: [15, 82],
        roundLimits: long ? [-60, 60] : [-56, 56],
        away: long ? 20 : Math.max(w, d * 1.4) * 1.48 + 2,
        aperture: 0.028,
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0, 0], radius: long ? 16 : Math.max(w, d) * 0.62 + 1.5 },
    };
  },
};

/** Crossings for so many rings, evenly along the line, clear of one another. */
function ringCentres(
  line: readonly { readonly x: number; readonly y: number }[],
  count: number,
): { x: number; y: number }[] {
  const step = Math.floor((line.length - 1) / Math.max(1, count - 0.5));
  const first = Math.floor((line.length - 1 - step * (count - 1)) / 2);
  return Array.from({ length: count }, (_, i) => line[first + i * step]).flatMap((at) =>
    at ? [at] : [],
  );
}

/** A ring as scribed chords, short enough to look round. */
function ringLines({ x, y }: { readonly x: number; readonly y: number }): Scribed[] {
  const chords = 40;
  const at = (i: number): [number, number] => {
    const angle = (i / chords) * Math.PI * 2;
    return [x + (Math.cos(angle) * lighteningHole) / 2, y + (Math.sin(angle) * lighteningHole) / 2];
  };
  return Array.from({ length: chords }, (_, i) => [...at(i), ...at(i + 1)]);
}

/** The blank's outline: lines may run off it, dye does not. */
function outlineOf(
  cut: "rectangle" | "taper" | "notched" | "gusset",
  w: number,
  d: number,
): Vec2[] {
  const [x, y] = [w / 2, d / 2];
  switch (cut) {
    case "taper":
      return [
        [-x, -y],
        [x, -y * 0.35],
        [x, y * 0.35],
        [-x, y],
      ];
    case "notched":
      return [
        [-x, -y],
        [-x * 0.2, -y],
        [-x * 0.2, -y * 0.62],
        [x * 0.25, -y * 0.62],
        [x * 0.25, -y],
        [x, -y],
        [x, y],
        [-x, y],
      ];
    case "gusset":
      return [
        [-x, -y],
        [x * 0.72, -y],
        [x, -y * 0.4],
        [x, y],
        [-x * 0.6, y],
        [-x, y * 0.3],
      ];
    default:
      return rectangle(-x, -y, x, y);
  }
}

function bee(): Group {
  const dark = paint("#2a1c0d", 0.8);
  const gold = paint("#d79b1e", 0.9);
  const wing = { color: hex("#d9dcd8"), roughness: 0.15, metal: false };
  const group = new Group()
    .put(sphere(0.085, 14), gold, here.move(0, 0.11, -0.02))
    .put(sphere(0.06, 12), dark, here.move(0, 0.1, -0.13));
  for (let i = 0; i < 4; i++)
    group.put(
      sphere(0.085 - i * 0.012, 14),
      i % 2 ? dark : gold,
      here.move(0, 0.1, 0.08 + i * 0.055).size(1, 0.92, 0.5),
    );
  for (const s of [-1, 1]) {
    group.put(
      sphere(0.13, 12),
      wing,
      here
        .move(s * 0.12, 0.19, 0.09)
        .turnY(s * 38)
        .turnZ(s * 18)
        .size(0.42, 0.05, 1),
    );
    for (let i = 0; i < 3; i++)
      group.put(
        tube(
          [
            [s * 0.05, 0.08, -0.05 + i * 0.05],
            [s * 0.13, 0.09, -0.08 + i * 0.08],
            [s * 0.16, 0, -0.1 + i * 0.1],
          ],
          0.008,
          { sides: 4 },
        ),
        dark,
      );
  }
  return group;
}
