import type { AlterationLedger } from "../../compute/ledgers/alteration.ts";
import { continuedHeadings } from "../../model/published/alteration-paperwork.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  oneOf,
  optional,
  shared,
  text,
  yesOrNo,
} from "./json-schema.ts";
import { given, placeRecord, quantityRecord } from "./record-values.ts";

/** What the journal says of an alteration beside its entries, as data. */
export function alterationRecord({ register, firstDate, lastDate, weights }: AlterationLedger) {
  return {
    ...given(
      "register",
      register && {
        title: register.title,
        where: register.where,
        ...given("maker", register.maker),
        work: [...register.work],
        data: register.data.map(({ document, revision, title, place, from, note, span }) => ({
          document,
          revision,
          ...given("title", title),
          ...given("place", place),
          ...given("from", from),
          ...given("note", note),
          source: placeRecord(span),
        })),
        tests: register.tests.map((test) => ({
          id: test.id,
          what: test.what,
          ...given("step", test.step),
          ...given("date", test.date),
          ...given("by", test.by),
          ...given("result", test.result),
          source: placeRecord(test.span),
        })),
        ...given("earlierChanges", register.earlierChanges),
        ...given("flightManual", register.flightManual),
        continuedAirworthiness: [...register.continued].map(([heading, said]) => ({
          heading,
          text: said,
        })),
        source: placeRecord(register.span),
      },
    ),
    ...given("firstDate", firstDate),
    ...given("lastDate", lastDate),
    ...given(
      "equipment",
      weights && {
        changes: weights.changes.map(({ change }) => change.id),
        netWeight: quantityRecord(weights.net.weight),
        ...given("movement", weights.movement && quantityRecord(weights.movement)),
        interrupted: weights.interrupted,
      },
    ),
  };
}

const source = shared("Where it was typed.", "source");

/** What `alteration` in the record contains. */
export const alterationSchema: JsonSchema = object(
  "What the papers of an alteration need beside the rest of the record. A draft for whoever signs; nothing in it is signed.",
  {
    register: optional(
      object("What the builder says of the alteration; absent without `alteration.yaml`.", {
        title: text("What it is."),
        where: text("Where on the aircraft."),
        maker: optional(text("Maker of the aircraft, as on its data plate.")),
        work: list("The work in the builder's words.", text("A paragraph.")),
        data: list(
          "Documents that the work is done to, in the order typed.",
          object("A document.", {
            document: text("Its number or name."),
            revision: text("Its revision, edition or date, as printed on it."),
            title: optional(text("Its title.")),
            place: optional(text("Sheet, paragraph or page.")),
            from: optional(text("Who issued it.")),
            note: optional(text("The builder's remark.")),
            source,
          }),
        ),
        tests: list(
          "Tests, in the order typed.",
          object("A test.", {
            id: text("Id."),
            what: text("What is tried."),
            step: optional(text("Id of the step.")),
            date: optional(date("When it was made; absent until then.")),
            by: optional(text("Who made it; a person's id.")),
            result: optional(text("What came out.")),
            source,
          }),
        ),
        earlierChanges: optional(text("How it goes together with earlier changes.")),
        flightManual: optional(text("What of the flight manual it changes.")),
        continuedAirworthiness: list(
          "Instructions for continued airworthiness, as far as typed.",
          object("A heading and what stands under it.", {
            heading: oneOf(
              "The heading, by its key in `alteration.yaml`.",
              continuedHeadings.map(({ key }) => key),
            ),
            text: text("What was typed."),
          }),
        ),
        source,
      }),
    ),
    firstDate: optional(date("First day with a session.")),
    lastDate: optional(date("Last day with a session; no date of completion.")),
    equipment: optional(
      object("Its changes of equipment, whose lines stand in `balance`.", {
        changes: list("Ids of the changes, by date.", text("An id.")),
        netWeight: shared("What is put in less what is taken out.", "quantity"),
        movement: optional(
          shared("How far the centre of gravity moved, aft counting up.", "quantity"),
        ),
        interrupted: yesOrNo("Whether a weighing or another change came between."),
      }),
    ),
  },
);
