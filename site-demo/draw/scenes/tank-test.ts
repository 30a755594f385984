import { aluminium, brass, chrome, maskingTape, paint } from "../materials.ts";
import { here } from "../pose.ts";
import {
  lighteningHoles,
  pressedRib,
  type Section,
  sectionOutline,
  skin,
} from "../props/airframe.ts";
import { sawhorsesInShop } from "../props/room.ts";
import { type Composition, framed, isYes, lightFor, type Scene, type Setting } from "../scene.ts";
import { curve, cylinder, lathe, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { hex, type Vec2 } from "../vector.ts";

/** The closed tank under air, a balloon standing on its fitting for a gauge. */
export const tankTest: Scene = {
  name: "tank-test",
  defaults: { balloon: "yes", size: "full" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const night = setting.light === "lamp" || setting.light === "strip";
    const height = 32;
    const stage = sawhorsesInShop(random, { apart: 26, height, length: 30, night, wall: 74 });
    const section: Section = { chord: 46, thickness: 0.16, camber: 0.01 };
    const end = 0.33;
    const span = 42;
    const tank = new Group();
    const metal = aluminium(random.whole(1, 99), 12);
    for (const side of [1, -1] as const)
      tank.put(skin(section, section, span, { from: 0, to: end, side, lift: 0.05 }), metal);
    for (const z of [0, span])
      tank.place(
        pressedRib(
          sectionOutline(section, 0.005, end, 16),
          z ? [] : lighteningHoles(section, 0.1, 0.12, 0),
          aluminium(4, 16),
          { flange: 0.5 },
        ),
        here.move(0, 0, z).size(1, 1, z ? -1 : 1),
      );
    const dot = lathe(
      [
        [0.14, 0.004],
        [0.1, 0.014],
        [0, 0.016],
      ],
      8,
    );
    for (let r = 0; r < 6; r++) {
      for (let k = 0; k < 13; k++) {
        const share = 0.03 + (k / 12) * (end - 0.05);
        const [x, y] = [share * section.chord, 0];
        const up = sectionTop(section, share);
        tank.put(
          dot,
          { ...metal, color: [0.46, 0.465, 0.475] },
          here.move(x, y + up + 0.06, 1 + r * 8),
        );
      }
    }
    for (let k = 0; k < 30; k++)
      tank.put(
        dot,
        { ...metal, color: [0.46, 0.465, 0.475] },
        here.move(
          section.chord * (end - 0.02),
          sectionTop(section, end - 0.02) + 0.06,
          1 + k * 1.38,
        ),
      );
    // The baffle closes the back; the cap is taped down.
    tank.put(
      lathe(
        [
          [1.9, 0],
          [1.95, 0.4],
          [1.7, 0.62],
          [0, 0.66],
        ],
        34,
      ),
      chrome,
      here.move(section.chord * 0.2, sectionTop(section, 0.2) + 0.05, span * 0.78),
    );
    const tape = maskingTape(3, random.pick(["#e2cf9c", "#3f74bd"]));
    for (const a of [0, 90])
      tank.put(
        tube(
          [
            [-3, 0, 0],
            [-1.9, 0.5, 0],
            [0, 0.72, 0],
            [1.9, 0.5, 0],
            [3, 0, 0],
          ],
          0.7,
          { sides: 8 },
        ),
        tape,
        here
          .move(section.chord * 0.2, sectionTop(section, 0.2) + 0.03, span * 0.78)
          .turnY(a)
          .size(1, 1, 1),
      );
    const stand = here.move(section.chord * 0.17, sectionTop(section, 0.17), span * 0.28);
    tank.put(cylinder(0.7, 1.4, { sides: 20, bevel: 0.1 }), brass, stand);
    tank.put(cylinder(0.42, 1.6, { sides: 16 }), brass, stand.move(0, 1.3, 0));
    if (isYes(detail.balloon)) {
      const colour = /blue/.test(words) ? "#2f63b5" : /yellow/.test(words) ? "#d9ac2b" : "#c4281f";
      const skinOf: Surface = { color: hex(colour), roughness: 0.14, metal: false, thin: 0.25 };
      const full = detail.size !== "soft";
      if (full) {
        const profile: Vec2[] = [
          [0.45, 0],
          [0.5, 0.5],
          [0.9, 1.1],
          [2.4, 2.8],
          [4, 5.2],
          [4.7, 7.6],
          [4.6, 9.6],
          [3.8, 11.6],
          [2.2, 13],
          [0.9, 13.5],
          [0, 13.6],
        ];
        tank.put(
          lathe(smoothProfile(profile), 40),
          skinOf,
          stand.move(0, 2.2, 0).turnZ(random.sway(5)),
        );
      } else {
        const profile: Vec2[] = [
          [0.45, 0],
          [0.5, 0.4],
          [0.8, 0.9],
          [1.7, 1.9],
          [2.4, 3.2],
          [2.5, 4.3],
          [2, 5.4],
          [1.1, 6],
          [0, 6.2],
        ];
        tank.put(
          lathe(smoothProfile(profile), 36),
          { ...skinOf, roughness: 0.42 },
          stand.move(0, 2.2, 0).turnZ(38).size(1, 1, 0.85),
        );
      }
      tank.put(
        lathe(
          [
            [0.42, 0],
            [0.62, 0.2],
            [0.6, 0.5],
            [0.42, 0.7],
          ],
          18,
        ),
        { ...skinOf, roughness: 0.4 },
        stand.move(0, 1.9, 0),
      );
    }
    tank.put(
      tube(
        curve(
          [
            [section.chord * 0.28, -1, -1],
            [section.chord * 0.3, -6, -6],
            [section.chord * 0.5, -18, -10],
            [section.chord * 0.6, -31, -16],
          ],
          8,
        ),
        0.35,
        { sides: 10 },
      ),
      paint("#2c2e33", 0.6),
    );
    stage.place(
      tank,
      here
        .move(0, height + 3.4, 4)
        .turnY(90 + random.sway(6))
        .turnZ(-4)
        .move(-section.chord * end * 0.5, 0, -span / 2),
    );
    // Soapy water and a brush on the floor of the picture, as used on every rivet.
    const cup = here.move(random.pick([-1, 1]) * 13.4, height, -9);
    stage.put(
      lathe(
        [
          [0, 0],
          [1.6, 0],
          [1.9, 3],
          [1.8, 3.02],
          [1.5, 0.2],
          [0, 0.2],
        ],
        28,
      ),
      paint("#e6e3d8", 0.5),
      cup,
    );
    stage.put(sphere(1.5, 16), paint("#f7f7f4", 0.6), cup.move(0, 2.4, 0).size(1.1, 0.5, 1.1));
    stage.put(
      tube(
        [
          [0, 2, 0],
          [2.2, 7, 0.6],
        ],
        0.22,
        { sides: 8 },
      ),
      paint("#b98a52", 0.5),
      cup,
    );
    return {
      stage,
      camera: framed(setting, {
        target: [0, height + 6, 4],
        round: [-34, 34],
        above: [12, 24],
        limits: [8, 40],
        away: 84,
        tallAway: 0.95,
        aperture: 0.018,
      }),
      light: lightFor(setting),
      extent: { centre: [0, height, 2], radius: 38 },
    };
  },
};

function sectionTop(section: Section, share: number): number {
  const r = Math.sqrt(share);
  return (
    5 *
      section.thickness *
      section.chord *
      (0.2969 * r -
        0.126 * share -
        0.3516 * share ** 2 +
        0.2843 * share ** 3 -
        0.1036 * share ** 4) +
    0.01 * section.chord * share
  );
}

function smoothProfile(points: readonly Vec2[]): Vec2[] {
  const path = curve(
    points.map(([x, y]) => [x, y, 0] as const),
    5,
  );
  return path.map(([x, y], i): Vec2 => [i === path.length - 1 ? 0 : Math.max(0.02, x), y]);
}
