import type { Rgb, Vec3 } from "./vector.ts";

/** A bright patch of the surroundings: a window, a strip light, an open door. */
export interface Patch {
  readonly toward: Vec3;
  /** Half its width and half its height as angles, degrees. */
  readonly wide: number;
  readonly high: number;
  readonly color: Rgb;
}

/** A lamp with a size, so that its shadows are soft. */
export interface Lamp {
  /** From the middle of the picture towards the lamp, of length 1. */
  readonly toward: Vec3;
  /** How far off it is, as a multiple of the picture's extent. */
  readonly away: number;
  /** Half its width, as a multiple of the picture's extent. */
  readonly radius: number;
  readonly color: Rgb;
  /** Half the angle of its cone, degrees; light fades out towards it. */
  readonly cone?: number;
}

/** All the light in a picture. */
export interface Light {
  readonly zenith: Rgb;
  readonly horizon: Rgb;
  readonly ground: Rgb;
  /** Under a roof: rafters and shelves show in bare metal. */
  readonly indoors: boolean;
  readonly patches: readonly Patch[];
  readonly lamps: readonly Lamp[];
  /** Doubling it is one stop. */
  readonly exposure: number;
  /** How dark the corners get, 0 to 1. */
  readonly vignette: number;
  /** Multiplies the finished picture: the colour of the evening. */
  readonly cast: Rgb;
}

/** What hour of what season it is, as far as the light goes. */
export type LightName = "lamp" | "daylight" | "strip" | "sun" | "dusk";
