import { openLight } from "../lighting.ts";
import { aluminium, boards, filmed, kraft, paint, paper, plywood, primer } from "../materials.ts";
import { here } from "../pose.ts";
import { lighteningHoles, pressedRib, type Section, sectionOutline } from "../props/airframe.ts";
import { shopFloor } from "../props/bench.ts";
import { seasonOf, shopFront, yard } from "../props/yard.ts";
import type { Random } from "../random.ts";
import { type Composition, framed, isYes, lightFor, type Scene, type Setting } from "../scene.ts";
import { box, type Corner, cylinder, type Shape, sphere } from "../shape.ts";
import { Group } from "../stage.ts";
import { cross, scaled, subtract, unit, type Vec3 } from "../vector.ts";

/** The crate of parts, its lid on or off. */
export const crate: Scene = {
  name: "crate",
  defaults: { open: "no" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const open = isYes(detail.open);
    const outside = /drive|street|yard/.test(words) || !open;
    const stage = outside
      ? yard(random.branch("yard"), seasonOf(undefined, setting.month), { fence: -300, drive: 92 })
      : shopFloor(random.branch("room"), { depth: 84, night: setting.light === "lamp" });
    if (outside)
      stage.place(
        shopFront(random.branch("shop"), { night: false, snow: false }),
        here.move(-60, 0, -150),
      );
    const [w, h, d] = [92, 22, 34];
    const ply = plywood(random.whole(1, 99), "#cfab7a");
    const batten = boards(random.whole(1, 99), { width: 30, gap: false });
    const body = new Group();
    for (const z of [-d / 2, d / 2]) body.put(box(w, h, 0.7), ply, here.move(0, 4, z));
    for (const x of [-w / 2, w / 2]) body.put(box(0.7, h, d), ply, here.move(x, 4, 0));
    body.put(box(w, 0.7, d), ply, here.move(0, 4, 0));
    for (const x of [-w / 2 + 2, -w / 6, w / 6, w / 2 - 2]) {
      for (const z of [-1, 1])
        body.put(box(3.4, h, 1.2, { bevel: 0.1 }), batten, here.move(x, 4, z * (d / 2 + 0.9)));
      body.put(box(3.4, 4, d + 4), batten, here.move(x, 0, 0));
    }
    for (const y of [4.2, h + 0.6])
      for (const z of [-1, 1])
        body.put(box(w, 3.2, 1.1, { bevel: 0.1 }), batten, here.move(0, y, z * (d / 2 + 1)));
    for (const x of [-1, 1]) {
      for (const y of [4.2, h + 0.6])
        body.put(box(1.1, 3.2, d + 2), batten, here.move(x * (w / 2 + 0.9), y, 0));
      // Rope handles.
      body.put(
        cylinder(0.6, 9, { sides: 10 }),
        paint("#b59a6a", 0.95),
        here.move(x * (w / 2 + 1.9), 15, -4.5).turnX(90),
      );
    }
    const lid = new Group().put(box(w + 2.6, 0.8, d + 2.6), ply);
    for (const x of [-w / 2 + 2, -w / 6, w / 6, w / 2 - 2])
      lid.put(box(3.4, 1.2, d + 2.6, { bevel: 0.1 }), batten, here.move(x, 0.8, 0));
    for (let i = 0; i < 22; i++) {
      const x = -w / 2 + 2 + (i % 4) * ((w - 4) / 3);
      lid.put(
        sphere(0.35, 8),
        paint("#6b6f73", 0.4),
        here.move(x, 2.05, -d / 2 + 2 + Math.floor(i / 4) * 6),
      );
    }
    if (open) {
      stage.place(lid, here.move(w * 0.12, 1.4, -d / 2 - 5).turnX(74));
      // Wrapped spars, nested ribs, folded skins and crumpled paper.
      body.put(box(w - 3, 1, d - 3), kraft(4), here.move(0, 9, 0));
      for (let i = 0; i < 4; i++)
        body.put(
          box(w - 8, 2.6, 3, { bevel: 0.3 }),
          i % 2 ? primer(i + 2) : kraft(i + 7),
          here.move(random.sway(1), 10, -d / 2 + 4 + i * 3.6).turnY(random.sway(0.7)),
        );
      const section: Section = { chord: 44, thickness: 0.15, camber: 0 };
      const outline = sectionOutline(section, 0.3, 0.76, 10);
      const rib = pressedRib(outline, lighteningHoles(section, 0.32, 0.74, 3), aluminium(5, 14), {
        flange: 0.7,
      });
      for (let i = 0; i < 9; i++)
        body.place(
          rib,
          here.move(-52 + random.sway(0.5), 17.5, 1 + i * 1.1).turnZ(random.sway(1.5)),
        );
      for (let i = 0; i < 5; i++)
        body.put(
          box(40, 0.12, 14, { bevel: 0.02 }),
          filmed(i + 3),
          here
            .move(20 + random.sway(1), 16.4 + i * 0.35, 7 + random.sway(0.6))
            .turnY(random.sway(1.6)),
        );
      for (let i = 0; i < 44; i++) {
        const k = random.between(2, 4);
        body.put(
          crumple(k, random),
          kraft(i + 20),
          here
            .move(random.sway(w / 2 - 5), 13 + random.between(0, 3), random.sway(d / 2 - 4))
            .turnY(random.between(0, 360))
            .turnX(random.between(0, 360))
            .size(1.3, 0.8, 1.1),
        );
      }
      for (let i = 0; i < 6; i++)
        body.put(
          box(5.6, 4.4, 4, { bevel: 0.08 }),
          i % 2 ? paint("#b08f63", 0.9) : paper(),
          here
            .move(28 + (i % 3) * 6.2, 10.2 + Math.floor(i / 3) * 4.5, -9 + random.sway(1))
            .turnY(random.sway(12)),
        );
      stage.put(
        box(17, 0.05, 11),
        paper("#f1ecdd"),
        here
          .move(-w * 0.18, 27.2, 2)
          .turnY(12)
          .turnZ(3),
      );
    } else body.place(lid, here.move(0, 4 + h, 0));
    stage.place(body, here.turnY(random.sway(5)));
    return {
      stage,
      camera: framed(setting, {
        target: [0, 14, 0],
        round: [-42, 42],
        above: open ? [34, 44] : [10, 18],
        limits: [8, 56],
        away: open ? 128 : 190,
        aperture: 0.012,
      }),
      light: outside
        ? openLight(
            { night: false, winter: false, evening: false },
            setting.lightFrom,
            random.branch("light"),
          )
        : lightFor(setting),
      extent: { centre: [0, 14, 0], radius: 66 },
    };
  },
};

/** A ball of crumpled paper: a sphere with its corners pushed about and its faces flat. */
function crumple(radius: number, random: Random): Shape {
  const pushed = new Map<string, number>();
  const places = sphere(radius, 9).map(({ at }): Vec3 => {
    const key = at.map((value) => value.toFixed(3)).join();
    const by = pushed.get(key) ?? random.between(0.6, 1.2);
    pushed.set(key, by);
    return scaled(at, by);
  });
  const out: Corner[] = [];
  for (let i = 0; i + 2 < places.length; i += 3) {
    const [a, b, c] = places.slice(i, i + 3);
    if (!a || !b || !c) continue;
    const normal = unit(cross(subtract(b, a), subtract(c, a)));
    for (const at of [a, b, c]) out.push({ at, normal, uv: [at[0], at[2]] });
  }
  return out;
}
