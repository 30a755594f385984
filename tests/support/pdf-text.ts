import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A piece of text on a page and where it stands, in points from the bottom left. */
export interface PlacedText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** The pieces of text of every page, in the order drawn. */
export async function pdfPieces(data: Uint8Array): Promise<PlacedText[][]> {
  const document = await open(data);
  const pages: PlacedText[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(
      items.flatMap((item) =>
        "str" in item && item.str.trim() !== ""
          ? [{ text: item.str, x: item.transform[4], y: item.transform[5] }]
          : [],
      ),
    );
  }
  await document.destroy();
  return pages;
}

/** The text of every page, pieces parted by spaces. */
export async function pdfText(data: Uint8Array): Promise<string[]> {
  return (await pdfPieces(data)).map((pieces) => pieces.map(({ text }) => text).join(" "));
}

/** The document as the reader sees it. It has to be destroyed after use. */
export function open(data: Uint8Array) {
  return getDocument({ data: new Uint8Array(data), verbosity: 0 }).promise;
}
