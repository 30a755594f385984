import { expect, test } from "vitest";
import { dayTitle } from "../../../../src/present/pages/views/day-title.ts";
import { day, session, smallBuild } from "../../../support/small-build.ts";

const { assemblies } = smallBuild();
const worked = [session(), session({ assembly: "wing" }), session()];

test.each([
  ["its title", { title: "Tail ribs", prose: "Words." }, "Tail ribs"],
  ["how its prose begins", { title: "", prose: "# Today\n\nDrove *ribs*.\n" }, "Drove ribs."],
  ["what was worked on", { title: "", prose: "", sessions: worked }, "stabilizer, wing"],
  ["something, always", { title: "", prose: "" }, "Without a title"],
])("a sheet is called by %s", (_, overrides, title) => {
  expect(dayTitle(day({ sessions: [], ...overrides }), assemblies)).toBe(title);
});
