import type { Video } from "../../../model/video.ts";
import type { Links } from "../links.ts";
import type { Link } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type PictureView, pictureView } from "./photo-view.ts";

/** A recording: a picture that stands for it, where it can be seen, and places in it. */
export interface VideoView {
  readonly anchor: string;
  readonly title: string;
  /** Where the recording is: on another site, or a file of this one; absent when kept at home. */
  readonly href?: string;
  /** Where that is, in words: `on videos.example`, `a file of this site`. */
  readonly where: string;
  /** `12:40`. */
  readonly length?: string;
  readonly picture?: PictureView;
  readonly step?: Link;
  readonly assembly?: Link;
  /** In order. */
  readonly times: readonly {
    readonly at: string;
    readonly seconds: number;
    readonly what: string;
    readonly href?: string;
    readonly step?: Link;
  }[];
}

/** A recording as the pages show it; `number` counts those of one page from 1. */
export function videoView(
  record: RecordIndex,
  links: Links,
  video: Video,
  number: number,
): VideoView {
  const { source, picture, step, assembly, length } = video;
  const hosted = source.kind === "file" ? record.videos.get(source.file) : undefined;
  const file = hosted === undefined ? undefined : `${links.root}${hosted}`;
  const href = source.kind === "link" ? source.link : file;
  const photo = (record.dayByDate.get(video.date)?.photos ?? []).find(
    (each) => each.file === picture,
  );
  const shown = photo && pictureView(record, links, photo);
  return {
    anchor: `recording-${number}`,
    title: video.title,
    ...(href === undefined ? {} : { href }),
    where: whereText(video, hosted !== undefined),
    ...(length === undefined ? {} : { length: length.typed }),
    ...(shown ? { picture: shown } : {}),
    ...(step === undefined ? {} : { step: links.step(step) }),
    ...(assembly === undefined ? {} : { assembly: links.assembly(assembly) }),
    times: video.times.map(({ at, what, step: of, link }) => {
      // How a place in somebody else's recording is addressed is theirs to say.
      const to = link ?? (file === undefined ? undefined : `${file}#t=${at.seconds}`);
      return {
        at: at.typed,
        seconds: at.seconds,
        what,
        ...(to === undefined ? {} : { href: to }),
        ...(of === undefined ? {} : { step: links.step(of) }),
      };
    }),
  };
}

function whereText({ source }: Video, isHosted: boolean): string {
  if (source.kind === "link") return `on ${new URL(source.link).host}`;
  return isHosted ? "a file of this site" : "kept by the builder, not published";
}
