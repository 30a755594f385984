import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `entry-after-seal` means. */
export const entryAfterSeal: Explanation = {
  code: "entry-after-seal",
  severity: "error",
  title: "An entry in a month that was closed",
  meaning:
    "An entry is dated in a month that is sealed, and its seal does not name it; or in a month that had no entries when a later one was sealed.",
  why: "A closed month takes no new days: a day that turns up later, as if it had always been there, is what the seal is to show.",
  mend: [
    "Tell of that day in an entry of today, with its date and why it comes late, and book the hours there.",
    "A draft in a closed month may stay a draft.",
  ],
  example: sealedExample,
};
