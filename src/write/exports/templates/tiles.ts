/** Something's length and height, in points. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** A window on the whole that is printed on one sheet. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  /** Of the window, from the top left of the whole. */
  readonly left: number;
  readonly top: number;
}

/** How a whole that is larger than a sheet is parted. */
export interface Tiling {
  /** From left to right, then downwards. */
  readonly tiles: readonly Tile[];
  readonly columns: number;
  readonly rows: number;
  /** Where two sheets are laid together, from the left and from the top of the whole. */
  readonly joinsAcross: readonly number[];
  readonly joinsDown: readonly number[];
}

/**
 * Parts a whole into windows that overlap, so that each join is on both sheets.
 * @param area What a sheet holds. Larger than `overlap` both ways.
 */
export function tiling(whole: Extent, area: Extent, overlap: number): Tiling {
  const across = windows(whole.width, area.width, overlap);
  const down = windows(whole.height, area.height, overlap);
  return {
    tiles: down.flatMap((top, row) => across.map((left, column) => ({ column, row, left, top }))),
    columns: across.length,
    rows: down.length,
    joinsAcross: across.slice(1).map((left) => left + overlap / 2),
    joinsDown: down.slice(1).map((top) => top + overlap / 2),
  };
}

function windows(length: number, room: number, overlap: number): number[] {
  const step = room - overlap;
  const count = length <= room ? 1 : Math.ceil((length - overlap) / step);
  return Array.from({ length: count }, (_, index) => index * step);
}
