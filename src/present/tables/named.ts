import type { Build } from "../../model/build.ts";

/** The name of a person, as this edition shows it; the id when nobody is declared under it. */
export function personName(build: Build, id: string | undefined): string | undefined {
  return id === undefined ? undefined : (build.people.get(id)?.name ?? id);
}

/** The title of an assembly. */
export function assemblyTitle(build: Build, id: string | undefined): string | undefined {
  return id === undefined ? undefined : build.assemblies.get(id)?.title;
}

/** The title of a step. */
export function stepTitle(build: Build, id: string | undefined): string | undefined {
  return id === undefined ? undefined : build.steps.get(id)?.title;
}

/** The assembly something belongs to: its own, or the one of its step. */
export function assemblyOf(
  build: Build,
  { assembly, step }: { readonly assembly?: string; readonly step?: string },
): string | undefined {
  return assembly ?? (step === undefined ? undefined : build.steps.get(step)?.assembly);
}
