import { aluminium, machined, paint } from "../materials.ts";
import { flat, here } from "../pose.ts";
import { anyTop, benchWithWall, plate } from "../props/bench.ts";
import { glovedHand } from "../props/person.ts";
import { deburringTool, swarf } from "../props/tools.ts";
import { type Composition, framed, lightFor, type Scene, type Setting } from "../scene.ts";
import { box, cylinder, extrude, lathe, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { hex } from "../vector.ts";

/** The edges and the holes being freed of burrs, by hand. */
export const deburr: Scene = {
  name: "deburr",
  defaults: { tool: "countersink" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.62,
      night: setting.light === "lamp",
    });
    const metal = aluminium(random.whole(1, 99), 24);
    const work = new Group();
    const thick = 0.09;
    const [w, d] = [13, 6];
    const holes = Array.from({ length: 11 }, (_, i) => ({
      x: -5.5 + i * 1.1,
      z: d / 2 - 0.7,
      radius: 0.1,
    }));
    const lift = 0.7;
    work.place(plate(w, d, thick, metal, holes), here.move(0, lift, 0));
    work.put(
      box(w - 1.2, lift, d - 2.4, { bevel: 0.05 }),
      paint("#8a6a43", 0.85),
      here.move(0, 0, -0.7),
    );
    const sleeve = random.pick(["#36506b", "#7d3b2f", "#4f6350", "#5d4a63"]);
    const top = lift + thick;
    const tool = new Group();
    switch (detail.tool) {
      case "wheel": {
        // A fibre wheel on a small air grinder, run along the edge.
        const fibre = { color: hex("#6d4a6b"), roughness: 0.95, metal: false };
        tool.put(
          lathe(
            [
              [0, -0.26],
              [0.9, -0.26],
              [1, -0.2],
              [1, 0.2],
              [0.9, 0.26],
              [0, 0.26],
            ],
            40,
          ),
          fibre,
          here.move(0, 0, 0),
        );
        tool.put(cylinder(0.14, 0.9, { sides: 12 }), machined(4), here.move(0, 0.2, 0));
        tool.put(
          lathe(
            [
              [0.16, 0.8],
              [0.42, 1.0],
              [0.5, 1.3],
              [0.5, 4.6],
              [0.4, 5],
              [0, 5],
            ],
            26,
          ),
          { color: [0.36, 0.37, 0.38], roughness: 0.24, metal: true },
        );
        tool.place(glovedHand(0.5, [0.75, 0.25, 1], sleeve), here.move(0, 3.1, 0));
        work.place(
          tool,
          here
            .move(0.6, top + 0.12, d / 2 + 0.92)
            .turnX(-14)
            .turnZ(-16),
        );
        break;
      }
      case "stone": {
        const stone = { color: hex("#8f8b84"), roughness: 0.9, metal: false };
        tool.put(box(4.4, 0.7, 1, { bevel: 0.05 }), stone);
        tool.place(
          glovedHand(0.42, [0.3, 0.35, 1], sleeve),
          here.move(0.7, 0.75, 0).turnZ(90).turnY(0),
        );
        work.place(
          tool,
          here
            .move(0.3, top + 0.02, d / 2 - 0.1)
            .turnY(24)
            .turnX(24),
        );
        break;
      }
      case "scraper": {
        tool.put(
          extrude(
            [
              [-0.32, 0],
              [0, -0.35],
              [0.32, 0],
              [0.26, 1.5],
              [-0.26, 1.5],
            ],
            0.12,
            { bevel: 0.02 },
          ),
          machined(6),
          here.move(0, 0.2, -0.06),
        );
        tool.put(
          lathe(
            [
              [0.18, 1.5],
              [0.4, 1.6],
              [0.46, 2],
              [0.52, 3.6],
              [0.42, 4.6],
              [0, 4.7],
            ],
            24,
          ),
          { color: hex("#b5772f"), roughness: 0.3, metal: false },
        );
        tool.place(glovedHand(0.5, [1, 0.4, -0.7], sleeve), here.move(0, 3.9, 0));
        work.place(
          tool,
          here
            .move(0.4, top + 0.12, d / 2)
            .turnX(-10)
            .turnZ(-34),
        );
        work.put(
          tube(
            Array.from(
              { length: 40 },
              (_, i) =>
                [
                  0.2 + i * 0.016 + 0.16 * Math.cos(i * 0.5),
                  top + 0.2 + 0.16 * Math.sin(i * 0.5),
                  d / 2 + 0.1,
                ] as const,
            ),
            0.014,
            { sides: 5 },
          ),
          machined(2),
          here.move(-0.9, 0, 0.1),
        );
        break;
      }
      default: {
        tool.place(
          deburringTool(random.pick(["#c4921e", "#a8301f", "#2d5f8c"])),
          here.size(1.25, 1.7, 1.25),
        );
        tool.place(glovedHand(0.6, [0.8, 0.5, 0.5], sleeve), here.move(0, 4.7, 0));
        const at = holes[6] ?? { x: 1, z: 2 };
        work.place(
          tool,
          here
            .move(at.x, top - 0.05, at.z)
            .turnZ(-6)
            .turnX(-8),
        );
      }
    }
    work.place(swarf(random.branch("swarf"), 7, 2.4, 26), here.move(0, top, d / 2 - 1.2));
    work.place(swarf(random.branch("more"), 9, 1.6, 18), here.move(0, 0, d / 2 + 1.3));
    work.put(
      extrude(
        [
          [0, 0],
          [2.4, 0],
          [2.4, 0.5],
          [0.5, 0.5],
          [0.5, 3],
          [0, 3],
        ],
        0.05,
      ),
      metal,
      flat.move(-6.6, -4.4, 0),
    );
    const side = random.pick([-1, 1]);
    stage.place(work, here.size(side, 1, 1));
    return {
      stage,
      camera: framed(setting, {
        target: [side * 0.5, 1.5, 2.2],
        round: side > 0 ? [-40, -8] : [8, 40],
        above: [22, 38],
        limits: [12, 58],
        roundLimits: [-52, 52],
        away: 13.5,
        aperture: 0.036,
        focusOn: [side * 0.6, 0.9, 2.8],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 1.5, 1.5], radius: 9.5 },
    };
  },
};
