import { aluminium, boards, filmed, matte, paint, primer, steel } from "../materials.ts";
import { here } from "../pose.ts";
import { channel, fastened } from "../props/airframe.ts";
import { shopFloor } from "../props/bench.ts";
import { liftingSurface, type Plan } from "../props/lifting-surface.ts";
import { looksOf, person, type Stance, stool } from "../props/person.ts";
import { cFramePress, pressLevel } from "../props/press.ts";
import { tableInShop } from "../props/room.ts";
import { rivetGun } from "../props/tools.ts";
import type { Random } from "../random.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Vec3 } from "../vector.ts";

const tail: Plan = {
  root: { chord: 28, thickness: 0.13, camber: 0 },
  tip: { chord: 22, thickness: 0.12, camber: 0 },
  span: 46,
  sweep: 4,
  spars: [0.2, 0.9],
  ribs: 6,
};

/** One or two people at the riveting, from behind or from the side. */
export const builderBucking: Scene = {
  name: "builder-bucking",
  defaults: { people: "1" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const two = numberIn(detail.people, 1) > 1;
    const night = setting.light === "lamp" || setting.light === "strip";
    if (/shoes|under the/.test(words)) return underTheWing(setting);
    const table = 35;
    const stage = tableInShop(random.branch("table"), {
      width: 66,
      depth: 30,
      height: table,
      night,
      wall: 74,
    });
    stage.place(workInHand(words, random.branch("work")), here.move(0, table, 0));
    const sitting = /sitting|listens/.test(words);
    const x = two ? -12 : random.sway(4);
    const first: Stance = sitting
      ? {
          hips: [x, 26, 19],
          neck: [x + 0.6, 46, 16.5],
          left: { hand: [x - 5, table + 9, 3.4], foot: [x - 7, 6.5, 9] },
          right: { hand: [x + 7, table + 13, 3.2], foot: [x + 6, 6.5, 10] },
          gaze: [x + 2, 42, -4],
        }
      : {
          hips: [x, 38, 20],
          neck: [x + 0.5, 57.5, 15],
          left: { hand: [x - 7, table + 15, 3.2], foot: [x - 5, 0, 21] },
          right: { hand: [x + 6.5, table + 13, 4.2], foot: [x + 6, 0, 18] },
          gaze: [x + 2, 49, -3],
        };
    if (sitting) stage.place(stool(25), here.move(x, 0, 20));
    stage.place(person(first, looksOf(two ? "" : words)));
    const gun = new Group().place(rivetGun(), here.move(-2.6, -0.75, 0));
    stage.place(
      gun,
      here
        .move(first.right.hand[0] - 0.4, first.right.hand[1] + 3.4, first.right.hand[2] - 1.4)
        .turnY(90)
        .turnX(0)
        .size(0.9),
    );
    if (two) {
      const x2 = 25;
      const second: Stance = {
        hips: [x2, 38, -17],
        neck: [x2 - 2, 57.5, -13],
        left: { hand: [x2 + 2, table + 16, -4], foot: [x2 + 6, 0, -19] },
        right: { hand: [x2 - 9, table + 12, -4], foot: [x2 - 5, 0, -22] },
        gaze: [x2 - 7, 48, 4],
      };
      stage.place(
        turnedRound(
          second,
          looksOf(/ruben|pip|delbert|konrad|oskar|ines/.test(words) ? words : "ruben"),
        ),
      );
      stage.put(box(2, 1.4, 3, { bevel: 0.1 }), steel, here.move(x2 - 9, table + 12, -3));
    }
    // An air hose over the floor.
    stage.put(
      tube(
        [
          [first.right.hand[0] + 1, table + 10, 6],
          [26, table - 2, 17],
          [30, 10, 20],
          [33, 0.4, 30],
          [60, 0.4, 36],
          [120, 0.4, -20],
        ],
        0.45,
        { sides: 8 },
      ),
      paint("#a32b20", 0.5),
    );
    const side = random.pick([-1, 1]);
    return {
      stage,
      camera: framed(setting, {
        target: [two ? 5 : 0, 40, 4],
        round: side > 0 ? [22, 52] : [-52, -22],
        above: [7, 16],
        limits: [3, 46],
        roundLimits: [-68, 68],
        away: two ? 150 : 128,
        tallAway: 0.98,
        aperture: 0.012,
        focusOn: [0, 46, 12],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 30, 2], radius: 58 },
    };
  },
};

/** What is being worked on, by what the words name; its foot at height 0. */
function workInHand(words: string, random: Random): Group {
  const group = new Group();
  if (/press/.test(words)) {
    group.place(cFramePress(paint("#7a2f28", 0.42), 0.098, 0.2), here.move(-4, 0, -6).size(1.35));
    group.put(box(40, 0.1, 13, { bevel: 0.02 }), filmed(3), here.move(2, pressLevel * 1.35, -4));
    for (const x of [-17, 17])
      group.put(
        box(4, pressLevel * 1.35, 8, { bevel: 0.1 }),
        boards(4, { width: 20, gap: false }),
        here.move(x, 0, -3),
      );
    return group;
  }
  if (/spar|bulkhead/.test(words)) {
    const web = /bulkhead/.test(words) ? primer(5) : aluminium(5, 16);
    const holes = [0.2, 0.4, 0.6, 0.8].map((share) => ({ x: 54 * share, y: 6.5, radius: 2.4 }));
    group.place(
      channel(54, 13, 2, web, { gauge: 0.08, holes }),
      here.move(-27, 1, 1).size(1, 1, -1),
    );
    const places: { at: Vec3; out: Vec3 }[] = [];
    for (let i = 0; i < 26; i++)
      for (const y of [1.9, 13.1]) places.push({ at: [-25.6 + i * 2.05, y, 1.06], out: [0, 0, 1] });
    for (const y of [1.3, 12.4])
      group.put(box(56, 1.5, 0.4, { bevel: 0.06 }), aluminium(8, 20), here.move(0, y, 1.2));
    group.place(
      fastened(
        places.filter((_, i) => i % 3 === 0),
        { kind: "cleco", size: "1/8", plain: true },
        1.3,
      ),
      here.move(0, 0, 0.4),
    );
    for (const x of [-18, 18])
      group.put(
        box(3, 1, 12, { bevel: 0.1 }),
        boards(4, { width: 20, gap: false }),
        here.move(x, 0, 0),
      );
    return group;
  }
  if (/ribs|wing|bar\b|konrad|nose/.test(words)) {
    const wing: Plan = {
      root: { chord: 30, thickness: 0.2, camber: 0.02 },
      tip: { chord: 30, thickness: 0.2, camber: 0.02 },
      span: 58,
      sweep: 0,
      spars: [0.24, 0.82],
      ribs: 8,
    };
    group.place(
      liftingSurface(
        wing,
        { skins: /nose/.test(words) ? [-1] : [], primed: true, clecos: 30, riveted: false },
        random,
      ),
      here
        .move(0, 4, -1)
        .turnY(90)
        .turnZ(84)
        .move(-3, 0, -wing.span / 2),
    );
    group.place(rack());
    return group;
  }
  const bare = random.chance(0.4);
  group.place(
    liftingSurface(
      tail,
      { skins: [1], primed: !bare, clecos: 34, riveted: false, film: random.chance(0.6) },
      random,
    ),
    here
      .move(0, 2.2, -1)
      .turnY(90)
      .turnZ(80)
      .move(-3, 0, -tail.span / 2),
  );
  return group.place(rack());
}

/** Padded blocks that hold a surface on its edge. */
function rack(): Group {
  const group = new Group();
  for (const x of [-15, 15]) {
    for (const z of [-3.6, 2.6])
      group.put(
        box(2.6, 7, 1.4, { bevel: 0.1 }),
        boards(4, { width: 20, gap: false }),
        here.move(x, 0, z),
      );
    group.put(box(2.6, 1.6, 8), matte("#5b3a34", 5, 0.98), here.move(x, 0, -0.6));
  }
  return group;
}

/** A figure on the far side, facing the viewer: built facing -z and turned half round. */
function turnedRound(stance: Stance, looks: Parameters<typeof person>[1]): Group {
  const turn = ([x, y, z]: Vec3): Vec3 => [-x, y, -z];
  const swapped: Stance = {
    hips: turn(stance.hips),
    neck: turn(stance.neck),
    left: { hand: turn(stance.left.hand), foot: turn(stance.left.foot) },
    right: { hand: turn(stance.right.hand), foot: turn(stance.right.foot) },
    gaze: turn(stance.gaze),
  };
  return new Group().place(person(swapped, looks), here.turnY(180));
}

/** Two legs and two shoes: whoever bucks lies under the wing. */
function underTheWing(setting: Setting): Composition {
  const { random } = setting;
  const night = setting.light === "lamp" || setting.light === "strip";
  const stage = shopFloor(random.branch("room"), { depth: 96, night });
  const plan: Plan = {
    root: { chord: 52, thickness: 0.15, camber: 0.02 },
    tip: { chord: 52, thickness: 0.15, camber: 0.02 },
    span: 110,
    sweep: 0,
    spars: [0.28, 0.76],
    ribs: 12,
  };
  stage.place(
    liftingSurface(
      plan,
      { skins: [1], primed: true, clecos: 90, riveted: true },
      random.branch("wing"),
    ),
    here.move(0, 24, -6).turnY(90).move(-26, 0, -55),
  );
  const wood = boards(4, { width: 30, gap: false });
  for (const x of [-38, 38]) {
    stage.put(box(3.5, 20, 50), wood, here.move(x, 0, -6));
    stage.put(box(4, 0.8, 50, { bevel: 0.2 }), matte("#5b3a34", 5, 0.98), here.move(x, 20, -6));
  }
  const looks = looksOf(setting.words);
  // Lying on the back, head under the wing: the legs come out towards the viewer.
  for (const s of [-1, 1]) {
    const knee: Vec3 = s < 0 ? [s * 4.6, 5, 28] : [6.4, 17, 24];
    const foot: Vec3 = s < 0 ? [s * 5.4, 4, 46] : [7.4, 3.5, 36];
    stage.put(
      tube([[s * 3.4, 5.4, 8], knee, foot], (t) => 4.6 - 1.9 * t, { sides: 18 }),
      looks.trousers,
    );
    const upward =
      s < 0
        ? here.move(foot[0], 5.6, foot[2] + 1.4).turnX(80)
        : here.move(foot[0], 1.6, foot[2] + 2).turnX(0);
    stage.put(
      cylinder(2.2, 3, { sides: 16, bevel: 0.4 }),
      looks.shoes,
      here.move(foot[0], s < 0 ? 2 : 1, foot[2] - 0.6),
    );
    stage.put(
      box(4.2, 3, 10.6, { bevel: 0.7, round: 1.9 }),
      looks.shoes,
      upward.move(0, s < 0 ? -1.2 : -1.4, 2),
    );
  }
  stage.put(box(20, 1.4, 34, { bevel: 0.3 }), paint("#26406b", 0.7), here.move(0, 0, 2));
  stage.put(box(24, 0.5, 30), aluminium(4, 10), here.move(46, 0, 34).turnY(20));
  return {
    stage,
    camera: framed(setting, {
      target: [0, 14, 18],
      round: [-34, 34],
      above: [13, 20],
      away: 132,
      aperture: 0.014,
      focusOn: [0, 6, 40],
    }),
    light: lightFor(setting),
    extent: { centre: [0, 12, 6], radius: 62 },
  };
}
