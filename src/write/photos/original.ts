import fs from "node:fs/promises";
import path from "node:path";
import { MachineProblem, systemCode } from "../machine-problem.ts";
import { namesIn, realPathOf } from "../output.ts";

/** Why a photograph is not published, in the parts of a diagnostic. */
export interface Refusal {
  /** Goes on after the photo's name: `is cut short`. */
  readonly why: string;
  readonly label: string;
  readonly notes: readonly string[];
  readonly help: readonly string[];
}

/** A photograph or a recording that is there and may be read. */
export interface Original {
  /** Links followed. */
  readonly path: string;
  readonly bytes: number;
  /** Changes whenever the file's bytes may have changed. */
  readonly stamp: string;
  /** When it was last changed in any way, milliseconds since 1970. */
  readonly changedMs: number;
}

/**
 * Finds a photograph or a recording that an entry names and makes sure that it lies in the
 * journal.
 *
 * @param photosFolder The journal's folder of originals; the journal is the folder around it.
 * @param file As typed, relative to `photosFolder`.
 * @param maxBytes Larger files are refused.
 * @param folder What the folder of originals is called in messages.
 * @returns The original, or why it is refused: missing, outside, a folder, too large.
 */
export async function findOriginal(
  photosFolder: string,
  file: string,
  maxBytes: number,
  folder: "photos" | "videos" = "photos",
): Promise<Original | Refusal> {
  const one = folder === "photos" ? "photograph" : "recording";
  if (!staysBelow(file)) {
    return refusal(
      `does not stay below the \`${folder}\` folder`,
      "leaves the folder",
      [],
      [`name the file relative to \`${folder}\`, with \`/\` between folders and no \`..\``],
    );
  }
  try {
    const journal = await realPathOf(path.dirname(path.resolve(photosFolder)));
    const real = await realPathOf(path.join(photosFolder, file));
    if (journal === undefined || real === undefined)
      return await missing(photosFolder, file, folder);
    if (!isBelow(journal, real)) {
      return refusal(
        "is a link that leads out of the journal",
        "leads out of the journal",
        [],
        [`put the ${one} itself into \`${folder}\`; links out of the journal are not followed`],
      );
    }
    const found = await fs.stat(real, { bigint: true });
    if (!found.isFile()) {
      return refusal("is not a file", found.isDirectory() ? "a folder" : "not a file", [], []);
    }
    const bytes = Number(found.size);
    if (bytes > maxBytes) {
      return refusal(
        `is ${megabytes(bytes)}, above the ${megabytes(maxBytes)} that is read`,
        "too large",
        [],
        [
          folder === "photos"
            ? "save it smaller, for instance as a JPEG of the same size in pixels"
            : "save it smaller, or put it on a site for recordings and name its `link`",
        ],
      );
    }
    return {
      path: real,
      bytes,
      stamp: [found.size, found.mtimeNs, found.ctimeNs, found.ino].join(" "),
      changedMs: Math.max(Number(found.ctimeMs), Number(found.mtimeMs)),
    };
  } catch (error) {
    return refusedBySystem(error);
  }
}

/** The bytes of an original, or why the system does not give them. */
export async function readOriginal(original: Original): Promise<Buffer | Refusal> {
  try {
    return await fs.readFile(original.path);
  } catch (error) {
    return refusedBySystem(error);
  }
}

/** Whether a value is a refusal. */
export function isRefusal(value: object): value is Refusal {
  return "why" in value;
}

/** Puts a refusal together. */
export function refusal(
  why: string,
  label: string,
  notes: readonly string[],
  help: readonly string[],
): Refusal {
  return { why, label, notes, help };
}

function staysBelow(file: string): boolean {
  if (file === "" || file.includes("\0") || file.includes("\\")) return false;
  if (file.startsWith("/") || /^[a-z]:/i.test(file)) return false;
  return !file.split("/").includes("..");
}

function isBelow(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  return relative !== "" && !path.isAbsolute(relative) && relative.split(path.sep)[0] !== "..";
}

async function missing(
  photosFolder: string,
  file: string,
  below: "photos" | "videos",
): Promise<Refusal> {
  const one = below === "photos" ? "photograph" : "recording";
  const link = await fs.readlink(path.join(photosFolder, file)).catch(() => undefined);
  if (link !== undefined) {
    return refusal(
      "is a link that leads nowhere",
      "leads nowhere",
      [],
      [`put the ${one} itself into \`${below}\``],
    );
  }
  const alike = (name: string): string => name.normalize("NFC").toLowerCase();
  const names = await namesIn(path.join(photosFolder, path.dirname(file)));
  const near = names.find((name) => alike(name) === alike(path.basename(file)));
  const folder = path.posix.dirname(file);
  return refusal(
    `is not in the \`${below}\` folder`,
    "not found",
    [],
    near === undefined
      ? [`put the ${one} there, or correct the name`]
      : [
          `a file of nearly the same name is there: \`${folder === "." ? near : `${folder}/${near}`}\``,
        ],
  );
}

function refusedBySystem(error: unknown): Refusal {
  const code = systemCode(error instanceof MachineProblem ? error.cause : error);
  if (code === "EACCES" || code === "EPERM") {
    return refusal(
      "may not be read: the system does not allow it",
      "not readable",
      [],
      ["check who owns the file"],
    );
  }
  if (code === undefined || code === "EMFILE" || code === "ENFILE") throw error;
  return refusal("cannot be read from the disk", "not readable", [`system error ${code}`], []);
}

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / 1e5) / 10} MB`;
}
