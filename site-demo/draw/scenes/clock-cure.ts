import { sevenSegment } from "../lettering.ts";
import { aluminium, maskingTape, paint, primer, printed, sealant } from "../materials.ts";
import { roundedRectangle } from "../outline.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { springClamp } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, extrude, face, sheet, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { drawn } from "../texture.ts";
import { hex } from "../vector.ts";

/** A timer counting the hours down on a taped joint. */
export const clockCure: Scene = {
  name: "clock-cure",
  defaults: { hours: "48" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail, words } = setting;
    const hours = Math.max(0, Math.min(199, numberIn(detail.hours, 48)));
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.7,
      night: setting.light === "lamp",
    });
    const minutes = hours >= 72 || hours % 12 === 0 ? 0 : random.whole(1, 59);
    const shown = `${hours}:${String(minutes).padStart(2, "0")}`;
    const lcd = await drawn(
      sevenSegment(shown, shown.length > 5 ? 730 : 660, 60, 200, {
        color: "#14180f",
        ghost: "#a9b59d",
      }),
      { width: 760, height: 320, ground: "#b5c1a8" },
    );
    const body = {
      color: hex(random.pick(["#e8e2d2", "#b5402c", "#2f5d7d", "#d8a727"])),
      roughness: 0.3,
      metal: false,
    };
    const timer = new Group()
      .put(
        extrude(roundedRectangle(4.2, 3.3, 0.55), 0.8, { bevel: 0.12 }),
        body,
        here.move(0, 1.65, -0.4),
      )
      .put(
        extrude(roundedRectangle(3.5, 1.6, 0.12), 0.05, { bevel: 0.02 }),
        paint("#24272b", 0.25),
        here.move(0, 2.2, 0.38),
      )
      .put(face(3.3, 1.39), printed(lcd, 3.3, 0.2), here.move(-1.65, 1.51, 0.437));
    for (const x of [-1.1, 0, 1.1])
      timer.put(
        cylinder(0.3, 0.16, { sides: 26, bevel: 0.05 }),
        paint(x ? "#3b4046" : "#c4372a", 0.4),
        here.move(x, 0.8, 0.38).turnX(90),
      );
    timer.put(
      tube(
        [
          [0, 1.6, -0.4],
          [0, 0.1, -1.5],
        ],
        0.12,
      ),
      paint("#3b4046", 0.4),
    );

    const work = new Group();
    const lower = aluminium(random.whole(1, 99), 24);
    const upper = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 30);
    const curved = (y: number, z0: number, z1: number) =>
      sheet(
        (u, v) => {
          const z = z0 + (z1 - z0) * v;
          return [-11 + 22 * u, y + 1.2 - 0.035 * z * z, z];
        },
        20,
        10,
      );
    work.put(curved(0, -4.5, 4.8), lower);
    work.put(curved(0.06, -4.5, 0.6), upper);
    work.put(
      sheet(
        (u, v) => {
          const z = 0.35 + 0.55 * v;
          const thick = 0.07 * Math.sin(v * Math.PI) + 0.02;
          return [-11 + 22 * u, 1.2 - 0.035 * z * z + 0.03 + thick, z];
        },
        60,
        6,
      ),
      sealant(false),
    );
    const tape = maskingTape(5, random.pick(["#e2cf9c", "#e2cf9c", "#3f74bd"]));
    const pitch = random.between(2.6, 3.4);
    for (let x = -9; x < 9.5; x += pitch) {
      const lean = random.sway(0.25);
      work.put(
        sheet(
          (u, v) => {
            const z = -1.5 + 4 * v;
            return [
              x - 0.42 + 0.84 * u + lean * (v - 0.5),
              1.3 - 0.035 * z * z + 0.05 * Math.sin(v * Math.PI) + (v < 0.5 ? 0.03 : -0.02),
              z,
            ];
          },
          3,
          12,
        ),
        tape,
      );
    }
    work.put(box(22, 0.3, 8.4, { bevel: 0.05 }), paint("#9c7446", 0.85), here.move(0, 0, 0));
    const side = random.pick([-1, 1]);
    work.place(
      springClamp(random.pick(["#d27b1e", "#b52a20", "#2a5d8c"])),
      here.move(side * 5.2, 1.1, -3.8).turnY(8),
    );
    work.place(timer, here.move(-side * 1.2, 1.22, -1.9).turnY(side * 9));
    if (/dot|cartridge/.test(words)) {
      const tube1 = here
        .move(side * 3.4, 1.5, 1.2)
        .turnY(side * 24)
        .turnZ(90);
      work.put(cylinder(0.85, 6, { sides: 28, bevel: 0.1 }), paint("#ece8dc", 0.4), tube1);
      work.put(cylinder(0.3, 1.8, { sides: 16 }), paint("#ece8dc", 0.4), tube1.move(0, 6, 0));
      work.put(sphere(0.36, 18), paint("#2f9a4a", 0.5), tube1.move(0.62, 3, 0.42).size(0.5, 1, 1));
    }
    stage.place(work, here.turnY(random.sway(12)));
    return {
      stage,
      camera: framed(setting, {
        target: [-side * 0.6, 2.2, 0],
        round: [-32, 32],
        above: [14, 28],
        limits: [8, 40],
        roundLimits: [-40, 40],
        away: 13.5,
        aperture: 0.034,
        focusOn: [-side * 1.2, 2.8, -1.4],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 1.6, 0], radius: 9.5 },
    };
  },
};
