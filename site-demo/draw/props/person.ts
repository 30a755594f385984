import { boards, cloth, paint } from "../materials.ts";
import { here, Pose } from "../pose.ts";
import { Random } from "../random.ts";
import { curve, cylinder, lathe, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { add, cross, dot, hex, lengthOf, scaled, subtract, unit, type Vec3 } from "../vector.ts";

/** How a figure looks. */
export interface Looks {
  readonly shirt: Surface;
  readonly trousers: Surface;
  readonly skin: Surface;
  readonly hair: Surface;
  readonly shoes: Surface;
  readonly defenders: Surface;
  readonly cap: boolean;
  readonly plait: boolean;
  /** Not worn outside the noise. */
  readonly muffs: boolean;
}

/** Looks by chance; no two draws need be one person. */
export function anyLooks(random: Random): Looks {
  return {
    shirt: cloth(
      random.pick(["#7d3b2f", "#36506b", "#8a8468", "#4f6350", "#a9773a", "#5d4a63"]),
      random.whole(1, 99),
    ),
    trousers: cloth(random.pick(["#2f3d54", "#4a463e", "#3a3f3c", "#5b5140"]), random.whole(1, 99)),
    skin: {
      color: hex(random.pick(["#c58d6b", "#a66c4a", "#d7a384", "#7f5238"])),
      roughness: 0.55,
      metal: false,
    },
    hair: cloth(random.pick(["#1f1510", "#2a1d14", "#5d5954", "#171516"]), 3),
    shoes: paint(random.pick(["#3b2c20", "#23262a", "#6b4a2c"]), 0.5),
    defenders: paint(random.pick(["#b6381f", "#c99a1c", "#24476f"]), 0.35),
    cap: random.chance(0.35),
    plait: random.chance(0.4),
    muffs: true,
  };
}

const names = ["ruben", "pip", "delbert", "konrad", "oskar", "ines"] as const;

/** Somebody the words name, always dressed alike; else the builder. */
export function looksOf(words: string): Looks {
  const name = names.find((known) => words.includes(known)) ?? "builder";
  const looks = anyLooks(new Random(`person/${name}`));
  const shirts = {
    ruben: "#36506b",
    pip: "#7d3b2f",
    delbert: "#4f6350",
    konrad: "#8a8468",
    oskar: "#6b6f75",
    ines: "#5d4a63",
    builder: "#a9773a",
  };
  const plait = name === "builder" || name === "pip" || name === "ines";
  return {
    ...looks,
    shirt: cloth(shirts[name], 11),
    plait,
    cap: name === "delbert" || name === "konrad" || name === "oskar",
    muffs: name !== "oskar",
  };
}

/** How a figure stands: places in inches, feet on the floor, facing -z. */
export interface Stance {
  readonly hips: Vec3;
  readonly neck: Vec3;
  readonly left: { readonly hand: Vec3; readonly foot: Vec3 };
  readonly right: { readonly hand: Vec3; readonly foot: Vec3 };
  /** Where the face looks. */
  readonly gaze: Vec3;
}

/** The middle joint of a limb of two bones that reaches from `a` to `b`, bent towards `hint`. */
function joint(a: Vec3, b: Vec3, upper: number, lower: number, hint: Vec3): Vec3 {
  const span = subtract(b, a);
  const length = Math.min(lengthOf(span), (upper + lower) * 0.999);
  const along = unit(span);
  const reach = (upper * upper - lower * lower + length * length) / (2 * length);
  const rise = Math.sqrt(Math.max(0, upper * upper - reach * reach));
  const off = unit(subtract(hint, scaled(along, dot(hint, along))));
  return add(a, add(scaled(along, reach), scaled(off, rise)));
}

/** A figure in work clothes and ear defenders. */
export function person(stance: Stance, looks: Looks): Group {
  const group = new Group();
  const { hips, neck } = stance;
  const spine = subtract(neck, hips);
  const up = unit(spine);
  const forward = unit(subtract(stance.gaze, neck));
  const facing = unit([forward[0], 0, forward[2]]);
  const side = unit(cross(facing, up));
  const front = cross(up, side);
  const frame = (at: Vec3) => Pose.facing(at, side, up, scaled(front, -1));
  const tall = lengthOf(spine);
  // Trunk: a turned form, broader than deep.
  group.put(
    lathe(
      [
        [0, -4],
        [4.6, -3.4],
        [6.6, -1],
        [6.5, 2],
        [6.1, tall * 0.32],
        [6.9, tall * 0.58],
        [7.7, tall * 0.78],
        [7.2, tall * 0.9],
        [4.6, tall * 0.985],
        [2.6, tall * 1.02],
        [0, tall * 1.03],
      ],
      30,
    ),
    looks.shirt,
    frame(hips).size(1.06, 1, 0.68),
  );
  group.put(
    lathe(
      [
        [0, -5.4],
        [5, -4.6],
        [6.95, -1.6],
        [6.95, 1.6],
        [6.6, 3],
        [0, 3.2],
      ],
      30,
    ),
    looks.trousers,
    frame(hips).size(1.06, 1, 0.72),
  );
  group.put(
    lathe(
      [
        [6.75, 2.4],
        [6.75, 3.9],
        [6.5, 4],
      ],
      30,
    ),
    paint("#3a281a", 0.5),
    frame(hips).size(1.06, 1, 0.71),
  );
  const shoulder = (s: number) => add(neck, add(scaled(side, s * 7), scaled(up, -2.6)));
  const hip = (s: number) => add(hips, add(scaled(side, s * 3.6), scaled(up, -2.5)));
  for (const s of [-1, 1] as const) {
    const limb = s < 0 ? stance.left : stance.right;
    const a = shoulder(s);
    const elbow = joint(a, limb.hand, 12, 11.5, add(scaled(side, s * 0.9), [0, -1, 0]));
    const wrist = add(limb.hand, scaled(unit(subtract(elbow, limb.hand)), 2.4));
    group.put(
      tube(curve([add(a, scaled(side, -s * 1.6)), a, elbow, wrist], 6), (t) => 2.9 - 1.25 * t, {
        sides: 16,
      }),
      looks.shirt,
    );
    const cuff = add(wrist, scaled(unit(subtract(elbow, wrist)), 4.2));
    group.put(
      tube([cuff, wrist, limb.hand], (t) => 1.5 - 0.25 * t, { sides: 12 }),
      looks.skin,
    );
    group.put(
      sphere(2, 14),
      looks.skin,
      here
        .move(...limb.hand)
        .along(unit(subtract(limb.hand, elbow)))
        .size(0.85, 1.35, 0.7),
    );
    const h = hip(s);
    const ankle = add(limb.foot, [0, 3.2, 0]);
    const knee = joint(h, ankle, 17.5, 17.5, add(scaled(front, 1), scaled(side, s * 0.15)));
    group.put(
      tube(curve([add(h, [0, 1.5, 0]), h, knee, ankle], 7), (t) => 4.2 - 1.7 * t, { sides: 18 }),
      looks.trousers,
    );
    const toe = add(limb.foot, scaled(front, 2.8));
    group.put(
      sphere(2.1, 16),
      looks.shoes,
      here
        .move(toe[0], 1.5, toe[2])
        .turnY((Math.atan2(front[0], front[2]) * 180) / Math.PI)
        .size(0.95, 0.78, 2.4),
    );
    group.put(
      cylinder(1.9, 3.4, { sides: 16, bevel: 0.3 }),
      looks.shoes,
      here.move(limb.foot[0], 0.9, limb.foot[2]),
    );
  }
  // Head.
  const level = unit([forward[0], forward[1] * 0.6, forward[2]]);
  const ear = unit(cross(level, [0, 1, 0]));
  const crown = cross(ear, level);
  const skull = add(neck, add(scaled(up, 4.2), scaled(level, 1.4)));
  const head = Pose.facing(skull, ear, crown, scaled(level, -1));
  group.put(
    tube([add(neck, scaled(up, -1.5)), add(neck, scaled(up, 2.4)), skull], 2.1, { sides: 16 }),
    looks.skin,
  );
  group.put(sphere(3.75, 26), looks.skin, head.size(0.9, 1.14, 1.04));
  group.put(sphere(0.7, 10), looks.skin, head.move(0, -0.3, -3.9));
  const hairline = lathe(
    Array.from({ length: 12 }, (_, i) => {
      const a = (-0.12 + (0.62 * i) / 11) * Math.PI;
      return [i === 11 ? 0 : 3.95 * Math.cos(a), 3.95 * Math.sin(a)] as const;
    }),
    26,
  );
  group.put(hairline, looks.hair, head.move(0, 0.1, 0.3).turnX(24).size(0.94, 1.16, 1.06));
  if (looks.cap) {
    const cap = cloth("#3b4a52", 5);
    group.put(hairline, cap, head.move(0, 1.2, 0.1).size(0.98, 0.98, 1.1));
    group.put(sphere(3, 18), cap, head.move(0, 1.4, -3.6).size(0.95, 0.12, 1));
  }
  if (looks.plait) {
    group.put(
      tube(
        curve(
          [
            add(skull, scaled(level, -3.4)),
            add(skull, add(scaled(level, -4.6), [0, -3, 0])),
            add(skull, add(scaled(level, -4.2), [0, -8, 0])),
          ],
          6,
        ),
        (t) => 1.5 - 0.9 * t,
        { sides: 12 },
      ),
      looks.hair,
    );
  } else {
    group.put(sphere(2.9, 18), looks.hair, head.move(0, -1.1, 1.6).size(1.05, 1, 0.9));
  }
  if (!looks.muffs) return group;
  const band: Vec3[] = [];
  for (let i = 0; i <= 18; i++) {
    const a = (i / 18) * Math.PI;
    band.push([4.1 * Math.cos(a), -0.3 + 5.1 * Math.sin(a), 0.2]);
  }
  group.put(tube(band, 0.4, { sides: 8 }), paint("#1c1d20", 0.4), head);
  for (const s of [-1, 1]) {
    group.put(
      lathe(
        [
          [1.9, 0],
          [1.95, 0.5],
          [1.6, 1.25],
          [0.8, 1.5],
          [0, 1.55],
        ],
        22,
      ),
      looks.defenders,
      head
        .move(s * 3.35, -0.5, 0.2)
        .turnZ(-s * 90)
        .size(1.15, 1, 0.95),
    );
  }
  return group;
}

const hide: Surface = cloth("#b98d5a", 9);

/** A hand in a leather work glove closed round an upright rod at the origin, its arm going off along `arm`. */
export function glovedHand(rod: number, arm: Vec3, sleeve = "#36506b"): Group {
  const group = new Group();
  const back = unit([arm[0], 0, arm[2]]);
  const across: Vec3 = [-back[2], 0, back[0]];
  const at = (b: number, a: number, y: number): Vec3 =>
    add(add(scaled(back, b), scaled(across, a)), [0, y, 0]);
  const r = rod;
  for (let i = 0; i < 4; i++) {
    const y = 1.25 - i * 0.82;
    const k = [0.95, 1, 0.97, 0.82][i] ?? 1;
    group.put(
      tube(
        curve(
          [
            at(r + 1.5, 0.75, y + 0.1),
            at(r * 0.6 + 0.55, r + 0.62, y),
            at(-0.15, r + 0.6, y - 0.03),
            at(-r - 0.42, r * 0.5, y - 0.05),
            at(-r - 0.35, -0.45 * k, y - 0.05),
            at(-r * 0.5 - 0.1, -r - 0.3, y - 0.05),
          ],
          6,
        ),
        (t) => (0.46 - 0.1 * t) * k,
        { sides: 14 },
      ),
      hide,
    );
    group.put(sphere(0.37 * k, 12), hide, here.move(...at(-r * 0.5 - 0.1, -r - 0.3, y - 0.05)));
  }
  group.put(
    tube(
      curve(
        [
          at(r + 2.2, -0.5, -0.5),
          at(r + 1.1, -r - 0.55, 0.6),
          at(r * 0.4, -r - 0.62, 1.4),
          at(-r - 0.2, -r * 0.7, 1.75),
        ],
        6,
      ),
      (t) => 0.58 - 0.16 * t,
      { sides: 14 },
    ),
    hide,
  );
  group.put(sphere(0.43, 12), hide, here.move(...at(-r - 0.2, -r * 0.7, 1.75)));
  group.put(sphere(1.5, 20), hide, here.move(...at(r + 1.9, 0.1, 0)).size(0.95, 1.25, 0.95));
  const wrist = at(r + 3.1, 0, -0.05);
  const elbow = add(wrist, scaled(unit(arm), 12));
  group.put(
    tube([at(r + 1.9, 0.05, 0), wrist, add(wrist, scaled(unit(arm), 1.6))], (t) => 1.25 + 0.2 * t, {
      sides: 18,
    }),
    hide,
  );
  group.put(
    tube(
      [add(wrist, scaled(unit(arm), 1.2)), add(wrist, scaled(unit(arm), 1.5)), elbow],
      (t) => 1.6 + 0.6 * t,
      { sides: 20 },
    ),
    cloth(sleeve, 4),
  );
  return group;
}

/** A bare hand lying open above the bench, fingers towards -z, for one that has just let go. */
export function openHand(skin: Surface, sleeve = "#7d3b2f"): Group {
  const group = new Group().put(sphere(1.6, 20), skin, here.move(0, 0, 1).size(1, 0.42, 1.15));
  for (let i = 0; i < 4; i++) {
    const x = -1.15 + i * 0.76;
    const long = [1.9, 2.3, 2.2, 1.7][i] ?? 2;
    group.put(
      tube(
        curve(
          [
            [x * 0.9, 0.1, 0.3],
            [x, 0.25, -0.8],
            [x * 1.08, 0.05, -0.8 - long * 0.6],
            [x * 1.1, -0.45, -0.8 - long],
          ],
          6,
        ),
        (t) => 0.4 - 0.1 * t,
        { sides: 12 },
      ),
      skin,
    );
    group.put(sphere(0.3, 10), skin, here.move(x * 1.1, -0.45, -0.8 - long));
  }
  group.put(
    tube(
      curve(
        [
          [1.2, -0.1, 1.4],
          [2, 0, 0.6],
          [2.2, -0.2, -0.5],
        ],
        6,
      ),
      (t) => 0.52 - 0.16 * t,
      { sides: 12 },
    ),
    skin,
  );
  group.put(sphere(0.36, 10), skin, here.move(2.2, -0.2, -0.5));
  group.put(
    tube(
      [
        [0, 0, 2],
        [0, 0.2, 4.4],
      ],
      1.05,
      { sides: 16 },
    ),
    skin,
  );
  return group.put(
    tube(
      [
        [0, 0.15, 3.8],
        [0, 0.2, 4],
        [0, 1.2, 14],
      ],
      (t) => 1.5 + 0.7 * t,
      { sides: 18 },
    ),
    cloth(sleeve, 6),
  );
}

/** A stool with a round wooden seat. */
export function stool(height: number): Group {
  const group = new Group().put(
    cylinder(6.5, 1.3, { sides: 32, bevel: 0.25 }),
    boards(3, { gap: false }),
    here.move(0, height - 1.3, 0),
  );
  for (let i = 0; i < 4; i++) {
    const a = ((i + 0.5) / 4) * 2 * Math.PI;
    group.put(
      tube(
        [
          [Math.cos(a) * 4, height - 1.2, Math.sin(a) * 4],
          [Math.cos(a) * 7, 0, Math.sin(a) * 7],
        ],
        0.6,
        { sides: 8 },
      ),
      paint("#3c3f43", 0.4),
    );
  }
  return group;
}
