import type { CalendarDate } from "../model/calendar.ts";
import type { Photo } from "../model/photo.ts";
import type { Video, VideoSource, VideoTime } from "../model/video.ts";
import type { TypedDay } from "./day-schema.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import { given } from "./shape.ts";

type Typed = NonNullable<TypedDay["videos"]>[number];

/** The recordings of a day. One without a place where it can be seen is left out. */
export function readVideos(
  typed: readonly Typed[],
  date: CalendarDate,
  { videos, photos }: { readonly videos: PhotoFolder; readonly photos: readonly Photo[] },
  faults: Faults,
): Video[] {
  return typed.flatMap((video): Video[] => {
    const source = readSource(video, videos, faults);
    if (!source) return [];
    return [
      {
        date,
        title: video.title.text,
        source,
        ...given({
          picture: readPicture(video, photos, faults),
          step: video.step?.text,
          assembly: video.assembly?.text,
          length: video.length && { seconds: video.length.seconds, typed: video.length.typed },
        }),
        times: readTimes(video, source, faults),
        private: video.private ?? false,
        span: video.title.span,
      },
    ];
  });
}

function readSource(video: Typed, videos: PhotoFolder, faults: Faults): VideoSource | undefined {
  const { link, file } = video;
  // What was typed and could not be read has its own fault already.
  if (!link && !file && (video.node.entries.has("link") || video.node.entries.has("file"))) {
    return undefined;
  }
  if (!link === !file) {
    return faults.add(link ? "wrong-shape" : "missing-key", (file ?? video.title).span, {
      message: link
        ? "a recording is either a `link` or a `file`, not both"
        : "a recording needs a `link` or a `file`",
      help: ["write `link: https://…`, or `file: rivets.mp4` for one below `videos`"],
    });
  }
  if (link) {
    if (video.host !== undefined) {
      faults.add("wrong-shape", link.span, {
        message: "`host` is for a `file`: what stands elsewhere is linked",
        help: ["leave `host` out, or name the file in place of the link"],
      });
    }
    return { kind: "link", link: link.text };
  }
  if (!file) return undefined;
  const host = video.host ?? false;
  // A file that is not published may lie wherever the builder keeps it; its name is kept.
  if (!host) return { kind: "file", file: file.text, host };
  return { kind: "file", file: videos.resolve(file, faults) ?? file.text, host };
}

function readPicture(video: Typed, photos: readonly Photo[], faults: Faults): string | undefined {
  const { picture } = video;
  if (!picture) return undefined;
  const name = picture.text.normalize("NFC");
  if (photos.some(({ file }) => file === name)) return name;
  const nearest = nearestName(
    name,
    photos.map(({ file }) => file),
  );
  return faults.add("unknown-name", picture.span, {
    message: `\`${picture.text}\` is not a photograph of this day`,
    label: nearest ? `did you mean \`${nearest}\`?` : "not among `photos` here",
    help: [
      nearest
        ? `write \`${nearest}\``
        : "name the picture among `photos` of this entry, with its caption",
    ],
  });
}

function readTimes(video: Typed, source: VideoSource, faults: Faults): VideoTime[] {
  let before = -1;
  const times: VideoTime[] = [];
  for (const { at, what, step, link } of video.times ?? []) {
    const { seconds, typed, node } = at;
    if (seconds <= before) {
      faults.add("not-a-time", node.span, {
        message: `\`${typed}\` does not come after the time above it`,
        help: ["put the times in the order in which they are seen"],
      });
    } else if (video.length && seconds > video.length.seconds) {
      faults.add("not-a-time", node.span, {
        message: `\`${typed}\` is past the end of the recording, \`${video.length.typed}\``,
        help: ["correct the time, or `length`"],
      });
    }
    if (link && source.kind === "file") {
      faults.add("wrong-shape", link.span, {
        message: "a time of a `file` needs no link of its own: its page makes it",
        help: ["leave `link` out"],
      });
    }
    before = Math.max(before, seconds);
    times.push({
      at: { seconds, typed },
      what: what.text,
      ...given({ step: step?.text, link: link?.text }),
    });
  }
  return times;
}
