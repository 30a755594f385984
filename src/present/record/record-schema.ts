import { inspectionResults } from "../../model/inspection.ts";
import { roles } from "../../model/person.ts";
import { workKinds } from "../../model/session.ts";
import { authorities, decisionRules, figureKinds } from "../../model/tolerance.ts";
import { alterationSchema } from "./alteration-record.ts";
import { balanceSchema } from "./balance-schema.ts";
import { helpSchema } from "./help-record.ts";
import { recordFormat, recordSchemaFile } from "./journal-record.ts";
import {
  date,
  type JsonSchema,
  list,
  object,
  oneOf,
  optional,
  schemaDialect,
  shared,
  text,
  whole,
  yesOrNo,
} from "./json-schema.ts";
import { layoutsSchema } from "./layout-schema.ts";
import { portionSchema } from "./portion-schema.ts";
import { headProperties, sharedDefinitions } from "./shared-definitions.ts";

const source = shared("Where it was typed.", "source");
const quantity = (description: string): JsonSchema => shared(description, "quantity");
const moment = (description: string): JsonSchema => shared(description, "moment");
const minutes = (description: string): JsonSchema => whole(description, 0);
const person = (description: string): JsonSchema => text(`${description}; a person's id.`);
const standings = ["within", "out", "superseded", "accounted for", "no rule"];
const verdicts = ["within", "below", "above"];

/**
 * The schema of `record.json`: JSON Schema, draft 2020-12. Every object is closed and every
 * property described, so that a reader needs nothing else.
 */
export function recordSchema(): JsonSchema {
  return {
    $schema: schemaDialect,
    $id: recordSchemaFile,
    title: "Record of an aircraft build",
    ...object(
      "The whole record of a build: what is declared, every day as typed and as understood, every total of hours, and every finding. What is not known is absent, never null.",
      {
        ...headProperties(recordFormat),
        leftOut: optional(leftOut),
        project: shared("The aircraft being built or altered.", "project"),
        people: list("Everybody declared, in order.", personSchema),
        assemblies: list("The tree that work is booked to; parents before parts.", assembly),
        steps: list("The tasks, in the order declared.", step),
        rules: list("Limits and who says so.", rule),
        instruments: list("What was measured with.", instrument),
        lots: list("Batches of material.", lot),
        days: list("The entries, oldest first.", day),
        seals: list("Months that were closed, oldest first.", seal),
        balance: optional(balanceSchema),
        portion: optional(portionSchema),
        help: optional(helpSchema),
        alteration: optional(alterationSchema),
        omissions: list(
          "Files of the journal that are not part of the record, such as drafts.",
          object("A file left out.", { file: text("Its path."), why: text("The reason.") }),
        ),
        totals: shared("Every total of hours.", "totals"),
        findings: list("What the checks found, in order of place.", finding),
      },
    ),
    $defs: { ...sharedDefinitions, sizes },
  };
}

const sizes = list(
  "Declared sizes that limits are in terms of.",
  object("A size.", { name: text("Its name, such as `D`."), quantity: quantity("Its value.") }),
);

const timecode = (means: string) =>
  object(means, { seconds: whole("Whole seconds.", 0), typed: text("As typed.") });

const leftOut = object("How many of each thing the public edition leaves out or replaces.", {
  days: whole("Days shown by their hours alone.", 0),
  sessionNotes: whole("Notes of sessions.", 0),
  names: whole("People shown as a role or as initials, under a neutral id.", 0),
  readings: whole("Readings.", 0),
  lots: whole("Lots.", 0),
  photos: whole("Photographs.", 0),
  videos: whole("Recordings.", 0),
  deviations: whole("Deviations.", 0),
  loadingCases: whole("Loading cases of the weight and balance.", 0),
  invoices: whole("Numbers of bills for help.", 0),
  otherRecords: whole("Cures, holds, releases, squawks and inspections of private days.", 0),
  amendments: whole("Amendments.", 0),
  findingWords: whole("Findings listed without their words.", 0),
  omittedFiles: whole("Drafts and other files that are not part of the record.", 0),
});

const personSchema = object("Somebody who works on, inspects or visits the project.", {
  id: text("Id; in the public edition a neutral one for people not named."),
  name: text("Name, or what the edition shows for it."),
  initials: text("Initials, or what the edition shows for them."),
  role: oneOf("The role taken unless a session says otherwise.", roles),
  standing: optional(text("What entitles them to be heard, by the builder's account.")),
  private: yesOrNo("Whether the public edition shows a role only."),
  source,
});

const assembly = object("A node of the tree that work is booked to.", {
  id: text("Id."),
  title: text("Title."),
  summary: optional(text("A sentence about it.")),
  parent: optional(text("Id of the assembly above; absent at a root.")),
  path: list("Ids from the root to this one, both included.", text("An id.")),
  children: list("Ids of the parts, in the order declared.", text("An id.")),
  steps: list("Ids of its own steps, in the order declared.", text("An id.")),
  source,
});

const step = object("One task from the drawings or the manual, and where it stands.", {
  id: text("Id."),
  title: text("Title."),
  assembly: text("Id of its assembly."),
  drawing: optional(text("Drawing and revision.")),
  plannedMinutes: optional(minutes("Planned hours, in whole minutes.")),
  stage: optional(text("Newest stage typed on a session of the step.")),
  stageDate: optional(date("The day of that stage.")),
  firstDate: optional(date("First day with work on it.")),
  lastDate: optional(date("Last day with work on it.")),
  looks: list(
    "What has to be looked at before the step may be closed.",
    object("A look and the newest inspection of it.", {
      look: text("Name of the look."),
      done: yesOrNo("Whether its newest inspection is clear."),
      date: optional(date("Date of that inspection.")),
      by: optional(person("Who looked")),
      result: optional(oneOf("How it came out.", inspectionResults)),
    }),
  ),
  source,
});

const citation = object("Who says so: enough to find the place.", {
  document: text("Document."),
  edition: optional(text("Edition, revision or date, as printed.")),
  place: optional(text("Table, paragraph or page.")),
  status: optional(
    oneOf("How far a value shipped with the program was checked.", ["read", "secondary", "memory"]),
  ),
  text: text("All of it on one line."),
});

const rule = object("A limit and who says so.", {
  id: text("Id."),
  title: text("Title."),
  authority: oneOf("Who it speaks for.", authorities),
  citation,
  set: optional(text("Name of the rule set shipped with the program that it was taken from.")),
  lower: optional(text("Lower limit, inclusive, as typed.")),
  upper: optional(text("Upper limit, inclusive, as typed.")),
  nominal: optional(text("Nominal value, as typed.")),
  table: optional(
    object("The table that the limits are columns of; between rows they run in a straight line.", {
      by: text("What it is entered with: `temperature`, or the name of a size."),
      rows: list(
        "The rows as typed, going up.",
        object("A row.", {
          at: quantity("What the row is entered with."),
          lower: optional(quantity("Lower limit, inclusive.")),
          upper: optional(quantity("Upper limit, inclusive.")),
          nominal: optional(quantity("Nominal value.")),
        }),
      ),
    }),
  ),
  judges: optional(oneOf("What is judged in place of each value by itself.", figureKinds)),
  over: optional(
    object("The general rule that this one wins over.", {
      rule: text("Id of that rule."),
      steps: optional(list("Ids of the steps on which it wins; absent: all.", text("An id."))),
    }),
  ),
  sizes: { $ref: "#/$defs/sizes", description: "Sizes its limits are in terms of." },
  decision: oneOf("How uncertainty enters the decision.", decisionRules),
  addsDrag: yesOrNo("Whether a friction drag beside the reading is added to both limits."),
  advice: list("What can make such a reading look wrong.", text("A sentence.")),
  source,
});

const instrument = object("An instrument and its calibrations.", {
  id: text("Id."),
  title: text("Title."),
  resolution: optional(quantity("Resolution.")),
  uncertainty: optional(quantity("Expanded uncertainty of the calibration.")),
  coverage: { description: "Coverage factor of that uncertainty.", type: "number" },
  calibrations: list(
    "Oldest first; none: not under calibration.",
    object("A calibration.", {
      on: date("Date."),
      due: optional(date("Last day on which it counts, inclusive.")),
      by: optional(text("By whom.")),
    }),
  ),
  lapsed: yesOrNo("Whether its calibration had lapsed on the day of judgement."),
  source,
});

const lot = object("A batch of material.", {
  id: text("Id."),
  title: text("Title."),
  material: text("Kind of material."),
  made: optional(date("Maker's date.")),
  expires: optional(date("Last day of use as marked by the maker, inclusive.")),
  extensions: list(
    "Later expiries given to it.",
    object("An extension.", {
      on: date("When it was given."),
      until: date("Last day of use by it, inclusive."),
      why: text("Why."),
    }),
  ),
  private: yesOrNo("Whether the public edition leaves it out."),
  expiry: optional(date("Last day of use as known on the day of judgement.")),
  expired: yesOrNo("Whether it had expired on the day of judgement."),
  daysLeft: optional(whole("Days left on that day; negative: days past.")),
  uses: list("Sessions and cures that used it.", object("A use.", { date: date("Date."), source })),
  source,
});

const session = object("Who worked on what, from when to when, and as which kind of work.", {
  number: whole("Counted from 1 within the day, as amendments count.", 1),
  assembly: text("Id of the assembly it is booked to."),
  step: optional(text("Id of the step.")),
  kind: oneOf("Kind of work.", workKinds),
  counted: oneOf("Whether its minutes count to the build or apart.", ["build", "apart"]),
  who: list(
    "Everybody present; each is credited with all the minutes.",
    object("A person present.", { person: person("Who"), role: oneOf("In which role.", roles) }),
  ),
  from: optional(moment("Start; absent when only the hours were typed.")),
  to: optional(moment("End, which may be on the next day.")),
  minutes: minutes("Elapsed minutes, amendments in force."),
  typed: optional(
    text("The hours, or the start, as typed; once amended, as the amendment has it."),
  ),
  stage: optional(text("How far the step's joint was at the end.")),
  lots: list("Ids of lots used.", text("An id.")),
  tasks: optional(
    list("Ids of the tasks of the major-portion sheet it is evidence of.", text("An id.")),
  ),
  note: optional(text("Note.")),
  private: yesOrNo("Whether the public edition leaves out the note."),
  source,
});

const reading = object("One or more values of the same thing, against the same rule.", {
  id: text("Id."),
  step: optional(text("Id of the step.")),
  assembly: optional(text("Id of the assembly.")),
  what: text("What was measured."),
  at: optional(text("Where.")),
  rule: optional(text("Id of the rule.")),
  instrument: optional(text("Id of the instrument.")),
  values: list(
    "What is judged: the values in the order typed, or the figure that is made of them.",
    object("A value and how it compares.", {
      quantity: quantity("The value."),
      verdict: optional(oneOf("Against the limits as written; absent without a rule.", verdicts)),
      assurance: optional(
        object("What the instrument's uncertainty says about conformity.", {
          kind: oneOf("Whether conformity is proven under the rule's decision rule.", [
            "proven",
            "not proven",
            "disproven",
            "no acceptance zone",
          ]),
          probability: {
            description: "Conformance probability.",
            type: "number",
            minimum: 0,
            maximum: 1,
          },
          from: optional({
            description:
              "Least reading that the rule's guard band accepts, in the unit of the value.",
            type: "number",
          }),
          to: optional({
            description:
              "Greatest reading that the rule's guard band accepts, in the unit of the value.",
            type: "number",
          }),
        }),
      ),
      source,
    }),
  ),
  lower: optional(quantity("Lower limit with every size filled in, inclusive.")),
  upper: optional(quantity("Upper limit with every size filled in, inclusive.")),
  verdict: optional(oneOf("The worst of the values.", verdicts)),
  standing: optional(oneOf("What stands behind it.", standings)),
  governedBy: optional(text("Id of the rule that wins over the one named.")),
  of: optional(list("Ids of the readings it was said to be made of.", text("An id."))),
  figure: optional(
    object("How the values came about, where the rule judges a figure made of several.", {
      kind: oneOf("What was made of them.", figureKinds),
      of: list(
        "The readings it is made of, each the newest that replaces the one named.",
        object("A reading.", {
          reading: text("Its id."),
          values: list("Its values, in the order typed.", quantity("A value.")),
        }),
      ),
    }),
  ),
  temperature: optional(quantity("Temperature that a rule's table is entered with.")),
  temperatureFrom: optional(oneOf("Whose temperature that is.", ["reading", "day"])),
  drag: optional(quantity("Friction drag to be added to a torque rule's limits.")),
  sizes: { $ref: "#/$defs/sizes", description: "Sizes of its own, over those of the rule." },
  supersedes: optional(text("Id of the reading it replaces.")),
  supersededBy: optional(text("Id of the later reading that replaces it.")),
  deviation: optional(text("Id of the deviation that accounts for it.")),
  private: yesOrNo("Whether the public edition leaves it out."),
  source,
});

const day = object("One dated entry.", {
  date: date("The day."),
  written: optional(moment("When it was written down, if said.")),
  late: whole("Days between the day and its writing down; 0 when not said.", 0),
  imported: optional(text("File that its hours were imported from, when they were not typed.")),
  private: yesOrNo("Whether the public edition shows its hours alone."),
  title: text("Title; empty on a private day of the public edition."),
  place: text("Place code; empty on a private day of the public edition."),
  conditions: object("Conditions in the shop.", {
    temperature: optional(quantity("Temperature.")),
    humidity: optional(quantity("Relative humidity.")),
  }),
  lengthMinutes: whole("How long the calendar day is in the shop's zone, in minutes.", 1),
  prose: text("The Markdown below the front matter, as typed."),
  sessions: list("Sessions, in the order typed.", session),
  readings: list("Readings, in the order typed.", reading),
  cures: list(
    "Waits begun on the day.",
    object("A cure.", {
      step: text("Id of the step."),
      lot: optional(text("Id of the lot.")),
      mixed: moment("When it was mixed."),
      closed: optional(moment("When the joint was closed and fastened.")),
      ready: moment("When it may be loaded."),
      citation: optional(citation),
      note: optional(text("Note.")),
      over: optional(yesOrNo("Whether it was over on the day of judgement.")),
      brokenBy: list(
        "Sessions on the same step that began before it was ready.",
        object("A session.", {
          date: date("Its day."),
          session: whole("Its number within that day.", 1),
        }),
      ),
      source,
    }),
  ),
  holds: list(
    "Things fastened only for now.",
    object("A hold.", {
      id: text("Id."),
      step: text("Id of the step."),
      with: text("What holds it."),
      count: optional(whole("How many.", 0)),
      where: optional(text("Where.")),
      released: optional(date("The day it was released; absent while it is open.")),
      source,
    }),
  ),
  releases: list(
    "Ends of holds.",
    object("A release of one hold, or of all holds of a step so far.", {
      hold: optional(text("Id of the hold.")),
      step: optional(text("Id of the step.")),
      source,
    }),
  ),
  deviations: list(
    "Departures from the drawings.",
    object("A deviation.", {
      id: text("Id."),
      step: optional(text("Id of the step.")),
      drawing: text("Drawing and revision."),
      planned: text("What the drawing says."),
      done: text("What was done instead."),
      why: text("The builder's reason."),
      open: optional(yesOrNo("Whether it has no disposition yet.")),
      disposition: optional(
        object("What was decided, by the builder's account; not a signature.", {
          date: date("The day of the entry that says so."),
          text: text("What."),
          by: optional(person("Who accepted it")),
        }),
      ),
      private: yesOrNo("Whether the public edition leaves it out."),
      source,
    }),
  ),
  squawks: list(
    "Open items found on the day.",
    object("A squawk.", {
      id: text("Id."),
      found: text("What was found."),
      step: optional(text("Id of the step.")),
      assembly: optional(text("Id of the assembly.")),
      owner: optional(person("Who is to see to it")),
      standing: optional(
        oneOf("How it stands on the day of judgement.", ["open", "fixed, not closed", "closed"]),
      ),
      fixed: optional(
        object("What was done about it.", { date: date("The day."), text: text("What.") }),
      ),
      closed: optional(
        object("When somebody looked and closed it.", {
          date: date("The day."),
          by: optional(person("Who")),
        }),
      ),
      source,
    }),
  ),
  inspections: list(
    "Looks taken on the day.",
    object("An inspection, by the builder's account; not a signature.", {
      step: text("Id of the step."),
      look: text("Which of the step's looks."),
      by: person("Who looked"),
      open: text("What was open to view."),
      findings: text("What was found."),
      result: oneOf("How it came out.", inspectionResults),
      source,
    }),
  ),
  layouts: layoutsSchema,
  photos: list(
    "Photographs named by the day.",
    object("A photograph.", {
      file: text("Path below the journal's folder of photographs."),
      caption: text("Caption."),
      alt: optional(text("Alternative text.")),
      step: optional(text("Id of the step.")),
      assembly: optional(text("Id of the assembly.")),
      shows: list("Who can be seen.", person("Somebody")),
      private: yesOrNo("Whether the public edition leaves it out."),
      source,
    }),
  ),
  videos: list(
    "Recordings named by the day.",
    object("A recording, on another site or a file of the builder's own: a link or a file.", {
      title: text("Title."),
      link: optional(text("Where it stands, as typed.")),
      file: optional(text("Path below the journal's folder of recordings.")),
      host: optional(yesOrNo("Whether the file is to be published with the site.")),
      picture: optional(text("The photograph of the day that stands for it, by its path.")),
      step: optional(text("Id of the step.")),
      assembly: optional(text("Id of the assembly.")),
      length: optional(timecode("How long it is.")),
      times: list(
        "Places in it, in order.",
        object("A place in a recording.", {
          at: timecode("How long after the beginning."),
          what: text("What is seen there."),
          step: optional(text("Id of the step.")),
          link: optional(text("Where the recording begins at this place, as typed.")),
        }),
      ),
      private: yesOrNo("Whether the public edition leaves it out."),
      source,
    }),
  ),
  amendments: list(
    "Corrections to earlier days that this entry carries; the values they give are in force.",
    object("An amendment.", {
      day: date("The day corrected."),
      field: text("Path of the value, counted from 1, such as `sessions[2].hours`."),
      was: text("The value as first typed."),
      now: text("The value in force."),
      why: text("Why."),
      source,
    }),
  ),
  next: list("What comes next, as typed.", text("A line.")),
  assertions: list(
    "Totals that the builder vouches for.",
    object("An assertion.", {
      of: text("`total`, or the id of an assembly, rolled up."),
      minutes: minutes("Minutes up to and including this day."),
      source,
    }),
  ),
  source,
});

const sealedMinutes = (description: string) =>
  object(description, {
    build: minutes("Of the build itself."),
    apart: minutes("Of study and shop, which are totalled apart."),
  });

const seal = object("A month closed with hashes and totals.", {
  month: text("The month, as in `2026-03`."),
  digest: text("SHA-256 of the seal's bytes, 64 hexadecimal digits."),
  previous: optional(
    object("The seal that it was made after; absent for the first.", {
      month: text("Its month."),
      digest: text("SHA-256 of its bytes."),
    }),
  ),
  programVersion: text("Version of the program that made it."),
  inMonth: sealedMinutes("Minutes of the month, when it was sealed."),
  toDate: sealedMinutes("Minutes up to the month's end, when it was sealed."),
  entries: whole("How many entries it names.", 1),
  photographs: whole("How many photographs it names.", 0),
  source,
});

const finding = object("What a check found.", {
  code: text("Name of the check."),
  severity: oneOf(
    "An error means that the journal cannot be believed; a finding that the aircraft wants attention.",
    ["error", "finding"],
  ),
  message: text("What is wrong."),
  label: optional(text("A few words about the place.")),
  notes: list("Evidence.", text("A note.")),
  help: list("What to do.", text("A sentence.")),
  source: optional(shared("Where; absent when the edition withholds the words.", "source")),
});
