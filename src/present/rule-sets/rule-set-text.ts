import { citationText, type SourceStatus } from "../../model/citation.ts";
import type { RuleSet, RuleSetParameter } from "../../model/rule-set.ts";

const statusWords: Readonly<Record<SourceStatus, string>> = {
  read: "copied from the source itself or a page-by-page copy of it",
  secondary: "quoted by others; the source itself was not seen",
  memory: "from memory; no source could be named",
};

/** All rule sets, a line each: the name as typed behind `set:`, what it limits, who says so. */
export function ruleSetListText(sets: readonly RuleSet[]): string {
  const width = Math.max(...sets.map(({ name }) => name.length));
  return sets
    .map(
      ({ name, title, citation }) => `${name.padEnd(width)}  ${title} (${citationText(citation)})`,
    )
    .join("\n");
}

/** One rule set: what it wants to know, who says so, and a rule that takes its limit from it. */
export function ruleSetText({
  name,
  title,
  authority,
  citation,
  parameters,
  advice,
}: RuleSet): string {
  const status = citation.status ?? "read";
  const example = parameters.map((each) => `${each.name}: ${exampleOf(each)}`).join(", ");
  return [
    `${name}: ${title}`,
    `says: ${authority}, ${citationText(citation)}\n      ${statusWords[status]}`,
    parameters.length === 0
      ? "wants to know nothing"
      : `wants to know:\n${parameters.map(wish).join("\n")}`,
    `in rules.yaml:\n  - { id: my-rule, title: What is measured, set: ${name}${example === "" ? "" : `, with: { ${example} }`} }`,
    advice.map((line) => `note: ${line}`).join("\n"),
  ].join("\n\n");
}

function wish(parameter: RuleSetParameter): string {
  const values = parameter.kind === "choice" ? `: ${parameter.values.join(", ")}` : "";
  return `  ${parameter.name}  ${parameter.help}${values}`;
}

function exampleOf(parameter: RuleSetParameter): string {
  return parameter.kind === "size" ? "1/8 in" : (parameter.values[0] ?? "");
}
