import { expect, test } from "vitest";
import { grouped } from "../../src/compute/grouped.ts";

test("groups keep the order given, and items without a key are left out", () => {
  const groups = grouped(["b1", "a1", "-", "b2"], (item) => (item === "-" ? undefined : item[0]));
  expect([...groups]).toEqual([
    ["b", ["b1", "b2"]],
    ["a", ["a1"]],
  ]);
});
