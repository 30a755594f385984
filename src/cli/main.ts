import { createRequire } from "node:module";
import { Command, CommanderError } from "commander";
import { MachineProblem } from "../write/machine-problem.ts";
import { buildCommand } from "./build.ts";
import { checkCommand } from "./check.ts";
import { eveningCommand } from "./evening.ts";
import { explainCommand } from "./explain.ts";
import { exportCommand } from "./export.ts";
import { UsageProblem } from "./journal.ts";
import { previewVerb } from "./preview-verb.ts";
import { reckonCommand } from "./reckon.ts";
import { type ExitCode, exitCodes, processTerminal, type Terminal } from "./terminal.ts";

const { version } = createRequire(import.meta.url)("../../package.json") as { version: string };

const terminal = processTerminal(process.argv);
await run(process.argv, terminal);

async function run(args: readonly string[], terminal: Terminal): Promise<void> {
  const program = new Command("witness")
    .description(
      "keeps, checks and publishes the journal of a light aircraft built in its own shop",
    )
    .version(version, "--version", "print the program's version")
    .option("--no-color", "print without colours")
    .helpCommand(false)
    .showHelpAfterError("(witness VERB --help lists the options)")
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text.replace(/\n$/, "")),
      writeErr: (text) => terminal.err(text.replace(/\n$/, "")),
    });
  for (const command of [
    checkCommand(terminal),
    buildCommand(terminal),
    previewVerb(terminal),
    explainCommand(terminal),
    exportCommand(terminal, version),
    eveningCommand(terminal),
    reckonCommand(terminal),
  ]) {
    command.copyInheritedSettings(program);
    program.addCommand(command);
  }
  try {
    await program.parseAsync([...args]);
  } catch (error) {
    terminal.exit(report(error, terminal));
  }
}

function report(error: unknown, terminal: Terminal): ExitCode {
  if (error instanceof CommanderError) {
    // Help and version were asked for; the rest has been printed by commander.
    return error.exitCode === 0 ? exitCodes.clean : exitCodes.usage;
  }
  if (error instanceof UsageProblem || error instanceof MachineProblem) {
    terminal.err(`witness: ${error.message}`);
    for (const help of error.help) terminal.err(`  = help: ${help}`);
    return error instanceof UsageProblem ? exitCodes.usage : exitCodes.machine;
  }
  if (error instanceof Error && error.name === "AbortError") {
    terminal.err("witness: interrupted; nothing was changed that had been finished before");
    return exitCodes.interrupted;
  }
  const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
  terminal.err(`witness: this is a fault of the program, not of the journal\n${detail}`);
  terminal.err("  = help: report it with the lines above; the last good site is still in place");
  return exitCodes.ours;
}
