import type { Faults } from "./faults.ts";
import type { FoundFile } from "./files.ts";
import { nearestName } from "./nearest-name.ts";
import type { TextNode } from "./typed-tree.ts";

/** The journal's `photos` folder: which files it has, and nothing outside it. */
export class PhotoFolder {
  readonly #files = new Map<string, FoundFile>();

  readonly #reported: ReadonlySet<string>;

  /**
   * @param files What stands below `photos`, with paths from the journal's folder.
   * @param reported Paths below `photos` that are known to be missing, and need no second fault.
   */
  constructor(files: readonly FoundFile[], reported: ReadonlySet<string> = new Set()) {
    this.#reported = reported;
    for (const file of files) this.#files.set(file.path.replace(/^photos\//, ""), file);
  }

  /**
   * The path of a named photograph below `photos`, as it stands on disk.
   * @returns `undefined` when a fault was added.
   */
  resolve(named: TextNode, faults: Faults): string | undefined {
    const path = named.text.normalize("NFC");
    if (leavesFolder(path)) {
      return faults.add("path-leaves-journal", named.span, {
        message: `\`${named.text}\` is not a path below the \`photos\` folder`,
        help: ["copy the photograph into `photos` and write its path from there, as in `rib4.jpg`"],
      });
    }
    const file = this.#files.get(path);
    if (file?.refused) {
      return faults.add("path-leaves-journal", named.span, {
        message: `\`photos/${path}\` is a link that ${linkWords[file.refused]}`,
        help: ["copy the photograph itself into `photos`"],
      });
    }
    if (file || this.#reported.has(path)) return path;
    const nearest = nearestName(path, this.#files.keys());
    return faults.add("missing-photo", named.span, {
      message: `there is no \`photos/${path}\``,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      help: [
        nearest
          ? `write \`${nearest}\``
          : "copy the photograph into the `photos` folder, or correct its name here",
      ],
    });
  }
}

export const linkWords = {
  leaves: "leads out of the journal's folder",
  dangling: "leads nowhere",
  loop: "leads back to itself",
} as const;

// Percent signs are refused with the rest: `%2e%2e` means `..` to whatever decodes it next.
function leavesFolder(path: string): boolean {
  return (
    path === "" ||
    /^[/~]|^[A-Za-z]:|\\|%|\0/.test(path) ||
    path.split("/").some((part) => part === ".." || part === "." || part === "")
  );
}
