declare module "subset-font" {
  /** Keeps only the glyphs that `text` needs. */
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      targetFormat: "woff2";
      noHinting?: boolean;
      keepFeatures?: readonly string[];
    },
  ): Promise<Uint8Array>;
}
