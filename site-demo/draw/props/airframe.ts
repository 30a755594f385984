import { circle } from "../outline.ts";
import { anticlockwise, edgeNormal, inset } from "../polygon.ts";
import { here } from "../pose.ts";
import { type Corner, extrude, grid, lathe, posed, quad, type Shape } from "../shape.ts";
import { Group } from "../stage.ts";
import type { Surface } from "../surface.ts";
import { unit, type Vec2, type Vec3 } from "../vector.ts";
import { cleco, factoryHead, flushHead } from "./fasteners.ts";

/** Half the thickness of a four-digit section at a share of its chord; both as shares of the chord. */
function thicknessAt(x: number, thickness: number): number {
  const r = Math.sqrt(Math.max(0, x));
  return (
    5 * thickness * (0.2969 * r - 0.126 * x - 0.3516 * x * x + 0.2843 * x ** 3 - 0.1036 * x ** 4)
  );
}

/** The mean line of a four-digit section. */
function camberAt(x: number, camber: number, at = 0.4): number {
  if (camber === 0) return 0;
  return x < at
    ? (camber / (at * at)) * (2 * at * x - x * x)
    : (camber / (1 - at) ** 2) * (1 - 2 * at + 2 * at * x - x * x);
}

/** A wing's or a tail's section. */
export interface Section {
  readonly chord: number;
  readonly thickness: number;
  readonly camber: number;
}

/** A point of a section: x from the leading edge in inches, on its upper (1) or lower (-1) side. */
export function onSection(
  { chord, thickness, camber }: Section,
  share: number,
  side: 1 | -1,
): Vec2 {
  return [share * chord, (camberAt(share, camber) + side * thicknessAt(share, thickness)) * chord];
}

/** The outline of a section between two shares of the chord, anticlockwise. */
export function sectionOutline(section: Section, from: number, to: number, steps = 18): Vec2[] {
  const lower: Vec2[] = [];
  const upper: Vec2[] = [];
  for (let i = 0; i <= steps; i++) {
    // Closer together at the nose, where the section turns.
    const t = i / steps;
    const share = from + (to - from) * (from < 0.02 ? t * t : t);
    lower.push(onSection(section, share, -1));
    upper.push(onSection(section, share, 1));
  }
  const ring = [...lower, ...upper.reverse()];
  return anticlockwise(
    ring.filter((p, i) => {
      const next = ring[(i + 1) % ring.length] ?? p;
      return Math.hypot(next[0] - p[0], next[1] - p[1]) > 1e-4;
    }),
  );
}

/** A pressed web with lightening holes and a flange bent along its edge, in x and y, the flange towards z. */
export function pressedRib(
  outline: readonly Vec2[],
  holes: readonly { x: number; y: number; radius: number }[],
  surface: Surface,
  {
    flange = 0.6,
    gauge = 0.03,
    flutes = 0,
  }: { flange?: number; gauge?: number; flutes?: number } = {},
): Group {
  const group = new Group();
  const rings = holes.map(({ x, y, radius }) => circle(x, y, radius, 26));
  group.put(extrude(outline, gauge, { holes: rings }), surface);
  for (const { x, y, radius } of holes) {
    const lip = Math.min(0.28, radius * 0.22);
    group.put(
      lathe(
        [
          [radius + lip * 0.9, 0],
          [radius + lip * 0.3, lip * 0.16],
          [radius, lip * 0.75],
          [radius - 0.02, lip * 0.95],
        ],
        26,
      ),
      surface,
      here.move(x, y, gauge).turnX(90),
    );
  }
  group.put(bentFlange(outline, flange, gauge, flutes), surface);
  return group;
}

/** The strip bent over along an outline, gathered into flutes where asked. */
function bentFlange(
  outline: readonly Vec2[],
  flange: number,
  gauge: number,
  flutes: number,
): Shape {
  const ring = anticlockwise(outline);
  const bend = Math.min(0.12, flange * 0.25);
  const n = ring.length;
  const out: Corner[] = [];
  const inner = inset(ring, bend);
  const fluted = (i: number, depth: number): Vec2 => {
    const p = ring[((i % n) + n) % n] ?? [0, 0];
    if (!flutes) return p;
    const before = ring[(i - 1 + n) % n] ?? p;
    const after = ring[(i + 1) % n] ?? p;
    const [nx, ny] = edgeNormal(before, after);
    const wave = Math.max(0, Math.cos((i / n) * 2 * Math.PI * flutes)) ** 6;
    return [p[0] + nx * wave * 0.14 * depth, p[1] + ny * wave * 0.14 * depth];
  };
  for (let i = 0; i < n; i++) {
    const a = ring[i] ?? [0, 0];
    const b = ring[(i + 1) % n] ?? [0, 0];
    // The sharp corners at a section's cut ends carry no flange.
    const before = ring[(i - 1 + n) % n] ?? a;
    const [p, q] = edgeNormal(a, b);
    const [r, s] = edgeNormal(before, a);
    if (Math.hypot(b[0] - a[0], b[1] - a[1]) < 1e-3) continue;
    const corner = p * r + q * s < 0.3;
    const ia = corner ? a : (inner[i] ?? a);
    const ib = inner[(i + 1) % n] ?? b;
    const normal: Vec3 = [-p, -q, 0];
    const soft = unit([-p, -q, -1]);
    const [fa, fb] = [fluted(i, 1), fluted(i + 1, 1)];
    const run = i * 0.5;
    const put = (at: Vec3, nrm: Vec3, u: number, v: number): Corner => ({
      at,
      normal: nrm,
      uv: [u, v],
    });
    const strip = (c: readonly Corner[]) => {
      const [w, x, y, z] = c;
      if (w && x && y && z) out.push(w, x, y, w, y, z);
    };
    strip([
      put([ia[0], ia[1], 0], [0, 0, -1], run, 0),
      put([ib[0], ib[1], 0], [0, 0, -1], run + 0.5, 0),
      put([b[0], b[1], bend], soft, run + 0.5, bend),
      put([a[0], a[1], bend], soft, run, bend),
    ]);
    strip([
      put([a[0], a[1], bend], normal, run, bend),
      put([b[0], b[1], bend], normal, run + 0.5, bend),
      put([fb[0], fb[1], flange], normal, run + 0.5, flange),
      put([fa[0], fa[1], flange], normal, run, flange),
    ]);
    const [ta, tb]: [Vec2, Vec2] = [
      [fa[0] + p * gauge, fa[1] + q * gauge],
      [fb[0] + p * gauge, fb[1] + q * gauge],
    ];
    strip([
      put([fa[0], fa[1], flange], [0, 0, 1], run, 0),
      put([fb[0], fb[1], flange], [0, 0, 1], run + 0.5, 0),
      put([tb[0], tb[1], flange], [0, 0, 1], run + 0.5, gauge),
      put([ta[0], ta[1], flange], [0, 0, 1], run, gauge),
    ]);
    strip([
      put([ta[0], ta[1], flange], [p, q, 0], run, flange),
      put([tb[0], tb[1], flange], [p, q, 0], run + 0.5, flange),
      put([b[0] + p * gauge, b[1] + q * gauge, bend], [p, q, 0], run + 0.5, bend),
      put([a[0] + p * gauge, a[1] + q * gauge, bend], [p, q, 0], run, bend),
    ]);
  }
  return out;
}

/** Evenly spaced holes along the middle of a rib, each as large as the web allows. */
export function lighteningHoles(
  section: Section,
  from: number,
  to: number,
  count: number,
  fill = 0.62,
): { x: number; y: number; radius: number }[] {
  return Array.from({ length: count }, (_, i) => {
    const share = from + ((to - from) * (i + 0.6)) / (count + 0.2);
    const half = thicknessAt(share, section.thickness) * section.chord;
    const room = ((to - from) * section.chord) / (count + 0.2) / 2;
    return {
      x: share * section.chord,
      y: camberAt(share, section.camber) * section.chord,
      radius: Math.min(half * fill, room * 0.78),
    };
  });
}

/** A channel along x from 0 to `length`, web in x and y, flanges towards z; holes through the web. */
export function channel(
  length: number,
  height: number,
  flange: number,
  surface: Surface,
  {
    gauge = 0.05,
    holes = [],
  }: { gauge?: number; holes?: readonly { x: number; y: number; radius: number }[] } = {},
): Group {
  const r = Math.min(0.14, flange * 0.2);
  const web: Vec2[] = [
    [0, r],
    [length, r],
    [length, height - r],
    [0, height - r],
  ];
  const profile = (outer: boolean): Vec3[] => {
    const g = outer ? 0 : gauge;
    const points: Vec3[] = [];
    points.push([0, height - g, flange]);
    for (let i = 0; i <= 4; i++) {
      const a = (i / 4) * (Math.PI / 2);
      points.push([0, height - r + (r - g) * Math.cos(a), r - (r - g) * Math.sin(a)]);
    }
    return points;
  };
  const group = new Group().put(
    extrude(web, gauge, { holes: holes.map(({ x, y, radius }) => circle(x, y, radius, 26)) }),
    surface,
  );
  for (const { x, y, radius } of holes) {
    group.put(
      lathe(
        [
          [radius + 0.2, 0],
          [radius + 0.06, 0.04],
          [radius, 0.2],
        ],
        26,
      ),
      surface,
      here.move(x, y, gauge).turnX(90),
    );
  }
  const strip = (points: readonly Vec3[]) =>
    grid([points, points.map(([, y, z]): Vec3 => [length, y, z])], {
      uv: (row, column) => [row * length, column * 0.2],
    });
  for (const points of [profile(true), profile(false)]) {
    group.put(strip(points), surface);
    group.put(posed(strip(points), here.move(0, height, 0).size(1, -1, 1)), surface);
  }
  for (const side of [0, 1]) {
    const y = side ? height : 0;
    const d = side ? -gauge : gauge;
    group.put(
      quad([0, y, flange], [length, y, flange], [length, y + d, flange], [0, y + d, flange]),
      surface,
    );
    for (const x of [0, length]) {
      group.put(quad([x, y, 0], [x, y, flange], [x, y + d, flange], [x, y + d, 0]), surface);
    }
  }
  return group;
}

/** A skin over part of a section and a stretch of span along z, tapering where the sections differ. */
export function skin(
  root: Section,
  tip: Section,
  span: number,
  {
    from,
    to,
    side,
    startAt = 0,
    endAt = 1,
    sweep = 0,
    lift = 0.02,
  }: {
    from: number;
    to: number;
    side: 1 | -1;
    /** Shares of the span. */
    startAt?: number;
    endAt?: number;
    /** How far the tip's leading edge lies behind the root's, inches. */
    sweep?: number;
    lift?: number;
  },
): Shape {
  const rows = 10;
  const columns = 22;
  const cells: Vec3[][] = [];
  for (let r = 0; r <= rows; r++) {
    const z = startAt + ((endAt - startAt) * r) / rows;
    const row: Vec3[] = [];
    for (let c = 0; c <= columns; c++) {
      const t = c / columns;
      const share = from + (to - from) * (from < 0.02 ? t * t : t);
      const [x, y] = spanwise(root, tip, z, share, side, sweep);
      row.push([x, y + side * lift, z * span]);
    }
    cells.push(row);
  }
  return grid(cells, {
    uv: (row, column) => {
      const [x, y, z] = cells[row]?.[column] ?? [0, 0, 0];
      return [z, x + y * 0.5];
    },
  });
}

/** A place on a tapered surface: share of span, share of chord. */
export function spanwise(
  root: Section,
  tip: Section,
  span: number,
  share: number,
  side: 1 | -1,
  sweep: number,
): Vec2 {
  const a = onSection(root, share, side);
  const b = onSection(tip, share, side);
  return [a[0] + (b[0] + sweep - a[0]) * span, a[1] + (b[1] - a[1]) * span];
}

/** What fastens a row: clecos of a size, round heads, flush heads, or open holes. */
export type Fastening =
  | { readonly kind: "cleco"; readonly size: string; readonly plain?: boolean }
  | { readonly kind: "head"; readonly diameter: number; readonly surface: Surface }
  | { readonly kind: "flush"; readonly diameter: number; readonly surface: Surface };

/** Fasteners at places, each standing along its normal. */
export function fastened(
  places: readonly { at: Vec3; out: Vec3 }[],
  how: Fastening,
  scale = 1,
): Group {
  const group = new Group();
  if (how.kind === "cleco") {
    const one = cleco(how.size, how.plain ?? true);
    places.forEach(({ at, out }, i) => {
      group.place(
        one,
        here
          .move(...at)
          .along(out)
          .turnY(i * 37)
          .size(scale),
      );
    });
    return group;
  }
  const shape = how.kind === "head" ? factoryHead(how.diameter, 10) : flushHead(how.diameter, 10);
  for (const { at, out } of places)
    group.put(
      shape,
      how.surface,
      here
        .move(...at)
        .along(out)
        .size(scale),
    );
  return group;
}
