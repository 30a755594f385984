import { add, cross, scaled, subtract, unit, type Vec3 } from "./vector.ts";

/** Where the picture is taken from. */
export interface Camera {
  readonly eye: Vec3;
  readonly forward: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** Half the picture's longer side, as a slope. */
  readonly reach: number;
  /** Nothing nearer than this is drawn, inches. */
  readonly near: number;
  /** How far off is sharp, inches. */
  readonly focus: number;
  /** How wide the lens is open: blur of a far background, as a share of the picture's width. */
  readonly aperture: number;
}

/**
 * A camera that looks at `target`.
 *
 * @param view Degrees round the upright axis (0 looks along -z, positive from
 *   the right), degrees above the horizontal, inches away, degrees of tilt, and
 *   the angle of view over the longer side in degrees.
 */
export function lookAt(
  target: Vec3,
  view: {
    readonly round: number;
    readonly above: number;
    readonly away: number;
    readonly tilt?: number;
    readonly angle?: number;
    readonly aperture?: number;
    /** What is sharp, when it is not the target. */
    readonly focusOn?: Vec3;
  },
): Camera {
  const [round, above] = [(view.round * Math.PI) / 180, (view.above * Math.PI) / 180];
  const back: Vec3 = [
    Math.sin(round) * Math.cos(above),
    Math.sin(above),
    Math.cos(round) * Math.cos(above),
  ];
  const eye = add(target, scaled(back, view.away));
  const forward = scaled(back, -1);
  const level = unit(cross(forward, [0, 1, 0]));
  const upright = cross(level, forward);
  const tilt = ((view.tilt ?? 0) * Math.PI) / 180;
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const right = add(scaled(level, c), scaled(upright, s));
  const up = add(scaled(upright, c), scaled(level, -s));
  const sharp = subtract(view.focusOn ?? target, eye);
  return {
    eye,
    forward,
    right,
    up,
    reach: Math.tan((((view.angle ?? 34) / 2) * Math.PI) / 180),
    near: view.away * 0.06,
    focus: sharp[0] * forward[0] + sharp[1] * forward[1] + sharp[2] * forward[2],
    aperture: view.aperture ?? 0.01,
  };
}
