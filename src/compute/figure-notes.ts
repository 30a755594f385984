import { placeText } from "../model/diagnostic.ts";
import { asTyped } from "../model/quantity.ts";
import type { JudgedValue } from "./analysis.ts";

/** Which two values a figure is made of, as notes print them; nothing for a plain value. */
export function figureNotes({ parts }: Pick<JudgedValue, "parts">): string[] {
  if (!parts) return [];
  return [parts.larger, parts.smaller].map(({ reading, value }, index) => {
    const where = reading.at === undefined ? "" : ` at ${reading.at}`;
    return `${index === 0 ? "from" : "to"} ${asTyped(value.quantity)}${where}: ${placeText(value.span)}`;
  });
}
