import type { Struck } from "../../src/present/pages/views/struck.ts";
import { Words } from "./words.tsx";

/** What stood here before it was amended: struck, never removed. */
export function StruckLines({ of }: { of: readonly Struck[] }) {
  return (
    <>
      {of.map(({ value, was, now, on }) => (
        <small data-struck>
          {value} {was === "" ? "not said" : <s>{was}</s>}, now {now}: amended <Words of={on} />
        </small>
      ))}
    </>
  );
}
