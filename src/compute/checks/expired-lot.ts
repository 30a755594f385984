import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { expiryOn } from "../../model/lot.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each use of a lot, in a session or a cure, after its last day. The day of expiry
 * itself is still good; an extension counts from the day on which it was given.
 */
export function* expiredLot({ lots }: Ledgers): Generator<Diagnostic> {
  for (const { lot, uses } of lots) {
    for (const { date, span } of uses) {
      const expiry = expiryOn(lot, date);
      if (expiry === undefined || expiry >= date) continue;
      const later = lot.extensions.find(({ on, until }) => on > date && until >= date);
      yield {
        code: "expired-lot",
        severity: "finding",
        span,
        message: `lot \`${lot.id}\` was used on ${date}, after its last day, ${expiry}`,
        label: "had expired",
        notes: [
          `${lot.title}: ${placeText(lot.span)}`,
          ...(later ? [`extended on ${later.on} until ${later.until}, after it was used`] : []),
        ],
        help: [
          "if another lot was used, name that one",
          "if the maker allows a longer life, add it to the lot's `extensions` with the day on which it was given",
          "otherwise record what becomes of the joint as a deviation or a squawk",
        ],
        ...(lot.private ? { private: true } : {}),
      };
    }
  }
}
