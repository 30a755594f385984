import { aluminium, machined, primer } from "../materials.ts";
import { here } from "../pose.ts";
import { channel, fastened, pressedRib } from "../props/airframe.ts";
import { boltHead, goldSurface } from "../props/fasteners.ts";
import { tableInShop } from "../props/room.ts";
import { screwClamp } from "../props/tools.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";

/** The centre section: carry-through bulkheads with the seat ribs between them. */
export const centreSection: Scene = {
  name: "centre-section",
  defaults: { bulkheads: "2" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const bulkheads = Math.max(1, Math.min(4, numberIn(detail.bulkheads, 2)));
    const night = setting.light === "lamp" || setting.light === "strip";
    const table = 34;
    const stage = tableInShop(random.branch("table"), {
      width: 76,
      depth: 44,
      height: table,
      night,
      wall: 60,
    });
    const length = 44;
    const height = 10;
    const gap = bulkheads > 2 ? 11 : 18;
    const web = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 16);
    const cap = machined(random.whole(1, 99));
    const group = new Group();
    const places: { at: Vec3; out: Vec3 }[] = [];
    for (let i = 0; i < bulkheads; i++) {
      const z = (i - (bulkheads - 1) / 2) * gap;
      const faces = i === bulkheads - 1 ? 1 : -1;
      const holes = [0.25, 0.5, 0.75].map((share) => ({
        x: length * share,
        y: height / 2,
        radius: 2.1,
      }));
      group.place(
        channel(length, height, 1.6, web, { gauge: 0.08, holes }),
        here.move(-length / 2, 0, z).size(1, 1, -faces),
      );
      for (const y of [0.2, height - 1.7]) {
        group.put(
          box(length + 9, 1.5, 0.5, { bevel: 0.08 }),
          cap,
          here.move(0, y, z + faces * 0.3),
        );
        for (const s of [-1, 1]) {
          for (let k = 0; k < 3; k++)
            group.place(
              boltHead(0.31),
              here
                .move(s * (length / 2 + 3.4 - k * 2), y + 0.75, z + faces * 0.55)
                .turnX(faces > 0 ? 90 : -90),
            );
        }
        for (let k = 0; k < 22; k++)
          places.push({
            at: [-length / 2 + 3 + (k * (length - 6)) / 21, y + 0.75, z + faces * 0.56],
            out: [0, 0, faces],
          });
      }
    }
    if (bulkheads > 1) {
      const rib = pressedRib(
        [
          [0, 0],
          [gap * (bulkheads - 1) - 0.6, 0],
          [gap * (bulkheads - 1) - 0.6, height - 2.2],
          [0, height - 1],
        ],
        Array.from({ length: bulkheads === 2 ? 2 : 3 }, (_, i) => ({
          x: (gap * (bulkheads - 1) * (i + 0.7)) / (bulkheads === 2 ? 2.4 : 3.4),
          y: height * 0.44,
          radius: 2.2,
        })),
        random.chance(0.5) ? primer(random.whole(1, 99)) : aluminium(random.whole(1, 99), 16),
        { flange: 0.8 },
      );
      for (const x of [-16, -6, 6, 16])
        group.place(rib, here.move(x, 0.5, (gap * (bulkheads - 1)) / 2 - 0.3).turnY(90));
    }
    group.place(
      fastened(
        places.filter((_, i) => i % 3),
        { kind: "head", diameter: 0.14, surface: goldSurface },
      ),
    );
    group.place(
      fastened(
        places.filter((_, i) => i % 3 === 0),
        { kind: "cleco", size: random.pick(["1/8", "5/32", "3/16"]), plain: false },
        1.2,
      ),
    );
    stage.place(group, here.move(0, table + 1.6, 0).turnY(random.sway(8)));
    for (const x of [-14, 14])
      stage.put(box(3, 1.6, 36, { bevel: 0.1 }), primer(3, "#6b4d2f"), here.move(x, table, 0));
    stage.place(
      screwClamp(2, "#7e2b22"),
      here
        .move(-14, table + 1.4, 20)
        .turnY(-90)
        .size(1.4),
    );
    const side = random.pick([-1, 1]);
    return {
      stage,
      camera: framed(setting, {
        target: [side * 1, table + 6, 0],
        round: side > 0 ? [26, 44] : [-44, -26],
        above: [20, 30],
        limits: [12, 50],
        away: 102,
        aperture: 0.016,
        focusOn: [side * 6, table + 6, 9],
      }),
      light: lightFor(setting),
      extent: { centre: [0, table + 3, 0], radius: 36 },
    };
  },
};
