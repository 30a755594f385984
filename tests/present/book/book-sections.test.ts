import { expect, test } from "vitest";
import { bookSections, chosenSections } from "../../../src/present/book/book-sections.ts";
import { fieldText } from "../../../src/present/book/field-text.ts";

test("sections come in the order of the book, whatever the order asked for", () => {
  expect(chosenSections("index, log,cover")).toEqual({ sections: ["cover", "log", "index"] });
  expect(chosenSections(bookSections.join(","))).toEqual({ sections: bookSections });
});

test("a section that there is not is named", () => {
  expect(chosenSections("cover,logs")).toEqual({ unknown: "logs" });
  expect(chosenSections("")).toEqual({ unknown: "" });
});

test("an index needs the log whose pages it gives", () => {
  expect(chosenSections("cover,index")).toEqual({ indexWithoutLog: true });
});

test.each([
  ["sessions[2].hours", "session 2, hours"],
  ["readings[1].values[3]", "reading 1, value 3"],
  ["squawks[1].closed-by", "squawk 1, closed by"],
  ["inspections[10].findings", "inspection 10, findings"],
  ["prose", "prose"],
  ["conditions.temperature", "conditions, temperature"],
])("%s is %s", (field, words) => {
  expect(fieldText(field)).toBe(words);
});
