import type { Vec2 } from "./vector.ts";

/** Twice the area; positive when the outline runs anticlockwise. */
function signedArea(outline: readonly Vec2[]): number {
  let sum = 0;
  outline.forEach(([x, y], i) => {
    const [nx, ny] = at(outline, i + 1);
    sum += x * ny - nx * y;
  });
  return sum;
}

export function anticlockwise(outline: readonly Vec2[]): Vec2[] {
  return signedArea(outline) < 0 ? [...outline].reverse() : [...outline];
}

function at(outline: readonly Vec2[], i: number): Vec2 {
  const n = outline.length;
  return outline[((i % n) + n) % n] ?? [0, 0];
}

/** The outline moved inwards by `by` (outwards when negative); it must run anticlockwise. */
export function inset(outline: readonly Vec2[], by: number): Vec2[] {
  return outline.map((p, i) => {
    const [ax, ay] = edgeNormal(at(outline, i - 1), p);
    const [bx, by2] = edgeNormal(p, at(outline, i + 1));
    const k = by / Math.max(0.35, 1 + ax * bx + ay * by2);
    return [p[0] + (ax + bx) * k, p[1] + (ay + by2) * k];
  });
}

/** The unit normal that points into an anticlockwise outline. */
export function edgeNormal(a: Vec2, b: Vec2): Vec2 {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return [-dy / length, dx / length];
}

/**
 * Cuts an outline with holes into triangles by joining each hole to the
 * outline and clipping ears.
 *
 * @param outline Anticlockwise.
 * @param holes Anticlockwise too; they are turned round here.
 */
export function triangulate(
  outline: readonly Vec2[],
  holes: readonly (readonly Vec2[])[] = [],
): [Vec2, Vec2, Vec2][] {
  let ring = [...outline];
  const rightmost = (hole: readonly Vec2[]) => Math.max(...hole.map(([x]) => x));
  for (const hole of [...holes].sort((a, b) => rightmost(b) - rightmost(a))) {
    ring = joined(ring, [...hole].reverse());
  }
  return clipEars(ring);
}

function joined(ring: Vec2[], hole: Vec2[]): Vec2[] {
  let start = 0;
  hole.forEach(([x], i) => {
    if (x > (hole[start]?.[0] ?? 0)) start = i;
  });
  const from = at(hole, start);
  const candidates = ring
    .map((p, i) => ({ i, distance: (p[0] - from[0]) ** 2 + (p[1] - from[1]) ** 2 }))
    .sort((a, b) => a.distance - b.distance);
  const bridge = candidates.find(({ i }) => sees(from, i, ring)) ?? candidates[0];
  const to = bridge?.i ?? 0;
  const turned = [...hole.slice(start), ...hole.slice(0, start)];
  return [...ring.slice(0, to + 1), ...turned, from, ...ring.slice(to)];
}

function sees(from: Vec2, target: number, ring: readonly Vec2[]): boolean {
  const to = at(ring, target);
  if (turnOf(at(ring, target - 1), to, from) < 0 && turnOf(to, at(ring, target + 1), from) < 0) {
    return false;
  }
  for (let i = 0; i < ring.length; i++) {
    const a = at(ring, i);
    const b = at(ring, i + 1);
    if (same(a, to) || same(b, to)) continue;
    if (
      turnOf(from, to, a) * turnOf(from, to, b) < 0 &&
      turnOf(a, b, from) * turnOf(a, b, to) < 0
    ) {
      return false;
    }
  }
  return true;
}

function same(a: Vec2, b: Vec2): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function turnOf(a: Vec2, b: Vec2, c: Vec2): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
}

function clipEars(ring: Vec2[]): [Vec2, Vec2, Vec2][] {
  const left = [...ring];
  const triangles: [Vec2, Vec2, Vec2][] = [];
  let i = 0;
  let idle = 0;
  while (left.length > 3) {
    const [a, b, c] = [at(left, i - 1), at(left, i), at(left, i + 1)];
    const turn = turnOf(a, b, c);
    const forced = idle > left.length;
    if ((turn > 1e-12 && isEar(a, b, c, left)) || forced) {
      // A sliver of no area is dropped with its corner, and so is a corner
      // that nothing else will free: the caps stay closed to the eye.
      if (turn > 1e-12) triangles.push([a, b, c]);
      left.splice(((i % left.length) + left.length) % left.length, 1);
      idle = 0;
      i = i % left.length;
    } else {
      i = (i + 1) % left.length;
      idle++;
    }
  }
  if (left.length === 3) triangles.push([at(left, 0), at(left, 1), at(left, 2)]);
  return triangles;
}

function isEar(a: Vec2, b: Vec2, c: Vec2, ring: readonly Vec2[]): boolean {
  const lowX = Math.min(a[0], b[0], c[0]);
  const highX = Math.max(a[0], b[0], c[0]);
  const lowY = Math.min(a[1], b[1], c[1]);
  const highY = Math.max(a[1], b[1], c[1]);
  for (const p of ring) {
    if (p[0] < lowX || p[0] > highX || p[1] < lowY || p[1] > highY) continue;
    if (same(p, a) || same(p, b) || same(p, c)) continue;
    if (turnOf(a, b, p) >= 0 && turnOf(b, c, p) >= 0 && turnOf(c, a, p) >= 0) return false;
  }
  return true;
}
