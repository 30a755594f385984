import type { Command } from "commander";
import { CommanderError } from "commander";
import type { ExitCode, Terminal } from "../../src/cli/terminal.ts";

/** A terminal that nobody watches, and what was written to it. */
export interface RecordedTerminal extends Terminal {
  readonly said: { out: string; err: string; status: ExitCode };
}

/** @param interactive Whether somebody can be asked. */
export function recordedTerminal(interactive = false): RecordedTerminal {
  const said: RecordedTerminal["said"] = { out: "", err: "", status: 0 };
  return {
    said,
    out: (text) => {
      said.out += `${text}\n`;
    },
    err: (text) => {
      said.err += `${text}\n`;
    },
    progress: () => undefined,
    interactive,
    paint: (_part, text) => text,
    exit: (code) => {
      said.status = code;
    },
  };
}

/**
 * Runs one verb in this process, as `main.ts` does but for the reporting of what it throws.
 * @throws What the verb throws: `UsageProblem` and the like; for arguments that it does not
 *   know, an Error with commander's words.
 */
export async function runVerb(verb: Command, args: readonly string[]): Promise<void> {
  let complaint = "";
  verb.exitOverride().configureOutput({
    writeErr: (text) => {
      complaint += text;
    },
  });
  try {
    await verb.parseAsync([...args], { from: "user" });
  } catch (error) {
    throw error instanceof CommanderError ? new Error(complaint.trim()) : error;
  }
}
