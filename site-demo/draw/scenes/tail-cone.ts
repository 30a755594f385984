import { aluminium, boards, primer } from "../materials.ts";
import { roundedRectangle } from "../outline.ts";
import { inset } from "../polygon.ts";
import { here } from "../pose.ts";
import { fastened } from "../props/airframe.ts";
import { sawhorse, shopFloor } from "../props/bench.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, type Corner, extrude, grid, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec2, Vec3 } from "../vector.ts";

/** The tail cone's frames, set up one behind the other. */
export const tailCone: Scene = {
  name: "tail-cone",
  defaults: { frames: "5" },
  compose: (setting: Setting): Composition => {
    const { random, detail } = setting;
    const frames = Math.max(1, Math.min(10, numberIn(detail.frames, 5)));
    const night = setting.light === "lamp" || setting.light === "strip";
    const stage = shopFloor(random.branch("room"), { depth: 96, night });
    const height = 22;
    const spacing = 21;
    const length = (frames - 1) * spacing;
    const frameMetal = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 14);
    const size = (i: number): [number, number] => {
      const share = i / 6;
      return [40 - 17 * share, 34 - 12 * share];
    };
    const places: { at: Vec3; out: Vec3 }[] = [];
    for (let i = 0; i < frames; i++) {
      const [w, h] = size(i);
      const outline = roundedRectangle(w, h, 8 - i * 0.5, 7);
      const group = new Group();
      group.put(extrude(outline, 0.06, { holes: [inset(outline, 3.4)] }), frameMetal);
      for (const [ring, toward] of [
        [outline, -1.1],
        [inset(outline, 3.4), 0.7],
      ] as const)
        group.put(band(ring, toward), frameMetal);
      for (const s of [-1, 1])
        for (const y of [-1, 1])
          group.put(
            box(4, 0.1, 1.4),
            frameMetal,
            here.move(s * (w / 2 - 4.4), y * (h / 2 - 3.2), -0.6),
          );
      const z = length / 2 - i * spacing;
      stage.place(group, here.move(0, height + 17 + i * 1.2, z));
      for (const s of [-1, 1])
        for (const y of [-1, 1])
          places.push({
            at: [s * (w / 2 + 0.3), height + 17 + i * 1.2 + y * (h / 2 - 7), z - 0.6],
            out: [s, 0, 0],
          });
      // A stand holds each one up until the longerons do.
      if (i > 0)
        stage.put(
          box(2.6, height + 17 + i * 1.2 - h / 2, 2.6),
          boards(i + 3, { width: 20, gap: false }),
          here.move(0, 0, z),
        );
    }
    const longeron = aluminium(random.whole(1, 99), 20);
    if (frames > 1) {
      for (const s of [-1, 1]) {
        for (const y of [-1, 1]) {
          const at = (i: number): Vec3 => {
            const [w, h] = size(i);
            return [
              s * (w / 2 - 0.2),
              height + 17 + i * 1.2 + y * (h / 2 - 7),
              length / 2 - i * spacing,
            ];
          };
          const a = at(-0.35);
          const b = at(frames - 1 + 0.35);
          stage.put(tube([a, b], 0.7, { sides: 4 }), longeron);
        }
      }
    }
    stage.place(fastened(places, { kind: "cleco", size: "1/8", plain: false }));
    stage.place(sawhorse(height - 0.2, 44), here.move(0, 0, length / 2).turnY(90));
    // Bottom skin, not yet drilled, lying under the first bays.
    const [w0] = size(0);
    const rows: Vec3[][] = [0, 1].map((r) =>
      Array.from(
        { length: 11 },
        (_, c): Vec3 => [
          (c / 10 - 0.5) * (w0 - 6),
          height + 0.1 + 0.8 * Math.sin((c / 10) * Math.PI),
          length / 2 + 2 - r * Math.min(length, spacing * 1.6),
        ],
      ),
    );
    if (frames > 1) stage.put(grid(rows), aluminium(4, 10));
    const side = random.pick([-1, 1]);
    return {
      stage,
      camera: framed(setting, {
        target: [0, height + 16, frames > 3 ? -4 : 0],
        round: side > 0 ? [16, 42] : [-42, -16],
        above: [6, 16],
        limits: [3, 28],
        away: 128 + length * 0.62,
        tallAway: 1.02,
        aperture: 0.012,
        focusOn: [0, height + 16, length / 2],
      }),
      light: lightFor(setting),
      extent: { centre: [0, height + 8, 0], radius: 46 + length * 0.36 },
    };
  },
};

/** A strip along a closed outline, towards z. */
function band(ring: readonly Vec2[], toward: number): Corner[] {
  const out: Corner[] = [];
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    const a = ring[i] ?? [0, 0];
    const b = ring[(i + 1) % n] ?? a;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const normal: Vec3 = [(b[1] - a[1]) / length, (a[0] - b[0]) / length, 0];
    const corner = (p: Vec2, z: number): Corner => ({ at: [p[0], p[1], z], normal, uv: [i, z] });
    const [w, x, y, z] = [corner(a, 0), corner(b, 0), corner(b, toward), corner(a, toward)];
    out.push(w, x, y, w, y, z);
  }
  return out;
}
