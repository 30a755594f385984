import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `seal-chain-broken` means. */
export const sealChainBroken: Explanation = {
  code: "seal-chain-broken",
  severity: "error",
  title: "Seals that do not follow each other",
  meaning:
    "Each seal names the one before it with its digest. Here a seal is missing, stands under another name, or is not the one that was named.",
  why: "The chain is what shows that months were closed one after the other and none of them was changed. Where it is broken, everything before the break could have been changed.",
  mend: [
    "Put the seals back as they were, from a copy of the journal.",
    "If there is no copy, the chain has to begin anew: move all seals out of `seals`, seal the months again, and say why in an entry of today. Whoever has an old digest will see that it is another chain, and should.",
  ],
  example: sealedExample,
};
