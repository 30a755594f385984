import { cutOutShapes, layoutSubjects } from "../../model/layout.ts";
import { list, object, oneOf, optional, shared, text, whole } from "./json-schema.ts";

const quantity = (description: string) => shared(description, "quantity");

/** What `layoutRecord` gives. */
export const layoutsSchema = list(
  "Rows and cut-outs to be marked out: the blocks called `layout` in the prose.",
  object("A row of fasteners or a cut-out.", {
    number: whole("Its number on the day, from 1.", 1),
    title: text("Title."),
    step: optional(text("Id of the step.")),
    drawing: optional(text("Drawing and revision, as typed.")),
    sheet: optional(quantity("Thickness of the sheet.")),
    note: optional(text("Note.")),
    kind: oneOf("What it is.", ["row", "cut-out"]),
    shape: optional(oneOf("Shape of a cut-out.", cutOutShapes)),
    fastener: optional(text("Part number, as typed.")),
    sizes: list(
      "Its sizes.",
      object("A size.", {
        name: text("What it is called in the block."),
        typed: text("As typed: `2.5 D`."),
        quantity: quantity("What it comes to."),
      }),
    ),
    pitch: optional(quantity("From centre to centre; absent for a single fastener.")),
    positions: optional(
      list("Of the fasteners, from the left end; none when no row fits.", quantity("A centre.")),
    ),
    keepOuts: optional(
      list(
        "Where no fastener may be centred.",
        object("A stretch.", {
          from: quantity("From the left end."),
          to: quantity("From the left end."),
          clear: optional(quantity("How far fasteners stay clear of it.")),
          what: optional(text("What is in the way.")),
        }),
      ),
    ),
    checks: list(
      "Each length against each rule named for it.",
      object("A comparison.", {
        subject: oneOf("What the rule speaks of.", layoutSubjects),
        what: text("What was compared."),
        value: quantity("The length."),
        rule: text("Id of the rule that governs, or name of a shipped rule set."),
        lower: optional(quantity("Lower limit.")),
        upper: optional(quantity("Upper limit.")),
        verdict: optional(oneOf("Absent where there are no limits.", ["within", "below", "above"])),
      }),
    ),
    standing: optional(
      oneOf("How it stands with its rules.", [
        "within",
        "out",
        "accounted for",
        "no rule",
        "no row",
      ]),
    ),
    deviation: optional(text("Id of the deviation named for it.")),
    source: shared("Where its title was typed.", "source"),
  }),
);
