import type { Sheet } from "./sheet.ts";

/**
 * A nut seen from above with a stripe of paint across it and onto the part: the mark this
 * program is named for. Decoration, read out by nobody.
 *
 * @param x Centre, in points from the left.
 * @param y Centre, in points from the top.
 */
export function witnessMark(sheet: Sheet, x: number, y: number): void {
  const corners = Array.from({ length: 6 }, (_, index) => {
    const angle = (index * Math.PI) / 3 + Math.PI / 12;
    return [x + 24 * Math.cos(angle), y + 24 * Math.sin(angle)] as const;
  });
  sheet.marks.push(({ doc }) => {
    doc.markContent("Artifact", { type: "Layout" });
    doc.lineWidth(1.4).circle(x, y, 32).stroke();
    doc.polygon(...corners.map(([cornerX, cornerY]) => [cornerX, cornerY])).stroke();
    doc.circle(x, y, 13).stroke();
    doc.lineWidth(0.6).circle(x, y, 10).stroke();
    doc
      .lineWidth(5)
      .moveTo(x - 4, y + 6)
      .lineTo(x + 33, y - 34)
      .stroke();
    doc.endMarkedContent();
  });
}
