import { lettered, letteredWidth, sevenSegment } from "../lettering.ts";
import {
  aluminium,
  chrome,
  darkSteel,
  filmed,
  machined,
  paint,
  primer,
  printed,
  rivetMetal,
} from "../materials.ts";
import { here } from "../pose.ts";
import { anyTop, benchWithWall } from "../props/bench.ts";
import { shopHead } from "../props/fasteners.ts";
import {
  type Composition,
  framed,
  lightFor,
  numberIn,
  type Scene,
  type Setting,
} from "../scene.ts";
import { box, cylinder, disc, face, lathe, sheet, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import { drawn } from "../texture.ts";
import { hex, type Vec3 } from "../vector.ts";

/** A dial with its needle at a reading. */
export const instrumentDial: Scene = {
  name: "instrument-dial",
  defaults: { reading: "0.046 in" },
  compose: async (setting: Setting): Promise<Composition> => {
    const { random, detail } = setting;
    const reading = detail.reading ?? "";
    const value = numberIn(reading, 0);
    const inches = /in\b/.test(reading) && !/lbf/.test(reading);
    const stage = benchWithWall(random, {
      top: anyTop(random),
      scale: 0.6,
      night: setting.light === "lamp",
    });
    if (/deg|°/.test(reading)) return protractor(setting, stage);
    const scale = inches ? 0.1 : scaleFor(Math.abs(value));
    const sweep = inches ? 360 : 300;
    const start = inches ? 0 : -150;
    const step = inches ? 10 : 10;
    const dial = await dialFace({
      scale,
      sweep,
      start,
      marks: step,
      inches,
      turns: inches ? Math.floor(value / 0.1 + 1e-9) : undefined,
    });
    const share = inches
      ? (((value % 0.1) + 0.1) % 0.1) / 0.1
      : Math.min(1, Math.max(0, value / scale));
    const needle = start + share * sweep;

    const gauge = new Group();
    const radius = 1.1;
    gauge.put(
      lathe(
        [
          [0, 0],
          [radius, 0],
          [radius + 0.04, 0.05],
          [radius + 0.04, 0.55],
          [radius - 0.04, 0.62],
          [radius - 0.1, 0.62],
          [radius - 0.12, 0.5],
        ],
        56,
      ),
      { ...darkSteel, color: [0.09, 0.092, 0.1] },
    );
    for (let i = 0; i < 60; i++) {
      const a = (i / 60) * 2 * Math.PI;
      gauge.put(
        box(0.05, 0.16, 0.05),
        { ...darkSteel, color: [0.1, 0.1, 0.11] },
        here
          .move((radius + 0.04) * Math.cos(a), 0.4, (radius + 0.04) * Math.sin(a))
          .turnY((-a * 180) / Math.PI),
      );
    }
    const r = radius - 0.11;
    gauge.put(disc(r), printed(dial, 2 * r, 0.6), here.move(0, 0.5, 0));
    const a = (needle * Math.PI) / 180;
    const tip: Vec3 = [Math.sin(a) * r * 0.86, 0.56, -Math.cos(a) * r * 0.86];
    const tail: Vec3 = [-Math.sin(a) * r * 0.26, 0.56, Math.cos(a) * r * 0.26];
    gauge.put(
      tube([tail, [0, 0.56, 0], tip], (t) => 0.032 - 0.026 * t, { sides: 6 }),
      paint("#17181b", 0.3),
    );
    gauge.put(cylinder(0.09, 0.1, { sides: 20, bevel: 0.02 }), chrome, here.move(0, 0.5, 0));
    gauge.put(cylinder(0.15, 1.1, { sides: 18 }), chrome, here.move(0, 0.3, radius).turnX(90));
    gauge.put(
      cylinder(0.07, 0.8, { sides: 14 }),
      chrome,
      here.move(0, 0.3, radius + 1.1).turnX(90),
    );
    gauge.put(
      lathe(
        [
          [0.07, 0],
          [0.11, 0.06],
          [0.08, 0.2],
          [0, 0.25],
        ],
        16,
      ),
      chrome,
      here.move(0, 0.3, radius + 1.9).turnX(90),
    );
    gauge.put(
      cylinder(0.08, 0.4, { sides: 12 }),
      chrome,
      here.move(0, 0.3, -radius - 0.4).turnX(90),
    );
    gauge.put(
      cylinder(0.16, 0.16, { sides: 20, bevel: 0.03 }),
      darkSteel,
      here.move(0, 0.3, -radius - 0.4).turnX(-90),
    );

    const work = new Group();
    const lying = random.chance(0.4) || (setting.view.above ?? 0) > 70;
    const part = random.chance(0.5)
      ? primer(random.whole(1, 99))
      : aluminium(random.whole(1, 99), 26);
    if (lying) {
      work.place(gauge, here.move(0, 0.12, 0).turnY(random.sway(18)));
      work.put(box(9, 0.1, 7, { bevel: 0.02 }), part, here.move(1, 0, 0.4));
      for (let i = 0; i < 6; i++)
        work.put(
          shopHead(0.125),
          { ...chrome, roughness: 0.3 },
          here.move(-2.6 + i * 1.2, 0.1, 2.9),
        );
    } else {
      // On its post, the plunger down on the part.
      const tiltBack = -82;
      work.place(gauge, here.move(0, 3.55, 0).turnX(-tiltBack));
      work.put(cylinder(0.24, 6.4, { sides: 20, bevel: 0.04 }), chrome, here.move(-2.5, 0.8, -0.6));
      work.put(
        box(3.2, 0.9, 2.6, { bevel: 0.12 }),
        { color: hex("#3b4148"), roughness: 0.4, metal: false },
        here.move(-2.5, 0, -0.6),
      );
      work.put(
        tube(
          [
            [-2.5, 3.6, -0.6],
            [-0.2, 3.55, -0.4],
          ],
          0.16,
          { sides: 14 },
        ),
        chrome,
      );
      work.put(
        cylinder(0.4, 0.7, { sides: 20, bevel: 0.08 }),
        machined(4),
        here.move(-2.5, 3.25, -0.6),
      );
      work.put(box(7, 0.62, 2.4, { bevel: 0.05 }), part, here.move(1.4, 0, 0.2));
      for (let i = 0; i < 6; i++)
        work.put(
          shopHead(0.125),
          { ...chrome, roughness: 0.3 },
          here.move(-1.2 + i * 1, 0.62, 0.9),
        );
    }
    stage.place(work, here.turnY(random.sway(14)));
    return {
      stage,
      camera: framed(setting, {
        target: lying ? [0, 0.4, 0.1] : [-0.2, 2.9, 0],
        round: [-30, 30],
        above: lying ? [46, 64] : [10, 24],
        limits: lying ? [40, 84] : [6, 34],
        roundLimits: [-38, 38],
        away: lying ? 7.4 : 9.8,
        aperture: 0.036,
        focusOn: lying ? [0, 0.6, 0] : [0, 3.5, 0.5],
      }),
      light: lightFor(setting),
      extent: { centre: lying ? [0.4, 0.3, 0.2] : [0, 2.4, 0], radius: lying ? 5.5 : 6.5 },
    };
  },
};

/** A round end for a scale that holds the value with room to spare. */
function scaleFor(value: number): number {
  for (const end of [1, 2, 5, 10, 20, 30, 50, 100, 200, 300, 500, 1000])
    if (end >= value * 1.15) return end;
  return value * 1.5;
}

async function dialFace({
  scale,
  sweep,
  start,
  marks,
  inches,
  turns,
}: {
  scale: number;
  sweep: number;
  start: number;
  marks: number;
  inches: boolean;
  turns: number | undefined;
}) {
  const c = 400;
  let svg = `<circle cx="${c}" cy="${c}" r="398" fill="#f4f1e6"/>`;
  const minor = marks * 10;
  for (let i = 0; i <= minor; i++) {
    if (inches && i === minor) continue;
    const a = ((start + (i / minor) * sweep) * Math.PI) / 180;
    const long = i % 10 === 0 ? 62 : i % 5 === 0 ? 46 : 30;
    const [s, k] = [Math.sin(a), -Math.cos(a)];
    svg += `<path d="M${c + s * 372} ${c + k * 372}L${c + s * (372 - long)} ${c + k * (372 - long)}" stroke="#1b1d20" stroke-width="${i % 10 === 0 ? 7 : 3.4}"/>`;
    if (i % 10 === 0) {
      const label = inches ? String(i) : String(Number(((scale * i) / minor).toFixed(2)));
      const height = 46;
      svg += lettered(
        label,
        c + s * 262 - letteredWidth(label, height) / 2 + 6,
        c + k * 262 - height / 2,
        height,
        { color: "#1b1d20", pen: 0.15 },
      );
    }
  }
  if (inches && turns !== undefined) {
    svg += `<circle cx="${c}" cy="${c + 118}" r="70" fill="none" stroke="#1b1d20" stroke-width="3"/>`;
    for (let i = 0; i < 10; i++) {
      const a = (i / 10) * 2 * Math.PI;
      svg += `<path d="M${c + Math.sin(a) * 68} ${c + 118 - Math.cos(a) * 68}L${c + Math.sin(a) * 52} ${c + 118 - Math.cos(a) * 52}" stroke="#1b1d20" stroke-width="4"/>`;
    }
    const a = (turns / 10) * 2 * Math.PI;
    svg += `<path d="M${c - Math.sin(a) * 16} ${c + 118 + Math.cos(a) * 16}L${c + Math.sin(a) * 56} ${c + 118 - Math.cos(a) * 56}" stroke="#a3201a" stroke-width="8" stroke-linecap="round"/>`;
  }
  return drawn(svg, { width: 800, height: 800, ground: "#f4f1e6" });
}

/** A digital protractor standing on a surface, its base along the slope it shows. */
async function protractor(setting: Setting, stage: Group): Promise<Composition> {
  const { random, detail } = setting;
  const reading = detail.reading ?? "";
  const number = reading.match(/-?[\d.]+/)?.[0] ?? "0";
  const slope = Math.min(30, Math.max(-30, Number(number)));
  const panel = await drawn(
    sevenSegment(number, 470, 50, 160, { color: "#15190f", ghost: "#a3b098" }) +
      `<circle cx="510" cy="76" r="20" fill="none" stroke="#15190f" stroke-width="9"/>` +
      `<path d="M60 228H560M60 228L${60 + 500 * Math.cos((slope * Math.PI) / 180)} ${228 - 500 * Math.sin((slope * Math.PI) / 180) * 0.3}" stroke="#15190f" stroke-width="6"/>`,
    { width: 620, height: 250, ground: "#aebba2" },
  );
  const body = { color: hex("#c9452c"), roughness: 0.4, metal: false };
  const level = new Group()
    .put(box(6.4, 2.5, 1.1, { bevel: 0.14, round: 0.3 }), body)
    .put(box(6.5, 0.3, 1.2, { bevel: 0.03 }), machined(4))
    .put(face(3.6, 1.45), printed(panel, 3.6, 0.2), here.move(-1.8, 0.62, 0.552))
    .put(
      box(3.8, 1.65, 0.02),
      { color: hex("#1d2023"), roughness: 0.25, metal: false },
      here.move(0, 0.52, 0.536),
    );
  for (const x of [-2.45, 2.45])
    level.put(
      cylinder(0.26, 0.1, { sides: 22, bevel: 0.03 }),
      paint(x < 0 ? "#3b4046" : "#e6e1d4", 0.4),
      here.move(x, 1.3, 0.53).turnX(90),
    );
  // A skin bowed over two ribs, as steep as the display says.
  const skinned = random.chance(0.5)
    ? aluminium(random.whole(1, 99), 20)
    : filmed(random.whole(1, 99));
  const work = new Group()
    .put(
      sheet((u, v) => [(u - 0.5) * 15, -0.02 - 0.9 * (2 * u - 1) ** 4, (0.5 - v) * 9], 24, 6),
      skinned,
    )
    .place(level, here.move(0, 0, 0.6));
  for (const z of [-3.4, 3.6])
    for (let i = 0; i < 12; i++)
      work.put(
        shopHead(0.1, { flat: 0.3 }),
        rivetMetal,
        here.move(-5 + i * 0.9, -0.03 - 0.9 * ((-5 + i * 0.9) / 7.5) ** 4, z),
      );
  const rise = 1.9 + Math.abs(Math.sin((slope * Math.PI) / 180)) * 7;
  stage.place(work, here.turnY(random.sway(10)).move(0, rise, 0).turnZ(slope));
  for (const x of [-4.6, 4.6]) {
    const top = rise + x * Math.sin((slope * Math.PI) / 180) - 0.9;
    stage.put(
      box(2, Math.max(0.4, top), 7, { bevel: 0.08 }),
      paint("#a67c4c", 0.8),
      here.move(x * Math.cos((slope * Math.PI) / 180), 0, 0),
    );
  }
  return {
    stage,
    camera: framed(setting, {
      target: [0, rise + 0.9, 0],
      round: [-26, 26],
      above: [12, 26],
      limits: [7, 36],
      roundLimits: [-34, 34],
      away: 15.5,
      aperture: 0.032,
      focusOn: [0, rise + 1.2, 1],
    }),
    light: lightFor(setting),
    extent: { centre: [0, rise * 0.7, 0], radius: 9 },
  };
}
