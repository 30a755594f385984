// Recordings made for tests: a few hundred bytes of the ISO base media family, without a picture
// that could be played, each with one property that matters.

/** A box: its size, its type, what it holds. */
export function box(type: string, ...holds: readonly (Buffer | string)[]): Buffer {
  const inside = Buffer.concat(
    holds.map((each) => (typeof each === "string" ? Buffer.from(each, "latin1") : each)),
  );
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + inside.length);
  head.write(type, 4, "latin1");
  return Buffer.concat([head, inside]);
}

/** The same with its size in 64 bits. */
export function largeBox(type: string, inside: Buffer, claimed = 16 + inside.length): Buffer {
  const head = Buffer.alloc(16);
  head.writeUInt32BE(1);
  head.write(type, 4, "latin1");
  head.writeBigUInt64BE(BigInt(claimed), 8);
  return Buffer.concat([head, inside]);
}

/** A track of a kind: `vide`, `soun`, `meta` … */
export function track(handler: string): Buffer {
  return box("trak", box("mdia", box("hdlr", "\0\0\0\0\0\0\0\0", handler, "\0".repeat(13))));
}

export const brand = box("ftyp", "isom\0\0\0\0isommp41");

/** A whole recording: a track of pictures and one of sound, and what else its `moov` holds. */
export function recording(...more: readonly Buffer[]): Buffer {
  const moov = box("moov", track("vide"), track("soun"), ...more);
  return Buffer.concat([brand, moov, box("mdat", "coded pictures and sound")]);
}

/** Where a telephone writes the place: in user data, as ISO 6709. The place is invented. */
export function place(): Buffer {
  return box("udta", box("\u00a9xyz", "\0\x12\x15\xc7+00.0000+000.0000/"));
}
