import { openLight } from "../lighting.ts";
import { boards, kraft, paint, primer } from "../materials.ts";
import { rectangle } from "../outline.ts";
import { flat, here } from "../pose.ts";
import {
  channel,
  lighteningHoles,
  pressedRib,
  type Section,
  sectionOutline,
} from "../props/airframe.ts";
import { sawhorse } from "../props/bench.ts";
import { tableInShop } from "../props/room.ts";
import { seasonOf, shopFront, tree, yard } from "../props/yard.ts";
import type { Random } from "../random.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { curve, cylinder, extrude, grid, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { hex, type Vec3 } from "../vector.ts";

/** Parts in fresh green primer, hung on a line or laid on paper. */
export const primerParts: Scene = {
  name: "primer-parts",
  defaults: { count: "12" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const count = Math.max(1, Math.min(40, numberIn(detail.count, 12)));
    const skins = /skin/.test(words);
    const night = setting.light === "lamp" || setting.light === "strip";
    const hung = /line|fence|against|dappled|tarpaulin|window|west|shadows|drying/.test(words);
    if (hung) {
      const season = seasonOf(undefined, setting.month);
      const stage = yard(random.branch("yard"), season, {
        fence: -230,
        drive: 0,
      });
      if (/drive|window/.test(words))
        stage.place(
          shopFront(random.branch("shop"), { night: false, snow: season === "winter" }),
          here.move(-120, 0, -90),
        );
      const rows = count > 14 ? 2 : 1;
      const per = Math.ceil(count / rows);
      const pitch = skins ? 34 : Math.max(12, Math.min(18, 170 / per));
      const wide = per * pitch + 20;
      const wood = boards(random.whole(1, 99), { width: 30, gap: false });
      for (let row = 0; row < rows; row++) {
        const z = row * -34;
        const top = skins ? 66 : 62;
        const sag = 3 + wide * 0.012;
        const droop = (x: number) => top - sag * (1 - (x / (wide / 2)) ** 2);
        const line: Vec3[] = [];
        for (let i = 0; i <= 30; i++) {
          const x = -wide / 2 + (wide * i) / 30;
          line.push([x, droop(x), z]);
        }
        stage.put(tube(line, 0.16, { sides: 5 }), paint("#d8d4c8", 0.9));
        const trees = /dappled|apple/.test(words);
        for (const s of [-1, 1])
          if (trees) stage.place(tree(random, season), here.move(s * wide * 0.5, 0, z));
          else
            stage.put(
              tube(
                [
                  [s * wide * 0.5, 0, z],
                  [s * wide * 0.5, top + 4, z],
                ],
                1.7,
                { sides: 8 },
              ),
              wood,
            );
        for (let i = 0; i < per; i++) {
          if (row * per + i >= count) break;
          const x = (i - (per - 1) / 2) * pitch + random.sway(pitch * 0.08);
          const drop = skins ? 4 : random.between(4, 8);
          const y = droop(x);
          stage.put(
            tube(
              [
                [x, y, z],
                [x, y - drop, z],
              ],
              0.15,
              { sides: 4 },
            ),
            paint("#cfcabb", 0.6),
          );
          const part = skins ? skinPart(random) : anyPart(random, pitch * 1.02);
          stage.place(
            part,
            here
              .move(x, y - drop, z)
              .turnY(random.sway(skins ? 8 : 34))
              .turnZ(random.sway(3)),
          );
        }
      }
      if (/tarpaulin/.test(words)) {
        const rows: Vec3[][] = [];
        for (let r = 0; r <= 10; r++) {
          rows.push(
            Array.from(
              { length: 21 },
              (_, c): Vec3 => [
                (c / 20 - 0.5) * wide * 1.1,
                86 - 7 * Math.sin((c / 20) * Math.PI) - r * 0.6 + random.sway(0.4),
                (r / 10 - 0.5) * 80,
              ],
            ),
          );
        }
        stage.put(grid(rows), { color: hex("#2f5f9e"), roughness: 0.5, metal: false, thin: 0.5 });
      }
      const evening = /evening|west|low sun|long shadows/.test(words) || setting.hour > 18.2;
      const light = openLight(
        { night: false, winter: season === "winter", evening },
        /against the light/.test(words) ? 168 : setting.lightFrom,
        random.branch("light"),
      );
      return {
        stage,
        camera: framed(setting, {
          target: [0, skins ? 46 : 53, -4],
          round: [-34, 34],
          above: [-1, 5],
          limits: [-2, 13],
          roundLimits: [-52, 52],
          away: wide * 1.05 + 40,
          tallAway: 1.1,
          aperture: 0.03,
          focusOn: [0, 50, 2],
        }),
        light,
        extent: { centre: [0, 40, -10], radius: Math.max(70, wide * 0.6) },
      };
    }
    if (/drive/.test(words)) return onSawhorses(setting, count);
    const table = 34;
    const stage = tableInShop(random.branch("table"), {
      width: 84,
      depth: 46,
      height: table,
      night,
      wall: 58,
    });
    stage.put(grid(crumpled(random)), kraft(random.whole(1, 99)), here.move(0, table + 0.06, 0));
    const columns = Math.ceil(Math.sqrt(count * 1.9));
    const rows = Math.ceil(count / columns);
    for (let i = 0; i < count; i++) {
      const c = i % columns;
      const r = Math.floor(i / columns);
      const room = Math.min(70 / columns, 17);
      const x = (c - (columns - 1) / 2) * (70 / columns) + random.sway(1);
      const z = (r - (rows - 1) / 2) * (36 / rows) + random.sway(1);
      stage.place(
        anyPart(random, room * 0.86),
        here
          .move(x, table + 0.35, z)
          .turnY(random.sway(26))
          .turnX(-90)
          .move(0, room * 0.36, 0),
      );
    }
    stage.place(
      sprayGun(),
      here.move(random.pick([-1, 1]) * 36, table, 15).turnY(random.between(0, 360)),
    );
    return {
      stage,
      camera: framed(setting, {
        target: [0, table, 0],
        round: [-34, 34],
        above: [34, 48],
        limits: [16, 74],
        away: 90,
        aperture: 0.016,
        tallAway: 1.15,
      }),
      light: lightFor(setting),
      extent: { centre: [0, table, 0], radius: 52 },
    };
  },
};

/** Long parts laid over saw horses on the drive. */
function onSawhorses(setting: Setting, count: number): Composition {
  const { random } = setting;
  const season = seasonOf(undefined, setting.month);
  const stage = yard(random.branch("yard"), season, { fence: -260, drive: 110 });
  stage.place(
    shopFront(random.branch("shop"), { night: false, snow: false }),
    here.move(0, 0, -150),
  );
  const height = 30;
  for (const x of [-34, 34]) stage.place(sawhorse(height, 74), here.move(x, 0, 0));
  for (let i = 0; i < count; i++) {
    const green = primer(random.whole(1, 99), random.pick(["#98994a", "#8f9447"]));
    const z = (i - (count - 1) / 2) * Math.min(8, 66 / count);
    // Two are as long as the spar; the rest are what goes on it.
    const long = i === 1 || i === count - 2;
    const length = long ? 96 : random.between(74, 84);
    const holes = long
      ? [0.2, 0.4, 0.6, 0.8].map((share) => ({ x: length * share, y: 2.6, radius: 1 }))
      : [];
    stage.place(
      channel(length, long ? 5.2 : random.between(1.6, 3.4), 1.2, green, {
        holes: long ? holes : [],
      }),
      here
        .move(-length / 2 + random.sway(3), height + 0.1, z)
        .turnY(random.sway(1.4))
        .turnX(long ? -90 : random.pick([-90, 0])),
    );
  }
  return {
    stage,
    camera: framed(setting, {
      target: [0, height, 0],
      round: [26, 44],
      above: [16, 24],
      limits: [12, 30],
      roundLimits: [-58, 58],
      away: 150,
      aperture: 0.016,
    }),
    light: openLight(
      { night: false, winter: season === "winter", evening: false },
      setting.lightFrom,
      random.branch("light"),
    ),
    extent: { centre: [0, 24, 0], radius: 76 },
  };
}

function crumpled(random: Random): Vec3[][] {
  const rows: Vec3[][] = [];
  for (let r = 0; r <= 12; r++) {
    const row: Vec3[] = [];
    for (let c = 0; c <= 20; c++)
      row.push([(c / 20 - 0.5) * 80, random.between(0, 0.22), (0.5 - r / 12) * 43]);
    rows.push(row);
  }
  return rows;
}

/** A primed part hanging down from the origin, at most `size` across. */
function anyPart(random: Random, size: number): Group {
  const green = primer(random.whole(1, 99), random.pick(["#98994a", "#8f9447", "#a09f4f"]));
  const group = new Group();
  switch (random.whole(0, 4)) {
    case 0: {
      const section: Section = { chord: size * 2.1, thickness: 0.17, camber: 0 };
      const [from, to] = [0.3, 0.76];
      group.place(
        pressedRib(
          sectionOutline(section, from, to, 10).map(
            ([x, y]) => [x - section.chord * 0.53, y] as const,
          ),
          lighteningHoles(section, from + 0.02, to - 0.03, 3).map((h) => ({
            ...h,
            x: h.x - section.chord * 0.53,
          })),
          green,
          { flange: 0.5 },
        ),
        here.turnZ(90).move(-section.chord * 0.23, 0, 0),
      );
      break;
    }
    case 1:
      group.place(
        channel(size * 1.5, size * 0.22, 0.9, green, {
          holes: [0.3, 0.55, 0.8].map((s) => ({
            x: size * 1.5 * s,
            y: size * 0.11,
            radius: size * 0.055,
          })),
        }),
        here.turnZ(-90).move(0, -size * 0.11, 0),
      );
      break;
    case 2:
      group.put(
        extrude(
          [
            [-size * 0.3, 0],
            [size * 0.3, 0],
            [size * 0.3, -size * 0.2],
            [-size * 0.06, -size * 0.9],
            [-size * 0.3, -size * 0.9],
          ],
          0.06,
          { holes: [rectangle(-size * 0.14, -size * 0.4, size * 0.06, -size * 0.14)] },
        ),
        green,
      );
      group.put(
        extrude(
          [
            [0, 0],
            [0.06, 0],
            [0.06, -size * 0.9],
            [0, -size * 0.9],
          ],
          1.1,
        ),
        green,
        here.move(-size * 0.3, 0, 0),
      );
      break;
    case 3: {
      const section: Section = { chord: size * 1.8, thickness: 0.3, camber: 0 };
      group.place(
        pressedRib(
          sectionOutline(section, 0.01, 0.4, 9).map(
            ([x, y]) => [x - section.chord * 0.2, y] as const,
          ),
          lighteningHoles(section, 0.1, 0.38, 1).map((h) => ({
            ...h,
            x: h.x - section.chord * 0.2,
          })),
          green,
          { flange: 0.5 },
        ),
        here.turnZ(-90).move(size * 0.36, 0, 0),
      );
      break;
    }
    default:
      group.put(extrude(rectangle(-size * 0.12, -size * 1.25, size * 0.12, 0), 0.05), green);
      group.put(
        extrude(rectangle(-0.03, -size * 1.25, 0.03, 0), 0.9),
        green,
        here.move(size * 0.12, 0, 0),
      );
  }
  return group;
}

/** A whole skin hanging by its edge, bowed a little. */
function skinPart(random: Random): Group {
  const green = primer(random.whole(1, 99));
  const [w, h] = [28, random.between(40, 48)];
  const rows: Vec3[][] = [];
  const bow = random.between(1, 3) * random.pick([-1, 1]);
  for (let r = 0; r <= 10; r++) {
    const row: Vec3[] = [];
    for (let c = 0; c <= 10; c++)
      row.push([(c / 10 - 0.5) * w, (-h * r) / 10, bow * Math.sin((c / 10) * Math.PI)]);
    rows.push(row);
  }
  const group = new Group().put(grid(rows), green);
  for (let c = 0; c < 16; c++) {
    for (const r of [0.03, 0.5, 0.97])
      group.put(
        sphere(0.2, 6),
        paint("#22261a", 0.9),
        here.move((c / 15 - 0.5) * (w - 1.4), -h * r, bow * Math.sin((c / 15) * Math.PI)),
      );
  }
  return group;
}

function sprayGun(): Group {
  const metal = { color: [0.5, 0.51, 0.52] as const, roughness: 0.25, metal: true };
  return new Group()
    .put(
      cylinder(2.2, 4.6, { sides: 26, bevel: 0.3 }),
      { color: hex("#c9cdca"), roughness: 0.3, metal: false },
      here,
    )
    .put(cylinder(1.2, 1.2, { sides: 20 }), metal, here.move(0, 4.6, 0))
    .put(
      tube(
        [
          [-2, 6.6, 0],
          [3, 6.6, 0],
        ],
        0.8,
        { sides: 14 },
      ),
      metal,
    )
    .put(
      tube(
        curve(
          [
            [-1.6, 6.4, 0],
            [-2.2, 3.6, 0],
            [-2.6, 1.2, 0],
          ],
          5,
        ),
        0.7,
        { sides: 12 },
      ),
      metal,
    )
    .put(extrude(rectangle(-0.3, 0, 0.3, 2), 0.3), metal, flat.move(0, 0, 6.9));
}
