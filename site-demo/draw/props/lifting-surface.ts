import { aluminium, darkSteel, filmed, primer } from "../materials.ts";
import { here } from "../pose.ts";
import type { Random } from "../random.ts";
import { lathe, quad, tube } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { cross, subtract, unit, type Vec3 } from "../vector.ts";
import {
  fastened,
  lighteningHoles,
  pressedRib,
  type Section,
  sectionOutline,
  skin,
  spanwise,
} from "./airframe.ts";

/** A wing, a tail surface or a control surface: chord along x, span along z from 0, thickness along y. */
export interface Plan {
  readonly root: Section;
  readonly tip: Section;
  readonly span: number;
  /** How far the tip's leading edge lies behind the root's, inches. */
  readonly sweep: number;
  /** Shares of the chord where the spars stand. */
  readonly spars: readonly number[];
  readonly ribs: number;
}

/** How far the work has come. */
export interface Progress {
  /** Which sides carry their skins. */
  readonly skins: readonly (1 | -1)[];
  readonly primed: boolean;
  /** Holding the skins, or the ribs where there are none. */
  readonly clecos: number;
  /** Rows of driven rivets show on the skins. */
  readonly riveted: boolean;
  readonly clecoSize?: string;
  /** Some skins still wear their film. */
  readonly film?: boolean;
  /** The side that shows its fasteners; the upper one where it has a skin. */
  readonly side?: 1 | -1;
}

/** The section at a share of the span. */
function sectionAt({ root, tip }: Plan, share: number): Section {
  return {
    chord: root.chord + (tip.chord - root.chord) * share,
    thickness: root.thickness + (tip.thickness - root.thickness) * share,
    camber: root.camber + (tip.camber - root.camber) * share,
  };
}

/** Builds the surface. */
export function liftingSurface(plan: Plan, progress: Progress, random: Random): Group {
  const { root, tip, span, sweep, spars, ribs } = plan;
  const group = new Group();
  const inside = progress.primed ? primer(random.whole(1, 99)) : aluminium(random.whole(1, 99), 14);
  const sparMetal = progress.primed
    ? primer(random.whole(1, 99), "#76824a")
    : aluminium(random.whole(1, 99), 18);
  const open = progress.skins.length < 2;
  if (open) {
    for (let i = 0; i < ribs; i++) {
      const share = ribs === 1 ? 0.5 : i / (ribs - 1);
      const at = sectionAt(plan, share);
      const flip = i === ribs - 1 ? -1 : 1;
      const cuts = [0.012, ...spars, 0.975];
      for (let part = 0; part < cuts.length - 1; part++) {
        const from = (cuts[part] ?? 0) + 0.004;
        const to = (cuts[part + 1] ?? 1) - 0.004;
        const wide = (to - from) * at.chord;
        if (wide < 1.5) continue;
        const holes =
          part === 0 || wide < 5
            ? []
            : lighteningHoles(
                at,
                from + 0.03,
                to - (to > 0.9 ? 0.3 : 0.03),
                Math.max(1, Math.min(3, Math.round(wide / 9))),
                0.6,
              );
        group.place(
          pressedRib(
            sectionOutline(at, from, to, 9),
            holes.filter(({ radius }) => radius > 0.5),
            inside,
            { flange: Math.min(0.7, at.chord * 0.02 + 0.2), gauge: 0.04 },
          ),
          here.move(sweep * share, 0, share * span).size(1, 1, flip),
        );
      }
    }
  }
  for (const share of spars) group.place(sparBetween(plan, share, sparMetal));
  const panels = span > 80 ? 3 : span > 40 ? 2 : 1;
  for (const side of progress.skins) {
    for (let panel = 0; panel < panels; panel++) {
      const metal: Surface =
        progress.film && random.chance(0.45)
          ? filmed(random.whole(1, 99))
          : aluminium(random.whole(1, 99), 9);
      group.put(
        skin(root, tip, span, {
          from: 0,
          to: 1,
          side,
          startAt: panel / panels,
          endAt: (panel + 1) / panels,
          sweep,
          lift: 0.03 + (panel % 2) * 0.03,
        }),
        metal,
      );
      if (panel > 0) {
        const joint = panel / panels;
        const half = 0.07 / span;
        group.put(
          skin(root, tip, span, {
            from: 0,
            to: 1,
            side,
            startAt: joint - half,
            endAt: joint + half,
            sweep,
            lift: 0.075,
          }),
          darkSteel,
        );
      }
    }
  }
  group.place(fastenings(plan, progress, random));
  if (!open) group.place(endRibs(plan, inside));
  return group;
}

function sparBetween(plan: Plan, share: number, metal: Surface): Group {
  const { root, tip, span, sweep } = plan;
  const at = (z: number, side: 1 | -1): Vec3 => {
    const [x, y] = spanwise(root, tip, z, share, side, sweep);
    return [x, y - side * 0.03, z * span];
  };
  const group = new Group().put(quad(at(0, -1), at(1, -1), at(1, 1), at(0, 1)), metal);
  const wide = Math.min(1.4, root.chord * 0.035);
  for (const side of [1, -1] as const) {
    const [a, b] = [at(0, side), at(1, side)];
    const inward = share > 0.5 ? -wide : wide;
    group.put(quad(a, b, [b[0] + inward, b[1], b[2]], [a[0] + inward, a[1], a[2]]), metal);
    // The flange's edge shows its gauge.
    group.put(
      tube(
        [
          [a[0] + inward, a[1] - side * 0.03, a[2]],
          [b[0] + inward, b[1] - side * 0.03, b[2]],
        ],
        0.05,
        { sides: 5 },
      ),
      metal,
    );
  }
  return group;
}

function endRibs(plan: Plan, metal: Surface): Group {
  const group = new Group();
  for (const share of [0, 1]) {
    const at = sectionAt(plan, share);
    group.place(
      pressedRib(
        sectionOutline(at, 0.006, 0.99, 16),
        share ? [] : lighteningHoles(at, 0.16, 0.66, 3, 0.5),
        metal,
        { flange: 0.3, gauge: 0.04 },
      ),
      here
        .move(plan.sweep * share, 0, share * plan.span + (share ? -0.04 : 0.04))
        .size(1, 1, share ? -1 : 1),
    );
  }
  return group;
}

function outward(plan: Plan, z: number, share: number, side: 1 | -1): { at: Vec3; out: Vec3 } {
  const place = (s: number, c: number): Vec3 => {
    const [x, y] = spanwise(plan.root, plan.tip, s, c, side, plan.sweep);
    return [x, y + side * 0.06, s * plan.span];
  };
  const at = place(z, share);
  const along = subtract(place(Math.min(1, z + 0.01), share), place(Math.max(0, z - 0.01), share));
  const chordwise = subtract(
    place(z, Math.min(0.99, share + 0.01)),
    place(z, Math.max(0.01, share - 0.01)),
  );
  const out = unit(cross(along, chordwise));
  return { at, out: out[1] * side < 0 ? [-out[0], -out[1], -out[2]] : out };
}

function fastenings(plan: Plan, progress: Progress, random: Random): Group {
  const group = new Group();
  const side =
    progress.side ?? (progress.skins.includes(1) || progress.skins.length === 0 ? 1 : -1);
  const places: { at: Vec3; out: Vec3 }[] = [];
  const pitch = Math.max(1.5, plan.root.chord / 22);
  for (let i = 0; i < plan.ribs; i++) {
    const z = plan.ribs === 1 ? 0.5 : (0.006 + 0.988 * i) / (plan.ribs - 1 + 0.0001);
    const chord = sectionAt(plan, z).chord;
    const count = Math.max(3, Math.round((chord * 0.86) / pitch));
    for (let k = 0; k <= count; k++)
      places.push(
        outward(plan, Math.min(0.995, Math.max(0.005, z)), 0.09 + (0.85 * k) / count, side),
      );
  }
  for (const share of [...plan.spars, ...(progress.skins.length > 0 ? [0.965] : [])]) {
    const count = Math.round(plan.span / pitch);
    for (let k = 0; k <= count; k++)
      places.push(outward(plan, 0.01 + (0.98 * k) / count, share + 0.008, side));
  }
  if (progress.riveted && progress.skins.length > 0) {
    const r = 0.15 + plan.root.chord * 0.0035;
    const mark = lathe(
      [
        [r, 0.004],
        [r * 0.8, 0.012],
        [0, 0.014],
      ],
      8,
    );
    const metal = { ...darkSteel, color: [0.34, 0.345, 0.355] as const, roughness: 0.35 };
    for (const { at, out } of places) group.put(mark, metal, here.move(...at).along(out));
  }
  if (progress.clecos > 0) {
    const spread =
      progress.skins.length > 0
        ? places
        : places.filter(({ at }) =>
            plan.spars.some(
              (share) =>
                Math.abs(
                  at[0] -
                    plan.sweep * (at[2] / plan.span) -
                    share * sectionAt(plan, at[2] / plan.span).chord,
                ) < pitch,
            ),
          );
    // The last few hold one end.
    const few = progress.skins.length > 0 && progress.clecos <= 14;
    const from = few ? places.slice(0, 24) : spread.length > 0 ? spread : places;
    const chosen = Array.from(
      { length: Math.min(progress.clecos, 420) },
      (_, i) => from[Math.floor(((i + 0.5) / progress.clecos) * from.length) % from.length],
    ).filter((p) => p !== undefined);
    group.place(
      fastened(
        chosen,
        {
          kind: "cleco",
          size: progress.clecoSize ?? random.pick(["3/32", "3/32", "1/8"]),
          plain: true,
        },
        1.15,
      ),
    );
  }
  return group;
}

/** A hinge bracket standing forward of the spar. */
export function hingeBracket(metal: Surface): Group {
  return new Group()
    .put(
      tube(
        [
          [0, 0, -0.35],
          [0, 0, 0.35],
        ],
        0.42,
        { sides: 14 },
      ),
      metal,
    )
    .put(quad([0, -0.5, -0.12], [2, -1, -0.12], [2, 1, -0.12], [0, 0.5, -0.12]), metal)
    .put(quad([0, -0.5, 0.12], [2, -1, 0.12], [2, 1, 0.12], [0, 0.5, 0.12]), metal);
}
