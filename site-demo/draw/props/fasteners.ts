import { cadmium, clecoColor, darkSteel, goldRivet, machined, steel } from "../materials.ts";
import { circle, hexagon } from "../outline.ts";
import { here } from "../pose.ts";
import { box, cylinder, extrude, lathe, type Shape, upright } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";

/** Hole sizes by their trade names, inches. */
export const holeDiameter: Readonly<Record<string, number>> = {
  "3/32": 0.098,
  "1/8": 0.1285,
  "5/32": 0.159,
  "3/16": 0.191,
};

const clecoBody = lathe(
  [
    [0.1, 0],
    [0.18, 0.03],
    [0.205, 0.08],
    [0.205, 0.62],
    [0.18, 0.68],
    [0.16, 0.7],
    [0.16, 0.76],
    [0.18, 0.78],
    [0.18, 0.84],
    [0.1, 0.87],
    [0.095, 0.9],
    [0.095, 1.05],
    [0.13, 1.09],
    [0.14, 1.14],
    [0.12, 1.19],
    [0, 1.21],
  ],
  14,
);
const clecoPlain = lathe(
  [
    [0.12, 0],
    [0.2, 0.06],
    [0.2, 0.64],
    [0.15, 0.72],
    [0.15, 0.84],
    [0.09, 0.88],
    [0.11, 1.12],
    [0, 1.2],
  ],
  8,
);
const clecoTip = cylinder(0.05, 0.24, { sides: 8 });
const clecoCollar = lathe(
  [
    [0.105, 0],
    [0.105, 0.16],
    [0.075, 0.18],
    [0, 0.18],
  ],
  12,
);

/** A cleco holding the sheet at the origin, its body along y; `plain` for pictures that see many from afar. */
export function cleco(size: string, plain = false): Group {
  const body = clecoColor[size] ?? steel;
  const group = new Group();
  if (plain) return group.put(clecoPlain, body).put(clecoTip, steel, here.move(0, -0.2, 0));
  return group
    .put(clecoBody, body)
    .put(clecoCollar, darkSteel, here.move(0, 0.88, 0))
    .put(
      lathe(
        [
          [0.142, 1.08],
          [0.15, 1.12],
          [0.142, 1.17],
          [0.06, 1.215],
          [0, 1.215],
        ],
        12,
      ),
      steel,
    )
    .put(clecoTip, darkSteel, here.move(0, -0.22, 0));
}

/** A round factory head of a rivet so thick, standing on the origin. */
export function factoryHead(diameter: number, sides = 16): Shape {
  const r = diameter;
  return lathe(
    [
      [r, 0],
      [r * 0.985, diameter * 0.12],
      [r * 0.9, diameter * 0.26],
      [r * 0.72, diameter * 0.36],
      [r * 0.45, diameter * 0.42],
      [0, diameter * 0.44],
    ],
    sides,
  );
}

/** A driven head: a flat barrel, 1.5 diameters across and half a diameter high, unless it went wrong. */
export function shopHead(diameter: number, { lean = 0, flat = 1, sides = 20 } = {}): Shape {
  const r = diameter * 0.75 * (1 + (1 - flat) * 0.55);
  const h = diameter * 0.52 * flat;
  const shape = lathe(
    [
      [r * 0.9, 0],
      [r * 0.99, h * 0.25],
      [r, h * 0.5],
      [r * 0.98, h * 0.78],
      [r * 0.9, h * 0.96],
      [r * 0.82, h],
      [r * 0.3, h * 1.01],
      [0, h],
    ],
    sides,
  );
  if (!lean) return shape;
  // A clinched head is pushed over: its top slides and drops on one side.
  return shape.map((corner) => {
    const [x, y, z] = corner.at;
    const share = y / h;
    return {
      ...corner,
      at: [x + lean * share * r, y * (1 - 0.34 * lean * (x / r)), z * (1 + 0.12 * lean * share)],
    };
  });
}

/** The skin round a flush rivet: a disc with a fine ring, only seen when raked by light. */
export function flushHead(diameter: number, sides = 14): Shape {
  const r = diameter;
  return lathe(
    [
      [r, 0],
      [r * 0.94, 0.004 * (diameter / 0.094)],
      [0, 0.005 * (diameter / 0.094)],
    ],
    sides,
  );
}

/** A dark spot that reads as a drilled hole from above. */
export function holeMark(diameter: number, sides = 14): Shape {
  return lathe(
    [
      [diameter / 2, 0],
      [0, 0],
    ],
    sides,
  ).map((corner) => ({ ...corner, normal: [0, 1, 0] as const }));
}

export const goldSurface: Surface = goldRivet;

/** A hexagon bolt head with its washer, standing on the origin. */
export function boltHead(diameter: number): Group {
  const flats = diameter * 1.75;
  const head = upright(extrude(hexagon(flats), diameter * 0.5, { bevel: diameter * 0.05 }));
  return new Group()
    .put(cylinder(flats * 0.62, diameter * 0.16, { sides: 32, bevel: 0.01 }), machined(5))
    .put(head, cadmium, here.move(0, diameter * 0.16, 0));
}

/** A nut on its washer with the bolt's end standing out, on the origin. */
export function nutAndEnd(diameter: number, turned = 0): Group {
  const flats = diameter * 1.75;
  const nut = upright(
    extrude(hexagon(flats), diameter * 0.85, {
      bevel: diameter * 0.07,
      holes: [circle(0, 0, diameter * 0.5)],
    }),
  );
  const pitch = diameter * 0.11;
  const thread: [number, number][] = [];
  const turns = 9;
  for (let i = 0; i < turns; i++) {
    thread.push([diameter * 0.49, i * pitch], [diameter * 0.42, (i + 0.5) * pitch]);
  }
  thread.push([diameter * 0.4, turns * pitch], [0, turns * pitch]);
  return new Group()
    .put(cylinder(flats * 0.66, diameter * 0.16, { sides: 36, bevel: 0.012 }), machined(6))
    .put(nut, cadmium, here.move(0, diameter * 0.16, 0).turnY(turned))
    .put(
      lathe(
        [
          [diameter * 0.62, 0],
          [diameter * 0.6, diameter * 0.22],
          [diameter * 0.5, diameter * 0.26],
        ],
        32,
      ),
      cadmium,
      here.move(0, diameter * 0.98, 0),
    )
    .put(lathe(thread, 28), cadmium, here.move(0, diameter * 0.5, 0));
}

/** The four sizes with their hole diameters, for picking one. */
export const clecoSizes: readonly (readonly [size: string, hole: number])[] =
  Object.entries(holeDiameter);

/** A small block, for holding things up. */
export function block(width: number, height: number, depth: number): Shape {
  return box(width, height, depth, { bevel: Math.min(width, height, depth) * 0.05 });
}
