/** A point or a direction; inches where it is a point, y up. */
export type Vec3 = readonly [x: number, y: number, z: number];
/** A point on a flat outline, inches. */
export type Vec2 = readonly [x: number, y: number];
/** Light or paint as linear red, green and blue; 1 is paper white. */
export type Rgb = readonly [r: number, g: number, b: number];

export function add(a: Vec3, b: Vec3): Vec3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function subtract(a: Vec3, b: Vec3): Vec3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scaled(a: Vec3, k: number): Vec3 {
  return [a[0] * k, a[1] * k, a[2] * k];
}

export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function lengthOf(a: Vec3): number {
  return Math.sqrt(dot(a, a));
}

/** The same direction with length 1; a vector of no length points up. */
export function unit(a: Vec3): Vec3 {
  const length = lengthOf(a);
  return length > 1e-12 ? scaled(a, 1 / length) : [0, 1, 0];
}

/** 0 below `low`, 1 above `high`, smooth between. */
export function smoothstep(low: number, high: number, x: number): number {
  const t = Math.min(1, Math.max(0, (x - low) / (high - low)));
  return t * t * (3 - 2 * t);
}

/** A screen colour such as `#c8a070` as linear light. */
export function hex(color: string): Rgb {
  const channel = (at: number) => {
    const c = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}
