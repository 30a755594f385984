import { aluminium, primer } from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall, clecoTin, mug, pencil, plate, steelRule } from "../props/bench.ts";
import { clecoSizes } from "../props/fasteners.ts";
import {
  buckingBar,
  caliper,
  clecoPliers,
  deburringTool,
  deskLamp,
  drill,
  earDefenders,
  file,
  glasses,
  hammer,
  notebook,
  reamer,
  rivetBox,
  rivetGun,
  screwClamp,
  scriber,
  snips,
  socket,
  springClamp,
  squeezer,
  swarf,
  tapeRoll,
  torqueWrench,
  tray,
  trySquare,
  vice,
} from "../props/tools.ts";
import type { Random } from "../random.ts";
import { type Composition, framed, lightFor, type Scene, type Setting } from "../scene.ts";
import { Group } from "../stage.ts";

type Tool = (random: Random, on: boolean) => Group | Promise<Group>;

/** What can lie on the bench, how much room it takes, and whether it stands at the back. */
const tools: Readonly<
  Record<string, { readonly make: Tool; readonly room: number; readonly back?: boolean }>
> = {
  drill: { make: (random) => drill(random.pick(["#9aa0a4", "#a3453a"])), room: 9 },
  caliper: {
    make: async () => new Group().place(await caliper("0.000", 0.02), here.move(-3, 0, 0)),
    room: 9,
  },
  tape: {
    make: (random) =>
      new Group()
        .place(tapeRoll("#e2cf9c"))
        .place(tapeRoll(random.pick(["#3f74bd", "#c9c2b0"])), here.move(0.2, 1, 0.1)),
    room: 5,
  },
  mug: { make: (random) => mug(random), room: 4.5 },
  lamp: {
    make: (random, on) => deskLamp(random.pick(["#2e5d4b", "#8c2f26", "#2f3437", "#c9a227"]), on),
    room: 9,
    back: true,
  },
  notebook: { make: notebook, room: 9 },
  "rivet-gun": { make: () => rivetGun(), room: 10 },
  squeezer: { make: () => new Group().place(squeezer(), here.move(4, 0, 0)), room: 14 },
  clecos: {
    make: (random) =>
      new Group()
        .place(clecoTin(random.pick(clecoSizes)[0], random))
        .place(clecoPliers(), here.move(3, 0, 2).turnY(24)),
    room: 7,
  },
  snips: { make: () => snips(), room: 8 },
  hammer: { make: () => hammer(), room: 10 },
  file: { make: () => file(), room: 9 },
  square: { make: () => trySquare(), room: 7 },
  scriber: { make: () => scriber(), room: 6 },
  pencil: { make: () => pencil(), room: 6 },
  rule: { make: () => new Group().place(steelRule(12), here.move(-6, 0, 0)), room: 11 },
  "torque-wrench": { make: () => new Group().place(torqueWrench(), here.move(-6, 0, 0)), room: 11 },
  pliers: { make: () => clecoPliers(), room: 7 },
  "bucking-bar": { make: () => buckingBar(), room: 4 },
  reamer: { make: () => reamer(), room: 6 },
  clamps: {
    make: () =>
      new Group()
        .place(screwClamp(2), here.move(0, 0.4, 0).turnX(90))
        .place(springClamp(), here.move(4, 0.5, 0).turnZ(90)),
    room: 9,
  },
  goggles: { make: () => glasses(), room: 6 },
  glasses: { make: () => glasses(), room: 6 },
  "ear-defenders": { make: () => earDefenders(), room: 8 },
  countersink: {
    make: () => new Group().place(deburringTool(), here.move(0, 0.5, 0).turnZ(90)),
    room: 5,
  },
  deburrer: {
    make: () => new Group().place(deburringTool(), here.move(0, 0.5, 0).turnZ(90)),
    room: 5,
  },
  rivets: { make: rivetBox, room: 4.5 },
  tray: { make: () => tray(), room: 8 },
  socket: { make: () => socket(0.6), room: 3 },
  vice: { make: () => vice(), room: 8, back: true },
};

/** The bench with what lay on it that day. */
export const benchOverview: Scene = {
  name: "bench-overview",
  defaults: { tools: "drill caliper tape mug" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail } = setting;
    const night = setting.light === "lamp";
    const stage = benchWithWall(random, {
      top: anyTop(random, ["boards", "oak", "plywood"]),
      scale: 1,
      night,
      clutter: true,
    });
    const wanted = (detail.tools ?? "").split(/[\s,]+/).filter(Boolean);
    const missing = wanted.find((name) => !(name in tools));
    if (missing)
      throw new RangeError(
        `no tool \`${missing}\` for the bench (there are ${Object.keys(tools).join(", ")})`,
      );
    const side = random.pick([-1, 1]);
    // Work in hand lies in the middle, the tools round it.
    const metal = random.pick([
      aluminium(random.whole(1, 99), 20),
      aluminium(random.whole(1, 99), 26),
      primer(random.whole(1, 99)),
    ]);
    const holes = Array.from({ length: 14 }, (_, i) => ({ x: -6.5 + i, z: 2.4, radius: 0.08 }));
    stage.place(
      plate(15.5, 6.4, 0.06, metal, holes),
      here.move(side * 2, 0, -0.4).turnY(random.sway(12)),
    );
    stage.place(swarf(random.branch("swarf"), 14, 6, 30), here.move(side * 2, 0.06, 0));
    const ring: [number, number][] = [
      [-side * 9, 4.6],
      [side * 5.2, 6],
      [-side * 3.6, 6.8],
      [side * 12, 2.4],
      [-side * 12.5, -2.6],
      [side * 0.6, -6],
      [side * 11, -5],
      [-side * 8, -7],
      [side * 15, -9],
    ];
    let place = 0;
    let rear = 0;
    for (const name of wanted) {
      const tool = tools[name];
      if (!tool) continue;
      const group = await tool.make(random.branch(name), night || setting.light === "dusk");
      if (tool.back) {
        stage.place(
          group,
          here
            .move(-side * (8.5 - rear * 17), 0, -8.4)
            .turnY(-side * (rear ? 150 : 20) + random.sway(12)),
        );
        rear++;
        continue;
      }
      const [x, z] = ring[place++ % ring.length] ?? [0, 0];
      const free =
        tool.room < 6 ? random.between(0, 360) : random.sway(32) + (random.chance(0.5) ? 180 : 0);
      stage.place(group, here.move(x + random.sway(0.8), 0.07, z + random.sway(0.8)).turnY(free));
    }
    return {
      stage,
      camera: framed(setting, {
        target: [0, 1, -0.4],
        round: [-30, 30],
        above: [30, 46],
        limits: [16, 70],
        away: 44,
        aperture: 0.022,
        focusOn: [0, 0, 2],
        tallAway: 1.12,
      }),
      light: lightFor(setting),
      extent: { centre: [0, 2, -1], radius: 20 },
    };
  },
};
