/** One piece of a typed list, less the blanks around it. */
export interface ListItem {
  readonly text: string;
  /** Where it begins in the whole text; the first character is 0. */
  readonly offset: number;
}

/**
 * Splits a typed list at its commas and semicolons. A comma between two digits does not
 * separate: it may be a decimal comma, which reading the number then refuses.
 * @returns One piece at least; a piece may be empty.
 * @example listItems("a, b") // pieces "a" at 0 and "b" at 3
 */
export function listItems(text: string): readonly ListItem[] {
  const pieces: ListItem[] = [];
  let from = 0;
  for (const { 0: mark, index } of text.matchAll(/;|,(?!(?<=\d,)\d)/g)) {
    pieces.push(piece(text.slice(from, index), from));
    from = index + mark.length;
  }
  pieces.push(piece(text.slice(from), from));
  return pieces;
}

function piece(text: string, begin: number): ListItem {
  const offset = begin + text.length - text.trimStart().length;
  return { text: text.trim(), offset: text.trim() ? offset : begin };
}
