/**
 * The size of a file in words, in kilobytes of a thousand bytes as file listings count them,
 * with one digit behind the point.
 * @example fileSize(12_345) // "12.3 kB"
 */
export function fileSize(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`;
  return bytes < 999_950 ? `${(bytes / 1e3).toFixed(1)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
