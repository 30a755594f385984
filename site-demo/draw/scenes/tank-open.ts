import { aluminium, boards, chrome, matte, sealant } from "../materials.ts";
import { inset } from "../polygon.ts";
import { here } from "../pose.ts";
import {
  lighteningHoles,
  pressedRib,
  type Section,
  sectionOutline,
  skin,
} from "../props/airframe.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { cleco } from "../props/fasteners.ts";
import {
  type Composition,
  framed,
  isYes,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, extrude, lathe, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";

/** The tank before its baffle, nose down in its cradle, open at the top. */
export const tankOpen: Scene = {
  name: "tank-open",
  defaults: { ribs: "5", fillets: "yes" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const ribs = Math.max(2, Math.min(9, numberIn(detail.ribs, 5)));
    const fillets = isYes(detail.fillets);
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 1.5,
      night: setting.light === "lamp",
    });
    const section: Section = { chord: 46, thickness: 0.16, camber: 0.01 };
    const end = 0.33;
    const span = 40;
    const tank = new Group();
    const metal = aluminium(random.whole(1, 99), 14);
    for (const side of [1, -1] as const)
      tank.put(skin(section, section, span, { from: 0, to: end, side, lift: 0.05 }), metal);
    const outline = sectionOutline(section, 0.01, end - 0.01, 16);
    const holes = lighteningHoles(section, 0.06, end, 2, 0.5);
    const stuff = sealant(/wet/.test(words) || random.chance(0.5));
    for (let i = 0; i < ribs; i++) {
      const z =
        ribs === 1
          ? span / 2
          : 0.6 +
            ((((span - 1.2) * i) / (Math.max(6, ribs) - 1)) * (Math.max(6, ribs) - 1)) / (ribs - 1);
      tank.place(
        pressedRib(
          outline,
          i === 0 || i === ribs - 1 ? [] : holes,
          aluminium(random.whole(1, 99), 16),
          { flange: 0.7 },
        ),
        here.move(0, 0, z).size(1, 1, i === ribs - 1 ? -1 : 1),
      );
      if (fillets) {
        for (const s of [-1, 1]) {
          const path = inset(outline, 0.5).map(
            ([x, y]): Vec3 => [x, y, z + s * 0.2 + (i === ribs - 1 ? -0.02 : 0.02)],
          );
          tank.put(
            tube(path, (t) => 0.4 + 0.06 * Math.sin(t * 90 + i), { sides: 8 }),
            stuff,
          );
        }
        for (let k = 0; k < 16; k++) {
          const p = inset(outline, 0.2)[Math.floor((k / 16) * outline.length)] ?? [0, 0];
          tank.put(
            lathe(
              [
                [0.3, 0],
                [0.22, 0.12],
                [0, 0.18],
              ],
              10,
            ),
            stuff,
            here.move(p[0], p[1], z + 0.42).turnX(p[1] > 0 ? 180 : 0),
          );
        }
      }
    }
    // Filler flange and a fitting at the root.
    tank.put(
      lathe(
        [
          [2.1, 0],
          [2.1, 0.12],
          [1.5, 0.14],
          [1.5, -0.3],
        ],
        34,
      ),
      chrome,
      here.move(section.chord * 0.2, section.chord * 0.083, span * 0.8).turnZ(8),
    );
    tank.put(
      cylinder(0.6, 1.2, { sides: 18, bevel: 0.08 }),
      chrome,
      here.move(section.chord * 0.28, -1.6, -1.2).turnX(90),
    );
    for (const side of [1, -1]) {
      for (let k = 0; k < 14; k++)
        tank.place(
          cleco("3/32", true),
          here
            .move(section.chord * (end - 0.012), side * section.chord * 0.079, 1.4 + k * 2.85)
            .turnX(side > 0 ? 0 : 180),
        );
    }
    // Nose down: the chord points up.
    stage.place(
      tank,
      here
        .move(0, 1.1, 0)
        .turnY(90)
        .turnZ(90)
        .turnX(0)
        .move(0, 0, -span / 2),
    );
    const wood = boards(random.whole(1, 99), { width: 30, gap: false });
    for (const x of [-15, 15]) {
      stage.put(
        extrude(
          [
            [-7.5, 0],
            [7.5, 0],
            [7.5, 9.4],
            [4.6, 9.4],
            [3.4, 4],
            [1.4, 1.2],
            [-1.4, 1.2],
            [-3.4, 4],
            [-4.6, 9.4],
            [-7.5, 9.4],
          ],
          1.5,
          { bevel: 0.08 },
        ),
        wood,
        here.move(x, 0, 0).turnY(90).move(0, 0, -0.75),
      );
      stage.put(box(2, 0.4, 15), matte("#5b3a34", 3, 0.98), here.move(x, 0, 0));
    }
    const inside = /inside/.test(words);
    const light = lightFor(setting);
    return {
      stage,
      camera: framed(setting, {
        target: [0, 12.5, 0],
        round: [-46, 46],
        above: [52, 62],
        limits: [46, 68],
        roundLimits: [-66, 66],
        away: 62,
        aperture: 0.02,
        focusOn: [0, 14, 3],
      }),
      light: inside
        ? {
            ...light,
            lamps: [
              ...light.lamps,
              {
                toward: [0.05, 0.99, 0.1],
                away: 0.62,
                radius: 0.05,
                color: [1.5, 1.05, 0.6],
                cone: 70,
              },
            ],
          }
        : light,
      extent: { centre: [0, 9, 0], radius: 27 },
    };
  },
};
