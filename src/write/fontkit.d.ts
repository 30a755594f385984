declare module "fontkit" {
  /** The part of a font that is used; the package brings no types. */
  export interface Font {
    readonly unitsPerEm: number;
    layout(text: string): {
      readonly glyphs: readonly { readonly path: { readonly commands: readonly PathCommand[] } }[];
      readonly positions: readonly { readonly xAdvance: number }[];
    };
  }
  export interface PathCommand {
    readonly command: "moveTo" | "lineTo" | "quadraticCurveTo" | "bezierCurveTo" | "closePath";
    /** Pairs of x and y, y going up. */
    readonly args: readonly number[];
  }
  export function create(bytes: Uint8Array): Font;
}
