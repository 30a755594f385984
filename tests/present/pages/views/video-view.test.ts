import { expect, test } from "vitest";
import { dayPage } from "../../../../src/present/pages/day-page.ts";
import { linksFrom } from "../../../../src/present/pages/links.ts";
import { videoView } from "../../../../src/present/pages/views/video-view.ts";
import { shownJournal } from "../../../support/shown-journal.ts";
import { entry, marchFile, smallRegisters } from "../../../support/temporary-journal.ts";

const picture = {
  width: 800,
  height: 600,
  avif: [],
  jpeg: [{ width: 800, height: 600, url: "photos/a-800.jpg" }],
};

function record(videos: string, more = "", edition: "public" | "private" = "public") {
  return {
    ...shownJournal(
      {
        [marchFile]: entry(`${more}photos: [{ file: a.jpg, caption: A row }]\nvideos:\n${videos}`),
        "photos/a.jpg": "a",
        "videos/a.mp4": "a",
        "project.yaml": `${smallRegisters["project.yaml"]}address: https://journal.example/\n`,
      },
      edition,
    ),
    pictures: new Map([["a.jpg", picture]]),
  };
}

function viewed(index: ReturnType<typeof record>) {
  const video = index.shownDays[0]?.videos[0];
  if (!video) throw new Error("no recording");
  return videoView(index, linksFrom(index, "../../../"), video, 1);
}

const times = 'times: [{ at: "0:09", what: jig }, { at: "1:23", what: rivet }]';

test("a recording elsewhere: its link as typed, and no time parameter of our making", () => {
  const view = viewed(
    record(`  - { title: Row, link: "https://videos.example/a?b", picture: a.jpg, ${times} }\n`),
  );
  expect(view).toMatchObject({ href: "https://videos.example/a?b", where: "on videos.example" });
  expect(view.picture?.src).toBe("../../../photos/a-800.jpg");
  expect(view.times.map(({ href }) => href)).toEqual([undefined, undefined]);
});

test("a file of the site: every time leads into it", () => {
  const index = {
    ...record(`  - { title: Row, file: a.mp4, host: true, ${times} }\n`),
    videos: new Map([["a.mp4", "videos/1f.mp4"]]),
  };
  const view = viewed(index);
  expect(view.where).toBe("a file of this site");
  expect(view.times.map(({ href }) => href)).toEqual([
    "../../../videos/1f.mp4#t=9",
    "../../../videos/1f.mp4#t=83",
  ]);
});

test("a file that is not published is told of, and leads nowhere", () => {
  const view = viewed(record(`  - { title: Row, file: tapes/secret-name.mp4, ${times} }\n`));
  expect(view).not.toHaveProperty("href");
  expect(JSON.stringify(view)).not.toContain("secret-name");
});

test("a private recording is not shown, nor a private picture of a public one", () => {
  expect(record("  - { title: Row, file: a.mp4, private: true }\n").shownDays[0]?.videos).toEqual(
    [],
  );
  const index = shownJournal({
    [marchFile]: entry(
      "photos: [{ file: a.jpg, caption: A, private: true }]\nvideos: [{ title: Row, file: a.mp4, picture: a.jpg }]\n",
    ),
    "photos/a.jpg": "a",
  });
  expect(index.shownDays[0]?.videos).toMatchObject([{ title: "Row" }]);
  expect(index.shownDays[0]?.videos[0]).not.toHaveProperty("picture");
  expect(index.leftOut).toMatchObject({ photos: 1, videos: 0 });
});

test("programs that read pages are told of the recording and of its parts", () => {
  const index = record(
    `  - { title: Row, link: https://videos.example/a, picture: a.jpg, ${times} }\n`,
  );
  const [day] = index.shownDays;
  if (!day) throw new Error("no day");
  const data = JSON.parse(dayPage(index, day).structured ?? "{}");
  expect(data["@graph"][0].video).toMatchObject([
    {
      "@type": "VideoObject",
      name: "Row",
      url: "https://videos.example/a",
      thumbnailUrl: "https://journal.example/photos/a-800.jpg",
      uploadDate: "2026-03-14",
      hasPart: [
        {
          "@type": "Clip",
          name: "jig",
          startOffset: 9,
          endOffset: 83,
          url: "https://videos.example/a",
        },
        { "@type": "Clip", name: "rivet", startOffset: 83, url: "https://videos.example/a" },
      ],
    },
  ]);
});
