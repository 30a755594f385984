import { inflateSync } from "node:zlib";

/**
 * The font inside a WOFF 1.0 file, as the plain sfnt that it was packed from. The PDF library
 * reads WOFF too, but unpacks a table anew for every glyph.
 *
 * Layout: WOFF File Format 1.0, W3C Recommendation 13 December 2012, sections 3 to 5; OpenType
 * table directory as in ISO/IEC 14496-22:2019, 4.5.1.
 *
 * @throws Error when the bytes are not a WOFF 1.0 file.
 */
export function sfntFromWoff(woff: Uint8Array): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (from.getUint32(0) !== 0x774f4646) throw new Error("the file is not a WOFF 1.0 file");
  const count = from.getUint16(12);
  const tables = Array.from({ length: count }, (_, index) => {
    const entry = 44 + index * 20;
    const offset = from.getUint32(entry + 4);
    const packedLength = from.getUint32(entry + 8);
    const length = from.getUint32(entry + 12);
    const packed = woff.subarray(offset, offset + packedLength);
    return {
      tag: from.getUint32(entry),
      checksum: from.getUint32(entry + 16),
      data: packedLength < length ? inflateSync(packed) : packed,
    };
  }).sort((a, b) => a.tag - b.tag);

  const directory = 12 + count * 16;
  const whole = tables.reduce((sum, { data }) => sum + aligned(data.length), directory);
  const bytes = new Uint8Array(whole);
  const to = new DataView(bytes.buffer);
  const power = 2 ** Math.floor(Math.log2(count));
  to.setUint32(0, from.getUint32(4));
  to.setUint16(4, count);
  to.setUint16(6, power * 16);
  to.setUint16(8, Math.log2(power));
  to.setUint16(10, count * 16 - power * 16);
  let at = directory;
  tables.forEach(({ tag, checksum, data }, index) => {
    const entry = 12 + index * 16;
    to.setUint32(entry, tag);
    to.setUint32(entry + 4, checksum);
    to.setUint32(entry + 8, at);
    to.setUint32(entry + 12, data.length);
    bytes.set(data, at);
    at += aligned(data.length);
  });
  return bytes;
}

/** Tables begin at multiples of four bytes. */
function aligned(length: number): number {
  return (length + 3) & ~3;
}
