import type { LaidOut } from "../../compute/laid-out.ts";
import type { Row } from "../../compute/reckon/lay-row.ts";
import type { CutOut, FastenerRow, Layout } from "../../model/layout.ts";
import { dateText } from "../format/dates.ts";
import { lengthText } from "../format/layout-lengths.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { layoutSummary } from "../pages/views/layout-summary.ts";
import { caution } from "../record/edition.ts";

/** What is drawn at full size. */
export type TemplatePiece =
  | { readonly piece: FastenerRow; readonly row: Row }
  | { readonly piece: CutOut; readonly row?: never };

/** A layout as a sheet to be printed at full size, laid on the metal and marked through. */
export type Template = TemplatePiece & {
  readonly layout: Pick<Layout, "date" | "number" | "title">;
  /** The aircraft: designation, serial, registration. */
  readonly aircraft: string;
  readonly project: string;
  /** `layout 1 of 14 March 2026`. */
  readonly from: string;
  /** Step, drawing and thickness, as far as they are said. */
  readonly of: string;
  /** What it is, in a sentence. */
  readonly summary: string;
  /** What to measure once the sheets are taped together: `22.000 in from end to end`. */
  readonly whole: string;
  readonly caution: string;
};

/** The templates of every layout that the edition shows and that can be laid out, oldest first. */
export function templatesOf({ analysis, showsDay }: RecordIndex): readonly Template[] {
  const { designation, serial, registration, title } = analysis.build.project;
  const aircraft = `${designation}, serial ${serial}${registration === undefined ? "" : `, ${registration}`}`;
  return analysis.layouts
    .filter(({ layout }) => showsDay(layout.date))
    .flatMap((laidOut) => {
      const piece = pieceOf(laidOut);
      if (!piece) return [];
      const { layout } = laidOut;
      const { date, number, step, drawing, sheet } = layout;
      const words = [
        ...(step === undefined ? [] : [`step ${step}`]),
        ...(drawing === undefined ? [] : [`drawing ${drawing}`]),
        ...(sheet ? [`${sheet.typed} thick`] : []),
      ];
      return [
        {
          ...piece,
          layout: { date, number, title: layout.title },
          aircraft,
          project: title,
          from: `layout ${number} of ${dateText(date)}`,
          of: words.join(", ") || "no step or drawing named",
          summary: layoutSummary(laidOut),
          whole: wholeText(piece),
          caution,
        },
      ];
    });
}

function pieceOf({ layout: { piece }, row }: LaidOut): TemplatePiece | undefined {
  if (piece.kind === "cut-out") return { piece };
  return row?.ok ? { piece, row } : undefined;
}

function wholeText({ piece, row }: TemplatePiece): string {
  if (!row) return `${piece.length.typed} over all`;
  const { unit } = piece.length.length;
  const [first, last] = [row.positions[0], row.positions.at(-1)];
  const between =
    first && last && row.positions.length > 1
      ? `, ${lengthText(last.sub(first), unit.symbol)} from the first mark to the last`
      : "";
  return `${piece.length.typed} from end to end${between}`;
}
