import { type PacketBlock, packetOf, packetSigners } from "../../../present/alteration/packet.ts";
import { caution, type EditedAnalysis } from "../../../present/record/edition.ts";
import type { Imprint } from "../logbook/title-sheet.ts";
import { aircraftText, grouped } from "../logbook/wording.ts";
import { Pages } from "../paper/pages.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import { sheetFormat } from "../paper/sheet-format.ts";
import { signatureBoxes } from "../paper/signature-boxes.ts";
import { planTitleBlock, type TitleBlock } from "../paper/title-block.ts";
import { witnessMark } from "../paper/witness-mark.ts";

const signatures = "Draft: signatures, all empty";

/**
 * The packet of an alteration, to be printed: each part begins on a sheet of its own, and every
 * sheet says that it is a draft. The boxes for signatures are empty. The same record gives the
 * same bytes.
 * @returns `undefined` for an aircraft that is built.
 */
export async function packetPdf(
  edited: EditedAnalysis,
  imprint: Imprint,
): Promise<Uint8Array | undefined> {
  const packet = packetOf(edited);
  if (!packet) return undefined;
  const { analysis, edition } = edited;
  const { project } = analysis.build;
  const format = sheetFormat(imprint.paper);
  const { setter, print } = await beginPdf(
    {
      title: `${packet.title}, ${aircraftText(edited)}`,
      subject: `${project.title}. ${packet.about}`,
      asOf: analysis.asOf.date,
      program: `Witness Mark ${imprint.programVersion}`,
    },
    format,
  );
  const [front, ...rest] = packet.parts;
  const pages = new Pages(setter, format, front?.title ?? packet.title);
  witnessMark(pages.sheet, pages.right - 44, pages.y + 52);
  pages.space(10);
  pages.heading(packet.title, 60, 30);
  pages.paragraph(packet.about, { face: "bold", size: 12 }, pages.right - 96);
  pages.space(4);
  for (const block of front?.blocks ?? []) placeBlock(pages, block);
  for (const { title, blocks } of rest) {
    pages.part(title);
    pages.space(6);
    for (const block of blocks) placeBlock(pages, block);
  }
  pages.part(signatures);
  signatureBoxes(pages, format, setter, packetSigners);

  const block: TitleBlock = {
    aircraft: aircraftText(edited),
    project: project.title,
    book: `DRAFT, not signed: alteration packet, ${edition} edition`,
    edition,
    asOf: analysis.asOf.date,
    digest: grouped(imprint.recordDigest.slice(0, 16), 4),
    caution,
    figure: { label: "Standing", value: "DRAFT" },
  };
  pages.sheets.forEach((sheet, index) => {
    planTitleBlock(sheet, index + 1, pages.sheets.length, block, format, setter);
  });
  return print(pages.sheets);
}

function placeBlock(pages: Pages, block: PacketBlock): void {
  switch (block.kind) {
    case "heading":
      pages.heading(block.text, 80);
      return;
    case "text":
      pages.paragraph(block.text);
      return;
    case "facts":
      pages.facts(block.title, block.facts, 160);
      return;
    case "table": {
      const whole = block.columns.reduce((sum, { share }) => sum + share, 0);
      pages.table({
        title: block.title,
        columns: block.columns.map(({ heading, share, align }) => ({
          heading,
          width: (pages.width * share) / whole,
          align: align ?? "left",
          face: align ? "text" : "small",
        })),
        rows: block.rows.map((row) => ({ cells: row.map((text) => ({ text })) })),
        filled: false,
        none: block.none,
      });
    }
  }
}
