import { createHash } from "node:crypto";
import path from "node:path";
import { byPlace, type Diagnostic } from "../../model/diagnostic.ts";
import type { Video } from "../../model/video.ts";
import { copyFileWhole, makeFolder, readInPieces } from "../output.ts";
import { contentKind } from "../photos/content-kind.ts";
import { findOriginal, isRefusal, type Refusal, refusal } from "../photos/original.ts";
import { lookIntoMedia, type ReadableFile } from "./iso-media.ts";

/** What `publishVideos` works on. */
export interface VideoOptions {
  /** Those without a file to be published are passed over. */
  readonly videos: readonly Video[];
  /** The journal's `videos` folder. Nothing outside the folder around it is read. */
  readonly videosFolder: string;
  /** The site being built; files go to `videos/` in it. */
  readonly outputFolder: string;
  readonly signal?: AbortSignal;
}

/** What a site may be asked to carry for one recording. */
const mostBytes = 200_000_000;

/**
 * Publishes the recordings that the builder asked to be published, as they are: each is looked
 * through first, and one that tells a place, or is not understood to its end, becomes a finding
 * and stays at home. The others go on.
 *
 * @returns Where each stands, from the site's root, by its `file`; and the findings, by place.
 * @throws MachineProblem when the output cannot be written; whatever `signal` was aborted with.
 */
export async function publishVideos({
  videos,
  videosFolder,
  outputFolder,
  signal,
}: VideoOptions): Promise<{
  readonly urls: ReadonlyMap<string, string>;
  readonly diagnostics: Diagnostic[];
}> {
  const urls = new Map<string, string>();
  const diagnostics: Diagnostic[] = [];
  const seen = new Set<string>();
  for (const video of videos) {
    const { source } = video;
    if (source.kind !== "file" || !source.host || seen.has(source.file)) continue;
    seen.add(source.file);
    signal?.throwIfAborted();
    const result = await publishOne(source.file, videosFolder, outputFolder);
    if (typeof result === "string") urls.set(source.file, result);
    else diagnostics.push(unpublishable(video, source.file, result));
  }
  return { urls, diagnostics: diagnostics.sort(byPlace) };
}

async function publishOne(
  file: string,
  videosFolder: string,
  outputFolder: string,
): Promise<string | Refusal> {
  const original = await findOriginal(videosFolder, file, mostBytes, "videos");
  if (isRefusal(original)) return original;
  const looked = await readInPieces(original.path, async (read) => {
    const start = await read(0, 4096);
    if (start.length === 0) return refusal("is empty: 0 bytes", "empty file", [], [copyAgain]);
    if (!isIsoMedia(start)) {
      return refusal(
        "is not an MP4 or MOV recording",
        "not MP4 or MOV",
        ["only in these can be seen whether a place is told; a name proves nothing"],
        ["save it as MP4, or leave `host` out"],
      );
    }
    return (await unfit({ bytes: original.bytes, read })) ?? digestOf(original.bytes, read);
  });
  if (typeof looked !== "string") return looked;
  const ending = /\.(mp4|m4v|mov)$/i.exec(file)?.[1]?.toLowerCase() ?? "mp4";
  const url = `videos/${looked.slice(0, 20)}.${ending}`;
  await makeFolder(path.join(outputFolder, "videos"));
  await copyFileWhole(original.path, path.join(outputFolder, url));
  return url;
}

const copyAgain = "copy it from the camera or the phone again";

// The first box of such a file: its brand, or in old QuickTime files whatever came first.
function isIsoMedia(start: Buffer): boolean {
  const first = start.toString("latin1", 4, 8);
  return (
    contentKind(start) === "video" &&
    ["ftyp", "moov", "mdat", "wide", "free", "skip"].includes(first)
  );
}

async function digestOf(bytes: number, read: ReadableFile["read"]): Promise<string> {
  const hash = createHash("sha256");
  const piece = 4_000_000;
  for (let at = 0; at < bytes; at += piece) hash.update(await read(at, piece));
  return hash.digest("hex");
}

async function unfit(file: ReadableFile): Promise<Refusal | undefined> {
  const { broken, tells } = await lookIntoMedia(file);
  if (tells.length > 0) {
    return refusal(
      `tells where it was taken: it carries ${tells.join(", and ")}`,
      "tells a place",
      ["it is published as it is, so what it carries would be published too"],
      [
        "send it through a video program that leaves out all metadata, and name the new file",
        "for recordings to come, switch off the place in the camera's or the phone's settings",
        "or leave `host` out: the page then tells of the recording without the file",
      ],
    );
  }
  return broken === undefined
    ? undefined
    : refusal("cannot be looked through", "cannot be read", [broken], [copyAgain]);
}

function unpublishable(
  video: Video,
  file: string,
  { why, label, notes, help }: Refusal,
): Diagnostic {
  return {
    code: "unpublishable-video",
    severity: "finding",
    span: video.span,
    message: `recording \`${file}\` ${why}`,
    label,
    notes: [...notes],
    help: [...help],
  };
}
