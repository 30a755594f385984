/** The sections of the book, in the order in which they are bound. */
export const bookSections = [
  "cover",
  "log",
  "index",
  "hours",
  "help",
  "inspections",
  "deviations",
  "lots",
  "rules",
  "seals",
  "signatures",
] as const;
export type BookSection = (typeof bookSections)[number];

/** What stands in each section, in a few words. */
export const sectionContents: Readonly<Record<BookSection, string>> = {
  cover: "title page and contents",
  log: "every entry in order, with its photographs",
  index: "where each assembly, step and checklist task is in the log; needs `log`",
  hours: "per person and month, and all totals",
  help: "all help received: paid, unpaid and instruction",
  inspections: "every look, with empty room for signatures",
  deviations: "every departure from the drawings, with empty room for signatures",
  lots: "lots and instruments",
  rules: "drawings, and the rules that readings were judged by",
  seals: "sealed months and their digests, when there are some",
  signatures: "empty boxes for signatures and a stamp",
};

/** Sections as asked for: which ones, or what is wrong with the wish. */
export type ChosenSections =
  | { readonly sections: readonly BookSection[] }
  | { readonly unknown: string }
  | { readonly indexWithoutLog: true };

/**
 * The sections named in a list parted by commas, in the order of the book, whatever the order
 * of the list.
 * @example chosenSections("log, cover") // { sections: ["cover", "log"] }
 */
export function chosenSections(list: string): ChosenSections {
  const names = list.split(",").map((name) => name.trim());
  const unknown = names.find((name) => !bookSections.some((section) => section === name));
  if (unknown !== undefined) return { unknown };
  const sections = bookSections.filter((section) => names.includes(section));
  if (sections.includes("index") && !sections.includes("log")) return { indexWithoutLog: true };
  return { sections };
}
