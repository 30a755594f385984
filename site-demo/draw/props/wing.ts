import { boards, matte } from "../materials.ts";
import { here } from "../pose.ts";
import { type Composition, framed, lightFor, type Setting } from "../scene.ts";
import { box } from "../shape.ts";
import { shopFloor } from "./bench.ts";
import { liftingSurface, type Plan, type Progress } from "./lifting-surface.ts";

/** A whole wing lying on two stands, span along x. */
export function showWing(
  setting: Setting,
  {
    ribs,
    progress,
    upsideDown = false,
  }: { ribs: number; progress: Progress; upsideDown?: boolean },
): Composition {
  const { random } = setting;
  const night = setting.light === "lamp" || setting.light === "strip";
  const plan: Plan = {
    root: { chord: 52, thickness: 0.15, camber: 0.02 },
    tip: { chord: 52, thickness: 0.15, camber: 0.02 },
    span: 126,
    sweep: 0,
    spars: [0.28, 0.76],
    ribs,
  };
  const stage = shopFloor(random.branch("room"), { depth: 92, night });
  const wood = boards(random.whole(1, 99), { width: 30, gap: false });
  const height = 34;
  for (const s of [-1, 1]) {
    const at = here.move(s * 42, 0, 0);
    stage.put(box(3.5, 3.5, 56), wood, at.move(0, height - 6.6, 0));
    stage.put(
      box(4.2, 1.2, 56, { bevel: 0.3 }),
      matte("#5b3a34", 5, 0.98),
      at.move(0, height - 3.4, 0),
    );
    for (const z of [-22, 22]) {
      stage.put(box(3.5, height - 6, 3.5), wood, at.move(0, 0, z));
      stage.put(box(16, 3.5, 3.5), wood, at.move(0, 0, z));
    }
  }
  const surface = liftingSurface(
    plan,
    { ...progress, side: upsideDown ? -1 : 1 },
    random.branch("wing"),
  );
  stage.place(
    surface,
    here
      .move(0, height + 2.2, 0)
      .turnY(90)
      .size(1, upsideDown ? -1 : 1, 1)
      .move(-plan.root.chord / 2, upsideDown ? -2.6 : 0, -plan.span / 2),
  );
  const side = random.pick([-1, 1]);
  return {
    stage,
    camera: framed(setting, {
      target: [side * 6, height - 2, 4],
      round: side > 0 ? [34, 52] : [-52, -34],
      above: [17, 26],
      limits: [10, 40],
      roundLimits: [-60, 60],
      away: 188,
      tallAway: 1.1,
      aperture: 0.01,
      focusOn: [side * 30, height, 10],
    }),
    light: lightFor(setting),
    extent: { centre: [0, height - 6, 0], radius: 84 },
  };
}
