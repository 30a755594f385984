import { createHash } from "node:crypto";
import { DateTime } from "luxon";
import type { Exif } from "sharp";
import type { Entry } from "./list.ts";
import { Random } from "./random.ts";

/** The camera data of a picture: an invented camera, the time on the shop's clock, a place far out at sea. */
export function exif(entry: Entry, zone: string): Exif {
  const taken = DateTime.fromFormat(entry.taken, "yyyy-MM-dd HH:mm", { zone });
  const { latitude, longitude } = place(entry);
  const time = taken.toFormat("yyyy:MM:dd HH:mm:ss");
  const offset = taken.toFormat("ZZ");
  return {
    IFD0: {
      Make: "Bench Camera",
      Model: "Bench Camera One",
      Software: mark(entry),
    },
    IFD2: {
      DateTimeOriginal: time,
      DateTimeDigitized: time,
      OffsetTimeOriginal: offset,
    },
    IFD3: {
      GPSLatitudeRef: "N",
      GPSLatitude: degrees(latitude),
      GPSLongitudeRef: "W",
      GPSLongitude: degrees(longitude),
    },
  };
}

/** One picture in six carries its place a second time, as XMP. */
export function locationXmp(entry: Entry): string | undefined {
  if (!new Random(`${entry.file}/xmp`).chance(1 / 6)) return undefined;
  const { latitude, longitude } = place(entry);
  const minutes = (degree: number) => `${Math.floor(degree)},${((degree % 1) * 60).toFixed(4)}`;
  return [
    '<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:exif="http://ns.adobe.com/exif/1.0/"',
    ` exif:GPSLatitude="${minutes(latitude)}N" exif:GPSLongitude="${minutes(longitude)}W"/>`,
    '</rdf:RDF></x:xmpmeta><?xpacket end="w"?>',
  ].join("");
}

/** What tells whether a picture still answers to its entry; kept in the picture's Software field. */
export function mark(entry: Entry): string {
  const text = JSON.stringify([
    entry.file,
    entry.scene,
    Object.entries(entry.detail).sort(),
    entry.taken,
    entry.orientation,
    entry.view,
  ]);
  return `drawn ${createHash("sha256").update(text).digest("hex").slice(0, 16)}`;
}

/** Open ocean, about 45° N 140° W, so that a leak would be seen and would tell nothing. */
function place(entry: Entry): { latitude: number; longitude: number } {
  const random = new Random(`${entry.file}/place`);
  return { latitude: 45 + random.between(0, 0.02), longitude: 140 + random.between(0, 0.02) };
}

function degrees(value: number): string {
  const whole = Math.floor(value);
  const minutes = Math.floor((value - whole) * 60);
  const seconds = Math.round(((value - whole) * 60 - minutes) * 6000);
  return `${whole}/1 ${minutes}/1 ${seconds}/100`;
}
