import type { Explanation } from "./explanation.ts";

const columns = 80;

/** An explanation as the terminal shows it, in lines of at most 80 columns but for examples. */
export function explanationText(explanation: Explanation): string {
  const { code, severity, title, meaning, why, mend, example, caution } = explanation;
  return [
    `${severity}[${code}]: ${title}`,
    wrapped(meaning, "", ""),
    section("Why it matters", wrapped(why, "  ", "  ")),
    section("How to mend it", mend.map((way) => wrapped(way, "  - ", "    ")).join("\n")),
    ...(caution === undefined ? [] : [section("Caution", wrapped(caution, "  ", "  "))]),
    ...example.map(({ file, text }) => section(`This works: ${file}`, indented(text))),
  ].join("\n\n");
}

function section(heading: string, body: string): string {
  return `${heading}\n${body}`;
}

function indented(text: string): string {
  return text
    .trimEnd()
    .split("\n")
    .map((line) => (line === "" ? "" : `    ${line}`))
    .join("\n");
}

function wrapped(text: string, first: string, rest: string): string {
  const lines: string[] = [];
  let line = first;
  let margin = first;
  for (const word of text.split(" ")) {
    if (line !== margin && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = rest;
      margin = rest;
    }
    line += line === margin ? word : ` ${word}`;
  }
  return [...lines, line].join("\n");
}
