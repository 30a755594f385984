import type { Camera } from "../camera.ts";
import type { Lamp, Light } from "../light.ts";
import { type Group, trianglesOf } from "../stage.ts";
import type { Spot, Surface } from "../surface.ts";
import { add, cross, scaled, unit, type Vec3 } from "../vector.ts";
import { cameraProjection, parallelProjection, pointProjection, project } from "./projection.ts";
import { Shadow, skyDirections } from "./shadow.ts";
import { surroundingsOf } from "./surroundings.ts";

/** The ball that throws shadows on itself; what is outside it is lit without them. */
export interface Extent {
  readonly centre: Vec3;
  readonly radius: number;
}

/** A picture as light, before it is developed. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue of each pixel. */
  readonly color: Float32Array;
  /** Inches from the camera, along its view. */
  readonly depth: Float32Array;
}

/** How much trouble to take. */
export interface Effort {
  /** Samples to a pixel, along each side. */
  readonly samples: number;
  /** Directions of the sky. */
  readonly sky: number;
  /** Points of each lamp. */
  readonly points: number;
  /** Pixels along a shadow's side. */
  readonly shadow: number;
}

/** The light that leaves the stage towards the camera. */
export function render(
  stage: Group,
  camera: Camera,
  light: Light,
  extent: Extent,
  { width, height }: { width: number; height: number },
  effort: Effort,
): Frame {
  const triangles = trianglesOf(stage);
  const { places, normals, uvs, made, surfaces } = triangles;
  const surroundings = surroundingsOf(light);

  const skyTo = skyDirections(effort.sky);
  const radiance = new Float64Array(3);
  const skyColor = skyTo.map(([x, y, z]): Vec3 => {
    // Blurred, so that a bright window does not throw a hard shadow from each direction near it.
    surroundings(x, y, z, 0.7, radiance);
    return [radiance[0] as number, radiance[1] as number, radiance[2] as number];
  });
  const sky = skyTo.map(
    (toward) =>
      new Shadow(
        triangles,
        parallelProjection(toward, extent.centre, extent.radius * 1.15, effort.shadow * 0.75),
      ),
  );
  // The flat average of the cosine over the directions makes an open sky of 1 light a level floor by 1.
  const skyShare = 1 / skyTo.reduce((sum, [, y]) => sum + y, 0);
  const lamps = light.lamps.map((lamp) => ({
    lamp,
    points: lampPoints(lamp, extent, effort.points).map((from) => ({
      from,
      shadow: new Shadow(
        triangles,
        pointProjection(from, extent.centre, extent.radius, effort.shadow),
      ),
    })),
    from: add(extent.centre, scaled(lamp.toward, lamp.away * extent.radius)),
    distance: lamp.away * extent.radius,
    rim: Math.cos(((lamp.cone ?? 80) * Math.PI) / 180),
    core: Math.cos(((lamp.cone ?? 80) * 0.55 * Math.PI) / 180),
  }));
  const skyLift = (extent.radius * 2.3 * 1.6) / (effort.shadow * 0.75);
  const lampLift = (extent.radius * 2 * 1.6) / effort.shadow;

  const n = effort.samples;
  const projection = cameraProjection(camera, width * n, height * n);
  const { ids } = project(triangles, projection, { withIds: true });
  const seen = ids ?? new Int32Array(0);
  const color = new Float32Array(width * height * 3);
  const depth = new Float32Array(width * height);
  const far = extent.radius * 1000;

  const spot: Spot = { r: 0, g: 0, b: 0, roughness: 0, tiltU: 0, tiltV: 0 };
  const out = new Float64Array(4);
  const [ex, ey, ez] = camera.eye;
  const [fx, fy, fz] = camera.forward;
  const [rx, ry, rz] = camera.right;
  const [ux, uy, uz] = camera.up;
  const half = projection.scale;
  const pixelSlope = 1 / (half / n);

  // What the sky reaches is asked once for each block of two by two pixels on
  // one face; its shadows are far softer than that.
  const blocks = (width >> 1) + 1;
  const blockRow = new Int32Array(blocks).fill(-1);
  const blockMade = new Int32Array(blocks);
  const blockFace = new Float32Array(blocks * 3);
  const blockPlace = new Float32Array(blocks * 3);
  const blockReach = new Float32Array(blocks * sky.length);

  const shade = (t: number, sx: number, sy: number, column: number, row: number) => {
    const px = (sx - (width * n) / 2) / half;
    const py = -(sy - (height * n) / 2) / half;
    let dx = fx + rx * px + ux * py;
    let dy = fy + ry * px + uy * py;
    let dz = fz + rz * px + uz * py;
    const p = t * 9;
    const ax = places[p] as number;
    const ay = places[p + 1] as number;
    const az = places[p + 2] as number;
    const e1x = (places[p + 3] as number) - ax;
    const e1y = (places[p + 4] as number) - ay;
    const e1z = (places[p + 5] as number) - az;
    const e2x = (places[p + 6] as number) - ax;
    const e2y = (places[p + 7] as number) - ay;
    const e2z = (places[p + 8] as number) - az;
    // The face's own normal, turned towards the camera.
    let gx = e1y * e2z - e1z * e2y;
    let gy = e1z * e2x - e1x * e2z;
    let gz = e1x * e2y - e1y * e2x;
    const area = Math.sqrt(gx * gx + gy * gy + gz * gz) || 1e-12;
    gx /= area;
    gy /= area;
    gz /= area;
    const facing = dx * gx + dy * gy + dz * gz;
    const away = (ax - ex) * gx + (ay - ey) * gy + (az - ez) * gz;
    const far = Math.abs(facing) > 1e-6 ? away / facing : away;
    const x = ex + dx * far;
    const y = ey + dy * far;
    const z = ez + dz * far;
    // Shares of the three corners, kept inside the triangle.
    const wx = x - ax;
    const wy = y - ay;
    const wz = z - az;
    const c1x = wy * e2z - wz * e2y;
    const c1y = wz * e2x - wx * e2z;
    const c1z = wx * e2y - wy * e2x;
    const c2x = e1y * wz - e1z * wy;
    const c2y = e1z * wx - e1x * wz;
    const c2z = e1x * wy - e1y * wx;
    let s1 = Math.min(1, Math.max(0, (c1x * gx + c1y * gy + c1z * gz) / area));
    let s2 = Math.min(1, Math.max(0, (c2x * gx + c2y * gy + c2z * gz) / area));
    if (s1 + s2 > 1) {
      const over = s1 + s2;
      s1 /= over;
      s2 /= over;
    }
    const s0 = 1 - s1 - s2;
    if (facing > 0) {
      gx = -gx;
      gy = -gy;
      gz = -gz;
    }
    let nx =
      (normals[p] as number) * s0 +
      (normals[p + 3] as number) * s1 +
      (normals[p + 6] as number) * s2;
    let ny =
      (normals[p + 1] as number) * s0 +
      (normals[p + 4] as number) * s1 +
      (normals[p + 7] as number) * s2;
    let nz =
      (normals[p + 2] as number) * s0 +
      (normals[p + 5] as number) * s1 +
      (normals[p + 8] as number) * s2;
    if (nx * gx + ny * gy + nz * gz < 0) {
      nx = -nx;
      ny = -ny;
      nz = -nz;
    }
    const q = t * 6;
    const u0 = uvs[q] as number;
    const v0 = uvs[q + 1] as number;
    const du1 = (uvs[q + 2] as number) - u0;
    const dv1 = (uvs[q + 3] as number) - v0;
    const du2 = (uvs[q + 4] as number) - u0;
    const dv2 = (uvs[q + 5] as number) - v0;
    const surface = surfaces[made[t] as number] as Surface;
    spot.r = surface.color[0];
    spot.g = surface.color[1];
    spot.b = surface.color[2];
    spot.roughness = surface.roughness;
    spot.tiltU = 0;
    spot.tiltV = 0;
    const dl = Math.sqrt(dx * dx + dy * dy + dz * dz);
    dx /= dl;
    dy /= dl;
    dz /= dl;
    if (surface.pattern) {
      const inches = (far * pixelSlope) / Math.max(0.15, Math.abs(facing) / dl);
      surface.pattern(u0 + du1 * s1 + du2 * s2, v0 + dv1 * s1 + dv2 * s2, spot, inches);
      if (spot.tiltU !== 0 || spot.tiltV !== 0) {
        const turn = du1 * dv2 - du2 * dv1;
        if (Math.abs(turn) > 1e-12) {
          let tx = (e1x * dv2 - e2x * dv1) / turn;
          let ty = (e1y * dv2 - e2y * dv1) / turn;
          let tz = (e1z * dv2 - e2z * dv1) / turn;
          let bx = (e2x * du1 - e1x * du2) / turn;
          let by = (e2y * du1 - e1y * du2) / turn;
          let bz = (e2z * du1 - e1z * du2) / turn;
          const tl = Math.sqrt(tx * tx + ty * ty + tz * tz) || 1;
          const bl = Math.sqrt(bx * bx + by * by + bz * bz) || 1;
          tx /= tl;
          ty /= tl;
          tz /= tl;
          bx /= bl;
          by /= bl;
          bz /= bl;
          nx += tx * spot.tiltU + bx * spot.tiltV;
          ny += ty * spot.tiltU + by * spot.tiltV;
          nz += tz * spot.tiltU + bz * spot.tiltV;
        }
      }
    }
    const nl = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
    nx /= nl;
    ny /= nl;
    nz /= nl;
    const rough = Math.min(1, Math.max(0.04, spot.roughness));
    const view = Math.max(0.02, -(dx * nx + dy * ny + dz * nz));
    // The mirror direction.
    const rrx = dx + 2 * view * nx;
    const rry = dy + 2 * view * ny;
    const rrz = dz + 2 * view * nz;

    let dr = 0;
    let dg = 0;
    let db = 0;
    let open = 0;
    let openAll = 0;
    let clear = 0;
    let clearAll = 0;
    const lx = x + gx * skyLift;
    const ly = y + gy * skyLift;
    const lz = z + gz * skyLift;
    const narrow = rough < 0.3 ? 6 : 3;
    const block = column >> 1;
    const face = block * 3;
    const off = far * pixelSlope * 5;
    const from = block * sky.length;
    const known =
      blockRow[block] === row >> 1 &&
      blockMade[block] === made[t] &&
      (blockFace[face] as number) * gx +
        (blockFace[face + 1] as number) * gy +
        (blockFace[face + 2] as number) * gz >
        0.97 &&
      Math.abs((blockPlace[face] as number) - x) < off &&
      Math.abs((blockPlace[face + 1] as number) - y) < off &&
      Math.abs((blockPlace[face + 2] as number) - z) < off;
    if (!known) {
      blockRow[block] = row >> 1;
      blockMade[block] = made[t] as number;
      blockFace[face] = gx;
      blockFace[face + 1] = gy;
      blockFace[face + 2] = gz;
      blockPlace[face] = x;
      blockPlace[face + 1] = y;
      blockPlace[face + 2] = z;
      for (let j = 0; j < sky.length; j++) {
        const to = skyTo[j] as Vec3;
        const front = gx * to[0] + gy * to[1] + gz * to[2];
        blockReach[from + j] = front > 0.02 ? (sky[j] as Shadow).reaches(lx, ly, lz, 2.2) : 0;
      }
    }
    for (let j = 0; j < sky.length; j++) {
      const to = skyTo[j] as Vec3;
      const cosine = nx * to[0] + ny * to[1] + nz * to[2];
      const mirror = rrx * to[0] + rry * to[1] + rrz * to[2];
      if (cosine <= 0 && mirror <= 0) continue;
      const reach = blockReach[from + j] as number;
      if (cosine > 0) {
        const glow = skyColor[j] as Vec3;
        openAll += cosine;
        open += cosine * reach;
        dr += glow[0] * cosine * reach;
        dg += glow[1] * cosine * reach;
        db += glow[2] * cosine * reach;
      }
      if (mirror > 0) {
        const weight =
          narrow === 6
            ? mirror * mirror * mirror * mirror * mirror * mirror
            : mirror * mirror * mirror;
        clearAll += weight;
        clear += weight * reach;
      }
    }
    dr *= skyShare;
    dg *= skyShare;
    db *= skyShare;
    const openness = openAll > 0 ? open / openAll : 0.5;
    const under = (0.5 - 0.5 * ny) * (0.25 + 0.75 * openness) * 0.9;
    dr += light.ground[0] * under;
    dg += light.ground[1] * under;
    db += light.ground[2] * under;

    let sr = 0;
    let sg = 0;
    let sb = 0;
    const sharp = 2 / (rough * rough * rough * rough + 0.0008) - 2;
    const kx = x + gx * lampLift;
    const ky = y + gy * lampLift;
    const kz = z + gz * lampLift;
    for (const { lamp, points, from: middle, distance, rim, core } of lamps) {
      let tx = middle[0] - x;
      let ty = middle[1] - y;
      let tz = middle[2] - z;
      const reach = Math.sqrt(tx * tx + ty * ty + tz * tz);
      tx /= reach;
      ty /= reach;
      tz /= reach;
      const cosine = nx * tx + ny * ty + nz * tz;
      const thin = surface.thin ?? 0;
      if (cosine <= -0.1 && thin === 0) continue;
      const onAxis = tx * lamp.toward[0] + ty * lamp.toward[1] + tz * lamp.toward[2];
      if (onAxis <= rim) continue;
      let pool = Math.min(1, (onAxis - rim) / (core - rim));
      pool = pool * pool * (3 - 2 * pool);
      const strength = pool * Math.min(4, (distance / reach) * (distance / reach));
      // A wide lamp's points lie far apart; blurring each joins their shadows.
      const blurred = lamp.radius > 0.5 ? 4 : 0.6;
      let diffuse = 0;
      let shine = 0;
      for (const point of points) {
        let qx = point.from[0] - x;
        let qy = point.from[1] - y;
        let qz = point.from[2] - z;
        const ql = Math.sqrt(qx * qx + qy * qy + qz * qz);
        qx /= ql;
        qy /= ql;
        qz /= ql;
        const c = nx * qx + ny * qy + nz * qz;
        if (c <= 0 || gx * qx + gy * qy + gz * qz <= 0) {
          diffuse += Math.max(0, -c) * thin;
          continue;
        }
        const visible = point.shadow.reaches(kx, ky, kz, blurred);
        if (visible === 0) continue;
        diffuse += c * visible;
        const hx = qx - dx;
        const hy = qy - dy;
        const hz = qz - dz;
        const hl = Math.sqrt(hx * hx + hy * hy + hz * hz) || 1;
        const h = Math.max(0, (nx * hx + ny * hy + nz * hz) / hl);
        shine += visible * Math.min(40, ((sharp + 2) / 8) * h ** sharp);
      }
      const each = strength / points.length;
      // A wide lamp is also a patch of the surroundings, which metal shows already.
      const glare = lamp.radius > 0.5 ? 0.4 : 1;
      dr += lamp.color[0] * diffuse * each;
      dg += lamp.color[1] * diffuse * each;
      db += lamp.color[2] * diffuse * each;
      sr += lamp.color[0] * shine * each * glare;
      sg += lamp.color[1] * shine * each * glare;
      sb += lamp.color[2] * shine * each * glare;
    }

    surroundings(rrx, rry, rrz, rough * 0.62, radiance);
    const clearness = clearAll > 0.001 ? clear / clearAll : openness;
    // Looking down, a mirror shows the floor, which lies in the thing's own shade close by.
    const lifted = Math.min(1, Math.max(0, rry * 3 + 0.5));
    const mirrored = 0.12 + 0.88 * (clearness * lifted + (0.35 + 0.65 * openness) * (1 - lifted));
    const fresnel = (1 - view) ** 5;
    let r: number;
    let g: number;
    let b: number;
    if (surface.metal) {
      const rim = fresnel * (1 - rough) * 0.6;
      const mr = spot.r + (1 - spot.r) * rim;
      const mg = spot.g + (1 - spot.g) * rim;
      const mb = spot.b + (1 - spot.b) * rim;
      const spread = rough * 0.42;
      r = mr * ((radiance[0] as number) * mirrored * (1 - spread) + sr + dr * spread);
      g = mg * ((radiance[1] as number) * mirrored * (1 - spread) + sg + dg * spread);
      b = mb * ((radiance[2] as number) * mirrored * (1 - spread) + sb + db * spread);
    } else {
      const gloss = (0.04 + 0.96 * fresnel * (1 - rough) * (1 - rough)) * (1 - rough * 0.75);
      r = spot.r * dr * (1 - gloss) + gloss * ((radiance[0] as number) * mirrored + sr);
      g = spot.g * dg * (1 - gloss) + gloss * ((radiance[1] as number) * mirrored + sg);
      b = spot.b * db * (1 - gloss) + gloss * ((radiance[2] as number) * mirrored + sb);
    }
    if (surface.glow) {
      r += surface.glow[0] * spot.r;
      g += surface.glow[1] * spot.g;
      b += surface.glow[2] * spot.b;
    }
    out[0] = r;
    out[1] = g;
    out[2] = b;
    out[3] = far;
  };

  const size = n * n;
  const groupTriangle = new Int32Array(size);
  const groupCount = new Int32Array(size);
  const groupX = new Float64Array(size);
  const groupY = new Float64Array(size);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let groups = 0;
      for (let j = 0; j < n; j++) {
        for (let i = 0; i < n; i++) {
          const sx = x * n + i;
          const sy = y * n + j;
          const id = seen[sy * width * n + sx] as number;
          let g = 0;
          while (g < groups && !alike(groupTriangle[g] as number, id)) g++;
          if (g === groups) {
            groupTriangle[g] = id;
            groupCount[g] = 0;
            groupX[g] = 0;
            groupY[g] = 0;
            groups++;
          }
          groupCount[g] = (groupCount[g] as number) + 1;
          groupX[g] = (groupX[g] as number) + sx + 0.5;
          groupY[g] = (groupY[g] as number) + sy + 0.5;
        }
      }
      let r = 0;
      let g = 0;
      let b = 0;
      let d = 0;
      for (let k = 0; k < groups; k++) {
        const count = groupCount[k] as number;
        const share = count / size;
        const id = groupTriangle[k] as number;
        const sx = (groupX[k] as number) / count;
        const sy = (groupY[k] as number) / count;
        if (id < 0) {
          const px = (sx - (width * n) / 2) / half;
          const py = -(sy - (height * n) / 2) / half;
          const to = unit([fx + rx * px + ux * py, fy + ry * px + uy * py, fz + rz * px + uz * py]);
          surroundings(to[0], to[1], to[2], 0.1, radiance);
          out[0] = radiance[0] as number;
          out[1] = radiance[1] as number;
          out[2] = radiance[2] as number;
          out[3] = far;
        } else {
          shade(id, sx, sy, x, y);
        }
        // One glint must not burn a whole pixel's edge away.
        r += Math.min(12, out[0] as number) * share;
        g += Math.min(12, out[1] as number) * share;
        b += Math.min(12, out[2] as number) * share;
        d += (out[3] as number) * share;
      }
      const at = (y * width + x) * 3;
      color[at] = r;
      color[at + 1] = g;
      color[at + 2] = b;
      depth[y * width + x] = d;
    }
  }
  return { width, height, color, depth };

  function alike(a: number, b: number): boolean {
    if (a === b) return true;
    if (a < 0 || b < 0 || made[a] !== made[b]) return false;
    const p = a * 9;
    const q = b * 9;
    for (let c = 0; c < 9; c += 3) {
      const cosine =
        (normals[p + c] as number) * (normals[q + c] as number) +
        (normals[p + c + 1] as number) * (normals[q + c + 1] as number) +
        (normals[p + c + 2] as number) * (normals[q + c + 2] as number);
      if (cosine < 0.9) return false;
    }
    // Neighbours on one surface share a corner or lie within each other's reach.
    const reach =
      Math.abs((places[p] as number) - (places[p + 3] as number)) +
      Math.abs((places[p + 1] as number) - (places[p + 4] as number)) +
      Math.abs((places[p + 2] as number) - (places[p + 5] as number)) +
      Math.abs((places[p] as number) - (places[p + 6] as number)) +
      Math.abs((places[p + 1] as number) - (places[p + 7] as number)) +
      Math.abs((places[p + 2] as number) - (places[p + 8] as number));
    const apart =
      Math.abs((places[p] as number) - (places[q] as number)) +
      Math.abs((places[p + 1] as number) - (places[q + 1] as number)) +
      Math.abs((places[p + 2] as number) - (places[q + 2] as number));
    return apart <= reach * 1.2;
  }
}

/** Points spread over a lamp's disc. */
function lampPoints(lamp: Lamp, extent: Extent, count: number): Vec3[] {
  const middle = add(extent.centre, scaled(lamp.toward, lamp.away * extent.radius));
  const side = unit(cross(lamp.toward, Math.abs(lamp.toward[1]) < 0.95 ? [0, 1, 0] : [1, 0, 0]));
  const top = cross(side, lamp.toward);
  return Array.from({ length: count }, (_, i) => {
    const r = lamp.radius * extent.radius * Math.sqrt((i + 0.5) / count);
    const angle = i * 2.399963229728653;
    return add(middle, add(scaled(side, r * Math.cos(angle)), scaled(top, r * Math.sin(angle))));
  });
}
