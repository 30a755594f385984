import type { Camera } from "../camera.ts";
import type { Triangles } from "../stage.ts";
import { cross, scaled, unit, type Vec3 } from "../vector.ts";

/** How points in space land on a plane of pixels. */
export interface Projection {
  readonly eye: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly forward: Vec3;
  readonly width: number;
  readonly height: number;
  /** Pixels to a slope of 1 (perspective), or to an inch (parallel). */
  readonly scale: number;
  readonly perspective: boolean;
  readonly near: number;
}

/** A camera's picture plane. */
export function cameraProjection(camera: Camera, width: number, height: number): Projection {
  return {
    ...camera,
    width,
    height,
    scale: Math.max(width, height) / 2 / camera.reach,
    perspective: true,
  };
}

/** Parallel light from `toward`, covering a ball. */
export function parallelProjection(
  toward: Vec3,
  centre: Vec3,
  extent: number,
  size: number,
): Projection {
  const forward = scaled(toward, -1);
  const right = unit(cross(forward, Math.abs(toward[1]) < 0.95 ? [0, 1, 0] : [1, 0, 0]));
  return {
    eye: centre,
    right,
    up: cross(right, forward),
    forward,
    width: size,
    height: size,
    scale: size / 2 / extent,
    perspective: false,
    near: 0,
  };
}

/** Light from a point that covers a ball. */
export function pointProjection(
  from: Vec3,
  centre: Vec3,
  extent: number,
  size: number,
): Projection {
  const toCentre: Vec3 = [centre[0] - from[0], centre[1] - from[1], centre[2] - from[2]];
  const distance = Math.hypot(...toCentre);
  const forward = unit(toCentre);
  const right = unit(cross(forward, Math.abs(forward[1]) < 0.95 ? [0, 1, 0] : [1, 0, 0]));
  const slope =
    extent / Math.sqrt(Math.max(distance * distance - extent * extent, 0.01 * extent * extent));
  return {
    eye: from,
    right,
    up: cross(right, forward),
    forward,
    width: size,
    height: size,
    scale: size / 2 / slope,
    perspective: true,
    near: distance * 0.04,
  };
}

/** Nearness at each pixel, larger is nearer, and which triangle it belongs to. */
export interface Seen {
  readonly nearness: Float32Array;
  readonly ids: Int32Array | undefined;
}

/** Draws every triangle and keeps what is in front. */
export function project(
  triangles: Triangles,
  to: Projection,
  { withIds = false, skip }: { withIds?: boolean; skip?: (surface: number) => boolean } = {},
): Seen {
  const { width, height, perspective, near } = to;
  const nearness = new Float32Array(width * height).fill(-1e9);
  const ids = withIds ? new Int32Array(width * height).fill(-1) : undefined;
  const { places, made, count } = triangles;
  const [ex, ey, ez] = to.eye;
  const [rx, ry, rz] = to.right;
  const [ux, uy, uz] = to.up;
  const [fx, fy, fz] = to.forward;
  const cx = width / 2;
  const cy = height / 2;
  const k = to.scale;
  // Three corners before clipping, up to four after.
  const px = new Float64Array(4);
  const py = new Float64Array(4);
  const pz = new Float64Array(4);
  const qx = new Float64Array(4);
  const qy = new Float64Array(4);
  const qz = new Float64Array(4);

  const fill = (i0: number, i1: number, i2: number, id: number) => {
    let x0 = qx[i0] as number;
    let y0 = qy[i0] as number;
    let z0 = qz[i0] as number;
    const x1 = qx[i1] as number;
    const y1 = qy[i1] as number;
    const z1 = qz[i1] as number;
    let x2 = qx[i2] as number;
    let y2 = qy[i2] as number;
    let z2 = qz[i2] as number;
    let area = (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0);
    if (area < 0) {
      [x0, x2] = [x2, x0];
      [y0, y2] = [y2, y0];
      [z0, z2] = [z2, z0];
      area = -area;
    }
    if (!(area > 1e-9)) return;
    const left = Math.max(0, Math.ceil(Math.min(x0, x1, x2) - 0.5));
    const last = Math.min(width - 1, Math.floor(Math.max(x0, x1, x2) - 0.5));
    const top = Math.max(0, Math.ceil(Math.min(y0, y1, y2) - 0.5));
    const bottom = Math.min(height - 1, Math.floor(Math.max(y0, y1, y2) - 0.5));
    if (left > last || top > bottom) return;
    const a0 = (y1 - y2) / area;
    const b0 = (x2 - x1) / area;
    const a1 = (y2 - y0) / area;
    const b1 = (x0 - x2) / area;
    const a2 = -a0 - a1;
    const sx = left + 0.5;
    for (let y = top; y <= bottom; y++) {
      const sy = y + 0.5;
      let w0 = a0 * (sx - x2) + b0 * (sy - y2);
      let w1 = a1 * (sx - x2) + b1 * (sy - y2);
      let w2 = 1 - w0 - w1;
      let at = y * width + left;
      for (let x = left; x <= last; x++) {
        if (w0 >= 0 && w1 >= 0 && w2 >= 0) {
          const z = w0 * z0 + w1 * z1 + w2 * z2;
          if (z > (nearness[at] as number)) {
            nearness[at] = z;
            if (ids) ids[at] = id;
          }
        }
        w0 += a0;
        w1 += a1;
        w2 += a2;
        at++;
      }
    }
  };

  for (let t = 0; t < count; t++) {
    if (skip?.(made[t] as number)) continue;
    let inFront = 0;
    for (let c = 0; c < 3; c++) {
      const at = t * 9 + c * 3;
      const x = (places[at] as number) - ex;
      const y = (places[at + 1] as number) - ey;
      const z = (places[at + 2] as number) - ez;
      px[c] = x * rx + y * ry + z * rz;
      py[c] = x * ux + y * uy + z * uz;
      pz[c] = x * fx + y * fy + z * fz;
      if ((pz[c] as number) > near) inFront++;
    }
    let corners = 0;
    if (!perspective) {
      for (let c = 0; c < 3; c++) {
        qx[c] = cx + (px[c] as number) * k;
        qy[c] = cy - (py[c] as number) * k;
        qz[c] = -(pz[c] as number);
      }
      corners = 3;
    } else {
      if (inFront === 0) continue;
      for (let c = 0; c < 3; c++) {
        const n = (c + 1) % 3;
        const za = pz[c] as number;
        const zb = pz[n] as number;
        if (za > near) {
          qx[corners] = cx + ((px[c] as number) / za) * k;
          qy[corners] = cy - ((py[c] as number) / za) * k;
          qz[corners++] = 1 / za;
        }
        if (za > near !== zb > near) {
          const share = (near - za) / (zb - za);
          const x = (px[c] as number) + ((px[n] as number) - (px[c] as number)) * share;
          const y = (py[c] as number) + ((py[n] as number) - (py[c] as number)) * share;
          qx[corners] = cx + (x / near) * k;
          qy[corners] = cy - (y / near) * k;
          qz[corners++] = 1 / near;
        }
      }
    }
    if (corners < 3) continue;
    fill(0, 1, 2, t);
    if (corners === 4) fill(0, 2, 3, t);
  }
  return { nearness, ids };
}
