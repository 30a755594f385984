import type { Faults } from "./faults.ts";
import type { FoundFile } from "./files.ts";
import { nearestName } from "./nearest-name.ts";
import type { TextNode } from "./typed-tree.ts";

/** What a folder of the journal holds beside its entries. */
export type PhotoFolderKind = "photos" | "videos";

const kinds = {
  photos: { code: "missing-photo", one: "photograph", example: "rib4.jpg" },
  videos: { code: "missing-video", one: "recording", example: "rivets.mp4" },
} as const;

/** The journal's `photos` folder, or `videos`: which files it has, and nothing outside it. */
export class PhotoFolder {
  readonly #files = new Map<string, FoundFile>();
  readonly #kind: PhotoFolderKind;

  readonly #reported: ReadonlySet<string>;

  /**
   * @param files What stands below the folder, with paths from the journal's folder.
   * @param reported Paths below it that are known to be missing, and need no second fault.
   */
  constructor(
    files: readonly FoundFile[],
    reported: ReadonlySet<string> = new Set(),
    kind: PhotoFolderKind = "photos",
  ) {
    this.#reported = reported;
    this.#kind = kind;
    for (const file of files) this.#files.set(file.path.slice(kind.length + 1), file);
  }

  /**
   * The path of a named file below the folder, as it stands on disk.
   * @returns `undefined` when a fault was added.
   */
  resolve(named: TextNode, faults: Faults): string | undefined {
    const path = named.text.normalize("NFC");
    const folder = this.#kind;
    const { code, one, example } = kinds[folder];
    if (leavesFolder(path)) {
      return faults.add("path-leaves-journal", named.span, {
        message: `\`${named.text}\` is not a path below the \`${folder}\` folder`,
        help: [
          `copy the ${one} into \`${folder}\` and write its path from there, as in \`${example}\``,
        ],
      });
    }
    const file = this.#files.get(path);
    if (file?.refused) {
      return faults.add("path-leaves-journal", named.span, {
        message: `\`${folder}/${path}\` is a link that ${linkWords[file.refused]}`,
        help: [`copy the ${one} itself into \`${folder}\``],
      });
    }
    if (file || this.#reported.has(path)) return path;
    const nearest = nearestName(path, this.#files.keys());
    return faults.add(code, named.span, {
      message: `there is no \`${folder}/${path}\``,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      help: [
        nearest
          ? `write \`${nearest}\``
          : `copy the ${one} into the \`${folder}\` folder, or correct its name here`,
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
