import { describe, expect, test } from "vitest";
import { foundBy } from "../../support/found-by.ts";
import {
  day,
  deviation,
  disposition,
  register,
  smallBuild,
  span,
} from "../../support/small-build.ts";
import { cutOut, fastenerRow, layout, named, stated } from "../../support/small-layout.ts";
import { rule } from "../../support/small-measurements.ts";

const tight = fastenerRow({
  count: { value: 17, span: span({ line: 9, column: 10, length: 2, text: "  count: 17" }) },
  edge: stated("0.25 in", "2 D"),
  check: { edge: named("edge-distance-2d"), pitch: named("pitch-3d-navy") },
});

describe("layout-breaks-rule", () => {
  test("points at what would have to change, and names rule and source", () => {
    const build = smallBuild({ days: [day({ layouts: [layout(tight)] })] });
    expect(foundBy("layout-breaks-rule", build)).toMatchObject([
      {
        severity: "finding",
        span: { line: 9, column: 10 },
        message: "pitch of `Upper flange` is 0.34375 in, below the limit of 0.375 in",
        label: "0.03125 in below the limit",
        notes: [
          "Spacing of rivets in a row, at least 3 D: at least 0.375 in (3 D)",
          "published limit, not the drawing's: NAVEDTRA 14018, chapter 13, rivet spacing",
          expect.any(String),
          expect.any(String),
          "general information: a limit on the drawing or in the kit's manual wins over this one",
        ],
        help: [
          "before a hole is drilled: change `count`, `pitch`, `edge` or `side`, as far as the drawing allows it",
          "if it stays as it is, record a deviation and name it in the block as `deviation:`",
        ],
      },
    ]);
  });

  test("a decided deviation accounts for it, an undecided one does not", () => {
    const of = (given: ReturnType<typeof deviation>) =>
      foundBy(
        "layout-breaks-rule",
        smallBuild({
          days: [day({ layouts: [layout(tight, { deviation: "D-014" })], deviations: [given] })],
        }),
      );
    expect(of(deviation({ disposition: disposition() }))).toEqual([]);
    expect(of(deviation())[0]?.help.at(-1)).toBe(
      "deviation `D-014` accounts for it once it has a disposition",
    );
    expect(of(deviation())[0]).not.toHaveProperty("private");
    expect(of(deviation({ private: true }))[0]?.private).toBe(true);
  });

  test("says which rule won", () => {
    const general = rule({ id: "general", lower: "1 D", sizes: { D: "1/8 in" } });
    const drawn = {
      ...rule({ id: "drawn", title: "As drawn", lower: "0.5 in", authority: "drawing" }),
      over: { rule: "general" },
    };
    const piece = fastenerRow({
      count: { value: 4, span: span() },
      check: { edge: named("general"), pitch: [] },
    });
    const build = smallBuild({
      days: [day({ layouts: [layout(piece)] })],
      rules: register(general, drawn),
    });
    const [found] = foundBy("layout-breaks-rule", build);
    expect(found?.message).toBe(
      "edge distance at both ends of `Upper flange` is 0.3125 in, below the limit of 0.5 in",
    );
    expect(found?.notes).toContain(
      "it wins over `general`: a limit of the drawing comes before a limit of the manual",
    );
  });

  test("of a cut-out asks for other sizes", () => {
    const piece = cutOut({ check: { corner: named("corner"), finish: [] } });
    const build = smallBuild({
      days: [day({ layouts: [layout(piece, { title: "Hatch" })] })],
      rules: register(rule({ id: "corner", lower: "1/2 in" })),
    });
    const [found] = foundBy("layout-breaks-rule", build);
    expect(found?.message).toBe("corner radius of `Hatch` is 0.375 in, below the limit of 1/2 in");
    expect(found?.help[0]).toContain("before it is cut");
  });

  test("on a private day is private", () => {
    const build = smallBuild({ days: [day({ layouts: [layout(tight)], private: true })] });
    expect(foundBy("layout-breaks-rule", build)[0]?.private).toBe(true);
  });
});
