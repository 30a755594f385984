import { Command } from "commander";
import { ruleSets } from "../model/published/rule-sets.ts";
import { explanationText } from "../present/explanations/explanation-text.ts";
import { allExplanations, explanationOf } from "../present/explanations/index.ts";
import { ruleSetListText, ruleSetText } from "../present/rule-sets/rule-set-text.ts";
import { nearestName } from "../read/nearest-name.ts";
import { explainHours, type HoursOptions, hoursOptions } from "./explain-hours.ts";
import { UsageProblem } from "./journal.ts";
import type { Terminal } from "./terminal.ts";

/**
 * `witness explain NAME`: what a check means, why it matters, and how to mend it;
 * `witness explain hours`: a sum of hours line by line; `witness explain rule-sets`: the shipped
 * rule sets, and each by its name.
 */
export function explainCommand(terminal: Terminal): Command {
  const command = new Command("explain");
  for (const option of hoursOptions) command.addOption(option);
  return command
    .argument(
      "[name...]",
      "a check's name as printed in brackets, such as `expired-lot`; or `hours`, `rule-sets`, or a rule set's name",
    )
    .description(
      "say in plain words what a check means; without a name, list all of them; with `hours`, print a sum of hours line by line",
    )
    .option("--json", "print the same as one object")
    .action((words: readonly string[], options: HoursOptions) => {
      const name = nameSaid(words);
      if (name === "hours") {
        explainHours(options, terminal);
        return;
      }
      const stray = hoursOptions.find((option) => option.attributeName() in options);
      if (stray) {
        throw new UsageProblem(`\`${stray.long}\` goes with \`witness explain hours\` alone`, [
          name === undefined
            ? "write `hours` behind `explain`"
            : `leave it out to explain \`${name}\``,
        ]);
      }
      if (name === undefined) {
        const list = allExplanations.map(({ code, title }) => ({ code, title }));
        const width = Math.max(...list.map(({ code }) => code.length));
        terminal.out(
          options.json
            ? JSON.stringify(list, undefined, 2)
            : list.map(({ code, title }) => `${code.padEnd(width)}  ${title}`).join("\n"),
        );
        return;
      }
      const set = ruleSets.get(name);
      if (name === "rule-sets" || set) {
        const shown = set ?? [...ruleSets.values()];
        const words = set ? ruleSetText(set) : ruleSetListText([...ruleSets.values()]);
        terminal.out(options.json ? JSON.stringify(shown, undefined, 2) : words);
        return;
      }
      const explanation = explanationOf(name);
      if (!explanation) {
        const nearest = nearestName(name, [
          "hours",
          "rule-sets",
          ...ruleSets.keys(),
          ...allExplanations.map(({ code }) => code),
        ]);
        throw new UsageProblem(`no check is called \`${name}\``, [
          nearest ? `did you mean \`witness explain ${nearest}\`?` : "`witness explain` lists them",
        ]);
      }
      terminal.out(
        options.json ? JSON.stringify(explanation, undefined, 2) : explanationText(explanation),
      );
    });
}

// A name as it may be copied from a message, `error[expired-lot]:`, or said from memory.
function nameSaid(words: readonly string[]): string | undefined {
  const said = words.join("-").toLowerCase();
  return words.length === 0 ? undefined : (/\[([a-z-]+)\]/.exec(said)?.[1] ?? said);
}
