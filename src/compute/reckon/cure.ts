import Fraction from "fraction.js";
import { citationText } from "../../model/citation.ts";
import {
  adhesiveSchedule,
  adhesiveScheduleCitation,
} from "../../model/published/army-tm-1-1520-240-bd.ts";
import { applicationHours } from "../../model/published/navedtra-14315.ts";
import { inBaseUnits } from "../../model/quantity.ts";
import { unitOf } from "../../model/unit.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type InputProblem, refused, sum, type Words } from "./sum.ts";

const fahrenheit = unitOf("°F");
const mostHalvings = 6;
const materials = ["epoxy", "sealant", "adhesive-5"] as const;
const classes = ["A-1/2", "A-1", "A-2", "B-1/2", "B-1", "B-2", "B-4"] as const;
const degreesF = (kelvins: Fraction): Fraction =>
  kelvins.sub(fahrenheit.offset).div(fahrenheit.factor);

/**
 * How long a published source says a material stays workable or takes to cure. Only what is
 * published for that very material: the rule that 18 °F halve the time is one for the working
 * time of epoxy and is refused for anything else, and nothing is read between the points of a
 * schedule.
 */
export const cureSum = sum({
  name: "cure",
  about: "working or curing time by a published source",
  inputs: {
    material: {
      kind: "choice",
      choices: materials,
      about:
        "epoxy: working time by temperature; sealant: application time by class; adhesive-5: an Army schedule",
      required: true,
      example: "epoxy",
    },
    time: {
      kind: "quantity",
      dimension: "time",
      range: "above zero",
      about: "epoxy: working time or pot life that the maker states",
      example: "60 min",
    },
    at: {
      kind: "quantity",
      dimension: "temperature",
      range: "any",
      about: "epoxy: temperature that the maker states it for",
      example: "72 °F",
    },
    temperature: {
      kind: "quantity",
      dimension: "temperature",
      range: "any",
      about: "epoxy: temperature of the resin; adhesive-5: 70, 104 or 170 °F",
      example: "90 °F",
    },
    class: {
      kind: "choice",
      choices: classes,
      about: "sealant: class and dash number on the can",
      example: "B-2",
    },
  },
  example: ["material=epoxy", "time=60 min", "at=72 °F", "temperature=90 °F"],
  reckon({ material, time, at, temperature, class: grade }) {
    const given = { time, at, temperature, class: grade };
    const wanted = needs[material];
    const problems: InputProblem[] = [];
    for (const name of ["time", "at", "temperature", "class"] as const) {
      const needed = wanted.includes(name);
      if (needed && !given[name])
        problems.push({ message: `\`${name}\` is missing for \`material=${material}\``, help: [] });
      if (!needed && given[name]) problems.push(notFor(material, name));
    }
    if (problems.length > 0) return refused(...problems);

    if (material === "epoxy" && time && at && temperature) {
      const from = degreesF(inBaseUnits(at));
      const to = degreesF(inBaseUnits(temperature));
      const halvings = to.sub(from).div(18);
      if (halvings.abs().gt(mostHalvings))
        return refused({
          input: "temperature",
          message: `from ${at.typed} to ${temperature.typed} the rule of thumb means nothing`,
          help: ["give the temperatures of the data sheet and of the shop"],
        });
      const value =
        halvings.d === 1n
          ? time.amount.div(new Fraction(2).pow(halvings))
          : time.amount.valueOf() * 2 ** -halvings.valueOf();
      return answered({
        result: { value, unit: time.unit.symbol },
        parts: [figurePart("halvings", "halvings of the time", halvings, "")],
        formula: "time × 2 ^ −((temperature − at) / 18 °F)",
        source:
          "an epoxy maker's note on warm-temperature bonding (epoxyworks.com): every 18 °F above 72 °F halve working time and pot life",
        cautions: [
          "this is working time, not the time until the joint may be loaded",
          "a rule of thumb: one published adhesive schedule halves its time every 27 to 30 °F instead",
          ...(to.lte(55)
            ? [
                "at 55 °F and below one maker calls epoxy all but dormant: the figure is not to be relied on",
              ]
            : []),
          ...(to.lt(72) || from.lt(72)
            ? [
                "below 72 °F the source says nothing; that it holds there too is repeated by others, and the set time of a thin film is said to grow only about 1.3 times",
              ]
            : []),
          "makers rate at 72 °F or at 77 °F: read on the data sheet which one it is",
          "a large mass in a pot sets faster than a thin film",
          governs,
        ],
      });
    }
    if (material === "sealant" && grade) {
      const cautions: Words[] = [
        "tack-free and cure times are on the maker's data sheet; none are given here, because none were read in a source",
        "how the time changes with temperature is published for epoxy, not for sealant: no figure for other than 77 °F",
        "below 40 % humidity the cure slows down; metal colder than 70 °F is not for sealing (NAVEDTRA 14315)",
        "faying surfaces: all fasteners are driven inside the application or assembly time",
        governs,
      ];
      return answered({
        result: { value: new Fraction(applicationHours[grade.slice(2)] ?? "0"), unit: "h" },
        parts: [],
        formula:
          "the dash number is the application time in hours at 77 °F and 50 % relative humidity",
        source:
          "NAVEDTRA 14315, application of sealants; the list of classes of AMS-S-8802 as quoted by others",
        cautions,
      });
    }
    const wantedF = temperature && degreesF(inBaseUnits(temperature));
    const point = adhesiveSchedule.find((each) => wantedF?.equals(each.fahrenheit));
    if (!point)
      return refused({
        input: "temperature",
        message: `the schedule has no time for ${temperature?.typed}`,
        help: ["it has 70 °F, 104 °F and 170 °F; nothing is read between them"],
      });
    return answered({
      result: { value: new Fraction(point.hours), unit: "h" },
      parts: [],
      formula: "looked up",
      source: citationText(adhesiveScheduleCitation),
      cautions: [
        "this schedule is for one two-part adhesive; another one has its own on the data sheet",
        governs,
      ],
    });
  },
});

const needs: Readonly<Record<(typeof materials)[number], readonly string[]>> = {
  epoxy: ["time", "at", "temperature"],
  sealant: ["class"],
  "adhesive-5": ["temperature"],
};

function notFor(material: (typeof materials)[number], name: string): InputProblem {
  if (material === "sealant" && name !== "class")
    return {
      input: name,
      message: "no source says how the time of a sealant changes with temperature",
      help: ["the rule of 18 °F is one for epoxy; use the sealant maker's data sheet"],
    };
  return {
    input: name,
    message: `\`${name}\` has no meaning for \`material=${material}\``,
    help: ["leave it out"],
  };
}
