import { expect, test } from "vitest";
import { fileSize } from "../../../src/present/format/file-size.ts";

test.each([
  [0, "0 B"],
  [999, "999 B"],
  [1000, "1.0 kB"],
  [12_345, "12.3 kB"],
  [999_949, "999.9 kB"],
  [999_950, "1.0 MB"],
  [48_250_000, "48.3 MB"],
])("%d bytes are %s", (bytes, words) => {
  expect(fileSize(bytes)).toBe(words);
});
