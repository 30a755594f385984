import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Shell } from "../../src/present/pages/site.ts";

/** HTML to be placed as it is; made once, because every sheet of a site has it. */
interface Still {
  readonly __html: string;
}

/** What is the same on every sheet. */
function still(...nodes: readonly VNode[]): Still {
  return { __html: nodes.map((node) => renderToString(node)).join("") };
}

const made = new WeakMap<Shell, Map<string, Still>>();

/** What is the same on all sheets of a site that agree in `key`: `make` is called once for each. */
export function stillOf(shell: Shell, key: string, make: () => VNode): Still {
  const ofShell = made.get(shell) ?? new Map<string, Still>();
  made.set(shell, ofShell);
  const known = ofShell.get(key) ?? still(make());
  ofShell.set(key, known);
  return known;
}

/** Hatching and arrow heads that drawings on a sheet refer to. */
export const patterns = still(
  <defs>
    <pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse">
      <path d="M-1 7L7-1M-1 1l2-2M5 7l2-2" />
    </pattern>
    <pattern id="cross" width="6" height="6" patternUnits="userSpaceOnUse">
      <path d="M-1 7L7-1M-1 1l2-2M5 7l2-2M-1-1l8 8M-1 5l2 2M5-1l2 2" />
    </pattern>
    <path id="in" d="M0 28l-5-11h10z" />
    <path id="out" d="M0 28l5 11h-10z" />
  </defs>,
);

/** The numbers along a sheet's upper edge. */
export const zones = still(
  ...["8", "7", "6", "5", "4", "3", "2", "1"].map((zone) => <span>{zone}</span>),
);
