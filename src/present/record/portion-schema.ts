import { evidenceGaps } from "../../compute/ledgers/portion.ts";
import { conflictKinds } from "../../compute/task-conflicts.ts";
import { workKinds } from "../../model/session.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  oneOf,
  optional,
  shared,
  text,
  whole,
  yesOrNo,
} from "./json-schema.ts";

const source = shared("Where it was typed.", "source");
const tenths = (description: string): JsonSchema => whole(`${description}, in tenths.`, 0);

const columns = {
  kit: tenths("Share of the maker of the kit, of a component or of a part"),
  paid: tenths("Share of help for hire or compensation"),
  assembly: tenths("Share assembled by amateurs"),
  fabrication: tenths("Share fabricated by amateurs"),
};

const sum = object("What several divided tasks come to.", {
  tasks: whole("How many tasks.", 0),
  ...columns,
  total: tenths("All four columns"),
  builder: tenths("Assembly and fabrication by amateurs"),
});

const verdict = (description: string): JsonSchema =>
  object(description, {
    moreThanHalf: yesOrNo("Whether the builder's share is greater than all the rest."),
    exactlyHalf: yesOrNo("Whether it is exactly half, which is not more than half."),
    fiftyOne: yesOrNo("Whether it is 51 % or more."),
    headroomHalfTenths: tenths("What may pass to paid help with more than half left"),
    headroomFiftyOneTenths: tenths("What may pass to paid help with 51 % left"),
  });

const split = object("A division of the task's point.", {
  on: date("From when on."),
  tenths: optional(
    object("The four shares, ten tenths together; absent: not applicable.", columns),
  ),
  why: optional(text("Why it does not apply, or was changed.")),
  kitSource: optional(text("What the kit's share rests on.")),
  salvage: yesOrNo("Whether made from a used or salvaged type-certificated assembly."),
  note: optional(text("The builder's remark.")),
  source,
});

const task = object("A line of the sheet.", {
  task: text("Its number."),
  title: text("What it is."),
  added: optional(
    object("Present when the builder added it.", { on: date("When."), why: text("Why.") }),
  ),
  listedKitTenths: optional(tenths("The kit's share as the list itself gives it")),
  standing: oneOf("Whether it is counted; only a divided one is.", [
    "divided",
    "not applicable",
    "undecided",
  ]),
  splits: list("Every division, oldest first; the last one counts.", split),
  evidence: list(
    "Sessions that are evidence of it, oldest first.",
    object("A session of an entry.", {
      date: date("Date of the entry."),
      kind: oneOf("Kind of work.", workKinds),
      amateur: yesOrNo("Whether a builder or an unpaid helper was at it."),
      paid: yesOrNo("Whether paid help was at it."),
      placed: yesOrNo("Whether the entry names a place."),
      told: yesOrNo("Whether the entry says anything in words."),
      photographs: whole("Photographs of the entry.", 0),
      source,
    }),
  ),
  gaps: list("What the evidence of a claimed task lacks.", oneOf("A gap.", evidenceGaps)),
  missingKinds: list(
    "Kinds of work that are claimed and of which no entry by a builder is.",
    oneOf("A kind.", ["assemble", "fabricate"]),
  ),
  help: object("What rows of help have of it.", {
    tenths: tenths("Their shares together"),
    rows: list("Numbers of the rows.", text("A number.")),
  }),
  contradictions: list(
    "Where its newest division contradicts entries, help, or its own marks.",
    oneOf("A contradiction.", conflictKinds),
  ),
  source,
});

/** What `portion` in the record contains. */
export const portionSchema: JsonSchema = object(
  "The major-portion sheet, in whole tenths of a point. The builder's own account; never computed from hours.",
  {
    list: object("Which list of tasks it is.", {
      title: text("Title."),
      year: optional(text("Year.")),
      aircraft: text("The type of aircraft that it is for."),
      from: text("Where the builder has it from."),
      loaded: date("When it was loaded."),
      source,
    }),
    sections: list(
      "In the order of the list.",
      object("A section.", {
        section: text("Its name."),
        tasks: list("In the order of the list, added ones last.", task),
        sum,
        notApplicable: whole("Tasks that do not apply.", 0),
        undecided: whole("Tasks not divided yet.", 0),
      }),
    ),
    sum,
    verdict: verdict("Of the tasks that are divided."),
    notApplicable: whole("Tasks that do not apply.", 0),
    undecided: whole("Tasks not divided yet.", 0),
    worst: verdict("If nothing of the undecided tasks should fall to the builder."),
  },
);
