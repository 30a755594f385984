import path from "node:path";
import { MachineProblem } from "./machine-problem.ts";
import {
  flushFolder,
  kindOf,
  makeFolder,
  namesIn,
  readTextIfThere,
  removeFolder,
  renamePath,
  temporaryEnding,
  writeFileWhole,
} from "./output.ts";

/** The file by which a finished site is known to be this program's to replace. */
export const siteMarker = ".witness-site";

// Whole or not is told by the marker's name: renaming works on a full disk, rewriting may not.
const unfinishedMarker = ".witness-site-unfinished";
/** Files of a folder that is swapped in; they are no part of what it holds. */
export const swapMarkers: readonly string[] = [siteMarker, unfinishedMarker];

const markerTitle = "Written by Witness Mark and replaced as a whole by every build.";
const markerText = `${markerTitle}\nKeep no files of your own in this folder.\n`;

/** The points between which a swap can be cut short, in order. */
export const swapSteps = [
  "left-overs settled",
  "next folder made",
  "next folder marked",
  "site built",
  "site flushed",
  "next marked whole",
  "old site aside",
  "new site in place",
  "old site removed",
] as const;
export type SwapStep = (typeof swapSteps)[number];

/** For the curious and for tests. */
export interface SwapOptions {
  /** Called after each step; what it throws ends the swap there. */
  readonly onStep?: (step: SwapStep) => void | Promise<void>;
  /** Told in plain words what an earlier, interrupted build had left and what became of it. */
  readonly note?: (text: string) => void;
}

/**
 * Builds a whole site beside the present one and puts it in its place.
 *
 * `site` stays as it is until the new one is finished, flushed and marked whole; then `site`
 * becomes `site.prev`, `site.next` becomes `site`, and `site.prev` is removed. A process killed
 * anywhere in between leaves the old site or the new one, and the next call (or `settleSite`)
 * finishes or undoes what was half done.
 *
 * @param siteFolder The folder to hold the site, such as `out/site`. Its two neighbours
 *   `….next` and `….prev` are used as well. None of the three is touched if it has contents
 *   but not the marker file.
 * @param build Fills the folder it is given and checks it; what it throws leaves the present
 *   site alone, removes the unfinished one and is passed on.
 * @returns What `build` returned, after the swap.
 * @throws MachineProblem for disk, permission, or a folder that is not this program's.
 */
export async function swapInSite<T>(
  siteFolder: string,
  build: (nextFolder: string) => Promise<T>,
  options: SwapOptions = {},
): Promise<T> {
  const { site, next, prev } = foldersOf(siteFolder);
  const step = async (name: SwapStep): Promise<void> => options.onStep?.(name);

  await settleSite(siteFolder, options.note);
  await step("left-overs settled");

  let result: T;
  try {
    await makeFolder(next);
    await step("next folder made");
    await writeFileWhole(path.join(next, unfinishedMarker), markerText);
    await step("next folder marked");
    result = await build(next);
    await step("site built");
    await flushFolder(next);
    await step("site flushed");
    await renamePath(path.join(next, unfinishedMarker), path.join(next, siteMarker));
    await step("next marked whole");
  } catch (error) {
    await discard(next).catch(() => undefined);
    throw error;
  }

  const hadSite = (await kindOf(site)) !== "absent";
  try {
    if (hadSite) await renamePath(site, prev);
    await step("old site aside");
    await renamePath(next, site);
  } catch (error) {
    await settleSite(siteFolder, undefined, "undo").catch(() => undefined);
    throw error;
  }
  await step("new site in place");

  // The new site stands; an old one that cannot be removed now is removed by the next build.
  await discard(prev).catch(() => undefined);
  await step("old site removed");
  return result;
}

/**
 * Finishes or undoes what an interrupted swap left behind. Does nothing on a clean folder.
 *
 * @param note Told what was found and done.
 * @param way `finish` puts a whole new site in place if the swap had begun; `undo` always
 *   goes back to the old one.
 * @throws MachineProblem if one of the three folders has contents and no marker.
 */
export async function settleSite(
  siteFolder: string,
  note?: (text: string) => void,
  way: "finish" | "undo" = "finish",
): Promise<void> {
  const { site, next, prev } = foldersOf(siteFolder);
  const [siteState, nextState, prevState] = [
    await stateOf(site),
    await stateOf(next),
    await stateOf(prev),
  ];

  if (siteState === "empty") await removeFolder(site);
  if (siteState === "empty" || siteState === "absent") {
    if (way === "finish" && nextState === "whole") {
      await renamePath(next, site);
      note?.(`the last build was cut short while it replaced \`${site}\`; finished it`);
    } else if (prevState === "whole") {
      await renamePath(prev, site);
      note?.(`the last build was cut short; put the last good \`${site}\` back`);
    }
  }
  if ((await kindOf(next)) !== "absent") {
    await discard(next);
    note?.(`the last build was cut short; removed its \`${next}\``);
  }
  if ((await kindOf(prev)) !== "absent") await discard(prev);
}

/** The folder that holds the site while it is being built, and the one for the site before. */
function foldersOf(siteFolder: string): { site: string; next: string; prev: string } {
  const site = path.resolve(siteFolder);
  return { site, next: `${site}.next`, prev: `${site}.prev` };
}

type FolderState = "absent" | "empty" | "unfinished" | "whole";

async function stateOf(folder: string): Promise<FolderState> {
  const kind = await kindOf(folder);
  if (kind === "absent") return "absent";
  if (kind === "folder") {
    for (const [marker, state] of [
      [unfinishedMarker, "unfinished"],
      [siteMarker, "whole"],
    ] as const) {
      const text = await readTextIfThere(path.join(folder, marker));
      if (text?.startsWith(markerTitle)) return state;
    }
    // A kill between making the folder and marking it leaves nothing, or a temporary file.
    if ((await namesIn(folder)).every((name) => name.endsWith(temporaryEnding))) return "empty";
  }
  throw new MachineProblem(
    "not ours",
    `\`${folder}\` was not made as a whole by this program, and it is not replaced`,
    [
      `it has no \`${siteMarker}\` file; move it away, or choose another output folder`,
      "it is replaced as a whole, so the folder must hold nothing else",
    ],
  );
}

async function discard(folder: string): Promise<void> {
  if ((await kindOf(path.join(folder, siteMarker))) === "file") {
    await renamePath(path.join(folder, siteMarker), path.join(folder, unfinishedMarker));
  }
  await removeFolder(folder, unfinishedMarker);
}
