// Contrast is recomputed from the tokens themselves: WCAG 2.2, relative luminance and contrast
// ratio as defined there. Text needs 4.5 to 1 (1.4.3), lines that mean something 3 to 1 (1.4.11).

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const assets = new URL("../../layouts/assets/", import.meta.url);
const tokens = readFileSync(new URL("tokens.css", assets), "utf8");
const sheet = readdirSync(assets)
  .filter((name) => name.endsWith(".css") && name !== "tokens.css")
  .map((name) => readFileSync(new URL(name, assets), "utf8"))
  .join("\n");

const schemes = {
  light: colours(tokens.slice(0, tokens.indexOf("@media"))),
  dark: colours(tokens.slice(tokens.indexOf("@media"))),
};

const text = ["ink", "ink-2", "dye", "redline", "caution", "accept", "stamp"];
const pairs = [
  ...["ground", "vellum"].flatMap((ground) => text.map((ink) => [ink, ground, 4.5] as const)),
  ["ink", "wash", 4.5],
  ["dye", "wash", 4.5],
  ["line", "ground", 3],
  ["line", "vellum", 3],
  // The fill of a bar, and the strokes of the strip on its band.
  ["ink", "wash", 3],
  ["redline", "ground", 3],
  ["ink-2", "wash", 3],
] as const;

describe.each(Object.entries(schemes))("%s", (_scheme, tokenColours) => {
  test.each(pairs)("%s on %s has at least %d to 1", (front, back, least) => {
    const ratio = contrast(found(tokenColours, front), found(tokenColours, back));
    expect(ratio).toBeGreaterThanOrEqual(least);
  });
});

test("the contrast formula gives the ratios it is published with", () => {
  expect(contrast("#000000", "#ffffff")).toBe(21);
  expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
});

describe("cleco colours", () => {
  const sizes = ["silver", "copper", "black", "brass", "other"];
  const colour = (scheme: ReadonlyMap<string, string>, size: string) =>
    found(scheme, `cleco-${size}`);

  // A pair is told apart by shape and words too; the colours alone still have to be.
  test.each([
    ["light", schemes.light],
    ["dark", schemes.dark],
  ])("%s: any two are 12 apart for every kind of eye", (_name, scheme) => {
    for (const eye of Object.values(eyes)) {
      for (const [index, one] of sizes.entries()) {
        for (const other of sizes.slice(index + 1)) {
          const apart = difference(
            seen(colour(scheme, one), eye),
            seen(colour(scheme, other), eye),
          );
          expect(apart, `${one} and ${other}`).toBeGreaterThanOrEqual(12);
        }
      }
    }
  });

  test.each([
    ["light", schemes.light],
    ["dark", schemes.dark],
  ])(
    "%s: each stands out from the ground, brass by its outline, black by its ring",
    (_name, scheme) => {
      const ground = found(scheme, "ground");
      for (const edge of ["cleco-silver", "cleco-copper", "cleco-ring", "ink", "cleco-other"]) {
        expect(contrast(found(scheme, edge), ground), edge).toBeGreaterThanOrEqual(3);
      }
    },
  );

  // Sharma, Wu and Dalal (2005), "The CIEDE2000 color-difference formula", table 1, pairs 1, 7, 25.
  test.each([
    [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
    [[50, 0, 0], [50, -1, 2], 2.3669],
    [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  ] as const)("the difference of %j and %j is %d", (one, other, expected) => {
    expect(difference(one, other)).toBeCloseTo(expected, 4);
  });
});

test("both schemes have the same tokens", () => {
  expect([...schemes.dark.keys()]).toEqual([...schemes.light.keys()]);
});

test("no colour is written anywhere but in the tokens", () => {
  expect(sheet.match(/#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch)\(/gi)).toBeNull();
});

test("every token a sheet asks for is there", () => {
  const asked = new Set([...sheet.matchAll(/var\((--[\w-]+)\)/g)].map(([, name]) => name));
  const given = new Set([...tokens.matchAll(/^ {2}(--[\w-]+):/gm)].map(([, name]) => name));
  expect([...asked].filter((name) => !given.has(name))).toEqual([]);
});

test("the revision cloud is drawn in red pencil", () => {
  const cloud = (name: string) => readFileSync(new URL(`cloud-${name}.svg`, assets), "utf8");
  expect(cloud("light")).toContain(found(schemes.light, "redline"));
  expect(cloud("dark")).toContain(found(schemes.dark, "redline"));
});

test("no gradient, shadow or rounded corner, round balloons excepted", () => {
  expect(sheet).not.toMatch(/gradient|shadow/);
  expect(new Set(sheet.match(/border-radius: [^;]+/g))).toEqual(
    new Set(["border-radius: 50%", "border-radius: 0"]),
  );
});

test("the four faces weigh at most 50,000 bytes", () => {
  const files = [...tokens.matchAll(/url\((fonts\/[^)]+)\)/g)].map(([, file]) => file ?? "");
  expect(files).toHaveLength(4);
  const bytes = files.map((file) => readFileSync(new URL(file, assets)).length);
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(50_000);
});

function colours(css: string): Map<string, string> {
  return new Map(
    [...css.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [
      name ?? "",
      value ?? "",
    ]),
  );
}

function found(all: ReadonlyMap<string, string>, name: string): string {
  const value = all.get(name);
  if (value === undefined) throw new Error(`no token ${name}`);
  return value;
}

function contrast(front: string, back: string): number {
  const [light, dark] = [luminance(front), luminance(back)].sort((a, b) => b - a);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

function luminance(hex: string): number {
  const [red, green, blue] = linearOf(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function linearOf(hex: string): Three {
  return [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as unknown as Three;
}

type Three = readonly [number, number, number];

// Machado, Oliveira and Fernandes (2009), severity 1.0, for linear RGB.
const eyes: Readonly<Record<string, readonly [Three, Three, Three]>> = {
  normal: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** A colour as an eye sees it, in CIELAB under D65. */
function seen(hex: string, eye: readonly [Three, Three, Three]): Three {
  const linear = linearOf(hex);
  const rgb = apply(eye, linear).map((part) => Math.min(1, Math.max(0, part))) as unknown as Three;
  const xyz = apply(
    [
      [0.4124564, 0.3575761, 0.1804375],
      [0.2126729, 0.7151522, 0.072175],
      [0.0193339, 0.119192, 0.9503041],
    ],
    rgb,
  );
  const [x, y, z] = xyz.map((part, index) => {
    const ratio = part / ([0.95047, 1, 1.08883][index] ?? 1);
    return ratio > (6 / 29) ** 3 ? Math.cbrt(ratio) : ratio / (3 * (6 / 29) ** 2) + 4 / 29;
  }) as unknown as Three;
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function apply(rows: readonly [Three, Three, Three], [a, b, c]: Three): Three {
  return rows.map(([x, y, z]) => x * a + y * b + z * c) as unknown as Three;
}

/** CIEDE2000 with all weights 1. */
function difference([l1, a1, b1]: Three, [l2, a2, b2]: Three): number {
  const radians = Math.PI / 180;
  const middle = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(middle ** 7 / (middle ** 7 + 25 ** 7)));
  const [A1, A2] = [a1 * (1 + g), a2 * (1 + g)];
  const [C1, C2] = [Math.hypot(A1, b1), Math.hypot(A2, b2)];
  const angle = (a: number, b: number) =>
    a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / radians + 360) % 360;
  const [h1, h2] = [angle(A1, b1), angle(A2, b2)];
  const grey = C1 * C2 === 0;
  const turn = grey ? 0 : ((h2 - h1 + 540) % 360) - 180;
  const [dL, dC] = [l2 - l1, C2 - C1];
  const dH = 2 * Math.sqrt(C1 * C2) * Math.sin((turn / 2) * radians);
  const [L, C] = [(l1 + l2) / 2, (C1 + C2) / 2];
  const h = grey
    ? h1 + h2
    : Math.abs(h1 - h2) > 180
      ? (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2
      : (h1 + h2) / 2;
  const cos = (degrees: number) => Math.cos(degrees * radians);
  const t =
    1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.2 * cos(4 * h - 63);
  const sL = 1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2);
  const sC = 1 + 0.045 * C;
  const sH = 1 + 0.015 * C * t;
  const rT =
    -Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * radians) *
    2 *
    Math.sqrt(C ** 7 / (C ** 7 + 25 ** 7));
  return Math.sqrt((dL / sL) ** 2 + (dC / sC) ** 2 + (dH / sH) ** 2 + rT * (dC / sC) * (dH / sH));
}
