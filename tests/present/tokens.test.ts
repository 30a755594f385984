// Contrast is recomputed from the tokens themselves: WCAG 2.2, relative luminance and contrast
// ratio as defined there. Text needs 4.5 to 1 (1.4.3), lines that mean something 3 to 1 (1.4.11).

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const assets = new URL("../../layouts/assets/", import.meta.url);
const tokens = readFileSync(new URL("tokens.css", assets), "utf8");
const sheet = readFileSync(new URL("sheet.css", assets), "utf8");

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
  expect(sheet.match(/border-radius: [^;]+/g)).toEqual(["border-radius: 50%", "border-radius: 0"]);
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
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}
