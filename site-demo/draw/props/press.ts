import { chrome } from "../materials.ts";
import { smooth } from "../outline.ts";
import { here } from "../pose.ts";
import { box, cylinder, extrude, lathe } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";

/** How high the lower die carries a sheet, inches. */
export const pressLevel = 3.67;

/** A C-frame press, open towards the viewer; `d` is the rivet's size and `gap` what the dies stand apart. */
export function cFramePress(iron: Surface, d: number, gap: number): Group {
  const group = new Group();
  // Seen from the open end: throat towards the viewer, frame running back.
  const frame = smooth(
    [
      [0, 0],
      [-14, 0],
      [-15.4, 1],
      [-15.6, 5],
      [-15, 8.6],
      [-13.6, 9.6],
      [-1, 9.6],
      [0.8, 9.4],
      [0.9, 7.8],
      [-0.9, 7.6],
      [-12, 7.3],
      [-12.9, 6.4],
      [-12.9, 2.6],
      [-12.2, 1.9],
      [0.7, 1.8],
      [0.9, 0.3],
    ],
    3,
  );
  group.put(extrude(frame, 1.5, { bevel: 0.16 }), iron, here.turnY(-90).move(0, 0, -0.75));
  group.put(box(5, 0.5, 3.2, { bevel: 0.1 }), iron, here.move(0, 0, -1));
  const lower = 1.85;
  group.put(cylinder(0.5, 1.5, { sides: 30, bevel: 0.06 }), chrome, here.move(0, lower - 0.1, 0));
  group.put(
    lathe(
      [
        [0.36, 0],
        [0.36, 0.35],
        [0.3, 0.4],
        [d * 1.5, 0.4],
        [d * 0.55, 0.34],
        [0, 0.34],
      ],
      34,
    ),
    chrome,
    here.move(0, lower + 1.4, 0),
  );
  const level = pressLevel;
  group.put(
    lathe(
      [
        [0, -0.12],
        [d * 0.48, -0.1],
        [d * 0.52, 0],
        [d * 1.5, 0.09],
        [0.3, 0.09],
        [0.36, 0.14],
        [0.36, 0.5],
        [0.42, 0.5],
      ],
      34,
    ),
    chrome,
    here.move(0, level + gap, 0),
  );
  group.put(
    cylinder(0.42, 4.6, { sides: 30, bevel: 0.05 }),
    { ...chrome, roughness: 0.2 },
    here.move(0, level + gap + 0.48, 0),
  );
  group.put(cylinder(0.85, 0.7, { sides: 34, bevel: 0.1 }), chrome, here.move(0, 9.5, 0));
  group.put(cylinder(0.62, 1.5, { sides: 30, bevel: 0.16 }), chrome, here.move(0, 10.1, 0));
  return group;
}
