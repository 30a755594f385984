import type { Command } from "commander";
import type { Terminal } from "./terminal.ts";

type Loader = (terminal: Terminal, version: string) => Promise<Command>;

// Each verb brings its own libraries, and most of a short run is spent loading them: only the
// verb that was typed is loaded.
const verbs: Readonly<Record<string, Loader>> = {
  check: async (terminal) => (await import("./check.ts")).checkCommand(terminal),
  build: async (terminal) => (await import("./build.ts")).buildCommand(terminal),
  preview: async (terminal) => (await import("./preview-verb.ts")).previewVerb(terminal),
  explain: async (terminal) => (await import("./explain.ts")).explainCommand(terminal),
  export: async (terminal, version) =>
    (await import("./export.ts")).exportCommand(terminal, version),
  evening: async (terminal) => (await import("./evening.ts")).eveningCommand(terminal),
  reckon: async (terminal) => (await import("./reckon.ts")).reckonCommand(terminal),
  portion: async (terminal) => (await import("./portion.ts")).portionCommand(terminal),
  seal: async (terminal, version) => (await import("./seal.ts")).sealCommand(terminal, version),
  inbox: async (terminal) => (await import("./inbox.ts")).inboxCommand(terminal),
};

/** The command of a verb; all of them when the verb is not known, for help and suggestions. */
export async function commandsFor(
  verb: string | undefined,
  terminal: Terminal,
  version: string,
): Promise<Command[]> {
  const known = verb !== undefined && Object.hasOwn(verbs, verb) ? verbs[verb] : undefined;
  const loaders = known ? [known] : Object.values(verbs);
  return Promise.all(loaders.map((load) => load(terminal, version)));
}
