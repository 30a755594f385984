import { createRequire } from "node:module";
import { Command, CommanderError } from "commander";
import { MachineProblem } from "../write/machine-problem.ts";
import { swallowedOptions } from "./swallowed-options.ts";
import { type ExitCode, exitCodes, processTerminal, type Terminal } from "./terminal.ts";
import { UsageProblem } from "./usage-problem.ts";
import { commandsFor } from "./verbs.ts";

const { version } = createRequire(import.meta.url)("../../package.json") as { version: string };

// Whoever reads may stop reading, as `witness check | head` does; that is no fault.
for (const stream of [process.stdout, process.stderr]) {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
}
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
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text.replace(/\n$/, "")),
      writeErr: (text) => terminal.err(text.replace(/\n$/, "")),
      outputError: (text, write) => write(inOurWords(text)),
    });
  try {
    for (const command of await commandsFor(args[2], terminal, version)) {
      command.copyInheritedSettings(program);
      command.showHelpAfterError(`  = help: options: npm run witness -- ${command.name()} --help`);
      program.addCommand(command);
    }
    program.showHelpAfterError("  = help: all verbs: npm run witness -- --help");
    const verb = program.commands.find((command) => command.name() === args[2]);
    const swallowed = swallowedOptions(verb, args, process.env);
    if (swallowed.length > 0) {
      throw new UsageProblem(`npm kept ${swallowed.map((each) => `\`${each}\``).join(", ")}`, [
        `put two dashes before the verb: npm run witness -- ${verb?.name()} ${swallowed[0]} …`,
      ]);
    }
    await program.parseAsync([...args]);
  } catch (error) {
    terminal.exit(report(error, terminal));
  }
}

// What commander complains of, as this program words its complaints.
function inOurWords(text: string): string {
  return text
    .replace(/^error: /, "witness: ")
    .replace(/\.?\n\(Did you mean (.*)\?\)/, "\n  = help: did you mean `$1`?")
    .replace(
      /(too many arguments for '\w+')\. .*/,
      "$1\n  = help: everything is said with options, words with blanks in quotes; a journal is named `--journal DIR`",
    );
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
  terminal.err("witness: this is a fault of the program, not of the journal");
  for (const each of causes(error)) terminal.err(each);
  terminal.err("  = help: report it with the lines above; the last good site is still in place");
  return exitCodes.ours;
}

// An error and what lies behind it, outermost first; Eleventy keeps that under a name of its own.
function causes(error: unknown): string[] {
  if (!(error instanceof Error)) return [String(error)];
  const behind =
    error.cause ?? ("originalError" in error ? (error.originalError as unknown) : undefined);
  const own = error.stack ?? error.message;
  return behind === undefined || behind === error ? [own] : [own, ...causes(behind)];
}
