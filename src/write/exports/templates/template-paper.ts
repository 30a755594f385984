import type { TemplatePaper } from "../../../present/pages/template-files.ts";
import { type Box, type SheetFormat, sheetFormat } from "../paper/sheet-format.ts";

/** Points in a millimetre. */
export const millimetre = 72 / 25.4;

/** Where everything is on a sheet of a template, in points from the top left. */
export interface TemplateFormat {
  readonly format: SheetFormat;
  readonly frame: Box;
  /** What the part is drawn in, at full size. */
  readonly area: Box;
  /** Beside it, for the bar that stands. */
  readonly upright: Box;
  /** At the foot: the bars that lie. */
  readonly bars: Box;
  /** At the foot, beside them. */
  readonly block: Box;
}

const margin = 8 * millimetre;
const foot = 31 * millimetre;
const side = 11 * millimetre;
const barWidth = 116 * millimetre;

/** The sheet on a given paper, upright or lying. */
export function templateFormat(paper: TemplatePaper, lying: boolean): TemplateFormat {
  const upright = sheetFormat(paper);
  const format = lying ? { ...upright, width: upright.height, height: upright.width } : upright;
  const frame = {
    left: margin,
    top: margin,
    right: format.width - margin,
    bottom: format.height - margin,
  };
  const floor = frame.bottom - foot;
  return {
    format,
    frame,
    area: { ...frame, left: frame.left + side, bottom: floor },
    upright: { ...frame, right: frame.left + side, bottom: floor },
    bars: { ...frame, top: floor, right: frame.left + barWidth },
    block: { ...frame, top: floor, left: frame.left + barWidth },
  };
}
