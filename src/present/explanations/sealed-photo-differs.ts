import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `sealed-photo-differs` means. */
export const sealedPhotoDiffers: Explanation = {
  code: "sealed-photo-differs",
  severity: "error",
  title: "A sealed photograph that was changed",
  meaning:
    "The bytes of a photograph are not those that were sealed. Turning it, trimming it or writing a caption into it changes them.",
  why: "The original is the evidence. What is published is a copy with a smaller size anyway; the original need never be touched.",
  mend: [
    "Put the original back, from the camera or a copy.",
    "A turned or trimmed one can stand beside it under another name, in an entry of today.",
  ],
  example: sealedExample,
};
