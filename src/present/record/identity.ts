import type { Build } from "../../model/build.ts";
import type { Person } from "../../model/person.ts";

/** What the identity of the aircraft is taken from. */
export type Identified = Pick<Build, "project" | "people">;

/** Everybody who is declared as builder, in the order declared. */
export function buildersOf({ people }: Identified): Person[] {
  return [...people.values()].filter(({ role }) => role === "builder");
}

/** Label and names of who builds or alters, as every export says it. */
export function builtBy(build: Identified): readonly [label: string, names: string] {
  return [
    build.project.basis === "alteration" ? "Altered by" : "Built by",
    buildersOf(build)
      .map(({ name }) => name)
      .join(", ") || "nobody is declared as builder",
  ];
}

/** Which aircraft it is and whose, as labels and values: the same in every export. */
export function identityFacts(
  build: Identified,
): readonly (readonly [label: string, value: string])[] {
  const { designation, serial, registration, basis } = build.project;
  return [
    ["Designation", designation],
    [basis === "alteration" ? "Serial number" : "Builder's serial number", serial],
    ...(registration === undefined ? [] : [["Registration", registration] as const]),
    ["Kind of project", basis],
    builtBy(build),
  ];
}
