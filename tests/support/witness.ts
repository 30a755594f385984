import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { smallRegisters } from "./temporary-journal.ts";

/** The folder of the project. */
export const projectFolder = new URL("../..", import.meta.url).pathname.replace(/\/$/, "");

/** What a command came to. */
export interface Witnessed {
  /** The exit code; 128 and the signal's number when a signal ended it, as shells say it. */
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

export interface WitnessOptions {
  /** Where it is run. */
  readonly cwd: string;
  /** Added to the environment; `undefined` takes a variable out of it. */
  readonly env?: Readonly<Record<string, string | undefined>>;
  /** In a group of its own, as a shell runs it: a signal to `-pid` reaches all its processes. */
  readonly group?: boolean;
  /** After how many milliseconds it is ended, so that none is left behind; two minutes. */
  readonly longest?: number;
  /** Called once it runs, to listen to it or to end it. */
  readonly running?: (child: ChildProcess) => void;
}

/** Runs the program as `npm run witness -- ARGS` does, in a process of its own. */
export function witness(args: readonly string[], options: WitnessOptions): Promise<Witnessed> {
  return ran(process.execPath, [...nodeFlags, programFile, ...args], options);
}

/** The flags that Node is started with, as in package.json; `tsx` is found from anywhere. */
export const nodeFlags = [
  "--disable-proto=delete",
  "--import",
  import.meta.resolve("tsx"),
] as const;

const programFile = join(projectFolder, "src", "cli", "main.ts");

/** Runs any command to its end. */
export function ran(
  command: string,
  args: readonly string[],
  { cwd, env, group = false, longest = 120_000, running }: WitnessOptions,
): Promise<Witnessed> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd,
      // `npm run` is at home in the project's folder, where tsx finds this file by itself.
      env: { ...environment(), TSX_TSCONFIG_PATH: join(projectFolder, "tsconfig.json"), ...env },
      detached: group,
      timeout: longest,
      killSignal: "SIGKILL",
      stdio: ["ignore", "pipe", "pipe"],
    });
    let stdout = "";
    let stderr = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      stderr += text;
    });
    child.on("error", reject);
    child.on("close", (code, signal) => {
      const status = code ?? (signal === "SIGINT" ? 130 : signal === "SIGTERM" ? 143 : 137);
      resolve({ status, stdout, stderr });
    });
    running?.(child);
  });
}

/** For runs of npm: what it thinks of the machine's settings is not the program's word. */
export const quietNpm = { npm_config_loglevel: "error", npm_config_update_notifier: "false" };

// Of the shop, and not of the run of the tests: no colours forced, nothing that npm handed down.
function environment(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(npm_|VITEST|NODE_|FORCE_COLOR|NO_COLOR|CI$|TEST$|TZ$)/.test(name),
  );
  return Object.fromEntries(kept);
}

/**
 * A new temporary folder, removed after the test, with a journal in it called `content`: the
 * small registers of the tests, or a copy of another journal, and these files on top.
 */
export function shop(
  files: Readonly<Record<string, string | Uint8Array>> = {},
  journal?: string,
): { readonly cwd: string; readonly file: (name: string) => string } {
  const cwd = mkdtempSync(join(tmpdir(), "witness-shop-"));
  onTestFinished(() => rmSync(cwd, { recursive: true, force: true }));
  const content = join(cwd, "content");
  if (journal !== undefined) cpSync(join(projectFolder, journal), content, { recursive: true });
  const all = journal === undefined ? { ...smallRegisters, ...files } : files;
  mkdirSync(join(content, "days"), { recursive: true });
  for (const [name, text] of Object.entries(all)) {
    mkdirSync(dirname(join(content, name)), { recursive: true });
    writeFileSync(join(content, name), text);
  }
  return { cwd, file: (name) => join(cwd, name) };
}
