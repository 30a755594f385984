import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `sealed-entry-differs` means. */
export const sealedEntryDiffers: Explanation = {
  code: "sealed-entry-differs",
  severity: "error",
  title: "A sealed entry that was changed",
  meaning:
    "The bytes of an entry are not those that were sealed. One letter is enough, or line ends that a program turned into others.",
  why: "A month is sealed so that nothing in it changes unseen. A correction is made in the open: an amendment in a later entry leaves the old value to be read, struck through, and the totals use the new one.",
  mend: [
    "Put the entry back as it was, from a copy or from version control.",
    "Correct it with `amendments` in an entry of today.",
    "If only the line ends differ, tell git to leave them: a file `.gitattributes` with the line `* -text`.",
  ],
  example: sealedExample,
};
