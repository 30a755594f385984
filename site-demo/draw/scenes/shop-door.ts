import { openLight } from "../lighting.ts";
import { paint } from "../materials.ts";
import { here } from "../pose.ts";
import { liftingSurface } from "../props/lifting-surface.ts";
import { seasonOf, shopFront, snowBank, tree, yard } from "../props/yard.ts";
import { Random } from "../random.ts";
import { type Composition, framed, isYes, type Scene, type Setting } from "../scene.ts";
import { box, sphere, tube } from "../shape.ts";
import { Group } from "../stage.ts";

/** The shop from outside, its doors open, in a season. */
export const shopDoor: Scene = {
  name: "shop-door",
  defaults: { season: "", night: "no" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const season = seasonOf(detail.season, setting.month);
    const night = isYes(detail.night);
    const winter = season === "winter";
    // The same yard and the same shop in every season.
    const always = random.branch("here");
    const stage = yard(always, season, { fence: -230, drive: 60 });
    stage.place(shopFront(new Random("the shop"), { night, snow: winter }));
    const wing = {
      root: { chord: 46, thickness: 0.15, camber: 0.02 },
      tip: { chord: 46, thickness: 0.15, camber: 0.02 },
      span: 70,
      sweep: 0,
      spars: [0.3, 0.76],
      ribs: 8,
    };
    stage.place(
      liftingSurface(
        wing,
        { skins: [1, -1], primed: false, clecos: 0, riveted: true },
        random.branch("wing"),
      ),
      here.move(-38, 40, -52).turnY(84).turnZ(-26),
    );
    if (winter) {
      stage.place(snowBank(random, 150, 30, 12), here.move(-130, 0, 20));
      stage.place(snowBank(random, 150, 30, 12), here.move(130, 0, 18));
      for (let i = 0; i < 130; i++) {
        stage.put(
          sphere(random.between(0.3, 0.7), 6),
          {
            color: [1, 1, 1],
            roughness: 1,
            metal: false,
            glow: night ? [0.1, 0.12, 0.16] : [0.2, 0.2, 0.22],
            shadowless: true,
          },
          here.move(random.sway(170), random.between(5, 170), random.between(20, 210)),
        );
      }
    }
    const side = random.pick([-1, 1]);
    stage.place(tree(random, season), here.move(side * 150, 0, -20));
    for (let i = 0; i < 3; i++)
      stage.put(
        sphere(12 + i * 3, 14),
        paint(winter ? "#5d564a" : "#5c7440", 0.98),
        here.move(-side * (96 + i * 22), 6, 14).size(1, 0.8, 0.9),
      );
    if (/mum|chair/.test(words)) stage.place(chair(), here.move(6, 0.5, 4).turnY(-24));
    const from = /backlit/.test(words) ? 118 : Math.sign(setting.lightFrom) * 46;
    const light = openLight(
      { night, winter, evening: !night && setting.hour > 16.8 && !winter },
      from,
      random.branch("light"),
    );
    // At night the room itself lights the drive.
    const lamps = night
      ? [
          ...light.lamps,
          {
            toward: [0, 0.34, -0.94] as const,
            away: 0.62,
            radius: 0.1,
            color: [0.85, 0.58, 0.3] as const,
            cone: 62,
          },
        ]
      : light.lamps;
    return {
      stage,
      camera: framed(setting, {
        target: [0, 66, 0],
        round: [-30, 30],
        above: [4, 9],
        limits: [3, 14],
        roundLimits: [-38, 38],
        away: 375,
        tallAway: 1.16,
        aperture: 0.004,
      }),
      light: { ...light, lamps },
      extent: { centre: [0, 50, 20], radius: 190 },
    };
  },
};

/** A kitchen chair. */
function chair(): Group {
  const wood = paint("#b98a52", 0.5);
  const group = new Group().put(
    box(17, 1.2, 16, { bevel: 0.3, round: 2 }),
    wood,
    here.move(0, 17, 0),
  );
  for (const x of [-7, 7]) {
    group.put(
      tube(
        [
          [x, 0, 7],
          [x, 17.4, 6.4],
        ],
        0.85,
        { sides: 8 },
      ),
      wood,
    );
    group.put(
      tube(
        [
          [x, 0, -7.6],
          [x, 17.4, -6.6],
          [x, 36, -9.4],
        ],
        0.85,
        { sides: 8 },
      ),
      wood,
    );
  }
  for (const y of [24, 29, 34])
    group.put(box(15, 2.4, 0.7, { bevel: 0.15 }), wood, here.move(0, y, -7.4 - (y - 20) * 0.12));
  return group;
}
