import type { Vec3 } from "./vector.ts";

/** Where a thing stands: an affine map, written outermost step first. */
export class Pose {
  /** Three rows of four: x, y, z and the shift. */
  readonly m: readonly number[];

  constructor(m: readonly number[] = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0]) {
    this.m = m;
  }

  /** A pose at a place, its three axes pointing as given. */
  static facing(at: Vec3, x: Vec3, y: Vec3, z: Vec3): Pose {
    return new Pose([
      ...[x[0], y[0], z[0], at[0]],
      ...[x[1], y[1], z[1], at[1]],
      ...[x[2], y[2], z[2], at[2]],
    ]);
  }

  /** The place of `inner` when it stands within this pose. */
  within(inner: Pose): Pose {
    const [a, b] = [this.m, inner.m];
    const out: number[] = [];
    for (let row = 0; row < 3; row++) {
      for (let column = 0; column < 4; column++) {
        let sum = column === 3 ? (a[row * 4 + 3] ?? 0) : 0;
        for (let k = 0; k < 3; k++) sum += (a[row * 4 + k] ?? 0) * (b[k * 4 + column] ?? 0);
        out.push(sum);
      }
    }
    return new Pose(out);
  }

  move(x: number, y: number, z: number): Pose {
    return this.within(new Pose([1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z]));
  }

  /** Turns about the x axis, in degrees; y goes towards z. */
  turnX(degrees: number): Pose {
    const [c, s] = turn(degrees);
    return this.within(new Pose([1, 0, 0, 0, 0, c, -s, 0, 0, s, c, 0]));
  }

  /** Turns about the y axis, in degrees; z goes towards x. */
  turnY(degrees: number): Pose {
    const [c, s] = turn(degrees);
    return this.within(new Pose([c, 0, s, 0, 0, 1, 0, 0, -s, 0, c, 0]));
  }

  /** Turns about the z axis, in degrees; x goes towards y. */
  turnZ(degrees: number): Pose {
    const [c, s] = turn(degrees);
    return this.within(new Pose([c, -s, 0, 0, s, c, 0, 0, 0, 0, 1, 0]));
  }

  size(x: number, y = x, z = x): Pose {
    return this.within(new Pose([x, 0, 0, 0, 0, y, 0, 0, 0, 0, z, 0]));
  }

  /** The y axis of what is placed points along `direction`. */
  along(direction: Vec3): Pose {
    const [x, y, z] = direction;
    const flat = Math.sqrt(x * x + z * z);
    return this.turnY((Math.atan2(x, z) * 180) / Math.PI).turnX(
      (Math.atan2(flat, y) * 180) / Math.PI,
    );
  }

  point([x, y, z]: Vec3): Vec3 {
    const m = this.m;
    const row = (r: number) =>
      (m[r] ?? 0) * x + (m[r + 1] ?? 0) * y + (m[r + 2] ?? 0) * z + (m[r + 3] ?? 0);
    return [row(0), row(4), row(8)];
  }
}

function turn(degrees: number): [number, number] {
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** Where a thing stands before it is moved. */
export const here = new Pose();

/** Lays an outline drawn in x and y flat on the bench: its y goes away from the viewer. */
export const flat = here.turnX(-90);
