import { aluminium, dyed, filmed, paint, primer, type Scribed } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, pencil, plate } from "../props/bench.ts";
import { caliper, swarf } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";

/** A caliper from the edge of a part to a hole, its display to be read. */
export const caliperEdge: Scene = {
  name: "caliper-edge",
  defaults: { reading: "0.250 in" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail, words } = setting;
    const open = Math.min(1.2, Math.max(0.08, numberIn(detail.reading, 0.25)));
    const stage = benchWithWall(random, {
      top: anyTop(random, ["boards", "oak", "plywood", "mat", "grey"]),
      scale: 0.55,
      night: setting.light === "lamp",
    });
    const gauge = 0.09;
    const hole = 0.064;
    const edge = -4.6 / 2;
    const line = open + hole + edge;
    const metal = random.pick([
      dyed(
        aluminium(random.whole(1, 99), 30),
        { u: edge + 0.7, v: -0.1, width: 1.5, height: 9 },
        [
          [line, -3, line, 3],
          ...[0, 1, 2, 3, 4].map((i): Scribed => {
            const v = -(1.62 + i * 0.66 - (0.55 + 4.4 / 2));
            return [edge, v, edge + 1.1, v];
          }),
        ],
        { seed: random.whole(1, 99) },
      ),
      aluminium(random.whole(1, 99)),
      primer(random.whole(1, 99)),
      filmed(random.whole(1, 99)),
    ]);
    const work = new Group();
    const [w, d] = [4.6, 4.4];
    const holes = Array.from({ length: 5 }, (_, i) => ({
      x: open + hole - w / 2,
      z: 1.62 + i * 0.66 - (0.55 + d / 2),
      radius: hole,
    }));
    work.place(plate(w, d, gauge, metal, holes), here.move(w / 2, 0, 0.55 + d / 2));
    work.place(
      plate(3.4, 2.2, 0.06, aluminium(random.whole(1, 99))),
      here.move(3.2, gauge, 4.2).turnY(random.sway(20)),
    );
    work.place(await caliper(detail.reading ?? "", open), here.move(0, gauge + 0.02, 0));
    if (/ring/.test(words)) {
      const ring: Vec3[] = [];
      for (let k = 0; k < 30; k++) {
        const a = (k / 29) * 2.15 * Math.PI;
        ring.push([open + hole + 0.24 * Math.cos(a), 1, 2.28 + 0.24 * Math.sin(a)]);
      }
      work.put(
        tube(ring, 0.02, { sides: 6 }),
        paint("#a3201a", 0.7),
        here.move(0, gauge + 0.002 - 0.04, 0).size(1, 0.04, 1),
      );
    }
    if (/pencil/.test(words))
      work.place(
        pencil(),
        here
          .move(open + 0.25, gauge + 0.05, 2.4)
          .turnY(118)
          .turnZ(-34)
          .move(-6.4, 0, 0),
      );
    else if (random.chance(0.4))
      work.place(
        pencil(random.pick(["#c9821f", "#2f5d8a", "#8c3b2e"])),
        here.move(-3.4, 0, 3.4).turnY(random.between(-60, -20)),
      );
    work.place(swarf(random.branch("swarf"), 7, 3, 14), here.move(0.5, 0, 4));
    const turn = random.sway(16);
    stage.place(work, here.turnY(turn).move(-1.3, 0, -0.9));
    return {
      stage,
      camera: framed(setting, {
        target: [-0.3, 0.2, -0.15],
        round: [-22, 22],
        above: [44, 62],
        limits: [26, 80],
        roundLimits: [-40, 40],
        away: 8.9,
        zooms: [0.84, 1.05],
        aperture: 0.034,
        tallAway: 1.2,
        focusOn: [0, 0.4, -0.4],
      }),
      light: lightFor(setting),
      extent: { centre: [0.6, 0, 0.3], radius: 6.4 },
    };
  },
};
