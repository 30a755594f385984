import {
  aluminium,
  boards,
  brass,
  chrome,
  clecoColor,
  concrete,
  cuttingMat,
  darkSteel,
  maskingTape,
  matte,
  paint,
  paper,
  plywood,
  rubber,
  steel,
} from "../materials.ts";
import { circle, rectangle, roundedRectangle, smooth } from "../outline.ts";
import { flat, here } from "../pose.ts";
import type { Random } from "../random.ts";
import { box, curve, cylinder, extrude, lathe, quad, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { hex, type Vec2 } from "../vector.ts";
import { cleco } from "./fasteners.ts";

/** What the bench is topped with. */
export type BenchTop = "boards" | "oak" | "plywood" | "mat" | "grey" | "carpet";

/** The surface of a bench top. */
function benchTop(top: BenchTop, seed: number): Surface {
  switch (top) {
    case "boards":
      return boards(seed, { light: "#cfa36b", dark: "#94673a" });
    case "oak":
      return boards(seed, { light: "#a9753f", dark: "#5f3c1e", width: 4.2 });
    case "plywood":
      return plywood(seed, "#c9a577");
    case "mat":
      return cuttingMat(seed);
    case "grey":
      return matte("#7d8488", seed, 0.55);
    case "carpet":
      return matte("#4c5258", seed, 0.98);
  }
}

/** A top that suits the picture's chance. */
export function anyTop(
  random: Random,
  tops: readonly BenchTop[] = ["boards", "oak", "plywood", "grey"],
): Surface {
  return benchTop(random.pick(tops), random.whole(1, 999));
}

/**
 * A bench with its top at height 0, seen from the front, and the wall behind it.
 *
 * @param scale 1 for a picture a foot or two across; smaller brings the wall
 *   and the things in front of it nearer for closer pictures.
 */
export function benchWithWall(
  random: Random,
  {
    top,
    scale = 1,
    night = false,
    clutter = true,
  }: { top: Surface; scale?: number; night?: boolean; clutter?: boolean },
): Group {
  const group = new Group();
  const [width, front, back] = [140 * scale, 70 * scale, -26 * scale];
  const y = 0;
  group.put(
    quad(
      [-width / 2, y, front],
      [width / 2, y, front],
      [width / 2, y, back],
      [-width / 2, y, back],
    ),
    top,
  );
  group.put(
    quad(
      [-width / 2, -2.5, front],
      [width / 2, -2.5, front],
      [width / 2, 0, front],
      [-width / 2, 0, front],
    ),
    top,
  );
  group.place(backWall(random.branch("wall"), night), here.move(0, 0, back).size(scale));
  if (clutter) {
    group.place(
      clutterRow(random.branch("clutter"), 52),
      here.move(0, 0, back + 5 * scale).size(scale),
    );
  }
  return group;
}

/** A wall at z 0 behind the bench: boards or paint, a pegboard with tools, perhaps a window. */
function backWall(random: Random, night: boolean): Group {
  const group = new Group();
  const wall = random.pick([
    paint("#b9b4a6", 0.9),
    paint("#9fa9a6", 0.9),
    paint("#c7bca6", 0.9),
    boards(random.whole(1, 99), { light: "#b99468", dark: "#8d683f", width: 7, worn: 0.3 }),
  ]);
  group.put(quad([-160, -40, 0], [160, -40, 0], [160, 110, 0], [-160, 110, 0]), wall);
  const shift = random.sway(14);
  const peg = random.pick(["#a98256", "#8f7350", "#c9b38a", "#67766f"]);
  group.put(box(54, 26, 0.5), matte(peg, 3), here.move(-16 + shift, 7, 0.3));
  const tools = hangingTools(random);
  tools.forEach((tool, i) => {
    group.place(
      tool,
      here.move(-38 + shift + i * 7.2 + random.sway(1), 28 + random.sway(1.5), 0.9),
    );
  });
  if (random.chance(0.7)) group.place(windowIn(night), here.move(32 + shift, 10, 0.2));
  else group.place(shelfOfTins(random), here.move(34 + shift, 12, 4));
  return group;
}

/** A window with four panes; bright by day, deep blue by night. */
function windowIn(night: boolean, width = 30, height = 32): Group {
  const glass: Surface = {
    color: [1, 1, 1],
    roughness: 0.2,
    metal: false,
    shadowless: true,
    glow: night ? hex("#16233f") : [1.5, 1.62, 1.75],
  };
  const frame = paint("#d8d2c4", 0.6);
  const group = new Group();
  group.put(quad([0, 0, 0.1], [width, 0, 0.1], [width, height, 0.1], [0, height, 0.1]), glass);
  for (const x of [0, width / 2, width]) {
    group.put(box(1.6, height + 1.6, 1.4), frame, here.move(x, -0.8, 0.6));
  }
  for (const y of [0, height / 2, height]) {
    group.put(box(width + 1.6, 1.6, 1.4), frame, here.move(width / 2, y - 0.8, 0.6));
  }
  group.put(box(width + 4, 1, 4), frame, here.move(width / 2, -1.6, 2));
  return group;
}

function hangingTools(random: Random): Group[] {
  const wood = boards(4, { width: 20, gap: false, worn: 0.2 });
  const grips = ["#b3261e", "#22467f", "#d08a1d", "#2e2f33"].map((c) => paint(c, 0.5));
  const grip = () => random.pick(grips);
  const pliers = () => {
    const g = grip();
    const arm = (side: 1 | -1) =>
      tube(
        curve(
          [
            [side * 0.3, 0, 0],
            [side * 0.5, -3, 0],
            [side * 1.2, -5, 0],
            [side * 0.9, -8.4, 0],
          ],
          4,
        ),
        0.38,
        { sides: 6 },
      );
    return new Group()
      .put(arm(1), g)
      .put(arm(-1), g)
      .put(
        extrude(
          smooth(
            [
              [-0.5, 0],
              [-0.7, -1.4],
              [0.7, -1.4],
              [0.5, 0],
              [0.25, 2],
              [-0.25, 2],
            ],
            3,
          ),
          0.4,
        ),
        steel,
        here.move(0, 0, -0.2),
      );
  };
  const hammer = () =>
    new Group()
      .put(cylinder(0.42, 11), wood, here.move(0, -10.5, 0))
      .put(box(4.2, 1.2, 1.1, { round: 0.4 }), darkSteel, here.move(0.3, 0, 0));
  const snips = () => {
    const g = grip();
    return new Group()
      .put(
        tube(
          curve(
            [
              [0.3, -1, 0],
              [1.3, -4, 0],
              [1.1, -8, 0],
            ],
            4,
          ),
          0.35,
          { sides: 6 },
        ),
        g,
      )
      .put(
        tube(
          curve(
            [
              [-0.3, -1, 0],
              [-1.3, -4, 0],
              [-1.1, -8, 0],
            ],
            4,
          ),
          0.35,
          { sides: 6 },
        ),
        g,
      )
      .put(
        extrude(
          [
            [-0.7, -1.4],
            [0.7, -1.4],
            [0.2, 2.6],
            [-0.2, 2.6],
          ],
          0.35,
        ),
        steel,
        here.move(0, 0, -0.15),
      );
  };
  const clamp = () =>
    new Group()
      .put(
        tube(
          curve(
            [
              [-1.5, -5, 0],
              [1.4, -5, 0],
              [1.6, 0, 0],
              [-1.5, 0, 0],
            ],
            4,
          ),
          0.34,
          { sides: 6 },
        ),
        darkSteel,
      )
      .put(cylinder(0.25, 4), steel, here.move(-1.5, -7, 0));
  const square = () =>
    new Group()
      .put(box(1, 9, 0.15), steel, here.move(0, -8, 0))
      .put(box(5, 1, 0.8), wood, here.move(2, 0, 0));
  const file = () =>
    new Group()
      .put(box(0.9, 8, 0.2), darkSteel, here.move(0, -9, 0))
      .put(cylinder(0.55, 3.6, { bevel: 0.2 }), wood, here.move(0, -1, 0));
  const level = () =>
    new Group().put(box(1.8, 14, 0.8), paint("#c69c1d", 0.4), here.move(0, -13, 0));
  const kinds = [pliers, hammer, snips, clamp, square, file, pliers, level];
  return Array.from({ length: 7 }, () => random.pick(kinds)());
}

/** A shelf of tins and boxes. */
function shelfOfTins(random: Random): Group {
  const group = new Group().put(box(36, 0.9, 8), plywood(9), here.move(0, -0.9, 0));
  let x = -16;
  while (x < 15) {
    const item = anyTin(random);
    group.place(item, here.move(x, 0, random.sway(1.5)));
    x += random.between(4.4, 7);
  }
  return group;
}

/** A tin, a bottle, a box or a jar. */
export function anyTin(random: Random): Group {
  const colors = ["#b7b3a8", "#2f5d8a", "#8b9a38", "#b5462d", "#d9c27a", "#3b3f45", "#6d8f7d"];
  const color = random.pick(colors);
  const h = random.between(3.5, 7.5);
  const r = random.between(1.4, 2.5);
  switch (random.whole(0, 3)) {
    case 0:
      return new Group()
        .put(cylinder(r, h, { bevel: 0.12 }), paint(color, 0.4))
        .put(cylinder(r * 0.94, 0.3), steel, here.move(0, h, 0));
    case 1:
      return new Group()
        .put(cylinder(r * 0.66, h, { bevel: 0.2 }), paint(color, 0.35))
        .put(cylinder(r * 0.3, 0.9), paint("#ece7da"), here.move(0, h, 0));
    case 2:
      return new Group().put(
        box(r * 2, h * 0.7, r * 1.6, { bevel: 0.06 }),
        paint(color, 0.8),
        here.turnY(random.sway(14)),
      );
    default:
      return new Group()
        .put(cylinder(r * 0.9, h * 0.8), { color: hex("#c9d6d2"), roughness: 0.12, metal: false })
        .put(cylinder(r * 0.95, 0.7), steel, here.move(0, h * 0.8, 0));
  }
}

/** A tin can full of clecos. */
export function clecoTin(size: string, random: Random): Group {
  const group = new Group().put(
    lathe(
      [
        [0, 0],
        [1.5, 0],
        [1.5, 3.2],
        [1.56, 3.25],
        [1.5, 3.3],
        [1.42, 3.25],
        [1.42, 0.4],
        [0, 0.4],
      ],
      28,
    ),
    aluminium(8, 9),
  );
  for (let i = 0; i < 16; i++) {
    const angle = i * 2.4;
    const r = 1.15 * Math.sqrt(i / 16);
    group.place(
      cleco(size, true),
      here
        .move(r * Math.cos(angle), 2.5 + random.sway(0.25), r * Math.sin(angle))
        .turnY(random.between(0, 360))
        .turnX(random.between(4, 38)),
    );
  }
  return group;
}

/** A row of things along the back of a bench, `width` inches long. */
function clutterRow(random: Random, width: number): Group {
  const group = new Group();
  let x = -width / 2;
  while (x < width / 2) {
    const kind = random.whole(0, 6);
    const z = random.sway(2.4);
    const pose = here.move(x, 0, z);
    if (kind === 0) group.place(clecoTin(random.pick(Object.keys(clecoColor)), random), pose);
    else if (kind === 1) {
      group.put(
        lathe(
          [
            [1, 0],
            [2, 0],
            [2, 0.9],
            [1, 0.9],
            [1, 0],
          ],
          28,
        ),
        maskingTape(3, random.pick(["#e2cf9c", "#3f6fb5", "#b9c4a0"])),
        pose,
      );
    } else if (kind === 2) {
      group.put(
        box(5.5, 4.6, 4, { bevel: 0.06 }),
        paint(random.pick(["#7b8f9c", "#98593f", "#56614f"]), 0.6),
        pose,
      );
      for (let row = 0; row < 3; row++) {
        for (let column = 0; column < 2; column++) {
          group.put(
            box(2.4, 1.2, 0.3, { bevel: 0.05 }),
            { color: hex("#c6cbc6"), roughness: 0.25, metal: false },
            pose.move(-1.32 + column * 2.64, 0.25 + row * 1.45, 2),
          );
        }
      }
    } else if (kind === 3) group.place(mug(random), pose.turnY(random.between(0, 360)));
    else group.place(anyTin(random), pose);
    x += random.between(4.6, 8.5);
  }
  return group;
}

/** A mug, half full. */
export function mug(random: Random): Group {
  const glaze: Surface = {
    color: hex(random.pick(["#e9e2d2", "#3d5a73", "#8c3b2e", "#44574a"])),
    roughness: 0.12,
    metal: false,
  };
  const wall: Vec2[] = [
    [0, 0],
    [1.35, 0],
    [1.5, 0.12],
    [1.6, 0.5],
    [1.62, 3.5],
    [1.56, 3.58],
    [1.49, 3.5],
    [1.47, 0.4],
    [0, 0.35],
  ];
  return new Group()
    .put(lathe(wall, 40), glaze)
    .put(
      tube(
        curve(
          [
            [1.55, 2.9, 0],
            [2.3, 2.95, 0],
            [2.65, 2.1, 0],
            [2.35, 1.1, 0],
            [1.55, 0.8, 0],
          ],
          6,
        ),
        0.24,
        { sides: 10 },
      ),
      glaze,
    )
    .put(
      cylinder(1.47, 0.02, { sides: 40 }),
      { color: hex("#2a1508"), roughness: 0.05, metal: false },
      here.move(0, 2.7, 0),
    );
}

/** A floor with a wall at z -`depth`, for things too large for the bench; the floor is at height 0. */
export function shopFloor(
  random: Random,
  {
    depth = 90,
    night = false,
    clear = false,
  }: { depth?: number; night?: boolean; clear?: boolean } = {},
): Group {
  const group = new Group();
  group.put(
    quad([-420, 0, 330], [420, 0, 330], [420, 0, -depth], [-420, 0, -depth]),
    concrete(random.whole(1, 99)),
  );
  const wall = random.pick([paint("#b5b3a8", 0.9), paint("#a7b0ae", 0.9), paint("#bfb297", 0.9)]);
  group.put(
    quad([-420, 0, -depth], [420, 0, -depth], [420, 130, -depth], [-420, 130, -depth]),
    wall,
  );
  group.put(
    quad(
      [-420, 0, -depth + 0.3],
      [420, 0, -depth + 0.3],
      [420, 30, -depth + 0.3],
      [-420, 30, -depth + 0.3],
    ),
    paint(random.pick(["#6f7f80", "#7a6e5d", "#66707a"]), 0.8),
  );
  for (let x = -400; x < 400; x += 48) {
    group.put(
      box(3.5, 130, 1.6),
      boards(12, { width: 30, gap: false }),
      here.move(x + random.sway(1), 0, -depth + 0.8),
    );
  }
  const side = random.pick([-1, 1]);
  group.place(windowIn(night, 44, 38), here.move(side * (clear ? 96 : 60) - 22, 48, -depth + 1));
  group.place(
    windowIn(night, 44, 38),
    here.move(side * (clear ? 96 : 60) - 22 + side * 62, 48, -depth + 1),
  );
  if (clear) {
    group.place(
      toolChest(random.branch("chest")),
      here.move(-side * random.between(52, 62), 0, -depth + 13),
    );
    group.place(stepLadder(), here.move(side * random.between(46, 58), 0, -depth + 6).turnX(-11));
    return group;
  }
  // A bench along the wall, with its things.
  const bench = new Group()
    .put(box(150, 2, 26), boards(31), here.move(0, 33, 0))
    .put(box(146, 1.4, 22), plywood(14), here.move(0, 8, 0));
  for (const x of [-70, 0, 70])
    bench.put(box(3.5, 33, 3.5), boards(8, { width: 30, gap: false }), here.move(x, 0, 9));
  bench.place(clutterRow(random.branch("bench"), 130), here.move(0, 35, -3).size(1, 1, 1));
  for (let i = 0; i < 6; i++)
    bench.place(
      anyTin(random),
      here.move(-58 + i * 23 + random.sway(6), 9.4, random.sway(4)).size(1.9),
    );
  group.place(bench, here.move(-side * 70, 0, -depth + 15));
  const peg = new Group().put(box(96, 38, 0.6), matte("#a98256", 3));
  hangingTools(random).forEach((tool, i) => {
    peg.place(tool, here.move(-38 + i * 12.5, 30, 1).size(1.5));
  });
  group.place(peg, here.move(-side * 70, 46, -depth + 2));
  return group;
}

/** A chest of drawers on castors, with things on top. */
function toolChest(random: Random): Group {
  const color = random.pick(["#a32a20", "#26486b", "#3b4046"]);
  const group = new Group().put(
    box(27, 30, 18, { bevel: 0.4 }),
    paint(color, 0.35),
    here.move(0, 5, 0),
  );
  for (let i = 0; i < 5; i++) {
    group.put(
      box(24.5, 4.8, 0.6, { bevel: 0.12 }),
      paint(color, 0.3),
      here.move(0, 6.6 + i * 5.6, 9),
    );
    group.put(box(20, 0.6, 0.7), steel, here.move(0, 10.2 + i * 5.6, 9.5));
  }
  for (const x of [-11, 11])
    for (const z of [-7, 7])
      group.put(
        cylinder(2, 1.6, { sides: 16 }),
        rubber(),
        here.move(x, 2, z).turnZ(90).move(0, -0.8, 0),
      );
  for (let i = 0; i < 3; i++)
    group.place(anyTin(random), here.move(-8 + i * 8, 35, random.sway(3)).size(1.3));
  return group;
}

function stepLadder(): Group {
  const wood = boards(6, { light: "#c9a86c", dark: "#96743f", width: 30, gap: false });
  const group = new Group();
  for (const s of [-1, 1])
    group.put(
      tube(
        [
          [s * 9, 0, 0],
          [s * 6, 66, 0],
        ],
        1.5,
        { sides: 4 },
      ),
      wood,
    );
  for (let i = 0; i < 5; i++)
    group.put(box(16 - i * 1.2, 1.1, 4.4), wood, here.move(0, 11 + i * 12, 0.4));
  return group;
}

/** A sawhorse with a padded beam, `height` to the top, beam along z. */
export function sawhorse(height: number, length: number): Group {
  const wood = boards(17, { width: 30, gap: false });
  const group = new Group()
    .put(box(3.5, 3.5, length), wood, here.move(0, height - 4.3, 0))
    .put(
      box(4, 0.8, length, { bevel: 0.2 }),
      matte("#5b3a34", 5, 0.98),
      here.move(0, height - 0.8, 0),
    );
  for (const z of [-length / 2 + 4, length / 2 - 4]) {
    for (const side of [-1, 1]) {
      group.put(
        tube(
          [
            [side * 1.6, height - 3, z],
            [side * 9, 0, z + Math.sign(z) * 3],
          ],
          1.6,
          { sides: 4 },
        ),
        wood,
      );
    }
  }
  return group;
}

/** A sheet of paper lying flat with one corner up, width along x. */
export function looseSheet(width: number, depth: number, surface: Surface = paper()): Group {
  const rows = 8;
  const group = new Group();
  const cells: [number, number, number][][] = [];
  for (let r = 0; r <= rows; r++) {
    const row: [number, number, number][] = [];
    for (let c = 0; c <= rows; c++) {
      const [u, v] = [c / rows, r / rows];
      const lift = Math.max(0, u + v - 1.45) ** 2 * width * 0.28;
      row.push([(u - 0.5) * width, 0.012 + lift, (0.5 - v) * depth]);
    }
    cells.push(row);
  }
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < rows; c++) {
      const at = (row: number, column: number) => cells[row]?.[column] ?? [0, 0, 0];
      const uv = (row: number, column: number): Vec2 => [column / rows, 1 - row / rows];
      group.put(
        quad(at(r, c), at(r, c + 1), at(r + 1, c + 1), at(r + 1, c), [
          uv(r, c),
          uv(r, c + 1),
          uv(r + 1, c + 1),
          uv(r + 1, c),
        ]),
        surface,
      );
    }
  }
  return group;
}

/** A pencil lying along x. */
export function pencil(color = "#c9821f"): Group {
  return new Group()
    .put(
      tube(
        [
          [0, 0.14, 0],
          [5.6, 0.14, 0],
        ],
        0.14,
        { sides: 6 },
      ),
      paint(color, 0.35),
    )
    .put(
      tube(
        [
          [5.6, 0.14, 0],
          [6.2, 0.14, 0],
        ],
        (t) => 0.14 - 0.11 * t,
        { sides: 8 },
      ),
      paint("#d8b483", 0.7),
    )
    .put(
      tube(
        [
          [6.2, 0.14, 0],
          [6.36, 0.14, 0],
        ],
        (t) => 0.035 - 0.03 * t,
        { sides: 6 },
      ),
      rubber("#1c1c1e"),
    )
    .put(
      tube(
        [
          [-0.3, 0.14, 0],
          [0, 0.14, 0],
        ],
        0.145,
        { sides: 10 },
      ),
      brass,
    );
}

/** A steel rule lying along x, ticked along its front edge. */
export function steelRule(length: number): Group {
  const group = new Group().put(
    box(length, 0.04, 1, { bevel: 0.01 }),
    { ...chrome, roughness: 0.28 },
    here.move(length / 2, 0, 0),
  );
  const ink = paint("#17181a", 0.7);
  for (let i = 0; i <= length * 8; i++) {
    const long = i % 8 === 0 ? 0.42 : i % 4 === 0 ? 0.3 : 0.18;
    group.put(
      quad(
        [i / 8 - 0.011, 0.042, 0.48],
        [i / 8 + 0.011, 0.042, 0.48],
        [i / 8 + 0.011, 0.042, 0.48 - long],
        [i / 8 - 0.011, 0.042, 0.48 - long],
      ),
      ink,
    );
  }
  return group;
}

/** A strip of tape on a flat face, `width` along x, lying at the origin. */
export function tapeStrip(width: number, depth: number, seed = 1, color = "#e2cf9c"): Group {
  const outline: Vec2[] = [];
  const teeth = 7;
  for (let i = 0; i <= teeth; i++)
    outline.push([width / 2 + (i % 2 ? 0.06 : 0) * depth, -depth / 2 + (depth * i) / teeth]);
  for (let i = teeth; i >= 0; i--)
    outline.push([-width / 2 - (i % 2 ? 0.06 : 0) * depth, -depth / 2 + (depth * i) / teeth]);
  return new Group().put(extrude(outline, 0.012), maskingTape(seed, color), flat);
}

/** A plate of sheet lying on the bench with holes, width along x; top at `thickness`. */
export function plate(
  width: number,
  depth: number,
  thickness: number,
  surface: Surface,
  holes: readonly { x: number; z: number; radius: number }[] = [],
): Group {
  const w = width / 2;
  const d = depth / 2;
  return new Group().put(
    extrude(
      width > 3
        ? roundedRectangle(width, depth, Math.min(width, depth) * 0.02)
        : rectangle(-w, -d, w, d),
      thickness,
      {
        holes: holes.map(({ x, z, radius }) => circle(x, -z, radius, 18)),
        bevel: Math.min(0.012, thickness * 0.3),
      },
    ),
    surface,
    flat,
  );
}
