import { aluminium, primer, steel } from "../materials.ts";
import { inset } from "../polygon.ts";
import { here } from "../pose.ts";
import {
  channel,
  fastened,
  lighteningHoles,
  pressedRib,
  type Section,
  sectionOutline,
} from "../props/airframe.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box } from "../shape.ts";
import { hex, type Vec3 } from "../vector.ts";

/** Ribs held to a length of spar by clecos. */
export const ribClecoed: Scene = {
  name: "rib-clecoed",
  defaults: { ribs: "3", clecos: "12", size: "3/32" },
  compose: (setting: Setting): Composition => {
    const { random, detail, words } = setting;
    const ribs = Math.max(1, Math.min(12, numberIn(detail.ribs, 3)));
    const clecos = Math.min(120, numberIn(detail.clecos, 12));
    if (ribs === 1 && /plate|glass/.test(words)) return ribOnPlate(setting, clecos);
    const spacing = Math.min(7, 30 / ribs);
    const length = Math.max(12, spacing * ribs + 4);
    const bare = random.chance(0.6);
    const metal = aluminium(random.whole(1, 99));
    const sparMetal = bare ? aluminium(random.whole(1, 99), 30) : primer(random.whole(1, 99));
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.8,
      night: setting.light === "lamp",
    });
    const height = 5;
    stage.place(
      channel(length, height, 1.1, sparMetal),
      here.move(-length / 2, 0.02, -0.05).size(1, 1, -1),
    );

    const section: Section = { chord: 30, thickness: 0.152, camber: 0 };
    const from = 0.42;
    const to = 0.93;
    const half = height / 2;
    const outline = sectionOutline(section, from, to, 14).map(
      ([x, y]) => [x - from * section.chord, y] as const,
    );
    const holes = lighteningHoles(section, from, to - 0.1, 3).map((h) => ({
      ...h,
      x: h.x - from * section.chord,
    }));
    const rib = pressedRib(outline, holes, metal, { flutes: 18 });
    const places: { at: Vec3; out: Vec3 }[] = [];
    const perRib = Math.ceil(clecos / ribs);
    for (let i = 0; i < ribs; i++) {
      const x = (i - (ribs - 1) / 2) * spacing;
      stage.place(rib, here.move(x, half, 0.03).turnY(-90));
      const count = Math.min(perRib, clecos - i * perRib);
      const inTab = Math.min(count, 5);
      for (let k = 0; k < inTab; k++) {
        const y = half + (inTab === 1 ? 0 : (k / (inTab - 1) - 0.5) * 3.4);
        places.push({ at: [x - 0.34, y, 0.06], out: [0, 0, 1] });
      }
      for (let k = inTab; k < count; k++) {
        places.push({
          at: [x - 0.3, half + 2.2 - (k - inTab) * 0.14, 0.9 + (k - inTab) * 1.2],
          out: [0.05, 1, 0],
        });
      }
    }
    stage.place(fastened(places, { kind: "cleco", size: detail.size ?? "3/32", plain: false }));

    return {
      stage,
      camera: framed(setting, {
        target: [0, 2.2, 4.2],
        round: [-42, 42],
        above: [20, 40],
        away: 26 + Math.max(0, length - 16) * 0.8,
        aperture: 0.02,
        focusOn: [0, 3, 2.5],
      }),
      light: lightFor(setting),
      extent: { centre: [0, 2, 4], radius: Math.max(15, length * 0.62) },
    };
  },
};

/** A whole rib lying flat, its flange down, clecos standing round its web. */
function ribOnPlate(setting: Setting, clecos: number): Composition {
  const { random, detail, words } = setting;
  const glass = /glass/.test(words);
  const stage = benchWithWall(random, {
    top: anyTop(random),
    scale: 0.9,
    night: setting.light === "lamp",
  });
  const section: Section = { chord: 50, thickness: 0.15, camber: 0.015 };
  const [from, to] = [0.27, 0.77];
  const shift = section.chord * 0.52;
  const outline = sectionOutline(section, from, to, 16).map(([x, y]) => [x - shift, y] as const);
  const holes = lighteningHoles(section, from, to - 0.02, 4).map((hole) => ({
    ...hole,
    x: hole.x - shift,
  }));
  const base = glass ? { color: hex("#5d7470"), roughness: 0.05, metal: false } : steel;
  stage.put(box(31, 0.45, 13, { bevel: 0.05 }), base);
  stage.place(
    pressedRib(outline, holes, aluminium(random.whole(1, 99)), { flutes: 22, flange: 0.75 }),
    here.move(0, 0.45 + 0.76, 0).turnX(90),
  );
  const inner = inset(outline, 0.55);
  const places = Array.from({ length: clecos }, (_, i): { at: Vec3; out: Vec3 } => {
    const [x, y] = inner[Math.floor(((i + 0.5) / clecos) * inner.length)] ?? [0, 0];
    return { at: [x, 0.45 + 0.77, y], out: [0, 1, 0] };
  });
  stage.place(fastened(places, { kind: "cleco", size: detail.size ?? "1/8", plain: false }));
  return {
    stage,
    camera: framed(setting, {
      target: [0, 1, 0],
      round: [-34, 34],
      above: [28, 44],
      limits: [15, 70],
      away: 41,
      tallAway: 1.3,
      aperture: 0.022,
      focusOn: [0, 1, 2],
    }),
    light: lightFor(setting),
    extent: { centre: [0, 1, 0], radius: 19 },
  };
}
