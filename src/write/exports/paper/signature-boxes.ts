import type { Pages } from "./pages.ts";
import { tagged } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import type { Typesetter } from "./typesetter.ts";

/** Who signs, and what is asked of them. */
export interface Signer {
  readonly title: string;
  readonly lines: readonly string[];
}

const usualSigners: readonly Signer[] = [
  { title: "Builder", lines: ["Name", "Signature", "Date"] },
  {
    title: "Looked at by",
    lines: ["Name and standing", "Number and kind of licence, if any", "Signature", "Date"],
  },
];

const lineHeight = 34;
const stampHeight = 120;

/** Empty boxes to be filled in by hand: one for each signer, and room for a stamp. */
export function signatureBoxes(
  pages: Pages,
  format: SheetFormat,
  setter: Typesetter,
  signers: readonly Signer[] = usualSigners,
): void {
  pages.heading("Signatures and stamp, left empty by the program", 100);
  pages.paragraph(
    "Everything below is empty and is filled in by hand, if at all. The program signs nothing, dates no signature and certifies nothing. What a signature here stands for is for those who sign to say.",
  );
  pages.space(8);
  const left = format.body.left + 14;
  const right = format.body.right - 14;
  const label = (text: string, x: number, y: number, face: "caps" | "small", size: number) => {
    const line = setter.line(text, { face, size });
    pages.sheet.marks.push(tagged("P", [{ line, x, y }]));
  };
  for (const { title, lines } of signers) {
    const height = 20 + lines.length * lineHeight;
    pages.room(height + 12);
    const top = pages.y;
    pages.sheet.around({ left, top, right, bottom: top + height }, 0.8);
    label(title, left + 8, top + 14, "caps", 10);
    lines.forEach((text, index) => {
      const y = top + 20 + index * lineHeight;
      pages.sheet.across(left, right, y, 0.4);
      label(text, left + 8, y + 10, "small", 7.6);
    });
    pages.space(height + 12);
  }
  pages.room(stampHeight + 12);
  const top = pages.y;
  pages.sheet.around({ left, top, right: left + 200, bottom: top + stampHeight }, 0.8);
  label("Stamp", left + 8, top + 14, "caps", 10);
  label("empty", left + 8, top + 24, "small", 7.6);
  pages.space(stampHeight + 12);
}
