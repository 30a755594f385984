/** What kept the machine from doing its part. */
export type MachineProblemKind =
  | "disk full"
  | "read only"
  | "not allowed"
  | "in use"
  | "not ours"
  | "locked"
  | "too many files"
  | "missing"
  | "failed";

/**
 * A fault of disk, permission or lock, in plain words: neither the journal's nor the
 * program's. The command line prints `message` and `help` and exits with `exitCode`.
 */
export class MachineProblem extends Error {
  override readonly name = "MachineProblem";
  readonly exitCode = 3;

  /**
   * @param message What went wrong: lower case, no full stop, paths in backticks.
   * @param help What to do, one sentence per item.
   */
  constructor(
    readonly kind: MachineProblemKind,
    message: string,
    readonly help: readonly string[] = [],
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/** The system's own code of an error, such as `ENOSPC`; undefined for anything else thrown. */
export function systemCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !("code" in error)) return undefined;
  const { code } = error;
  return typeof code === "string" && /^E[A-Z0-9]+$/.test(code) ? code : undefined;
}

/**
 * Puts a system error into plain words.
 * @param doing What was being done, as in `writing`.
 * @param path What it was done to.
 * @returns A `MachineProblem`; anything that is not a system error comes back as it was,
 *   because that is a fault of the program and must look like one.
 */
export function inPlainWords(error: unknown, doing: string, path: string): unknown {
  if (error instanceof MachineProblem) return error;
  const code = systemCode(error);
  if (code === undefined) return error;
  const [kind, words, help] = wordsFor(code, doing, path);
  return new MachineProblem(kind, words, help, { cause: error });
}

function wordsFor(
  code: string,
  doing: string,
  path: string,
): [MachineProblemKind, string, string[]] {
  switch (code) {
    case "ENOSPC":
    case "EDQUOT":
      return [
        "disk full",
        `no room left on the disk while ${doing} \`${path}\``,
        ["free some space and run the same command again; what was there before is untouched"],
      ];
    case "EROFS":
      return [
        "read only",
        `the disk can only be read, not written, while ${doing} \`${path}\``,
        ["choose an output folder on a disk that can be written"],
      ];
    case "EACCES":
    case "EPERM":
      return [
        "not allowed",
        `the system does not allow ${doing} \`${path}\``,
        ["check who owns the file and its folder, and that no other program holds it open"],
      ];
    case "EBUSY":
    case "ETXTBSY":
      return [
        "in use",
        `another program holds \`${path}\` open (${doing})`,
        ["close the program that shows it and run the same command again"],
      ];
    case "EMFILE":
    case "ENFILE":
      return [
        "too many files",
        `the system allows no more open files (${doing} \`${path}\`)`,
        ["close other programs, or raise the limit with `ulimit -n`"],
      ];
    case "ENOENT":
    case "ENOTDIR":
      return [
        "missing",
        `\`${path}\` cannot be reached (${doing})`,
        ["a folder on the way to it is missing, or is a file, or takes no new names"],
      ];
    default:
      return ["failed", `${doing} \`${path}\` failed: ${code}`, []];
  }
}
