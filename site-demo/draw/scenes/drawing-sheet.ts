import { boards, paint, plywood, printed } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTin, anyTop, benchWithWall, mug, pencil, steelRule } from "../props/bench.ts";
import { glasses, springClamp } from "../props/tools.ts";
import { type Composition, framed, lightFor, type Scene, type Setting } from "../scene.ts";
import { box, cylinder, grid, quad } from "../shape.ts";
import { sheetOf, sheetSize } from "../sheets.ts";
import { Group } from "../stage.ts";
import { drawn } from "../texture.ts";
import type { Vec3 } from "../vector.ts";

const teaRing =
  '<circle cx="1500" cy="170" r="118" fill="none" stroke="#8a5a2a" stroke-width="9" opacity="0.4"/><circle cx="1500" cy="170" r="109" fill="#8a5a2a" opacity="0.06"/>';

/** A sheet of the drawings, its number and revision in the corner. */
export const drawingSheet: Scene = {
  name: "drawing-sheet",
  defaults: { sheet: "HS-01", revision: "A" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail, words } = setting;
    const hung = /hung|wall|pinned|square on/.test(words);
    const image = await drawn(
      sheetOf(detail.sheet ?? "", detail.revision ?? "", random.branch("sheet")) +
        (random.chance(0.4) && !hung ? teaRing : ""),
      {
        ...sheetSize,
        ground: random.pick(["#f3eedf", "#eef0ec", "#f2efe6"]),
      },
    );
    const [w, d] = [17, 11];
    const rolled = /roll/.test(words);
    const slope = /slope/.test(words) ? 24 : 0;
    const across = 28;
    const rows: Vec3[][] = [];
    const wave = random.between(0.04, 0.14);
    const phase = random.between(0, 6);
    for (let r = 0; r <= 12; r++) {
      const row: Vec3[] = [];
      for (let c = 0; c <= across; c++) {
        const [u, v] = [c / across, r / 12];
        let x = (u - 0.5) * w;
        let y = 0.02 + wave * (1 + Math.sin(u * 7 + phase + v * 2)) * 0.5;
        // Rolled at one end: the last third winds up on itself.
        if (rolled && u > 0.72) {
          const run = (u - 0.72) * w;
          const k = 1.15;
          x = (0.72 - 0.5) * w + k * Math.sin(run / k);
          y = 0.02 + k * (1 - Math.cos(run / k));
        } else if (!rolled) {
          y += Math.max(0, u * 0.9 + (1 - v) * 0.6 - 1.14) ** 2 * 7;
        }
        row.push([x, y, (0.5 - v) * d]);
      }
      rows.push(row);
    }
    const shape = grid(rows.reverse(), { uv: (row, column) => [column / across, row / 12] });
    const print = printed(image, w, 0.9, { thin: 0.2 });
    if (hung) {
      const stage = new Group().put(
        quad([-60, -20, 0], [60, -20, 0], [60, 50, 0], [-60, 50, 0]),
        boards(random.whole(1, 99), { light: "#b99468", dark: "#8d683f", width: 7, worn: 0.3 }),
      );
      for (let i = 0; i < 5; i++)
        stage.place(
          anyTin(random.branch(`tin${i}`)),
          here.move(-12 + i * 6 + random.sway(1), 21.4, 2),
        );
      stage.put(shape, print, here.move(0, 14, 1.2).turnX(90));
      for (const x of [-6.6, 6.6])
        stage.place(springClamp(), here.move(x, 19.8, 1.2).turnX(-90).turnY(90));
      stage.put(box(30, 1, 6, { bevel: 0.1 }), plywood(7), here.move(0, 20.4, 2));
      return {
        stage,
        camera: framed(setting, {
          target: [0.6, 14, 1],
          round: [-24, 24],
          above: [2, 10],
          limits: [-4, 20],
          away: 27,
          aperture: 0.02,
          tallAway: 1.5,
        }),
        light: lightFor(setting),
        extent: { centre: [0, 14, 2], radius: 14 },
      };
    }
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.8,
      night: setting.light === "lamp",
    });
    const lying = here.move(0, slope ? 2.6 : 0, 0).turnX(slope);
    if (slope) stage.put(box(19, 0.5, 13, { bevel: 0.06 }), plywood(4), lying.move(0, -0.5, 0));
    stage.put(shape, print, lying);
    const side = random.pick([-1, 1]);
    if (!slope) {
      stage.put(
        cylinder(1.2, 2.3, { sides: 30, bevel: 0.15 }),
        paint("#5d6165", 0.4),
        here.move(-7.4, 0.05, -4.4),
      );
      stage.place(steelRule(12), here.move(-8, 0.14, 3.2).turnY(random.between(4, 12)));
      stage.place(
        pencil(random.pick(["#c9821f", "#8c3b2e", "#2f5d8a"])),
        here.move(side > 0 ? 0.4 : -4, 0.16, -1.6).turnY(random.between(-40, 60)),
      );
      if (random.chance(0.6))
        stage.place(mug(random), here.move(side * 10.8, 0, -3).turnY(random.between(0, 360)));
      else stage.place(glasses(), here.move(side * 10, 0, -2).turnY(random.sway(50)));
    }
    const lean = setting.tall ? 1.16 : 1;
    return {
      stage,
      camera: framed(setting, {
        target: [1.5, 0, 0.7],
        round: [-26, 26],
        above: [42, 60],
        limits: [34, 80],
        roundLimits: [-30, 30],
        away: 26 * lean,
        aperture: 0.02,
        focusOn: [2, 0, 2],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 0, 0], radius: 12.5 },
    };
  },
};
