import type { Scene } from "../scene.ts";
import { aileron } from "./aileron.ts";
import { benchOverview } from "./bench-overview.ts";
import { builderBucking } from "./builder-bucking.ts";
import { caliperEdge } from "./caliper-edge.ts";
import { centreSection } from "./centre-section.ts";
import { clockCure } from "./clock-cure.ts";
import { coffeeAndPlans } from "./coffee-and-plans.ts";
import { crate } from "./crate.ts";
import { deburr } from "./deburr.ts";
import { dimplePress } from "./dimple-press.ts";
import { drawingSheet } from "./drawing-sheet.ts";
import { elevator } from "./elevator.ts";
import { fin } from "./fin.ts";
import { firewall } from "./firewall.ts";
import { flap } from "./flap.ts";
import { instrumentDial } from "./instrument-dial.ts";
import { mistakeHole } from "./mistake-hole.ts";
import { primerParts } from "./primer-parts.ts";
import { ribClecoed } from "./rib-clecoed.ts";
import { rivetRow } from "./rivet-row.ts";
import { rudder } from "./rudder.ts";
import { scaleWeighing } from "./scale-weighing.ts";
import { sealantBead } from "./sealant-bead.ts";
import { shopDoor } from "./shop-door.ts";
import { skinDrilled } from "./skin-drilled.ts";
import { sparOnBench } from "./spar-on-bench.ts";
import { stabilizer } from "./stabilizer.ts";
import { tailCone } from "./tail-cone.ts";
import { tankOpen } from "./tank-open.ts";
import { tankTest } from "./tank-test.ts";
import { templateLayout } from "./template-layout.ts";
import { torqueWrenchScene } from "./torque-wrench.ts";
import { wingSkeleton } from "./wing-skeleton.ts";
import { wingSkinned } from "./wing-skinned.ts";

const scenes: readonly Scene[] = [
  aileron,
  benchOverview,
  builderBucking,
  caliperEdge,
  centreSection,
  clockCure,
  coffeeAndPlans,
  crate,
  deburr,
  dimplePress,
  drawingSheet,
  elevator,
  fin,
  firewall,
  flap,
  instrumentDial,
  mistakeHole,
  primerParts,
  ribClecoed,
  rivetRow,
  rudder,
  scaleWeighing,
  sealantBead,
  shopDoor,
  skinDrilled,
  sparOnBench,
  stabilizer,
  tailCone,
  tankOpen,
  tankTest,
  templateLayout,
  torqueWrenchScene,
  wingSkeleton,
  wingSkinned,
];

/** Every scene's name, in order. */
export function sceneNames(): readonly string[] {
  return scenes.map(({ name }) => name).sort();
}

/** The scene of that name, if there is one. */
export function sceneNamed(name: string): Scene | undefined {
  return scenes.find((scene) => scene.name === name);
}
