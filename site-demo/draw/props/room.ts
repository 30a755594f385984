import { boards, matte, plywood } from "../materials.ts";
import { here } from "../pose.ts";
import type { Random } from "../random.ts";
import { box, quad } from "../shape.ts";
import type { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { sawhorse, shopFloor } from "./bench.ts";

/** A work table on the shop's floor, its top at `height` in the middle of the picture. */
export function tableInShop(
  random: Random,
  {
    width,
    depth,
    height = 34,
    night = false,
    top,
    wall = 70,
  }: {
    width: number;
    depth: number;
    height?: number;
    night?: boolean;
    top?: Surface;
    wall?: number;
  },
): Group {
  const group = shopFloor(random.branch("room"), { depth: wall, night });
  const seed = random.whole(1, 99);
  const surface =
    top ??
    random.pick([
      boards(seed, { width: 9 }),
      plywood(seed, "#c9a577"),
      boards(seed, { light: "#a9753f", dark: "#5f3c1e", width: 8 }),
      matte("#59605f", seed, 0.95),
    ]);
  const y = height;
  group.put(
    quad(
      [-width / 2, y, depth / 2],
      [width / 2, y, depth / 2],
      [width / 2, y, -depth / 2],
      [-width / 2, y, -depth / 2],
    ),
    surface,
  );
  group.put(box(width, 1.5, depth, { bevel: 0.1 }), plywood(seed + 1), here.move(0, y - 1.52, 0));
  const leg = boards(seed + 2, { width: 30, gap: false });
  for (const sx of [-1, 1]) {
    for (const sz of [-1, 1])
      group.put(
        box(3.5, y - 1.5, 3.5),
        leg,
        here.move(sx * (width / 2 - 5), 0, sz * (depth / 2 - 4)),
      );
    group.put(box(1.5, 4, depth - 8), leg, here.move(sx * (width / 2 - 5), 8, 0));
  }
  group.put(box(width - 10, 4, 1.5), leg, here.move(0, y - 5.6, depth / 2 - 4));
  return group;
}

/** Two sawhorses on the shop's floor, `apart` inches, their padded tops at `height`. */
export function sawhorsesInShop(
  random: Random,
  {
    apart,
    height = 32,
    length = 44,
    night = false,
    wall = 100,
  }: { apart: number; height?: number; length?: number; night?: boolean; wall?: number },
): Group {
  const group = shopFloor(random.branch("room"), { depth: wall, night });
  for (const s of [-1, 1]) group.place(sawhorse(height, length), here.move((s * apart) / 2, 0, 0));
  return group;
}
