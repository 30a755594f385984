import { createHash } from "node:crypto";
import { eachChunk } from "./files.ts";

/**
 * SHA-256 (FIPS 180-4) of some bytes or of a text's UTF-8.
 * @returns 64 hexadecimal digits in lower case.
 */
export function digestOf(data: string | Uint8Array): string {
  return createHash("sha256").update(data).digest("hex");
}

/** The same of a file's bytes, without holding all of them. Throws as `node:fs` does. */
export function fileDigest(absolute: string): string {
  const hash = createHash("sha256");
  eachChunk(absolute, (chunk) => hash.update(chunk));
  return hash.digest("hex");
}
