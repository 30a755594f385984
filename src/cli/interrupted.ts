/** Thrown when the builder leaves in the middle: exit code 130. */
export class Interrupted extends Error {
  override readonly name = "AbortError";
}

/** A signal that fires at the first Ctrl-C; the second ends the process at once. */
export function interruptSignal(): AbortSignal {
  const controller = new AbortController();
  process.once("SIGINT", () => controller.abort(new Interrupted("interrupted")));
  return controller.signal;
}
