import type { PortionLedger } from "../../compute/ledgers/portion.ts";
import type { PortionSum, PortionVerdict } from "../../compute/portion.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import { builderPercent } from "../format/portion.ts";

/** A line that the builder's share is held against, in words. */
export interface LineView {
  readonly title: string;
  readonly reached: boolean;
  /** `reached` or `not reached`. */
  readonly verdict: string;
  readonly says: readonly string[];
  /** Where the line is from. */
  readonly source: string;
}

/** Both lines apart: the words of the rule, and the stricter figure that everybody quotes. */
export function linesOf({ sum, verdict, undecided, worst }: PortionLedger): readonly LineView[] {
  return [
    {
      title: "More than half of the points",
      reached: verdict.moreThanHalf,
      verdict: reachedText(verdict.moreThanHalf),
      says: [
        ...(verdict.exactlyHalf ? ["exactly half is not more than half"] : []),
        headroomText(verdict.moreThanHalf, verdict.headroomHalf),
        ...(undecided > 0 ? [openText(undecided, worst.moreThanHalf)] : []),
      ],
      source:
        "“major portion”, 14 CFR 21.191(g) in the edition of January 2024; more than 50 %, Canada, AMA 549.5A",
    },
    {
      title: "51 % or more",
      reached: verdict.fiftyOne,
      verdict: reachedText(verdict.fiftyOne),
      says: [
        ...between(sum, verdict),
        headroomText(verdict.fiftyOne, verdict.headroomFiftyOne),
        ...(undecided > 0 ? [openText(undecided, worst.fiftyOne)] : []),
      ],
      source: "how people put it; at least 51 % in Brazil, ANAC on IS 21.191-001",
    },
  ];
}

/** The state of the sheet in one sentence. */
export function portionSentence({ sum, notApplicable, undecided }: PortionLedger): string {
  if (sum.tasks === 0) return "No task has been divided yet.";
  const apart = [
    ...(notApplicable > 0 ? [`${notApplicable} not applicable`] : []),
    ...(undecided > 0 ? [`${undecided} not divided yet`] : []),
  ];
  return `Of ${tenthsText(sum.total)} points on the sheet the builder claims ${tenthsText(sum.builder)}, which is ${builderPercent(sum)}${apart.length > 0 ? `; ${apart.join(" and ")} and not counted` : ""}.`;
}

/** Which form the columns and the tenths are from, and what of it was not seen. */
export const formSource =
  "Columns and tenths as in the instructions of the Amateur-Built Aircraft Fabrication and Assembly Checklist (2011) of the FAA, fixed wing and gyroplane, of which copies were read as far as the first tasks. Its full list of tasks, the formula at its foot and the worked examples of its job aid were not seen and are not used: the tasks are those of the builder's own list, and listed tasks that apply and added ones are counted. A = maker of the kit, of a component or of a part; B = commercial assistance, for hire or compensation; C = assembly and D = fabrication by amateurs.";

/** What the sheet is not, said wherever it is shown. */
export const portionCautions: readonly string[] = [
  "The shares are the builder's own account, task by task. They are never computed from hours: the sheet counts tasks, not time.",
  "This is a working sheet on a list of tasks that the builder loaded, and not an official form. Nothing here is a finding of any authority; whoever inspects the aircraft makes that finding, and reads the sheet against the log.",
  "Percentages are cut behind one decimal and never rounded up; the comparison itself is made in whole tenths of a point.",
  "Counted are the tasks of the list that apply, and the added ones. A task taken out or added changes the percentage though no work was done; the reason stands beside it.",
];

function reachedText(reached: boolean): string {
  return reached ? "reached" : "not reached";
}

function between({ builder, total }: PortionSum, verdict: PortionVerdict): string[] {
  return verdict.moreThanHalf && !verdict.fiftyOne
    ? [`${tenthsText(builder)} of ${tenthsText(total)} points is more than half and less than 51 %`]
    : [];
}

function headroomText(reached: boolean, tenths: number): string {
  if (!reached) return "no room for paid help";
  if (tenths === 0) return "not a tenth more may pass from the builder to paid help";
  const points = tenths < 10 ? "of a point" : tenths === 10 ? "point" : "points";
  return `${tenthsText(tenths)} ${points} may still pass from the builder to paid help`;
}

function openText(undecided: number, holds: boolean): string {
  const tasks = undecided === 1 ? "the task" : `the ${undecided} tasks`;
  return holds
    ? `stays so even if nothing of ${tasks} not divided yet should fall to the builder`
    : `not so if nothing of ${tasks} not divided yet should fall to the builder`;
}
