import type { FigureView } from "../../src/present/pages/views/figure-view.ts";
import { Joined, Words } from "./words.tsx";

/** What a figure is made of: the values as typed, each with its place and its reading. */
export function FigureOf({ of: { kind, of } }: { of: FigureView }) {
  return (
    <>
      {kind} of{" "}
      <Joined
        by=" and "
        of={of.map(({ values, at, reading }) => (
          <>
            {values}
            {reading && (
              <>
                {" "}
                (<Joined by=", " of={[at, <Words of={reading} />]} />)
              </>
            )}
          </>
        ))}
      />
    </>
  );
}
