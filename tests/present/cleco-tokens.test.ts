// The colours of the marks of fasteners, recomputed from the tokens: each stands off its ground,
// and any two can be told apart, also by eyes that lack a kind of cone. Shape and words say the
// same, so that colour is never needed.

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  contrast,
  difference,
  eyes,
  lab,
  linearRgb,
  seenBy,
} from "../support/colour-difference.ts";

const assets = new URL("../../layouts/assets/", import.meta.url);
const tokens = readFileSync(new URL("tokens.css", assets), "utf8");
const drawing = readFileSync(new URL("drawing.css", assets), "utf8");
const schemes = {
  light: colours(tokens.slice(0, tokens.indexOf("@media"))),
  dark: colours(tokens.slice(tokens.indexOf("@media"))),
} as const;

function colours(css: string): ReadonlyMap<string, string> {
  return new Map(
    [...css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name = "", hex = ""]) => [
      name,
      hex,
    ]),
  );
}

function colour(scheme: keyof typeof schemes, name: string): string {
  const hex = schemes[scheme].get(name);
  if (!hex) throw new Error(`no token ${name} in ${scheme}`);
  return hex;
}

const chosen = {
  light: [
    ["normal", 18.7],
    ["protan", 21.8],
    ["deutan", 22.7],
    ["tritan", 14.9],
  ],
  dark: [
    ["normal", 17.8],
    ["protan", 20.8],
    ["deutan", 18.8],
    ["tritan", 17.8],
  ],
} as const;

const clecos = ["silver", "copper", "black", "brass", "other"];

// Section 4.4 of the paper, table 1: pairs that catch the usual mistakes.
test.each([
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  [[22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373],
  [[90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], 1.4441],
  [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
] as const)("CIEDE2000 of %j and %j is %d", (one, other, printed) => {
  expect(difference(one, other)).toBeCloseTo(printed, 4);
  expect(difference(other, one)).toBeCloseTo(printed, 4);
});

test("the simulation leaves greys as they are", () => {
  for (const kind of eyes) {
    const [r, g, b] = seenBy(kind, [0.4, 0.4, 0.4]);
    for (const channel of [r, g, b]) expect(channel).toBeCloseTo(0.4, 4);
  }
});

describe.each(["light", "dark"] as const)("%s", (scheme) => {
  // What has to stand off the ground: the colour itself, or the line around it.
  test.each([["cleco-silver"], ["cleco-copper"], ["cleco-ring"], ["cleco-other"], ["ink"]])(
    "%s has at least 3 to 1 on ground and on vellum",
    (name) => {
      for (const ground of ["ground", "vellum"])
        expect(contrast(colour(scheme, name), colour(scheme, ground))).toBeGreaterThanOrEqual(3);
    },
  );

  // The smallest difference of any pair, as it was when the colours were chosen.
  test.each<readonly [(typeof eyes)[number], number]>(chosen[scheme])(
    "for %s eyes any two lie %d apart or more",
    (kind, least) => {
      // The ring around the dark square is seen as a colour of its own.
      const hexes = new Set([...clecos, "ring"].map((name) => colour(scheme, `cleco-${name}`)));
      const seen = [...hexes].map((hex) => lab(seenBy(kind, linearRgb(hex))));
      const pairs = seen.flatMap((one, index) =>
        seen.slice(index + 1).map((other) => difference(one, other)),
      );
      expect(pairs.length).toBeGreaterThanOrEqual(10);
      expect(Math.min(...pairs)).toBeGreaterThanOrEqual(12);
      expect(Math.min(...pairs)).toBeCloseTo(least, 1);
    },
  );
});

test("every token that the drawings ask for is there", () => {
  const asked = new Set([...drawing.matchAll(/var\(--([\w-]+)\)/g)].map(([, name = ""]) => name));
  expect([...asked].filter((name) => !schemes.light.has(name))).toEqual([]);
  for (const name of clecos) expect(drawing).toContain(`.cleco.${name}`);
});

test("no colour is written in the drawings' own sheet", () => {
  expect(drawing.match(/#[0-9a-f]{3,8}\b(?!")|\b(?:rgb|hsl|oklch)\(/gi)).toBeNull();
});
