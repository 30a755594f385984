import { lettered, sevenSegment } from "../lettering.ts";
import { chrome, paint, printed, sealant } from "../materials.ts";
import { roundedRectangle } from "../outline.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { anyLooks, openHand } from "../props/person.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, extrude, face, lathe, quad } from "../shape.ts";
import { Group } from "../stage.ts";
import { drawn } from "../texture.ts";
import { hex } from "../vector.ts";

/** A bench scale with a weight on it and its reading. */
export const scaleWeighing: Scene = {
  name: "scale-weighing",
  defaults: { reading: "2.40 lb" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail, words } = setting;
    const reading = detail.reading ?? "";
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.72,
      night: setting.light === "lamp",
    });
    const lit = random.chance(0.4);
    const number = reading.match(/-?[\d.]+/)?.[0] ?? "0";
    const unit = reading.replace(/[-\d.\s]+/, "").slice(0, 6) || "g";
    const [ink, ghost, ground] = lit
      ? ["#dff3ff", "#27506e", "#173a54"]
      : ["#151a10", "#a6b29a", "#b3bfa6"];
    const panel = await drawn(
      sevenSegment(number, 520, 50, 170, { color: ink, ghost }) +
        lettered(unit, 540, 156, 64, { color: ink, pen: 0.16 }),
      { width: 760, height: 270, ground },
    );
    const shell = {
      color: hex(random.pick(["#d9d5ca", "#3a3f45", "#8fa2ad"])),
      roughness: 0.36,
      metal: false,
    };
    const scale = new Group()
      .put(box(8, 1.7, 9, { bevel: 0.2, round: 0.7 }), shell)
      .put(cylinder(0.9, 0.7, { sides: 24 }), paint("#24272a", 0.5), here.move(0, 1.6, -1))
      .put(
        box(7, 0.22, 6.4, { bevel: 0.06, round: 0.7 }),
        { ...chrome, roughness: 0.22 },
        here.move(0, 2.2, -1.2),
      );
    // The display leans back on a console in front of the shell.
    scale.put(
      extrude(
        [
          [0, 0],
          [2.5, 0],
          [2.5, 0.3],
          [0.4, 1.75],
          [0, 1.75],
        ],
        7,
        { bevel: 0.08 },
      ),
      shell,
      here.move(3.5, 0, 4.2).turnY(-90),
    );
    const front = here.move(0, 0.3, 6.7).turnX(-55.4).move(0, 0.42, 0);
    scale.put(
      extrude(roundedRectangle(4.4, 1.42, 0.1), 0.05),
      paint("#1d2023", 0.25),
      front.move(-0.8, 0.85, 0),
    );
    scale.put(
      face(4.1, 1.3),
      printed(panel, 4.1, 0.2, lit ? { glow: [0.9, 0.9, 0.9] } : {}),
      front.move(-2.85, 0.2, 0.056),
    );
    for (const x of [1.9, 2.8])
      scale.put(
        cylinder(0.28, 0.12, { sides: 22, bevel: 0.04 }),
        paint(x < 2 ? "#3b6ea5" : "#c4372a", 0.4),
        front.move(x, 0.85, 0).turnX(90),
      );
    const top = 2.42;
    const load = new Group();
    const lead = { color: hex("#6a6e75"), roughness: 0.55, metal: false };
    if (/lead|counter|weight/.test(words) || /lb/.test(reading)) {
      load.put(box(3.8, 1, 1.7, { bevel: 0.12, round: 0.3 }), lead);
      load.put(
        box(3.3, 0.55, 1.5, { bevel: 0.1, round: 0.3 }),
        lead,
        here.move(0.15, 1, 0.05).turnY(7),
      );
      load.put(cylinder(0.22, 0.08, { sides: 16 }), paint("#2c2e31", 0.8), here.move(-1.2, 1, 0));
    } else {
      load.put(
        lathe(
          [
            [0, 0],
            [1.2, 0],
            [1.5, 2],
            [1.56, 2.04],
            [1.44, 2],
            [1.14, 0.1],
            [0, 0.1],
          ],
          36,
        ),
        paint("#f0ede4", 0.6),
      );
      load.put(
        lathe(
          [
            [1.35, 1.2],
            [0.8, 1.1],
            [0, 1.05],
          ],
          30,
        ),
        sealant(true),
      );
      load.put(
        quad([-0.1, 1.1, 0.1], [0.3, 1.1, 0.2], [2.3, 4, 0.9], [1.95, 4, 0.8]),
        paint("#d9b884", 0.7),
      );
    }
    scale.place(load, here.move(0, top, -1.2).turnY(random.sway(24)));
    if (/hand/.test(words)) {
      const { skin } = anyLooks(random.branch("hand"));
      scale.place(
        openHand(skin),
        here
          .move(2.4, top + 3, 0.6)
          .turnY(118)
          .turnX(-24),
      );
    }
    stage.place(scale, here.turnY(random.sway(12)));
    const heavy = numberIn(reading, 0) > 100 ? 1.1 : 1;
    return {
      stage,
      camera: framed(setting, {
        target: [0, 1.7, 1.6],
        round: [-30, 30],
        above: [26, 38],
        limits: [14, 60],
        roundLimits: [-36, 36],
        away: 17 * heavy,
        aperture: 0.032,
        focusOn: [0, 1.2, 5],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 2, 0], radius: 9.5 },
    };
  },
};
