import type { Pages } from "./pages.ts";
import { tagged } from "./sheet.ts";
import type { Typesetter } from "./typesetter.ts";

const height = 34;

/**
 * One line of empty fields, each with its label in the corner, to be filled in by hand if at
 * all. The program writes nothing into them.
 */
export function signatureStrip(
  pages: Pages,
  setter: Typesetter,
  fields: readonly { readonly label: string; readonly share: number }[],
): void {
  pages.room(height + 10);
  pages.space(8);
  const { left, right } = pages.column;
  const top = pages.y;
  const whole = fields.reduce((sum, { share }) => sum + share, 0);
  pages.sheet.around({ left, top, right, bottom: top + height }, 0.6);
  let x = left;
  for (const { label, share } of fields) {
    if (x > left) pages.sheet.down(x, top, top + height, 0.4);
    const line = setter.line(label, { face: "small", size: 6.8, ink: "second" });
    pages.sheet.marks.push(tagged("P", [{ line, x: x + 4, y: top + 9 }]));
    x += ((right - left) * share) / whole;
  }
  pages.space(height + 2);
}
