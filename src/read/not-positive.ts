import type { Span } from "../model/diagnostic.ts";
import type { Faults } from "./faults.ts";

/** Reports a length of a layout that is none. */
export function addNotPositive(key: string, typed: string, span: Span, faults: Faults): undefined {
  return faults.add("not-a-layout", span, {
    message: `\`${key}\` of \`${typed}\` is not above zero`,
    help: ["write the length as it is on the drawing, or leave the line out"],
  });
}
