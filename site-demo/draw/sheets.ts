import { lettered, letteredWidth } from "./lettering.ts";
import type { Random } from "./random.ts";

/** A sheet's size in drawing units. */
export const sheetSize = { width: 1700, height: 1100 } as const;

/**
 * A sheet of drawings as SVG: border, views of a part that suits the sheet's
 * number, dimension lines, notes nobody can read, and a title block with the
 * number and the revision.
 *
 * @param numbered When false, the number is a scrawl like the rest.
 */
export function sheetOf(sheet: string, revision: string, random: Random, numbered = true): string {
  const ink = "#23303f";
  const { width, height } = sheetSize;
  let svg = `<rect x="40" y="40" width="${width - 80}" height="${height - 80}" fill="none" stroke="${ink}" stroke-width="5"/>`;
  svg += `<rect x="26" y="26" width="${width - 52}" height="${height - 52}" fill="none" stroke="${ink}" stroke-width="1.5"/>`;
  for (let i = 1; i < 8; i++)
    svg += `<path d="M${26 + ((width - 52) * i) / 8} 26v14M${26 + ((width - 52) * i) / 8} ${height - 40}v14" stroke="${ink}" stroke-width="2"/>`;
  svg += views(sheet.slice(0, 2), random, ink);
  // Notes.
  for (let row = 0; row < 6; row++)
    svg += scrawl(80, 860 + row * 30, random.between(300, 460), random, ink);
  // Title block.
  const [bx, by, bw, bh] = [1130, 850, 530, 210];
  svg += `<rect x="${bx}" y="${by}" width="${bw}" height="${bh}" fill="none" stroke="${ink}" stroke-width="4"/>`;
  svg += `<path d="M${bx} ${by + 70}h${bw}M${bx} ${by + 130}h${bw}M${bx + 380} ${by + 70}v140M${bx + 190} ${by + 130}v80" stroke="${ink}" stroke-width="2.5" fill="none"/>`;
  svg += scrawl(bx + 24, by + 40, 300, random, ink) + scrawl(bx + 24, by + 104, 220, random, ink);
  svg += numbered
    ? lettered(sheet, bx + 22, by + 148, 44, { color: ink, pen: 0.13, slant: 0.12 })
    : scrawl(bx + 22, by + 180, 150, random, ink);
  svg += lettered("rev", bx + 396, by + 84, 26, { color: ink, pen: 0.1, slant: 0.12 });
  const letter = revision.slice(0, 2);
  svg += lettered(letter, bx + 396 + 57 - letteredWidth(letter, 58) / 2, by + 142, 58, {
    color: "#a3201a",
    pen: 0.14,
  });
  svg += `<path d="M${bx - 64} ${by + 180}l34 -58l34 58z" fill="none" stroke="#a3201a" stroke-width="4"/>`;
  svg += lettered(letter.slice(0, 1), bx - 42, by + 152, 20, { color: "#a3201a", pen: 0.16 });
  return svg;
}

/** A line of writing too small to read. */
export function scrawl(x: number, y: number, width: number, random: Random, ink: string): string {
  let d = "";
  for (let at = x; at < x + width; ) {
    const word = random.between(22, 70);
    d += `M${at.toFixed(1)} ${y}`;
    for (let k = 0; k < word; k += 9)
      d += `l4 ${(-random.between(4, 13)).toFixed(1)}l4 ${random.between(4, 13).toFixed(1)}`;
    at += word + 16;
  }
  return `<path d="${d}" fill="none" stroke="${ink}" stroke-width="2.2" stroke-linejoin="round" stroke-linecap="round" opacity="0.85"/>`;
}

function dimension(x0: number, y: number, x1: number, random: Random, ink: string): string {
  const value = random.between(0.5, 48).toFixed(2);
  const middle = (x0 + x1) / 2;
  const half = letteredWidth(value, 20) / 2 + 10;
  return (
    `<path d="M${x0} ${y - 26}v36M${x1} ${y - 26}v36M${x0} ${y}H${middle - half}M${middle + half} ${y}H${x1}" stroke="${ink}" stroke-width="1.8"/>` +
    `<path d="M${x0} ${y}l16 -5v10zM${x1} ${y}l-16 -5v10z" fill="${ink}"/>` +
    lettered(value, middle - half + 10, y - 10, 20, { color: ink, pen: 0.11, slant: 0.12 })
  );
}

function views(kind: string, random: Random, ink: string): string {
  const line = (d: string, w = 3.4, dash = "") =>
    `<path d="${d}" fill="none" stroke="${ink}" stroke-width="${w}"${dash ? ` stroke-dasharray="${dash}"` : ""} stroke-linejoin="round"/>`;
  const hole = (x: number, y: number, r: number) =>
    `<circle cx="${x}" cy="${y}" r="${r}" fill="none" stroke="${ink}" stroke-width="2.6"/>` +
    line(`M${x - r - 9} ${y}h${2 * r + 18}M${x} ${y - r - 9}v${2 * r + 18}`, 1.2, "12 4 3 4");
  let svg = "";
  switch (kind) {
    case "WR":
    case "WT": {
      const top = "M150 470 C190 330 420 270 700 300 C980 330 1260 420 1480 500";
      const low = "C1260 540 980 560 700 560 C420 560 190 560 150 470 Z";
      svg += line(`${top} ${low}`);
      svg += line(
        "M172 470 C210 350 430 292 700 322 C980 352 1240 430 1440 500 C1240 520 980 540 700 540 C430 540 210 545 172 470Z",
        1.4,
        "10 6",
      );
      for (const [x, y, r] of [
        [360, 432, 74],
        [590, 436, 92],
        [830, 446, 76],
        [1040, 468, 54],
      ] as const)
        svg += hole(x, y, r);
      svg += line("M470 250V600M1180 360V580", 1.6, "26 6 6 6");
      svg +=
        dimension(150, 650, 470, random, ink) +
        dimension(470, 650, 1180, random, ink) +
        dimension(1180, 650, 1480, random, ink);
      if (kind === "WT") {
        svg += `<circle cx="640" cy="340" r="30" fill="none" stroke="${ink}" stroke-width="4"/>`;
        svg += line("M640 340L760 180H900", 1.8) + scrawl(910, 186, 180, random, ink);
      }
      break;
    }
    case "EL":
    case "RD":
    case "VF":
    case "WA":
    case "WF":
    case "WK": {
      svg += line("M180 190 L1420 260 L1360 640 L240 560 Z");
      svg += line("M186 260 L1412 320", 2, "14 7") + line("M220 470 L1376 560", 2, "14 7");
      for (let i = 0; i <= 8; i++) {
        const x = 190 + i * 152;
        svg += line(
          `M${x} ${192 + i * 8.6}L${x + (240 - 180) * (1 - i / 8) - 6} ${560 + i * 10}`,
          1.8,
        );
      }
      for (let i = 0; i < 46; i++)
        svg += `<circle cx="${206 + i * 26.6}" cy="${272 + i * 1.32}" r="3.4" fill="none" stroke="${ink}" stroke-width="1.6"/>`;
      svg += dimension(180, 720, 780, random, ink) + dimension(780, 720, 1420, random, ink);
      svg += line("M820 330L960 120H1130", 1.8) + scrawl(1140, 126, 200, random, ink);
      break;
    }
    case "FU": {
      svg += line(
        "M520 150 H1080 Q1180 150 1180 260 V620 Q1180 700 1090 700 H510 Q420 700 420 620 V260 Q420 150 520 150Z",
      );
      svg += line(
        "M540 180 H1060 Q1148 180 1148 270 V610 Q1148 670 1080 670 H520 Q452 670 452 610 V270 Q452 180 540 180Z",
        1.6,
      );
      svg += line("M620 180V670M980 180V670M452 420H1148", 2.2);
      for (const [x, y] of [
        [520, 250],
        [1080, 250],
        [520, 600],
        [1080, 600],
      ] as const)
        svg += hole(x, y, 26);
      svg += hole(800, 300, 60);
      svg += dimension(420, 780, 1180, random, ink);
      svg += line("M1080 250L1300 170H1420", 1.8) + scrawl(1300, 160, 150, random, ink);
      break;
    }
    default: {
      // A spar: long channel in plan and section.
      svg += line("M130 220H1560V360H130Z") + line("M130 240H1560M130 340H1560", 1.6);
      for (const x of [300, 520, 760, 1000, 1230, 1430]) svg += hole(x, 290, 34);
      for (let i = 0; i < 58; i++)
        svg += `<circle cx="${146 + i * 24.4}" cy="230" r="3.4" fill="none" stroke="${ink}" stroke-width="1.6"/><circle cx="${146 + i * 24.4}" cy="350" r="3.4" fill="none" stroke="${ink}" stroke-width="1.6"/>`;
      svg += line("M560 200H1100V380H560Z", 2.2, "16 7");
      svg +=
        dimension(130, 440, 560, random, ink) +
        dimension(560, 440, 1100, random, ink) +
        dimension(1100, 440, 1560, random, ink);
      svg += line("M300 560H430V590H330V760H430V790H300Z");
      svg += line("M330 600L380 550M330 640L400 570M300 690L330 660M300 740L330 710", 1.2);
      svg += line("M640 560 q70 -40 140 0 l40 60 v120 h-220 v-120z") + hole(710, 650, 40);
      svg += dimension(600, 810, 820, random, ink);
      svg +=
        line("M900 600h180v150h-180z") +
        line("M930 600v150M1050 600v150", 1.6) +
        hole(990, 675, 20);
    }
  }
  return svg;
}
