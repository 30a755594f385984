import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `sealed-total-differs` means. */
export const sealedTotalDiffers: Explanation = {
  code: "sealed-total-differs",
  severity: "error",
  title: "Sealed totals that do not hold",
  meaning:
    "The minutes in a seal are not what the entries of that month, or up to its end, add up to now, although no later entry amended their hours.",
  why: "Every entry may be as it was sealed and the total another one all the same: the zone in `project.yaml` was changed, so that a night with a clock change has other hours, or the seal itself was edited.",
  mend: [
    "Put back what was changed since: `zone` in `project.yaml`, or the seal.",
    "If the program counts otherwise than it did, report that as a fault of the program.",
  ],
  example: sealedExample,
};
