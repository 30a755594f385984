import { expect, test } from "vitest";
import { weighed } from "../../support/weighed.ts";

const found = (points: string, changes = "") =>
  weighed(`weighings:
  - { id: W-1, on: 2026-01-01, title: First, ${points} }
${changes}`)
    .found.filter(({ code }) => code === "empty-weight-not-above-zero")
    .map(({ message }) => message);

const all = "points: [{ at: all, reads: 1000 lb, arm: 30 in }]";
const out = (id: string, on: string, weight: string) =>
  `  - { id: ${id}, on: ${on}, title: Out, out: [{ what: box, weight: ${weight}, arm: 30 in }] }\n`;

test("a weighing that comes to nothing, with tare or with what is taken out", () => {
  expect(found("points: [{ at: all, reads: 5 lb, tare: 5 lb, arm: 30 in }]")).toEqual([
    "weighing `W-1` comes to 0 lb",
  ]);
  const fuel = "out: [{ what: fuel, weight: 1001 lb, arm: 30 in }]";
  expect(found(`${all}, ${fuel}`)).toEqual(["weighing `W-1` comes to -1 lb"]);
  expect(found(all)).toEqual([]);
});

test("the first change that leaves nothing, and not those after it", () => {
  const changes = (first: string) =>
    `changes:\n${out("C-1", "2026-02-01", first)}${out("C-2", "2026-03-01", "1 lb")}`;
  expect(found(all, changes("998 lb"))).toEqual([]);
  expect(found(all, changes("999 lb"))).toEqual(["change `C-2` leaves an empty weight of 0 lb"]);
  expect(found(all, changes("1200 lb"))).toEqual([
    "change `C-1` leaves an empty weight of -200 lb",
  ]);
});

test("a change before anything was weighed is not concerned, and neither is a journal without a register", () => {
  expect(found(all, `changes:\n${out("C-1", "2025-12-01", "5000 lb")}`)).toEqual([]);
});
