import type { ClecoView } from "../../src/present/pages/views/cleco-view.ts";

const outlines = {
  silver: "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z",
  copper: "M-5.5 0a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0-11 0z",
  black: "M-5-5h10v10h-10z",
  brass: "M0-6.5l6.5 6.5-6.5 6.5-6.5-6.5z",
  other: "M0-6.5l6 11h-12z",
} as const;

/** The mark of a fastener, centred where it stands: a shape and a colour for each size. */
export function ClecoMark({ colour }: Pick<ClecoView, "colour">) {
  return <path class={`cleco ${colour}`} d={outlines[colour]} />;
}
