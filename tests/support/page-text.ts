/**
 * What a page says, one line for each stretch of text between two tags, without its head,
 * scripts and styles. Entities are signs again, and runs of blanks one blank.
 */
export function pageText(html: string): string {
  return html
    .replace(/^[\s\S]*?<body[^>]*>/, "")
    .replace(/<(script|style)\b[\s\S]*?<\/\1>/g, "")
    .replace(/<[^>]*>/g, "\n")
    .replace(/&(lt|gt|quot|amp|#39|#x27);/g, (_entity, name: string) => entities[name] ?? "")
    .split("\n")
    .map((line) => line.replace(/\s+/g, " ").trim())
    .filter((line) => line !== "")
    .join("\n");
}

const entities: Readonly<Record<string, string>> = {
  lt: "<",
  gt: ">",
  quot: '"',
  amp: "&",
  "#39": "'",
  "#x27": "'",
};
