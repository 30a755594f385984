// Makes the four font files of the site from the full ones, and puts their licences beside
// them. Run by `npm run fonts` after a change to `characters`; the results are kept in git.
//
// Hinting is dropped and only Latin-1 and a few signs are kept: 46 kB in all, where the full
// files are 76 kB. Sources: B612 and Barlow Condensed from @fontsource, OFL-1.1.
// Figures are set in B612, whose digits are all of one width: B612 Mono sets the colon and the
// point to the left of their cells, so that 2:45 reads as "2: 45".

import { readFile, writeFile } from "node:fs/promises";
import subsetFont from "subset-font";

const range = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index)).join("");

const characters = `${range(0x20, 0x7e)}${range(0xa0, 0xff)}–—‘’“”•…′″−↑↓`;

const faces = [
  { package: "b612", file: "b612-latin-400-normal", to: "b612-400" },
  { package: "b612", file: "b612-latin-700-normal", to: "b612-700" },
  { package: "b612", file: "b612-latin-400-italic", to: "b612-400-italic" },
  {
    package: "barlow-condensed",
    file: "barlow-condensed-latin-600-normal",
    to: "barlow-condensed-600",
  },
] as const;

const sources = new URL("../../node_modules/@fontsource/", import.meta.url);
const target = new URL("../assets/fonts/", import.meta.url);

let total = 0;
for (const face of faces) {
  const source = await readFile(new URL(`${face.package}/files/${face.file}.woff2`, sources));
  const made = await subsetFont(source, characters, {
    targetFormat: "woff2",
    noHinting: true,
    keepFeatures: ["kern", "tnum", "lnum", "frac"],
  });
  total += made.length;
  await writeFile(new URL(`${face.to}.woff2`, target), made);
  process.stdout.write(`${face.to}.woff2  ${made.length} bytes\n`);
}
for (const name of new Set(faces.map((face) => face.package))) {
  const licence = await readFile(new URL(`${name}/LICENSE`, sources), "utf8");
  // The packages list every file they hold on one line; only the first copyright is ours.
  await writeFile(
    new URL(`${name}-OFL.txt`, target),
    licence.replace(/^(Copyright \d+ .*?\)).*$/m, "$1"),
  );
}
process.stdout.write(`total  ${total} bytes\n`);
if (total > 50_000) {
  process.stderr.write("fonts are over 50,000 bytes\n");
  process.exitCode = 1;
}
