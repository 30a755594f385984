/**
 * A style sheet without comments and without white space that means nothing. Made for the
 * layouts' own sheets: it knows strings and comments, and expects one rule's worth of ordinary
 * CSS around them.
 *
 * @example squeezeCss('a {\n  color: red; /* why *\/\n}') // "a{color:red}"
 */
export function squeezeCss(css: string): string {
  return css
    .split(/("(?:[^"\\]|\\.)*"|\/\*[\s\S]*?\*\/)/)
    .map((part) => {
      if (part.startsWith('"')) return part;
      if (part.startsWith("/*")) return "";
      return (
        part
          .replace(/\s+/g, " ")
          .replace(/ ?([{};,>/]) ?/g, "$1")
          // Between selectors, and not in a sum, where the spaces mean something.
          .replace(/ ([+~]) (?![^(]*\))/g, "$1")
          .replace(/: /g, ":")
          .replace(/([ :,(/-])0\./g, "$1.")
          .replaceAll(";}", "}")
      );
    })
    .join("")
    .trim();
}
