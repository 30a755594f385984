import { aluminium, chrome, filmed, paint, primer } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, plate } from "../props/bench.ts";
import { clecoSizes, holeDiameter } from "../props/fasteners.ts";
import { cFramePress, pressLevel } from "../props/press.ts";
import { hammer } from "../props/tools.ts";
import { type Composition, framed, lightFor, type Scene, type Setting } from "../scene.ts";
import { box, lathe } from "../shape.ts";
import { Group } from "../stage.ts";
import { hex } from "../vector.ts";

/** The C-frame press with a skin between its dies. */
export const dimplePress: Scene = {
  name: "dimple-press",
  defaults: { dies: "3/32" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const size = detail.dies ?? "3/32";
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.75,
      night: setting.light === "lamp",
    });
    const iron = {
      color: hex(random.pick(["#2f5d7d", "#7a2f28", "#4a5a4c", "#5b6066"])),
      roughness: 0.42,
      metal: false,
    };
    const work = new Group();
    const d = holeDiameter[size] ?? 0.1;
    work.place(cFramePress(iron, d, random.between(0.12, 0.3)));
    const level = pressLevel;
    const skinSurface = random.pick([
      filmed(random.whole(1, 99)),
      aluminium(random.whole(1, 99), 22),
      aluminium(random.whole(1, 99), 30),
      primer(random.whole(1, 99)),
    ]);
    const holes = [];
    for (let r = 0; r < 3; r++)
      for (let c = -9; c <= 9; c++) holes.push({ x: c * 1, z: r * 1.9 - 2.6, radius: d * 0.6 });
    const side = random.pick([-1, 1]);
    const sheet = here.move(0, level, 0.7);
    work.place(plate(22, 8.4, 0.035, skinSurface, holes), sheet.move(0, 0, 1.9));
    const dent = lathe(
      [
        [d * 2.1, 0.002],
        [d * 1.9, 0.02],
        [d * 1.2, 0.012],
        [d * 0.62, -0.025],
      ],
      18,
    );
    holes.forEach(({ x, z }, i) => {
      // Already dimpled on one side of the dies.
      if (x * side > 0.5 || i < 19) work.put(dent, aluminium(3), sheet.move(x, 0.035, z + 1.9));
    });
    work.put(box(3.4, level, 6, { bevel: 0.1 }), paint("#a67c4c", 0.8), here.move(-8.4, 0, 2));
    work.put(box(3.4, level, 6, { bevel: 0.1 }), paint("#a67c4c", 0.8), here.move(8.4, 0, 2));
    // A saucer of dies, and the mallet.
    const dish = here.move(side * 4.6, 0, 4.6);
    work.put(
      lathe(
        [
          [0, 0.05],
          [1.4, 0.05],
          [1.8, 0.35],
          [1.85, 0.33],
          [1.5, 0],
          [0, 0],
        ],
        36,
      ),
      paint("#d8d2c2", 0.25),
      dish,
    );
    clecoSizes.forEach(([, hole], i) => {
      for (const up of [0, 1]) {
        const a = i * 1.6 + up * 0.8;
        work.put(
          lathe(
            [
              [0, 0],
              [0.2, 0],
              [0.2, 0.34],
              [0.36, 0.36],
              [0.36, 0.62],
              [up ? 0.1 : hole, 0.64],
              [0, up ? 0.84 : 0.6],
            ],
            22,
          ),
          chrome,
          dish.move(Math.cos(a) * 0.95, 0.06, Math.sin(a) * 0.95),
        );
      }
    });
    work.place(hammer(), here.move(-side * 4.4, 0, 6.2).turnY(side > 0 ? 20 : 160));
    stage.place(work, here.move(0, 0, -1));
    return {
      stage,
      camera: framed(setting, {
        target: [0, level + 0.9, 0],
        round: [-46, 46],
        above: [14, 26],
        limits: [5, 40],
        roundLimits: [-58, 58],
        away: 15,
        zooms: [0.6, 1.1],
        aperture: 0.034,
        focusOn: [0, level, 0.2],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 3, 0.5], radius: 13 },
    };
  },
};
