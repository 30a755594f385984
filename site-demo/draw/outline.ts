import type { Vec2 } from "./vector.ts";

/** A circle, anticlockwise. */
export function circle(x: number, y: number, radius: number, corners = 28): Vec2[] {
  return Array.from({ length: corners }, (_, i) => {
    const angle = (i / corners) * 2 * Math.PI;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** An ellipse, anticlockwise. */
export function ellipse(x: number, y: number, rx: number, ry: number, corners = 28): Vec2[] {
  return circle(0, 0, 1, corners).map(([cx, cy]) => [x + cx * rx, y + cy * ry]);
}

/** A rectangle about the origin with rounded corners, anticlockwise. */
export function roundedRectangle(width: number, height: number, radius: number, steps = 5): Vec2[] {
  const r = Math.min(radius, width / 2, height / 2);
  const [w, h] = [width / 2 - r, height / 2 - r];
  const corners: [number, number, number][] = [
    [w, -h, -90],
    [w, h, 0],
    [-w, h, 90],
    [-w, -h, 180],
  ];
  return corners.flatMap(([x, y, start]) =>
    Array.from({ length: steps + 1 }, (_, i): Vec2 => {
      const angle = ((start + (90 * i) / steps) * Math.PI) / 180;
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    }),
  );
}

/** A rectangle from corner to corner, anticlockwise. */
export function rectangle(x0: number, y0: number, x1: number, y1: number): Vec2[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** A regular hexagon across flats, anticlockwise. */
export function hexagon(acrossFlats: number): Vec2[] {
  return circle(0, 0, acrossFlats / Math.sqrt(3), 6);
}

/** A smooth curve through the points (Catmull-Rom), closed or open. */
export function smooth(points: readonly Vec2[], steps: number, closed = true): Vec2[] {
  const n = points.length;
  const p = (i: number): Vec2 =>
    (closed ? points[((i % n) + n) % n] : points[Math.min(n - 1, Math.max(0, i))]) ?? [0, 0];
  const out: Vec2[] = [];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [a, b, c, d] = [p(i - 1), p(i), p(i + 1), p(i + 2)];
    for (let s = 0; s < steps; s++) {
      const t = s / steps;
      const axis = (k: 0 | 1) =>
        0.5 *
        (2 * b[k] +
          (c[k] - a[k]) * t +
          (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k]) * t * t +
          (3 * b[k] - a[k] - 3 * c[k] + d[k]) * t * t * t);
      out.push([axis(0), axis(1)]);
    }
  }
  if (!closed) out.push(p(n - 1));
  return out;
}
