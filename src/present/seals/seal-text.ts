import { type SealContent, type SealedMinutes, sealPath } from "../../model/seal.ts";

/**
 * A seal as it is written to its file, one thing to a line, LF at the end of each. The lines
 * that are no digests begin with `#`, so that common tools check the rest: `sha256sum -c`.
 * The same content gives the same bytes.
 */
export function sealText(seal: SealContent): string {
  const { month, designation, serial, version, previous, inMonth, toDate } = seal;
  return [
    `# seal: ${month}`,
    `# designation: ${onOneLine(designation)}`,
    `# serial: ${onOneLine(serial)}`,
    `# program: Witness Mark ${version}`,
    `# previous: ${previous ? `${previous.month} ${previous.digest}` : "none"}`,
    `# in the month: ${minutesText(inMonth)}`,
    `# to date: ${minutesText(toDate)}`,
    `# check: sha256sum -c ${sealPath(month)}`,
    ...[...seal.entries, ...seal.photos].map(({ digest, path }) => `${digest}  ${path}`),
    "",
  ].join("\n");
}

function minutesText({ build, apart }: SealedMinutes): string {
  return `${build} minutes of building, ${apart} of study and shop`;
}

function onOneLine(text: string): string {
  return text.trim().replace(/\s+/g, " ");
}
