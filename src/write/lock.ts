import os from "node:os";
import { MachineProblem } from "./machine-problem.ts";
import { createFile, readTextIfThere, removeFile } from "./output.ts";

/** A lock that is held. */
export interface Lock {
  /** Gives the lock back. Safe to call twice. */
  release(): Promise<void>;
  /** Said when a dead process's lock was taken over, else absent. */
  readonly note?: string;
}

/** What is known of this process and others; tests bring their own. */
export interface LockWitness {
  readonly pid: number;
  readonly host: string;
  /** Milliseconds since 1970. */
  readonly now: number;
  /** When this machine was started, milliseconds since 1970. */
  readonly booted: number;
  /** When this process was started, milliseconds since 1970. */
  readonly started: number;
  /** Whether a process of that number runs on this machine. */
  isRunning(pid: number): boolean;
}

/**
 * Takes a lock, so that no second build writes to the same place.
 *
 * The file is created only if absent and holds pid, host and time. A lock of a process that
 * is gone (or that was left before this machine or this process was started) is taken over.
 * A lock from another computer, as on a shared disk, is never taken over: nobody here can
 * tell whether its process still runs.
 *
 * @param file Where the lock stands, such as `out/.witness-lock`.
 * @throws MachineProblem of kind `locked` when somebody holds it.
 */
export async function takeLock(file: string, witness: LockWitness = thisProcess()): Promise<Lock> {
  const text = lockText(witness);
  if (await createFile(file, text)) return held(file, text);

  const found = await readTextIfThere(file);
  if (found === undefined) return takeLock(file, witness); // given back this very moment
  const holder = holderOf(found);
  if (!isDead(holder, witness)) throw isLocked(file, holder);

  // Of several that see the same dead lock, only the one that creates this file goes on.
  const claim = `${file}.claim`;
  if (!(await createFile(claim, text))) {
    const claimer = holderOf((await readTextIfThere(claim)) ?? "");
    if (!isDead(claimer, witness)) throw isLocked(file, claimer);
    await removeFile(claim);
    return takeLock(file, witness);
  }
  try {
    if ((await readTextIfThere(file)) === found) await removeFile(file);
    if (!(await createFile(file, text))) {
      throw isLocked(file, holderOf((await readTextIfThere(file)) ?? ""));
    }
  } finally {
    await removeFile(claim);
  }
  const who = holder ? `process ${holder.pid}, since ${holder.since}` : "unknown process";
  return held(file, text, `took over the lock of a build that is gone (${who})`);
}

/** Runs something while holding the lock, and gives the lock back however it ends. */
export async function withLock<T>(
  file: string,
  run: () => Promise<T>,
  note?: (text: string) => void,
): Promise<T> {
  const lock = await takeLock(file);
  if (lock.note !== undefined) note?.(lock.note);
  try {
    return await run();
  } finally {
    await lock.release();
  }
}

/** Of the running process and machine. */
export function thisProcess(): LockWitness {
  const now = Date.now();
  return {
    pid: process.pid,
    host: os.hostname(),
    now,
    booted: now - os.uptime() * 1000,
    started: now - process.uptime() * 1000,
    isRunning(pid) {
      try {
        process.kill(pid, 0);
        return true;
      } catch (error) {
        // EPERM: it runs and belongs to somebody else.
        return error instanceof Error && "code" in error && error.code === "EPERM";
      }
    },
  };
}

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** ISO 8601. */
  readonly since: string;
}

function lockText({ pid, host, now }: LockWitness): string {
  return `pid ${pid}\nhost ${host}\nsince ${new Date(now).toISOString()}\n`;
}

function holderOf(text: string): Holder | undefined {
  const match = /^pid (\d+)\nhost (.*)\nsince (\S+)\n$/.exec(text);
  if (!match || Number.isNaN(Date.parse(match[3] ?? ""))) return undefined;
  return { pid: Number(match[1]), host: match[2] ?? "", since: match[3] ?? "" };
}

// The file appears with all of its text, so one that cannot be read was not written by a
// running build of this program.
function isDead(holder: Holder | undefined, witness: LockWitness): boolean {
  if (holder === undefined) return true;
  if (holder.host !== witness.host) return false;
  const since = Date.parse(holder.since);
  // Clocks are set right now and then; a minute of doubt is left to the process number.
  if (since < witness.booted - 60_000) return true;
  if (holder.pid === witness.pid) return since < witness.started - 60_000;
  return !witness.isRunning(holder.pid);
}

function held(file: string, text: string, note?: string): Lock {
  let open = true;
  return {
    ...(note === undefined ? {} : { note }),
    async release() {
      if (!open) return;
      open = false;
      if ((await readTextIfThere(file)) === text) await removeFile(file);
    },
  };
}

function isLocked(file: string, holder: Holder | undefined): MachineProblem {
  const who =
    holder === undefined
      ? "another process"
      : `process ${holder.pid} on \`${holder.host}\`, since ${holder.since}`;
  return new MachineProblem("locked", `another build is writing here (${who})`, [
    "wait until it is done and run the same command again",
    `if no build is running on that machine, remove \`${file}\``,
  ]);
}
