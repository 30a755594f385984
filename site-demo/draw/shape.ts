import { anticlockwise, edgeNormal, inset, triangulate } from "./polygon.ts";
import type { Pose } from "./pose.ts";
import { add, cross, dot, scaled, subtract, unit, type Vec2, type Vec3 } from "./vector.ts";

/** A corner of a triangle: place, normal, and place on the surface in inches. */
export interface Corner {
  readonly at: Vec3;
  readonly normal: Vec3;
  readonly uv: Vec2;
}

/** Triangles, three corners each. */
export type Shape = readonly Corner[];

/** The shape moved, turned or stretched. */
export function posed(shape: Shape, pose: Pose): Shape {
  const m = pose.m.map(Number);
  const [a = 1, b = 0, c = 0, , d = 0, e = 1, f = 0, , g = 0, h = 0, i = 1] = m;
  // Normals go with the cofactors, so that stretching does not tilt them wrongly.
  const n: Vec3[] = [
    [e * i - f * h, f * g - d * i, d * h - e * g],
    [c * h - b * i, a * i - c * g, b * g - a * h],
    [b * f - c * e, c * d - a * f, a * e - b * d],
  ];
  return shape.map((corner) => ({
    at: pose.point(corner.at),
    normal: unit([
      dot(n[0] ?? [1, 0, 0], corner.normal),
      dot(n[1] ?? [0, 1, 0], corner.normal),
      dot(n[2] ?? [0, 0, 1], corner.normal),
    ]),
    uv: corner.uv,
  }));
}

/** A sheet over a grid of points, rows by columns; smooth all over. */
export function grid(
  rows: readonly (readonly Vec3[])[],
  { closed = false, uv }: { closed?: boolean; uv?: (row: number, column: number) => Vec2 } = {},
): Shape {
  const height = rows.length;
  const width = rows[0]?.length ?? 0;
  const columns = closed ? width : width - 1;
  const p = (r: number, c: number): Vec3 => {
    const row = rows[Math.min(height - 1, Math.max(0, r))] ?? [];
    const column = closed ? ((c % width) + width) % width : Math.min(width - 1, Math.max(0, c));
    return row[column] ?? [0, 0, 0];
  };
  const alongColumn = runningLengths(rows.map((row) => row[Math.floor(width / 2)] ?? [0, 0, 0]));
  const middle = rows[Math.floor(height / 2)] ?? [];
  const alongRow = runningLengths(closed ? [...middle, middle[0] ?? [0, 0, 0]] : middle);
  const corner = (r: number, c: number): Corner => ({
    at: p(r, c),
    normal: unit(cross(subtract(p(r, c + 1), p(r, c - 1)), subtract(p(r + 1, c), p(r - 1, c)))),
    uv: uv ? uv(r, c) : [alongRow[c] ?? 0, alongColumn[r] ?? 0],
  });
  const out: Corner[] = [];
  for (let r = 0; r < height - 1; r++) {
    for (let c = 0; c < columns; c++) {
      const [a, b, d, e] = [corner(r, c), corner(r, c + 1), corner(r + 1, c), corner(r + 1, c + 1)];
      out.push(a, b, e, a, e, d);
    }
  }
  return out;
}

function runningLengths(points: readonly Vec3[]): number[] {
  let sum = 0;
  return points.map((point, i) => {
    const before = points[i - 1];
    if (before) sum += Math.sqrt(dot(subtract(point, before), subtract(point, before)));
    return sum;
  });
}

/** A sheet from a formula over `u` and `v`, each from 0 to 1. */
export function sheet(place: (u: number, v: number) => Vec3, across: number, down: number): Shape {
  const rows: Vec3[][] = [];
  for (let r = 0; r <= down; r++) {
    const row: Vec3[] = [];
    for (let c = 0; c <= across; c++) row.push(place(c / across, r / down));
    rows.push(row);
  }
  return grid(rows);
}

/** A flat four-cornered face, with its own surface coordinates where given. */
export function quad(
  a: Vec3,
  b: Vec3,
  c: Vec3,
  d: Vec3,
  uvs?: readonly [Vec2, Vec2, Vec2, Vec2],
): Shape {
  const normal = unit(cross(subtract(b, a), subtract(d, a)));
  const width = Math.sqrt(dot(subtract(b, a), subtract(b, a)));
  const height = Math.sqrt(dot(subtract(d, a), subtract(d, a)));
  const [ua, ub, uc, ud] = uvs ?? [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const at = (place: Vec3, uv: Vec2): Corner => ({ at: place, normal, uv });
  return [at(a, ua), at(b, ub), at(c, uc), at(a, ua), at(c, uc), at(d, ud)];
}

/** A picture's face: upright in x and y, lower left at the origin, texture from 0 to 1. */
export function face(width: number, height: number): Shape {
  return quad(
    [0, 0, 0],
    [width, 0, 0],
    [width, height, 0],
    [0, height, 0],
    [
      [0, 1],
      [1, 1],
      [1, 0],
      [0, 0],
    ],
  );
}

/** A round face lying flat at height 0, texture from 0 to 1 with its top away from the viewer. */
export function disc(radius: number, sides = 48): Shape {
  return Array.from({ length: sides }, (_, i) => {
    const at = (k: number): Corner => {
      const angle = (k / sides) * 2 * Math.PI;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      return { at: [c * radius, 0, s * radius], normal: [0, 1, 0], uv: [0.5 + c / 2, 0.5 + s / 2] };
    };
    return [{ at: [0, 0, 0], normal: [0, 1, 0], uv: [0.5, 0.5] } as Corner, at(i + 1), at(i)];
  }).flat();
}

/** An outline in x and y given thickness along z, from 0 to `depth`, its edges broken by `bevel`. */
export function extrude(
  outline: readonly Vec2[],
  depth: number,
  { holes = [], bevel = 0 }: { holes?: readonly (readonly Vec2[])[]; bevel?: number } = {},
): Shape {
  const outer = anticlockwise(outline);
  const inner = holes.map(anticlockwise);
  const out: Corner[] = [];
  const capOuter = bevel ? inset(outer, bevel) : outer;
  const capInner = bevel ? inner.map((hole) => inset(hole, -bevel)) : inner;
  for (const [a, b, c] of triangulate(capOuter, capInner)) {
    for (const p of [a, b, c]) out.push({ at: [p[0], p[1], depth], normal: [0, 0, 1], uv: p });
    for (const p of [a, c, b]) out.push({ at: [p[0], p[1], 0], normal: [0, 0, -1], uv: p });
  }
  out.push(...rim(outer, capOuter, depth, bevel, 1));
  inner.forEach((hole, i) => {
    out.push(...rim(hole, capInner[i] ?? hole, depth, bevel, -1));
  });
  return out;
}

function rim(
  ring: readonly Vec2[],
  cap: readonly Vec2[],
  depth: number,
  bevel: number,
  side: 1 | -1,
): Shape {
  const n = ring.length;
  const p = (list: readonly Vec2[], i: number): Vec2 => list[((i % n) + n) % n] ?? [0, 0];
  const outward = (i: number): Vec3 => {
    const [x, y] = edgeNormal(p(ring, i), p(ring, i + 1));
    return [-x * side, -y * side, 0];
  };
  const out: Corner[] = [];
  let run = 0;
  for (let i = 0; i < n; i++) {
    const here = outward(i);
    const start = eased(here, outward(i - 1));
    const end = eased(here, outward(i + 1));
    const [a, b] = [p(ring, i), p(ring, i + 1)];
    const [ca, cb] = [p(cap, i), p(cap, i + 1)];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const strip = (
      [la, lb]: [Vec2, Vec2],
      lz: number,
      [ha, hb]: [Vec2, Vec2],
      hz: number,
      tilt: number,
    ) => {
      const at = (q: Vec2, z: number, normal: Vec3, u: number): Corner => ({
        at: [q[0], q[1], z],
        normal: unit(add(normal, [0, 0, tilt])),
        uv: [run + u, z],
      });
      const [w, x] = [at(la, lz, start, 0), at(lb, lz, end, length)];
      const [y, z] = [at(hb, hz, end, length), at(ha, hz, start, 0)];
      out.push(w, x, y, w, y, z);
    };
    strip([a, b], bevel, [a, b], depth - bevel, 0);
    if (bevel) {
      strip([a, b], depth - bevel, [ca, cb], depth, 1);
      strip([a, b], bevel, [ca, cb], 0, -1);
    }
    run += length;
  }
  return out;
}

/** The shared normal of two faces that meet softly; the first one's own where they meet in a crease. */
function eased(own: Vec3, next: Vec3): Vec3 {
  return dot(own, next) > 0.72 ? unit(add(own, next)) : own;
}

/** A box standing on the origin, y up, its edges broken by `bevel` and its corners rounded by `round`. */
export function box(
  width: number,
  height: number,
  depth: number,
  { bevel = 0, round = 0 }: { bevel?: number; round?: number } = {},
): Shape {
  const [w, d] = [width / 2, depth / 2];
  const outline: Vec2[] = round
    ? roundedCorners(width, depth, round)
    : [
        [-w, -d],
        [w, -d],
        [w, d],
        [-w, d],
      ];
  return upright(extrude(outline, height, { bevel }));
}

function roundedCorners(width: number, depth: number, radius: number): Vec2[] {
  const out: Vec2[] = [];
  for (let corner = 0; corner < 4; corner++) {
    const sx = corner === 0 || corner === 1 ? 1 : -1;
    const sy = corner === 1 || corner === 2 ? 1 : -1;
    for (let step = 0; step <= 4; step++) {
      const angle = ((corner - 1) * 90 + step * 22.5) * (Math.PI / 180);
      out.push([
        sx * (width / 2 - radius) + radius * Math.cos(angle),
        sy * (depth / 2 - radius) + radius * Math.sin(angle),
      ]);
    }
  }
  return out;
}

/** What was extruded along z stands up along y instead. */
export function upright(shape: Shape): Shape {
  const turned = ([x, y, z]: Vec3): Vec3 => [x, z, -y];
  return shape.map(({ at, normal, uv }) => ({ at: turned(at), normal: turned(normal), uv }));
}

/** A profile of radius and height turned about the y axis; creases sharper than about 40° stay sharp. */
export function lathe(profile: readonly Vec2[], sides = 24): Shape {
  const out: Corner[] = [];
  const slope = (i: number): Vec3 => {
    const [a, b] = [profile[i], profile[i + 1]];
    if (!a || !b) return [0, 0, 0];
    return unit([b[1] - a[1], a[0] - b[0], 0]);
  };
  const girth = Math.max(...profile.map(([r]) => r));
  let run = 0;
  for (let i = 0; i < profile.length - 1; i++) {
    const a: Vec2 = profile[i] ?? [0, 0];
    const b: Vec2 = profile[i + 1] ?? [0, 0];
    const own = slope(i);
    const low = i > 0 ? eased(own, slope(i - 1)) : own;
    const high = i < profile.length - 2 ? eased(own, slope(i + 1)) : own;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    for (let s = 0; s < sides; s++) {
      const corner = (q: Vec2, n: Vec3, side: number, v: number): Corner => {
        const angle = (side / sides) * 2 * Math.PI;
        const [c, k] = [Math.cos(angle), Math.sin(angle)];
        return {
          at: [q[0] * c, q[1], q[0] * k],
          normal: [n[0] * c, n[1], n[0] * k],
          uv: [angle * girth, v],
        };
      };
      const [w, x] = [corner(a, low, s, run), corner(a, low, s + 1, run)];
      const [y, z] = [corner(b, high, s + 1, run + length), corner(b, high, s, run + length)];
      if (a[0] > 0) out.push(w, x, y);
      if (b[0] > 0) out.push(w, y, z);
    }
    run += length;
  }
  return out;
}

/** A rod standing on the origin, its rims broken by `bevel`. */
export function cylinder(radius: number, height: number, { sides = 24, bevel = 0 } = {}): Shape {
  return lathe(
    bevel
      ? [
          [0, 0],
          [radius - bevel, 0],
          [radius, bevel],
          [radius, height - bevel],
          [radius - bevel, height],
          [0, height],
        ]
      : [
          [0, 0],
          [radius, 0],
          [radius, height],
          [0, height],
        ],
    sides,
  );
}

/** A ball about the origin. */
export function sphere(radius: number, sides = 24): Shape {
  const rings = Math.max(6, Math.round(sides / 2));
  return lathe(
    Array.from({ length: rings + 1 }, (_, i): Vec2 => {
      const angle = (i / rings - 0.5) * Math.PI;
      return [i === 0 || i === rings ? 0 : radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
    sides,
  );
}

/** A pipe along points; `radius` may change from 0 at the start to 1 at the end. */
export function tube(
  path: readonly Vec3[],
  radius: number | ((t: number) => number),
  { sides = 12, caps = true, closed = false } = {},
): Shape {
  const n = path.length;
  const p = (i: number): Vec3 =>
    path[closed ? ((i % n) + n) % n : Math.min(n - 1, Math.max(0, i))] ?? [0, 0, 0];
  const radiusAt = (i: number) =>
    typeof radius === "number" ? radius : radius(Math.min(1, i / Math.max(1, n - 1)));
  const first = unit(subtract(p(1), p(0)));
  let side = unit(cross(first, Math.abs(first[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0]));
  const rings: Vec3[][] = [];
  const count = closed ? n + 1 : n;
  for (let i = 0; i < count; i++) {
    const along = unit(subtract(p(i + 1), p(i - 1)));
    side = unit(subtract(side, scaled(along, dot(side, along))));
    const up = cross(along, side);
    rings.push(
      Array.from({ length: sides }, (_, s) => {
        const angle = (s / sides) * 2 * Math.PI;
        const r = radiusAt(i);
        return add(p(i), add(scaled(side, r * Math.cos(angle)), scaled(up, r * Math.sin(angle))));
      }),
    );
  }
  const body = grid(rings, { closed: true });
  if (!caps || closed) return body;
  const lid = (ring: readonly Vec3[], centre: Vec3, outward: Vec3): Shape =>
    ring.flatMap((a, s) => {
      const b = ring[(s + 1) % ring.length] ?? a;
      const at = (place: Vec3): Corner => ({
        at: place,
        normal: outward,
        uv: [place[0], place[2]],
      });
      return [at(centre), at(a), at(b)];
    });
  const last = unit(subtract(p(n - 1), p(n - 2)));
  return [
    ...body,
    ...lid(rings[0] ?? [], p(0), scaled(first, -1)),
    ...lid(rings[n - 1] ?? [], p(n - 1), last),
  ];
}

/** A smooth line through points in space, `steps` to each stretch. */
export function curve(points: readonly Vec3[], steps: number, closed = false): Vec3[] {
  const n = points.length;
  const p = (i: number): Vec3 =>
    (closed ? points[((i % n) + n) % n] : points[Math.min(n - 1, Math.max(0, i))]) ?? [0, 0, 0];
  const out: Vec3[] = [];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [a, b, c, d] = [p(i - 1), p(i), p(i + 1), p(i + 2)];
    for (let s = 0; s < steps; s++) {
      const t = s / steps;
      const axis = (k: 0 | 1 | 2) =>
        0.5 *
        (2 * b[k] +
          (c[k] - a[k]) * t +
          (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k]) * t * t +
          (3 * b[k] - a[k] - 3 * c[k] + d[k]) * t * t * t);
      out.push([axis(0), axis(1), axis(2)]);
    }
  }
  if (!closed) out.push(p(n - 1));
  return out;
}
