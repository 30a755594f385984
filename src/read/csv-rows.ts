import { CsvError, parse } from "csv-parse/sync";
import type { Span } from "../model/diagnostic.ts";
import type { Faults } from "./faults.ts";
import { SourceFile } from "./source-file.ts";

/** One cell of a table of text. */
export interface CsvCell {
  /** Without the quotes, and without white space around it. */
  readonly text: string;
  readonly span: Span;
}

/** A table of text: its heads, and rows with as many cells. */
export interface CsvTable {
  readonly heads: readonly CsvCell[];
  readonly rows: readonly { readonly cells: readonly CsvCell[]; readonly span: Span }[];
}

/**
 * Reads a CSV file (RFC 4180) whose first line has the names of the columns. Blank lines are
 * passed over; so are rows that have no text in any cell.
 * @param separator What stands between cells, such as `,` or `;`.
 * @param elsewhere What else helps where a row has too many cells or too few.
 * @returns `undefined` with a fault when it cannot be taken apart; rows at fault are left out.
 */
export function csvRows(
  typed: SourceFile,
  separator: string,
  faults: Faults,
  elsewhere: readonly string[] = [],
): CsvTable | undefined {
  // The parser leaves half of a CRLF out of what it says a record is made of. Lines and columns
  // are the same without it.
  const source = new SourceFile(typed.file, typed.text.replaceAll("\r\n", "\n"));
  const records = recordsOf(source, separator, faults);
  if (!records) return undefined;
  let offset = 0;
  const rows = records.map(({ record, raw }) => {
    const blank = /^\n*/.exec(raw)?.[0].length ?? 0;
    const starts = cellStarts(raw, blank, separator);
    const at = offset;
    offset += raw.length;
    return {
      cells: record.map((text, index) => {
        const start = starts[index] ?? blank;
        const length = (starts[index + 1] ?? raw.length + 1) - start - 1;
        return { text: text.trim(), span: source.span(at + start, length) };
      }),
      span: source.span(at + blank, Math.max(1, raw.trim().length)),
    };
  });
  const [head, ...below] = rows;
  if (!head) {
    return faults.add("not-csv", source.span(0, 1), {
      message: "the file is empty",
      help: ["export the table again, with the names of its columns in the first line"],
    });
  }
  const filled = below.filter(({ cells }) => cells.some(({ text }) => text !== ""));
  return {
    heads: head.cells,
    rows: filled.filter(({ cells, span }) => {
      if (cells.length === head.cells.length) return true;
      faults.add("not-csv", span, {
        message: `the row has ${cells.length} cells, and the first line names ${head.cells.length} columns`,
        help: [`put a cell that holds \`${separator}\` in quotes`, ...elsewhere],
      });
      return false;
    }),
  };
}

interface RawRecord {
  readonly record: readonly string[];
  readonly raw: string;
}

function recordsOf(
  source: SourceFile,
  separator: string,
  faults: Faults,
): readonly RawRecord[] | undefined {
  const garbled = source.text.indexOf("\ufffd");
  if (garbled >= 0) {
    return faults.add("not-csv", source.span(garbled, 1), {
      message: "the file is not in UTF-8",
      help: ["export it again as `CSV UTF-8`, so that names keep their letters"],
    });
  }
  try {
    return parse(source.text, {
      delimiter: separator,
      raw: true,
      info: true,
      record_delimiter: "\n",
      relax_column_count: true,
      skip_empty_lines: true,
    }) as unknown as RawRecord[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = Number(error.lines ?? 1);
    const at =
      source.text
        .split("\n")
        .slice(0, line - 1)
        .join("\n").length + (line > 1 ? 1 : 0);
    return faults.add("not-csv", source.span(at, 1), {
      message:
        error.code === "CSV_QUOTE_NOT_CLOSED"
          ? "a quotation mark is opened and not closed"
          : "a quotation mark stands inside a cell",
      help: [
        'put the whole cell in quotes, and write a quotation mark in it twice: `"3/32"" drill"`',
      ],
    });
  }
}

// Where each cell begins in the text of its row.
function cellStarts(raw: string, from: number, separator: string): number[] {
  const starts = [from];
  let quoted = false;
  for (let at = from; at < raw.length; at += 1) {
    if (raw[at] === '"') quoted = !quoted;
    else if (!quoted && raw.startsWith(separator, at)) starts.push(at + separator.length);
  }
  return starts;
}
