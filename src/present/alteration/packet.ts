import type { Analysis, StepState } from "../../compute/analysis.ts";
import type { WeightEffect } from "../../compute/ledgers/alteration.ts";
import type { Balanced, ChangeState } from "../../compute/ledgers/balance.ts";
import { type MomentUnits, momentUnit } from "../../compute/moments.ts";
import type { Alteration } from "../../model/alteration.ts";
import type { Step } from "../../model/assembly.ts";
import { inspectionsOf } from "../../model/build.ts";
import { citationText, type SourceStatus } from "../../model/citation.ts";
import type { Project } from "../../model/project.ts";
import {
  continuedHeadings,
  signingStatements,
} from "../../model/published/alteration-paperwork.ts";
import { balanceNumber, balanceText, momentNumber, signedNumber } from "../format/balance.ts";
import { dateText } from "../format/dates.ts";
import { type EditedAnalysis, editionNote } from "../record/edition.ts";
import { builtBy } from "../record/identity.ts";
import { deviationRows } from "../tables/deviations.ts";
import { personName, stepTitle } from "../tables/named.ts";
import { openItems } from "../tables/open-items.ts";

/** A column of a table of the packet. */
export interface PacketColumn {
  readonly heading: string;
  /** Of the width of the table; shares of all columns together make it up. */
  readonly share: number;
  readonly align?: "right";
}

/** A piece of the packet, for paper and for plain text alike. */
export type PacketBlock =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  | {
      readonly kind: "facts";
      readonly title: string;
      readonly facts: readonly (readonly [label: string, value: string])[];
    }
  | {
      readonly kind: "table";
      readonly title: string;
      readonly columns: readonly PacketColumn[];
      readonly rows: readonly (readonly string[])[];
      readonly none: string;
    };

/** A part of the packet. */
export interface PacketPart {
  readonly title: string;
  readonly blocks: readonly PacketBlock[];
}

/** The papers of an alteration as a draft, for whoever signs. */
export interface Packet {
  readonly title: string;
  /** What the alteration is. */
  readonly about: string;
  readonly parts: readonly PacketPart[];
}

/** Name of the packet; every page carries it. */
export const packetName = "Alteration packet, draft";

/** A field that a person fills in by hand. */
export const packetBlank = "left empty, to be filled in by hand";

/** Who signs, and what is asked of them: boxes that stay empty. */
export const packetSigners = [
  { title: "Work done by", lines: ["Name", "Signature", "Date"] },
  {
    title: "Work supervised by, if it was",
    lines: ["Name", "Number and kind of certificate", "Signature", "Date"],
  },
  {
    title: "Inspection and approval for return to service, by whoever may give it",
    lines: ["Name", "Number and kind of certificate", "Signature", "Date"],
  },
] as const;

/**
 * The packet of an alteration, assembled from what the builder typed: description of the work,
 * data, tests, weight and balance, equipment, instructions for continued airworthiness and the
 * list of what departs. What was not typed is named as lacking and never made up.
 * @returns `undefined` for an aircraft that is built.
 */
export function packetOf(edited: EditedAnalysis): Packet | undefined {
  const { analysis } = edited;
  const { alteration } = analysis;
  if (!alteration) return undefined;
  const { register, weights } = alteration;
  return {
    title: packetName,
    about: register?.title ?? analysis.build.project.summary,
    parts: [
      { title: "Draft: what this is", blocks: frontBlocks(edited, register) },
      { title: "Draft: description of the work", blocks: workBlocks(analysis, register) },
      { title: "Draft: data", blocks: dataBlocks(analysis, register) },
      { title: "Draft: tests and inspections", blocks: testBlocks(analysis, register) },
      { title: "Draft: weight, balance, equipment", blocks: weightBlocks(analysis, weights) },
      { title: "Draft: continued airworthiness", blocks: continuedBlocks(register) },
      { title: "Draft: discrepancies", blocks: discrepancyBlocks(analysis) },
      { title: "Draft: who signs", blocks: signingBlocks() },
    ],
  };
}

const text = (words: string): PacketBlock => ({ kind: "text", text: words });
const heading = (words: string): PacketBlock => ({ kind: "heading", text: words });

const draftSentence =
  "This is a draft by the builder for whoever supervises, inspects and signs. It is no form of an authority, nobody has signed it, and it permits nothing. The inspector decides what is needed, which data may be used, and whether the work is major or minor; where this draft and the inspector differ, the inspector is right.";

function frontBlocks(edited: EditedAnalysis, register: Alteration | undefined): PacketBlock[] {
  const { analysis } = edited;
  const { project } = analysis.build;
  const lacks = lacksOf(analysis, register);
  return [
    text(draftSentence),
    {
      kind: "facts",
      title: "The aircraft",
      facts: [
        ["Maker, as on the data plate", register?.maker ?? "not typed"],
        ["Designation", project.designation],
        ["Serial number", project.serial],
        ["Registration", project.registration ?? "not typed"],
        builtBy(analysis.build),
        ["Owner, as on the registration", packetBlank],
        ["Alteration", register?.title ?? "not typed"],
        ["Where on the aircraft", register?.where ?? "not typed"],
        ["First day of work", dayOr(analysis.alteration?.firstDate, "none yet")],
        ["Last day of work so far", dayOr(analysis.alteration?.lastDate, "none yet")],
        ["Date of completion", packetBlank],
        ["Judged on", dateText(analysis.asOf.date)],
      ],
    },
    heading("What this draft lacks"),
    ...(lacks.length > 0
      ? lacks.map(text)
      : [text("Everything that the builder can type is there. What is left is for others.")]),
    heading("Which edition this is"),
    text(editionNote(edited)),
  ];
}

function dayOr(date: string | undefined, none: string): string {
  return date === undefined ? none : dateText(date);
}

function lacksOf(analysis: Analysis, register: Alteration | undefined): string[] {
  const { project } = analysis.build;
  const weights = analysis.alteration?.weights;
  const open = analysis.deviations.filter((each) => each.open).length;
  const waiting = register?.tests.filter(({ result }) => result === undefined).length ?? 0;
  const headings = continuedHeadings.filter(({ key }) => !register?.continued.has(key)).length;
  return [
    ...(register
      ? []
      : ["The journal has no `alteration.yaml`: place, data, tests and instructions are missing."]),
    ...(project.registration === undefined ? ["No registration mark is typed."] : []),
    ...(register && !register.maker ? ["The maker of the aircraft is not typed."] : []),
    ...(register && register.data.length === 0 && project.drawings.length === 0
      ? ["No data is named that the work is done to."]
      : []),
    ...(register && register.tests.length === 0 ? ["No test is listed."] : []),
    ...(waiting > 0 ? [`${counted(waiting, "test has", "tests have")} no result yet.`] : []),
    ...(weights ? [] : ["There is no register of weight and balance, so its effect is not known."]),
    ...(weights && !weights.before && weights.changes.length > 0
      ? ["Nothing was weighed before the first change, so its effect cannot be worked out."]
      : []),
    ...(register?.flightManual === undefined ? ["Nothing is said of the flight manual."] : []),
    ...(register?.earlierChanges === undefined
      ? ["Nothing is said of how it goes together with earlier changes."]
      : []),
    ...(headings > 0
      ? [
          `${counted(headings, "heading", "headings")} of continued airworthiness ${headings === 1 ? "is" : "are"} empty.`,
        ]
      : []),
    ...(open > 0 ? [`${counted(open, "deviation has", "deviations have")} no disposition.`] : []),
  ];
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

function workBlocks(analysis: Analysis, register: Alteration | undefined): PacketBlock[] {
  const { build } = analysis;
  const used = analysis.lots.filter(({ uses }) => uses.length > 0);
  return [
    text(build.project.summary),
    ...(register ? [text(`Where: ${register.where}.`), ...register.work.map(text)] : []),
    heading("Step by step, from the entries"),
    {
      kind: "table",
      title: "Steps of the work",
      columns: [
        { heading: "Step", share: 12 },
        { heading: "On", share: 22 },
        { heading: "What", share: 28 },
        { heading: "To", share: 16 },
        { heading: "So far", share: 22 },
      ],
      rows: [...build.steps.values()].map((step) => stepRow(analysis, step)),
      none: "no steps are declared",
    },
    heading("Materials with a lot number"),
    {
      kind: "table",
      title: "Materials with a lot number",
      columns: [
        { heading: "Lot", share: 24 },
        { heading: "What", share: 46 },
        { heading: "Used on", share: 30 },
      ],
      rows: used.map(({ lot, uses }) => [
        lot.id,
        lot.title,
        [...new Set(uses.map(({ date }) => date))].join(", "),
      ]),
      none: "no lot was used",
    },
    heading("Who did the work, by the entries"),
    {
      kind: "table",
      title: "Who did the work",
      columns: [
        { heading: "Name", share: 34 },
        { heading: "As", share: 26 },
        { heading: "Standing, by the builder's account", share: 40 },
      ],
      rows: workers(analysis),
      none: "nobody yet",
    },
  ];
}

function stepRow({ build, steps }: Analysis, step: Step): string[] {
  const state = steps.get(step.id);
  return [
    step.id,
    (build.assemblies.get(step.assembly)?.path ?? [step.assembly])
      .map((id) => build.assemblies.get(id)?.title ?? id)
      .join(", "),
    step.title,
    step.drawing ?? "not typed",
    state ? progressText(state) : "not begun",
  ];
}

function progressText({ stage, stageDate, firstDate, lastDate }: StepState): string {
  if (firstDate === undefined) return "not begun";
  const days = firstDate === lastDate ? firstDate : `${firstDate} to ${lastDate}`;
  return stage === undefined ? days : `${stage} on ${stageDate}; work on ${days}`;
}

function workers({ build, hours }: Analysis): string[][] {
  const seen = new Map<string, string[]>();
  for (const { person, role } of hours.lines) {
    seen.set(`${person} ${role}`, [
      personName(build, person) ?? person,
      role,
      build.people.get(person)?.standing ?? "",
    ]);
  }
  return [...seen.values()];
}

function dataBlocks(analysis: Analysis, register: Alteration | undefined): PacketBlock[] {
  const { build, readings } = analysis;
  const rules = [...new Set(readings.flatMap(({ rule }) => (rule ? [rule] : [])))];
  return [
    text(
      "What the work was done to, with the revision that was used. Whether this data may be used for this alteration, and whose approval it needs, is for the inspector to say.",
    ),
    {
      kind: "table",
      title: "Data named for the alteration",
      columns: [
        { heading: "Document", share: 24 },
        { heading: "Revision", share: 16 },
        { heading: "Title and place", share: 34 },
        { heading: "From, and remarks", share: 26 },
      ],
      rows: (register?.data ?? []).map(({ document, revision, title, place, from, note }) => [
        document,
        revision,
        joined(title, place),
        joined(from, note),
      ]),
      none: "none is typed",
    },
    heading("Drawings of the project"),
    {
      kind: "table",
      title: "Drawings of the project",
      columns: [
        { heading: "Drawing", share: 28 },
        { heading: "Revision", share: 20 },
        { heading: "Title", share: 52 },
      ],
      rows: build.project.drawings.map(({ id, revision, title }) => [id, revision, title]),
      none: "none is declared",
    },
    heading("Where the limits of the readings come from"),
    {
      kind: "table",
      title: "Sources of limits",
      columns: [
        { heading: "Limit", share: 36 },
        { heading: "By", share: 18 },
        { heading: "Source", share: 46 },
      ],
      rows: rules.map(({ title, authority, citation }) => [
        title,
        authority,
        `${citationText(citation)}${citation.status ? ` (${statusWords[citation.status]})` : ""}`,
      ]),
      none: "no reading was held against a limit",
    },
    heading("Flight manual"),
    text(register?.flightManual ?? "Not typed."),
    heading("How it goes together with earlier changes"),
    text(register?.earlierChanges ?? "Not typed."),
  ];
}

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined).join("; ");
}

const statusWords: Readonly<Record<SourceStatus, string>> = {
  read: "read in the text or a copy of it",
  secondary: "second-hand, not read in the text itself",
  memory: "from memory, not checked",
};

function testBlocks(analysis: Analysis, register: Alteration | undefined): PacketBlock[] {
  const { build, readings } = analysis;
  const standing = (of: string) => readings.filter((each) => each.standing === of).length;
  return [
    {
      kind: "table",
      title: "Tests",
      columns: [
        { heading: "Test", share: 12 },
        { heading: "What", share: 34 },
        { heading: "Made on", share: 16 },
        { heading: "By", share: 14 },
        { heading: "Result", share: 24 },
      ],
      rows: (register?.tests ?? []).map(({ id, what, step, date, by, result }) => [
        id,
        joined(what, step === undefined ? undefined : `${step} ${stepTitle(build, step) ?? ""}`),
        date ?? "not yet",
        personName(build, by) ?? "",
        result ?? "none yet",
      ]),
      none: "none is typed",
    },
    heading("Looks that were taken"),
    {
      kind: "table",
      title: "Looks that were taken",
      columns: [
        { heading: "Date", share: 13 },
        { heading: "Step and look", share: 27 },
        { heading: "By", share: 20 },
        { heading: "Found", share: 28 },
        { heading: "Result", share: 12 },
      ],
      rows: inspectionsOf(build).map(({ date, step, look, by, findings, result }) => [
        date,
        `${step}: ${look}`,
        joined(personName(build, by), build.people.get(by)?.standing),
        findings,
        result,
      ]),
      none: "nobody has looked yet, by the entries",
    },
    heading("Readings"),
    text(
      `${counted(readings.length, "reading", "readings")} in readings.csv: ${standing("within")} within limits, ${standing("accounted for")} outside and accounted for by a deviation, ${standing("out")} outside, ${standing("superseded")} replaced by a later one, ${standing("no rule")} without a limit.`,
    ),
  ];
}

function weightBlocks({ balance }: Analysis, weights: WeightEffect | undefined): PacketBlock[] {
  if (!weights || !balance) {
    return [
      text(
        "The journal keeps no register of weight and balance. The effect has to be worked out from the exact weight and arm of everything put in and taken out, or the aircraft has to be weighed.",
      ),
    ];
  }
  const { units, datum } = balance.register;
  const unit = momentUnit(units);
  const numbers = (sum: Balanced) => [
    balanceNumber(sum.weight),
    sum.cg ? balanceNumber(sum.cg) : "–",
    momentNumber(sum.moment, unit),
  ];
  const effect: string[][] = [
    ...(weights.before ? [["Empty, before", ...numbers(weights.before)]] : []),
    [
      "Change",
      signedNumber(weights.net.weight),
      weights.movement ? signedNumber(weights.movement) : "–",
      momentNumber(weights.net.moment, unit),
    ],
    ...(weights.after ? [["Empty, after", ...numbers(weights.after)]] : []),
  ];
  return [
    text(`Datum: ${datum}; arms aft of it count up. What is taken out counts below zero.`),
    heading("Effect on weight and balance"),
    {
      kind: "table",
      title: "Effect on weight and balance",
      columns: [
        { heading: "", share: 34 },
        { heading: `Weight, ${units.weight.symbol}`, share: 22, align: "right" },
        { heading: `CG, ${units.arm.symbol}`, share: 22, align: "right" },
        { heading: `Moment, ${unit}`, share: 22, align: "right" },
      ],
      rows: effect,
      none: "",
    },
    text(movedText(weights)),
    ...(balance.empty?.basis === "projected"
      ? [text("The empty weight is a projection: the aircraft has not been weighed.")]
      : []),
    heading("Change of the equipment list"),
    {
      kind: "table",
      title: "Change of the equipment list",
      columns: [
        { heading: "Change", share: 18 },
        { heading: "Item", share: 22 },
        { heading: "Part number", share: 15 },
        { heading: "Serial number", share: 13 },
        { heading: "Weight", share: 10, align: "right" },
        { heading: "Arm", share: 9, align: "right" },
        { heading: "Moment", share: 13, align: "right" },
      ],
      rows: weights.changes.flatMap((state) => equipmentRows(state, units)),
      none: "no change of equipment is typed",
    },
  ];
}

function movedText({ movement, interrupted, changes }: WeightEffect): string {
  if (changes.length === 0) return "No change of equipment belongs to the alteration.";
  if (interrupted) {
    return "A weighing, or a change that does not belong to the alteration, lies between: the figures before and after differ by that as well.";
  }
  if (!movement) return "How far the centre of gravity moves cannot be worked out.";
  if (movement.amount.equals(0)) return "The centre of gravity does not move.";
  const way = movement.amount.gt(0) ? "aft" : "forward";
  const size = balanceText({ amount: movement.amount.abs(), unit: movement.unit });
  return `The centre of gravity of the empty aircraft moves ${way} by ${size}.`;
}

function equipmentRows({ change, lines }: ChangeState, units: MomentUnits): string[][] {
  return lines.map(({ load, weight, arm, moment }) => [
    `${change.date}: ${change.title}`,
    `${load.role === "out" ? "out" : "in"}: ${load.name}${load.item?.estimated ? " (estimated)" : ""}`,
    load.item?.part ?? "",
    load.item?.serial ?? "",
    signedNumber({ amount: weight, unit: units.weight }),
    balanceNumber({ amount: arm, unit: units.arm }),
    momentNumber(moment, momentUnit(units)),
  ]);
}

function continuedBlocks(register: Alteration | undefined): PacketBlock[] {
  return [
    text(
      "Headings only, with what the builder typed under them. A heading that does not apply says so and is not dropped. The first nine are second-hand, the others from memory; the inspector and the rule itself say which are needed, and in which order.",
    ),
    {
      kind: "facts",
      title: "Continued airworthiness",
      facts: continuedHeadings.map(({ key, title, status }) => [
        status === "memory" ? `${title} *` : title,
        register?.continued.get(key) ?? "not typed yet",
      ]),
    },
    text("* From memory, not checked."),
  ];
}

function discrepancyBlocks(analysis: Analysis): PacketBlock[] {
  const others = openItems(analysis).filter(({ kind }) => kind !== "deviation");
  return [
    text(
      "Every deviation that the builder wrote down, open and closed. It is the builder's own list and takes no inspector's place.",
    ),
    {
      kind: "table",
      title: "Deviations from the data",
      columns: [
        { heading: "No.", share: 10 },
        { heading: "From", share: 17 },
        { heading: "Planned, done, why", share: 37 },
        { heading: "Standing", share: 10 },
        { heading: "Disposition", share: 26 },
      ],
      rows: deviationRows(analysis).map(({ deviation, open, acceptedBy }) => [
        `${deviation.id}, ${deviation.date}`,
        joined(deviation.drawing, deviation.step),
        `planned ${deviation.planned}; done ${deviation.done}; ${deviation.why}`,
        open ? "open" : "closed",
        deviation.disposition
          ? joined(
              deviation.disposition.text,
              deviation.disposition.date,
              acceptedBy === undefined ? undefined : `accepted by ${acceptedBy}`,
            )
          : "none yet",
      ]),
      none: "no deviation is typed",
    },
    heading("Other open items"),
    {
      kind: "table",
      title: "Other open items",
      columns: [
        { heading: "Kind", share: 14 },
        { heading: "Id", share: 18 },
        { heading: "Step", share: 14 },
        { heading: "What", share: 34 },
        { heading: "Standing", share: 20 },
      ],
      rows: others.map(({ kind, id, step, what, standing }) => [
        kind,
        id ?? "",
        step ?? "",
        what,
        standing,
      ]),
      none: "nothing else is open",
    },
  ];
}

function signingBlocks(): PacketBlock[] {
  return [
    text(
      "Who may sign, as far as the builder's references say it. These are rules of the United States, in other words than their own, and only as good as the copy they were taken from; elsewhere local rules say it. Ask the inspector before the work begins.",
    ),
    ...signingStatements.map(({ text: said, citation }) =>
      text(`${said} ${citationText(citation)}: ${statusWords[citation.status]}.`),
    ),
  ];
}

/** Why there is no packet for an aircraft, for whoever asked for one. */
export function noPacketReason({ basis }: Pick<Project, "basis">): string | undefined {
  return basis === "alteration"
    ? undefined
    : `there is no alteration packet: project.yaml says \`basis: ${basis}\``;
}
