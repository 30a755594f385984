import { aluminium, darkSteel, steel } from "../materials.ts";
import { here, type Pose } from "../pose.ts";
import type { Random } from "../random.ts";
import { type Composition, framed, lightFor, numberIn, type Setting } from "../scene.ts";
import { box, cylinder } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";
import { shopFloor } from "./bench.ts";
import { hingeBracket, liftingSurface, type Plan, type Progress } from "./lifting-surface.ts";
import { tableInShop } from "./room.ts";

/** How far a surface has come, by what the list calls its finish. */
function progressOf(finish: string, clecos: number, words: string, random: Random): Progress {
  const size = random.pick(["3/32", "3/32", "1/8"]);
  if (finish === "closed")
    return { skins: [1, -1], primed: true, clecos, riveted: true, clecoSize: size };
  if (finish === "primed")
    return { skins: [-1], primed: true, clecos, riveted: false, clecoSize: size };
  const covered = clecos > 90 || /skin|underneath|on-clecos|clecoed/.test(words);
  return covered && !/skelet/.test(words)
    ? { skins: [1, -1], primed: false, clecos, riveted: false, clecoSize: size, film: true }
    : { skins: [], primed: false, clecos, riveted: false, clecoSize: size };
}

/** How a tail or control surface is shown. */
export interface Showing {
  readonly plan: Plan;
  /** Mirrored about its root, as a stabilizer is. */
  readonly both?: boolean;
  /** Stands on its root against the wall instead of lying on the table. */
  readonly standing?: boolean;
  /** Hinge brackets on the rear spar (`rear`) or ahead of the nose (`front`). */
  readonly hinges?: "rear" | "front";
  /** A control horn at the root. */
  readonly horn?: boolean;
  /** What hangs on the rear hinges once all of it is put together. */
  readonly hung?: Plan;
}

/** A tail or control surface on the table, on the wall or on its root, as far as it has come. */
export function showSurface(setting: Setting, showing: Showing): Composition {
  const { random, detail, words } = setting;
  const { plan } = showing;
  const clecos = Math.max(0, numberIn(detail.clecos, 0));
  const progress = progressOf(detail.finish ?? "bare", clecos, words, random.branch("progress"));
  const night = setting.light === "lamp" || setting.light === "strip";
  const metal = aluminium(5, 14);
  const half = new Group().place(
    liftingSurface(
      plan,
      { ...progress, clecos: showing.both ? Math.ceil(clecos / 2) : clecos },
      random.branch("surface"),
    ),
  );
  const rear = plan.spars[plan.spars.length - 1] ?? 0.7;
  if (showing.hinges) {
    for (const share of [0.12, 0.5, 0.88]) {
      const chord = plan.root.chord + (plan.tip.chord - plan.root.chord) * share;
      const at: Vec3 =
        showing.hinges === "rear"
          ? [plan.sweep * share + chord * rear + 2, 0, plan.span * share]
          : [plan.sweep * share - 1.2, 0, plan.span * share];
      half.place(
        hingeBracket(metal),
        here.move(...at).size(showing.hinges === "rear" ? -1 : 1, 1, 1),
      );
    }
  }
  if (showing.horn) {
    half.put(
      box(1.6, 7, 0.35, { bevel: 0.06 }),
      steel,
      here.move(plan.root.chord * 0.06, -6.2, 0.8),
    );
    half.put(
      cylinder(0.5, 0.7, { sides: 16 }),
      darkSteel,
      here.move(plan.root.chord * 0.06, -5.6, 0.3).turnX(90),
    );
  }
  if (showing.hung && /whole/.test(words)) {
    half.place(
      liftingSurface(showing.hung, { ...progress, clecos: 0 }, random.branch("hung")),
      here.move(plan.root.chord * rear + 1.6, 0, 0.6),
    );
  }
  const whole = new Group().place(half);
  if (showing.both) whole.place(half, here.size(1, 1, -1));
  const chord = plan.root.chord;
  const long = showing.both ? plan.span * 2 : plan.span;
  const middle = showing.both ? 0 : plan.span / 2;

  if (showing.standing || /standing|upright|leaning|full height|tall|brackets|hung/.test(words)) {
    const stage = shopFloor(random.branch("room"), { depth: 46, night, clear: true });
    const high = long;
    const onWall = /brackets|hung/.test(words) || showing.both;
    const lean = onWall ? 0 : 9;
    const base = onWall && !showing.both ? 26 : showing.both ? 44 : 0.5;
    // Span goes up (or along the wall for a stabilizer), chord along the wall.
    const pose: Pose = showing.both
      ? here
          .move(0, base, -39)
          .turnX(-12)
          .turnY(90)
          .turnZ(-90)
          .move(-chord / 2, 0, 0)
      : here
          .move(-chord * 0.45, base, onWall ? -38 : -30)
          .turnX(-lean)
          .turnX(-90);
    // The side with the fasteners faces the room.
    stage.place(whole, pose.size(1, -1, 1));
    if (onWall)
      for (const s of [-1, 1])
        stage.put(
          box(2, 1.2, 9),
          steel,
          here.move(
            showing.both ? s * long * 0.28 : s * chord * 0.2,
            base - (showing.both ? chord * 0.52 : 1.2),
            -41,
          ),
        );
    const height = showing.both ? chord : high;
    const centre: Vec3 = [0, base + (showing.both ? 0 : height * 0.48), -34];
    return {
      stage,
      camera: framed(setting, {
        target: centre,
        round: [-34, 34],
        above: [6, 16],
        limits: [3, 30],
        roundLimits: [-48, 48],
        away: (showing.both ? long * 1.85 : Math.max(high * 2.1, chord * 2.8)) + 16,
        tallAway: showing.both ? 1.5 : 0.92,
        aperture: 0.012,
      }),
      light: lightFor(setting),
      extent: { centre, radius: Math.max(long, 40) * 0.78 },
    };
  }

  const table = 34;
  const stage = tableInShop(random.branch("table"), {
    width: long * 1.2 + 14,
    depth: Math.max(30, chord * 1.5),
    height: table,
    night,
    wall: 62,
  });
  const rise = 1.2 + plan.root.chord * plan.root.thickness * 0.55 + (showing.horn ? 3.6 : 0);
  for (const s of [-0.32, 0.32])
    stage.put(
      box(2.4, rise - plan.root.chord * plan.root.thickness * 0.5, chord * 0.8, { bevel: 0.2 }),
      aluminiumPad,
      here.move(long * s, table, 0),
    );
  const flip = /underneath|from-below|bottom/.test(words) ? -1 : 1;
  stage.place(
    whole,
    here
      .move(0, table + rise, 0)
      .turnY(90 + random.sway(4))
      .size(1, flip, 1)
      .move(-chord * 0.5 - plan.sweep * 0.25, 0, -middle),
  );
  const side = random.pick([-1, 1]);
  return {
    stage,
    camera: framed(setting, {
      target: [side * 3, table + 1, 1],
      round: side > 0 ? [20, 46] : [-46, -20],
      above: [20, 32],
      limits: [9, 58],
      roundLimits: [-70, 70],
      away: long * 1.3 + chord * 0.8 + 18,
      tallAway: 1.2,
      aperture: 0.014,
      focusOn: [side * -2, table + 2, 6],
    }),
    light: lightFor(setting),
    extent: { centre: [0, table, 0], radius: long * 0.62 + 16 },
  };
}

const aluminiumPad = { color: [0.16, 0.11, 0.08] as const, roughness: 0.95, metal: false };
