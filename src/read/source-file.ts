import type { Span } from "../model/diagnostic.ts";

/** A file's text, able to say on which line and in which column an offset is. */
export class SourceFile {
  readonly #lineStarts: number[];

  /**
   * @param file Path as it is to be printed.
   * @param text Decoded text; a byte order mark is taken off before.
   */
  constructor(
    readonly file: string,
    readonly text: string,
  ) {
    this.#lineStarts = [0];
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) {
      this.#lineStarts.push(at + 1);
    }
  }

  get lineCount(): number {
    return this.#lineStarts.length;
  }

  /**
   * The place of some text in this file. What runs over a line end is cut there.
   * @param offset Counted from 0 in UTF-16 code units, as JavaScript does.
   */
  span(offset: number, length: number): Span {
    const at = Math.max(0, Math.min(offset, this.text.length));
    const line = this.#lineAt(at);
    const start = this.#lineStarts[line] ?? 0;
    const text = this.#lineText(line);
    const column = Math.min(at - start, text.length);
    return {
      file: this.file,
      line: line + 1,
      column: column + 1,
      length: Math.max(1, Math.min(length, text.length - column)),
      text,
    };
  }

  #lineText(line: number): string {
    const start = this.#lineStarts[line] ?? 0;
    const end = this.#lineStarts[line + 1] ?? this.text.length + 1;
    return this.text.slice(start, end - 1).replace(/\r$/, "");
  }

  #lineAt(offset: number): number {
    let low = 0;
    let high = this.#lineStarts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#lineStarts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
