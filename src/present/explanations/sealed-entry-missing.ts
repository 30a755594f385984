import { sealedExample } from "../seals/sealed-example.ts";
import type { Explanation } from "./explanation.ts";

/** What `sealed-entry-missing` means. */
export const sealedEntryMissing: Explanation = {
  code: "sealed-entry-missing",
  severity: "error",
  title: "A sealed entry that is gone",
  meaning: "A seal names an entry that does not stand at its place any more.",
  why: "A record that can lose a day is no record. An entry moved to another folder is as good as gone to whoever checks the seal with other tools.",
  mend: ["Put the entry back where it was, from a copy or from version control."],
  example: sealedExample,
};
