import type { Analysis } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import type { PortionLedger } from "../../src/compute/ledgers/portion.ts";
import { asOf } from "./small-build.ts";
import { readSmall } from "./temporary-journal.ts";

/** What every `portion.yaml` of the tests begins with. */
export const listHead = `list:
  title: A list made up for the tests
  aircraft: fixed wing
  from: nowhere
  loaded: 2026-01-02
`;

/** A list of tasks, `F1` and so on in one section unless `section,F1` is given. */
export function taskList(...ids: readonly string[]): string {
  const rows = ids.map((id) => (id.includes(",") ? `${id},Do it` : `Fuselage,${id},Do it`));
  return `section,task_number,task\n${rows.join("\n")}\n`;
}

/** A journal with a sheet, analyzed; throws when it cannot be read. */
export function portionAnalysis(
  sheet: string,
  tasks: string,
  files: Readonly<Record<string, string>> = {},
): Analysis {
  const { build, diagnostics } = readSmall({
    ...files,
    "portion.yaml": sheet.startsWith("list:") ? sheet : `${listHead}${sheet}`,
    "tasks.csv": tasks,
  });
  if (!build || diagnostics.length > 0)
    throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  return analyze(build, asOf("2026-12-31"));
}

/** The ledger of a sheet; throws when it cannot be read. */
export function portioned(...of: Parameters<typeof portionAnalysis>): PortionLedger {
  const { portion } = portionAnalysis(...of);
  if (!portion) throw new Error("there is no sheet");
  return portion;
}

/** Splits of one day, one for each line: `F1 kit 0.9, fabrication 0.1`. */
export function splitsOf(...lines: readonly string[]): string {
  const rows = lines.map((line) => {
    const [, task, shares = ""] = /^(\S+) (.*)$/.exec(line) ?? [];
    const typed = shares.replace(/(kit|paid|assembly|fabrication) /g, "$1: ");
    return `  - { task: ${task}, on: 2026-01-03, ${typed} }`;
  });
  return `splits:\n${rows.join("\n")}\n`;
}
