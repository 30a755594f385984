import { wrapped } from "../reckon/wrapped.ts";
import { caution } from "../record/edition.ts";
import { type Packet, type PacketBlock, packetSigners } from "./packet.ts";

const width = 78;

/**
 * The packet as plain text, to be copied from: "draft" above every part, tables as lists, and
 * the fields for signatures empty. Lines end in CRLF, for the plainest of editors.
 * @param aircraft Designation, serial and registration on one line.
 */
export function packetText({ title, about, parts }: Packet, aircraft: string): string {
  const lines = [
    ...wrapped(`${title}: ${about}`, width),
    aircraft,
    "",
    ...wrapped(caution, width),
    ...parts.flatMap((part) => [
      "",
      "",
      part.title.toUpperCase(),
      "=".repeat(part.title.length),
      ...part.blocks.flatMap(blockLines),
    ]),
    "",
    "SIGNATURES, ALL EMPTY",
    ...packetSigners.flatMap((signer) => [
      "",
      signer.title,
      ...signer.lines.map((label) => `  ${label}: ${"_".repeat(40)}`),
    ]),
  ];
  return `${lines.join("\r\n")}\r\n`;
}

function blockLines(block: PacketBlock): string[] {
  switch (block.kind) {
    case "heading":
      return ["", block.text, "-".repeat(block.text.length)];
    case "text":
      return ["", ...wrapped(block.text, width)];
    case "facts":
      return ["", ...block.facts.flatMap(([label, value]) => pair(label, value, ""))];
    case "table": {
      if (block.rows.length === 0) return ["", `(${block.none})`];
      return block.rows.flatMap((row) => {
        const cells = row.flatMap((value, index) => {
          const label = block.columns[index]?.heading ?? "";
          return value === "" ? [] : label === "" ? [value] : pair(label, value, "");
        });
        return ["", ...cells.map((line, index) => `${index === 0 ? "- " : "  "}${line}`)];
      });
    }
  }
}

function pair(label: string, value: string, before: string): string[] {
  const [first = "", ...rest] = wrapped(`${label}: ${value}`, width - 6);
  return [`${before}${first}`, ...rest.map((line) => `${before}  ${line}`)];
}
