// A HEIC picture made from nothing, because no encoder is at hand: HEVC (ITU-T H.265) with every
// coding unit as plain samples (`pcm_flag`), in the boxes of ISO/IEC 23008-12. It stands as a
// telephone stores it: the pixels as the sensor gave them, and a turn beside them.

import { box } from "./small-videos.ts";

const unit = 16;

/** Red, green, blue of a point of the picture. */
export type Paint = (x: number, y: number) => readonly [number, number, number];

/** What the picture carries beside its pixels. */
export interface HeicExtras {
  /** Quarter turns against the clock that make it upright. */
  readonly turns?: 0 | 1 | 2 | 3;
  /** EXIF as it stands in a file, from `II*` or `MM` on. */
  readonly exif?: Buffer;
}

/** A HEIC file. Width and height are multiples of 16, and together at most 17 squares of that. */
export function heicPicture(
  width: number,
  height: number,
  paint: Paint,
  { turns = 0, exif }: HeicExtras = {},
): Buffer {
  const slice = nal(19, sliceBits(width, height, paint));
  const coded = Buffer.concat([u32(slice.length), slice]);
  const info = exif && Buffer.concat([u32(0), exif]);
  // Where the data begins depends on the size of the boxes before it, not on what they say.
  const whole = (at: number) => {
    const meta = metaBox(width, height, turns, [
      { id: 1, type: "hvc1", at, length: coded.length },
      ...(info ? [{ id: 2, type: "Exif", at: at + coded.length, length: info.length }] : []),
    ]);
    return Buffer.concat([box("ftyp", "heic\0\0\0\0mif1heic"), meta]);
  };
  const before = whole(0).length + 8;
  return Buffer.concat([whole(before), box("mdat", coded, info ?? Buffer.alloc(0))]);
}

interface Item {
  readonly id: number;
  readonly type: string;
  readonly at: number;
  readonly length: number;
}

function metaBox(width: number, height: number, turns: number, items: readonly Item[]): Buffer {
  const full = (type: string, flags: number, ...holds: Buffer[]) => box(type, u32(flags), ...holds);
  const properties = [
    decoderBox(width, height),
    full("ispe", 0, u32(width), u32(height)),
    ...(turns === 0 ? [] : [box("irot", Buffer.from([turns]))]),
  ];
  const entries = items.map(({ id, type }) =>
    full("infe", 0x02000000, u16(id), u16(0), Buffer.from(`${type}\0`)),
  );
  const places = items.map(({ id, at, length }) =>
    Buffer.concat([u16(id), u16(0), u16(1), u32(at), u32(length)]),
  );
  const used = properties.map((_, index) => (index === 1 ? 2 : 0x80 | (index + 1)));
  return full(
    "meta",
    0,
    full("hdlr", 0, u32(0), Buffer.from("pict"), Buffer.alloc(13)),
    full("pitm", 0, u16(1)),
    full("iloc", 0, Buffer.from([0x44, 0]), u16(items.length), ...places),
    full("iinf", 0, u16(items.length), ...entries),
    ...(items.length > 1 ? [full("iref", 0, box("cdsc", u16(2), u16(1), u16(1)))] : []),
    box(
      "iprp",
      box("ipco", ...properties),
      full("ipma", 0, u32(1), u16(1), Buffer.from([used.length, ...used])),
    ),
  );
}

// ISO/IEC 14496-15, 8.3.3.1: how to set up the decoder, and the three sets of parameters.
function decoderBox(width: number, height: number): Buffer {
  const sets = [
    { type: 32, bits: videoParameters() },
    { type: 33, bits: sequenceParameters(width, height) },
    { type: 34, bits: pictureParameters() },
  ].map(({ type, bits }) => {
    const bytes = nal(type, bits);
    return Buffer.concat([Buffer.from([0x80 | type]), u16(1), u16(bytes.length), bytes]);
  });
  const head = Buffer.from([
    1,
    1,
    0x60,
    0,
    0,
    0,
    0x90,
    0,
    0,
    0,
    0,
    0,
    30,
    0xf0,
    0,
    0xfc,
    0xfd,
    0xf8,
    0xf8,
    0,
    0,
    0x0f,
    sets.length,
  ]);
  return box("hvcC", head, ...sets);
}

class Bits {
  readonly bytes: number[] = [];
  #held = 0;
  #count = 0;

  u(width: number, value: number): this {
    for (let at = width - 1; at >= 0; at--) this.bit(Math.floor(value / 2 ** at) % 2);
    return this;
  }

  bit(value: number): void {
    this.#held = this.#held * 2 + value;
    this.#count += 1;
    if (this.#count < 8) return;
    this.bytes.push(this.#held);
    this.#held = 0;
    this.#count = 0;
  }

  /** Exponential Golomb code of order 0 (H.265, 9.2). */
  ue(...values: readonly number[]): this {
    for (const value of values) {
      const width = Math.floor(Math.log2(value + 1));
      this.u(width, 0).u(width + 1, value + 1);
    }
    return this;
  }

  flags(...values: readonly number[]): this {
    for (const value of values) this.bit(value);
    return this;
  }

  align(): this {
    while (this.#count > 0) this.bit(0);
    return this;
  }

  trailing(): this {
    return this.flags(1).align();
  }
}

/** H.265, 7.3.3: Main profile, level 1. */
function profile(bits: Bits): Bits {
  bits.u(8, 1).u(32, 0x60000000).flags(1, 0, 0, 1).u(22, 0).u(22, 0);
  return bits.u(8, 30);
}

function videoParameters(): Bits {
  const bits = new Bits().u(4, 0).flags(1, 1).u(6, 0).u(3, 0).flags(1).u(16, 0xffff);
  return profile(bits).flags(1).ue(0, 0, 0).u(6, 0).ue(0).flags(0, 0).trailing();
}

function sequenceParameters(width: number, height: number): Bits {
  const bits = profile(new Bits().u(4, 0).u(3, 0).flags(1));
  bits.ue(0, 1, width, height).flags(0).ue(0, 0, 4).flags(1).ue(0, 0, 0);
  // Squares of 16 in one size only; transforms of 4 to 16.
  bits.ue(1, 0, 0, 2, 0, 0).flags(0, 0, 0);
  // Plain samples of 8 bits, in squares of 16, not smoothed afterwards.
  bits.flags(1).u(4, 7).u(4, 7).ue(1, 0).flags(1);
  return bits.ue(0).flags(0, 0, 0, 0, 0).trailing();
}

function pictureParameters(): Bits {
  const bits = new Bits().ue(0, 0).flags(0, 0).u(3, 0).flags(0, 0).ue(0, 0, 0);
  bits.flags(0, 0, 0).ue(0, 0).flags(0, 0, 0, 0, 0, 0, 0, 0, 0, 0).ue(0);
  return bits.flags(0, 0).trailing();
}

// H.265, table 9-46, the first states: no more squares than that.
const leastProbable: readonly (readonly [number, number, number, number])[] = [
  [128, 176, 208, 240],
  [128, 167, 197, 227],
  [128, 158, 187, 216],
  [123, 150, 178, 205],
  [116, 142, 169, 195],
  [111, 135, 160, 185],
  [105, 128, 152, 175],
  [100, 122, 144, 166],
  [95, 116, 137, 158],
  [90, 110, 130, 150],
  [85, 104, 123, 142],
  [81, 99, 117, 135],
  [77, 94, 111, 128],
  [73, 89, 105, 122],
  [69, 85, 100, 116],
  [66, 80, 95, 110],
  [62, 76, 90, 104],
];

/** H.265, 9.3.4.6 (informative): the arithmetic coder, as far as one kind of symbol needs it. */
class Coder {
  #low = 0;
  #range = 510;
  #first = true;
  #outstanding = 0;

  constructor(readonly bits: Bits) {}

  /** The symbol that is likelier, in a context of this state. */
  likely(state: number): void {
    const row = leastProbable[state];
    if (!row) throw new Error("the picture has too many squares");
    this.#range -= row[(this.#range >> 6) & 3] ?? 0;
    this.#renew();
  }

  terminate(bin: 0 | 1): void {
    this.#range -= 2;
    if (bin === 0) {
      this.#renew();
      return;
    }
    this.#low += this.#range;
    this.#range = 2;
    this.#renew();
    this.#put((this.#low >> 9) & 1);
    this.bits.u(2, ((this.#low >> 7) & 3) | 1).align();
  }

  #renew(): void {
    while (this.#range < 256) {
      if (this.#low < 256) this.#put(0);
      else if (this.#low >= 512) {
        this.#low -= 512;
        this.#put(1);
      } else {
        this.#low -= 256;
        this.#outstanding += 1;
      }
      this.#range *= 2;
      this.#low *= 2;
    }
  }

  #put(bit: number): void {
    if (this.#first) this.#first = false;
    else this.bits.bit(bit);
    for (; this.#outstanding > 0; this.#outstanding--) this.bits.bit(1 - bit);
  }
}

function sliceBits(width: number, height: number, paint: Paint): Bits {
  // First slice of the picture, parameters 0, only intra, the quality as set up.
  const bits = new Bits().flags(1, 0).ue(0, 2, 0).trailing();
  const squares = (width / unit) * (height / unit);
  let coder = new Coder(bits);
  for (let square = 0; square < squares; square++) {
    const left = (square % (width / unit)) * unit;
    const top = Math.floor(square / (width / unit)) * unit;
    // One part (9.3.2.2: its context begins in state 0), as plain samples.
    coder.likely(square);
    coder.terminate(1);
    samples(bits, left, top, paint);
    coder = new Coder(bits);
    coder.terminate(square === squares - 1 ? 1 : 0);
  }
  return bits;
}

// ITU-R BT.601, full range; one colour for four points.
function samples(bits: Bits, left: number, top: number, paint: Paint): void {
  const plane = (step: number, of: (r: number, g: number, b: number) => number) => {
    for (let y = top; y < top + unit; y += step) {
      for (let x = left; x < left + unit; x += step) {
        bits.u(8, Math.max(0, Math.min(255, Math.round(of(...paint(x, y))))));
      }
    }
  };
  plane(1, (r, g, b) => 0.299 * r + 0.587 * g + 0.114 * b);
  plane(2, (r, g, b) => 128 - 0.168736 * r - 0.331264 * g + 0.5 * b);
  plane(2, (r, g, b) => 128 + 0.5 * r - 0.418688 * g - 0.081312 * b);
}

/** A unit of the stream: its head, and three bytes that look like a start of one kept apart. */
function nal(type: number, { bytes }: Bits): Buffer {
  const out = [type << 1, 1];
  let zeros = 0;
  for (const byte of bytes) {
    if (zeros >= 2 && byte <= 3) {
      out.push(3);
      zeros = 0;
    }
    out.push(byte);
    zeros = byte === 0 ? zeros + 1 : 0;
  }
  return Buffer.from(out);
}

function u16(value: number): Buffer {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16BE(value);
  return bytes;
}

function u32(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
}
