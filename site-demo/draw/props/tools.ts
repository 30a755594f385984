import { lettered, sevenSegment } from "../lettering.ts";
import {
  aluminium,
  brass,
  chrome,
  darkSteel,
  machined,
  paint,
  paper,
  printed,
  rubber,
  steel,
} from "../materials.ts";
import { circle, hexagon, rectangle, roundedRectangle, smooth } from "../outline.ts";
import { flat, here } from "../pose.ts";
import type { Random } from "../random.ts";
import { box, curve, cylinder, extrude, face, lathe, quad, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { drawn } from "../texture.ts";
import { hex, type Vec2, type Vec3 } from "../vector.ts";

const black: Surface = { color: hex("#1b1d20"), roughness: 0.42, metal: false };
const redGrip: Surface = { color: hex("#b02a20"), roughness: 0.4, metal: false };

/**
 * A digital caliper lying flat, its beam along x, jaws towards the viewer.
 * The fixed jaw's face is at the origin and the sliding jaw `open` inches right of it.
 */
export async function caliper(reading: string, open: number): Promise<Group> {
  const group = new Group();
  const bar: Surface = { ...chrome, roughness: 0.24 };
  group.put(extrude(rectangle(-0.9, -0.31, 7.4, 0.31), 0.14, { bevel: 0.02 }), bar, flat);
  const fixed: Vec2[] = [
    [-0.9, -0.31],
    [-0.9, 0.31],
    [-0.62, 0.95],
    [-0.05, 1.05],
    [0, 0.31],
    [0, -0.31],
    [0, -1.62],
    [-0.1, -1.66],
    [-0.34, -1.0],
    [-0.62, -0.62],
  ];
  group.put(extrude(fixed, 0.17, { bevel: 0.02 }), bar, flat.move(0, 0, -0.015));
  const sliding: Vec2[] = [
    [0, -1.62],
    [0, 0.31],
    [0.05, 1.05],
    [0.5, 0.8],
    [0.62, 0.31],
    [0.72, -0.5],
    [0.36, -0.95],
    [0.1, -1.66],
  ];
  const slide = here.move(open, 0, 0);
  group.put(extrude(sliding, 0.17, { bevel: 0.02 }), bar, slide.within(flat).move(0, 0, -0.015));
  group.put(
    extrude(
      roundedRectangle(2.9, 1.24, 0.16).map(([x, y]): Vec2 => [x + 1.72, y + 0.02]),
      0.42,
      { bevel: 0.05 },
    ),
    black,
    slide.within(flat),
  );
  const digits = reading.replace(/[^\d.-]/g, "");
  const size = { width: 620, height: 250, ground: "#aebba2" };
  const lcd = await drawn(
    `<rect x="0" y="0" width="620" height="26" fill="#8d9a83" opacity="0.5"/>${sevenSegment(digits, 500, digits.length > 5 ? 66 : 52, digits.length > 5 ? 122 : 150, { color: "#15190f", ghost: "#a3b098" })}${lettered("in", 520, 140, 56, { color: "#15190f", pen: 0.16 })}`,
    size,
  );
  group.put(
    extrude(
      roundedRectangle(1.72, 0.78, 0.06).map(([x, y]): Vec2 => [x + 1.62, y + 0.08]),
      0.02,
      { bevel: 0.008 },
    ),
    { color: hex("#3a3d40"), roughness: 0.2, metal: false },
    slide.within(flat).move(0, 0, 0.42),
  );
  group.put(face(1.6, 0.645), printed(lcd, 1.6, 0.2), slide.within(flat).move(0.82, -0.24, 0.444));
  for (const [x, color] of [
    [2.78, "#c23b2c"],
    [2.98, "#e3e1da"],
  ] as const) {
    group.put(
      cylinder(0.075, 0.05, { bevel: 0.015 }),
      paint(color, 0.4),
      slide.move(x, 0.42, -0.24),
    );
  }
  group.put(
    cylinder(0.09, 0.05, { bevel: 0.015 }),
    paint("#3d6fb0", 0.4),
    slide.move(2.86, 0.42, 0.2),
  );
  group.put(
    cylinder(0.1, 0.14, { sides: 30, bevel: 0.03 }),
    machined(3),
    slide.move(1.3, 0.36, -0.66),
  );
  group.put(
    lathe(
      [
        [0, 0],
        [0.22, 0],
        [0.22, 0.16],
        [0, 0.16],
      ],
      30,
    ),
    machined(4),
    slide.move(3.1, 0.1, 0.56).turnX(90).move(0, -0.08, 0),
  );
  const ink = paint("#22252a", 0.8);
  for (let i = 0; i <= 60; i++) {
    const x = 1 + i * 0.1;
    const long = i % 10 === 0 ? 0.24 : i % 5 === 0 ? 0.17 : 0.11;
    if (x < open + 3.25) continue;
    group.put(
      quad(
        [x - 0.008, 0.1415, 0.28],
        [x + 0.008, 0.1415, 0.28],
        [x + 0.008, 0.1415, 0.28 - long],
        [x - 0.008, 0.1415, 0.28 - long],
      ),
      ink,
    );
  }
  return group;
}

/** An air drill lying on its side. */
export function drill(color = "#9aa0a4"): Group {
  const body: Surface = { color: hex(color), roughness: 0.28, metal: true };
  const handle = extrude(
    smooth(
      [
        [-0.5, 0.2],
        [0.85, 0.2],
        [0.6, -1.6],
        [0.75, -3.6],
        [0.5, -4.3],
        [-0.7, -4.2],
        [-0.75, -2.2],
      ],
      4,
    ),
    0.95,
    { bevel: 0.18 },
  );
  return new Group()
    .put(
      tube(
        [
          [-1.6, 0.85, 0],
          [-1.2, 0.85, 0],
          [1.8, 0.85, 0],
          [2.3, 0.85, 0],
        ],
        (t) => (t < 0.1 || t > 0.95 ? 0.55 : 0.8),
        { sides: 20 },
      ),
      body,
    )
    .put(handle, black, flat.move(0, -0.6, 0.38))
    .put(
      tube(
        [
          [2.3, 0.85, 0],
          [3.1, 0.85, 0],
          [3.5, 0.85, 0],
        ],
        (t) => 0.55 - 0.25 * t,
        { sides: 16 },
      ),
      darkSteel,
    )
    .put(
      tube(
        [
          [3.5, 0.85, 0],
          [6.1, 0.85, 0],
          [6.25, 0.85, 0],
        ],
        (t) => (t > 0.99 ? 0.01 : 0.06),
        { sides: 8 },
      ),
      steel,
    )
    .put(
      tube(
        [
          [-0.1, 0.85, 5],
          [-0.1, 0.85, 5.6],
        ],
        0.28,
        { sides: 10 },
      ),
      brass,
    );
}

/** A rivet gun with its set and spring, lying on its side. */
export function rivetGun(): Group {
  const spring: Vec3[] = [];
  for (let i = 0; i <= 110; i++) {
    const a = (i / 110) * 2 * Math.PI * 8;
    spring.push([2.7 + i * 0.011, 0.75 + 0.48 * Math.sin(a), 0.48 * Math.cos(a)]);
  }
  return new Group()
    .put(
      tube(
        [
          [-2.4, 0.75, 0],
          [-2.2, 0.75, 0],
          [2.6, 0.75, 0],
          [2.75, 0.75, 0],
        ],
        (t) => (t < 0.05 ? 0.55 : 0.72),
        { sides: 22 },
      ),
      { color: [0.5, 0.51, 0.52], roughness: 0.2, metal: true },
    )
    .put(
      extrude(
        smooth(
          [
            [-2.3, 0],
            [-0.6, 0.1],
            [-0.4, -1.4],
            [-0.7, -4],
            [-1.9, -4.1],
            [-2.5, -3.4],
            [-2.1, -1.8],
          ],
          4,
        ),
        0.95,
        { bevel: 0.2 },
      ),
      { color: [0.5, 0.51, 0.52], roughness: 0.3, metal: true },
      flat.move(0, -0.5, 0.3),
    )
    .put(
      extrude(
        smooth(
          [
            [-0.4, -0.8],
            [0.1, -0.9],
            [-0.05, -1.9],
            [-0.5, -2.1],
          ],
          4,
        ),
        0.35,
      ),
      darkSteel,
      flat.move(0, 0, 0.6),
    )
    .put(tube(spring, 0.06, { sides: 6 }), darkSteel)
    .put(
      tube(
        [
          [2.7, 0.75, 0],
          [4.4, 0.75, 0],
          [4.6, 0.75, 0],
          [5.1, 0.75, 0],
        ],
        (t) => (t > 0.55 ? 0.3 : 0.2),
        { sides: 14 },
      ),
      steel,
    )
    .put(
      tube(
        [
          [-1.3, 0.75, 4.4],
          [-1.3, 0.75, 5.2],
        ],
        0.26,
        { sides: 10 },
      ),
      brass,
    )
    .put(
      tube(
        curve(
          [
            [-1.3, 0.75, 5.2],
            [-1.1, 0.4, 7.5],
            [-4, 0.3, 9.5],
            [-12, 0.3, 9],
          ],
          10,
        ),
        0.24,
        { sides: 8 },
      ),
      redGrip,
    );
}

/** A block of tungsten or steel to buck against. */
export function buckingBar(): Group {
  return new Group().put(
    extrude(
      [
        [0, 0],
        [2.6, 0],
        [2.6, 0.7],
        [1.1, 1.4],
        [0, 1.4],
      ],
      1,
      { bevel: 0.06 },
    ),
    { color: [0.4, 0.4, 0.41], roughness: 0.28, metal: true },
    here.move(-1.3, 0, -0.5),
  );
}

/** A hand squeezer, lying on its side, yoke to the right. */
export function squeezer(): Group {
  const yoke = extrude(
    smooth(
      [
        [0, -0.7],
        [2.2, -0.9],
        [2.6, -0.6],
        [2.5, -0.2],
        [1.1, -0.25],
        [0.8, 0],
        [1.1, 0.3],
        [2.5, 0.3],
        [2.6, 0.75],
        [2.2, 1.05],
        [0, 0.8],
      ],
      3,
    ),
    0.6,
    { bevel: 0.08 },
  );
  const handle = (side: 1 | -1) =>
    tube(
      curve(
        [
          [0, 0.3, side * 0.45],
          [-2.5, 0.32, side * 1.1],
          [-6, 0.34, side * 1.7],
          [-10.5, 0.36, side * 2.2],
        ],
        6,
      ),
      (t) => 0.3 - 0.06 * t,
      { sides: 12 },
    );
  const grip = (side: 1 | -1) =>
    tube(
      curve(
        [
          [-5.6, 0.34, side * 1.64],
          [-8, 0.35, side * 1.96],
          [-10.9, 0.36, side * 2.24],
        ],
        6,
      ),
      0.38,
      { sides: 14 },
    );
  const group = new Group().put(
    yoke,
    { color: [0.42, 0.43, 0.45], roughness: 0.3, metal: true },
    flat,
  );
  for (const side of [1, -1] as const) group.put(handle(side), steel).put(grip(side), redGrip);
  return group
    .put(cylinder(0.16, 0.66, { bevel: 0.03 }), chrome, here.move(0.35, 0, -0.1))
    .put(cylinder(0.16, 0.66, { bevel: 0.03 }), chrome, here.move(-0.3, 0, 0.1))
    .put(
      tube(
        [
          [2.25, 0.3, -0.35],
          [2.25, 0.3, -0.1],
        ],
        0.12,
      ),
      chrome,
    )
    .put(
      tube(
        [
          [2.25, 0.3, 0.15],
          [2.25, 0.3, 0.4],
        ],
        0.12,
      ),
      chrome,
    );
}

/** A click torque wrench along x, its square drive at the origin pointing down, `y` the height of the drive. */
export function torqueWrench(): Group {
  const tube1: Surface = { ...chrome, roughness: 0.16 };
  const group = new Group()
    .put(
      lathe(
        [
          [0, 0],
          [0.55, 0],
          [0.62, 0.06],
          [0.62, 0.5],
          [0.55, 0.56],
          [0, 0.56],
        ],
        36,
      ),
      tube1,
      here.move(0, 0.1, 0),
    )
    .put(
      lathe(
        [
          [0, 0],
          [0.4, 0],
          [0.4, 0.05],
          [0.12, 0.06],
          [0, 0.06],
        ],
        30,
      ),
      darkSteel,
      here.move(0, 0.66, 0),
    )
    .put(
      tube(
        [
          [0.5, 0.38, 0],
          [0.9, 0.38, 0],
          [7.4, 0.38, 0],
        ],
        (t) => (t < 0.3 ? 0.3 : 0.27),
        { sides: 20 },
      ),
      tube1,
    )
    .put(
      tube(
        [
          [6.6, 0.38, 0],
          [6.75, 0.38, 0],
          [7.9, 0.38, 0],
          [8, 0.38, 0],
        ],
        (t) => (t < 0.05 || t > 0.97 ? 0.3 : 0.34),
        { sides: 24 },
      ),
      darkSteel,
    )
    .put(
      tube(
        [
          [8, 0.38, 0],
          [8.2, 0.38, 0],
          [11.6, 0.38, 0],
          [11.9, 0.38, 0],
        ],
        (t) => (t < 0.02 || t > 0.97 ? 0.34 : 0.42),
        { sides: 22 },
      ),
      black,
    );
  for (let i = 0; i < 12; i++) {
    const x = 8.5 + i * 0.24;
    group.put(
      lathe(
        [
          [0.44, 0],
          [0.44, 0.07],
        ],
        22,
      ),
      rubber("#111214"),
      here.move(x, 0.38, 0).turnZ(-90),
    );
  }
  return group;
}

/** A hexagon socket of so many flats, standing on the origin. */
export function socket(flats: number, height = 1): Group {
  return new Group().put(
    lathe(
      [
        [flats * 0.5, 0],
        [flats * 0.82, 0],
        [flats * 0.84, 0.05],
        [flats * 0.84, height * 0.5],
        [flats * 0.66, height * 0.58],
        [flats * 0.66, height],
        [0, height],
      ],
      30,
    ),
    chrome,
  );
}

/** A screw clamp holding what is at the origin against the bench: the screw comes down from above. */
export function screwClamp(opening: number, color = "#7e2b22"): Group {
  const frame = { color: hex(color), roughness: 0.45, metal: false };
  const arm: Vec2[] = [
    [-0.5, opening + 0.3],
    [0.5, opening + 0.3],
    [0.5, opening + 1.2],
    [-2.6, opening + 1.2],
    [-3.2, opening + 0.6],
    [-3.2, -1.7],
    [-2.7, -2.3],
    [0.3, -2.3],
    [0.3, -1.8],
    [-2.2, -1.7],
    [-2.4, -1.2],
    [-2.4, opening + 0.1],
    [-2, opening + 0.4],
  ];
  return new Group()
    .put(extrude(arm, 0.6, { bevel: 0.08 }), frame, here.move(0, 0, -0.3))
    .put(cylinder(0.22, 2.6, { sides: 16 }), steel, here.move(0, opening, 0))
    .put(cylinder(0.45, 0.22, { bevel: 0.05 }), steel, here.move(0, opening - 0.2, 0))
    .put(
      tube(
        [
          [-1, opening + 2.45, 0.2],
          [1, opening + 2.45, -0.2],
        ],
        0.11,
        { sides: 8 },
      ),
      steel,
    )
    .put(sphere(0.17, 10), steel, here.move(-1, opening + 2.45, 0.2))
    .put(sphere(0.17, 10), steel, here.move(1, opening + 2.45, -0.2));
}

/** A spring clamp gripping an edge at the origin from behind. */
export function springClamp(color = "#d27b1e"): Group {
  const jaw = (side: 1 | -1) =>
    tube(
      curve(
        [
          [0, side * 0.12, 0.5],
          [0, side * 0.5, -0.4],
          [0, side * 0.35, -1.2],
          [0, side * 1.1, -2.6],
          [0, side * 1.3, -3.6],
        ],
        5,
      ),
      (t) => 0.24 + 0.06 * t,
      { sides: 10 },
    );
  return new Group()
    .put(jaw(1), darkSteel)
    .put(jaw(-1), darkSteel)
    .put(
      tube(
        [
          [0, 1.0, -2.4],
          [0, 1.3, -3.7],
        ],
        0.34,
        { sides: 12 },
      ),
      { color: hex(color), roughness: 0.5, metal: false },
    )
    .put(
      tube(
        [
          [0, -1.0, -2.4],
          [0, -1.3, -3.7],
        ],
        0.34,
        { sides: 12 },
      ),
      { color: hex(color), roughness: 0.5, metal: false },
    )
    .put(
      lathe(
        [
          [0.42, -0.3],
          [0.42, 0.3],
        ],
        16,
      ),
      steel,
      here.move(0, 0, -1.2).turnZ(90),
    )
    .put(
      box(0.5, 0.14, 0.5, { bevel: 0.04 }),
      { color: hex(color), roughness: 0.5, metal: false },
      here.move(0, 0.04, 0.45),
    )
    .put(
      box(0.5, 0.14, 0.5, { bevel: 0.04 }),
      { color: hex(color), roughness: 0.5, metal: false },
      here.move(0, -0.18, 0.45),
    );
}

/** A desk lamp with a bell shade; its bulb glows. */
export function deskLamp(color: string, on: boolean): Group {
  const shade: Surface = { color: hex(color), roughness: 0.3, metal: false };
  const bulb: Surface = {
    color: [1, 1, 1],
    roughness: 0.3,
    metal: false,
    ...(on ? { glow: [7, 4.6, 2.4] as const } : {}),
  };
  return new Group()
    .put(cylinder(3.2, 0.7, { sides: 36, bevel: 0.2 }), shade)
    .put(
      tube(
        [
          [0, 0.6, 0],
          [-2.4, 9, 0],
        ],
        0.28,
        { sides: 10 },
      ),
      darkSteel,
    )
    .put(sphere(0.55, 14), darkSteel, here.move(-2.4, 9, 0))
    .put(
      tube(
        [
          [-2.4, 9, 0],
          [5, 15.5, 0],
        ],
        0.26,
        { sides: 10 },
      ),
      darkSteel,
    )
    .put(sphere(0.5, 14), darkSteel, here.move(5, 15.5, 0))
    .put(
      lathe(
        [
          [0.7, 0],
          [0.9, -0.6],
          [1.2, -1.4],
          [2.9, -3.8],
          [3.05, -4],
          [2.9, -3.95],
          [1.1, -1.6],
          [0.6, -0.5],
        ],
        36,
      ),
      shade,
      here.move(5.3, 15.6, 0).turnZ(22),
    )
    .put(sphere(1.05, 20), bulb, here.move(6.2, 13, 0));
}

/** A notebook lying open, ruled and written on in a hand nobody can read. */
export async function notebook(random: Random): Promise<Group> {
  let lines = "";
  for (let page = 0; page < 2; page++) {
    for (let row = 0; row < 15; row++) {
      const y = 60 + row * 36;
      const x = 40 + page * 420;
      lines += `<path d="M${x} ${y}h350" stroke="#b9c7d6" stroke-width="2"/>`;
      if (row > 11 && page === 1) continue;
      let d = "";
      let at = x + 6;
      while (at < x + 180 + random.next() * 160) {
        const w = random.between(14, 52);
        d += `M${at} ${y - 6}`;
        for (let k = 0; k < w; k += 7) d += `q3 ${-random.between(6, 20)} 5 0t2 ${random.sway(4)}`;
        at += w + 12;
      }
      lines += `<path d="${d}" fill="none" stroke="#2a3550" stroke-width="3" stroke-linecap="round"/>`;
    }
  }
  const pages = await drawn(`${lines}<path d="M420 0v600" stroke="#00000030" stroke-width="18"/>`, {
    width: 840,
    height: 600,
    ground: "#f1ead8",
  });
  return new Group()
    .put(box(8.6, 0.25, 6.2, { bevel: 0.08 }), paint("#2d3a35", 0.8))
    .put(box(8.3, 0.22, 5.9, { bevel: 0.05 }), paper(), here.move(0, 0.2, 0))
    .put(face(8.3, 5.93), printed(pages, 8.3), flat.move(-4.15, -2.96, 0.425));
}

/** Ear defenders standing on the bench on their cups. */
export function earDefenders(color = "#b6381f"): Group {
  const cup: Surface = { color: hex(color), roughness: 0.35, metal: false };
  const band: Vec3[] = [];
  for (let i = 0; i <= 20; i++) {
    const a = (i / 20) * Math.PI;
    band.push([2.9 * Math.cos(a), 1.6 + 4.4 * Math.sin(a), 0]);
  }
  const group = new Group().put(tube(band, 0.28, { sides: 8 }), black);
  for (const side of [1, -1]) {
    group
      .put(
        lathe(
          [
            [0, 0.9],
            [1.1, 0.8],
            [1.55, 0.35],
            [1.6, 0],
          ],
          26,
        ),
        cup,
        here
          .move(side * 2.7, 1.75, 0)
          .size(1, 1.1, 1)
          .turnZ(-side * 90),
      )
      .put(
        lathe(
          [
            [1.6, 0],
            [1.55, -0.5],
            [1, -0.6],
          ],
          26,
        ),
        black,
        here
          .move(side * 2.7, 1.75, 0)
          .size(1, 1.1, 1)
          .turnZ(-side * 90),
      );
  }
  return group;
}

/** Safety glasses lying open. */
export function glasses(): Group {
  const lens: Surface = { color: hex("#aab9bd"), roughness: 0.06, metal: false };
  const group = new Group();
  for (const side of [1, -1]) {
    group
      .put(
        extrude(roundedRectangle(2.3, 1.7, 0.7), 0.06),
        lens,
        here.move(side * 1.35, 1, 0).turnX(-6),
      )
      .put(
        tube(
          curve(
            [
              [side * 2.55, 1.3, 0],
              [side * 2.7, 1.2, -2],
              [side * 2.6, 0.9, -4],
              [side * 2.4, 0.2, -5.2],
            ],
            5,
          ),
          0.1,
          { sides: 6 },
        ),
        black,
      );
  }
  return group.put(
    tube(
      [
        [-0.3, 1.3, 0],
        [0.3, 1.3, 0],
      ],
      0.1,
    ),
    black,
  );
}

/** A hand countersink or deburring cutter: a wooden or plastic knob with a cutter on its shank; points along -y from the origin. */
export function deburringTool(color = "#c4921e"): Group {
  return new Group()
    .put(
      lathe(
        [
          [0, 3.3],
          [0.35, 3.25],
          [0.52, 3],
          [0.56, 2.2],
          [0.46, 1.6],
          [0.42, 1.2],
          [0.5, 0.98],
          [0.3, 0.9],
          [0.2, 0.88],
        ],
        26,
      ),
      { color: hex(color), roughness: 0.25, metal: false },
    )
    .put(cylinder(0.13, 0.5, { sides: 14 }), steel, here.move(0, 0.42, 0))
    .put(
      lathe(
        [
          [0, 0],
          [0.24, 0.24],
          [0.24, 0.42],
          [0.13, 0.46],
        ],
        18,
      ),
      { color: [0.5, 0.45, 0.34], roughness: 0.2, metal: true },
    );
}

/** A roll of tape standing on its side or lying down. */
export function tapeRoll(color = "#e2cf9c"): Group {
  return new Group()
    .put(
      lathe(
        [
          [1.3, 0],
          [2.1, 0],
          [2.1, 1],
          [1.3, 1],
          [1.3, 0],
        ],
        40,
      ),
      { color: hex(color), roughness: 0.6, metal: false },
    )
    .put(
      lathe(
        [
          [1.22, 0],
          [1.31, 0],
          [1.31, 1],
          [1.22, 1],
          [1.22, 0],
        ],
        40,
      ),
      paint("#a98a5e", 0.8),
    );
}

/** A small pair of snips, lying flat. */
export function snips(): Group {
  const handle = (side: 1 | -1) =>
    tube(
      curve(
        [
          [0, 0.3, side * 0.2],
          [-2, 0.3, side * 0.5],
          [-4, 0.32, side * 1.2],
          [-7.4, 0.34, side * 1.1],
        ],
        6,
      ),
      0.3,
      { sides: 10 },
    );
  return new Group()
    .put(handle(1), { color: hex("#2a6b45"), roughness: 0.4, metal: false })
    .put(handle(-1), { color: hex("#2a6b45"), roughness: 0.4, metal: false })
    .put(
      extrude(
        [
          [-0.6, -0.5],
          [0.6, -0.6],
          [2.6, -0.05],
          [2.6, 0.1],
          [0.6, 0.6],
          [-0.6, 0.5],
        ],
        0.35,
        { bevel: 0.05 },
      ),
      steel,
      flat.move(0, 0, 0.14),
    )
    .put(cylinder(0.22, 0.2, { bevel: 0.04 }), darkSteel, here.move(0, 0.45, 0));
}

/** A ball-peen hammer lying down. */
export function hammer(): Group {
  return new Group()
    .put(
      tube(
        [
          [0, 0.55, 0],
          [4, 0.5, 0],
          [11, 0.45, 0],
        ],
        (t) => 0.34 + 0.14 * t,
        { sides: 14 },
      ),
      { color: hex("#b98a52"), roughness: 0.4, metal: false },
    )
    .put(
      tube(
        [
          [0, 0.6, -1.9],
          [0, 0.6, -1.6],
          [0, 0.6, -0.6],
          [0, 0.6, 0.8],
        ],
        (t) => (t < 0.1 ? 0.5 : 0.58),
        { sides: 20 },
      ),
      steel,
    )
    .put(sphere(0.62, 18), steel, here.move(0, 0.6, 1.4));
}

/** A scriber lying along x. */
export function scriber(): Group {
  return new Group()
    .put(
      tube(
        [
          [0, 0.16, 0],
          [0.1, 0.16, 0],
          [3.6, 0.16, 0],
          [3.9, 0.14, 0],
        ],
        (t) => (t > 0.9 ? 0.1 : 0.16),
        { sides: 14 },
      ),
      { ...chrome, roughness: 0.3 },
    )
    .put(
      tube(
        [
          [3.9, 0.13, 0],
          [5.5, 0.02, 0],
        ],
        (t) => 0.07 * (1 - t) + 0.004,
        { sides: 8 },
      ),
      steel,
    );
}

/** A try square lying flat, inside corner at the origin. */
export function trySquare(): Group {
  return new Group()
    .put(
      box(0.9, 0.7, 4, { bevel: 0.05 }),
      { color: hex("#5d3a22"), roughness: 0.35, metal: false },
      here.move(-0.45, 0, -2),
    )
    .put(box(6, 0.08, 1.2, { bevel: 0.01 }), steel, here.move(2.6, 0.3, -0.6))
    .put(box(0.92, 0.1, 4, {}), brass, here.move(-0.45, 0.66, -2).size(0.3, 1, 1));
}

/** A pair of locking pliers for clecos, lying flat. */
export function clecoPliers(): Group {
  const arm = (side: 1 | -1) =>
    tube(
      curve(
        [
          [1.2, 0.3, side * 0.15],
          [0, 0.3, side * 0.5],
          [-2.4, 0.3, side * 1.05],
          [-5.4, 0.3, side * 0.95],
        ],
        6,
      ),
      0.26,
      { sides: 10 },
    );
  return new Group()
    .put(arm(1), { color: hex("#26477e"), roughness: 0.4, metal: false })
    .put(arm(-1), { color: hex("#26477e"), roughness: 0.4, metal: false })
    .put(
      extrude(
        smooth(
          [
            [-0.2, -0.45],
            [1.4, -0.4],
            [2.1, -0.14],
            [2.1, 0.14],
            [1.4, 0.4],
            [-0.2, 0.45],
          ],
          4,
        ),
        0.5,
        { bevel: 0.08 },
      ),
      steel,
      flat.move(0, 0, 0.06),
    );
}

/** A file with a wooden handle, lying along x. */
export function file(): Group {
  return new Group()
    .put(box(6.5, 0.18, 0.8, { bevel: 0.02 }), darkSteel, here.move(2.4, 0.3, 0))
    .put(
      tube(
        [
          [-0.8, 0.4, 0],
          [-1.2, 0.4, 0],
          [-2.6, 0.4, 0],
          [-4.2, 0.4, 0],
          [-4.4, 0.4, 0],
        ],
        (t) => (t < 0.1 ? 0.26 : t > 0.95 ? 0.2 : 0.42),
        { sides: 16 },
      ),
      { color: hex("#b07c3f"), roughness: 0.35, metal: false },
    );
}

/** A bench vice, jaws along x. */
export function vice(): Group {
  const iron: Surface = { color: hex("#33506a"), roughness: 0.42, metal: false };
  return new Group()
    .put(box(4.6, 1, 6.5, { bevel: 0.15, round: 0.6 }), iron)
    .put(box(3, 2.4, 4.4, { bevel: 0.2, round: 0.4 }), iron, here.move(0, 0.9, -0.4))
    .put(box(4.6, 2, 1.4, { bevel: 0.15 }), iron, here.move(0, 2.9, -0.9))
    .put(box(4.6, 2, 1.4, { bevel: 0.15 }), iron, here.move(0, 2.9, 1.6))
    .put(box(4.5, 0.9, 0.3, { bevel: 0.03 }), steel, here.move(0, 4.05, -0.2))
    .put(box(4.5, 0.9, 0.3, { bevel: 0.03 }), steel, here.move(0, 4.05, 0.9))
    .put(
      tube(
        [
          [0, 2.2, 2.2],
          [0, 2.2, 5.2],
        ],
        0.5,
        { sides: 16 },
      ),
      steel,
    )
    .put(
      tube(
        [
          [-2.6, 1.9, 5],
          [2.6, 2.5, 5],
        ],
        0.2,
        { sides: 10 },
      ),
      steel,
    );
}

/** A small cardboard box of rivets, open. */
export function rivetBox(random: Random): Group {
  const card = paint("#b08f63", 0.9);
  const group = new Group().put(box(3, 0.08, 2.2), card);
  for (const [x, z, w, d] of [
    [0, 1.1, 3, 0.06],
    [0, -1.1, 3, 0.06],
    [1.5, 0, 0.06, 2.2],
    [-1.5, 0, 0.06, 2.2],
  ] as const) {
    group.put(box(w, 1, d), card, here.move(x, 0, z));
  }
  const one = lathe(
    [
      [0, 0],
      [0.09, 0.02],
      [0.09, 0.07],
      [0.046, 0.08],
      [0.046, 0.36],
      [0, 0.36],
    ],
    8,
  );
  const gold: Surface = { color: hex("#cdb87a"), roughness: 0.3, metal: true };
  for (let i = 0; i < 190; i++) {
    group.put(
      one,
      gold,
      here
        .move(random.sway(1.35), 0.35 + random.between(0, 0.3), random.sway(1))
        .turnY(random.between(0, 360))
        .turnX(random.between(40, 140)),
    );
  }
  return group;
}

/** A mechanic's reamer or number drill, lying along x. */
export function reamer(): Group {
  return new Group()
    .put(
      tube(
        [
          [0, 0.12, 0],
          [3.4, 0.12, 0],
        ],
        0.07,
        { sides: 10 },
      ),
      chrome,
    )
    .put(
      tube(
        [
          [3.4, 0.12, 0],
          [5.6, 0.12, 0],
          [5.7, 0.12, 0],
        ],
        (t) => (t > 0.98 ? 0.03 : 0.078),
        { sides: 6 },
      ),
      steel,
    );
}

/** A shallow tin tray. */
export function tray(): Group {
  const tin = aluminium(4, 10);
  const group = new Group().put(box(8, 0.06, 5), tin);
  for (const [x, z, w, d] of [
    [0, 2.5, 8, 0.06],
    [0, -2.5, 8, 0.06],
    [4, 0, 0.06, 5],
    [-4, 0, 0.06, 5],
  ] as const)
    group.put(box(w, 0.9, d), tin, here.move(x, 0, z));
  return group;
}

/** Curls of swarf scattered over a patch. */
export function swarf(random: Random, width: number, depth: number, count: number): Group {
  const group = new Group();
  for (let i = 0; i < count; i++) {
    const turns = random.between(0.8, 2.6);
    const r = random.between(0.03, 0.09);
    const path: Vec3[] = [];
    for (let k = 0; k <= 14; k++) {
      const a = (k / 14) * turns * 2 * Math.PI;
      path.push([r * Math.cos(a), r + r * Math.sin(a), k * 0.012]);
    }
    group.put(
      tube(path, 0.008, { sides: 4 }),
      chrome,
      here
        .move(random.sway(width / 2), 0.005, random.sway(depth / 2))
        .turnY(random.between(0, 360)),
    );
  }
  return group;
}

/** A nut, for scattering. */
export function nut(across: number): Group {
  return new Group().put(
    extrude(hexagon(across), across * 0.5, {
      holes: [circle(0, 0, across * 0.28)],
      bevel: across * 0.05,
    }),
    brass,
    flat,
  );
}
