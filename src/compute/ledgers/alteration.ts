import type { Alteration } from "../../model/alteration.ts";
import type { Build } from "../../model/build.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { type Quantity, quantityOf, subtract } from "../../model/quantity.ts";
import { sumOfMoments } from "../moments.ts";
import { amountIn } from "../reckon/amount-in.ts";
import type { Balanced, BalanceLedger, ChangeState } from "./balance.ts";

/** What the changes of equipment of an alteration come to. */
export interface WeightEffect {
  /** By date. */
  readonly changes: readonly ChangeState[];
  /** What is put in less what is taken out. */
  readonly net: Pick<Balanced, "weight" | "moment">;
  /** The empty weight before the first of them; absent while nothing was weighed or projected. */
  readonly before?: Balanced;
  /** After the last. */
  readonly after?: Balanced;
  /**
   * How far the centre of gravity moved, aft counting up. Absent when something else came
   * between the first change and the last: the difference is then not of the changes alone.
   */
  readonly movement?: Quantity;
  /** Whether a weighing, or a change that does not belong to the alteration, came between. */
  readonly interrupted: boolean;
}

/** Everything computed for the papers of an alteration. */
export interface AlterationLedger {
  /** Absent when the journal has no `alteration.yaml`. */
  readonly register?: Alteration;
  /** First and last day with a session; absent without sessions. */
  readonly firstDate?: CalendarDate;
  readonly lastDate?: CalendarDate;
  /** Absent when the journal keeps no register of weight and balance. */
  readonly weights?: WeightEffect;
}

/**
 * Works out what the papers of an alteration need beside the other ledgers.
 * @returns `undefined` for a journal of an aircraft that is built.
 */
export function alterationLedger(
  { project, alteration, days }: Pick<Build, "project" | "alteration" | "days">,
  balance: BalanceLedger | undefined,
): AlterationLedger | undefined {
  if (project.basis !== "alteration") return undefined;
  const worked = days.filter(({ sessions }) => sessions.length > 0).map(({ date }) => date);
  const firstDate = worked[0];
  const lastDate = worked.at(-1);
  return {
    ...(alteration ? { register: alteration } : {}),
    ...(firstDate === undefined ? {} : { firstDate }),
    ...(lastDate === undefined ? {} : { lastDate }),
    ...(balance ? { weights: weightEffect(balance, alteration?.changes) } : {}),
  };
}

function weightEffect(
  { register: { units }, events }: BalanceLedger,
  ids: readonly string[] | undefined,
): WeightEffect {
  const belongs = (state: ChangeState) => ids === undefined || ids.includes(state.change.id);
  const own = events.flatMap((event, place) =>
    event.kind === "change" && belongs(event.state) ? [{ place, state: event.state }] : [],
  );
  const changes = own.map(({ state }) => state);
  const sum = sumOfMoments(
    changes.map((state) => ({
      weight: amountIn(state.sum.weight, units.weight),
      moment: state.sum.moment,
    })),
  );
  const before = changes[0]?.before;
  const after = changes.at(-1)?.after;
  const interrupted = events
    .slice(own[0]?.place ?? 0, own.at(-1)?.place ?? 0)
    .some((event) => event.kind !== "change" || !belongs(event.state));
  return {
    changes,
    net: { weight: quantityOf(sum.weight, units.weight), moment: sum.moment },
    ...(before ? { before } : {}),
    ...(after ? { after } : {}),
    ...(before?.cg && after?.cg && !interrupted ? { movement: subtract(after.cg, before.cg) } : {}),
    interrupted,
  };
}
