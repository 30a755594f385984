import type { ExpressionDimension } from "../model/tolerance.ts";

/**
 * What is wrong with a limit whose parts do not go together, and what to write.
 * @returns `undefined` where nothing is known to be wrong.
 */
export function dimensionWords(
  of: ExpressionDimension,
  typed: string,
): { readonly message: string; readonly help: readonly string[] } | undefined {
  switch (of.kind) {
    case "mixed":
      return {
        message: `\`${typed}\` joins a ${of.left} with a ${of.right}`,
        help: ["write both parts in units of the same kind"],
      };
    case "temperatures added":
      return {
        message: `\`${typed}\` adds a temperature to a temperature`,
        help: ["write what is added as a difference, as in `70 °F + 5 delta °F`"],
      };
    case "temperature multiplied":
      return {
        message: `\`${typed}\` multiplies a temperature, which means nothing`,
        help: ["write the temperature out, as in `95 °F`"],
      };
    default:
      return undefined;
  }
}
