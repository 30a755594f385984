import { hasCharacter, type TypefaceFile } from "./typefaces.ts";

// What journals contain and the embedded faces lack, spelled with what they have.
const spelled: Readonly<Record<string, string>> = {
  "≤": "<=",
  "≥": ">=",
  "≠": "!=",
  "≈": "~",
  "→": "->",
  "←": "<-",
  "↔": "<->",
  "↑": "[up]",
  "↓": "[down]",
  "⌀": "dia. ",
  "∅": "dia. ",
  "✓": "[check]",
  "✔": "[check]",
  "✗": "[cross]",
  "✘": "[cross]",
  "\u2010": "-",
  "\u2011": "-",
  "\u2012": "–",
  "\u2015": "—",
  "\u2044": "/",
  "\u03bc": "µ",
  Ω: "ohm",
  π: "pi",
  Δ: "delta ",
};

const invisible = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;

/**
 * Text as the paper can print it: white space and line ends as single spaces, and every
 * character that no face has spelled out, at the last as `[U+0416]`. Nothing is dropped but
 * invisible characters.
 *
 * @param files The files of a face, in order of preference.
 */
export function printable(text: string, files: readonly TypefaceFile[]): string {
  const even = text.normalize("NFC").replace(invisible, "").replace(/\s+/gu, " ");
  // Most text is plain; it need not be looked at letter by letter.
  if (/^[ -~]*$/.test(even)) return even;
  return Array.from(even, (character) => printableCharacter(character, files)).join("");
}

function printableCharacter(character: string, files: readonly TypefaceFile[]): string {
  if (isCovered(character, files)) return character;
  const other = spelled[character];
  if (other !== undefined) return other;
  const plain = character.normalize("NFKC").replaceAll("\u2044", "/");
  if (plain !== character && isCovered(plain, files)) return plain;
  const code = character.codePointAt(0) ?? 0;
  return `[U+${code.toString(16).toUpperCase().padStart(4, "0")}]`;
}

function isCovered(text: string, files: readonly TypefaceFile[]): boolean {
  return Array.from(text).every((character) => {
    const code = character.codePointAt(0) ?? 0;
    return files.some((file) => hasCharacter(file, code));
  });
}
