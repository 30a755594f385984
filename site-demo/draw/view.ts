import type { LightName } from "./light.ts";
import type { View } from "./scene.ts";

const heights: readonly [RegExp, number][] = [
  [/straight down|overhead/, 84],
  [/looking down|ladder|stairs/, 52],
  [/slightly above/, 28],
  [/from above|flat lay/, 62],
  [/almost flat|level|raking|low\b/, 11],
  [/from below/, 7],
];

const rounds: readonly [RegExp, number][] = [
  [/square on|straight on|from the front|level with|straight down/, 0],
  [/far end|from the tip/, 66],
  [/along|from the end/, -62],
  [/three quarters.*left|from the left/, -36],
  [/three quarters.*right|from the right/, 36],
  [/three quarters|at an angle/, 38],
];

/** Reads what the list says about where a picture is taken from; words it does not know change nothing. */
export function viewFrom(words: string): View {
  const above = heights.find(([said]) => said.test(words))?.[1];
  const round = rounds.find(([said]) => said.test(words))?.[1];
  const zoom = /macro/.test(words)
    ? 0.78
    : /close/.test(words)
      ? 0.86
      : /wide/.test(words)
        ? 1.2
        : 1;
  return {
    zoom,
    ...(above === undefined ? {} : { above }),
    ...(round === undefined ? {} : { round }),
  };
}

/** The light the list asks for in so many words. */
export function lightFrom(words: string): LightName | undefined {
  if (/lamp|torch/.test(words)) return "lamp";
  if (/raking|sun|morning light/.test(words)) return "sun";
  if (/window|daylight/.test(words)) return "daylight";
  return undefined;
}

/** The side the light comes from, when the list says; degrees round. */
export function sideFrom(words: string): number | undefined {
  if (/(lamp|light|window) (from |on )?(the )?left/.test(words)) return -70;
  if (/(lamp|light|window) (from |on )?(the )?right/.test(words)) return 70;
  if (/against the (window|light)/.test(words)) return 165;
  return undefined;
}
