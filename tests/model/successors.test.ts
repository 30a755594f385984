import { expect, test } from "vitest";
import { newestOf, successorsOf } from "../../src/model/successors.ts";
import { reading } from "../support/small-measurements.ts";

const first = reading(["0.1 in"], { id: "R-1" });
const second = reading(["0.11 in"], { id: "R-2", supersedes: "R-1" });
const third = reading(["0.12 in"], { id: "R-3", supersedes: "R-2" });
const early = reading(["0.13 in"], { id: "R-0", supersedes: "R-1" });

test("the newest of a line of readings counts", () => {
  const successors = successorsOf([first, second, third]);
  expect(newestOf(first, successors)).toBe(third);
  expect(newestOf(second, successors)).toBe(third);
  expect(newestOf(third, successors)).toBe(third);
});

test("only a later reading replaces another", () => {
  expect(newestOf(first, successorsOf([early, first]))).toBe(first);
  const itself = reading(["0.1 in"], { supersedes: "R-1" });
  expect(newestOf(itself, successorsOf([itself]))).toBe(itself);
});

test("of two that replace the same, the later one does", () => {
  const other = reading(["0.14 in"], { id: "R-4", supersedes: "R-1" });
  expect(newestOf(first, successorsOf([first, second, other]))).toBe(other);
});
