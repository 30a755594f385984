import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `not-a-seal` means. */
export const notASeal: Explanation = {
  code: "not-a-seal",
  severity: "error",
  title: "A seal that cannot be read",
  meaning:
    "A file in `seals` is not a seal as `witness seal` writes it: its name, a line in it, or its end.",
  why: "A seal counts byte for byte, because the next seal and the copies outside name its digest. One that was edited proves nothing.",
  mend: [
    "Put the file back as it was, from a copy of the journal.",
    "If it is no seal at all, move it out of `seals`.",
  ],
  example: sealedExample,
};
