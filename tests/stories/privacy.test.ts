// A secret word and a secret colour are planted in everything that may be private. Not a byte of
// what is made for the public may hold them; the private edition holds them all, or this test
// would look for what is not there.

import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { gunzipSync, inflateSync } from "node:zlib";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { pdfText } from "../support/pdf-text.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { box, brand, track } from "../support/small-videos.ts";
import { smallRegisters } from "../support/temporary-journal.ts";
import { witness } from "../support/witness.ts";

/** Words that stand nowhere else, by what is private. */
const words = {
  "a person's id": "zqpersonid",
  "a person's name": "zqpersonname",
  "a person's standing": "zqstanding",
  "a photograph's caption": "zqcaption",
  "a photograph's text": "zqalttext",
  "a photograph's file": "zqphotofile",
  "a session's note": "zqsessionnote",
  "a lot's id": "zqlotid",
  "a lot's title": "zqlottitle",
  "what a reading measures": "zqreadingwhat",
  "where a reading is": "zqreadingat",
  "an amendment to a reading": "zqamendwhy",
  "what a deviation says": "zqdeviation",
  "a recording's title": "zqvideotitle",
  "a recording's link": "zqvideolink",
  "a recording's times": "zqvideotime",
  "a recording's bytes": "zqvideobytes",
  "a day's title": "zqdaytitle",
  "a day's prose": "zqdayprose",
  "a day's place": "zqdayplace",
  "a day's squawk": "zqdaysquawk",
  "a day's inspection": "zqdaylook",
  "a day's hold": "zqdayhold",
  "a day's cure": "zqdaycure",
  "a day's next": "zqdaynext",
  "a day's photograph": "zqdaycaption",
  "a day's recording": "zqdayvideo",
  "a day's layout": "zqdaylayout",
  "a bill for help": "zqinvoice",
} as const;

/** Of no edition: what is not finished is read and not made anything of. */
const draftWords = ["zqdraftprose", "zqdrafttitle", "zqdraftcaption"];

/** Nothing else in the journal comes near this colour. */
const secret = { r: 255, g: 0, b: 200 };
const isSecret = (r: number, g: number, b: number) => r > 190 && g < 70 && b > 140 && b < 245;

const picture = (background: { r: number; g: number; b: number }) =>
  sharp({ create: { width: 1700, height: 900, channels: 3, background } })
    .jpeg()
    .toBuffer();

const session = (more = "") =>
  `  - { assembly: spar, step: W-1, who: [ada, zqpersonid], hours: "1:30", kind: assemble${more} }\n`;

const files: Readonly<Record<string, string>> = {
  ...smallRegisters,
  "project.yaml": `${smallRegisters["project.yaml"]}address: https://journal.example/\n`,
  "people.yaml": `${smallRegisters["people.yaml"]}  - { id: zqpersonid, name: Zoe zqpersonname, role: paid help, standing: zqstanding, private: true }\n`,
  "lots.yaml": `${smallRegisters["lots.yaml"]}  - { id: zqlotid, title: zqlottitle, material: sealant, private: true }\n`,
  "help.yaml": `help:\n  - { id: P-1, who: zqpersonid, kind: paid help, from: 2026-03-14, what: held the bar, invoice: zqinvoice }\n`,
  "days/2026-03-14.md": `---
date: 2026-03-14
title: An ordinary day
sessions:
${session(", note: zqsessionnote, private: true, lots: [sealant-1, zqlotid]")}readings:
  - { what: zqreadingwhat, at: zqreadingat, rule: edge, value: 0.20 in, private: true }
  - { what: edge distance, rule: edge, value: 0.26 in }
deviations:
  - { id: D-1, drawing: W-01 rev B, planned: zqdeviation, done: zqdeviation, why: zqdeviation, private: true }
photos:
  - { file: zqphotofile.jpg, caption: zqcaption, alt: zqalttext, private: true }
  - { file: open.jpg, caption: The open one }
videos:
  - { title: zqvideotitle, link: "https://videos.example/zqvideolink", picture: zqphotofile.jpg, times: [{ at: "0:01", what: zqvideotime }], private: true }
  - { title: zqvideotitle, file: secret.mp4, host: true, private: true }
  - { title: Open recording, file: open.mp4, host: true, picture: zqphotofile.jpg }
---
Something that everybody may read.
`,
  "days/2026-03-15.md": `---
date: 2026-03-15
title: zqdaytitle
private: true
place: zqdayplace
sessions:
${session()}holds: [{ step: W-1, with: zqdayhold }]
cures: [{ step: W-1, mixed: "10:00", ready: 2026-03-16 10:00, note: zqdaycure }]
squawks: [{ id: S-1, found: zqdaysquawk }]
inspections: [{ step: W-1, look: holes, by: jon, open: zqdaylook, findings: zqdaylook, result: clear }]
photos: [{ file: day.jpg, caption: zqdaycaption }]
videos: [{ title: zqdayvideo, file: day.mp4, host: true }]
next: [zqdaynext]
---
zqdayprose

\`\`\`layout
title: zqdaylayout
step: W-1
row: { length: 6 in, diameter: 1/8 in, edge: 2 D, count: 5 }
\`\`\`
`,
  "days/2026-03-16.md": `---
date: 2026-03-16
draft: true
title: zqdrafttitle
photos: [{ file: draft.jpg, caption: zqdraftcaption }]
---
zqdraftprose
`,
  "days/2026-03-17.md": `---
date: 2026-03-17
title: A correction
sessions:
${session()}amendments:
  - { day: 2026-03-14, field: "readings[1].value", was: 0.20 in, now: 0.21 in, why: zqamendwhy }
---
Prose.
`,
};

const cwd = mkdtempSync(join(tmpdir(), "witness-privacy-"));
afterAll(() => rmSync(cwd, { recursive: true, force: true }));

beforeAll(async () => {
  const put = (name: string, data: string | Uint8Array) => {
    const file = join(cwd, "journal", name);
    mkdirSync(join(file, ".."), { recursive: true });
    writeFileSync(file, data);
  };
  for (const [name, text] of Object.entries(files)) put(name, text);
  for (const name of ["zqphotofile", "day", "draft"]) {
    put(`photos/${name}.jpg`, await picture({ ...secret, g: name.length }));
  }
  put("photos/open.jpg", await picture({ r: 90, g: 110, b: 90 }));
  const film = (says: string) =>
    Buffer.concat([brand, box("moov", track("vide")), box("mdat", says)]);
  put("videos/secret.mp4", film("zqvideobytes"));
  put("videos/day.mp4", film("zqvideobytes too"));
  put("videos/open.mp4", film("anybody may see it"));
  for (const edition of ["public", "private"]) {
    for (const args of [["build"], ["export"], ["export", "--take-away"]]) {
      const { status, stderr, stdout } = await witness(
        [...args, "--journal", "journal", "--edition", edition],
        { cwd, longest: 300_000 },
      );
      expect([status, status === 0 ? "" : stdout + stderr]).toEqual([0, ""]);
    }
  }
}, 600_000);

const made = {
  public: ["site", "exports", "public-take-away"],
  private: ["private-site", "private-exports", "private-take-away"],
} as const;

/** Everything that an edition's files say: their names, their bytes, and what is packed in them. */
async function said(folder: string): Promise<Map<string, string>> {
  const all = new Map<string, string>();
  for (const name of filesIn(folder)) {
    const bytes = readFileSync(join(folder, name));
    const parts = [name, bytes.toString("latin1"), ...unpacked(bytes)];
    if (extname(name) === ".pdf") parts.push(...(await pdfText(bytes)));
    all.set(name, parts.join("\n").toLowerCase());
  }
  return all;
}

/** What gzip and the streams of a PDF hold. */
function unpacked(bytes: Buffer): string[] {
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) return [gunzipSync(bytes).toString("latin1")];
  if (!bytes.subarray(0, 5).equals(Buffer.from("%PDF-"))) return [];
  return streamsOf(bytes).flatMap((stream) => {
    try {
      return [inflateSync(stream).toString("latin1")];
    } catch {
      return [stream.toString("latin1")];
    }
  });
}

function streamsOf(pdf: Buffer): Buffer[] {
  const streams: Buffer[] = [];
  for (let at = pdf.indexOf("stream\n"); at !== -1; at = pdf.indexOf("stream\n", at)) {
    const end = pdf.indexOf("\nendstream", at);
    if (end === -1) break;
    streams.push(pdf.subarray(at + 7, end));
    at = end + 10;
  }
  return streams;
}

/** Every picture of a folder, those inside PDFs among them, by where it stands. */
function picturesIn(folder: string): [string, Buffer][] {
  return filesIn(folder).flatMap((name): [string, Buffer][] => {
    const bytes = readFileSync(join(folder, name));
    if (/\.(jpg|jpeg|avif|png|webp)$/.test(name)) return [[name, bytes]];
    if (extname(name) !== ".pdf") return [];
    return streamsOf(bytes)
      .filter((stream) => stream[0] === 0xff && stream[1] === 0xd8)
      .map((stream, index) => [`${name} picture ${index + 1}`, stream]);
  });
}

async function holdsSecret(bytes: Buffer): Promise<boolean> {
  const { data, info } = await sharp(bytes)
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  for (let at = 0; at + 2 < data.length; at += info.channels) {
    if (isSecret(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0)) return true;
  }
  return false;
}

const out = (name: string) => join(cwd, "out", "journal", name);

describe.each(made.public)("nothing private is in the public %s", (folder) => {
  test("in no byte, no index, no feed and no PDF", async () => {
    const all = await said(out(folder));
    expect(all.size).toBeGreaterThan(10);
    const found = [...all].flatMap(([file, text]) =>
      [...Object.values(words), ...draftWords].flatMap((word) =>
        text.includes(word) ? [`${word} in ${file}`] : [],
      ),
    );
    expect(found).toEqual([]);
  });

  test("in no pixel of photographs, share pictures and PDFs", async () => {
    const pictures = picturesIn(out(folder));
    expect(pictures.length).toBeGreaterThan(0);
    const found: string[] = [];
    for (const [name, bytes] of pictures) if (await holdsSecret(bytes)) found.push(name);
    expect(found).toEqual([]);
  });
});

describe("the private edition holds everything but drafts", () => {
  test("every word", async () => {
    const all = (await Promise.all(made.private.map((name) => said(out(name))))).map((each) =>
      [...each.values()].join("\n"),
    );
    const missing = Object.entries(words).filter(([, word]) => !all.join("\n").includes(word));
    expect(missing).toEqual([]);
  });

  test("the colour, in photographs, in share pictures and in PDFs", async () => {
    const where = new Set<string>();
    for (const folder of made.private) {
      for (const [name, bytes] of picturesIn(out(folder))) {
        if (await holdsSecret(bytes)) where.add(name.replace(/[/ ].*$|^(?!.*\/).*$/g, "") || "pdf");
      }
    }
    expect([...where]).toEqual(expect.arrayContaining(["photos", "share"]));
    const pdfs = picturesIn(out("private-exports"));
    const secrets = await Promise.all(pdfs.map(([, bytes]) => holdsSecret(bytes)));
    expect(secrets).toContain(true);
  });
});

test("the public edition has what is public: the words, the picture and the recording", async () => {
  const site = await said(out("site"));
  expect([...site.values()].join("\n")).toContain("something that everybody may read");
  const names = [...site.keys()].map((name) => name.split("/")[0]);
  for (const name of ["photos", "share", "videos", "pagefind"]) expect(names).toContain(name);
  expect(readdirSync(join(out("site"), "videos"))).toHaveLength(1);
});

test("nothing of a private project is made for the public", async () => {
  const project = join(cwd, "journal", "project.yaml");
  const before = readFileSync(project, "utf8");
  writeFileSync(project, `${before}private: true\n`);
  try {
    for (const verb of ["build", "export"]) {
      const refused = await witness([verb, "--journal", "journal", "--out", "other"], { cwd });
      expect(refused.status).toBe(2);
      expect(refused.stderr).toContain("nothing of it is made for the public");
    }
    expect(readdirSync(cwd)).not.toContain("other");
    const edition = ["--edition", "private"];
    const { status } = await witness(
      ["export", "--journal", "journal", "--out", "other", ...edition],
      {
        cwd,
      },
    );
    expect(status).toBe(0);
  } finally {
    writeFileSync(project, before);
  }
});

test("with `names: initials` no full name is printed, of nobody", async () => {
  const project = join(cwd, "journal", "project.yaml");
  const before = readFileSync(project, "utf8");
  writeFileSync(project, `${before}names: initials\n`);
  try {
    for (const verb of ["build", "export"]) {
      const { status } = await witness([verb, "--journal", "journal", "--out", "initials"], {
        cwd,
      });
      expect(status).toBe(0);
    }
    for (const folder of ["site", "exports"]) {
      const found = [...(await said(join(cwd, "initials", "journal", folder)))].filter(([, text]) =>
        /ada brook|jon reed|zqpersonname/.test(text),
      );
      expect(found.map(([file]) => file)).toEqual([]);
    }
  } finally {
    writeFileSync(project, before);
  }
});
