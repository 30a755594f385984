const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });

// East Asian wide and full-width signs (Unicode Standard Annex #11) by script and block, and
// signs shown as emoji. Terminals give them two columns.
const wide =
  /^(?:\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|\p{Script=Bopomofo}|[\u3000-\u303e\uff01-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}|\p{Extended_Pictographic}\ufe0f|\p{Regional_Indicator}{2})/u;
const halfWidth = /^[\uff61-\uffdc]/;
const nothing = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;

/** What a reader sees as one sign, and how many columns a terminal gives it: 0, 1 or 2. */
export interface Sign {
  readonly text: string;
  readonly width: number;
}

/** Splits text into the signs a reader sees: a letter with its accents is one. */
export function signsOf(text: string): Sign[] {
  return Array.from(graphemes.segment(text), ({ segment }) => ({
    text: segment,
    width: signWidth(segment),
  }));
}

/**
 * How many terminal columns a text without line ends takes. A tab counts as one.
 * @example displayWidth("翼 3/32") // 7
 */
export function displayWidth(text: string): number {
  return signsOf(text).reduce((width, sign) => width + sign.width, 0);
}

function signWidth(sign: string): number {
  if (nothing.test(sign)) return 0;
  return wide.test(sign) && !halfWidth.test(sign) ? 2 : 1;
}
