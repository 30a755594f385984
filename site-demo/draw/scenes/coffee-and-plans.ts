import { paint, paper, printed } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, looseSheet, mug, pencil, steelRule } from "../props/bench.ts";
import { glasses, notebook } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, lathe, quad } from "../shape.ts";
import { scrawl, sheetOf, sheetSize } from "../sheets.ts";
import { drawn } from "../texture.ts";

/** An evening of reading: the plans, mugs and a notebook. */
export const coffeeAndPlans: Scene = {
  name: "coffee-and-plans",
  defaults: { mugs: "1" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail, words } = setting;
    const mugs = Math.max(0, Math.min(6, numberIn(detail.mugs, 1)));
    const stage = benchWithWall(random, {
      top: anyTop(random, ["oak", "boards", "oak"]),
      scale: 0.8,
      night: setting.light === "lamp",
    });
    const ids = [
      random.pick(["WS-01", "HS-02", "WT-01"]),
      random.pick(["WR-01", "EL-01", "RD-01"]),
    ];
    for (const [i, id] of ids.entries()) {
      const image = await drawn(sheetOf(id, "", random.branch(id), false), {
        ...sheetSize,
        ground: i ? "#eef0ec" : "#f3eedf",
      });
      stage.place(
        looseSheet(17, 11, printed(image, 17, 0.9, { thin: 0.15 })),
        here
          .move(i ? -3.6 : 2.4, i * 0.03, i ? -2.6 : 1.2)
          .turnY(i ? random.between(8, 22) : random.between(-14, -3)),
      );
    }
    const side = random.pick([-1, 1]);
    const places: [number, number][] = [
      [side * 5.2, -2.4],
      [-side * 5.6, -0.6],
      [side * 0.4, -4.6],
      [-side * 4.6, -6.2],
      [side * 6.2, 3],
      [-side * 8.5, 2],
    ];
    for (let i = 0; i < mugs; i++) {
      const [x, z] = places[i] ?? [0, 0];
      stage.place(
        mug(random.branch(`mug${i}`)),
        here
          .move(x + random.sway(0.6), 0.06, z + random.sway(0.6))
          .turnY(random.between(0, 360))
          .size(1.1),
      );
    }
    // A ring left by one of them.
    stage.put(
      lathe(
        [
          [1.5, 0],
          [1.42, 0.0008],
          [1.36, 0],
        ],
        44,
      ),
      { color: [0.2, 0.1, 0.04], roughness: 0.6, metal: false },
      here.move(-side * 3.6, 0.07, 2.6),
    );
    stage.place(
      pencil(random.pick(["#c9821f", "#8c3b2e"])),
      here.move(-1.4, 0.08, 2.6).turnY(random.between(-30, 50)),
    );
    if (/letter/.test(words)) {
      let lines = "";
      for (let row = 0; row < 13; row++)
        lines += scrawl(
          60,
          120 + row * 46,
          row === 12 ? 220 : random.between(420, 560),
          random,
          "#26324a",
        );
      const letter = await drawn(
        `${lines}<path d="M0 300h700M0 620h700" stroke="#00000018" stroke-width="7"/>`,
        { width: 700, height: 900, ground: "#f6f1e4" },
      );
      stage.place(
        looseSheet(6.6, 8.6, printed(letter, 6.6, 0.9)),
        here.move(side * 2.6, 0.1, 3.6).turnY(side * 14),
      );
      const envelope = here.move(-side * 5, 0.1, 4.6).turnY(-side * 24);
      stage.put(box(7, 0.07, 3.8), paper("#e6d9ba"), envelope);
      stage.put(
        quad([2.3, 0.075, -0.9], [3.2, 0.075, -0.9], [3.2, 0.075, -1.7], [2.3, 0.075, -1.7]),
        paint("#7d4a3b", 0.8),
        envelope,
      );
    } else if (random.chance(0.6))
      stage.place(
        await notebook(random),
        here.move(side * 3.2, 0.08, 4.4).turnY(side * random.between(6, 24)),
      );
    else stage.place(steelRule(12), here.move(-5, 0.09, 4).turnY(random.between(6, 22)));
    stage.place(glasses(), here.move(-side * 1.6, 0.08, -2).turnY(random.between(-50, 50)));
    return {
      stage,
      camera: framed(setting, {
        target: [0, 0.4, 0.2],
        round: [-32, 32],
        above: [36, 54],
        limits: [26, 76],
        away: 24,
        aperture: 0.026,
        focusOn: [side * 3, 1, 0],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0.5, 0], radius: 14 },
    };
  },
};
