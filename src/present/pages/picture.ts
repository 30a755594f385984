/** One published size of a photograph. */
export interface PictureFile {
  readonly width: number;
  readonly height: number;
  /** From the site's root, without a leading slash: `photos/1f2e3d-800.avif`. */
  readonly url: string;
}

/** A photograph as published: turned upright, without metadata, in several widths. */
export interface Picture {
  /** Of the largest size. */
  readonly width: number;
  readonly height: number;
  /** Narrowest first, the same widths in both. */
  readonly avif: readonly PictureFile[];
  readonly jpeg: readonly PictureFile[];
}

/** Pictures by the photo's `file`. A photo that could not be read is missing from the map. */
export type Pictures = ReadonlyMap<string, Picture>;
