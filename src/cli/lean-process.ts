import { spawn } from "node:child_process";
import { constants } from "node:os";

// The C library of most Linux systems sets memory aside for every thread that encodes pictures
// and gives little of it back: over 500 photographs 700 MB were measured, and 320 MB with two
// such reserves. It asks for their number once, before this program runs.
const setting = "MALLOC_ARENA_MAX";

/** With fewer photographs than this to encode, memory does not come to matter. */
const manyPhotos = 30;

/**
 * Whether so many photographs are better encoded in a process that is told to be sparing with
 * memory. False on systems where nothing is gained, and in that process itself.
 */
export function wantsLeanProcess(
  photos: number,
  env: Readonly<Record<string, string | undefined>> = process.env,
  platform: NodeJS.Platform = process.platform,
): boolean {
  return photos >= manyPhotos && platform === "linux" && env[setting] === undefined;
}

/**
 * Runs the same command again in a process that is sparing with memory, and waits for it. What
 * it prints comes out here; Ctrl-C reaches it, and a signal to this process is handed on.
 * @returns Its exit code; 128 and the signal's number when a signal ended it.
 */
export function inLeanProcess(): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...process.execArgv, ...process.argv.slice(1)], {
      stdio: "inherit",
      env: { ...process.env, [setting]: "2" },
    });
    const handOn = (signal: NodeJS.Signals) => child.kill(signal);
    // Ctrl-C goes to both by itself. A second one, handed on as well, would end it at once.
    const wait = () => undefined;
    process.on("SIGTERM", handOn);
    process.on("SIGINT", process.stdin.isTTY ? wait : handOn);
    child.once("error", reject);
    child.once("exit", (code, signal) => {
      process.off("SIGTERM", handOn);
      process.off("SIGINT", wait).off("SIGINT", handOn);
      resolve(code ?? 128 + (signal === null ? 0 : constants.signals[signal]));
    });
  });
}
