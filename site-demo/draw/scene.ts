import type { Camera } from "./camera.ts";
import { lookAt } from "./camera.ts";
import type { Light, LightName } from "./light.ts";
import { shopLight } from "./lighting.ts";
import type { Random } from "./random.ts";
import type { Extent } from "./render/render.ts";
import type { Group } from "./stage.ts";
import type { Vec3 } from "./vector.ts";

/** What a scene is given to work from. */
export interface Setting {
  /** Depends on the file's name only. */
  readonly random: Random;
  /** What the list says is in the picture, with the scene's own defaults filled in. */
  readonly detail: Readonly<Record<string, string>>;
  readonly light: LightName;
  /** Where the main light comes from, degrees round; -90 is the left. */
  readonly lightFrom: number;
  readonly view: View;
  /** The file's name and the list's words about the view, in lower case: `bee`, `ladder`, `window`. */
  readonly words: string;
  /** Taller than wide. */
  readonly tall: boolean;
  readonly month: number;
  readonly hour: number;
}

/** What the list says about where a picture is taken from. */
export interface View {
  /** Degrees round, when it says. */
  readonly round?: number;
  /** Degrees above the horizontal, when it says. */
  readonly above?: number;
  /** Below 1 is closer than usual. */
  readonly zoom: number;
}

/** A picture ready to be lit and taken. */
export interface Composition {
  readonly stage: Group;
  readonly camera: Camera;
  readonly light: Light;
  readonly extent: Extent;
}

/** One kind of picture. */
export interface Scene {
  readonly name: string;
  /** Every detail it understands, with what is shown when the list says nothing. */
  readonly defaults: Readonly<Record<string, string>>;
  readonly compose: (setting: Setting) => Composition | Promise<Composition>;
}

/** The number in a detail; the same detail's default where it is not one. */
export function numberIn(text: string | undefined, otherwise: number): number {
  const found = text?.match(/-?\d+(\.\d+)?/);
  return found ? Number(found[0]) : otherwise;
}

export function isYes(text: string | undefined): boolean {
  return text === "yes" || text === "true";
}

/** How a scene would like to be seen; the list's own words come first. */
export interface Wish {
  readonly target: Vec3;
  readonly round: readonly [number, number];
  readonly above: readonly [number, number];
  readonly away: number;
  readonly angle?: number;
  readonly aperture?: number;
  readonly tilt?: number;
  readonly focusOn?: Vec3;
  /** The lowest and highest the list may ask for. */
  readonly limits?: readonly [number, number];
  /** How far round the list may ask for. */
  readonly roundLimits?: readonly [number, number];
  /** How much further off a tall picture has to stand. */
  readonly tallAway?: number;
  readonly zooms?: readonly [number, number];
}

/** The camera for a wish, swayed by the picture's own chance. */
export function framed({ random, view, tall }: Setting, wish: Wish): Camera {
  const chance = random.branch("camera");
  const round = chance.between(...wish.round);
  const above = chance.between(...wish.above);
  const sway = chance.sway(4);
  const [low, high] = wish.limits ?? [5, 86];
  const [left, right] = wish.roundLimits ?? [-75, 75];
  const [near, far] = wish.zooms ?? [0.72, 1.35];
  const zoom = Math.min(far, Math.max(near, view.zoom));
  const shift = wish.away * 0.018;
  return lookAt(
    [
      wish.target[0] + chance.sway(shift),
      wish.target[1] + chance.sway(shift * 0.6),
      wish.target[2] + chance.sway(shift),
    ],
    {
      round: Math.min(right, Math.max(left, view.round === undefined ? round : view.round + sway)),
      above: Math.min(
        high,
        Math.max(low, view.above === undefined ? above : view.above + sway * 0.5),
      ),
      away: wish.away * zoom * chance.between(0.94, 1.06) * (tall ? (wish.tallAway ?? 1.08) : 1),
      tilt: chance.sway(wish.tilt ?? 2.2),
      angle: wish.angle ?? 34,
      aperture: wish.aperture ?? 0.02,
      ...(wish.focusOn ? { focusOn: wish.focusOn } : {}),
    },
  );
}

/** The shop's light for this picture. */
export function lightFor(setting: Setting): Light {
  return shopLight(setting.light, setting.lightFrom, setting.random.branch("light"));
}
