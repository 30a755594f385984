import { readFileSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Video, VideoSource } from "../../../src/model/video.ts";
import { publishVideos } from "../../../src/write/videos/publish-videos.ts";
import { filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { someDay, span } from "../../support/small-build.ts";
import { place, recording } from "../../support/small-videos.ts";

const video = (source: VideoSource, line = 1): Video => ({
  date: someDay,
  title: "Row A",
  source,
  times: [],
  private: false,
  span: span({ line }),
});
const hosted = (file: string, line = 1) => video({ kind: "file", file, host: true }, line);

function publish(folder: string, videos: readonly Video[]) {
  return publishVideos({
    videos,
    videosFolder: join(folder, "journal/videos"),
    outputFolder: join(folder, "site"),
  });
}

test("a file that is asked for is published as it is, under a name made from its content", async () => {
  const bytes = recording();
  const folder = scratchFolder({
    "journal/videos/a.MP4": bytes,
    "journal/videos/same.mov": bytes,
  });
  const { urls, diagnostics } = await publish(folder, [hosted("a.MP4"), hosted("same.mov", 2)]);
  expect(diagnostics).toEqual([]);
  const [a = "", same = ""] = [urls.get("a.MP4"), urls.get("same.mov")];
  expect(a).toMatch(/^videos\/[0-9a-f]{20}\.mp4$/);
  expect(same).toBe(a.replace(".mp4", ".mov"));
  expect(readFileSync(join(folder, "site", a)).equals(bytes)).toBe(true);
});

test("what is linked, or not asked for, stays where it is", async () => {
  const folder = scratchFolder({ "journal/videos/a.mp4": recording() });
  const { urls, diagnostics } = await publish(folder, [
    video({ kind: "link", link: "https://videos.example/a" }),
    video({ kind: "file", file: "a.mp4", host: false }),
  ]);
  expect([urls.size, diagnostics]).toEqual([0, []]);
  expect(filesIn(folder)).toEqual(["journal/videos/a.mp4"]);
});

test("one that cannot be published is named in plain words, and the others go on", async () => {
  const folder = scratchFolder({
    "journal/videos/place.mp4": recording(place()),
    "journal/videos/empty.mp4": "",
    "journal/videos/webm.mp4": Buffer.from([0x1a, 0x45, 0xdf, 0xa3, 1, 2, 3, 4, 5, 6, 7, 8]),
    "journal/videos/cut.mp4": recording().subarray(0, 90),
    "journal/videos/good.mp4": recording(),
    "outside.mp4": recording(),
  });
  writeFileSync(join(folder, "journal/videos/huge.mp4"), recording());
  truncateSync(join(folder, "journal/videos/huge.mp4"), 300_000_000);
  symlinkSync(join(folder, "outside.mp4"), join(folder, "journal/videos/link.mp4"));
  const names = ["place", "empty", "webm", "cut", "huge", "link", "gone", "../outside", "good"];
  const { urls, diagnostics } = await publish(
    folder,
    names.map((name, index) => hosted(`${name}.mp4`, index + 1)),
  );
  expect([...urls.keys()]).toEqual(["good.mp4"]);
  expect(diagnostics.map(({ code, severity }) => `${severity} ${code}`)).toEqual(
    Array.from({ length: 8 }, () => "finding unpublishable-video"),
  );
  expect(diagnostics.map(({ message }) => message)).toEqual([
    "recording `place.mp4` tells where it was taken: it carries a position (`©xyz`)",
    "recording `empty.mp4` is empty: 0 bytes",
    "recording `webm.mp4` is not an MP4 or MOV recording",
    "recording `cut.mp4` cannot be looked through",
    "recording `huge.mp4` is 300 MB, above the 200 MB that is read",
    "recording `link.mp4` is a link that leads out of the journal",
    "recording `gone.mp4` is not in the `videos` folder",
    "recording `../outside.mp4` does not stay below the `videos` folder",
  ]);
  expect(filesIn(join(folder, "site"))).toHaveLength(1);
});
