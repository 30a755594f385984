/** A stream of pseudo-random numbers that depends on its seed and on nothing else. */
export class Random {
  readonly #seed: string;
  #state: number;

  constructor(seed: string) {
    this.#seed = seed;
    this.#state = hashOf(seed);
  }

  /** The next number, at least 0 and less than 1. */
  next(): number {
    // mulberry32: small, and the same on every machine because it is integer arithmetic.
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** A number from `low` up to `high`. */
  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  /** True in about `share` of the calls. */
  chance(share: number): boolean {
    return this.next() < share;
  }

  /** One of the choices. Throws a RangeError when there are none. */
  pick<T>(choices: readonly T[]): T {
    const choice = choices[Math.floor(this.next() * choices.length)];
    if (choice === undefined) throw new RangeError("nothing to pick from");
    return choice;
  }

  /** Plus or minus up to `reach`. */
  sway(reach: number): number {
    return this.between(-reach, reach);
  }

  /** A stream of its own, so that one part of a picture can change without moving the rest. */
  branch(name: string): Random {
    return new Random(`${this.#seed}/${name}`);
  }
}

/** FNV-1a, finished so that neighbouring names start far apart. */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x7feb352d);
  return Math.imul(hash ^ (hash >>> 15), 0x846ca68b) >>> 0;
}
