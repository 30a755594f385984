import { belongings, extremes } from "../../model/balance.ts";
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
const quantity = (description: string): JsonSchema => shared(description, "quantity");

const moment = object("Weight times arm.", {
  exact: {
    description: "The exact amount in `unit`: a whole number, or two parted by `/`.",
    type: "string",
    pattern: "^-?\\d+(/\\d+)?$",
  },
  decimal: { description: "The nearest binary floating-point number.", type: "number" },
  unit: text("Unit as printed, such as `lb·in`."),
});

const sums = {
  weight: quantity("Net weight."),
  moment,
  cg: optional(quantity("Centre of gravity from the datum; absent without a weight above zero.")),
  percentMac: optional({
    description:
      "Centre of gravity in per cent of the mean aerodynamic chord, where that is known.",
    type: "number",
  }),
};

const item = object("A weight at an arm.", {
  what: text("What it is."),
  weight: quantity("Its weight, zero or more, whether put in or taken out."),
  made: optional(text("How the weight was typed when it was not one, such as `2 × 12 lb`.")),
  arm: quantity("Arm from the datum, aft counting up."),
  part: optional(text("Its part number, as marked.")),
  serial: optional(text("Its serial number, as marked.")),
  estimated: yesOrNo("Whether it is marked as an estimate."),
  source,
});

const out = list("What was taken out.", item);
const put = list("What was put in.", item);
const day = date("The day whose entry tells of it, if there is one.");

const armLimit = (description: string): JsonSchema =>
  object(`${description}, inclusive: one arm for every weight, or corners.`, {
    arm: optional(quantity("The limit at every weight.")),
    corners: optional(
      list(
        "Corners in order of weight, with straight lines between them.",
        object("A corner.", { weight: quantity("At this weight."), arm: quantity("The limit.") }),
      ),
    ),
  });

/** What `balance` in the record contains. */
export const balanceSchema: JsonSchema = object(
  "The register of weight and balance, as typed and worked out exactly. Arms aft of the datum count up.",
  {
    datum: text("Where arms are counted from."),
    emptyWeight: object("What belongs to the empty weight.", {
      oil: oneOf("Whether oil does.", belongings),
      unusableFuel: oneOf("Whether unusable fuel does.", belongings),
      note: optional(text("More about it.")),
    }),
    meanChord: optional(
      object("The mean aerodynamic chord.", {
        leading: quantity("Arm of its leading edge."),
        trailing: quantity("Arm of its trailing edge."),
      }),
    ),
    limits: optional(
      object("Limits of weight and centre of gravity.", {
        citation: object("Who says so.", {
          document: text("Document."),
          edition: optional(text("Edition, revision or date, as printed.")),
          place: optional(text("Table, paragraph or page.")),
          text: text("All of it on one line."),
        }),
        maxWeight: optional(quantity("Greatest weight, inclusive.")),
        forward: optional(armLimit("Forward limit")),
        aft: optional(armLimit("Aft limit")),
      }),
    ),
    inForce: optional(
      object("The empty weight in force; absent while nothing was weighed or projected.", {
        basis: oneOf("Where it comes from.", ["weighed", "projected"]),
        since: date("The day of that weighing or projection."),
        changes: whole("Changes of equipment counted since.", 0),
        ...sums,
      }),
    ),
    weighings: list(
      "Weighings of the aircraft and of its parts, by date.",
      object("A weighing.", {
        id: text("Id."),
        date: date("When."),
        title: text("Title."),
        of: optional(text("Id of the assembly weighed; absent: the whole aircraft.")),
        points: list(
          "The scales.",
          object("A scale.", {
            at: text("What stood on it."),
            reads: quantity("What it showed."),
            tare: optional(quantity("What of that was chocks and the like.")),
            arm: quantity("Arm from the datum."),
            source,
          }),
        ),
        out,
        in: put,
        place: optional(text("Where.")),
        level: optional(text("How it was levelled.")),
        instruments: list("Ids of the scales.", text("An id.")),
        who: list("Who weighed.", text("A person's id.")),
        note: optional(text("Note.")),
        day,
        ...sums,
        source,
      }),
    ),
    projection: optional(
      object("What the empty aircraft is expected to weigh.", {
        date: date("When it was reckoned."),
        weighings: list("Ids of the weighings of parts counted in.", text("An id.")),
        items: list("Everything else.", item),
        note: optional(text("Note.")),
        weighed: quantity("How much of it comes from those weighings."),
        ...sums,
        source,
      }),
    ),
    changes: list(
      "Changes of equipment, by date.",
      object("A change.", {
        id: text("Id."),
        date: date("When."),
        title: text("Title."),
        out,
        in: put,
        note: optional(text("Note.")),
        day,
        counted: yesOrNo("Whether it changes the empty weight; not when nothing was weighed yet."),
        net: object("What it comes to.", sums),
        after: optional(object("The empty weight after it.", sums)),
        movement: optional(quantity("How far the centre of gravity moved, aft counting up.")),
        negligible: optional(
          object("How it compares with AC 43.13-1B, par. 10-2c.", {
            weight: yesOrNo("Whether the change of weight is negligible."),
            largest: quantity("The largest that would be, inclusive."),
            cg: optional(yesOrNo("Whether the movement is; absent without a chord.")),
          }),
        ),
        source,
      }),
    ),
    cases: list(
      "Loading cases, in the order typed, from the empty weight in force.",
      object("A loading case.", {
        id: text("Id."),
        title: text("Title."),
        extreme: optional(oneOf("Which extreme it is meant to be.", extremes)),
        items: list("What is put aboard.", item),
        note: optional(text("Note.")),
        private: yesOrNo("Whether the public edition leaves it out."),
        estimated: yesOrNo("Whether any weight in it was never on a scale."),
        ...sums,
        verdict: oneOf("Where it lies; arithmetic, not a permission.", [
          "inside",
          "outside",
          "no limits",
          "no weight",
        ]),
        margins: list(
          "Each limit at this weight, and the room left to it.",
          object("A limit.", {
            limit: oneOf("Which.", ["greatest weight", ...extremes]),
            at: quantity("Where it lies."),
            room: quantity("Room left; below zero outside."),
          }),
        ),
        beyond: list(
          "Limits that are not given for this weight.",
          object("Such a limit.", {
            limit: oneOf("Which.", extremes),
            side: oneOf("Where the weight lies.", ["below", "above"]),
            end: quantity("The last weight the limit is given for."),
            by: quantity("How far beyond that."),
          }),
        ),
        source,
      }),
    ),
    source,
  },
);
