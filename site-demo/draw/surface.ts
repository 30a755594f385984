import type { Rgb } from "./vector.ts";

/** What one spot of a surface is like; patterns change it in place. */
export interface Spot {
  r: number;
  g: number;
  b: number;
  /** 0 is a mirror, 1 is chalk. */
  roughness: number;
  /** How far the normal leans along the surface's own u and v. */
  tiltU: number;
  tiltV: number;
}

/**
 * Changes a spot by where it is on the surface.
 *
 * @param u Inches along the surface.
 * @param v Inches across it.
 * @param inches How much of the surface one pixel of the picture covers.
 */
export type Pattern = (u: number, v: number, spot: Spot, inches: number) => void;

/** What a thing is made of. */
export interface Surface {
  readonly color: Rgb;
  readonly roughness: number;
  /** Bare metal reflects in its own colour and has no paint under the shine. */
  readonly metal: boolean;
  readonly pattern?: Pattern;
  /** Light the surface gives off by itself. */
  readonly glow?: Rgb;
  /** Light that comes through from the other side: paper, rubber, leaves. */
  readonly thin?: number;
  /** Does not throw a shadow: glass, and the backdrop outside the window. */
  readonly shadowless?: boolean;
}
