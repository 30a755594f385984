import { Command } from "commander";
import { explanationText } from "../present/explanations/explanation-text.ts";
import { allExplanations, explanationOf } from "../present/explanations/index.ts";
import { nearestName } from "../read/nearest-name.ts";
import { UsageProblem } from "./journal.ts";
import type { Terminal } from "./terminal.ts";

interface ExplainOptions {
  readonly json?: boolean;
}

/** `witness explain NAME`: what a check means, why it matters, and how to mend it. */
export function explainCommand(terminal: Terminal): Command {
  return new Command("explain")
    .argument("[name]", "a check's name as printed in brackets, such as `expired-lot`")
    .description("say in plain words what a check means; without a name, list all of them")
    .option("--json", "print the same as one object")
    .action((name: string | undefined, options: ExplainOptions) => {
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
      const explanation = explanationOf(name);
      if (!explanation) {
        const nearest = nearestName(
          name,
          allExplanations.map(({ code }) => code),
        );
        throw new UsageProblem(`no check is called \`${name}\``, [
          nearest ? `did you mean \`witness explain ${nearest}\`?` : "`witness explain` lists them",
        ]);
      }
      terminal.out(
        options.json ? JSON.stringify(explanation, undefined, 2) : explanationText(explanation),
      );
    });
}
