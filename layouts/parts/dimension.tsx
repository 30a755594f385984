import type { Dimension as DimensionView } from "../../src/present/pages/page.ts";
import { Figure } from "./figure.tsx";

/** A figure between two arrows, with what stands at either end. */
export function Dimension({ of: { from, to, figure, says, sum, apart } }: { of: DimensionView }) {
  return (
    <div class="dim" data-pagefind-ignore>
      <div>
        <span class="arrow" />
        <p>
          <strong>
            <Figure text={figure} sum={sum} />
          </strong>{" "}
          <span>
            {says}
            {apart && (
              <>
                , <Figure text={apart.figure} sum={apart.sum} /> of study and shop apart
              </>
            )}
          </span>
        </p>
        <span class="arrow right" />
      </div>
      {(from !== undefined || to !== undefined) && (
        <p class="ends" data-clock>
          <span>{from}</span>
          <span>{to}</span>
        </p>
      )}
    </div>
  );
}
