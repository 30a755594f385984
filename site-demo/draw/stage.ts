import { here, type Pose } from "./pose.ts";
import type { Shape } from "./shape.ts";
import type { Surface } from "./surface.ts";
import type { Vec3 } from "./vector.ts";

interface Placed {
  readonly shape: Shape;
  readonly surface: Surface;
  readonly pose: Pose;
}

/** Things put together: shapes with what they are made of, each where it stands. */
export class Group {
  readonly placed: Placed[] = [];

  /** Adds a shape made of one thing. */
  put(shape: Shape, surface: Surface, pose: Pose = here): this {
    this.placed.push({ shape, surface, pose });
    return this;
  }

  /** Adds everything of another group, moved as one. */
  place(group: Group, pose: Pose = here): this {
    for (const item of group.placed) {
      this.placed.push({ ...item, pose: pose.within(item.pose) });
    }
    return this;
  }
}

/** A stage as flat lists, three corners to a triangle. */
export interface Triangles {
  readonly count: number;
  /** x, y, z of each corner. */
  readonly places: Float32Array;
  /** Normals of each corner. */
  readonly normals: Float32Array;
  /** u, v of each corner. */
  readonly uvs: Float32Array;
  /** Index into `surfaces` for each triangle. */
  readonly made: Uint16Array;
  readonly surfaces: readonly Surface[];
}

/** Everything on the stage as triangles in one place. */
export function trianglesOf(stage: Group): Triangles {
  const corners = stage.placed.reduce((sum, { shape }) => sum + shape.length, 0);
  const places = new Float32Array(corners * 3);
  const normals = new Float32Array(corners * 3);
  const uvs = new Float32Array(corners * 2);
  const made = new Uint16Array(corners / 3);
  const surfaces: Surface[] = [];
  const known = new Map<Surface, number>();
  let at = 0;
  for (const { shape, surface, pose } of stage.placed) {
    let index = known.get(surface);
    if (index === undefined) {
      index = surfaces.push(surface) - 1;
      known.set(surface, index);
    }
    const [a = 1, b = 0, c = 0, tx = 0, d = 0, e = 1, f = 0, ty = 0, g = 0, h = 0, i = 1, tz = 0] =
      pose.m;
    // Normals go with the cofactors, so that stretching does not tilt them wrongly.
    const [na, nb, nc] = [e * i - f * h, f * g - d * i, d * h - e * g];
    const [nd, ne, nf] = [c * h - b * i, a * i - c * g, b * g - a * h];
    const [ng, nh, ni] = [b * f - c * e, c * d - a * f, a * e - b * d];
    for (const corner of shape) {
      const [x, y, z] = corner.at;
      const [p, q, r]: Vec3 = corner.normal;
      places[at * 3] = a * x + b * y + c * z + tx;
      places[at * 3 + 1] = d * x + e * y + f * z + ty;
      places[at * 3 + 2] = g * x + h * y + i * z + tz;
      const nx = na * p + nb * q + nc * r;
      const ny = nd * p + ne * q + nf * r;
      const nz = ng * p + nh * q + ni * r;
      const length = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
      normals[at * 3] = nx / length;
      normals[at * 3 + 1] = ny / length;
      normals[at * 3 + 2] = nz / length;
      uvs[at * 2] = corner.uv[0];
      uvs[at * 2 + 1] = corner.uv[1];
      if (at % 3 === 0) made[at / 3] = index;
      at++;
    }
  }
  return { count: corners / 3, places, normals, uvs, made, surfaces };
}
