function lattice(x: number, y: number, seed: number): number {
  let h = (Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(seed, 0x9e3779b1)) | 0;
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return ((h ^ (h >>> 15)) >>> 0) / 2147483648 - 1;
}

/** Smooth noise over the plane, from -1 to 1, one bump to the unit. */
export function noise(x: number, y: number, seed = 0): number {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const fx = x - x0;
  const fy = y - y0;
  const sx = fx * fx * (3 - 2 * fx);
  const sy = fy * fy * (3 - 2 * fy);
  const a = lattice(x0, y0, seed);
  const b = lattice(x0 + 1, y0, seed);
  const c = lattice(x0, y0 + 1, seed);
  const d = lattice(x0 + 1, y0 + 1, seed);
  const top = a + (b - a) * sx;
  return top + (c + (d - c) * sx - top) * sy;
}

/** Several layers of noise, each twice as fine and half as strong; about -1 to 1. */
export function layered(x: number, y: number, layers: number, seed = 0): number {
  let sum = 0;
  let weight = 1;
  let total = 0;
  for (let i = 0; i < layers; i++) {
    sum += weight * noise(x, y, seed + i * 17);
    total += weight;
    weight *= 0.5;
    x = x * 2 + 19.1;
    y = y * 2 + 7.7;
  }
  return sum / total;
}

/** A fixed number from 0 up to 1 for each whole number. */
export function scatter(n: number, seed = 0): number {
  return (lattice(n, 0, seed) + 1) / 2;
}
