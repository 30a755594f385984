import picocolors from "picocolors";
import type { Paint } from "../present/diagnostics/paint.ts";

/** How a run ended, as the shell sees it. */
export const exitCodes = {
  clean: 0,
  /** Something in the journal is wrong. */
  problems: 1,
  usage: 2,
  /** Disk, permission or lock. */
  machine: 3,
  /** A sealed record differs. */
  sealed: 4,
  /** The program's own fault. */
  ours: 70,
  interrupted: 130,
} as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Where a command writes, and what it may assume about who reads. */
export interface Terminal {
  /** The result. A line end is added. */
  out(text: string): void;
  /** Progress and complaints. A line end is added. */
  err(text: string): void;
  /** A line that replaces itself; only where somebody watches. */
  progress(text: string): void;
  /** Whether somebody can be asked. */
  readonly interactive: boolean;
  readonly paint: Paint;
  exit(code: ExitCode): void;
}

/** The terminal of this process. */
export function processTerminal(flags: readonly string[]): Terminal {
  const { stdin, stdout, stderr, env } = process;
  const watched = stderr.isTTY === true && env.TERM !== "dumb";
  const coloured =
    stdout.isTTY === true && env.TERM !== "dumb" && !env.NO_COLOR && !flags.includes("--no-color");
  let shown = false;
  const clear = () => {
    if (shown) stderr.write("\r\u001b[K");
    shown = false;
  };
  return {
    out: (text) => {
      clear();
      stdout.write(`${text}\n`);
    },
    err: (text) => {
      clear();
      stderr.write(`${text}\n`);
    },
    progress: (text) => {
      if (!watched) return;
      stderr.write(`\r\u001b[K${text.slice(0, Math.max(20, (stderr.columns ?? 80) - 1))}`);
      shown = true;
    },
    interactive: stdin.isTTY === true && stdout.isTTY === true && env.TERM !== "dumb",
    paint: coloured ? colours : (_part, text) => text,
    exit: (code) => {
      process.exitCode = code;
    },
  };
}

const { bold, red, yellow, dim, cyan } = picocolors.createColors(true);

const colours: Paint = (part, text) => {
  switch (part) {
    case "error":
      return bold(red(text));
    case "finding":
      return bold(yellow(text));
    case "caret":
      return yellow(text);
    case "place":
      return bold(text);
    case "frame":
      return dim(text);
    case "note":
    case "help":
      return cyan(text);
  }
};
