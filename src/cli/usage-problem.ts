/** A command used in a way it cannot be: exit code 2. */
export class UsageProblem extends Error {
  override readonly name = "UsageProblem";

  /** @param help What to type instead, one sentence per item. */
  constructor(
    message: string,
    readonly help: readonly string[] = [],
  ) {
    super(message);
  }
}
