import { describe, expect, test } from "vitest";
import { governingRule } from "../../src/model/governing-rule.ts";
import type { ToleranceRule } from "../../src/model/tolerance.ts";
import { register } from "../support/small-build.ts";
import { rule } from "../support/small-measurements.ts";

const general = rule({ id: "general", authority: "published" });
const manual = rule({ id: "manual", over: { rule: "general" } });
const drawing = rule({ id: "drawing", over: { rule: "general", steps: ["HS-07"] } });
const sheet = rule({ id: "sheet", over: { rule: "drawing", steps: ["HS-07", "HS-08"] } });

const governs = (rules: readonly ToleranceRule[], named: string | undefined, step?: string) => {
  const found = governingRule(register(...rules))(named, step);
  return found && [found.rule.id, found.over?.id];
};

describe("the rule that governs", () => {
  test("is the one named, where nothing wins over it", () => {
    expect(governs([general], "general", "HS-07")).toEqual(["general", undefined]);
    expect(governs([general, drawing], "general", "HS-08")).toEqual(["general", undefined]);
    expect(governs([general, drawing], "general")).toEqual(["general", undefined]);
    expect(governs([general, drawing], "drawing", "HS-07")).toEqual(["drawing", undefined]);
  });

  test("is the one that wins over it on the step, or everywhere", () => {
    expect(governs([general, drawing], "general", "HS-07")).toEqual(["drawing", "general"]);
    expect(governs([general, manual], "general", "HS-07")).toEqual(["manual", "general"]);
    expect(governs([general, manual], "general")).toEqual(["manual", "general"]);
  });

  test("is first the one for the step, whichever stands first", () => {
    for (const rules of [
      [general, manual, drawing],
      [drawing, manual, general],
    ]) {
      expect(governs(rules, "general", "HS-07")).toEqual(["drawing", "general"]);
      expect(governs(rules, "general", "HS-08")).toEqual(["manual", "general"]);
    }
  });

  test("may be won over in turn", () => {
    expect(governs([general, drawing, sheet], "general", "HS-07")).toEqual(["sheet", "general"]);
  });

  test("is found even where rules win over each other in a circle", () => {
    const back = rule({ id: "general", over: { rule: "drawing" } });
    expect(governs([back, drawing], "general", "HS-07")).toEqual(["drawing", "general"]);
  });

  test("is not there when none is named, or none of that name", () => {
    expect(governs([general], undefined)).toBeUndefined();
    expect(governs([general], "genral")).toBeUndefined();
  });
});
