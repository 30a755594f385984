import type { Assembly } from "../../../model/assembly.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Link } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** How far an assembly is, drawn by the density of its hatching. */
export const assemblyStandings = ["not begun", "begun", "part closed", "closed"] as const;
export type AssemblyStanding = (typeof assemblyStandings)[number];

/** A node of the tree with its rolled-up hours. */
export interface AssemblyRow {
  readonly assembly: Link;
  readonly standing: AssemblyStanding;
  /** Everything below included: `part closed, 3 of 8 steps, 51:00 planned`. */
  readonly says: string;
  readonly hours: string;
  /** Hours of study and shop; absent when there are none. */
  readonly apart?: Link;
  /** Its hours as a part of the whole build's. */
  readonly share: Percent;
  readonly parts: readonly AssemblyRow[];
}

/**
 * An assembly and everything below it.
 * @param depth How many levels of parts to give; 0 gives none.
 */
export function assemblyRow(
  record: RecordIndex,
  links: Links,
  assembly: Assembly,
  depth = Number.POSITIVE_INFINITY,
): AssemblyRow {
  const { build, hours } = record.analysis;
  const rolled = hours.byAssemblyRolledUp.get(assembly.id) ?? { build: 0, apart: 0 };
  const booked = rolled.build;
  const { steps, closed, planned } = tallyOf(record, assembly);
  const standing = standingOf(booked + rolled.apart, steps, closed);
  return {
    assembly: links.assembly(assembly.id),
    standing,
    says: [
      standing,
      ...(steps > 0 && closed < steps && closed > 0 ? [`${closed} of ${steps} steps`] : []),
      ...(planned > 0 ? [`${hoursText(planned)} planned`] : []),
    ].join(", "),
    hours: hoursText(booked),
    ...(rolled.apart > 0
      ? {
          apart: {
            text: hoursText(rolled.apart),
            href: links.to(record.addresses.assembly(assembly.id), apartAnchor(assembly)),
          },
        }
      : {}),
    share: percent((100 * booked) / Math.max(1, hours.total.build)),
    parts:
      depth === 0
        ? []
        : assembly.children.flatMap((id) => {
            const child = build.assemblies.get(id);
            return child ? [assemblyRow(record, links, child, depth - 1)] : [];
          }),
  };
}

/** Where on an assembly's page the rows of its study and shop stand. */
export function apartAnchor({ children }: Assembly): "parts" | "apart" {
  return children.length > 0 ? "parts" : "apart";
}

/** Steps, closed steps and planned minutes of an assembly and everything below it. */
export function tallyOf(
  record: RecordIndex,
  assembly: Assembly,
): { readonly steps: number; readonly closed: number; readonly planned: number } {
  const { build, steps: states } = record.analysis;
  const last = build.project.stages.at(-1);
  let steps = assembly.steps.length;
  let closed = assembly.steps.filter((id) => states.get(id)?.stage === last).length;
  let planned = assembly.steps.reduce((sum, id) => sum + (build.steps.get(id)?.planned ?? 0), 0);
  for (const id of assembly.children) {
    const child = build.assemblies.get(id);
    if (!child) continue;
    const below = tallyOf(record, child);
    steps += below.steps;
    closed += below.closed;
    planned += below.planned;
  }
  return { steps, closed, planned };
}

function standingOf(booked: number, steps: number, closed: number): AssemblyStanding {
  if (steps > 0 && closed === steps) return "closed";
  if (closed > 0) return "part closed";
  return booked > 0 ? "begun" : "not begun";
}
