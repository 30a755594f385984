/** Thrown when the builder leaves in the middle: exit code 130. */
export class Interrupted extends Error {
  override readonly name = "AbortError";
}
