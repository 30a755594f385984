import { aluminium, dyed, filmed, primer, steel } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, plate, steelRule } from "../props/bench.ts";
import { cleco, clecoSizes } from "../props/fasteners.ts";
import { drill, swarf } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { lathe } from "../shape.ts";

/** A skin with its rows of holes just drilled. */
export const skinDrilled: Scene = {
  name: "skin-drilled",
  defaults: { rows: "4", cols: "12" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const rows = Math.max(1, Math.min(14, numberIn(detail.rows, 4)));
    const columns = Math.max(2, Math.min(30, numberIn(detail.cols, 12)));
    const pitch = 1.1;
    const gap = rows > 5 ? 1.5 : 2.4;
    const width = (columns - 1) * pitch + 2.2;
    const depth = (rows - 1) * gap + 2.6;
    const stage = benchWithWall(random, {
      top: anyTop(random, ["boards", "oak", "plywood", "carpet"]),
      scale: Math.max(0.6, width / 28),
      night: setting.light === "lamp",
    });
    const holes: { x: number; z: number; radius: number }[] = [];
    for (let r = 0; r < rows; r++) {
      for (let c = 0; c < columns; c++) {
        holes.push({
          x: (c - (columns - 1) / 2) * pitch,
          z: (r - (rows - 1) / 2) * gap,
          radius: 0.075,
        });
      }
    }
    const bare = aluminium(random.whole(1, 99), 20);
    const metal = random.pick([
      filmed(random.whole(1, 99)),
      filmed(random.whole(1, 99)),
      bare,
      dyed(
        bare,
        { u: 0, v: ((rows - 1) / 2) * gap, width: width + 3, height: 1.1 },
        [[-width, ((rows - 1) / 2) * gap, width, ((rows - 1) / 2) * gap]],
        { line: 0.012 },
      ),
      primer(random.whole(1, 99)),
    ]);
    const lift = 0.35;
    stage.place(plate(width, depth, 0.05, metal, holes), here.move(0, lift, 0));
    // A sheet of hardboard below keeps the drill off the bench.
    stage.place(
      plate(width - 0.6, depth - 0.6, lift - 0.02, {
        ...steel,
        metal: false,
        color: [0.19, 0.13, 0.08],
        roughness: 0.8,
      }),
    );
    // Rims thrown up by the drill catch the light.
    const rim = lathe(
      [
        [0.1, 0.001],
        [0.09, 0.014],
        [0.078, 0.012],
        [0.075, 0],
      ],
      14,
    );
    const [size] = random.pick(clecoSizes);
    const held = random.chance(0.6);
    holes.forEach(({ x, z }, i) => {
      stage.put(rim, bare, here.move(x, lift + 0.05, z));
      if (held && (i % columns) % 3 === 1 && Math.floor(i / columns) % 2 === 0) {
        stage.place(cleco(size, false), here.move(x, lift + 0.05, z).turnY(random.between(0, 90)));
      }
    });
    stage.place(
      swarf(random.branch("swarf"), width * 0.8, depth * 0.9, 46),
      here.move(0, lift + 0.05, 0),
    );
    const side = random.pick([-1, 1]);
    if (random.chance(0.7))
      stage.place(
        drill(random.pick(["#9aa0a4", "#a3453a", "#3f6b8c"])),
        here
          .move(side * (width / 2 - 1.5), lift + 0.05, -depth / 2 + 1)
          .turnY(side > 0 ? 200 : -20),
      );
    else
      stage.place(
        steelRule(Math.min(12, Math.round(width * 0.7))),
        here.move(-width * 0.35, lift + 0.05, depth / 2 - 1).turnY(random.sway(6)),
      );
    const reach = Math.max(width, depth * 1.2);
    return {
      stage,
      camera: framed(setting, {
        target: [0, 0, depth * 0.08],
        round: [-44, 44],
        above: [24, 44],
        limits: [23, 84],
        away: Math.max(width * 1.5, depth * 1.9) + 2,
        aperture: 0.028,
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0, 0], radius: reach * 0.58 + 2 },
    };
  },
};
