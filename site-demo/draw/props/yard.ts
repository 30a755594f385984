import { boards, concrete, paint } from "../materials.ts";
import { layered, noise } from "../noise.ts";
import { here } from "../pose.ts";
import type { Random } from "../random.ts";
import { box, cylinder, extrude, quad, sheet, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { hex, type Rgb, smoothstep } from "../vector.ts";

/** The seasons the yard knows. */
export type Season = "spring" | "summer" | "autumn" | "winter";

/** The season of a word, or of the month where the word says nothing. */
export function seasonOf(word: string | undefined, month: number): Season {
  const known = (["spring", "summer", "autumn", "winter"] as const).find(
    (season) => season === word,
  );
  if (known) return known;
  if (month <= 2 || month === 12) return "winter";
  return month <= 5 ? "spring" : month <= 9 ? "summer" : "autumn";
}

/** Grass, leaves or snow. */
function groundOf(season: Season, seed: number): Surface {
  const base: Record<Season, Rgb> = {
    spring: hex("#566a35"),
    summer: hex("#857c44"),
    autumn: hex("#6b6638"),
    winter: hex("#e6eaf0"),
  };
  const leaf = [hex("#b5652a"), hex("#c99432"), hex("#8c4a22")];
  return {
    color: base[season],
    roughness: 0.96,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const cloud = layered(u * 0.012, v * 0.012, 4, seed);
      const blade = noise(u * 1.1, v * 0.45, seed + 3) * (1 - smoothstep(0.4, 1.6, inches));
      const k = season === "winter" ? 0.05 : 0.3;
      const by = 1 + cloud * k + blade * (season === "winter" ? 0.02 : 0.32);
      spot.r *= by;
      spot.g *= by;
      spot.b *= by;
      spot.tiltU += layered(u * 0.05, v * 0.05, 3, seed + 5) * (season === "winter" ? 0.2 : 0.35);
      if (season === "autumn") {
        const fallen =
          noise(u * 0.22, v * 0.22, seed + 9) + noise(u * 0.02, v * 0.02, seed + 4) * 0.7;
        const on = smoothstep(0.42, 0.5, fallen);
        const color = leaf[Math.abs(Math.floor(u / 5) + Math.floor(v / 5)) % 3] ?? [0.3, 0.1, 0.02];
        spot.r += (color[0] - spot.r) * on;
        spot.g += (color[1] - spot.g) * on;
        spot.b += (color[2] - spot.b) * on;
      }
      if (season === "winter") {
        const bare = smoothstep(0.3, 0.5, layered(u * 0.018 + 40, v * 0.018, 3, seed + 7));
        spot.r += (0.24 - spot.r) * bare * 0.5;
        spot.g += (0.23 - spot.g) * bare * 0.5;
        spot.b += (0.16 - spot.b) * bare * 0.5;
      }
    },
  };
}

/** The yard: ground, a drive along z, a fence at the back, trees of the season beyond it. */
export function yard(
  random: Random,
  season: Season,
  { fence = -190, drive = 70 }: { fence?: number; drive?: number } = {},
): Group {
  const group = new Group();
  group.put(
    quad([-1400, 0, 500], [1400, 0, 500], [1400, 0, -1400], [-1400, 0, -1400]),
    groundOf(season, random.whole(1, 99)),
  );
  if (drive)
    group.put(
      quad(
        [-drive, 0.4, 500],
        [drive, 0.4, 500],
        [drive, 0.4, fence + 60],
        [-drive, 0.4, fence + 60],
      ),
      concrete(random.whole(1, 99)),
    );
  const wood = boards(random.whole(1, 99), {
    light: "#a39c92",
    dark: "#776f66",
    width: 30,
    gap: false,
  });
  for (let x = -420; x < 420; x += 7.4)
    group.put(
      box(6.6, 84 + random.sway(0.8), 0.9),
      wood,
      here.move(x, 0, fence + random.sway(0.2)),
    );
  for (let x = -420; x < 420; x += 84)
    group.put(box(4.5, 88, 4.5), wood, here.move(x, 0, fence - 2.4));
  for (let i = 0; i < 9; i++)
    group.place(
      tree(random, season),
      here
        .move(-520 + i * 130 + random.sway(50), 0, fence - random.between(90, 420))
        .size(random.between(0.9, 1.5)),
    );
  return group;
}

/** A tree of the season, about 200 inches tall. */
export function tree(random: Random, season: Season): Group {
  const bark = paint("#4b3b2c", 0.95);
  const group = new Group().put(
    tube(
      [
        [0, 0, 0],
        [random.sway(4), 60, 0],
        [random.sway(8), 120, 0],
      ],
      (t) => 7 - 4 * t,
      { sides: 8 },
    ),
    bark,
  );
  const shades: Record<Season, readonly string[]> = {
    spring: ["#7da04a", "#90ad55", "#6b8f3e"],
    summer: ["#56743a", "#4b6a35", "#658044"],
    autumn: ["#b3662b", "#c48d33", "#94502a", "#7c7a3e"],
    winter: ["#5a4a3c"],
  };
  if (season === "winter") {
    for (let i = 0; i < 26; i++) {
      const a = random.between(0, 6.28);
      const y = random.between(55, 115);
      const reach = random.between(24, 60);
      group.put(
        tube(
          [
            [0, y, 0],
            [Math.cos(a) * reach * 0.5, y + reach * 0.6, Math.sin(a) * reach * 0.5],
            [Math.cos(a) * reach, y + reach * 1.5, Math.sin(a) * reach],
          ],
          (t) => 2.2 - 1.8 * t,
          { sides: 5 },
        ),
        bark,
      );
    }
    return group;
  }
  for (let i = 0; i < 14; i++) {
    const a = random.between(0, 6.28);
    const r = random.between(0, 44);
    const seed = random.whole(1, 99);
    const color = hex(random.pick(shades[season]));
    const leafy: Surface = {
      color,
      roughness: 0.98,
      metal: false,
      pattern: (u, v, spot) => {
        const k = noise(u * 0.35, v * 0.35, seed) * 0.5 + noise(u * 0.9, v * 0.9, seed + 1) * 0.3;
        spot.r *= 1 + k;
        spot.g *= 1 + k;
        spot.b *= 1 + k;
        spot.tiltU += noise(u * 0.5, v * 0.5, seed + 2) * 0.9;
        spot.tiltV += noise(u * 0.5, v * 0.5, seed + 3) * 0.9;
      },
    };
    group.put(
      sphere(random.between(22, 36), 14),
      leafy,
      here.move(Math.cos(a) * r, 120 + random.sway(40), Math.sin(a) * r).size(1, 0.85, 1),
    );
  }
  return group;
}

/** The shop from outside: clapboard gable with a wide door, `open` showing the lit room. */
export function shopFront(
  random: Random,
  { night, snow, open = true }: { night: boolean; snow: boolean; open?: boolean },
): Group {
  const group = new Group();
  const [w, h, peak] = [168, 104, 152];
  const color = random.pick(["#b0493a", "#8f9c93", "#5f7486", "#c3b393", "#6f7a5c"]);
  const board: Surface = {
    color: hex(color),
    roughness: 0.8,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const lap = (((v / 6) % 1) + 1) % 1;
      const edge = 1 - smoothstep(0, 0.12 + inches * 0.1, lap);
      const k = 1 - edge * 0.45 + layered(u * 0.05, v * 0.4, 3, 5) * 0.12;
      spot.r *= k;
      spot.g *= k;
      spot.b *= k;
      spot.tiltV -= 0.12;
    },
  };
  const trim = paint("#e6dfcf", 0.7);
  const [dw, dh] = [104, 88];
  group.put(
    extrude(
      [
        [-w / 2, 0],
        [w / 2, 0],
        [w / 2, h],
        [0, peak],
        [-w / 2, h],
      ],
      4,
      {
        holes: [
          [
            [-dw / 2, 0.3],
            [dw / 2, 0.3],
            [dw / 2, dh],
            [-dw / 2, dh],
          ],
        ],
      },
    ),
    board,
    here.move(0, 0, -4),
  );
  for (const s of [-1, 1]) {
    group.put(box(5, dh + 3, 3), trim, here.move(s * (dw / 2 + 2.5), 0, 1));
    group.put(box(5, h, 3), trim, here.move(s * (w / 2 - 2), 0, 1));
    // Roof, its eaves and the snow on it.
    const slope = Math.hypot(w / 2 + 12, peak - h + 7);
    const angle = (Math.atan2(peak - h, w / 2) * 180) / Math.PI;
    const roof = here
      .move(0, peak - 0.5, 0)
      .size(s, 1, 1)
      .turnZ(-angle);
    group.put(box(slope, 4, 210), paint("#3c4046", 0.85), roof.move(slope / 2, 0, -96));
    if (snow)
      group.put(
        box(slope + 2, 5, 212, { bevel: 1.6 }),
        paint("#eef2f7", 0.95),
        roof.move(slope / 2, 4, -96),
      );
  }
  group.put(box(dw + 12, 6, 3.4), trim, here.move(0, dh, 1));
  // The room behind the door.
  const glow: Surface = {
    color: hex("#d9b98a"),
    roughness: 0.9,
    metal: false,
    ...(night ? { glow: [1.15, 0.84, 0.5] as const } : { glow: [0.42, 0.36, 0.28] as const }),
  };
  const floor: Surface = {
    color: hex("#a59a8a"),
    roughness: 0.7,
    metal: false,
    ...(night ? { glow: [0.75, 0.55, 0.33] as const } : {}),
  };
  group.put(
    quad([-w / 2 + 6, 2, -130], [w / 2 - 6, 2, -130], [w / 2 - 6, h, -130], [-w / 2 + 6, h, -130]),
    glow,
  );
  for (const s of [-1, 1])
    group.put(
      quad(
        [s * (w / 2 - 6), 2, -4],
        [s * (w / 2 - 6), 2, -130],
        [s * (w / 2 - 6), h, -130],
        [s * (w / 2 - 6), h, -4],
      ),
      glow,
    );
  group.put(
    quad([-w / 2, 0.5, 0], [w / 2, 0.5, 0], [w / 2, 0.5, -130], [-w / 2, 0.5, -130]),
    floor,
  );
  group.put(
    quad([-w / 2, h - 4, 0], [w / 2, h - 4, 0], [w / 2, h - 4, -130], [-w / 2, h - 4, -130]),
    glow,
  );
  if (night) {
    for (const z of [-40, -90])
      group.put(
        box(70, 2, 5),
        { color: [1, 1, 1], roughness: 0.5, metal: false, glow: [6, 4.9, 3.4] },
        here.move(0, h - 8, z),
      );
  }
  const bench = boards(5, { width: 12 });
  group.put(
    box(96, 3, 26),
    { ...bench, glow: night ? [0.3, 0.22, 0.13] : [0.12, 0.1, 0.08] },
    here.move(-8, 34, -108),
  );
  for (const x of [-50, 34]) group.put(box(4, 34, 22), bench, here.move(x, 0, -108));
  for (const z of [-30, -75])
    group.put(
      box(60, 1.4, 4),
      { color: [1, 1, 1], roughness: 0.5, metal: false, glow: [2.4, 2.2, 1.9] },
      here.move(0, dh - 3, z),
    );
  group.put(box(60, 30, 1), { ...glow, color: hex("#a98256") }, here.move(-10, 48, -128));
  for (let i = 0; i < 9; i++)
    group.put(
      box(1.6, random.between(9, 17), 1),
      paint(random.pick(["#3a3d42", "#b3261e", "#22467f", "#d08a1d", "#8d9196"]), 0.5),
      here.move(-34 + i * 6, 56, -126.6),
    );
  for (let i = 0; i < 8; i++)
    group.put(
      cylinder(random.between(2, 3.6), random.between(5, 11), { sides: 16 }),
      paint(random.pick(["#2f5d8a", "#8b9a38", "#b5462d", "#d9c27a", "#e6dfcf"]), 0.5),
      here.move(-50 + i * 11 + random.sway(3), 37, -112 + random.sway(5)),
    );
  group.put(box(26, 34, 18, { bevel: 0.4 }), paint("#a32a20", 0.4), here.move(56, 0.5, -108));
  for (let i = 0; i < 5; i++)
    group.put(box(23, 5, 0.8), paint("#8e241b", 0.35), here.move(56, 3 + i * 6.2, -98.8));
  if (!open)
    group.put(
      box(dw, dh, 2),
      boards(9, { width: 12, light: "#9d7a52", dark: "#6d5236" }),
      here.move(0, 0, -1),
    );
  else {
    const leaf = boards(random.whole(1, 99), { width: 12, light: "#9d7a52", dark: "#6d5236" });
    for (const s of [-1, 1]) {
      const swing = here
        .move(s * (dw / 2), 1, 1)
        .turnY(s * random.between(96, 116))
        .move(-s * (dw / 4), 0, 0);
      group.put(box(dw / 2, dh - 2, 2.4), leaf, swing);
      for (const y of [10, dh - 22]) group.put(box(dw / 2 - 2, 6, 3.4), leaf, swing.move(0, y, 0));
    }
  }
  const lantern = here.move(dw / 2 + 16, 74, 5);
  group.put(
    cylinder(3, 7, { sides: 12 }),
    {
      color: [1, 0.95, 0.85],
      roughness: 0.4,
      metal: false,
      ...(night ? { glow: [5, 3.7, 2] as const } : {}),
    },
    lantern,
  );
  group.put(cylinder(4, 2, { sides: 12 }), paint("#26292d", 0.5), lantern.move(0, 7, 0));
  return group;
}

/** Snow lying along the foot of things. */
export function snowBank(random: Random, width: number, depth: number, height: number): Group {
  const seed = random.whole(1, 99);
  return new Group().put(
    sheet(
      (u, v) => {
        const lump = (1 + layered(u * 5, v * 3, 3, seed)) * 0.6;
        const rise = Math.sin(Math.PI * v) * Math.min(1, Math.sin(Math.PI * u) * 3);
        return [(u - 0.5) * width, rise * lump * height, (0.5 - v) * depth];
      },
      60,
      16,
    ),
    paint("#e9eef5", 0.95),
  );
}
