/** Paper that can be had everywhere. */
export const papers = ["A4", "Letter"] as const;
export type Paper = (typeof papers)[number];

/** A rectangle in points, from the top left of the page. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where everything is on a sheet, in points from the top left. */
export interface SheetFormat {
  readonly paper: Paper;
  readonly width: number;
  readonly height: number;
  /** The drawn frame: wide margin on the left for punched holes. */
  readonly frame: Box;
  /** The strip at the top that names the part. */
  readonly band: Box;
  /** What is left for contents, the full width of the frame. */
  readonly body: Box;
  /** The title block at the foot, inside the frame. */
  readonly titleBlock: Box;
}

const millimetre = 72 / 25.4;
const sizes = { A4: [210 * millimetre, 297 * millimetre], Letter: [612, 792] } as const;

/** The sheet on a given paper, upright. */
export function sheetFormat(paper: Paper): SheetFormat {
  const [width, height] = sizes[paper];
  const frame = {
    left: 20 * millimetre,
    top: 10 * millimetre,
    right: width - 10 * millimetre,
    bottom: height - 16 * millimetre,
  };
  const bandBottom = frame.top + 20;
  const blockTop = frame.bottom - 50;
  return {
    paper,
    width,
    height,
    frame,
    band: { ...frame, bottom: bandBottom },
    body: { ...frame, top: bandBottom, bottom: blockTop },
    titleBlock: { ...frame, top: blockTop },
  };
}
