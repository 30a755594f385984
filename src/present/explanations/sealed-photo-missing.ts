import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `sealed-photo-missing` means. */
export const sealedPhotoMissing: Explanation = {
  code: "sealed-photo-missing",
  severity: "error",
  title: "A sealed photograph that is gone",
  meaning: "A seal names a photograph that does not stand at its place any more.",
  why: "The entry rests on it, and so does whoever was told that the month is closed.",
  mend: [
    "Put the original back where it was, from the camera or a copy.",
    "If it should not be seen, leave it there and amend its entry: `photos[1].private`, with `now: true`.",
  ],
  example: sealedExample,
};
