import type { Light } from "../light.ts";
import { cross, unit } from "../vector.ts";

/** Looks up what a direction of the surroundings shows, `blur` in slope, into `out`. */
export type Surroundings = (
  x: number,
  y: number,
  z: number,
  blur: number,
  out: Float64Array,
) => void;

/** The sky, the walls and the bright patches of a light. */
export function surroundingsOf(light: Light): Surroundings {
  const { zenith, horizon, ground } = light;
  const patches = light.patches.map((patch) => {
    const toward = unit(patch.toward);
    const side = unit(cross(toward, Math.abs(toward[1]) < 0.95 ? [0, 1, 0] : [1, 0, 0]));
    return {
      toward,
      side,
      up: cross(side, toward),
      wide: Math.tan((patch.wide * Math.PI) / 180),
      high: Math.tan((patch.high * Math.PI) / 180),
      color: patch.color,
    };
  });
  return (x, y, z, blur, out) => {
    const up = Math.min(1, Math.max(0, y));
    const soft = 0.08 + blur;
    const below = Math.min(1, Math.max(0, (soft - y) / (2 * soft)));
    const low = below * below * (3 - 2 * below);
    const high = Math.sqrt(up);
    // Rafters, shelves and people: bare metal needs something to show.
    const depth = light.indoors ? Math.max(0, 1 - blur * 1.5) : 0;
    const rafters =
      Math.sin((x / (up + 0.35)) * 5.2 + 0.8) * Math.sin((z / (up + 0.5)) * 3.1 + 0.4);
    const clutter = 1 + (0.55 * rafters + 0.3 * Math.sin(x * 7 + z * 4 + y * 9)) * depth;
    for (let c = 0; c < 3; c++) {
      const wall = horizon[c as 0 | 1 | 2];
      const above = wall + (zenith[c as 0 | 1 | 2] - wall) * high;
      out[c] = (above + (ground[c as 0 | 1 | 2] - above) * low) * clutter;
    }
    for (const { toward, side, up: top, wide, high: tall, color } of patches) {
      const facing = x * toward[0] + y * toward[1] + z * toward[2];
      if (facing <= 0.05) continue;
      const across = Math.abs((x * side[0] + y * side[1] + z * side[2]) / facing);
      const along = Math.abs((x * top[0] + y * top[1] + z * top[2]) / facing);
      if (across > wide + soft || along > tall + soft) continue;
      const a = Math.min(1, Math.max(0, (wide + soft - across) / (2 * soft)));
      const b = Math.min(1, Math.max(0, (tall + soft - along) / (2 * soft)));
      const share = a * a * (3 - 2 * a) * b * b * (3 - 2 * b) * (1 - low);
      // A blurred patch spreads the same light over more of the sky.
      const kept = (wide / Math.max(wide, soft)) * (tall / Math.max(tall, soft));
      for (let c = 0; c < 3; c++) {
        out[c] = (out[c] as number) + color[c as 0 | 1 | 2] * share * kept;
      }
    }
  };
}
