import type { InstrumentState, LotState } from "../../../compute/analysis.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn, PaperRow } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf } from "./wording.ts";

/** Lots and where they were used, instruments and what they were calibrated by. */
export function lotsPages(pages: Pages, context: BookContext): void {
  const { lots, instruments, asOf } = context.record.analysis;
  pages.heading("Lots", 100);
  pages.paragraph(
    `Batches of what was used up. Expiry is the last day of use, inclusive, as known on ${asOf.date}.`,
  );
  pages.table({
    title: "Lots",
    columns: [
      words("Lot", pages.width - 58 - 52 - 52 - 110 - 100),
      words("Material", 58),
      { heading: "Made", width: 52, align: "left", face: "text" },
      { heading: "Expiry", width: 52, align: "left", face: "text" },
      words("Extensions", 110),
      { heading: "Used on pages", width: 100, align: "left", face: "text" },
    ],
    rows: lots.map((state) => lotRow(state, context)),
    filled: false,
    none: "no lots",
  });
  pages.heading("Instruments", 100);
  pages.paragraph(
    `What was measured with. U is the expanded uncertainty, k its coverage factor. An instrument without a calibration is not kept under one.`,
  );
  pages.table({
    title: "Instruments",
    columns: [
      words("Instrument", 118),
      { heading: "Resolution", width: 62, align: "left", face: "text" },
      { heading: "Uncertainty", width: 74, align: "left", face: "text" },
      words("Calibrations", pages.width - 118 - 62 - 74 - 48 - 76),
      { heading: "Readings", width: 48, align: "right", face: "text" },
      { heading: "On pages", width: 76, align: "left", face: "text" },
    ],
    rows: instruments.map((state) => instrumentRow(state, context)),
    filled: false,
    none: "no instruments",
  });
}

function lotRow({ lot, expiry, expired, uses }: LotState, context: BookContext): PaperRow {
  const { asOf } = context.record.analysis;
  return {
    cells: [
      { text: lot.title, notes: [lot.id] },
      { text: lot.material },
      { text: lot.made ?? "–" },
      {
        text: expiry ?? "none",
        red: expired,
        notes: [
          ...(expired ? [`EXPIRED on ${asOf.date}`] : []),
          ...(expiry !== lot.expires && lot.expires !== undefined ? [`marked ${lot.expires}`] : []),
        ],
      },
      {
        text:
          lot.extensions.map(({ on, until, why }) => `${on}: until ${until}, ${why}`).join("; ") ||
          "–",
      },
      {
        text: pagesOf(
          uses.map(({ date }) => date),
          context,
        ),
        notes: [`${uses.length} ${uses.length === 1 ? "use" : "uses"}`],
      },
    ],
  };
}

function instrumentRow(
  { instrument, calibration, lapsed, readings }: InstrumentState,
  context: BookContext,
): PaperRow {
  const { asOf } = context.record.analysis;
  const { calibrations } = instrument;
  return {
    cells: [
      { text: instrument.title, notes: [instrument.id] },
      { text: instrument.resolution?.typed ?? "–" },
      {
        text: instrument.uncertainty
          ? `U ${instrument.uncertainty.typed} (k = ${instrument.coverage})`
          : "not known",
      },
      {
        text:
          calibrations
            .map(
              ({ on, due, by }) =>
                `${on}${by === undefined ? "" : ` by ${by}`}${due === undefined ? "" : `, due ${due}`}`,
            )
            .join("; ") || "–",
        red: lapsed,
        notes: lapsed
          ? [calibration ? `LAPSED on ${asOf.date}` : `NOT CALIBRATED on ${asOf.date}`]
          : [],
      },
      { text: `${readings.length || "–"}` },
      {
        text: pagesOf(
          readings.map(({ date }) => date),
          context,
        ),
      },
    ],
  };
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}
