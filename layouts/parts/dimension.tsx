import type { Dimension as DimensionView } from "../../src/present/pages/page.ts";

/** A figure between two arrows, with what stands at either end. */
export function Dimension({ of: { from, to, figure, says } }: { of: DimensionView }) {
  return (
    <div class="dim" data-pagefind-ignore>
      <div>
        <span class="arrow" />
        <p>
          <strong>{figure}</strong> <span>{says}</span>
        </p>
        <span class="arrow right" />
      </div>
      {(from !== undefined || to !== undefined) && (
        <p class="ends">
          <span>{from}</span>
          <span>{to}</span>
        </p>
      )}
    </div>
  );
}
