import type { RecordIndex } from "./record-index.ts";

/** Who writes the record, as the edition may name them. */
export function authorOf({ analysis }: RecordIndex): string {
  const builders = [...analysis.build.people.values()].filter(({ role }) => role === "builder");
  return builders.map(({ name }) => name).join(", ") || "the builder";
}
