import path from "node:path";
import { type Badge, badgeSize, badgeUrl } from "../../present/share/badge.ts";
import { type Lettering, lettering } from "../lettering.ts";
import { writeUnflushed } from "../output.ts";

/**
 * Writes the badge into a site.
 * @throws MachineProblem when the site cannot be written.
 */
export async function writeBadge(folder: string, badge: Badge): Promise<void> {
  await writeUnflushed(path.join(folder, badgeUrl), badgeDrawing(badge, await lettering()));
}

// Light on any ground, dark pages too: the sheet is opaque. As in layouts/assets/tokens.css.
const colours = {
  vellum: "#fffdf7",
  ink: "#16222e",
  second: "#46535f",
  line: "#76828c",
  dye: "#21409a",
  redline: "#a3201a",
} as const;

const { width, height } = badgeSize;
const left = 86;

/** The badge as SVG: shapes alone, its words in `title` and `desc`, nothing from elsewhere. */
export function badgeDrawing(badge: Badge, { path: outline, widthOf }: Lettering): string {
  const room = width - left - 14;
  const letters = (words: string, face: "small" | "bold", size: number, y: number, x = left) =>
    outline(words, { face, size, x, y, width: room - (x - left) });
  const figureWidth = widthOf(badge.figure, "bold", 26);
  const ruler = `M${left} 60H${width - 14}M${left} 56v8M${width - 14} 56v8`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="t d">`,
    `<title id="t">${escaped(badge.title)}</title><desc id="d">${escaped(badge.says)}</desc>`,
    `<path d="M0 0h${width}v${height}H0z" fill="${colours.vellum}"/>`,
    `<path d="M.5 .5h${width - 1}v${height - 1}H.5z" fill="none" stroke="${colours.line}"/>`,
    `<path d="M4 4h${width - 8}v${height - 8}H4zM74 4v${height - 8}" fill="none" stroke="${colours.ink}" stroke-width="1.5"/>`,
    `<path d="M39 18l21 12v24l-21 12l-21 -12v-24zM27 42a12 12 0 1 0 24 0a12 12 0 1 0 -24 0" fill="none" stroke="${colours.ink}" stroke-width="2"/>`,
    `<path d="M46 12L32 72" stroke="${colours.redline}" stroke-width="6"/>`,
    `<path d="${letters(badge.over, "small", 13, 21)}" fill="${colours.second}"/>`,
    `<path d="${letters(badge.figure, "bold", 26, 49)}" fill="${colours.ink}"/>`,
    `<path d="${letters(badge.unit, "small", 16, 49, left + figureWidth + 7)}" fill="${colours.ink}"/>`,
    `<path d="${ruler}" fill="none" stroke="${colours.dye}"/>`,
    `<path d="${letters(badge.below, "small", 12.5, 76)}" fill="${colours.second}"/>`,
    "</svg>\n",
  ].join("");
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
