import path from "node:path";
import { watch } from "chokidar";
import { MachineProblem } from "../write/machine-problem.ts";
import { startPreviewServer } from "./preview-server.ts";

/** What came of a rebuild. */
export interface Rebuilt {
  /** Whether a new site is in place; otherwise the last good one is shown on. */
  readonly ok: boolean;
  /** For the terminal: problems, or a line about the new site. */
  readonly text: string;
}

/** What `previewCommand` needs; the command line fills it in. */
export interface PreviewOptions {
  /** Watched; every save in it leads to a rebuild. */
  readonly journalFolder: string;
  /** Served, and never watched. */
  readonly siteFolder: string;
  /** Default 4173; a free port is taken when it is in use. */
  readonly port?: number;
  /** Builds the site. Never called again before the last call has ended. */
  readonly rebuild: (signal: AbortSignal) => Promise<Rebuilt>;
  /** Prints a line or several. */
  readonly print: (text: string) => void;
  /** Ends the preview, as Ctrl-C does. */
  readonly stop?: AbortSignal;
}

/**
 * Shows the site on this computer and builds it anew after every save, until Ctrl-C.
 *
 * A build that fails is reported and the last good site stays; so is a fault of disk or lock.
 *
 * @returns Exit code 0 after Ctrl-C: stopping is how a preview ends, not an interruption of
 *   its work. A second Ctrl-C ends the process at once.
 * @throws MachineProblem when no port can be had; whatever else `rebuild` throws.
 */
export async function previewCommand(options: PreviewOptions): Promise<number> {
  const { journalFolder, siteFolder, rebuild, print } = options;
  const wanted = options.port ?? 4173;
  const server = await startPreviewServer({ siteFolder, port: wanted });
  const ending = new AbortController();
  const end = (): void => ending.abort(new Error("the preview was stopped"));
  process.once("SIGINT", end);
  process.once("SIGTERM", end);
  options.stop?.addEventListener("abort", end, { once: true });
  if (options.stop?.aborted) end();

  if (server.port !== wanted && wanted !== 0)
    print(`port ${wanted} is in use; took ${server.port}`);
  print(`preview: ${server.address}`);
  print(`watching \`${journalFolder}\`; Ctrl-C ends it`);

  const watcher = watch(journalFolder, {
    ignoreInitial: true,
    followSymlinks: false,
    ignored: (file) => isPassing(path.basename(file)) || isBelow(path.resolve(siteFolder), file),
    // A photograph takes a moment to be copied; half of one would be reported as cut short.
    awaitWriteFinish: { stabilityThreshold: 100, pollInterval: 25 },
  });

  try {
    await untilEnded(
      ending.signal,
      (changed) => {
        watcher.on("all", changed);
        watcher.on("error", (error) =>
          print(`watching \`${journalFolder}\` failed: ${String(error)}`),
        );
      },
      async () => {
        try {
          const { ok, text } = await rebuild(ending.signal);
          if (text !== "") print(text);
          if (ok) server.announceChange();
          else print("the last good site is still shown");
        } catch (error) {
          if (ending.signal.aborted) return;
          if (!(error instanceof MachineProblem)) throw error;
          print([error.message, ...error.help].join("\n"));
        }
      },
    );
  } finally {
    process.off("SIGINT", end);
    process.off("SIGTERM", end);
    options.stop?.removeEventListener("abort", end);
    await watcher.close();
    await server.close();
  }
  print("preview ended");
  return 0;
}

// Saves come in bursts: a file and its backup, twenty photographs at once.
const burstMs = 100;

/** Runs once, then once after every burst of changes, one run at a time, until the signal. */
function untilEnded(
  signal: AbortSignal,
  subscribe: (changed: () => void) => void,
  run: () => Promise<void>,
): Promise<void> {
  return new Promise((resolve, reject) => {
    let running = false;
    let waiting = false;
    let timer: NodeJS.Timeout | undefined;
    const start = (): void => {
      if (running) {
        waiting = true;
        return;
      }
      running = true;
      waiting = false;
      run().then(() => {
        running = false;
        if (signal.aborted) resolve();
        else if (waiting) start();
      }, reject);
    };
    signal.addEventListener("abort", () => {
      clearTimeout(timer);
      if (!running) resolve();
    });
    subscribe(() => {
      clearTimeout(timer);
      if (!signal.aborted) timer = setTimeout(start, burstMs);
    });
    if (signal.aborted) resolve();
    else start();
  });
}

/** Files that editors leave beside the one being edited. */
function isPassing(name: string): boolean {
  return /^\.|~$|^#.*#$|\.(swp|swx|tmp|bak)$|^4913$/i.test(name);
}

function isBelow(folder: string, file: string): boolean {
  const relative = path.relative(folder, path.resolve(file));
  return relative === "" || (!relative.startsWith("..") && !path.isAbsolute(relative));
}
