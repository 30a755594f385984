import type { Triangles } from "../stage.ts";
import type { Vec3 } from "../vector.ts";
import { type Projection, project } from "./projection.ts";

/** What one point of light can see, for asking whether a spot is in its shadow. */
export class Shadow {
  readonly #nearness: Float32Array;
  readonly #size: number;
  readonly #perspective: boolean;
  readonly #near: number;
  // The projection as three rows of a matrix: this is asked a hundred million times.
  readonly #ax: number;
  readonly #ay: number;
  readonly #az: number;
  readonly #a: number;
  readonly #bx: number;
  readonly #by: number;
  readonly #bz: number;
  readonly #b: number;
  readonly #dx: number;
  readonly #dy: number;
  readonly #dz: number;
  readonly #d: number;

  /** `to` is as wide as it is high. */
  constructor(triangles: Triangles, to: Projection) {
    const { surfaces } = triangles;
    this.#nearness = project(triangles, to, {
      skip: (surface) => surfaces[surface]?.shadowless === true,
    }).nearness;
    const { eye, right, up, forward, scale } = to;
    this.#size = to.width;
    this.#perspective = to.perspective;
    this.#near = to.near;
    this.#ax = right[0] * scale;
    this.#ay = right[1] * scale;
    this.#az = right[2] * scale;
    this.#a = -(this.#ax * eye[0] + this.#ay * eye[1] + this.#az * eye[2]);
    this.#bx = -up[0] * scale;
    this.#by = -up[1] * scale;
    this.#bz = -up[2] * scale;
    this.#b = -(this.#bx * eye[0] + this.#by * eye[1] + this.#bz * eye[2]);
    this.#dx = forward[0];
    this.#dy = forward[1];
    this.#dz = forward[2];
    this.#d = -(this.#dx * eye[0] + this.#dy * eye[1] + this.#dz * eye[2]);
  }

  /**
   * How much of the light reaches a place, 0 to 1; all of it outside the
   * covered ball.
   *
   * @param spread Averages four places so many pixels of the shadow apart.
   */
  reaches(x: number, y: number, z: number, spread = 0): number {
    const depth = this.#dx * x + this.#dy * y + this.#dz * z + this.#d;
    let px = this.#ax * x + this.#ay * y + this.#az * z + this.#a;
    let py = this.#bx * x + this.#by * y + this.#bz * z + this.#b;
    let own = -depth;
    if (this.#perspective) {
      if (depth <= this.#near) return 1;
      own = 1 / depth;
      px *= own;
      py *= own;
    }
    px += this.#size / 2 - 0.5;
    py += this.#size / 2 - 0.5;
    if (spread === 0) return this.#at(px, py, own);
    const s = spread;
    return (
      (this.#at(px - s, py - s * 0.4, own) +
        this.#at(px + s * 0.4, py - s, own) +
        this.#at(px + s, py + s * 0.4, own) +
        this.#at(px - s * 0.4, py + s, own)) /
      4
    );
  }

  #at(px: number, py: number, own: number): number {
    const size = this.#size;
    if (!(px >= 0 && py >= 0 && px < size - 1 && py < size - 1)) return 1;
    const ix = px | 0;
    const iy = py | 0;
    const map = this.#nearness;
    const at = iy * size + ix;
    const a = (map[at] as number) > own ? 0 : 1;
    const b = (map[at + 1] as number) > own ? 0 : 1;
    const c = (map[at + size] as number) > own ? 0 : 1;
    const d = (map[at + size + 1] as number) > own ? 0 : 1;
    if (a === b && a === c && a === d) return a;
    const fx = px - ix;
    const fy = py - iy;
    return (a * (1 - fx) + b * fx) * (1 - fy) + (c * (1 - fx) + d * fx) * fy;
  }
}

/** Directions spread evenly over the sky, none of them below 6° above the horizon. */
export function skyDirections(count: number): Vec3[] {
  return Array.from({ length: count }, (_, i) => {
    const y = 0.1 + 0.9 * ((i + 0.5) / count);
    const angle = i * 2.399963229728653;
    const r = Math.sqrt(1 - y * y);
    return [r * Math.cos(angle), y, r * Math.sin(angle)];
  });
}
