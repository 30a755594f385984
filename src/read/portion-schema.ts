import type { Registers } from "../model/build.ts";
import type { Tenths } from "../model/portion.ts";
import { date } from "./clock-syntax.ts";
import { forAircraft } from "./identity.ts";
import { id, list, nameOf, optional, record, required, text, yesOrNo } from "./shape.ts";
import { share } from "./tenths-syntax.ts";

/** The shape of `portion.yaml`, with every step that it may name. */
export function portionShape({ steps }: Pick<Registers, "steps">) {
  const step = nameOf("step", "assemblies.yaml", steps);
  return record("portion.yaml", {
    for: forAircraft,
    list: required(
      record("the list of tasks", {
        title: required(text, "title: Task list of the kit"),
        year: optional(text, 'year: "2025"'),
        aircraft: required(text, "aircraft: fixed wing, all metal"),
        from: required(text, "from: typed from the sheet in the crate"),
        loaded: required(date, "loaded: 2026-03-14"),
      }),
      "list: { title: Task list of the kit, aircraft: fixed wing, from: …, loaded: 2026-03-14 }",
    ),
    added: optional(
      list(
        "added tasks",
        record("an added task", {
          task: required(id, "task: F-a1"),
          section: required(text, "section: Fuselage"),
          title: required(text, "title: Weld the canopy frame"),
          on: required(date, "on: 2026-03-14"),
          why: required(text, "why: the list has no such line"),
        }),
        "[{ task: F-a1, section: Fuselage, title: …, on: 2026-03-14, why: … }]",
      ),
      "added: [{ task: F-a1, section: Fuselage, title: …, on: 2026-03-14, why: … }]",
    ),
    splits: optional(
      list(
        "splits",
        record("a split", {
          task: required(text, "task: F1"),
          on: required(date, "on: 2026-03-14"),
          kit: optional(share, "kit: 0.3"),
          paid: optional(share, "paid: 0.1"),
          assembly: optional(share, "assembly: 0.4"),
          fabrication: optional(share, "fabrication: 0.2"),
          "not-applicable": optional(yesOrNo, "not-applicable: true"),
          why: optional(text, "why: the tail came back from the shop unfinished"),
          source: optional(text, "source: the maker's statement in the crate"),
          salvage: optional(yesOrNo, "salvage: true"),
          note: optional(text, "note: ribs only"),
        }),
        "[{ task: F1, on: 2026-03-14, kit: 0.3, fabrication: 0.7 }]",
      ),
      "splits: [{ task: F1, on: 2026-03-14, kit: 0.3, fabrication: 0.7 }]",
    ),
    claims: optional(
      list(
        "claims",
        record("a claim", {
          task: required(text, "task: F1"),
          steps: required(list("steps", step, "[HS-02, HS-03]"), "steps: [HS-02, HS-03]"),
        }),
        "[{ task: F1, steps: [HS-02, HS-03] }]",
      ),
      "claims: [{ task: F1, steps: [HS-02, HS-03] }]",
    ),
  });
}
export type TypedPortion = NonNullable<ReturnType<ReturnType<typeof portionShape>>>;
export type TypedSplit = NonNullable<TypedPortion["splits"]>[number];
export type TypedShares = Partial<Record<"kit" | "paid" | "assembly" | "fabrication", Tenths>>;
