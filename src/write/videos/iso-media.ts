/** A stretch of a file, read when asked for. */
export interface ReadableFile {
  readonly bytes: number;
  /** So many bytes from an offset on; fewer only at the end of the file. */
  readonly read: (offset: number, length: number) => Promise<Buffer>;
}

/** What a look into a recording found. */
export interface MediaReport {
  /** Why the file is not understood to its end; absent when it is. */
  readonly broken?: string;
  /** In plain words, what in it can tell a place: empty for a file that tells none. */
  readonly tells: readonly string[];
  readonly tracks: number;
}

// What is read whole: everything but the coded pictures and sounds.
const mostDescribing = 64_000_000;
const mostBoxes = 20_000;
const deepest = 12;

// ISO/IEC 14496-12, 8.1 to 8.8: boxes that hold boxes, on the way to what describes tracks.
const holders = new Set(["moov", "trak", "mdia", "minf", "dinf", "stbl", "edts", "udta", "mvex"]);
const fragments = new Set(["moof", "traf"]);

// Names that cameras write places under: QuickTime user data, 3GPP TS 26.244 `loci`, keys of
// QuickTime metadata, EXIF and XMP in boxes of their own.
const marks: readonly (readonly [mark: string, says: string])[] = [
  ["\u00a9xyz", "a position (`©xyz`)"],
  ["loci", "a place (`loci`)"],
  ["com.apple.quicktime.location", "a position (`com.apple.quicktime.location`)"],
  ["ISO6709", "a position (`ISO6709`)"],
  ["GPSLatitude", "a position (`GPSLatitude`)"],
  ["Exif", "camera data (`Exif`)"],
  ["ns.adobe.com", "camera data (XMP)"],
];

/**
 * Kinds of track that tell no place: pictures, sound, a clock, hints for sending. Tracks of words
 * are not among them: flying cameras write their position into subtitles.
 */
const plainTracks = new Set(["vide", "soun", "tmcd", "hint"]);

/**
 * Looks through a file of the ISO base media family (MP4, MOV, M4V): walks its boxes without
 * reading the coded pictures and sounds, and looks in all others for what tells a place.
 *
 * Takes any bytes: sizes past the end, boxes in boxes without end and millions of boxes end as
 * `broken`. What a camera writes into the coded pictures themselves is not seen.
 */
export async function lookIntoMedia(file: ReadableFile): Promise<MediaReport> {
  const tells = new Set<string>();
  const handlers: string[] = [];
  let boxes = 0;
  let described = 0;
  let coded = false;
  let hasMovie = false;

  const top = await walk(0, file.bytes, 0);
  const broken = top ?? (hasMovie ? undefined : "it has no description of its tracks (`moov`)");
  for (const handler of handlers) {
    if (!plainTracks.has(handler)) {
      tells.add(`a track of data (\`${printable(handler)}\`), in which cameras keep positions`);
    }
  }
  if (broken === undefined && !coded) {
    return { broken: "it holds neither pictures nor sound (`mdat`)", tells: [...tells], tracks: 0 };
  }
  return {
    ...(broken === undefined ? {} : { broken }),
    tells: [...tells],
    tracks: handlers.length,
  };

  async function walk(from: number, to: number, depth: number): Promise<string | undefined> {
    if (depth > deepest) return "its boxes hold boxes without end";
    for (let at = from; at < to; ) {
      boxes += 1;
      if (boxes > mostBoxes) return `it has more than ${mostBoxes} boxes`;
      const left = to - at;
      // The end of user data may be four empty bytes (QuickTime File Format, user data atoms).
      if (depth > 0 && left < 8) {
        return (await file.read(at, left)).every((byte) => byte === 0)
          ? undefined
          : "it is damaged";
      }
      const head = await file.read(at, Math.min(16, left));
      if (head.length < 8) return "it is cut short";
      const type = head.toString("latin1", 4, 8);
      const size = sizeOf(head, left);
      if (size === undefined) return `it is damaged at byte ${at}`;
      if (size > left) return depth === 0 ? "it is cut short" : `it is damaged at byte ${at}`;
      const fault = await box(type, at, at + size, depth);
      if (fault !== undefined) return fault;
      at += size;
    }
    return undefined;
  }

  async function box(
    type: string,
    from: number,
    to: number,
    depth: number,
  ): Promise<string | undefined> {
    if (type === "mdat") {
      coded = true;
      return undefined;
    }
    if (type === "moov") hasMovie = true;
    const isHolder = holders.has(type) || fragments.has(type);
    if (depth === 0 || !isHolder) {
      // At the top a whole box is searched at once, with all that it holds.
      if (depth === 0) {
        described += to - from;
        if (described > mostDescribing) return "it describes itself in more than 64 MB";
        const bytes = await file.read(from, to - from);
        if (bytes.length < to - from) return "it is cut short";
        for (const [mark, says] of marks) {
          if (bytes.includes(mark, 0, "latin1")) tells.add(says);
        }
      }
      if (type === "hdlr") await handlerOf(from, to);
      if (!isHolder) return undefined;
    }
    return walk(from + 8, to, depth + 1);
  }

  // ISO/IEC 14496-12, 8.4.3: version and flags, 4 bytes, the kind of the track.
  async function handlerOf(from: number, to: number): Promise<void> {
    const bytes = await file.read(from, Math.min(to - from, 20));
    // In QuickTime a second handler says how the data is reached (`dhlr`), not what it is.
    const component = bytes.toString("latin1", 12, 16);
    if (component !== "dhlr") handlers.push(bytes.toString("latin1", 16, 20));
  }
}

// ISO/IEC 14496-12, 4.2: 1 stands for a size of 64 bits after the type, 0 for "to the end".
function sizeOf(head: Buffer, left: number): number | undefined {
  const small = head.readUInt32BE(0);
  if (small === 0) return left;
  if (small !== 1) return small < 8 ? undefined : small;
  if (head.length < 16) return undefined;
  const large = head.readBigUInt64BE(8);
  if (large < 16n || large > BigInt(Number.MAX_SAFE_INTEGER)) return undefined;
  return Number(large);
}

function printable(text: string): string {
  return text.replace(/[^ -~]/g, "?");
}
